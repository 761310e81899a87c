/** What is said by whoever weighs the open ways (src/decision): the reason from biology, and the number. */
import { type Day, inWords } from '../../days.ts'
import { type SaidOf, wordsOf } from './catalogue.ts'
import { UNMET } from './unmet.ts'

type UnmetReason = SaidOf<typeof UNMET>

/** What can be done, and in so many days. */
export interface Way {
  act: 'look' | 'give' | 'boost' | 'queen' | 'unite'
  days: number
  /** Of 100 colonies like this, so many keep a queen. */
  keep: number
}

function when({ act, days: left }: Way): string {
  const days = left === 1 ? 'a day' : left === 7 ? 'a week' : left === 14 ? 'two weeks' : `${left} days`
  switch (act) {
    case 'look':
      return left === 0 ? 'if you look now' : `if you wait ${days}`
    case 'give':
      return left === 0 ? 'if it gets a frame of eggs now' : `if it gets a frame of eggs in ${days}`
    case 'boost':
      return 'if it gets a frame of capped brood'
    case 'queen':
      return 'if a bought queen goes in'
    default:
      return 'if it is united'
  }
}

const missing = (unmet: readonly UnmetReason[]): string => unmet.map((u) => wordsOf(UNMET, u)).join('; ')

export const WEIGHED = {
  'of-100': ({ way, other }: { way: Way; other: Way | null }) =>
    `Of 100 colonies like this, ${way.keep} keep a queen ${when(way)}${other === null ? '' : `, ${other.keep} ${when(other)}`}.`,
  'nobody-lays': () =>
    'Nobody seems to lay here, and there is nothing left to raise a queen from: a frame of eggs lets them raise one, and its brood holds laying workers off.',
  'cells-in-doubt': () =>
    'Nobody seems to lay here, and the queen cells that were seen may come to nothing: a frame of eggs lets them start again, and its brood holds laying workers off.',
  'not-proven': () =>
    'Whether a queen lives here is not proven: they build cells on a frame of eggs within five days if she does not, it holds laying workers off, and they can start again.',
  'young-queen-not-proven': () =>
    'A young queen should be out by then, and may be lost on her flights: they build cells on a frame of eggs within five days if she is, it holds laying workers off, and they can start again.',
  'cut-cells-first': () => 'Cut every queen cell before she goes in, or the first virgin kills her.',
  'bought-lays-soon': () =>
    'A mated queen lays within days of her release; one raised here takes four weeks, if she mates. Look for a virgin and for cells first.',
  'no-queen-to-save': () =>
    'There is no queen to save here, and few bees to raise one: their work is worth more in a queenright colony. Look for brood disease first.',
  'few-bees-to-save': () =>
    'Few bees, and a queen to save: a frame of capped brood gives two frames of bees within two weeks.',
  'being-raised': ({ on }: { on: Day }) =>
    `A queen is being raised or mating: her eggs are not to be expected before a look on ${inWords(on)} can tell.`,
  'queen-likely': ({ by }: { by: Day }) =>
    `A queen is likely here: by ${inWords(by)} her eggs or brood can tell, and nobody else's can be mistaken for them.`,
  'look-tells': ({ on }: { on: Day }) =>
    `A look on ${inWords(on)} tells most: eggs, queen cells or neither decide what follows.`,
  'look-now-tells': () => 'A look now tells most: eggs, queen cells or neither decide what follows.',
  'order-now': () => 'A mated queen is likely to be needed here, and none is in hand: order one now.',
  'order-one-today': () => 'None is in hand: order one today.',
  'takes-days': ({ days }: { days: number }) => `She takes ${days} days to come.`,
  'leave-then': ({ until, task, on }: { until: Day; task: 'give' | 'look'; on: Day | null }) => {
    const act = task === 'give' ? 'give it a frame of eggs' : 'look'
    return `Leave it alone until ${inWords(until)}${on === null ? `, then ${act}` : `; ${act} on ${inWords(on)}`}.`
  },
  'boost-layer': () =>
    'A laying queen with few bees: a frame of capped brood with its bees keeps her brood warm until her own emerges. Do not unite it.',
  'leave-layer': ({ until }: { until: Day }) =>
    `A queen lays here: leave her in peace until ${inWords(until)}, when one look can show capped worker brood, count the bees, and settle what else is missing.`,
  'leave-to-grow': ({ until }: { until: Day }) =>
    `A queen lays here, and it is to grow: leave her in peace until ${inWords(until)}.`,
  'lets-go-later': () => 'The look that lets it go comes later.',
  'cells-too-few-bees': ({ frames }: { frames: number }) =>
    `Queen cells, and only ${frames} frames of bees: too few to keep them warm and to mate a virgin from. Add a frame of capped brood with its bees now, before quiet time; or cut the cells and unite it.`,
  'one-look-settles': ({ unmet }: { unmet: readonly UnmetReason[] }) =>
    `What is missing before it may go can be seen to in one look: ${missing(unmet)}.`,
  'hold-over-missing': ({ unmet }: { unmet: readonly UnmetReason[] }) =>
    `The hold is over and a mated queen is proven. What is missing before it may go: ${missing(unmet)}.`,
  'warm-day-only': () => 'It is the cold season: only on a calm day of 16 °C or more, and briefly.',
  'record-has-queen': ({ share, before }: { share: number; before: 'it-goes' | 'she-is-given-up' }) =>
    `Of 100 colonies with this record ${share} have a queen: before ${before === 'it-goes' ? 'it goes' : 'she is given up or another bought'}, look once more for eggs, frame by frame against the light.`,
  'not-before': ({ on }: { on: Day }) => `Not before ${inWords(on)}.`,
}
