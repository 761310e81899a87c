/** The adviser that weighs: what the facts and guard rails leave open, by what becomes of the colony. */
import { type Day, daysBetween } from '../days.ts'
import { oddsToday, storyOf } from '../forecast/index.ts'
import {
  type Advice,
  type Context,
  isQuiet,
  mayBuy,
  mayGive,
  mayOpen,
  mayUnite,
  phaseOn,
} from '../recovery/index.ts'
import { layerPlan } from './layer.ts'
import type { Option } from './options.ts'
import { lastEvidence, type Settings, standingOn } from './stand.ts'
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
    const quietly = (day: Day): boolean => !isQuiet(day, c.quiet) && mayOpen(s, day) === null
    const standing = standingOn(
      s.history,
      today,
      {
        mayOpen: quietly,
        mayGive: (day) => mayGive(s, day) === null,
        mayBuy: mayBuy(s, today) === null,
        mayUnite: mayUnite(s, today) === null,
      },
      settings,
    )
    if (standing === null) return null
    return { advice: standingAdvice(c, standing, settings), options: standing.decision.options }
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
  return seen || mayOpen(c.s, c.today) !== null
    ? null
    : {
        advice: {
          action: 'open-and-look',
          why: `What is missing before it may go can be seen to in one look: ${c.readiness.unmet.map((u) => u.what).join('; ')}.`,
        },
        options: [],
      }
}
