/** The sentences of a new keeper's sheet. First weeks' care is common practice; the foulbrood figures are afb.org.nz. */
import type { Inspection } from '../../journal/index.ts'
import type { fold } from '../../recovery/index.ts'

type Laying = Extract<ReturnType<typeof fold>['queen'], { is: 'queenright' }>

/** Where they lived, of the built-in kinds. A kind that a yard added may name a customer: it is left out. */
export const ORIGIN: Record<string, string> = {
  wall: 'out of a wall',
  floor: 'out of a floor',
  roof: 'out of a roof',
  tree: 'out of a tree',
  ground: 'out of the ground',
  'utility-box': 'out of a meter or utility box',
  equipment: 'out of a machine',
  container: 'out of a container',
  swarm: 'as a swarm',
  'trap-out': 'through a trap at their entrance',
  'abandoned-hive': 'in an abandoned hive',
}

/** By who lays; `given`: the day a queen was put in, where one was. */
export const QUEEN: Record<Laying['layer'], (given: string | null) => string> = {
  own: () => 'The queen they came with, so her age is not known.',
  raised: (given) =>
    given === null
      ? 'Raised by themselves, here, this season.'
      : `Young, this season’s: raised here, or from a cell or virgin given ${given}.`,
  bought: (given) => (given === null ? 'A bought queen.' : `A bought queen, put in ${given}.`),
}

/** 19 % within a month, 49 % within two (afb.org.nz, time to visual symptoms). */
export const FOULBROOD =
  'A clean look is no clearance: of colonies that carry American foulbrood about one in five shows it within a month, half within two. Look at every brood frame after four and after eight weeks, and call the apiary inspector at the first doubt.'

export const SIGN_SEEN: Record<NonNullable<Inspection['signs']>[number], string> = {
  beetles: 'small hive beetles',
  moths: 'wax moths',
  chalkbrood: 'chalkbrood',
  'brood-disease-suspected': 'signs of brood disease',
  robbing: 'robbing',
  'deformed-wings': 'deformed wings',
  'mites-seen': 'mites on bees',
  'queenless-roar': 'a roar as of bees without a queen',
}

/** By temper 1 to 5. */
export const TEMPER_SAID = ['Calm', 'Rather calm', 'As usual', 'Quick to sting', 'Fierce']

export const FIRST_WEEKS: readonly string[] = [
  'On the road: entrance shut, hive strapped, air and shade, no stops in the sun.',
  'Open the entrance at dusk, small at first, and lean branches before it, so that they learn the place anew. Under about 3 km (2 miles) they fly back.',
  'Leave the lid on for three to five days. Then look for eggs: a queen can be hurt on the way.',
  'Keep the entrance small, and feed at dusk, inside, while stores are low: strange bees are soon robbed.',
  'Stand them apart from your own, with tools of their own, until the second foulbrood look is clean.',
  'Register the colony where you have to. Local rules decide.',
]
