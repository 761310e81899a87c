/**
 * Every number the odds rest on, in one table: its value, where it comes from, and how firmly it is held.
 *
 * `published`: a paper or textbook measured it, though seldom on colonies cut out of buildings (no figure for those was
 * found). `practice`: common practice. `judgement`: nobody has published it; a yard's own closed colonies should replace it
 * (see learn.ts). `weight` is how many colonies of experience the default is worth when a yard's own are set against it.
 */

export type Basis = 'published' | 'practice' | 'judgement'

export interface Rate {
  value: number
  basis: Basis
  /** What it says, in the keeper's words. */
  says: string
  source: string
  /** Colonies of experience the default counts for in learning; only rates that can be learned have it. */
  weight?: number
}

const judged = (value: number, says: string, why: string, weight?: number): Rate => ({
  value,
  basis: 'judgement',
  says,
  source: why,
  ...(weight === undefined ? {} : { weight }),
})
const published = (value: number, says: string, source: string, weight?: number): Rate => ({
  value,
  basis: 'published',
  says,
  source,
  ...(weight === undefined ? {} : { weight }),
})

/** Single rates, 0-1. Hazards are per day. */
export const RATE_TABLE = {
  // The old queen at intake, by what was written down.
  aliveCaged: judged(0.97, 'a caged queen came along alive', 'she was seen and caged', 20),
  aliveLoose: judged(0.85, 'a queen seen loose came along alive', 'some are hurt or lost on the way', 10),
  aliveUnseen: judged(
    0.5,
    'an unseen queen came along alive',
    'no published figure for removals; keepers say three of four colonies called queenless are not, vacuums and cutting take their share',
    8,
  ),
  aliveLost: judged(
    0.02,
    'a queen called lost is here after all',
    'a second queen, or another was found dead',
    20,
  ),
  // Brood that came along.
  broodAliveClosed: judged(
    0.92,
    'young brood kept in a closed chest lives',
    'larvae stand a few hours covered and warm (handbooks)',
    10,
  ),
  broodAliveOpen: judged(
    0.65,
    'young brood carried in the open air lives',
    'eggs hatch poorly under 55 % humidity (Doull 1976)',
    8,
  ),
  broodAliveUnknown: judged(
    0.8,
    'young brood lives when nobody noted how it was carried',
    'between the two',
    8,
  ),
  broodAliveLong: judged(
    0.7,
    'the same, times this, when boxing took over four hours',
    'larvae without nurses',
    8,
  ),
  // Raising a queen.
  cellStartPerDay: judged(
    0.38,
    'a queenless colony with usable brood begins a cell that will do, per day',
    'begun 12-48 h after loss, most on days 2-4 (Fell & Morse 1984); set so that about nine in ten begin',
  ),
  cellEmerges: judged(
    0.87,
    'cells once begun give a virgin',
    'half of single cells are torn down (Hatch et al. 1999), but a colony builds 11-49; ripe cell to layer is 0.70, of which a third of losses fall in mating (Pérez-Sato & Ratnieks 2006)',
    12,
  ),
  virginLays: published(
    0.75,
    'a virgin mates and lays worker brood',
    'ripe cell to laying 0.70, virgins 0.55-0.65 (Pérez-Sato & Ratnieks 2006); 0.54-0.79 by race (Assiut)',
    12,
  ),
  virginDroneLayer: judged(0.012, 'a virgin turns drone layer', 'seldom; late or bad mating'),
  virginStays: judged(0.03, 'a virgin stays and never lays', 'missed her time'),
  givenCellTakes: published(
    0.85,
    'a given ripe cell is accepted',
    'natural cells 0.93-0.95 into nuclei (Pérez-Sato et al. 2007), less in a yard',
  ),
  givenVirginTakes: published(
    0.6,
    'a given virgin is accepted',
    '0.55-0.65 caged (Pérez-Sato & Ratnieks 2006)',
  ),
  // A bought queen.
  boughtTakes: published(
    0.72,
    'a bought queen is accepted by a colony that has none',
    '0.489-0.808 (Invernizzi et al.); spring losses 0.30, autumn 0.13 (Rhodes & Denney 2003)',
    12,
  ),
  boughtTakesOverQueen: published(
    0.02,
    'a bought queen takes over where a queen is',
    '1 of 54 (Invernizzi et al.)',
  ),
  boughtTakesWithCells: judged(
    0.15,
    'a bought queen is accepted beside queen cells',
    'cells go first (common practice)',
  ),
  boughtTakesLayingWorkers: judged(
    0.05,
    'a bought queen is accepted by laying workers',
    'mostly fails (common practice)',
  ),
  ownTakesBack: judged(0.97, 'her own colony takes the caged queen back', 'they know her'),
  cagedHoldsCells: judged(
    0.15,
    'cells are begun with a caged queen in the box, times this',
    'her scent is there',
  ),
  // Later on.
  settlingDies: judged(0.008, 'a queen not yet laying is lost, per day', 'hurt in the removal or balled'),
  layerFails: published(
    0.002,
    'a layer fails, per day',
    'commercial queens lost 13-30 % in 16 weeks, controls 5-17 % (Rhodes & Denney 2003) = 0.0005-0.0032 a day; supersedure in the first month is common (Oliver 2021)',
  ),
  strayArrives: judged(
    0.0004,
    'another queen turns up, per day',
    'a stray, a small swarm, or one overlooked',
  ),
  dudGoes: judged(0.03, 'a virgin too old to mate disappears, per day', 'she dies or is put out'),
  droneLayerGoes: judged(0.01, 'a drone layer disappears, per day', 'superseded in vain'),
  swarmIsCast: judged(0.25, 'a swarm is a cast, with a virgin', 'most swarms called in are prime swarms'),
  // What is seen when it is there, by a helper taking ordinary care.
  seesEggs: judged(0.85, 'eggs are seen where a queen lays', 'missed in poor light and on pale comb'),
  seesOpen: judged(0.94, 'open brood is seen', 'larvae are easier than eggs'),
  seesCapped: judged(0.97, 'capped brood is seen', 'hard to miss'),
  seesCells: judged(0.93, 'queen cells are seen', 'frames are gone through for them'),
  seesQueen: judged(0.35, 'a laying queen is seen', 'unmarked, in a full box'),
  seesVirgin: judged(0.12, 'a virgin is seen', 'small, fast, often away'),
  hearsRoar: judged(0.35, 'the queenless roar is noted in a queenless colony', 'a matter of ear'),
  roarAnyway: judged(0.04, 'the roar is noted though a queen is there', 'a matter of ear'),
  // What is seen though it is not there.
  misread: judged(
    0.0004,
    'a sighting is plain wrong: tags swapped, words mistaken',
    'seldom, but never impossible',
  ),
  doublesNewQueen: judged(0.12, 'a new queen lays doubles in her first week', 'seen now and then'),
  doublesAnyQueen: judged(0.01, 'any queen lays doubles', 'cramped'),
  singlesLayingWorkers: judged(0.015, 'eggs of laying workers pass for single ones', 'at their beginning'),
} as const satisfies Record<string, Rate>

export type RateName = keyof typeof RATE_TABLE
export const RATE_NAMES = Object.keys(RATE_TABLE) as [RateName, ...RateName[]]
export type Rates = Readonly<Record<RateName, number>>

/** Values by day or by age; index = day or age. They need not sum to one where that is said. */
export const DURATIONS = {
  /** Day on which a freed mated queen lays her first egg again. Judgement; prime swarms "often within 24 hours" (Quinby), eggs within 3 days of release if all is well, looked for on days 4-10 (practice). The rest, 3 %, later. */
  settling: [0, 0.2, 0.24, 0.2, 0.13, 0.08, 0.05, 0.03, 0.02, 0.01, 0.01],
  /** Chance per day that bees eat through the candy, by days caged; 2-5 days (Koehnen; Esoteria 16). */
  candy: [0, 0.03, 0.2, 0.4, 0.5, 0.6],
  /** Age, in days since the egg, of the brood that becomes the queen when her cell is begun: two thirds under two days as larvae, 25 % three, 10 % four, eggs 1 % (Fell & Morse 1984), older ones seldom win; mean age at loss 3.4 (Tofilski & Czekonska 2004). */
  brood: [0, 0.01, 0.05, 0.22, 0.36, 0.25, 0.11],
  /** Days from egg to emergence of an emergency queen: 14-18, mean 15.7 (Tofilski & Czekonska 2004). From index 14. */
  emergence: [0.1, 0.32, 0.38, 0.16, 0.04],
  /** Days a queen cell is sealed: 5-8, mean 7.2 (same). From index 5. */
  sealed: [0.03, 0.12, 0.5, 0.35],
  /** Share of a queen's losses by age: mating flights, days 5-16. Judgement on mating within a week or two (Heidinger et al. 2014). */
  virginLost: [
    0.02, 0.02, 0.02, 0.03, 0.05, 0.08, 0.1, 0.12, 0.12, 0.11, 0.09, 0.08, 0.06, 0.04, 0.03, 0.02, 0.01,
  ],
  /** Laying workers begin, chance per day, by days without queen and open brood (which ends 9 days after the last egg): about day 14 at the earliest, 21-30 mostly (Collison; Oliver 2021; Winston 1987 from memory). */
  layingWorkers: [
    0, 0, 0, 0, 0.002, 0.003, 0.006, 0.01, 0.015, 0.02, 0.025, 0.03, 0.04, 0.05, 0.055, 0.06, 0.065, 0.07,
  ],
} as const

/** First egg of a queen raised here, days after emergence: 10.6 on average, right-skewed, 4-22 (Szabo et al. 1987; log-normal: Woyke et al. 2008); 12.9 in nuclei (Pérez-Sato & Ratnieks 2006). `log` = spread of the logarithm. */
export const FIRST_EGG = { mean: 10.6, log: 0.3, from: 4, to: 28 } as const

export const DEFAULT_RATES: Rates = Object.fromEntries(
  Object.entries(RATE_TABLE).map(([name, rate]) => [name, rate.value]),
) as Record<RateName, number>

/** The defaults with some replaced. Throws RangeError for a value outside 0-1. */
export function ratesWith(own: Partial<Record<RateName, number>> = {}): Rates {
  for (const [name, value] of Object.entries(own))
    if (!(value >= 0 && value <= 1)) throw new RangeError(`ratesWith: ${name} must be 0 to 1, not ${value}`)
  return { ...DEFAULT_RATES, ...own }
}
