/** Reads the input of `resettle plan`: one colony's tag, protocol overrides and entries, ids and colony optional. */

import { z } from 'zod'
import type { Day } from '../../days.ts'
import {
  contradictions,
  type Entry,
  entry,
  type History,
  historyOf,
  type Problem,
  problemsOf,
} from '../../journal/index.ts'
import { type Protocol, protocolOverrides, protocolWith } from '../../recovery/index.ts'
import { type Problems, type Result, refused } from '../../result.ts'

const envelope = z.strictObject({
  tag: z.string().min(1).max(60),
  protocol: protocolOverrides.optional(),
  entries: z.array(z.unknown()).min(1, 'must hold at least one entry').max(10_000),
})

export type PlanInput = Result<{ history: History; protocol: Protocol }, Problems<Problem>>

/** Ids for entries that bring none: by position, so that the same file always gives the same plan. */
const placeholderId = (position: number): string =>
  `00000000-0000-7000-8000-${position.toString(16).padStart(12, '0')}`

export function readPlanInput(text: string, asOf: Day): PlanInput {
  let json: unknown
  try {
    json = JSON.parse(text.replace(/^\uFEFF/, ''))
  } catch (error) {
    return refused([{ field: '', message: `the input is not JSON: ${(error as Error).message}` }])
  }
  const outer = envelope.safeParse(json)
  if (!outer.success) return refused(problemsOf(outer.error, json))
  const { tag, entries: raw, protocol } = outer.data
  const problems: Problem[] = []
  const entries: Entry[] = []
  raw.forEach((value, i) => {
    const isObject = value !== null && typeof value === 'object' && !Array.isArray(value)
    const filled = isObject ? { id: placeholderId(i + 1), colony: tag, ...value } : value
    const parsed = entry.safeParse(filled)
    if (parsed.success) entries.push(parsed.data)
    else problems.push(...problemsOf(parsed.error, filled, i + 1))
  })
  if (problems.length > 0) return refused(problems)
  problems.push(...sameId(entries), ...contradictions(entries, asOf))
  const history = problems.length === 0 ? historyOf(tag, entries) : null
  if (history === null)
    return problems.length > 0
      ? refused(problems)
      : refused([{ field: 'entries', message: 'no intake stands: it is missing or withdrawn' }])
  return { ok: true, history, protocol: protocolWith(protocol) }
}

function sameId(entries: readonly Entry[]): Problem[] {
  const first = new Map<string, number>()
  return entries.flatMap((e, i) => {
    const at = first.get(e.id)
    if (at === undefined) first.set(e.id, i + 1)
    return at === undefined ? [] : [{ entry: i + 1, field: 'id', message: `is the id of entry ${at} too` }]
  })
}
