/** Why something may not be done today, without a full stop. */
import { type Day, inWords } from '../../days.ts'
import { type Deed, deedInEnglish } from './inside.ts'

export const GUARDS = {
  held: ({ since }: { since: Day }) => `brood disease was suspected on ${inWords(since)} and is not cleared`,
  exposed: ({ since, how }: { since: Day; how: Deed }) =>
    `it ${deedInEnglish(how)} on ${inWords(since)}, and that colony is suspected of brood disease`,
  'lost-box': ({ on }: { on: Day }) => `the box was found lost on ${inWords(on)}`,
  robbing: ({ on }: { on: Day }) => `robbing was seen on ${inWords(on)}: an open box feeds the robbers`,
  quiet: ({ until }: { until: Day }) =>
    `a young queen is emerging, maturing or mating until ${inWords(until)}`,
  'cold-season': () => 'it is the cold season: wait for a warm, calm day',
  'cold-day': ({ outdoorC, leastC }: { outdoorC: number; leastC: number }) =>
    `at ${outdoorC} °C the brood chills: wait for ${leastC} °C`,
  'caged-queen': ({ since }: { since: Day }) =>
    `a queen is in a cage in this box since ${inWords(since)}: see to her first`,
  'layer-with-bees': ({ frames }: { frames: number | null }) =>
    frames === null
      ? 'a queen lays here'
      : `a queen lays here, and ${frames} frames of bees are a nucleus, not a lost colony`,
  raising: ({ until }: { until: Day }) =>
    `a virgin or queen cells may be in it until ${inWords(until)}, and would kill her`,
  layer: () => 'a queen lays here',
  'laying-workers': () => 'laying workers kill a queen that is put in',
  'another-queen': ({ since }: { since: Day }) =>
    `a queen was rejected or dead in her cage on ${inWords(since)}: another is likely in there`,
  'no-mating': ({ about }: { about: Day }) =>
    `a queen raised from it would fly to mate about ${inWords(about)}, when queens do not mate here`,
}
