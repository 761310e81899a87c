/** Readings in plain words. */

import { describe, expect, it } from 'vitest'
import { shareAlive } from '../../../src/features/review/comparison.ts'
import { fatesReading } from '../../../src/features/review/fates.ts'
import { type Earned, earnsMostReading, FEWEST_JOBS } from '../../../src/features/review/job-money.ts'
import type { OutcomesOnDay, TypesTest } from '../../../src/features/review/outcomes.ts'
import { bestReading, typesTestsReading } from '../../../src/features/review/outcomes-reading.ts'
import {
  aliveReading,
  logRankReading,
  meanReading,
  medianReading,
  pooledReading,
  waysReading,
} from '../../../src/features/review/readings.ts'
import { stackOn } from '../../../src/features/review/readout.ts'
import type { StackStep } from '../../../src/features/review/stack.ts'
import { countByDay } from '../../../src/statistics/day-counts.ts'
import { kaplanMeier } from '../../../src/statistics/kaplan-meier.ts'
import { percent, percentRange } from '../../../src/words/shares.ts'

const share = (colonies: number, survival: number | null, lower: number | null, upper: number | null) => ({
  colonies,
  survival,
  lower,
  upper,
  limitsBy: lower === null ? null : ('log-log' as const),
  thin: null,
})

describe('alive on a day', () => {
  it.each([
    [
      share(41, 0.78, 0.62, 0.88),
      'Of 41 wall colonies, an estimated 78 % were alive at day 30; with numbers this small the true figure could be 62 to 88 %.',
    ],
    [
      share(240, 0.78, 0.72, 0.83),
      'Of 240 wall colonies, an estimated 78 % were alive at day 30; the true figure is likely 72 to 83 %.',
    ],
    [
      share(4, 0.75, 0.13, 0.96),
      'Of 4 wall colonies, an estimated 75 % were alive at day 30, but the true figure could be 13 to 96 %. Four colonies are too few to say how the next will fare, or to rank them against others.',
    ],
    [
      share(3, null, null, null),
      'None of 3 wall colonies has been followed to day 30 yet, so nothing can be said of that day.',
    ],
    [
      share(9, 0, 0, 0.4),
      'Of 9 wall colonies, all that did not leave before were lost by day 30, but the true share alive could be 0 to 40 %. Nine colonies are too few to say how the next will fare, or to rank them against others.',
    ],
    [share(0, null, null, null), 'No wall colonies yet.'],
  ])('%j', (s, words) => expect(aliveReading('wall', 30, s)).toBe(words))

  it('none lost of five is not certainty', () => {
    const [counts] = countByDay({ day: [30, 31, 40, 41, 60], way: [0, 0, 0, 0, 0] })
    if (counts === undefined) throw new Error('no counts')
    const s = shareAlive(kaplanMeier(counts), 30)
    // Jeffreys, 5 of 5: Beta(5.5, 0.5) at 0.025, R qbeta(0.025, 5.5, 0.5) = 0.6206 (Brown, Cai and DasGupta 2001).
    expect(s).toMatchObject({ survival: 1, upper: 1, limitsBy: 'jeffreys' })
    expect(s.lower).toBeCloseTo(0.6206, 3)
    expect(aliveReading('', 30, s)).toMatch(
      /^None of 5 colonies was lost by day 30, but the true share alive could be 62 to 100 %\. Five colonies are too few/,
    )
  })
})

it('shares are never rounded into certainty', () => {
  expect([0, 0.004, 0.5, 0.995, 1].map(percent)).toEqual(['0 %', 'under 1 %', '50 %', 'over 99 %', '100 %'])
  expect(percentRange(0.62, 0.88)).toBe('62 to 88 %')
  expect(percentRange(0.004, 0.3)).toBe('under 1 % to 30 %')
  expect(percentRange(0.501, 0.503)).toBe('about 50 %')
})

it('the median', () => {
  const median = (day: number | null, lower: number | null, upper: number | null, colonies = 40) =>
    medianReading('wall', { colonies, median: { day, lower, upper } })
  const half = 'Had all stayed that long, about half of the wall colonies would be lost by day 47'
  expect(median(47, 31, 80)).toBe(`${half} (day 31 to 80).`)
  expect(median(47, 31, null)).toBe(`${half} (day 31 or later).`)
  expect(median(null, 40, null)).toMatch(/the curve does not come down to half/)
  expect(median(12, null, null, 1)).toMatch(/by day 12\. One colony is too few to say/)
})

describe('the mean', () => {
  const read = (day: number[], way: number[]): string => {
    const [counts] = countByDay({ day, way })
    if (counts === undefined) throw new Error('no counts')
    return meanReading('', 60, kaplanMeier(counts))
  }

  it('over sixty days, where somebody was followed that long or all were lost before', () => {
    expect(read([30, 60], [1, 0])).toBe(
      'Of its first 60 days, a colony that stays would live 45.0 on average, by the same estimate.',
    )
    expect(read([10, 20], [1, 1])).toMatch(/^Of its first 60 days, .* would live 15\.0 on average/)
  })

  it('else over the days that are covered', () => {
    expect(read([20, 40], [1, 0])).toBe(
      'Of its first 40 days (none was followed longer), a colony that stays would live 30.0 on average, by the same estimate.',
    )
    expect(read([0], [0])).toBe('No colony has been followed for a whole day yet.')
  })
})

it('plain counts say who moved out, who was lost and who is still here', () => {
  const fates = { 'moved-out': 85, united: 16, died: 40, absconded: 14, other: 2, unknown: 0, here: 37 }
  expect(fatesReading(fates, false)).toBe(
    'Of 194 colonies, 85 moved out, 54 were lost (40 died, 14 absconded), 16 were united, 2 left otherwise, 37 are still here.',
  )
  expect(fatesReading(fates, true)).toContain('70 were lost (40 died, 14 absconded, 16 united), 2 left')
  const none = { 'moved-out': 0, united: 0, died: 0, absconded: 0, other: 0, unknown: 0, here: 0 }
  expect(fatesReading({ ...none, died: 1, here: 1 }, false)).toBe(
    'Of 2 colonies, 1 was lost (1 died), 1 is still here.',
  )
  expect(fatesReading(none, false)).toBe('No colonies yet.')
})

it('ways of leaving, and the comparison', () => {
  const ways = [
    { day: 10, died: 0.12, absconded: 0.05, united: 0 },
    { day: 61, died: 0.2, absconded: 0.05, united: 0.1 },
  ]
  expect(waysReading('wall', 60, { colonies: 50, waysOfLeaving: ways })).toBe(
    'Had none moved out, by day 60 an estimated 12 % of wall colonies would have died, 5 % absconded and 0 % been united.',
  )
  expect(waysReading('', 90, { colonies: 50, waysOfLeaving: ways })).toMatch(
    /^Had none moved out, by day 61, the last day anyone was followed, an estimated 20 % would have died/,
  )
  expect(logRankReading({ p: 0.0004 }, 20)).toMatch(/different rates.*p below 0\.001.*cannot say\.$/)
  expect(logRankReading({ p: 0.41 }, 4)).toMatch(
    /do not show that the types differ \(p = 0\.41\).*fewer than ten/,
  )
  expect(logRankReading(null, 0)).toMatch(/not two types/)
})

it('a type after pooling', () => {
  const type = {
    ...share(2, 1, 0.3, 1),
    name: 'trap-out',
    pooled: { share: 0.81, lower: 0.58, upper: 0.94, ofNextTen: [5, 10] as [number, number] },
  }
  expect(pooledReading(30, type)).toBe(
    'Leaning on all types, expect 81 % of trap-out colonies that stay to be alive at day 30 (58 to 94 %), 5 to 10 of the next ten; by itself the type shows 100 % on 2 colonies, too few to rank it.',
  )
})

describe('the answer in three sentences', () => {
  const share = (n: number, lower: number, upper: number) => ({ share: n, lower, upper })
  const on60 = (colonies: number, moved: number, lost: number): OutcomesOnDay => ({
    day: 60,
    colonies,
    known: colonies,
    thin: null,
    shares: {
      movedOut: share(moved, moved - 0.1, moved + 0.1),
      died: share(lost, 0, 1),
      absconded: share(0, 0, 0.1),
      united: share(0, 0, 0.1),
      other: share(0, 0, 0.1),
      stillHere: share(1 - moved - lost, 0, 1),
      lost: share(lost, 0, 1),
    },
  })
  const tests = (moved: number | null, lost: number | null): TypesTest[] => [
    { outcome: 'moved-out', chisq: 1, df: 1, p: moved },
    { outcome: 'lost', chisq: 1, df: 1, p: lost },
  ]

  it('which ends best and which worst, with limits and how many stand behind it', () => {
    const groups = [
      { name: 'tree', on: on60(20, 0.7, 0.2) },
      { name: 'roof', on: on60(31, 0.5, 0.3) },
      { name: 'wall', on: on60(51, 0.4, 0.45) },
    ]
    expect(bestReading(groups)).toBe(
      'Best: tree, 70 % (60 to 80 %) of 20 moved out by day 60, 20 % lost. Worst: wall, 40 % (30 to 50 %) of 51, 45 % lost.',
    )
    expect(bestReading(groups.slice(0, 1))).toBe('')
  })

  it('how sure that is: two tests, each p raised for there being two (Holm)', () => {
    expect(typesTestsReading(tests(0.001, 0.21))).toBe(
      'Chance alone would seldom make the types differ so much in how many moved out (p = 0.002), but often enough in how many were lost (p = 0.21).',
    )
    // 0.03 by itself, 0.06 as the smaller of two.
    expect(typesTestsReading(tests(0.03, 0.5), 'yards')).toBe(
      'Chance alone would often enough make the yards differ so much in how many moved out (p = 0.060) and in how many were lost (p = 0.50); that does not prove them alike.',
    )
    expect(typesTestsReading(tests(null, 0.01))).toBe(
      'Chance alone would seldom make the types differ so much in how many were lost (p = 0.010).',
    )
    expect(typesTestsReading(tests(null, null))).toBe(
      'There are not two types of ten colonies or more to compare yet.',
    )
  })

  it('which earns, with how many jobs it rests on; nothing where none has enough of them', () => {
    const earned = (type: string, jobs: number, mean: number): Earned => ({
      type,
      jobs,
      withoutPrice: 0,
      movedOut: 0,
      price: mean,
      colonyPrice: 0,
      cost: 0,
      earned: mean,
      lower: jobs < FEWEST_JOBS ? null : mean - 10,
      upper: jobs < FEWEST_JOBS ? null : mean + 10,
      unpriced: 0,
      colonyUnpriced: 0,
    })
    const all = [
      earned('wall', 41, 520),
      earned('roof', 12, 400),
      earned('swarm', 17, 100),
      earned('tree', 3, 900),
    ]
    expect(earnsMostReading(all, (t) => t, '$')).toBe(
      'Earns most: wall, $520 a job ($510 to $530, 41 jobs); least: swarm, $100 ($90 to $110, 17 jobs).',
    )
    expect(earnsMostReading(all.slice(3), (t) => t, '$')).toBe('')
  })

  it('a day under the finger: the step that holds on it, and nothing of a day nobody was followed to', () => {
    const stack = {
      name: 'wall',
      lastDay: 50,
      steps: [
        [10, 0, 0.9, 0, 0, 0.1],
        [40, 0.3, 0.5, 0, 0, 0.2],
      ] as StackStep[],
    }
    expect(stackOn(stack, 5)).toBe('wall, day 5: 100 % still here')
    expect(stackOn(stack, 39)).toBe('wall, day 39: 90 % still here, 10 % died or absconded')
    expect(stackOn(stack, 40)).toBe('wall, day 40: 30 % moved out, 50 % still here, 20 % died or absconded')
    expect(stackOn(stack, 51)).toBe('wall, day 51: nobody was followed that long')
  })
})
