/** Worked case histories: the plan on chosen days. A date is exact, or [first, last]; a list of words means any of them. */
import { describe, expect, test } from 'vitest'
import { readPlanInput } from '../../src/node/commands/plan-input.ts'
import { planOf } from '../../src/recovery/plan.ts'
import type { Check, Plan } from '../../src/recovery/plan-types.ts'
import hard from './cases/hard.json' with { type: 'json' }
import own from './cases/own.json' with { type: 'json' }
import trade from './cases/trade.json' with { type: 'json' }
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
  notPhase?: string[]
  notAdvice?: string[]
  /** Patterns in the advice and the surprises; in those and the checks and what is unmet; in neither. */
  mentions?: string
  mentionsAnywhere?: string
  mentionsNot?: string
  quietThen?: boolean
  broodless?: boolean
  layingWorkerRisk?: boolean
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

/**
 * What a list of actions stands for: a queen wanted may be ordered first, or the failing one taken out; bees wanted may be a
 * boost; a look from outside may feed or see to signs. While no layer is proven, a queen ordered ahead or, from day 14 to 28,
 * a frame of eggs as insurance may come before a wait or a look.
 */
function allowed(actions: string[], plan: Plan): string[] {
  const also: Record<string, string[]> = {
    'buy-queen': ['order-queen', 'take-out-queen'],
    unite: ['boost'],
    'outside-look': ['feed', 'see-to-signs'],
  }
  const waits = actions.some((a) => ['leave-alone', 'outside-look', 'open-and-look'].includes(a))
  const unproven = ['rearing', 'awaiting-new-queen', 'queen-unknown', 'queenless'].includes(plan.phase)
  const insured = waits && unproven && plan.day >= 14 && plan.day <= 28
  return [
    ...actions,
    ...actions.flatMap((a) => also[a] ?? []),
    ...(waits && unproven ? ['order-queen'] : []),
    ...(insured ? ['give-egg-frame'] : []),
  ]
}

/** What a plan says, in the advice and the surprises, and everywhere. */
function saidIn(plan: Plan): { said: string; anywhere: string } {
  const said = [plan.advice.why, ...plan.surprises].join(' ')
  const more = [...plan.checks.map((c) => c.why), ...plan.readiness.unmet.map((u) => u.what)]
  return { said, anywhere: [said, ...more].join(' ') }
}

function expectWords(e: Expectation, plan: Plan): void {
  const { said, anywhere } = saidIn(plan)
  if (e.mentions !== undefined) expect(said).toMatch(new RegExp(e.mentions, 'i'))
  if (e.mentionsAnywhere !== undefined) expect(anywhere).toMatch(new RegExp(e.mentionsAnywhere, 'i'))
  if (e.mentionsNot !== undefined) expect(said).not.toMatch(new RegExp(e.mentionsNot, 'i'))
}

function expectSpans(e: Expectation, plan: Plan): void {
  const quiet = plan.quiet !== null && plan.quiet.from <= e.asOf && e.asOf <= plan.quiet.to
  if (e.quietThen !== undefined) expect(quiet).toBe(e.quietThen)
  if (e.broodless !== undefined) expect(plan.spans.broodless !== undefined).toBe(e.broodless)
  if (e.layingWorkerRisk !== undefined)
    expect(plan.spans.layingWorkerRisk !== undefined).toBe(e.layingWorkerRisk)
}

function checkDifferences(rule: string, want: Record<string, Want>, checks: Check[]): string[] {
  const tries = checks.filter((c) => c.rule === rule).map((c) => differences(rule, want, c))
  if (tries.some((t) => t.length === 0)) return []
  return tries.at(-1) ?? [`${rule}: no such check`]
}

for (const c of [worked, own, hard, trade].flatMap((file) => file as unknown as Case[]))
  describe(c.name, () => {
    test.each(c.expect)(`${c.story} (as of $asOf)`, (e) => {
      const plan = planAt(c, e.asOf)
      if (e.phase) expect(e.phase).toContain(plan.phase)
      if (e.notPhase) expect(e.notPhase).not.toContain(plan.phase)
      if (e.advice) expect(allowed(e.advice, plan), plan.advice.why).toContain(plan.advice.action)
      if (e.notAdvice) expect(e.notAdvice, plan.advice.why).not.toContain(plan.advice.action)
      expectWords(e, plan)
      expectSpans(e, plan)
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
