/**
 * The day-cohort forecast with a package's inputs, against the curve kept by a keeper's log (ourbeeblog 2017, a 3-lb package,
 * grade C): lowest on day 23-24, back to its start about day 30, twice about day 40. A plausibility check: the figures are
 * one keeper's reckoning, so the days may lie a few off.
 */
import { describe, expect, it } from 'vitest'
import { BROOD_SURVIVAL } from '../../src/biology/development.ts'
import { TO_ADULT } from '../../src/forecast/brood-sources.ts'
import { runCohorts } from '../../src/forecast/cohorts.ts'
import { ageing, alive, eggsInSeason, LIFE, meanLife, mixedLeft } from '../../src/forecast/life.ts'

/** A package: 10,500 bees 7-8 days old (three pounds of 3,500), hived in mid-April, her first egg on day 2. */
const HIVED = '2026-04-20'
const FIRST_EGG = 2
const BEES = 10_500
const age = ageing(HIVED, 90)

const { adults } = runCohorts({
  steps: 90,
  perDay: 1,
  adults: BEES,
  firstLeft: (i) => alive((age[i] ?? 0) + 7.5 / meanLife(HIVED)) / alive(7.5 / meanLife(HIVED)),
  left: (i, j) => alive((age[i] ?? 0) - (age[j] ?? 0)),
  emerging: () => 0,
  development: 21,
  survival: TO_ADULT.eggs,
  laying: (i, bees, open) =>
    i < FIRST_EGG
      ? 0
      : Math.min(
          Math.min(1, (i - FIRST_EGG + 1) / LIFE.rampDays) * eggsInSeason(HIVED),
          Math.max(0, LIFE.cellsPerBee * bees - open),
        ),
})
const firstAt = (bees: number, from: number): number => adults.findIndex((n, d) => d >= from && n >= bees)

describe('a three-pound package', () => {
  const low = adults.indexOf(Math.min(...adults.slice(0, 60)))

  it('is smallest on day 23-24, give or take one', () => {
    expect(low).toBeGreaterThanOrEqual(22)
    expect(low).toBeLessThanOrEqual(25)
  })
  it('is back at its start about day 30, and twice that about day 40', () => {
    expect(Math.abs(firstAt(BEES, low) - 30)).toBeLessThanOrEqual(2)
    expect(Math.abs(firstAt(2 * BEES, low) - 40)).toBeLessThanOrEqual(3)
  })
  it('has lost a third to two thirds at its lowest', () => {
    expect(adults[low]).toBeGreaterThan(0.33 * BEES)
    expect(adults[low]).toBeLessThan(0.67 * BEES)
  })
})

describe('figures it rests on', () => {
  it('brood survival by stage 0.942, 0.917, 0.985 (Fukuda & Sakagami 1968: 100 eggs, 94.2 larvae, 86.4 sealed, 85.1 adults)', () => {
    const { toLarva, toSealed, toAdult } = BROOD_SURVIVAL
    expect(toLarva).toBe(0.942)
    expect(toSealed / toLarva).toBeCloseTo(0.917, 3)
    expect(toAdult / toSealed).toBeCloseTo(0.985, 3)
    expect(TO_ADULT.eggs).toBeCloseTo(0.851, 3)
    expect(TO_ADULT.open).toBeCloseTo(0.917 * 0.985, 3)
    expect(TO_ADULT.capped).toBeCloseTo(0.985, 3)
  })

  it('workers live 15-38 days in summer, 140-320 in winter, 30-60 in between (Winston 1987, from memory)', () => {
    expect(meanLife('2026-07-05')).toBeGreaterThan(15)
    expect(meanLife('2026-07-05')).toBeLessThan(38)
    expect(meanLife('2026-01-04')).toBeGreaterThanOrEqual(140)
    expect(meanLife('2026-01-04')).toBeLessThan(320)
    for (const day of ['2026-03-30', '2026-10-05']) {
      expect(meanLife(day)).toBeGreaterThan(30)
      expect(meanLife(day)).toBeLessThan(60)
    }
    expect(meanLife('2026-01-04', 'south')).toBeCloseTo(meanLife('2026-07-05', 'north'), 0)
  })

  it('the survival curve has the mean life it is said to have', () => {
    let mean = 0
    for (let x = 0; x < 6; x += 0.001) mean += 0.001 * alive(x + 0.0005)
    expect(mean).toBeCloseTo(1, 4)
    expect(mixedLeft(0)).toBe(1)
    expect(mixedLeft(0.5)).toBeGreaterThan(mixedLeft(1))
  })
})
