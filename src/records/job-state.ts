/** How far a job has come, as far as more than the removal pages ask. */
import { minutesFrom } from '../time-of-day.ts'
import type { Sheet } from './removal-sheet.ts'
import type { WithoutGo } from './said-by-others.ts'
import { hasBegun, isUnderWay, lastDayOf, visitBegun } from './visit.ts'

/** What nobody tells of bees that were only looked at: whether anything was opened is asked where it is new. */
export const tellsOfWork = ({ work: was }: Sheet, { work: is }: Sheet): boolean =>
  (['note', 'temper'] as const).some((said) => is[said] !== undefined && is[said] !== was[said])

/** What is first said when bees are taken out, or comb is. */
const TAKEN = [
  'boxedAt',
  'queen',
  'queenFoundAt',
  'brood',
  'broodCare',
  'queenCells',
  'bees',
  'tiedComb',
  'cleaned',
] as const
/** Said only of bees that were taken; of a job that is boxed it is learnt later, in the yard. */
const LEARNT_LATER = ['deadBeesKg', 'onTheWay', 'boxHours'] as const
/** A later hour of the box, or the rest of the comb, is work of its own. */
const DONE_AGAIN: readonly string[] = ['boxedAt', 'cleaned']

/**
 * Work that was begun goes on with this version: it is boxed; or, on another day than it was begun, or once its “go” has fallen, bees
 * are first said of it. Who stops leaves comb where it is, and shuts what is open.
 */
export function goesOnIn(before: Sheet, after: Sheet, today: string): boolean {
  const { boxedAt } = before.work
  if (!hasBegun(before)) return false
  const boxed = boxedAt !== undefined
  const sameDay = lastDayOf(before) === today
  const all = [...TAKEN, ...(boxed ? [] : LEARNT_LATER)]
  const asked = !sameDay
    ? all
    : boxed
      ? []
      : hasLostGo(before)
        ? [...all, 'closedUp' as const]
        : (['boxedAt'] as const)
  return saysNew(before, after, asked, sameDay)
}

/** Whether one of these is first said, or done again. `sameDay`: comb that is left then is no work. */
const saysNew = (
  before: Sheet,
  after: Sheet,
  asked: readonly (keyof Sheet['work'])[],
  sameDay: boolean,
): boolean =>
  asked.some((said) => {
    const [was, is] = [before.work[said], after.work[said]]
    if (sameDay && is === 'none') return false
    return is !== undefined && is !== was && (was === undefined || DONE_AGAIN.includes(said))
  })

/** When its “go” was lost: it fell, or somebody decided otherwise once it was open. Undefined where nobody has, or it stands. */
export function lostAt(s: Sheet): { on: string; at: string } | undefined {
  const { decision: d } = s
  if (d?.is === 'go') return d.fell
  return d === undefined || !hasBegun(s) ? undefined : { on: d.on, at: d.at ?? '00:00' }
}

/** Its “go” was lost, and nobody has answered for going on since. */
export const hasLostGo = (s: Sheet): boolean =>
  s.work.withoutGo === undefined && (lostAt(s) !== undefined || (s.ended !== undefined && hasBegun(s)))

/** Bees came of it after its “go” fell, and nobody was asked, or nobody said, why: they are kept, and it is marked. */
export const withMark = (s: Sheet, said: Omit<WithoutGo, 'unmet' | 'why'> & Partial<WithoutGo>): Sheet => ({
  ...s,
  work: { ...s.work, withoutGo: { why: 'unsaid', unmet: [], ...said } },
})

/**
 * Nobody looked behind it, for it was a swarm that hung free, and it is logged as cut out of something: how that is written down; null
 * where it is not so, or the job is marked already.
 */
export const otherKind = (s: Sheet, type: string): string | null =>
  s.work.withoutGo === undefined &&
  s.site.type === 'swarm' &&
  s.site.behind === undefined &&
  type !== '' &&
  type !== 'swarm'
    ? `Came in as “${type.slice(0, 40)}”; its “go” was for a swarm`
    : null

/** Begun, left open and not boxed since: what was done then, and under which “go”, is written down before bees come of it. */
export const isUnwritten = (s: Sheet, today: string): boolean =>
  comesBack(s, today) && s.work.withoutGo === undefined

/** It is open, and whoever is there now, or to be there, was not there without a break since: what is done now is a visit of its own. */
export const comesBack = (s: Sheet, today: string): boolean =>
  hasBegun(s) && s.work.boxedAt === undefined && !isUnderWay(s, today)

/** Minutes by which the hour of a box may be put right (judgement): what is boxed later was cut out later. */
const PUT_RIGHT_MINUTES = 60

const isLater = (was: string, is = was): boolean => minutesFrom(was, is) > PUT_RIGHT_MINUTES

const isBeforeGo = ({ decision: d, work }: Sheet, at: string): boolean =>
  d?.is === 'go' && d.at !== undefined && at < d.at && (work.on === undefined || work.on === d.on)

/** With this version somebody came back to what was left open. */
export const isNewVisit = (before: Sheet, after: Sheet): boolean =>
  (after.work.earlier?.length ?? 0) > (before.work.earlier?.length ?? 0)

/**
 * It begins with this version: nothing was begun before, or not at this visit, or it was of another day, or boxed already and is opened
 * again.
 */
export const beginsIn = (before: Sheet, after: Sheet): boolean => {
  if (isNewVisit(before, after) || (hasBegun(before) && !visitBegun(before)))
    return after.work.openedAt !== undefined || saysNew(before, after, [...TAKEN, ...LEARNT_LATER], false)
  const { on, underGo, withoutGo, boxedAt, openedAt } = before.work
  const is = after.work.openedAt
  // Put right to an hour at which nobody had decided.
  const earlier = is !== undefined && is !== openedAt && withoutGo === undefined && isBeforeGo(after, is)
  const opensAgain =
    boxedAt !== undefined &&
    ((openedAt !== undefined && after.work.openedAt !== openedAt) || isLater(boxedAt, after.work.boxedAt))
  const day = on ?? underGo?.on ?? withoutGo?.on
  return (
    hasBegun(after) &&
    (!hasBegun(before) ||
      opensAgain ||
      earlier ||
      (day !== undefined && after.work.on !== undefined && after.work.on !== day))
  )
}

/** The words of a text, without capitals, accents and marks. */
export const wordsOf = (text: string): string[] =>
  text
    .normalize('NFD')
    .replaceAll(/\p{M}/gu, '')
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter(Boolean)

/** What an intake says of where its bees come from. */
interface ComesFrom {
  today: string
  /** The day it is logged for, and that of the removal; empty where not said. */
  days: readonly string[]
  type: string | undefined
  site: string | undefined
}

/** Whether the address or the name of a job is in what was told of the place. */
function isNamed({ job }: Sheet, { site }: ComesFrom): boolean {
  const told = wordsOf(site ?? '')
  return [job.address, job.name].some((text) => {
    const words = wordsOf(text ?? '')
    return words.length > 0 && words.every((w) => told.includes(w))
  })
}

/**
 * Whether bees may be of a job that has none yet: the same place by its address or name; or its day, whatever kind was tapped; or, logged
 * on its day for another, bees that are cut out as its own are; or the same kind of place on any day since, for what was not boxed is
 * open still. One that was refused or ended is asked about by its name, and on its day by its kind.
 */
export function mayBeOf(s: Sheet, bees: ComesFrom): boolean {
  const { job, site, work, decision, ended } = s
  const over = ended !== undefined || (decision?.is === 'refuse' && !hasBegun(s))
  const day = work.on ?? job.plannedOn
  if (isNamed(s, bees)) return true
  const kinds = [bees.type, site.type].filter((type) => type !== undefined && type !== '')
  const alike = new Set(kinds).size < 2
  const cut = !kinds.includes('swarm')
  if (day === undefined) return false
  if (bees.days.includes(day)) return !over || (alike && kinds.length === 2)
  if (over) return false
  if (bees.today === day) return alike || cut
  return alike && work.boxedAt === undefined && bees.days.some((d) => d > day)
}

/** Whether bees may have been cut out again, on a later day, where a job is done: that has a sheet of its own. */
export const mayBeCutAgain = (s: Sheet, bees: ComesFrom): boolean =>
  bees.type !== 'swarm' && isNamed(s, bees) && bees.days.some((d) => d > (lastDayOf(s) ?? d))
