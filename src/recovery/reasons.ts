/** Why something may not be done today: a code with its parameters, and one wording for all of them. */

import { type Day, inWords } from '../days.ts'
import { never } from '../journal/index.ts'

export type Reason =
  | { code: 'held'; since: Day }
  | { code: 'exposed'; since: Day; how: string }
  | { code: 'lost-box'; on: Day }
  | { code: 'robbing'; on: Day }
  | { code: 'quiet'; until: Day }
  | { code: 'cold-season' }
  | { code: 'cold-day'; outdoorC: number; leastC: number }
  | { code: 'caged-queen'; since: Day }
  | { code: 'layer-with-bees'; frames: number | null }
  | { code: 'raising'; until: Day }
  | { code: 'layer' }
  | { code: 'laying-workers' }
  | { code: 'another-queen'; since: Day }
  | { code: 'no-mating'; about: Day }

/** The sentence, without its full stop. */
export function reasonWords(r: Reason): string {
  switch (r.code) {
    case 'held':
      return `brood disease was suspected on ${inWords(r.since)} and is not cleared`
    case 'exposed':
      return `it ${r.how} on ${inWords(r.since)}, and that colony is suspected of brood disease`
    case 'lost-box':
      return `the box was found lost on ${inWords(r.on)}`
    case 'robbing':
      return `robbing was seen on ${inWords(r.on)}: an open box feeds the robbers`
    case 'quiet':
      return `a young queen is emerging, maturing or mating until ${inWords(r.until)}`
    case 'cold-season':
      return 'it is the cold season: wait for a warm, calm day'
    case 'cold-day':
      return `at ${r.outdoorC} °C the brood chills: wait for ${r.leastC} °C`
    case 'caged-queen':
      return `a queen is in a cage in this box since ${inWords(r.since)}: see to her first`
    case 'layer-with-bees':
      return r.frames === null
        ? 'a queen lays here'
        : `a queen lays here, and ${r.frames} frames of bees are a nucleus, not a lost colony`
    case 'raising':
      return `a virgin or queen cells may be in it until ${inWords(r.until)}, and would kill her`
    case 'layer':
      return 'a queen lays here'
    case 'laying-workers':
      return 'laying workers kill a queen that is put in'
    case 'another-queen':
      return `a queen was rejected or dead in her cage on ${inWords(r.since)}: another is likely in there`
    case 'no-mating':
      return `a queen raised from it would fly to mate about ${inWords(r.about)}, when queens do not mate here`
    default:
      return never(r)
  }
}
