/** Why there is no queen, and what bound two colonies: clauses that stand inside a sentence. English; codes are public. */
import { type Day, inWords } from '../../days.ts'
import type { Gift } from '../../journal/index.ts'

const GIFT: Partial<Record<Gift, string>> = {
  'egg-frame': 'a frame of eggs',
  'open-brood': 'a frame of brood',
  'capped-brood': 'a frame of capped brood',
  combs: 'combs',
  bees: 'bees',
  'queen-cell': 'a queen cell',
}

const cageWords = (how: 'dead' | 'rejected'): string =>
  how === 'dead' ? 'found dead' : 'rejected by the bees'

type Caged = { how: 'dead' | 'rejected'; on: Day }

/** Clauses without a capital and without a stop; those that go on from another begin with its stop or comma. */
export const CAUSES = {
  'given-queen-lost': ({ how, on }: Caged) => `the queen given was ${cageWords(how)} on ${inWords(on)}`,
  'bought-queen-lost': ({ how, on }: Caged) => `the bought queen was ${cageWords(how)} on ${inWords(on)}`,
  'own-queen-lost-late': ({ how, on }: Caged) =>
    `her own queen was ${cageWords(how)} on ${inWords(on)}, too late for the brood that came along`,
  'queen-lost': ({ how, on }: Caged) => `the queen was ${cageWords(how)} on ${inWords(on)}`,
  'another-likely': () =>
    '. Another queen is likely in there: look for eggs, a virgin and queen cells, before a frame of eggs goes in',
  'trap-takes-foragers': () => 'a trap takes foragers, and nobody saw a queen walk in',
  'lost-at-removal': () => 'the queen was lost at the removal',
  'stopped-laying': ({ about }: { about: Day }) =>
    `the queen that laid until about ${inWords(about)} has stopped or is gone`,
  'drone-layer': () =>
    'only drone brood in worker cells: her queen is not mated, or not well. Find her and take her out. Are there flat worker caps too, a mixed patch of a queen that has just begun? Then look again in a week before you do',
  'test-frame-and-no-eggs': ({ on }: { on: Day }) =>
    `no cells on the frame of eggs, and no eggs on ${inWords(on)}`,
  neither: ({ on }: { on: Day }) => `neither eggs nor queen cells on ${inWords(on)}`,
  'no-living-brood': ({ on }: { on: Day }) => `, and no living young brood was left on ${inWords(on)}`,
  'no-cells': ({ on }: { on: Day }) => `, and no queen cells on ${inWords(on)}`,
  'raised-not-laying': ({ on }: { on: Day }) =>
    `the queen raised here has not laid by ${inWords(on)}, after the last day to expect it`,
  'cells-gone': ({ on }: { on: Day }) =>
    `the queen cells were gone on ${inWords(on)}, before one could emerge, and there were no eggs`,
  'cells-dead': ({ on }: { on: Day }) => `the queen cells are dead, still sealed on ${inWords(on)}`,
  'finished-seen': ({ on, days }: { on: Day; days: number }) =>
    `the queen was seen on ${inWords(on)}, has laid nothing in the ${days} days since, and is finished. Find her and take her out`,
  finished: ({ days }: { days: number }) =>
    `the queen laid until the removal and has laid nothing in the ${days} days since, and is finished`,
  'seen-not-laying': ({ since }: { since: Day }) =>
    `the queen seen since ${inWords(since)} has not laid. Find her and take her out`,
  'let-out-not-laying': ({ bought, out, by }: { bought: boolean; out: Day; by: Day }) =>
    `${bought ? 'the bought queen' : 'her queen'} was let out on ${inWords(out)} and no eggs by ${inWords(by)}`,
  'drone-caps': ({ on }: { on: Day }) =>
    `raised drone caps in worker cells on ${inWords(on)} and no queen seen`,
  'several-eggs-again': ({ on }: { on: Day }) => `several eggs in a cell again on ${inWords(on)}`,
  'several-eggs': ({ on }: { on: Day }) =>
    `several eggs in a cell on ${inWords(on)} and no queen can be laying`,
}

/** What bound a colony to a suspected one, after "it". */
export const DEEDS = {
  got: ({ what, tag }: { what: Gift; tag: string }) => `got ${GIFT[what] ?? what} from ${tag}`,
  gave: ({ what, tag }: { what: Gift; tag: string }) => `gave ${GIFT[what] ?? what} to ${tag}`,
  'took-in': ({ tag }: { tag: string }) => `took in ${tag}`,
  'united-into': ({ tag }: { tag: string }) => `was united into ${tag}`,
  'stood-beside': ({ tag }: { tag: string }) => `stood beside ${tag} while there was robbing`,
  /** Of a round kept by a phone of before, which knows the words alone. */
  'as-said': ({ how }: { how: string }) => how,
}
