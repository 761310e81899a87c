/** May the colony move on? Every unmet condition by name, with the earliest day it can be met. */
import {
  EMERGENCE_AFTER_LOSS,
  FIRST_EGG_AFTER_EMERGENCE,
  FIRST_EGG_AFTER_EMERGENCE_HARD,
  FIRST_EGG_AFTER_RELEASE,
  OLD_QUEEN_LAYS_AGAIN,
} from '../biology/index.ts'
import { addDays, type Day, daysBetween, earlier, inWords, later, type Span } from '../days.ts'
import { isQuiet } from './phase.ts'
import type { DayRange, Readiness, Unmet } from './plan-types.ts'
import { miteThresholdOn } from './protocol.ts'
import { expectedFirstEgg, proofFrom } from './spans.ts'
import type { State } from './state.ts'
import type { Exposure } from './tracing.ts'

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
  const need = (what: string, earliest: Day | null): void => {
    unmet.push({ what, earliest })
  }
  if (today < holdEnds(s)) need(`hold days: ${p.holdDays} days from intake`, holdEnds(s))
  if (s.queen.is !== 'queenright')
    need(
      'conclusive worker brood: flat worker caps that only her queen can have laid',
      proof === null ? null : later(today, proof.earliest),
    )
  if (s.strength === null || !s.strength.counted)
    need('strength: frames of bees not counted since intake', inside)
  else if (s.strength.frames < p.minFramesOfBees)
    need(
      `strength at or above the minimum of ${p.minFramesOfBees} frames of bees (last count ${s.strength.frames})`,
      inside,
    )
  if (s.mites === null) need('mites: no mite wash yet', inside)
  else if (daysBetween(s.mites.on, today) > p.miteWashValidDays)
    need(`mites: the last mite wash is older than ${p.miteWashValidDays} days`, inside)
  else if (s.mites.per100 >= miteThresholdOn(p, s.mites.on))
    need(
      `mites under the threshold of ${miteThresholdOn(p, s.mites.on)} per 100 bees (last wash ${s.mites.per100.toFixed(1)}): treat by the label, then wash again`,
      later(inside, addDays(s.mites.on, REWASH_AFTER)),
    )
  if (s.diseaseLook === null)
    need('disease look: none yet (open the box and note the signs looked for)', inside)
  else if (s.diseaseLook.suspected)
    need('disease look without suspicion: brood disease is suspected; the inspector decides', null)
  else if (daysBetween(s.diseaseLook.on, today) > p.diseaseLookValidDays)
    need(`disease look within ${p.diseaseLookValidDays} days`, inside)
  if (s.stores === null) need('stores: not looked at yet', today)
  // Fed since, it carries its food along: nobody opens it again to see that.
  else if (s.stores.level === 'low' && (s.fedOn === null || s.fedOn < s.stores.on))
    need('stores: low at the last look; feed', today)
  if (s.beetles?.seen === true)
    need('no beetles sliming: small hive beetles were seen at the last look', today)
  return unmet
}

/** Eggs or open brood, seen by somebody, so many days ago at most: a proof of weeks ago is no proof of today (common practice: 7-10). */
const BROOD_SEEN_WITHIN = 10
/** Treatments without a withdrawal on record count as running until the wash that tells whether they worked. */
const FIERCE = 4

/** What nobody would hand on: no fresh brood, cells, robbers, pests, a fierce temper, a treatment, poisoned comb. */
function unmetMore(s: State, today: Day, inside: Day, exposure: Exposure | null): Unmet[] {
  const unmet: Unmet[] = []
  const need = (what: string, earliest: Day | null): void => {
    unmet.push({ what, earliest })
  }
  if (
    s.queen.is === 'queenright' &&
    (s.broodSeenOn === null || daysBetween(s.broodSeenOn, today) > BROOD_SEEN_WITHIN)
  )
    need(`eggs or open brood seen within ${BROOD_SEEN_WITHIN} days`, inside)
  const none = s.lastNoEggs !== null && (s.broodSeenOn === null || s.lastNoEggs > s.broodSeenOn)
  if (s.queen.is === 'queenright' && none && s.pausedSince === null)
    need('eggs or open brood at the last look: none were found', inside)
  if (s.pausedSince !== null) need(`eggs again: none were found on ${inWords(s.pausedSince)}`, inside)
  if (s.cellsSeen?.holding === true || s.cellsBeside !== null)
    need('no open or capped queen cells: there were some at the last look', inside)
  for (const [sign, words] of SIGNS_THAT_KEEP)
    if (s.signs?.seen.includes(sign) === true) need(`no ${words} at the last look`, today)
  if (s.temper !== null && s.temper.value >= FIERCE && !s.settled.has('temper'))
    need('temper under 4, or a signed note that decides to let it go as it is', today)
  if (s.withdrawalUntil !== null && today <= s.withdrawalUntil)
    need(`treatment: its withdrawal ends on ${inWords(s.withdrawalUntil)}`, addDays(s.withdrawalUntil, 1))
  else if (s.treatedOn !== null && (s.mites === null || s.mites.on < addDays(s.treatedOn, REWASH_AFTER)))
    need(
      `treatment of ${inWords(s.treatedOn)} over, and a wash ${REWASH_AFTER} days or more after it`,
      later(inside, addDays(s.treatedOn, REWASH_AFTER)),
    )
  if (s.history.intake.removal.sprayed === 'yes' && !s.settled.has('sprayed-comb-out'))
    need('sprayed comb gone: a signed note says so', today)
  if (s.disagreeSince !== null)
    need(
      `a look that settles it: the looks of ${inWords(s.disagreeSince)} disagree`,
      later(inside, addDays(s.disagreeSince, 2)),
    )
  if (s.caged !== null) need('no queen left in a cage', today)
  if (exposure !== null) need(`clear of brood disease: it ${exposure.how}`, exposure.look.opens)
  return unmet
}

const SIGNS_THAT_KEEP = [
  ['robbing', 'robbing'],
  ['moths', 'wax moths'],
  ['deformed-wings', 'deformed wings'],
] as const

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
