/**
 * One thing to do today, and why. Urgency: a closing biological window or an action rung of the ladder, then
 * overdue, due and open questions; in quiet time the lid stays on.
 */
import { EMERGENCE_AFTER_LOSS, MATES_AFTER_EMERGENCE, TEST_FRAME_IGNORED_AFTER } from '../biology/index.ts'
import { addDays, type Day, daysBetween, earlier, inWords } from '../days.ts'
import { askedAgain, lookedLately } from './derived-asks.ts'
import { frameCount } from './fold/strength.ts'
import { isQuiet } from './phase.ts'
import type { Advice, DayRange, Readiness, Rule } from './plan-types.ts'
import { matesOn, miteThresholdOn } from './protocol.ts'
import { CHORES, LOOKS, OUTSIDE } from './rules.ts'
import type { Ask, State } from './state.ts'

export function adviceOn(s: State, today: Day, quiet: DayRange | null, readiness: Readiness): Advice {
  const advice = mainAdvice(s, today, quiet, readiness)
  if (s.history.outcome !== null) return advice
  const hungry = hungrySince(s)
  const needs = [
    hungry === null ? null : `Stores were low on ${inWords(hungry)}: feed it.`,
    miteNeed(s),
    matingNeed(s),
  ]
  // Feeding takes no open box, and a colony that starves needs no other plan.
  const action = hungry !== null && advice.action === 'leave-alone' ? 'outside-look' : advice.action
  return { action, why: [advice.why, ...needs.filter((n) => n !== null)].join(' ') }
}

/** The day on which stores were found low, unless it was fed since; null when they were not. */
const hungrySince = (s: State): Day | null =>
  s.stores?.level === 'low' && (s.fedOn === null || s.fedOn < s.stores.on) ? s.stores.on : null

/** A queen that is being raised too late, or too early, in the year. */
function matingNeed(s: State): string | null {
  if (s.queen.is !== 'rearing') return null
  const mates = addDays(s.queen.emergence.likely, MATES_AFTER_EMERGENCE)
  return matesOn(s.protocol, mates)
    ? null
    : `She would fly to mate about ${inWords(mates)}, when queens do not mate here: have a mated queen or a colony to unite it with in mind.`
}

/** Mites over the threshold, unless it was treated since. */
function miteNeed(s: State): string | null {
  const { mites } = s
  if (mites === null || (s.treatedOn !== null && s.treatedOn >= mites.on)) return null
  const most = miteThresholdOn(s.protocol, mites.on)
  return mites.per100 < most
    ? null
    : `Mites: ${mites.per100.toFixed(1)} per 100 bees on ${inWords(mites.on)}, the threshold is ${most}. Treat as the label allows, best while there is no capped brood, and wash again.`
}

function mainAdvice(s: State, today: Day, quiet: DayRange | null, readiness: Readiness): Advice {
  if (s.history.outcome !== null)
    return { action: 'none', why: `The colony left the yard on ${inWords(s.history.outcome.on)}.` }
  if (s.diseaseLook?.suspected === true)
    return {
      action: 'call-inspector',
      why: `Brood disease was suspected on ${inWords(s.diseaseLook.suspectedOn ?? s.diseaseLook.on)}${cleanSince(s)}: close up, do not move or unite it, take no brood from it, and call the apiary inspector. Local codes decide.`,
    }
  const actionable = (rule: Rule): Ask | undefined => {
    const ask = s.pending(rule)
    return ask !== undefined && today >= ask.opens ? ask : undefined
  }
  return (
    ladderAdvice(s, today, quiet, actionable) ??
    cageAdvice(s, actionable) ??
    openAdvice(today, quiet, actionable) ??
    moveAdvice(s, today, readiness) ??
    routineAdvice(s, today, quiet, actionable)
  )
}

/** Said where a later look was clean and the suspicion still stands. */
const cleanSince = (s: State): string =>
  s.diseaseLook?.suspectedOn !== undefined && s.diseaseLook.on > s.diseaseLook.suspectedOn
    ? ', and a clean look since does not clear it'
    : ''

type Actionable = (rule: Rule) => Ask | undefined

function ladderAdvice(s: State, today: Day, quiet: DayRange | null, actionable: Actionable): Advice | null {
  if (s.queen.is === 'laying-workers')
    return {
      action: 'unite',
      why: 'Laying workers: unite with a strong queenright colony, after a look for brood disease. A bought queen would be killed.',
    }
  const weak = actionable('unite-or-boost')
  if (weak !== undefined && !isQuiet(today, quiet)) {
    const few = s.strength !== null && s.strength.frames < s.protocol.minFramesOfBees
    const rungTwoFailed = s.queen.is === 'none' && s.queen.failed === 'bought'
    if (few || rungTwoFailed)
      return {
        action: 'unite',
        why:
          few && s.strength !== null && !rungTwoFailed
            ? `Only ${frameCount(s.strength.frames)}: unite it with a queenright colony, or add a frame of capped brood. Look for brood disease first.`
            : weak.why,
      }
  }
  const frame = actionable('egg-frame')
  if (frame !== undefined) {
    const mates = addDays(today, EMERGENCE_AFTER_LOSS.likely + MATES_AFTER_EMERGENCE)
    if (!matesOn(s.protocol, mates))
      return {
        action: 'buy-queen',
        why: `A queen raised from a frame given now would fly to mate about ${inWords(mates)}, when queens do not mate here. Look for a virgin and for cells, then introduce a mated queen; or unite it.`,
      }
    if (daysBetween(s.lastYoungBrood, today) <= TEST_FRAME_IGNORED_AFTER)
      return { action: 'give-egg-frame', why: frame.why }
    return {
      action: 'buy-queen',
      why: 'More than a month without young brood: a frame of eggs may be ignored. Look for a virgin and for cells, then introduce a mated queen.',
    }
  }
  const buy = actionable('buy-queen')
  return buy === undefined ? null : { action: 'buy-queen', why: buy.why }
}

function cageAdvice(s: State, actionable: Actionable): Advice | null {
  const ask = actionable('queen-release')
  if (ask === undefined) return null
  if (s.queen.is !== 'caged') return { action: 'release-queen', why: ask.why }
  const still = s.queen.stillCagedOn
  const why =
    still === null
      ? ask.why
      : `Still in her cage on ${inWords(still)}, ${daysBetween(s.queen.since, still)} days after it went in: let her out by hand if the bees on the cage are calm; if they cling and bite, wait a day.`
  return { action: 'release-queen', why }
}

function openAdvice(today: Day, quiet: DayRange | null, actionable: Actionable): Advice | null {
  if (isQuiet(today, quiet)) return null
  const asked = LOOKS.flatMap((rule) => actionable(rule) ?? []).filter((a) => !lookedLately(a, today))
  const urgent = asked.find((a) => today > a.closes) ?? asked[0]
  return urgent === undefined ? null : { action: 'open-and-look', why: urgent.why }
}

function moveAdvice(s: State, today: Day, { ready, unmet }: Readiness): Advice | null {
  if (ready)
    return {
      action: 'move-out',
      why: 'The hold is over and every condition is met: a last disease look, and it may go.',
    }
  // What keeps it here can be seen to today, and nobody has been there yet.
  const last = unmet.every((u) => u.earliest !== null && u.earliest <= today) && s.lastVisit < today
  return last
    ? {
        action: 'open-and-look',
        why: `The hold is over and a mated queen is proven. What is missing before it may go: ${unmet.map((u) => u.what).join('; ')}.`,
      }
    : null
}

function routineAdvice(s: State, today: Day, quiet: DayRange | null, actionable: Actionable): Advice {
  const still = isQuiet(today, quiet)
  const chores = still ? [] : CHORES.flatMap((rule) => actionable(rule) ?? []).filter((a) => today >= a.due)
  const lid = OUTSIDE.flatMap((rule) => actionable(rule) ?? [])
  const chore = chores[0]
  if (chore !== undefined) return { action: 'open-and-look', why: chore.why }
  const look = lid[0]
  if (look !== undefined) return { action: 'outside-look', why: quietNote(look.why, still, quiet) }
  if (still && quiet !== null)
    return {
      action: 'leave-alone',
      why: `Leave the lid on until ${inWords(quiet.to)}: a young queen ${s.queen.is === 'none' ? 'may be' : 'is'} emerging, maturing or mating.`,
    }
  const next = nextDay(s, today)
  return {
    action: 'leave-alone',
    why: next === null ? 'Nothing is asked of this colony now.' : `Leave it alone until ${inWords(next)}.`,
  }
}

const quietNote = (why: string, still: boolean, quiet: DayRange | null): string =>
  still && quiet !== null ? `${why} Lid on: quiet time until ${inWords(quiet.to)}.` : why

/**
 * The next day on which something will be asked; chores count from their due day, for nobody opens a box early for them,
 * and what was looked at lately from the day on which looking again tells more.
 */
function nextDay(s: State, today: Day): Day | null {
  const days = s.asks.flatMap((a) => {
    if (a.answeredOn !== null || a.voidSince !== null || a.rule === 'move-out') return []
    const from = CHORES.includes(a.rule) ? a.due : a.opens
    if (from > today) return [from]
    const again = askedAgain(a)
    return again !== null && again > today ? [again] : []
  })
  const [first, ...rest] = days
  return first === undefined ? null : earlier(first, ...rest)
}
