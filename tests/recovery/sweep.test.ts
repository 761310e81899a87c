/**
 * Every day from 0 to 60 of many histories: no advice for what cannot be done, no silence when a window closes, no change of
 * mind without evidence or a date that was announced.
 */
import { describe, expect, test } from 'vitest'
import { addDays, type Day, daysBetween } from '../../src/days.ts'
import type { History } from '../../src/journal/history.ts'
import { readPlanInput } from '../../src/node/commands/plan-input.ts'
import { fold } from '../../src/recovery/fold/fold.ts'
import { mayBuy, mayGive, mayOpen, mayUnite, robbedOn } from '../../src/recovery/guards.ts'
import { planOf } from '../../src/recovery/plan.ts'
import type { Plan } from '../../src/recovery/plan-types.ts'
import type { Protocol } from '../../src/recovery/protocol.ts'
import { factsOf } from '../../src/recovery/rules.ts'
import { coldSeason } from '../../src/recovery/season.ts'
import hard from './cases/hard.json' with { type: 'json' }
import own from './cases/own.json' with { type: 'json' }
import worked from './cases/worked.json' with { type: 'json' }
import { HISTORIES, inputOf, START } from './histories.ts'

const DAYS = 60

interface Read {
  history: History
  protocol: Protocol
}

interface Case {
  name: string
  /** What was known on a day, or null before there was an intake. */
  at: (today: Day) => Read | null
  start: Day
}

function read(input: object, today: Day): Read {
  const answer = readPlanInput(JSON.stringify(input), today)
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems))
  return answer
}

type Entry = { on: string; kind: string; known?: string }
type Given = { name: string; input: { entries: Entry[] } }

const fromFile = ({ name, input }: Given): Case => ({
  name,
  start: input.entries.find((e) => e.kind === 'intake')?.on ?? START,
  at: (today) => {
    const entries = input.entries
      .filter((e) => (e.known ?? e.on) <= today)
      .map(({ known: _known, ...e }) => e)
    return entries.some((e) => e.kind === 'intake') ? read({ ...input, entries }, today) : null
  },
})

const CASES: Case[] = [
  ...HISTORIES.map((told): Case => {
    const start = told.start ?? START
    return { name: told.name, start, at: (today) => read(inputOf(told, daysBetween(start, today)), today) }
  }),
  ...[hard, worked, own].flatMap((file) => (file as unknown as Given[]).map(fromFile)),
]

const within = (day: Day, range: { from: Day; to: Day } | null): boolean =>
  range !== null && day >= range.from && day <= range.to

/** What the advice asks for that cannot, or may not, be done; null when it can. */
function impossible({ history, protocol }: Read, plan: Plan): string | null {
  const s = fold(history, protocol)
  const { asOf: today, advice } = plan
  const barred = (reason: { code: string } | null): string | null => (reason === null ? null : reason.code)
  switch (advice.action) {
    case 'unite':
      return barred(mayUnite(s, today))
    case 'buy-queen':
      return barred(mayBuy(s, today))
    case 'give-egg-frame':
      return barred(mayGive(s, today))
    case 'open-and-look': {
      const reason = mayOpen(s, today)
      const gently = reason?.code === 'quiet' && advice.rule === 'cells-beside'
      return gently ? null : barred(reason)
    }
    case 'wash':
    case 'boost':
      return barred(mayOpen(s, today))
    case 'move-out':
      return plan.readiness.ready ? null : 'not ready'
    case 'release-queen':
      return s.caged === null ? 'no cage' : null
    case 'take-out-queen':
      return s.takeOut === null ? 'nobody to take out' : null
    case 'call-inspector':
      return s.diseaseLook?.suspected === true ? null : 'nothing suspected'
    default:
      return null
  }
}

/** Checks that are due or late and could be done today, while nothing is asked. */
function silent({ history, protocol }: Read, plan: Plan): string[] {
  const { asOf: today, advice } = plan
  if (advice.action !== 'leave-alone' && advice.action !== 'none') return []
  const s = fold(history, protocol)
  if (history.outcome !== null || s.lost !== null) return []
  return plan.checks
    .filter((c) => c.status === 'overdue' || (c.status === 'due' && today >= c.closes))
    .filter((c) => {
      const { lid } = factsOf(c.rule)
      const shut = within(today, plan.quiet) || robbedOn(s, today) !== null || coldSeason(protocol, today)
      // Looked at in its window, and asked again on a day that stands in `until`.
      const letBe = s.pending(c.rule)?.lookedOn ?? null
      const looked = letBe !== null && daysBetween(letBe, today) < (factsOf(c.rule).letBe ?? 1)
      return !(lid === 'off' && shut) && !looked
    })
    .map((c) => c.rule)
}

/** Days on which the plan of the day before said that something would change. */
function announced(plan: Plan): Set<Day> {
  const days = plan.checks.flatMap((c) => [c.opens, c.due, addDays(c.closes, 1)])
  if (plan.quiet !== null) days.push(plan.quiet.from, addDays(plan.quiet.to, 1))
  if (plan.until !== null) days.push(plan.until)
  for (const u of plan.readiness.unmet) if (u.earliest !== null) days.push(u.earliest)
  for (const span of [plan.spans.emergence, plan.spans.firstEgg, plan.spans.layingWorkerRisk])
    if (span !== undefined) days.push(span.earliest, span.likely, span.latest, addDays(span.latest, 1))
  if (plan.advice.until !== undefined) days.push(addDays(plan.advice.until, 1))
  return new Set(days)
}

/** The first of a month may move what the season allows: it stands in the yard's protocol. */
const newMonth = (day: Day): boolean => day.endsWith('-01')

describe.each(CASES)('$name', (c) => {
  test('every day from 0 to 60', () => {
    const faults: string[] = []
    let before: { plan: Plan; entries: number } | null = null
    for (let day = 0; day <= DAYS; day++) {
      const today = addDays(c.start, day)
      const known = c.at(today)
      if (known === null) continue
      const plan = planOf(known.history, today, known.protocol)
      const say = (what: string): void => {
        faults.push(
          `day ${day} ${plan.phase} ${plan.advice.action} "${plan.advice.why.slice(0, 90)}": ${what}`,
        )
      }
      const bad = impossible(known, plan)
      if (bad !== null) say(`cannot be done: ${bad}`)
      for (const rule of silent(known, plan)) say(`silent though ${rule} closes`)
      const entries = known.history.entries.length
      const changed = before !== null && before.plan.advice.action !== plan.advice.action
      if (before !== null && changed && entries === before.entries) {
        if (!announced(before.plan).has(today) && !newMonth(today))
          say(`changed from ${before.plan.advice.action} without evidence or an announced date`)
      }
      before = { plan, entries }
    }
    expect(faults).toEqual([])
  })
})

test('there are forty histories of the sweep’s own, or more', () => {
  expect(HISTORIES.length).toBeGreaterThanOrEqual(40)
  expect(new Set(HISTORIES.map((h) => h.name)).size).toBe(HISTORIES.length)
})
