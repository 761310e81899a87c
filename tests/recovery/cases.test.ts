/** Worked case histories: the plan on chosen days. A date is exact, or [first, last]; a list of words means any of them. */
import { describe, expect, test } from 'vitest'
import { readPlanInput } from '../../src/node/commands/plan-input.ts'
import { planOf } from '../../src/recovery/plan.ts'
import type { Check, Plan } from '../../src/recovery/plan-types.ts'
import own from './cases/own.json' with { type: 'json' }
import worked from './cases/worked.json' with { type: 'json' }

type Want = string | [string, string] | { [key: string]: Want }
interface Expectation {
  asOf: string
  phase?: string[]
  advice?: string[]
  ready?: boolean
  surprises?: boolean
  unmet?: string[]
  checks?: Record<string, Record<string, Want>>
  horizon?: Record<string, Want>
  spans?: Record<string, Want>
  quiet?: Record<string, Want>
}
interface Case {
  name: string
  story: string
  input: { tag: string; entries: { on: string; known?: string }[] }
  expect: Expectation[]
}

function planAt(c: Case, asOf: string): Plan {
  const entries = c.input.entries
    .filter((e) => (e.known ?? e.on) <= asOf)
    .map(({ known: _known, ...entry }) => entry)
  const input = readPlanInput(JSON.stringify({ ...c.input, entries }), asOf)
  if (!input.ok) throw new Error(JSON.stringify(input.problems))
  return planOf(input.history, asOf, input.protocol)
}

/** Where `got` differs from `want`, as lines; none when it fits. */
function differences(path: string, want: Want, got: unknown): string[] {
  if (typeof want === 'string') return want === got ? [] : [`${path}: wanted ${want}, got ${String(got)}`]
  if (Array.isArray(want)) {
    const inside = typeof got === 'string' && got >= want[0] && got <= want[1]
    return inside ? [] : [`${path}: wanted ${want.join('..')}, got ${String(got)}`]
  }
  return Object.entries(want).flatMap(([key, w]) =>
    differences(`${path}.${key}`, w, (got as Record<string, unknown> | null | undefined)?.[key]),
  )
}

function checkDifferences(rule: string, want: Record<string, Want>, checks: Check[]): string[] {
  const tries = checks.filter((c) => c.rule === rule).map((c) => differences(rule, want, c))
  if (tries.some((t) => t.length === 0)) return []
  return tries.at(-1) ?? [`${rule}: no such check`]
}

for (const c of [...(worked as unknown as Case[]), ...(own as unknown as Case[])])
  describe(c.name, () => {
    test.each(c.expect)(`${c.story} (as of $asOf)`, (e) => {
      const plan = planAt(c, e.asOf)
      if (e.phase) expect(e.phase).toContain(plan.phase)
      if (e.advice) expect(e.advice, plan.advice.why).toContain(plan.advice.action)
      if (e.ready !== undefined)
        expect(plan.readiness.ready, JSON.stringify(plan.readiness.unmet)).toBe(e.ready)
      if (e.surprises !== undefined)
        expect(plan.surprises.length > 0, plan.surprises.join()).toBe(e.surprises)
      for (const word of e.unmet ?? [])
        expect(plan.readiness.unmet.map((u) => u.what).join('; ')).toContain(word)
      const found = [
        ...Object.entries(e.checks ?? {}).flatMap(([rule, want]) =>
          checkDifferences(rule, want, plan.checks),
        ),
        ...differences('horizon', e.horizon ?? {}, plan.horizon),
        ...differences('spans', e.spans ?? {}, plan.spans),
        ...(e.quiet ? differences('quiet', e.quiet, plan.quiet) : []),
      ]
      expect(found).toEqual([])
    })
  })
