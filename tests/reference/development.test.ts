/** Development tables and measured extremes against the constants. Source named beside each check. */
import { describe, expect, test } from 'vitest'
import { BROOD_SURVIVAL, DRONE, HARD, QUEEN, STEADY_BROOD, WORKER } from '../../src/biology/development.ts'
import { LAYING_WORKER_RISK, LAYING_WORKERS_POSSIBLE_FROM } from '../../src/biology/laying-workers.ts'
import {
  EMERGENCE_AFTER_LOSS,
  EMERGENCE_AFTER_LOSS_HARD,
  FIRST_EGG_AFTER_EMERGENCE,
  FIRST_EGG_AFTER_EMERGENCE_HARD,
  OLDEST_FOR_QUEEN,
} from '../../src/biology/queen-rearing.ts'
import { QUEEN_EGG_LAID, WORKER_EGG_LAID } from '../../src/biology/sightings.ts'
import { BEES_PER_LB, framesOfBees } from '../../src/biology/strength.ts'
import { KG_PER_LB } from '../../src/units.ts'

describe('handbook tables (Winston 1987, The Biology of the Honey Bee, values from memory; the same in the textbooks’ rule)', () => {
  test.each([
    ['worker', WORKER, 3, 9, 21],
    ['queen', QUEEN, 3, 8, 16],
    ['drone', DRONE, 3, 10, 24],
  ])('%s', (_caste, stages, hatch, cap, emerge) => {
    expect(stages).toEqual({ hatch, cap, emerge })
  })

  test('sealed stage: worker 12, drone 14, queen 8 days (Winston 1987 and Jay 1963 as quoted: 12, 14.5, 7.5)', () => {
    expect(WORKER.emerge - WORKER.cap).toBe(12)
    expect(Math.abs(DRONE.emerge - DRONE.cap - 14.5)).toBeLessThanOrEqual(0.5)
    expect(Math.abs(QUEEN.emerge - QUEEN.cap - 7.5)).toBeLessThanOrEqual(0.5)
  })

  test('EAS Master Beekeeper examination 2001: drone 24, queen 16, worker about 21 (W25)', () => {
    expect([DRONE.emerge, QUEEN.emerge, WORKER.emerge]).toEqual([24, 16, 21])
  })

  test('a queen cell of the dark bee is sealed on day 3 + 5 (BBKA module 1, W18)', () => {
    expect(QUEEN.cap).toBe(3 + 5)
  })

  test('a prime swarm leaves at sealing; the virgin follows about seven days on, day 16 (W24: sealing counted as day 9)', () => {
    expect(QUEEN.emerge).toBe(9 + 7)
    expect(QUEEN.emerge - QUEEN.cap).toBeLessThanOrEqual(7 + 1)
  })
})

describe('measured ranges hold the planning values', () => {
  test('Tofilski & Czekonska 2004, Apidologie 35:275-282: emergency queens 15.7 d (14-18), capped 8.8 (7-12), sealed 7.2 (5-8)', () => {
    expect(HARD.queenEmerge).toEqual([14, 18])
    expect(HARD.queenCap).toEqual([7, 12])
    expect(HARD.queenSealed).toEqual([5, 8])
    expect(QUEEN.emerge).toBeGreaterThanOrEqual(14)
    expect(QUEEN.emerge).toBeLessThanOrEqual(18)
    expect(QUEEN.cap).toBeGreaterThanOrEqual(7)
    expect(QUEEN.cap).toBeLessThanOrEqual(12)
    // 15.7 days old at emergence, from brood 3.4 days old at the loss: 12.3 days after it.
    expect(EMERGENCE_AFTER_LOSS.likely).toBe(Math.round(15.7 - 3.4))
    expect(EMERGENCE_AFTER_LOSS_HARD).toEqual({ earliest: 10, latest: 18 })
  })

  test('Fukuda & Sakagami 1968, Res. Popul. Ecol. 10:31-39: workers 20 d in 87.1 %, 21 d in 8.3 %; survival 94.2, 86.4, 85.1 of 100', () => {
    expect(HARD.workerEmerge[0]).toBeLessThanOrEqual(20)
    expect(WORKER.emerge).toBe(21)
    expect(HARD.workerEmerge[1]).toBeGreaterThanOrEqual(21)
    expect(BROOD_SURVIVAL).toEqual({ toLarva: 0.942, toSealed: 0.864, toAdult: 0.851 })
  })

  test('Fell & Morse 1984, Insectes Soc. 31:221-237: cells begun within 48 h, new ones as late as day 8-9', () => {
    // Cells were started on larvae under 2 d (64.7 %), 3 d (25.3 %), 4 d (10 %) old: days since the egg up to about 6-7.
    expect(OLDEST_FOR_QUEEN).toBe(WORKER.hatch + 3)
  })

  test('Szabo, Mills & Heikel 1987, J. Apic. Res. 26:73-78: first egg 10.6 d after emergence, 4-22; Pérez-Sato & Ratnieks 2006, Apidologie 37:571-576: 12.9 d', () => {
    expect(FIRST_EGG_AFTER_EMERGENCE_HARD.earliest).toBe(4)
    expect(FIRST_EGG_AFTER_EMERGENCE.earliest).toBeGreaterThanOrEqual(4)
    expect(FIRST_EGG_AFTER_EMERGENCE.latest).toBeLessThanOrEqual(22)
    for (const mean of [10.6, 12.9]) {
      expect(FIRST_EGG_AFTER_EMERGENCE.earliest).toBeLessThan(mean)
      expect(FIRST_EGG_AFTER_EMERGENCE.latest).toBeGreaterThan(mean)
      expect(Math.abs(FIRST_EGG_AFTER_EMERGENCE.likely - mean)).toBeLessThan(1.5)
    }
  })

  test('laying workers: 14 d (Collison, Bee Culture), 21 d (Oliver 2021), 23-30 d (Winston 1987, from memory)', () => {
    expect(LAYING_WORKERS_POSSIBLE_FROM).toBe(14)
    expect(LAYING_WORKER_RISK.earliest).toBe(21)
    expect(LAYING_WORKER_RISK.latest).toBeGreaterThanOrEqual(23)
    expect(LAYING_WORKER_RISK.latest).toBeLessThanOrEqual(30)
  })
})

describe('reading brood backwards', () => {
  test('eggs: laid up to 3 days ago (Bush, beesmath: "at least one three days ago")', () => {
    expect(WORKER_EGG_LAID.eggs).toEqual({ first: 3, last: 0 })
  })
  test('open larvae, no eggs: between three and nine days ago (common practice, an African beekeepers’ course)', () => {
    expect(WORKER_EGG_LAID.open).toEqual({ first: 9, last: 3 })
  })
  test('capped only: 9-21 days ago (arithmetic on the handbook stages; a page that says 11-20 is too late)', () => {
    expect(WORKER_EGG_LAID.capped).toEqual({ first: 21, last: 9 })
  })
  test('a sealed queen cell: its egg was laid 7-18 days ago by the measured extremes, 8-16 nominally', () => {
    expect(QUEEN_EGG_LAID.capped).toEqual({ first: 16, last: 8 })
    expect(HARD.queenCap[0]).toBe(7)
    expect(HARD.queenEmerge[1]).toBe(18)
  })
  test('steady brood, eggs : open : capped = 3 : 6 : 12 = 1 : 2 : 4 (A. Wade 2022)', () => {
    const days = [WORKER.hatch, WORKER.cap - WORKER.hatch, WORKER.emerge - WORKER.cap]
    expect(days.map((d) => d / WORKER.hatch)).toEqual([
      STEADY_BROOD.eggs,
      STEADY_BROOD.open,
      STEADY_BROOD.capped,
    ])
  })
})

describe('strength', () => {
  test('3,500 bees a pound is the smoked, engorged bee (Mitchell 1970: 3,492)', () => {
    expect(Math.abs(BEES_PER_LB - 3492)).toBeLessThan(10)
  })
  test('a three-pound package is about 10,500 bees, four and a half deep frames (common practice)', () => {
    expect(3 * BEES_PER_LB).toBe(10_500)
    expect(framesOfBees(3 * KG_PER_LB)).toBeCloseTo(4.57, 2)
  })
})
