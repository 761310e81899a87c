import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { addDays, type Day, daysBetween, type Span } from '../../src/days.ts'
import type { Entry } from '../../src/journal/entry.ts'
import { historyOf } from '../../src/journal/history.ts'
import { planOf } from '../../src/recovery/plan.ts'
import type { Check, Plan, PlanSpans } from '../../src/recovery/plan-types.ts'
import { often } from '../support/long.ts'
import { build, colony, inspectionFields, START } from './arbitrary.ts'

const END = addDays(START, 120)

function plan(entries: readonly Entry[], today: Day): Plan {
  const history = historyOf('X-1', entries)
  if (history === null) throw new Error('no intake')
  return planOf(history, today)
}

/** Others each run: a shorter day sees as much within a week. */
const runs = { numRuns: often(2000, 150) }

describe('whatever is entered', () => {
  test('a plan comes of it, on every day', () => {
    fc.assert(
      fc.property(colony(), fc.integer({ min: 70, max: 120 }), (entries, day) => {
        const p = plan(entries, addDays(START, day))
        expect(p.advice.why).not.toBe('')
        for (const c of p.checks) {
          expect(c.opens <= c.due && c.due <= c.closes, JSON.stringify(c)).toBe(true)
          expect(c.why.length).toBeGreaterThan(10)
        }
        for (const s of spansIn(p.spans))
          expect(s.earliest <= s.likely && s.likely <= s.latest, JSON.stringify(p.spans)).toBe(true)
        const { expected } = p.readiness
        if (expected)
          expect(expected.earliest <= expected.likely && expected.likely <= expected.latest).toBe(true)
        if (p.readiness.ready) expect(p.readiness.unmet).toEqual([])
      }),
      runs,
    )
  })

  test('the order in which the entries are handed over changes nothing', () => {
    fc.assert(
      fc.property(
        colony().chain((e) => fc.tuple(fc.constant(e), fc.shuffledSubarray(e, { minLength: e.length }))),
        ([entries, shuffled]) => {
          // Ids are random in life: give the shuffled copy new ones, by its own order.
          const renamed = shuffled.map((e, i) => ({
            ...e,
            id: `019707a0-0000-7000-8000-${(999 - i).toString(16).padStart(12, '0')}`,
          }))
          expect(plan(renamed, END)).toEqual(plan(entries, END))
        },
      ),
      runs,
    )
  })

  test('a note changes nothing', () => {
    fc.assert(
      fc.property(colony(), fc.integer({ min: 0, max: 70 }), (entries, day) => {
        const note = build(500, day, { kind: 'note', text: 'the neighbour came by' })
        expect(plan([...entries, note], END)).toEqual(plan(entries, END))
      }),
      runs,
    )
  })

  test('a closed colony asks nothing more', () => {
    fc.assert(
      fc.property(
        colony(),
        fc.constantFrom('moved-out', 'united', 'died', 'absconded', 'other'),
        (entries, what) => {
          const p = plan([...entries, build(500, 71, { kind: 'outcome', what })], END)
          expect(p.phase).toBe('closed')
          expect(p.advice.action).toBe('none')
          expect(p.checks.filter((c) => c.status !== 'answered' && c.status !== 'void')).toEqual([])
        },
      ),
      runs,
    )
  })
})

const spansIn = (s: PlanSpans): Span[] =>
  [s.emergence, s.firstEgg, s.workerBroodProof, s.layingWorkerRisk].filter((x) => x !== undefined)

describe('as evidence comes in', () => {
  /** Only sightings: a frame, a cell or a queen given, or a queen found dead, begins a new story with new spans. */
  test('spans never widen, unless a surprise says so', () => {
    fc.assert(
      fc.property(colony(inspectionFields, 6, 45), (entries) => {
        for (let n = 2; n <= entries.length; n++) {
          const today = entries[n - 1]?.on ?? START
          // Looks of one day have no order among themselves; the next day's evidence is what may not widen a span.
          if (entries.some((e, i) => i > 0 && i < n - 1 && e.on === today)) continue
          const before = plan(entries.slice(0, n - 1), today)
          const after = plan(entries.slice(0, n), today)
          if (after.surprises.length > before.surprises.length || newStory(before, after)) continue
          for (const name of ['emergence', 'firstEgg', 'workerBroodProof'] as const) {
            const [a, b] = [before.spans[name], after.spans[name]]
            if (a === undefined || b === undefined) continue
            // Brood on fresh comb lifts the horizon, which only ever held the proof back: earlier is no widening there.
            const longer = daysBetween(b.earliest, b.latest) > daysBetween(a.earliest, a.latest)
            const wider = b.latest > a.latest || (name !== 'workerBroodProof' && longer)
            expect(
              wider,
              `${name} ${JSON.stringify(a)} -> ${JSON.stringify(b)}\n${JSON.stringify(entries.slice(0, n), null, 1)}`,
            ).toBe(false)
          }
        }
      }),
      { numRuns: often(6000, 500) },
    )
  })
})

/** A proven layer that is lost again: what is being raised then is another queen, with spans of her own. */
const newStory = (before: Plan, after: Plan): boolean =>
  (before.phase === 'laying' || before.phase === 'queenright') &&
  after.phase !== before.phase &&
  after.phase !== 'queenright'

/** An observation that settles the question. */
function answerTo(c: Check, p: Plan): object {
  switch (c.rule) {
    // With nothing noted it would answer nothing.
    case 'outside-look':
    case 'welfare':
      return { kind: 'inspection', opened: false, signs: [] }
    case 'cells-beside':
      return { kind: 'inspection', opened: true, cells: 'none' }
    case 'look-again':
      return { kind: 'inspection', opened: true, eggs: 'single', cells: 'none' }
    case 'queen-release':
      return { kind: 'queen-cage', found: 'released' }
    case 'telling-visit':
    case 'recheck-eggs':
    case 'cells-on-egg-frame':
      return { kind: 'inspection', opened: true, eggs: 'none', cells: 'none', queen: 'unseen' }
    case 'new-queen-eggs':
    case 'eggs-after-introduction':
      return { kind: 'inspection', opened: true, eggs: 'none', queen: 'unseen' }
    case 'egg-frame':
      return { kind: 'given', what: 'egg-frame' }
    case 'buy-queen':
      return { kind: 'given', what: 'mated-queen', caged: true }
    case 'worker-brood':
      return { kind: 'inspection', opened: true, capped: 'worker', onFreshComb: true }
    case 'comb-ties':
      return { kind: 'ties-removed' }
    case 'mite-wash':
      return { kind: 'mite-wash', bees: 300, mites: 2 }
    case 'unite-or-boost':
      return p.phase === 'queenless'
        ? { kind: 'outcome', what: 'united', into: 'Y-1' }
        : { kind: 'given', what: 'bees' }
    case 'laying-workers':
      // One egg a cell clears no queen whose drones stand in worker cells.
      return p.phase === 'laying-workers' || p.phase === 'queenless'
        ? { kind: 'outcome', what: 'united', into: 'Y-1' }
        : { kind: 'inspection', opened: true, eggs: 'single', queen: 'unseen' }
    case 'move-out':
      return { kind: 'outcome', what: 'moved-out' }
  }
}

describe('what is overdue', () => {
  test('is answered by some observation', () => {
    const seen = new Set<string>()
    fc.assert(
      fc.property(colony(undefined, 10, 60), fc.integer({ min: 60, max: 110 }), (entries, day) => {
        const today = addDays(START, day)
        const p = plan(entries, today)
        for (const c of p.checks.filter((x) => x.status === 'overdue')) {
          seen.add(c.rule)
          const after = plan([...entries, build(600, day, answerTo(c, p))], today)
          // Answered by it, or asked no longer because of it: the look may show that no queen is there to wait for.
          const answered = after.checks.some(
            (x) =>
              x.rule === c.rule &&
              ((x.status === 'answered' && x.answeredOn === today) ||
                (x.status === 'void' && c.rule === 'recheck-eggs')),
          )
          expect(answered, `${c.rule} ${JSON.stringify(answerTo(c, p))}\n${JSON.stringify(entries)}`).toBe(
            true,
          )
        }
      }),
      { numRuns: 1500 },
    )
    // The generator must reach the questions this is about.
    for (const rule of [
      'outside-look',
      'telling-visit',
      'egg-frame',
      'cells-on-egg-frame',
      'new-queen-eggs',
      'buy-queen',
      'worker-brood',
      'welfare',
    ])
      expect([...seen]).toContain(rule)
  })
})
