/** A colony in which a queen is proven to lay: one look when it can go, a frame of brood if it would not get there. */
import { WORKER } from '../biology/index.ts'
import { addDays, type Day, daysBetween, later } from '../days.ts'
import { NOTHING_AROUND, type Story } from '../forecast/index.ts'
import type { History } from '../journal/index.ts'
import { type Context, proofOf } from '../recovery/index.ts'
import { compacted, worthOf } from './leaf.ts'
import { strengthClass } from './nights.ts'
import { seasonOn } from './options.ts'
import { laidFor, type Settings } from './stand.ts'
import { storyAt } from './stories.ts'
import { BOOST_FRAMES, framesNow } from './strength-now.ts'

export interface LayerPlan {
  /** The day on which one look can show that it may go. */
  look: Day
  /** A frame of capped brood is worth more than it costs. */
  boost: boolean
  frames: number
}

/** Likeliest proof is planned for two days later: most first eggs are seen late, not early. */
const PROOF_MARGIN = 2
/** Days that a colony with emerging brood takes for one more frame of bees. Judgement on the package curve (doubles in ten days). */
const DAYS_PER_FRAME = 4
/** Days until the last of a donor's capped brood is out. */
const BROOD_OF_DONOR = 21
/** After a count that was too low nobody counts again sooner. */
const COUNT_AGAIN = 7

/** The day from which it is likely to have bees enough. */
function strongFrom(history: History, story: Story, least: number): Day {
  const count = history.entries.findLast((e) => e.kind === 'inspection' && e.framesOfBees !== undefined)
  if (count?.kind !== 'inspection' || count.framesOfBees === undefined || count.framesOfBees >= least)
    return history.intake.on
  const emerging = addDays(story.today, Math.max(0, WORKER.emerge - Math.round(laidFor(story))))
  const grown = addDays(later(emerging, count.on), Math.ceil((least - count.framesOfBees) * DAYS_PER_FRAME))
  return later(addDays(count.on, COUNT_AGAIN), grown)
}

/** What to do with a proven layer, from what was known on the day of the last evidence. */
export function layerPlan({ s: state, today }: Context, decidedOn: Day, s: Settings): LayerPlan {
  const { history, queen } = state
  const story = storyAt(history, decidedOn, s.model)
  const proof =
    queen.is === 'laying' ? addDays(proofOf(state)?.likely ?? today, PROOF_MARGIN) : history.intake.on
  const hold = addDays(history.intake.on, s.protocol.holdDays)
  const ready = later(hold, strongFrom(history, story, s.protocol.minFramesOfBees))
  // Towards the end of the season laying ends too: she is proven as soon as capped brood can, and counted again later.
  const ending = seasonOn(s.protocol, decidedOn).begun < 1
  const look = ending && queen.is === 'laying' ? proof : later(proof, ready)
  const frames = framesNow(history, decidedOn, s.model.rates, laidFor(story))
  const shares = story.walk.byDay[story.t] ?? story.walk.start
  const w = compacted(shares, story.days[story.t]?.around ?? NOTHING_AROUND)
  const worth = (n: number): number =>
    worthOf(
      w,
      s.library({
        model: s.model,
        costs: s.costs,
        strength: strengthClass(n),
        season: seasonOn(s.protocol, decidedOn),
        lead: 5,
      }),
      'proof',
    ).value
  // Capped brood of a donor hides hers, where she is not proven by it yet.
  const late = queen.is === 'laying' ? Math.max(0, BROOD_OF_DONOR - daysBetween(decidedOn, look)) : 0
  const { shut } = seasonOn(s.protocol, decidedOn)
  const boosted = worth(frames + BOOST_FRAMES) * (1 - shut) ** late - s.costs.day * late
  const gain = boosted - worth(frames) - s.costs.frame - s.costs.opening
  const boostedLately = history.entries.some(
    (e) => e.kind === 'given' && e.what === 'capped-brood' && daysBetween(e.on, decidedOn) < COUNT_AGAIN,
  )
  return { look, boost: gain > 0 && !boostedLately, frames }
}
