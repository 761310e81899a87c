/** May the colony move on? Every unmet condition by name, with the earliest day it can be met. */
import {
  EMERGENCE_AFTER_LOSS,
  FIRST_EGG_AFTER_EMERGENCE,
  FIRST_EGG_AFTER_EMERGENCE_HARD,
  FIRST_EGG_AFTER_RELEASE,
  OLD_QUEEN_LAYS_AGAIN,
} from '../biology/index.ts'
import { addDays, type Day, daysBetween, earlier, later, type Span } from '../days.ts'
import { isQuiet } from './phase.ts'
import type { DayRange, Readiness, Unmet } from './plan-types.ts'
import { miteThresholdOn } from './protocol.ts'
import { type UnmetReason, unmetInEnglish } from './says/said.ts'
import { expectedFirstEgg, proofFrom } from './spans.ts'
import type { State } from './state.ts'
import { deedOf, type Exposure } from './tracing.ts'

/** A treated colony is washed again after 10-14 days (common practice). */
const REWASH_AFTER = 10

/** The first day on which the hold is over. */
const holdEnds = (s: State): Day => addDays(s.history.intake.on, s.protocol.holdDays)

/** When worker brood can prove a queen, widest where least is known; null when no queen is in sight. */
function proofExpected(s: State, today: Day): Span | null {
  const q = s.queen
  if (q.is === 'queenright') return { earliest: q.provenOn, likely: q.provenOn, latest: q.provenOn }
  const known = expectedFirstEgg(s)
  if (known !== null) return proofFrom(s, known)
  const from = s.lastNoEggs === null ? today : later(today, addDays(s.lastNoEggs, 1))
  const span = (base: Day, earliest: number, likely: number, latest: number): Span =>
    proofFrom(s, {
      earliest: addDays(base, earliest),
      likely: later(addDays(base, likely), from),
      latest: later(addDays(base, latest), from),
    })
  const w = OLD_QUEEN_LAYS_AGAIN
  switch (q.is) {
    case 'caged':
      return span(q.since, 1, 4 + FIRST_EGG_AFTER_RELEASE.likely, 6 + FIRST_EGG_AFTER_RELEASE.latest)
    case 'released':
      return span(
        q.on,
        FIRST_EGG_AFTER_RELEASE.earliest,
        FIRST_EGG_AFTER_RELEASE.likely,
        FIRST_EGG_AFTER_RELEASE.latest,
      )
    case 'present':
      return span(
        s.lastOldEgg,
        w.earliest,
        w.likely,
        s.lastNoEggs === null ? w.latest : FIRST_EGG_AFTER_EMERGENCE_HARD.latest,
      )
    case 'unseen':
      return span(
        s.lastOldEgg,
        w.earliest,
        w.likely,
        EMERGENCE_AFTER_LOSS.latest + FIRST_EGG_AFTER_EMERGENCE.latest,
      )
    default:
      return null
  }
}

/** `quiet`: while it lasts nothing that needs an open box can be met. */
export function readinessOf(
  s: State,
  today: Day,
  quiet: DayRange | null,
  exposure: Exposure | null = null,
): Readiness {
  if (s.history.outcome !== null) return { ready: false, unmet: [], expected: null }
  const proof = proofExpected(s, today)
  const inside = isQuiet(today, quiet) ? addDays(quiet.to, 1) : today
  const unmet = [...unmetOn(s, today, inside, proof), ...unmetMore(s, today, inside, exposure)]
  const blocked = s.diseaseLook?.suspected === true || proof === null
  const atLeast = unmet.reduce<Day>(
    (at, u) => (u.earliest === null ? at : later(at, u.earliest)),
    later(today, holdEnds(s)),
  )
  const expected =
    blocked || proof === null
      ? null
      : {
          earliest: later(atLeast, proof.earliest),
          likely: later(atLeast, proof.likely),
          latest: later(atLeast, proof.latest),
        }
  return { ready: unmet.length === 0, unmet, expected: unmet.length === 0 ? null : expected }
}

/** `inside`: the first day on which the box may be opened. */
function unmetOn(s: State, today: Day, inside: Day, proof: Span | null): Unmet[] {
  const p = s.protocol
  const unmet: Unmet[] = []
  const need = (reason: UnmetReason, earliest: Day | null): void => {
    unmet.push({ what: unmetInEnglish(reason), reason, earliest })
  }
  if (today < holdEnds(s)) need({ code: 'hold', days: p.holdDays }, holdEnds(s))
  if (s.queen.is !== 'queenright')
    need({ code: 'worker-brood' }, proof === null ? null : later(today, proof.earliest))
  if (s.strength === null || !s.strength.counted) need({ code: 'strength-uncounted' }, inside)
  else if (s.strength.frames < p.minFramesOfBees)
    need({ code: 'strength-low', minimum: p.minFramesOfBees, last: s.strength.frames }, inside)
  if (s.mites === null) need({ code: 'mites-unwashed' }, inside)
  else if (daysBetween(s.mites.on, today) > p.miteWashValidDays)
    need({ code: 'mites-old', days: p.miteWashValidDays }, inside)
  else if (s.mites.per100 >= miteThresholdOn(p, s.mites.on))
    need(
      { code: 'mites-over', most: miteThresholdOn(p, s.mites.on), per100: s.mites.per100 },
      later(inside, addDays(s.mites.on, REWASH_AFTER)),
    )
  if (s.diseaseLook === null) need({ code: 'disease-look-none' }, inside)
  else if (s.diseaseLook.suspected) need({ code: 'disease-suspected' }, null)
  else if (daysBetween(s.diseaseLook.on, today) > p.diseaseLookValidDays)
    need({ code: 'disease-look-old', days: p.diseaseLookValidDays }, inside)
  if (s.stores === null) need({ code: 'stores-unseen' }, today)
  // Fed since, it carries its food along: nobody opens it again to see that.
  else if (s.stores.level === 'low' && (s.fedOn === null || s.fedOn < s.stores.on))
    need({ code: 'stores-low' }, today)
  if (s.beetles?.seen === true) need({ code: 'beetles' }, today)
  return unmet
}

/** Eggs or open brood, seen by somebody, so many days ago at most: a proof of weeks ago is no proof of today (common practice: 7-10). */
const BROOD_SEEN_WITHIN = 10
/** Treatments without a withdrawal on record count as running until the wash that tells whether they worked. */
const FIERCE = 4

/** What nobody would hand on: no fresh brood, cells, robbers, pests, a fierce temper, a treatment, poisoned comb. */
function unmetMore(s: State, today: Day, inside: Day, exposure: Exposure | null): Unmet[] {
  const unmet: Unmet[] = []
  const need = (reason: UnmetReason, earliest: Day | null): void => {
    unmet.push({ what: unmetInEnglish(reason), reason, earliest })
  }
  if (
    s.queen.is === 'queenright' &&
    (s.broodSeenOn === null || daysBetween(s.broodSeenOn, today) > BROOD_SEEN_WITHIN)
  )
    need({ code: 'brood-unseen', days: BROOD_SEEN_WITHIN }, inside)
  const none = s.lastNoEggs !== null && (s.broodSeenOn === null || s.lastNoEggs > s.broodSeenOn)
  if (s.queen.is === 'queenright' && none && s.pausedSince === null) need({ code: 'brood-none' }, inside)
  if (s.pausedSince !== null) need({ code: 'paused', since: s.pausedSince }, inside)
  if (s.cellsSeen?.holding === true || s.cellsBeside !== null) need({ code: 'cells' }, inside)
  for (const sign of SIGNS_THAT_KEEP)
    if (s.signs?.seen.includes(sign) === true) need({ code: 'sign', sign }, today)
  if (s.temper !== null && s.temper.value >= FIERCE && !s.settled.has('temper'))
    need({ code: 'temper' }, today)
  if (s.withdrawalUntil !== null && today <= s.withdrawalUntil)
    need({ code: 'withdrawal', until: s.withdrawalUntil }, addDays(s.withdrawalUntil, 1))
  else if (s.treatedOn !== null && (s.mites === null || s.mites.on < addDays(s.treatedOn, REWASH_AFTER)))
    need(
      { code: 'treatment-unwashed', on: s.treatedOn, days: REWASH_AFTER },
      later(inside, addDays(s.treatedOn, REWASH_AFTER)),
    )
  if (s.history.intake.removal.sprayed === 'yes' && !s.settled.has('sprayed-comb-out'))
    need({ code: 'sprayed' }, today)
  if (s.disagreeSince !== null)
    need({ code: 'looks-disagree', since: s.disagreeSince }, later(inside, addDays(s.disagreeSince, 2)))
  if (s.caged !== null) need({ code: 'caged' }, today)
  if (exposure !== null) need({ code: 'bound', how: deedOf(exposure) }, exposure.look.opens)
  return unmet
}

const SIGNS_THAT_KEEP = ['robbing', 'moths', 'deformed-wings'] as const

/** The last day on which what was looked at still counts; only meaningful when ready. */
export function readyUntil(s: State): Day {
  const ends = [
    [s.mites?.on, s.protocol.miteWashValidDays],
    [s.diseaseLook?.on, s.protocol.diseaseLookValidDays],
    [s.broodSeenOn, BROOD_SEEN_WITHIN],
  ] as const
  const days = ends.flatMap(([on, n]) => (on === null || on === undefined ? [] : [addDays(on, n)]))
  const [first, ...rest] = days
  return first === undefined ? holdEnds(s) : earlier(first, ...rest)
}

/** The day from which every condition was met; only meaningful when ready. */
export function readySince(s: State): Day {
  const days = [
    s.strength?.on,
    s.mites?.on,
    s.diseaseLook?.on,
    s.stores?.on,
    s.queen.is === 'queenright' ? s.queen.provenOn : undefined,
  ]
  return days.reduce<Day>((at, d) => (d === undefined ? at : later(at, d)), holdEnds(s))
}
