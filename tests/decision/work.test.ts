/** What a plan costs, counted and not timed: nothing of the belief for a colony that has left, no more for one that has stayed for years. */
import { expect, it } from 'vitest'
import { addDays } from '../../src/days.ts'
import { planOf } from '../../src/decision/index.ts'
import { DEFAULT_RATES, listModelOf, type Model, storyOf } from '../../src/forecast/index.ts'
import type { Entry } from '../../src/journal/entry.ts'
import { type History, historyOf } from '../../src/journal/history.ts'
import { DEFAULT_PROTOCOL } from '../../src/recovery/protocol.ts'

const START = '2026-04-01'
const model = listModelOf(DEFAULT_RATES)

let n = 0
const entry = (kind: string, t: number, more: object): Entry =>
  ({
    id: `019707a0-0000-7000-8000-${(++n).toString(16).padStart(12, '0')}`,
    colony: 'X-1',
    kind,
    on: addDays(START, t),
    by: 'Juno',
    ...more,
  }) as Entry

/** A colony open for so many days, looked into every nine. */
function open(days: number, ...more: Entry[]): History {
  const looks = Array.from({ length: Math.floor((days - 5) / 9) + 1 }, (_, i) => {
    const t = 5 + 9 * i
    const lays = t > 30
    return entry('inspection', t, {
      opened: true,
      eggs: lays ? 'single' : 'none',
      open: lays ? 'some' : 'none',
      cells: t < 14 ? 'capped' : 'none',
      framesOfBees: 5,
    })
  })
  const intake = entry('intake', 0, {
    removal: { type: 'wall' },
    yard: 'North field',
    queen: 'unseen',
    brood: { eggs: 0.5, open: 1 },
  })
  const history = historyOf('X-1', [intake, ...looks, ...more])
  if (history === null) throw new Error('no history')
  return history
}

/** States followed, night by night and in the past summed up. */
function statesFollowed(days: number): number {
  const today = addDays(START, days)
  const { walk } = storyOf(open(days), today, model, today, false)
  return walk.byDay.reduce((sum, shares) => sum + shares.states.length, 0)
}

it('a colony open for 1,500 days costs less than three that are followed night by night for 110', () => {
  const [young, grown, old] = [statesFollowed(40), statesFollowed(110), statesFollowed(1500)]
  expect(young).toBeGreaterThan(100)
  expect(old).toBeLessThan(3 * grown)
})

/** Whoever reads anything of the model is found out. */
const untouchable = new Proxy(model, {
  get(_, name) {
    throw new Error(`the plan of a colony that has left reckons with ${String(name)}`)
  },
}) satisfies Model

it('a colony that has left is not reckoned at all', () => {
  const left = open(60, entry('outcome', 60, { what: 'moved-out' }))
  const plan = planOf(left, addDays(START, 60), DEFAULT_PROTOCOL, { model: untouchable })
  expect(plan).toMatchObject({ phase: 'closed', belief: [], options: [] })
  expect(() => planOf(open(60), addDays(START, 60), DEFAULT_PROTOCOL, { model: untouchable })).toThrow(
    'reckons with',
  )
})
