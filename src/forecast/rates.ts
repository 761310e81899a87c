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
    0.82,
    'cells once begun give a virgin',
    'one ripe cell gives a virgin eight times in ten (0.70 to layer, two thirds of the losses before mating, Pérez-Sato & Ratnieks 2006); a colony builds 11-49, but half are torn down (Hatch et al. 1999), and keepers name 0.60-0.85 to a layer for colonies that raise their own (from memory)',
    12,
  ),
  cellFailsLate: judged(
    0.6,
    'of cells that come to nothing, those that stay sealed to the end and show nothing before',
    'half of cells are torn down (Hatch et al. 1999); chilled and diseased ones stay sealed past their day',
  ),
  virginLays: published(
    0.88,
    'a virgin that left her own cell mates and lays worker brood',
    'ripe cell to layer 0.70, of which a third of the losses fall in mating: 0.10 of 0.80 (Pérez-Sato & Ratnieks 2006); 0.54-0.79 from cell to layer by race (Assiut)',
    12,
  ),
  virginDroneLayer: judged(0.012, 'a virgin turns drone layer', 'seldom; late or bad mating'),
  virginStays: judged(0.03, 'a virgin stays and never lays', 'missed her time'),
  givenCellTakes: published(
    0.89,
    'a given ripe cell is accepted',
    'ripe cell to layer 0.70 (Pérez-Sato & Ratnieks 2006), divided by what dies sealed and by what is lost after she has emerged',
  ),
  givenVirginTakes: published(
    0.68,
    'a given virgin is accepted',
    '0.55-0.65 of caged virgins became layers (Pérez-Sato & Ratnieks 2006): 0.60, divided by 0.88 for mating',
  ),
  // A bought queen.
  boughtTakes: published(
    0.8,
    'a bought queen is accepted by a colony that has none',
    '0.489-0.808 (Invernizzi et al.); spring losses 0.30, autumn 0.13 (Rhodes & Denney 2003)',
    12,
  ),
  boughtTakesOverQueen: published(
    0.02,
    'a bought queen takes over where a queen is',
    '1 of 54 (Invernizzi et al.)',
  ),
  boughtTakesOverVirgin: judged(
    0.33,
    'a bought queen is accepted where a virgin is',
    'the virgin is looked for and taken out first (common practice), and found one time in three; else one in ten is taken',
  ),
  boughtTakesWithCells: judged(
    0.7,
    'a bought queen is accepted where cells were begun',
    'cells are cut first (common practice), and in one colony of seven one is overlooked: 0.80 of 0.85, and 0.15 of the others',
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
  layerTurnsDrones: judged(
    0.35,
    'of layers that fail, those that lay drones before they go',
    'old queens run out of sperm, badly mated ones after some weeks (common practice); no share is published',
  ),
  framesTurnWorkers: judged(
    0.045,
    'open brood from a donor turns laying workers back, per day that it is there',
    'a frame a week, three times, mostly does (common practice, from memory): a third for each frame',
  ),
  strayArrives: judged(
    0.0004,
    'another queen turns up, per day',
    'a stray, a small swarm, or one overlooked',
  ),
  dudGoes: judged(0.03, 'a virgin too old to mate disappears, per day', 'she dies or is put out'),
  droneLayerGoes: judged(0.01, 'a drone layer disappears, per day', 'superseded in vain'),
  swarmIsCast: judged(0.25, 'a swarm is a cast, with a virgin', 'most swarms called in are prime swarms'),
  // What is seen when it is there, by a helper who takes care. `weight`: looks at a thing that is there.
  seesEggs: judged(0.92, 'eggs are seen where a queen lays', 'missed in poor light and on pale comb', 30),
  seesOpen: judged(0.96, 'open brood is seen', 'larvae are easier than eggs', 30),
  seesCapped: judged(0.98, 'capped brood is seen', 'hard to miss', 30),
  seesCells: judged(0.95, 'queen cells are seen', 'frames are gone through for them', 30),
  seesQueen: judged(0.36, 'a laying queen is seen', 'unmarked, in a full box', 30),
  seesVirgin: judged(0.12, 'a virgin is seen', 'small, fast, often away'),
  // A look in haste: what of it that care would have seen is still seen. "None" is then little more than not looked at.
  careless: judged(
    0.1,
    'a look is made in haste, where nothing was said of it',
    'nobody has counted; one in ten in a yard of many hands',
    30,
  ),
  dudDrones: judged(
    0.1,
    'a virgin too old to mate begins to lay drones, per day',
    'unmated queens lay from their fourth week on (Oliver 2021; common practice)',
  ),
  carelessGlance: judged(0.75, 'a look said to be in haste is so', 'by its own word'),
  carelessSearched: judged(0.02, 'a look said to be thorough is made in haste', 'by its own word'),
  hasteEggs: judged(
    0.3,
    'of the eggs that care would see, haste sees',
    'they need a frame held to the light',
  ),
  hasteOpen: judged(0.45, 'of open brood, haste sees', 'white in the cells, but between bees'),
  hasteCapped: judged(0.6, 'of capped brood, haste sees', 'seen as soon as the frame is out'),
  hasteCells: judged(0.3, 'of queen cells, haste sees', 'under the bees and on the edges'),
  hasteQueen: judged(0.3, 'of queens, haste sees', 'she runs'),
  hearsRoar: judged(0.35, 'the queenless roar is noted in a queenless colony', 'a matter of ear'),
  roarAnyway: judged(0.04, 'the roar is noted though a queen is there', 'a matter of ear'),
  // What is seen though it is not there.
  misread: judged(
    0.001,
    'a sighting is plain wrong: tags swapped, words mistaken',
    'seldom, but never impossible',
  ),
  capsMistaken: judged(
    0.008,
    'flat caps of workers are taken for raised ones of drones',
    'old, bumpy comb, and the drone comb of any colony; nobody has counted',
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
  /** Laying workers begin, chance per day, by days without queen and open brood (which ends 9 days after the last egg): about day 14 after the loss at the earliest (Collison), half by about day 23 (21: Oliver 2021; 23-30: Winston 1987 from memory). */
  layingWorkers: [
    0, 0, 0, 0, 0.005, 0.01, 0.015, 0.02, 0.03, 0.05, 0.06, 0.07, 0.08, 0.1, 0.11, 0.12, 0.12, 0.13,
  ],
} as const

/** First egg of a queen raised here, days after emergence, right-skewed, 4-22 (log-normal: Woyke et al. 2008). Two measured means, 10.6 (Szabo et al. 1987) and 12.9 in nuclei (Pérez-Sato & Ratnieks 2006), and keepers' 14-21: set between the two, wide enough for all. `log` = spread of the logarithm. */
export const FIRST_EGG = { mean: 11.6, log: 0.32, from: 4, to: 28 } as const

export const DEFAULT_RATES: Rates = Object.fromEntries(
  Object.entries(RATE_TABLE).map(([name, rate]) => [name, rate.value]),
) as Record<RateName, number>

/** The defaults with some replaced. Throws RangeError for a value outside 0-1. */
export function ratesWith(own: Partial<Record<RateName, number>> = {}): Rates {
  for (const [name, value] of Object.entries(own))
    if (!(value >= 0 && value <= 1)) throw new RangeError(`ratesWith: ${name} must be 0 to 1, not ${value}`)
  return { ...DEFAULT_RATES, ...own }
}
