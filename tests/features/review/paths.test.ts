/** Recovery paths, money and days in the yard, from invented colonies. */
import { describe, expect, it } from 'vitest'
import { addDays } from '../../../src/days.ts'
import { moneyReading, pathReading, stayReading } from '../../../src/features/review/findings-reading.ts'
import { moneyOf } from '../../../src/features/review/money.ts'
import { pathCounts, queenrightByDay } from '../../../src/features/review/recovery-path.ts'
import { yardStay } from '../../../src/features/review/stay.ts'
import { entry } from '../../../src/journal/entry.ts'
import { type History, historyOf } from '../../../src/journal/history.ts'
import { DEFAULT_PROTOCOL } from '../../../src/recovery/protocol.ts'
import { factsOf, recoveryOf, spendingOf } from '../../../src/stays/index.ts'

const DAY0 = '2026-05-01'
const AS_OF = '2026-08-01'

/** A colony from its intake and what happened on which day of its stay. */
function colony(tag: string, intake: object, ...events: [day: number, fields: object][]): History {
  let n = 0
  const base = () => ({
    id: `019707a0-0000-7000-8000-${String(++n).padStart(12, '0')}`,
    colony: tag,
    by: 'Rowan',
  })
  const removal = { type: 'wall', hoursOpenToBoxed: 3 }
  const entries = [
    { ...base(), kind: 'intake', on: DAY0, removal, yard: 'Home', queen: 'lost', ...intake },
    ...events.map(([day, fields]) => ({ ...base(), on: addDays(DAY0, day), ...fields })),
  ].map((e) => entry.parse(e))
  const history = historyOf(tag, entries)
  if (history === null) throw new Error('no history')
  return history
}
const look = (fields: object) => ({ kind: 'inspection', opened: true, ...fields })
const gave = (what: string, fields: object = {}) => ({ kind: 'given', what, ...fields })
const left = (what: string, fields: object = {}) => ({ kind: 'outcome', what, ...fields })
const NO_BROOD = { brood: { eggs: 0, open: 0, capped: 0 } }

const OWN_QUEEN = colony(
  'own queen',
  { queen: 'caged', brood: { eggs: 1 } },
  [3, { kind: 'queen-cage', found: 'released' }],
  [8, look({ eggs: 'single', open: 'some' })],
  [24, look({ eggs: 'single', open: 'some', capped: 'worker' })],
  [34, left('moved-out')],
)
const OWN_BROOD = colony(
  'own brood',
  { brood: { eggs: 1, open: 1, capped: 1 } },
  [5, look({ eggs: 'none', open: 'some', cells: 'open' })],
  [27, look({ eggs: 'single', open: 'none', capped: 'none', cells: 'emerged' })],
  [37, look({ eggs: 'single', open: 'plenty', capped: 'worker' })],
  [40, left('moved-out')],
)
const EGG_FRAME = colony(
  'egg frame',
  NO_BROOD,
  [2, gave('egg-frame')],
  [6, look({ cells: 'open', eggs: 'none' })],
  [30, look({ eggs: 'single', cells: 'emerged' })],
  [40, look({ eggs: 'single', open: 'plenty', capped: 'worker' })],
)
const PURCHASED = colony(
  'purchased',
  NO_BROOD,
  [3, gave('mated-queen', { caged: true, cost: 40 })],
  [4, gave('syrup', { litres: 2, cost: 3.5 })],
  [7, { kind: 'queen-cage', found: 'released' }],
  [14, look({ eggs: 'single', open: 'none', capped: 'none' })],
  [26, look({ eggs: 'single', open: 'plenty', capped: 'worker' })],
  [31, left('moved-out')],
)
const UNITED = colony('united', NO_BROOD, [9, gave('syrup')], [12, left('united', { into: 'own queen' })])
const DIED = colony('died', NO_BROOD, [4, gave('mated-queen', { cost: 35 })], [15, left('died')])
const OPEN = colony('open', NO_BROOD)
const ALL = [OWN_QUEEN, OWN_BROOD, EGG_FRAME, PURCHASED, UNITED, DIED, OPEN]
const spent = (...all: History[]) =>
  moneyOf(
    all.map((h) => ({ facts: factsOf(h), spending: spendingOf(h) })),
    AS_OF,
  )
const recoveries = ALL.map((h) => recoveryOf(h, AS_OF, DEFAULT_PROTOCOL))

describe('recovery path', () => {
  it.each([
    ['own queen', 'own-queen', 24],
    ['own brood', 'own-brood', 37],
    ['egg frame', 'egg-frame', 40],
    ['purchased', 'purchased-queen', 26],
    ['united', 'united', null],
    ['died', 'lost', null],
    ['open', 'not-yet', null],
  ])('%s', (tag, path, days) => {
    expect(recoveries.find((r) => r.tag === tag)).toMatchObject({ path, days })
  })

  it('counts and words', () => {
    const counts = pathCounts(recoveries)
    expect(counts.reduce((n, c) => n + c.colonies, 0)).toBe(ALL.length)
    expect(counts.map(pathReading)).toContain(
      '1 colony kept its own queen; worker brood proved her after 24 days.',
    )
    expect(counts.map(pathReading)).toContain('0 colonies left without a proven queen.')
  })

  it('share queenright by day: those that left first are against, those open are not forgotten', () => {
    const share = queenrightByDay(recoveries)
    const by = (day: number) => share.ways[0]?.share[share.days.findLastIndex((d) => d <= day)]
    // Seven colonies, two lost or united first, one still open: 4 of 7 in the end.
    expect(by(26)).toBeCloseTo(2 / 7, 12)
    expect(by(40)).toBeCloseTo(4 / 7, 12)
  })
})

describe('money for each colony kept', () => {
  it('adds up stays that are over, over those moved out', () => {
    const money = spent(...ALL)
    expect(money).toEqual({
      ended: 5,
      kept: 3,
      total: { queens: 75, feed: 3.5, other: 0, hours: 15 },
      perKept: { queens: 25, feed: 3.5 / 3, other: 0, hours: 5 },
      unpriced: { queens: 0, feed: 1, hours: 0 },
    })
    expect(moneyReading(money, '$')).toBe(
      'Each of 3 colonies kept cost $25.00 for queens, $1.17 for feed and 5.0 hours, the costs of those not kept included. Not in it: 1 feed without a price.',
    )
  })

  it('says so when none was kept, or none is over', () => {
    expect(spent(DIED).perKept).toBeNull()
    expect(moneyReading(spent(DIED), '$')).toBe('None of 1 colony whose stay is over was kept.')
    expect(moneyReading(spent(OPEN), '$')).toMatch(/^No stay is over yet/)
  })
})

it('days in the yard: whatever the way of leaving, those still there counted for what they are', () => {
  // By hand: leaving on days 12, 15, 31, 34, 40; of the two still there one was last seen on day 40 and one never after
  // its intake, so six are followed. S is 5/6, 4/6, 3/6 from day 31 to 34, 2/6, and 1/6 on day 40.
  const stay = yardStay(
    ALL.map((h) => factsOf(h)),
    AS_OF,
  )
  expect(stay).toMatchObject({ colonies: 7, left: 5, quarter: { day: 15 }, median: { day: 32.5 } })
  expect(stayReading(stay)).toBe(
    'Counting those still here for as long as they have stayed, half of 7 colonies leave the yard by day 32.5, a quarter by day 15, three quarters by day 40.',
  )
  expect(stayReading({ ...stay, colonies: 5 })).toMatch(/^Half of 5 colonies had left the yard by day 32\.5/)
})
