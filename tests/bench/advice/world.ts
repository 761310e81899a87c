/**
 * What a world is made of, and the world "as published". Sources: reference numbers of the papers named; "judgement" where
 * nobody has measured it. Nothing here is taken from the program that is put to the test.
 */

/** How a removal can have gone. The first seven are cut out of a cavity. */
const KINDS = [
  'wall',
  'roof',
  'floor',
  'tree',
  'utility-box',
  'container',
  'prime-swarm',
  'cast-swarm',
  'trap-out',
  'abandoned-hive',
] as const
export type Kind = (typeof KINDS)[number]

interface Eyes {
  /** Share of looks made in haste, and share of looks that leave something out. */
  haste: number
  half: number
  /** Chance to see what is there in a searched look: a fair patch of eggs, open brood, capped brood, cells, a laying queen. */
  eggs: number
  open: number
  capped: number
  cells: number
  queen: number
  /** What haste multiplies these by. */
  hasteFactor: number
  /** Chance to note eggs that are not there, cups taken for nothing or cells for cups, raised caps taken for flat ones. */
  falseEggs: number
  falseCells: number
  falseCaps: number
}

export interface World {
  name: string
  /** One line for the report. */
  about: string
  /** First and last day of intake in a year, month-day. */
  season: readonly [string, string]
  /** Weights of removals by kind. */
  kinds: Readonly<Record<Kind, number>>
  /** Chance that a cut-out's queen is found and caged; else that she is alive in the box; that a caged one dies on the way. */
  caged: number
  aliveUnseen: number
  cagedDies: number
  /** Share of old queens hurt or old, so that they fail within the 90 days. */
  failing: number
  /** Frames of bees that come along from a cut-out: mean. Share of brood that is alive on arrival. */
  framesOfBees: number
  broodAlive: number
  /** Chance that cells are started on live young brood; that such a batch gives a virgin. */
  cellsStarted: number
  cellsGiveVirgin: number
  /** Share of summer days on which a virgin can fly; chance to come home from a day of flights; to be mated after it. */
  flyable: number
  flightSafe: number
  flightMates: number
  /** Days from mating to the first egg: mean. */
  mateToEgg: number
  /** Chance that a bought queen is accepted where no queen, no virgin and no cell is. */
  accepted: number
  /** Days from order to arrival of a queen. */
  leadTime: number
  /** Days without queen and open brood until workers lay: mean and spread. */
  layingWorkers: number
  layingWorkersSpread: number
  /** Chance that opening while a virgin emerges, ripens or flies costs her; that opening in the first two days makes a colony leave. */
  openingLosesVirgin: number
  openingMakesLeave: number
  /** Chance to leave in the first days all the same. */
  leaves: number
  /** Chance that the keeper is at the yard on a day; 0 means on one fixed day of the week only. */
  presence: number
  /** Share of the summer's forage that comes in. */
  forage: number
  /** Multiplies the death of bees that fly. */
  flightDeath: number
  eyes: Eyes
  /** Months in which virgins mate here, as a keeper would say it to the program. */
  matingMonths: readonly string[]
}

export const AS_PUBLISHED: World = {
  name: 'as published',
  about: 'middle of what is published; a keeper who comes on three days of five and looks with care',
  season: ['04-20', '07-31'], // judgement: the swarming and removal season of a temperate place
  kinds: {
    wall: 30,
    roof: 10,
    floor: 7,
    tree: 8,
    'utility-box': 9,
    container: 6,
    'prime-swarm': 11,
    'cast-swarm': 5,
    'trap-out': 5,
    'abandoned-hive': 9,
  }, // judgement
  caged: 0.35, // judgement: a queen is found in about a third of cut-outs
  aliveUnseen: 0.6, // judgement: more often boxed with the bees than not
  cagedDies: 0.05, // Mangum 2019: 5 of 50 package queens dead on first inspection; half of it for a short way
  failing: 0.06, // Rhodes & Denney 2003: controls lost 5-17 % in 16 weeks, part of which falls in 90 days
  framesOfBees: 6.5, // judgement: about 15,000 bees, four pounds; a deep box filled by half or more
  broodAlive: 0.7, // judgement; no mortality of salvaged brood is published
  cellsStarted: 0.92, // Fell & Morse 1984: all test colonies started cells; less here, for small and shaken ones (judgement)
  cellsGiveVirgin: 0.85, // Pérez-Sato & Ratnieks 2006: a single ripe cell 0.70 / 0.88; several cells do better (judgement)
  flyable: 0.6, // judgement; flights need calm weather above 18-20 °C
  flightSafe: 0.93, // makes about 0.88 of virgins layers: a third of the 30 % losses fall in the mating (Pérez-Sato & Ratnieks 2006)
  flightMates: 0.6, // Woyke 1964: about 60 % make two flights
  mateToEgg: 3, // 2-3 days, 15 % need 5 or more (Caron)
  accepted: 0.72, // 48.9-80.8 % (Invernizzi et al.); 70 % in spring, 87 % in autumn still there (Rhodes & Denney 2003)
  leadTime: 5, // judgement: order to post box
  layingWorkers: 17, // after the last open brood; 23-30 days after the loss of the queen (Winston 1987)
  layingWorkersSpread: 4, // judgement; 14 to 30 days are reported
  openingLosesVirgin: 0.06, // judgement: "may lose her"
  openingMakesLeave: 0.03, // judgement
  leaves: 0.015, // judgement
  presence: 0.6, // judgement
  forage: 1, // 0.1 g a forager and day: Khoury et al. 2013
  flightDeath: 1, // gives a mean life of about a month: Winston 1987, 15-38 days in summer
  eyes: {
    haste: 0.3,
    half: 0.1,
    eggs: 0.93,
    open: 0.97,
    capped: 0.98,
    cells: 0.88,
    queen: 0.55,
    hasteFactor: 0.8,
    falseEggs: 0.01,
    falseCells: 0.02,
    falseCaps: 0.03,
  }, // judgement, all of them
  matingMonths: ['4', '5', '6', '7', '8', '9'],
}
