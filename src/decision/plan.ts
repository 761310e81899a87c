/** The plan of a colony with its decision: facts and proofs from recovery, the belief from forecast, and what to do from both. */
import { type Day, daysBetween, inWords } from '../days.ts'
import { oddsToday, storyOf } from '../forecast/queen-odds.ts'
import { DEFAULT_RATES } from '../forecast/rates.ts'
import { listModelOf, type Model } from '../forecast/story/walk.ts'
import type { History } from '../journal/history.ts'
import { planOf as factsOf } from '../recovery/plan.ts'
import type { Action, Advice, Plan } from '../recovery/plan-types.ts'
import { DEFAULT_PROTOCOL, type Protocol } from '../recovery/protocol.ts'
import { type Costs, DEFAULT_COSTS, DEFAULT_SUPPLIES, type Supplies } from './costs.ts'
import { layerPlan } from './layer.ts'
import { type Library, libraryOf } from './library.ts'
import type { Act } from './options.ts'
import { lastEvidence, type Settings, type Standing, standingOn } from './stand.ts'

export interface PlanSettings {
  model?: Model
  library?: Library
  costs?: Partial<Costs>
  supplies?: Partial<Supplies>
}

const shared = { model: listModelOf(DEFAULT_RATES), library: libraryOf() }
const models = new Map<string, Model>()

/** A model of the default rates for those mating months, kept. */
function modelFor(protocol: Protocol): Model {
  const key = protocol.matingMonths.join()
  if (key === '') return shared.model
  const known = models.get(key)
  if (known !== undefined) return known
  const made = listModelOf(DEFAULT_RATES, protocol.matingMonths)
  models.set(key, made)
  return made
}

/** What only facts decide: a box that left, is held, is ready to go, or has a cage to be seen to. */
const FACTS_DECIDE: readonly string[] = ['none', 'call-inspector', 'move-out', 'release-queen']

/** What an option is called in a plan. */
const ACTION_OF: Record<Act, Action> = {
  look: 'open-and-look',
  give: 'give-egg-frame',
  boost: 'boost' as Action,
  queen: 'buy-queen',
  unite: 'unite',
}

export interface PlanOption {
  action: Action
  /** Days from the day it was decided on. */
  inDays: number
  /** Chance that the colony keeps a queen, and what it is worth in the yard's money. */
  keepsQueen: number
  value: number
}

export interface DecidedPlan extends Plan {
  /** What else could be done, best first, where the guard rails leave it open. */
  options?: PlanOption[]
}

export function planOf(
  history: History,
  today: Day,
  protocol: Protocol = DEFAULT_PROTOCOL,
  settings: PlanSettings = {},
): DecidedPlan {
  const facts = factsOf(history, today, protocol)
  if (FACTS_DECIDE.includes(facts.advice.action)) return facts
  const ground: Settings = {
    model: settings.model ?? modelFor(protocol),
    library: settings.library ?? shared.library,
    protocol,
    costs: weighed({ ...DEFAULT_COSTS, ...settings.costs }),
    supplies: { ...DEFAULT_SUPPLIES, ...settings.supplies },
  }
  if ((facts.phase === 'laying' || facts.phase === 'queenright') && laysFor(history, ground) >= SURELY)
    return { ...facts, advice: layerAdvice(facts, history, ground) }
  // Proven laying workers are united, unless the keeper has begun to turn them back with frames.
  if (facts.phase === 'laying-workers' && !turningBack(history, today)) return facts
  const { quiet } = facts
  const standing = standingOn(
    history,
    today,
    {
      mayOpen: (day) => quiet === null || day < quiet.from || day > quiet.to,
      mayGive: () => facts.phase !== 'awaiting-release',
      mayBuy: facts.phase !== 'awaiting-release',
      mayUnite: facts.phase !== 'awaiting-release',
    },
    ground,
  )
  if (standing === null) return facts
  const options = standing.decision.options.map((o) => ({
    action: o.act === 'look' && o.inDays > 0 ? ('leave-alone' as const) : ACTION_OF[o.act],
    inDays: o.inDays,
    keepsQueen: Math.round(o.keeps * 1000) / 1000,
    value: Math.round(o.value * 10) / 10,
  }))
  return { ...facts, advice: adviceOf(standing, facts, today, settings), options }
}

/** A colony lost costs more than its price: the work on it is lost with it, and the yard's good name. Judgement. */
const LOST_COSTS_MORE = Number(globalThis.process?.env.LW ?? 3)

const weighed = (costs: Costs): Costs => ({ ...costs, worth: costs.worth * LOST_COSTS_MORE })

/** A frame of open brood was given in the last days. */
const turningBack = (history: History, today: Day): boolean =>
  history.entries.some(
    (e) =>
      e.kind === 'given' &&
      (e.what === 'egg-frame' || e.what === 'open-brood') &&
      daysBetween(e.on, today) <= 10,
  )

/** From here on a layer is taken for proven. */
const SURELY = 0.85

/** Chance that a queen lays, as of the last evidence. */
function laysFor(history: History, { model }: Settings): number {
  const day = lastEvidence(history)
  return oddsToday(storyOf(history, day, model, day)).laying
}

function layerAdvice(facts: Plan, history: History, s: Settings): Advice {
  const { look, boost } = layerPlan(facts, history, lastEvidence(history), s)
  if (boost)
    return { action: 'boost' as 'unite', why: 'Few bees and a queen that lays: add a frame of capped brood.' }
  if (facts.asOf >= look)
    return facts.advice.action === 'open-and-look'
      ? facts.advice
      : { action: 'open-and-look', why: 'All that is missing can be seen today.' }
  if (facts.advice.action === 'outside-look') return facts.advice
  return { action: 'leave-alone', why: `Leave it alone until ${inWords(look)}.` }
}

function adviceOf(standing: Standing, facts: Plan, today: Day, settings: PlanSettings): Advice {
  const { decision, on } = standing
  const keeps = Math.round(100 * decision.chosen.keeps)
  const inHand = settings.supplies === undefined || (settings.supplies.queensInHand ?? 0) > 0
  const waiting = (until: Day): Advice =>
    facts.advice.action === 'outside-look'
      ? facts.advice
      : { action: 'leave-alone', why: `Leave it alone until ${inWords(until)}.` }
  switch (decision.act) {
    case 'look':
    case 'wait':
      if (today >= on)
        return { action: 'open-and-look', why: `Look: of 100 like this, ${keeps} keep a queen.` }
      if (decision.order && !inHand) return { action: 'order-queen' as 'buy-queen', why: 'Order a queen.' }
      return waiting(on)
    case 'give':
      if (today < on) return waiting(on)
      return {
        action: 'give-egg-frame',
        why: `Give a frame of eggs: of 100 like this, ${keeps} keep a queen.`,
      }
    case 'boost':
      return { action: 'boost' as 'unite', why: 'Add a frame of capped brood.' }
    case 'queen':
      return { action: 'buy-queen', why: `Buy a queen: of 100 like this, ${keeps} keep one.` }
    default:
      return { action: 'unite', why: 'Unite it.' }
  }
}
