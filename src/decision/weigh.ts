/** The adviser that weighs: what the facts and guard rails leave open, by what becomes of the colony. */
import { TEST_FRAME_IGNORED_AFTER } from '../biology/index.ts'
import { type Day, daysBetween } from '../days.ts'
import { oddsToday, storyOf } from '../forecast/index.ts'
import {
  type Advice,
  type Context,
  isQuiet,
  lookAsked,
  mayBuy,
  mayGive,
  mayOpen,
  mayUnite,
  openLook,
  phaseOn,
} from '../recovery/index.ts'
import { layerPlan } from './layer.ts'
import type { Option } from './options.ts'
import { type Guards, lastEvidence, type Settings, standingOn } from './stand.ts'
import { layerAdvice, standingAdvice } from './words.ts'

export interface Weighed {
  advice: Advice
  options: readonly Option[]
}

export interface WeighSettings extends Settings {
  /** What is at hand was said, so a queen that is not there is ordered and not introduced. */
  saidSupplies: boolean
}

/** From this chance on that a queen lays, a layer that the facts call proven is taken for proven. */
const SURELY = 0.85

/** Days in which a frame of open brood may still turn laying workers back. */
const TURNING = 10

const turningBack = ({ s, today }: Context): boolean =>
  s.history.entries.some(
    (e) =>
      e.kind === 'given' &&
      (e.what === 'egg-frame' || e.what === 'open-brood') &&
      daysBetween(e.on, today) <= TURNING,
  )

/** Facts that leave nothing to weigh: a cage to be seen to, a queen to be taken out, laying workers proven, cells beside a layer. */
const decidedByFacts = (c: Context): boolean =>
  c.s.caged !== null ||
  c.s.takeOut !== null ||
  c.asked('cells-beside') !== undefined ||
  (c.s.queen.is === 'laying-workers' && !turningBack(c))

export const weigherOf =
  (settings: WeighSettings) =>
  (c: Context): Weighed | null => {
    if (decidedByFacts(c) || c.exposure !== null) return null
    const { s, today } = c
    const phase = phaseOn(s, today)
    if (phase === 'laying' || phase === 'queenright') {
      const on = lastEvidence(s.history)
      if (oddsToday(storyOf(s.history, on, settings.model, on)).laying >= SURELY)
        return layer(c, on, settings)
    }
    const standing = standingOn(s.history, today, guardsOf(c), settings)
    if (standing === null) return null
    const { options } = standing.decision
    // Windows are what people plan by: a question that is due is not put off for one that tells a little more.
    const ask = today < standing.on ? lookAsked(c) : null
    const due = ask !== null && today >= ask.due ? openLook(c) : null
    return { advice: due ?? standingAdvice(c, standing, settings), options }
  }

/** What the facts and proofs forbid, on the days to come. */
function guardsOf({ s, today, quiet }: Context): Guards {
  const failed = s.queen.is === 'none' && s.queen.failed !== 'own'
  return {
    // In the cold season the lid comes off on a warm day only, which the advice says.
    mayOpen: (day) => !isQuiet(day, quiet) && [undefined, 'cold-season'].includes(mayOpen(s, day)?.code),
    // A month without young brood, bees pass a frame of eggs over; and what failed once is not tried again.
    mayGive: (day) =>
      mayGive(s, day) === null && !failed && daysBetween(s.lastYoungBrood, day) <= TEST_FRAME_IGNORED_AFTER,
    mayBuy: mayBuy(s, today) === null,
    mayUnite: mayUnite(s, today) === null,
  }
}

function layer(c: Context, decidedOn: Day, settings: WeighSettings): Weighed | null {
  const plan = layerPlan(c, decidedOn, settings)
  // On its day the questions that are open say best what to look for.
  if (!plan.boost && c.today >= plan.look) return c.readiness.unmet.length > 0 ? lastLook(c, plan.look) : null
  return { advice: layerAdvice(c, plan), options: [] }
}

/** A look that was made on its day and did not suffice is made again only when something is asked. */
function lastLook(c: Context, look: Day): Weighed | null {
  const seen = c.s.history.entries.some((e) => e.kind === 'inspection' && e.opened && e.on >= look)
  return seen || ![undefined, 'cold-season'].includes(mayOpen(c.s, c.today)?.code)
    ? null
    : {
        advice: {
          action: 'open-and-look',
          why: `What is missing before it may go can be seen to in one look: ${c.readiness.unmet.map((u) => u.what).join('; ')}.`,
        },
        options: [],
      }
}
