/** The adviser that weighs: what the facts and guard rails leave open, by what becomes of the colony. */
import { TEST_FRAME_IGNORED_AFTER } from '../biology/index.ts'
import { addDays, type Day, daysBetween } from '../days.ts'
import { oddsToday } from '../forecast/index.ts'
import { type History, lastOpening } from '../journal/index.ts'
import {
  type Advised,
  type Context,
  choresWaitFor,
  coldSeason,
  isQuiet,
  lookAsked,
  lookFromOutside,
  MATING_NUCLEUS_FRAMES,
  mayBuy,
  mayGive,
  mayOpen,
  mayUnite,
  openLook,
  phaseOn,
  toTakeOut,
} from '../recovery/index.ts'
import { layerPlan } from './layer.ts'
import { leadOf, type Option } from './options.ts'
import { type Guards, lastEvidence, type Settings, type Standing, standingOn } from './stand.ts'
import { storyAt } from './stories.ts'
import { choreAdvice, layerAdvice, layerUntil, standingAdvice } from './words.ts'

export interface Weighed {
  advice: Advised
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

/** Days for which a look stands as an answer to the question whether workers lay. */
const WATCHED = 3

/** The box was looked into just now: that the days of laying workers have begun is no reason to look once more. */
const watched = ({ s, today }: Context): boolean =>
  s.history.entries.some(
    (e) => e.kind === 'inspection' && e.opened && e.eggs !== undefined && daysBetween(e.on, today) <= WATCHED,
  )

/** Facts that leave nothing to weigh: a cage to be seen to, a queen to be taken out, laying workers proven, cells beside a layer. */
const decidedByFacts = (c: Context): boolean =>
  c.s.caged !== null ||
  toTakeOut(c.s) !== null ||
  c.asked('cells-beside') !== undefined ||
  c.asked('look-again') !== undefined ||
  (c.asked('laying-workers') !== undefined && !watched(c)) ||
  c.s.otherQueen !== null ||
  (c.s.queen.is === 'laying-workers' && !turningBack(c))

export const weigherOf =
  (settings: WeighSettings) =>
  (c: Context): Weighed | null => {
    if (decidedByFacts(c) || c.exposure !== null) return null
    const { s, today } = c
    const phase = phaseOn(s, today)
    if (phase === 'laying' || phase === 'queenright') {
      const on = lastEvidence(s.history)
      if (oddsToday(storyAt(s.history, on, settings.model)).laying >= SURELY) return layer(c, on, settings)
    }
    if (coldSeason(s.protocol, today)) return mildDay(c)
    const few = tooFewToMate(c)
    if (few !== null) return { advice: few, options: [] }
    const standing = standingOn(
      s.history,
      today,
      guardsOf(c, addDays(today, leadOf(settings.supplies))),
      settings,
    )
    if (standing === null) return null
    const { options } = standing.decision
    const chore = today < standing.on ? choresWaitFor(s, standing.on) : null
    if (chore !== null && today >= chore.from && !isQuiet(today, c.quiet) && mayOpen(s, today) === null)
      return { advice: choreAdvice(chore.ask), options }
    // A rung that is due is not put off for a second opinion within the week. In a small colony it is the queen that is bought,
    // or what was decided that stands: by its dates alone it would be united.
    if (c.asked('buy-queen') !== undefined && mayBuy(s, today) === null && secondOpinion(standing)) {
      if (c.asked('unite-or-boost') === undefined) return null
      const bought = standing.decision.options.find((o) => o.act === 'queen')
      if (bought !== undefined && nearly(bought, standing, settings)) {
        const decision = { ...standing.decision, act: 'queen', inDays: 0, chosen: bought } as const
        return {
          advice: standingAdvice(c, { ...standing, decision, on: today }, settings),
          options: decision.options,
        }
      }
    }
    // Windows are what people plan by: a question that is due is not put off for one that tells a little more.
    return { advice: lookFirst(c, standing) ?? standingAdvice(c, standing, settings), options }
  }

/** Worth this share of a colony less than what was decided, a rung that is due is taken all the same. Judgement. */
const DUE = 0.05

const nearly = (option: Option, { decision }: Standing, { costs }: Settings): boolean =>
  option.value >= decision.chosen.value - DUE * costs.worth

const secondOpinion = ({ decision }: Standing): boolean =>
  decision.chosen.act === 'look' && decision.chosen.inDays < 7

/** The look that is due before what was decided: one before a queen or the end, and one visit for two where somebody has to come anyway. */
function lookFirst(c: Context, { decision, on }: Standing): Advised | null {
  const ask = lookAsked(c)
  if (ask === null || (ask.rule === 'laying-workers' && watched(c))) return null
  // A frame of eggs shows nothing before its day, and the same look answers both.
  const frame = lastFrame(c.s.history)
  if (frame !== null && daysBetween(frame, c.today) < READ_FROM) return null
  const waits = c.today < on
  const acts = !waits && ['give', 'boost', 'queen', 'unite'].includes(decision.act)
  // A look planned for a day of the question's own window is not made sooner.
  const comes = waits && (lookFromOutside(c) !== null || (c.today >= ask.due && on > ask.closes))
  return acts || comes ? openLook(c) : null
}

/** A frame of eggs as a test, where no queen is known to be lost, tells little before this day: most queens have not begun again. */
const TEST_FROM = 14

/** What the facts and proofs forbid, on the days to come. */
function guardsOf({ s, today, quiet }: Context, arrives: Day): Guards {
  const failed = s.queen.is === 'none' && s.queen.failed !== 'own'
  const frame = lastFrame(s.history)
  return {
    mayOpen: (day) => !isQuiet(day, quiet) && mayOpen(s, day) === null,
    // A month without young brood, bees pass a frame of eggs over; and what failed once is not tried again.
    mayGive: (day) =>
      mayGive(s, day) === null &&
      !failed &&
      !unread(s.history, frame, day) &&
      (s.queen.is === 'none' || daysBetween(s.lastOldEgg, day) >= TEST_FROM) &&
      daysBetween(s.lastYoungBrood, day) <= TEST_FRAME_IGNORED_AFTER,
    framesLeft: !failed,
    mayBuy: mayBuy(s, today) === null || cellsCanGo(s, arrives),
    mayUnite: mayUnite(s, today) === null,
  }
}

/** The day on which a frame of eggs was last given. */
const lastFrame = ({ entries }: History): Day | null =>
  entries.findLast((e) => e.kind === 'given' && e.what === 'egg-frame')?.on ?? null

/** Cells on a frame are plain from the third day after it was given, and for as long as they stand. */
const READ_FROM = 3
const READ_TO = 14

/** A frame was given, and nobody has looked yet what became of it: it is read before another is given. */
const unread = ({ entries }: History, frame: Day | null, day: Day): boolean =>
  frame !== null &&
  daysBetween(frame, day) <= READ_TO &&
  !entries.some(
    (e) =>
      e.kind === 'inspection' && e.opened && e.cells !== undefined && daysBetween(frame, e.on) >= READ_FROM,
  )

/** Cells were found, and none of their queens can be out by the day on which a bought one goes in: they are cut first. */
const cellsCanGo = ({ queen, lost }: Context['s'], arrives: Day): boolean =>
  lost === null && queen.is === 'rearing' && arrives < queen.emergence.earliest

/** Cells, and too few bees to keep them warm and send a virgin out: bees first. */
function tooFewToMate({ s, quiet, today }: Context): Advised | null {
  const frames = s.strength?.counted === true ? s.strength.frames : null
  if (s.queen.is !== 'rearing' || frames === null || frames >= MATING_NUCLEUS_FRAMES || isQuiet(today, quiet))
    return null
  const given = s.history.entries.some(
    (e) => e.kind === 'given' && e.what === 'capped-brood' && e.on >= (s.strength?.on ?? today),
  )
  if (given) return null
  return {
    action: 'boost',
    rule: 'unite-or-boost',
    reasons: [{ code: 'cells-too-few-bees', frames }],
  }
}

function layer(c: Context, decidedOn: Day, settings: WeighSettings): Weighed | null {
  const plan = layerPlan(c, decidedOn, settings)
  // On its day the questions that are open say best what to look for.
  if (!plan.boost && c.today >= plan.look) return c.readiness.unmet.length > 0 ? lastLook(c) : null
  const sooner = plan.boost ? null : soonerAsked(c, plan.look)
  if (sooner !== null) return { advice: layerUntil(sooner), options: [] }
  const chore = plan.boost ? null : choresWaitFor(c.s, plan.look)
  if (chore !== null && chore.from < plan.look) {
    if (c.today >= chore.from) return { advice: choreAdvice(chore.ask), options: [] }
    return { advice: layerAdvice({ ...plan, look: chore.from }, chore.ask), options: [] }
  }
  return { advice: layerAdvice(plan), options: [] }
}

/** Cells beside her, or two looks that disagree, are seen to in their own days and not when she is looked at anyway. */
function soonerAsked({ s, today }: Context, look: Day): Day | null {
  const opens = (['cells-beside', 'look-again'] as const).flatMap((rule) => s.pending(rule)?.opens ?? [])
  const [first] = opens.filter((day) => day > today && day < look).sort()
  return first ?? null
}

/** So long into the cold season days still come that are warm enough for a short look. Judgement. */
const MILD_DAYS = 30

/** A colony whose queen was still to be proven when the cold came is looked into once more on a mild day, not left until spring. */
function mildDay(c: Context): Weighed | null {
  const { s, today } = c
  const since = addDays(today, -MILD_DAYS)
  if (coldSeason(s.protocol, since) || coldSeason(s.protocol, s.history.intake.on)) return null
  return s.queen.is === 'none' || s.queen.is === 'laying-workers' || s.queen.is === 'caged'
    ? null
    : lastLook(c)
}

/** A look that did not suffice is not made again within the week (disease looks and counts stand for seven days). */
const LOOKED_LATELY = 7

/**
 * The look that can let it go. In the cold season too, for a colony that is proven and strong must not wait for spring behind a lid:
 * on a day warm enough, as the advice says.
 */
function lastLook(c: Context): Weighed | null {
  const { s, today, readiness } = c
  const barred = mayOpen(s, today)?.code
  if (barred !== undefined && barred !== 'cold-season') return null
  const last = lastOpening(s.history)
  if (last !== undefined && daysBetween(last.on, today) < LOOKED_LATELY) return null
  const warm = barred === undefined ? [] : [{ code: 'warm-day-only' } as const]
  const unmet = readiness.unmet.map((u) => u.reason)
  return {
    advice: {
      action: 'open-and-look',
      reasons: [{ code: 'one-look-settles', unmet }, ...warm],
    },
    options: [],
  }
}
