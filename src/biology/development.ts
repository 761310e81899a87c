/**
 * Development of the three castes, in days after the egg was laid.
 *
 * Handbook values: Winston 1987, The Biology of the Honey Bee; Büchler et al. 2013 (queens). Two tiers are kept apart:
 * `STAGES` plans, `HARD` only says what is impossible.
 *
 * Conflicts, and what was chosen:
 * - Worker emergence: 21 in handbooks; Fukuda & Sakagami 1968 (Res. Popul. Ecol. 10:31-39) measured 20 days in 87.1 %
 *   and 21 in 8.3 %. 21 is used: it is the later one, so brood is never called a new queen's a day too soon.
 * - Queen sealing: 7.5-8 in handbooks, 9 in some, and 8.8 (7-12) measured for emergency cells by Tofilski & Czekonska
 *   2004 (Apidologie 35:275-282). 8 is used for planning, 7-12 as the hard limit.
 */

export interface Stages {
  /** Day on which the egg hatches. */
  hatch: number
  /** Day on which the cell is capped. */
  cap: number
  /** Day on which the adult leaves the cell. */
  emerge: number
}

export const WORKER: Stages = { hatch: 3, cap: 9, emerge: 21 }
export const QUEEN: Stages = { hatch: 3, cap: 8, emerge: 16 }
export const DRONE: Stages = { hatch: 3, cap: 10, emerge: 24 }

/** Measured extremes, days after the egg was laid, both ends included. */
export const HARD = {
  /** Queen cells: Tofilski & Czekonska 2004. */
  queenCap: [7, 12],
  queenEmerge: [14, 18],
  /** Sealed phase of an emergency queen, days: Tofilski & Czekonska 2004. */
  queenSealed: [5, 8],
  /** Workers: Fukuda & Sakagami 1968, and the handbooks' range. */
  workerEmerge: [19, 22],
} as const

/** Share of worker eggs that live to each stage at the nest's centre (Fukuda & Sakagami 1968). */
export const BROOD_SURVIVAL = { toLarva: 0.942, toSealed: 0.864, toAdult: 0.851 } as const

/** Eggs : open : capped cells under a queen laying steadily, 3 : 6 : 12 days (A. Wade, ACT Beekeepers 2022). */
export const STEADY_BROOD = { eggs: 1, open: 2, capped: 4 } as const
