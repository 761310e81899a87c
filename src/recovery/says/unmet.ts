/** What keeps a colony here: each condition that is not met, as a clause. */
import { type Day, inWords } from '../../days.ts'
import { type Deed, deedInEnglish } from './inside.ts'

const KEEPS = { robbing: 'robbing', moths: 'wax moths', 'deformed-wings': 'deformed wings' } as const

export const UNMET = {
  hold: ({ days }: { days: number }) => `hold days: ${days} days from intake`,
  'worker-brood': () => 'conclusive worker brood: flat worker caps that only her queen can have laid',
  'strength-uncounted': () => 'strength: frames of bees not counted since intake',
  'strength-low': ({ minimum, last }: { minimum: number; last: number }) =>
    `strength at or above the minimum of ${minimum} frames of bees (last count ${last})`,
  'mites-unwashed': () => 'mites: no mite wash yet',
  'mites-old': ({ days }: { days: number }) => `mites: the last mite wash is older than ${days} days`,
  'mites-over': ({ most, per100 }: { most: number; per100: number }) =>
    `mites under the threshold of ${most} per 100 bees (last wash ${per100.toFixed(1)}): treat by the label, then wash again`,
  'disease-look-none': () => 'disease look: none yet (open the box and note the signs looked for)',
  'disease-suspected': () =>
    'disease look without suspicion: brood disease is suspected; the inspector decides',
  'disease-look-old': ({ days }: { days: number }) => `disease look within ${days} days`,
  'stores-unseen': () => 'stores: not looked at yet',
  'stores-low': () => 'stores: low at the last look; feed',
  beetles: () => 'no beetles sliming: small hive beetles were seen at the last look',
  'brood-unseen': ({ days }: { days: number }) => `eggs or open brood seen within ${days} days`,
  'brood-none': () => 'eggs or open brood at the last look: none were found',
  paused: ({ since }: { since: Day }) => `eggs again: none were found on ${inWords(since)}`,
  cells: () => 'no open or capped queen cells: there were some at the last look',
  sign: ({ sign }: { sign: keyof typeof KEEPS }) => `no ${KEEPS[sign]} at the last look`,
  temper: () => 'temper under 4, or a signed note that decides to let it go as it is',
  withdrawal: ({ until }: { until: Day }) => `treatment: its withdrawal ends on ${inWords(until)}`,
  'treatment-unwashed': ({ on, days }: { on: Day; days: number }) =>
    `treatment of ${inWords(on)} over, and a wash ${days} days or more after it`,
  sprayed: () => 'sprayed comb gone: a signed note says so',
  'looks-disagree': ({ since }: { since: Day }) =>
    `a look that settles it: the looks of ${inWords(since)} disagree`,
  caged: () => 'no queen left in a cage',
  bound: ({ how }: { how: Deed }) => `clear of brood disease: it ${deedInEnglish(how)}`,
}
