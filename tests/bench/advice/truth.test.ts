/** The simulated yard against what is published: what comes out of it, not what was put in. Pooled over colonies that nobody touches. */
import { describe, expect, it } from 'vitest'
import { BEES_A_FRAME, Bees, Brood } from './brood.ts'
import { arrivalOf } from './intake.ts'
import { diceFor } from './play.ts'
import { acceptance, oldQueen } from './queens.ts'
import { Colony } from './truth.ts'
import { AS_PUBLISHED, type World } from './world.ts'

const QUIET: World = { ...AS_PUBLISHED, leaves: 0 }
const COLONIES = 1200

const meanOf = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0) / values.length

interface Raised {
  emerged: number | null
  firstEgg: number | null
  workersLay: number | null
}

/** Colonies that lost their queen at the removal and brought young brood, left alone for 60 days. */
function leftAlone(): Raised[] {
  const stories: Raised[] = []
  for (let n = 0; n < COLONIES; n++) {
    const colony = new Colony(QUIET, diceFor(QUIET, 7, n))
    const lost = colony.queen === null && colony.cage === null && colony.arrival.queenlessFor === 0
    if (!lost || colony.brood.raisable() < 200) continue
    const story: Raised = { emerged: null, firstEgg: null, workersLay: null }
    while (colony.day < 60 && colony.gone === null) {
      colony.step()
      const raised = colony.queen?.origin === 'raised' ? colony.queen : null
      if (raised !== null) story.emerged ??= raised.emergedOn
      if (raised?.kind === 'mated' && raised.laysFrom <= colony.day) story.firstEgg ??= raised.laysFrom
      if (colony.workers.active) story.workersLay ??= colony.day
    }
    stories.push(story)
  }
  return stories
}

describe('colonies without a queen, left alone', () => {
  const stories = leftAlone()
  const days = (read: (s: Raised) => number | null): number[] =>
    stories.flatMap((s) => read(s) ?? []).sort((a, b) => a - b)

  it('raise a virgin by day 12.3 after the loss, within the hard limits 10 and 18 (Tofilski & Czekonska 2004)', () => {
    const emerged = days((s) => s.emerged)
    expect(emerged.length).toBeGreaterThan(100)
    expect(Math.abs(meanOf(emerged) - 12.3)).toBeLessThan(0.7)
    expect(emerged.filter((day) => day < 10)).toEqual([])
  })

  it('see her first egg by day 22.9 to 25.2 (emergence and Szabo 1987 to Pérez-Sato & Ratnieks 2006), mostly in 24 ± 5 (common practice)', () => {
    const eggs = days((s) => s.firstEgg)
    expect(meanOf(eggs)).toBeGreaterThan(22.4)
    expect(meanOf(eggs)).toBeLessThan(25.7)
    const usual = eggs.filter((day) => day >= 19 && day <= 29).length / eggs.length
    expect(usual).toBeGreaterThan(0.8)
  })

  it('succeed in 60 to 85 of 100 (walk-away splits, practice, from memory); 0.88 of virgins become layers', () => {
    const layers = days((s) => s.firstEgg).length
    expect(layers / stories.length).toBeGreaterThan(0.6)
    expect(layers / stories.length).toBeLessThan(0.85)
    expect(Math.abs(layers / days((s) => s.emerged).length - 0.88)).toBeLessThan(0.06)
  })

  it('have laying workers three to five weeks after the loss where nothing came of it (Winston 1987: 23 to 30 days; others from 14)', () => {
    const onset = days((s) => s.workersLay)
    expect(onset.length).toBeGreaterThan(10)
    expect(onset[0]).toBeGreaterThanOrEqual(14)
    expect(onset[Math.floor(onset.length / 2)]).toBeLessThanOrEqual(36)
  })
})

it('a package is smallest about day 23 to 24, and is back at its start soon after day 30 (published curve; removed bees are older)', () => {
  const dice = diceFor(QUIET, 7, 1)
  const start = 10_000
  const queen = { ...oldQueen({ ...QUIET, failing: 0 }, dice, 0), laysFrom: 2 }
  const arrival = {
    ...arrivalOf(QUIET, dice),
    on: '2026-05-10',
    brood: new Brood(),
    bees: new Bees(start),
    queen,
    caged: false,
    cells: null,
  }
  const colony = new Colony(QUIET, dice, arrival)
  const bees: number[] = [start]
  while (colony.day < 50) {
    colony.step()
    bees.push(colony.bees.count)
  }
  const smallest = bees.indexOf(Math.min(...bees))
  expect(smallest).toBeGreaterThanOrEqual(21)
  expect(smallest).toBeLessThanOrEqual(25)
  const back = bees.findIndex((n, day) => day > smallest && n >= start)
  expect(back).toBeGreaterThanOrEqual(29)
  expect(back).toBeLessThanOrEqual(38)
})

describe('a bought queen', () => {
  const nobody = {
    queen: null,
    liveCells: false,
    layingWorkers: false,
    daysQueenless: 8,
    bees: 6 * BEES_A_FRAME,
    disturbed: false,
  }

  it('is taken by 48.9 to 80.8 of 100 queenless colonies (Invernizzi et al.)', () => {
    expect(acceptance(AS_PUBLISHED, nobody)).toBeGreaterThan(0.489)
    expect(acceptance(AS_PUBLISHED, nobody)).toBeLessThan(0.808)
  })

  it('is killed beside a laying queen (1 of 54 taken: Invernizzi et al.), and mostly beside a virgin or laying workers', () => {
    const mated = oldQueen(AS_PUBLISHED, diceFor(AS_PUBLISHED, 7, 2), 0)
    expect(acceptance(AS_PUBLISHED, { ...nobody, queen: mated })).toBeLessThan(0.05)
    expect(acceptance(AS_PUBLISHED, { ...nobody, queen: { ...mated, kind: 'virgin' } })).toBeLessThan(0.2)
    expect(acceptance(AS_PUBLISHED, { ...nobody, layingWorkers: true })).toBeLessThan(0.2)
  })
})

it('ten weeks without a queen end a colony; with one it is there', () => {
  const fates = { with: 0, without: 0, aliveWith: 0, aliveWithout: 0 }
  for (let n = 0; n < 200; n++) {
    const dice = diceFor(QUIET, 8, n)
    const arrival = { ...arrivalOf(QUIET, dice), on: '2026-05-10', caged: false, brood: new Brood() }
    const queen = n % 2 === 0 ? { ...oldQueen({ ...QUIET, failing: 0 }, dice, 0), laysFrom: 2 } : null
    const colony = new Colony(QUIET, dice, { ...arrival, bees: new Bees(12_000), queen })
    while (colony.day < 80 && colony.gone === null) colony.step()
    fates[queen === null ? 'without' : 'with'] += 1
    if (colony.gone === null) fates[queen === null ? 'aliveWithout' : 'aliveWith'] += 1
  }
  expect(fates.aliveWith / fates.with).toBeGreaterThan(0.85)
  expect(fates.aliveWithout / fates.without).toBeLessThan(0.1)
})
