/** How far a job has come, as far as more than the removal pages ask. */
import type { Sheet } from './removal-sheet.ts'

/** Something was opened, boxed or taken, as far as the sheet says. Who came, looked and left has begun nothing. */
export const hasBegun = ({ work: w }: Sheet): boolean =>
  [
    w.openedAt,
    w.boxedAt,
    w.queen,
    w.queenFoundAt,
    w.brood,
    w.broodCare,
    w.queenCells,
    w.bees,
    w.deadBeesKg,
    w.tiedComb,
    w.sealed,
    w.cleaned,
    w.closedUp,
    w.onTheWay,
    w.boxHours,
    // Boards left to the owner, a photo of it closed.
    w.left,
    w.photos,
  ].some((said) => said !== undefined)

/** The last day on which it was begun or gone on with, as far as the sheet says. */
export const lastDayOf = ({ work: { on, underGo, withoutGo } }: Sheet): string | undefined =>
  [on, underGo?.on, withoutGo?.on]
    .filter((day) => day !== undefined)
    .sort()
    .at(-1)

/** What is first said when bees are taken out. */
const TAKEN = [
  'boxedAt',
  'queen',
  'queenFoundAt',
  'brood',
  'broodCare',
  'queenCells',
  'bees',
  'tiedComb',
] as const

/**
 * Work that was begun and not boxed goes on with this version: it is boxed, or on another day than it was begun bees are
 * first said of it. What was answered for once is not asked again.
 */
export function goesOnIn(before: Sheet, after: Sheet, today: string): boolean {
  const { boxedAt, withoutGo } = before.work
  if (!hasBegun(before) || boxedAt !== undefined || withoutGo !== undefined) return false
  const asked = lastDayOf(before) === today ? (['boxedAt'] as const) : TAKEN
  return asked.some((said) => before.work[said] === undefined && after.work[said] !== undefined)
}

/** Begun on an earlier day and not boxed since: what was done today, and under which “go”, is written down before bees come of it. */
export const isUnwritten = (s: Sheet, today: string): boolean =>
  s.work.boxedAt === undefined && s.work.withoutGo === undefined && (lastDayOf(s) ?? today) < today

/** It begins with this version: nothing was begun before, or it was of another day, or boxed already and is opened again. */
export const beginsIn = (before: Sheet, after: Sheet): boolean => {
  const { on, underGo, withoutGo, boxedAt, openedAt } = before.work
  const opensAgain = boxedAt !== undefined && openedAt !== undefined && after.work.openedAt !== openedAt
  const day = on ?? underGo?.on ?? withoutGo?.on
  return (
    hasBegun(after) &&
    (!hasBegun(before) ||
      opensAgain ||
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
  /** The day it is logged for, and that of the removal. */
  days: readonly (string | undefined)[]
  type: string | undefined
  site: string | undefined
}

/** Whether bees may be of an open job: the same place by its address or name; or its day, and no other kind of place. */
export function mayBeOf({ job, site, work, decision, ended }: Sheet, bees: ComesFrom): boolean {
  if (ended !== undefined || decision?.is === 'refuse') return false
  const told = wordsOf(bees.site ?? '')
  const named = [job.address, job.name].some((text) => {
    const words = wordsOf(text ?? '')
    return words.length > 0 && words.every((w) => told.includes(w))
  })
  const day = work.on ?? job.plannedOn
  const kinds = [bees.type, site.type].filter((type) => type !== undefined && type !== '')
  return named || (day !== undefined && bees.days.includes(day) && new Set(kinds).size < 2)
}
