/** What a form of the work says of a visit: the one that stands, or one of its own, where somebody came back to what was left open. */
import { one, type Typed } from '../../forms/index.ts'
import {
  comesBack,
  goesOnIn,
  lastVisit,
  OF_VISIT,
  type Sheet,
  visitBegun,
  visitsOf,
  type Work,
} from '../../records/index.ts'
import { THAT_DAY } from './fields.ts'

/** How many visits the sheet has once this one is on it: a form says of which one it is. */
export const visitOf = (s: Sheet, today: string): number => visitsOf(s).length + (isNext(s, today) ? 1 : 0)

/** Whoever looks at the sheet today says nothing of the visit that stands on it: that has begun, or was of another day. */
export const isNext = (s: Sheet, today: string): boolean =>
  comesBack(s, today) && (visitBegun(s) || s.work.on !== today)

/**
 * The sheet as it was typed, with what it says of a visit where that belongs. Hours that somebody typed by hand are of the day beside them;
 * a form that was shown before they came back, or blank ones, take nothing off the visit that stands.
 */
export function withVisit(before: Sheet, typed: Sheet, form: Typed, today: string): Sheet {
  if (!comesBack(before, today)) return typed
  const { work: was } = before
  const { arrivedAt: _a, openedAt: _o, leftAt: _l, outdoorC: _c, water: _w, ...is } = typed.work
  const day = dayOf(before, typed, form, today)
  const stands = day === was.on
  if (stands && !visitBegun(before)) return { ...typed, work: { ...typed.work, on: day } }
  const isOfNext = Number(one(form, 'visit')) > visitsOf(before).length
  const said = Object.fromEntries(
    OF_VISIT.flatMap((field) => {
      const value = typed.work[field]
      return value === undefined || (!isOfNext && value === was[field]) ? [] : [[field, value]]
    }),
  ) as Pick<Work, (typeof OF_VISIT)[number]>
  const comes =
    Object.keys(said).length > 0 || is.boxedAt !== undefined || (!stands && goesOnIn(before, typed, today))
  if (!comes || (stands && (day < today || isBeforeLeft(was, { ...is, ...said }))))
    return { ...typed, work: { ...is, ...lastVisit(before), ...said } }
  const { underGo: _u, knew: _k, on: _d, ...rest } = is
  return {
    ...typed,
    work: { ...rest, ...said, on: day, earlier: [...(was.earlier ?? []), lastVisit(before)] },
  }
}

/** The day of which a form speaks: of a button it is today, and “that day, written down now” is the day of what stands. */
function dayOf({ work: was }: Sheet, { work: is }: Sheet, form: Typed, today: string): string {
  const { on = today } = is
  if (one(form, 'now') !== '') return today
  return on === today && one(form, 'withoutGo.why') === THAT_DAY ? (was.on ?? on) : on
}

/** Every hour that is said is of before they left: written down afterwards. */
function isBeforeLeft({ leftAt = '' }: Work, { arrivedAt, openedAt, boxedAt, leftAt: left }: Work): boolean {
  const hours = [arrivedAt, openedAt, boxedAt].filter((at) => at !== undefined)
  return (hours.length > 0 ? hours : [left ?? '24']).every((at) => at <= leftAt)
}
