/** Reads the input of `resettle plan`: one colony's tag, protocol overrides and entries, ids and colony optional. */

import { z } from 'zod'
import { type Day, isDay } from '../../days.ts'
import {
  contradictions,
  type Entry,
  entry,
  type History,
  historyOf,
  type Problem,
  problemsOf,
} from '../../journal/index.ts'
import { type Protocol, protocolOverrides, protocolWith, type Supplies } from '../../recovery/index.ts'
import { type Problems, type Result, refused } from '../../result.ts'

const envelope = z.strictObject({
  tag: z.string().min(1).max(60),
  protocol: z.optional(protocolOverrides),
  supplies: z
    .strictObject({
      queensInHand: z.int().min(0).max(1000).optional(),
      daysUntilQueens: z.int().min(0).max(365).optional(),
      eggFrames: z.int().min(0).max(1000).optional(),
    })
    .optional(),
  /** What a queen, a frame, an opening and a day are worth here; read by what decides by value. */
  costs: z.record(z.string(), z.number().min(0)).optional(),
  entries: z.array(z.unknown()).min(1, 'must hold at least one entry').max(10_000),
})

interface Asked {
  history: History
  protocol: Protocol
  supplies: Supplies
  costs: Record<string, number>
}
export type PlanInput = Result<Asked, Problems<Problem>>

/** Ids for entries that bring none: by position, so that the same file always gives the same plan. */
const placeholderId = (position: number): string =>
  `00000000-0000-7000-8000-${position.toString(16).padStart(12, '0')}`

export function readPlanInput(text: string, asOf: Day): PlanInput {
  const json = readJson(text)
  return json.ok ? planInputOf(json.value, asOf) : json
}

function readJson(text: string): Result<{ value: unknown }, Problems<Problem>> {
  try {
    return { ok: true, value: JSON.parse(text.replace(/^\uFEFF/, '')) as unknown }
  } catch (error) {
    return refused([{ field: '', message: `the input is not JSON: ${(error as Error).message}` }])
  }
}

export type PlanRequest = Result<{ asOf: Day; input: Asked }, Problems<Problem>>

/** One line of `resettle plan --lines`: the input of `resettle plan` with its day in `asOf`. */
export function readPlanRequest(line: string): PlanRequest {
  const json = readJson(line)
  if (!json.ok) return json
  const { value } = json
  if (value === null || typeof value !== 'object' || Array.isArray(value))
    return refused([{ field: '', message: 'must be an object' }])
  const { asOf, ...rest } = value as Record<string, unknown>
  if (typeof asOf !== 'string' || !isDay(asOf))
    return refused([{ field: 'asOf', message: 'must be a real date written YYYY-MM-DD' }])
  const input = planInputOf(rest, asOf)
  return input.ok ? { ok: true, asOf, input } : input
}

function planInputOf(json: unknown, asOf: Day): PlanInput {
  const outer = envelope.safeParse(json)
  if (!outer.success) return refused(problemsOf(outer.error, json))
  const { tag, entries: raw, protocol, supplies = {}, costs = {} } = outer.data
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
  return { ok: true, history, protocol: protocolWith(protocol), supplies, costs }
}

function sameId(entries: readonly Entry[]): Problem[] {
  const first = new Map<string, number>()
  return entries.flatMap((e, i) => {
    const at = first.get(e.id)
    if (at === undefined) first.set(e.id, i + 1)
    return at === undefined ? [] : [{ entry: i + 1, field: 'id', message: `is the id of entry ${at} too` }]
  })
}
