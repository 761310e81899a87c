/** The plan of a colony: facts, proofs and guard rails from recovery, the belief from forecast, and what to do weighed over both. */

import { addDays, type Day, daysBetween } from '../days.ts'
import { DEFAULT_RATES, KINDS, type Kind, type KindShares, type Model } from '../forecast/index.ts'
import { type History, lastOpening } from '../journal/index.ts'
import {
  type Action,
  type Adviser,
  CHORES,
  DEFAULT_PROTOCOL,
  planOf as factsOf,
  inWordsToo,
  isQuiet,
  NUCLEUS_FRAMES,
  type Plan,
  type Protocol,
  type Supplies as SaidSupplies,
} from '../recovery/index.ts'
import { type Costs, costsWith, suppliesWith } from './costs.ts'
import { type Library, libraryOf } from './library.ts'
import { modelFor } from './models.ts'
import type { Option } from './options.ts'
import { against, believable } from './phase.ts'
import { oddsAt } from './stories.ts'
import { type Weighed, weigherOf } from './weigh.ts'

export interface PlanSettings {
  /** The yard's rates, kept for all its colonies; the defaults when left out. */
  model?: Model | undefined
  library?: Library | undefined
  costs?: { [K in keyof Costs]?: number | undefined } | undefined
  supplies?: SaidSupplies | undefined
  /** Bound to a colony with suspected brood disease. */
  exposure?: Parameters<typeof factsOf>[3] extends { exposure?: infer E } | undefined ? E : never
}

interface PlanOption {
  action: Action
  /** Days from the day on which it was decided. */
  inDays: number
  /** Chance that the colony keeps a queen, and what it is worth in the yard's money. */
  keepsQueen: number
  value: number
}

export interface DecidedPlan extends Plan {
  /** The stories of the queen that fit all that was seen, likeliest first; empty for a colony that has left. */
  belief: { story: Kind; odds: number }[]
  /** What can be done where the guard rails leave it open, best first; empty where facts alone decide. */
  options: PlanOption[]
}

const sharedLibrary = libraryOf()

const ACTION_OF: Record<Option['act'], Action> = {
  look: 'open-and-look',
  give: 'give-egg-frame',
  boost: 'boost',
  queen: 'buy-queen',
  unite: 'unite',
}

const thousandth = (p: number): number => Math.round(p * 1000) / 1000

const optionOf = (o: Option): PlanOption => ({
  action: o.inDays > 0 ? 'leave-alone' : ACTION_OF[o.act],
  inDays: o.inDays,
  keepsQueen: thousandth(o.keeps),
  value: Math.round(o.value * 10) / 10,
})

/**
 * The plan of a colony on a day.
 *
 * @param history what stands in its journal; entries after `today` must not be in it
 * @param today the day in the yard's time zone
 */
export function planOf(
  history: History,
  today: Day,
  protocol: Protocol = DEFAULT_PROTOCOL,
  settings: PlanSettings = {},
): DecidedPlan {
  // Nothing is weighed of a colony that has left: its plan is its facts.
  if (history.outcome !== null)
    return { ...factsOf(history, today, protocol, settings), belief: [], options: [] }
  const model = settings.model ?? modelFor(DEFAULT_RATES, protocol)
  let weighed: Weighed | null = null
  const weigh = weigherOf({
    model,
    library: settings.library ?? sharedLibrary,
    protocol,
    costs: costsWith(settings.costs),
    supplies: suppliesWith(settings.supplies),
    saidSupplies: settings.supplies?.queensInHand !== undefined,
  })
  const adviser: Adviser = (c) => {
    weighed = weigh(c)
    return weighed?.advice ?? null
  }
  const plan = factsOf(history, today, protocol, settings, adviser)
  const found = weighed as Weighed | null
  const odds = oddsAt(history, today, model)
  const { action } = plan.advice
  const doubt =
    against(action, odds) &&
    !(tooFew(history) && action !== 'move-out') &&
    !lookedTwice(history, action, odds)
      ? doubted(history, plan, odds)
      : null
  return {
    ...plan,
    phase: believable(plan.phase, odds),
    advice: doubt ?? plan.advice,
    until: doubt?.until === undefined ? plan.until : addDays(doubt.until, 1),
    belief: KINDS.map((story) => ({ story, odds: thousandth(odds[story]) }))
      .filter((b) => b.odds >= NAMED)
      .sort((a, b) => b.odds - a.odds),
    options: (found?.options ?? []).map(optionOf),
  }
}

/** So few bees, by a count, are given up or strengthened whoever lays: the guard rails' own measure. */
function tooFew(history: History): boolean {
  const count = history.entries.findLast((e) => e.kind === 'inspection' && e.framesOfBees !== undefined)
  return count?.kind === 'inspection' && (count.framesOfBees ?? 0) < NUCLEUS_FRAMES
}

/** Odds of a layer from which a second look is enough, and the days within which it is a second look of the same thing. Judgement. */
const TWICE = 0.9
const SAME = 28

/** Before it goes one more look is asked for, not one after the other: two on end that saw young brood settle it. */
function lookedTwice(history: History, action: Action, odds: KindShares): boolean {
  if (action !== 'move-out' || odds.laying < TWICE) return false
  const [last, before] = history.entries.filter((e) => e.kind === 'inspection' && e.opened).reverse()
  const young = (e: typeof last): boolean =>
    e?.kind === 'inspection' && (e.eggs === 'single' || (e.open !== undefined && e.open !== 'none'))
  return (
    last !== undefined &&
    before !== undefined &&
    young(last) &&
    young(before) &&
    daysBetween(before.on, last.on) <= SAME
  )
}

/** Days until looks that disagree are settled by one more (common practice: two or three). */
const SETTLE = 3
/** From so many of a hundred on nobody looks before her capped brood can tell. */
const SURE = 90
const PLAIN = 9

/** With a chore that is late the box is opened anyway, and the look made with it. */
const choreLate = ({ checks }: Plan): boolean =>
  checks.some((c) => CHORES.includes(c.rule) && c.status === 'overdue')

/** Where the ladder would give a queen up that more likely than not is here: one more look. */
function doubted(history: History, plan: Plan, odds: KindShares): Plan['advice'] {
  const { asOf: today, quiet } = plan
  const { action } = plan.advice
  const share = Math.round(100 * (odds.laying + odds.present))
  const last = lastOpening(history)
  const again =
    last === undefined ? today : addDays(last.on, share >= SURE && action !== 'move-out' ? PLAIN : SETTLE)
  const before = action === 'move-out' ? 'it-goes' : 'she-is-given-up'
  const why = { code: 'record-has-queen', share, before } as const
  return inWordsToo(
    today >= again || (choreLate(plan) && !isQuiet(today, quiet))
      ? { action: 'open-and-look', reasons: [why] }
      : {
          action: 'leave-alone',
          until: addDays(again, -1),
          reasons: [why, { code: 'not-before', on: again }],
        },
  )
}

/** Shares rarer than this are not named. */
const NAMED = 0.005
