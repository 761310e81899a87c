/** What the form before the cut is worth by its day and hour: what lay open over night, or was tapped in the kitchen, is asked anew. */
import type { AppContext, PageDeps } from '../../app/index.ts'
import { many, one, type Typed } from '../../forms/index.ts'
import { type Check, isUnderWay, type Sheet } from '../../records/index.ts'
import { isTime, isTooOld, timeIn } from '../../time-of-day.ts'
import { isLookedTooEarly } from './as-known.ts'
import { HOURS } from './check-fields.tsx'
import { stoodSince } from './first-tap.ts'
import { sameForecast } from './form.ts'
import { TICKED } from './item.ts'
import { isAsked } from './people.ts'
import { placeOf, samePlace } from './place.ts'
import type { Saved } from './sheet-handlers.ts'
import { isShort } from './stage.ts'
import { tickedTooEarly } from './ticked-when.ts'

/** The hour of the page that a form was on; now, where it does not say. */
function shownAt(c: AppContext, deps: PageDeps, typed: Typed): string {
  const [at, now] = [one(typed, 'shownAt'), timeIn(c.var.frame.zone, deps.clock())]
  return isTime(at) && at < now ? at : now
}

/** The ticks of a form, and since when those stand that it showed as tapped; undefined where it showed none. */
function since(c: AppContext, deps: PageDeps, shown: Sheet, typed: Typed): string | undefined {
  const at = shownAt(c, deps, typed)
  return stoodSince(shown, { done: many(typed, 'done'), wires: one(typed, 'wires') }, c.var.frame.today, at)
}

/** How hot it is to be, typed into a form that lay open over night, was typed of that day: it is asked anew. */
export function foreseenToday({ today }: AppContext['var']['frame'], typed: Typed): Typed {
  const blank = ['hottestC', 'on', 'from', 'until', ...HOURS].map((name) => [name, []])
  return layOver(typed, today) ? { ...typed, ...Object.fromEntries(blank) } : typed
}

/** It was shown on another day. */
const layOver = (typed: Typed, today: string): boolean => !['', today].includes(one(typed, 'shownOn'))

/**
 * What was tapped hours ago or on another day, in a form that lay open or before it was shown, was tapped in the kitchen: it is tapped
 * again, and stands untapped in the form that comes back.
 */
export function seenLately(
  c: AppContext,
  deps: PageDeps,
  { sheet }: Saved['last'],
  shown: Sheet | undefined,
  typed: Typed,
): Typed {
  const { today, zone } = c.var.frame
  const [at, now] = [one(typed, 'shownAt'), timeIn(zone, deps.clock())]
  const tickedAt = shown === undefined ? undefined : since(c, deps, shown, typed)
  const check = { ...sheet.check, doneOn: today, ...(tickedAt === undefined ? {} : { tickedAt }) }
  // What nobody was asked about for hours rests on ticks of this hour.
  const late =
    one(typed, 'heard.looked') === 'yes' && isLookedTooEarly(tickedAt ?? (isTime(at) ? at : now), now)
  const ranOver =
    tickedAt !== undefined && !isUnderWay(sheet, today) && tickedTooEarly({ ...sheet, check }, now)
  const wires = one(typed, 'wires') === 'near' ? ['near'] : []
  return late || ranOver || layOver(typed, today) || (isTime(at) && isTooOld(at, now))
    ? { ...typed, done: [], wires, shownAt: [], 'heard.looked': [] }
    : typed
}

/** What was ticked, and the day and place it is of: a form that lay open over night, or for another house, says nothing. */
export function tickedNow(
  c: AppContext,
  deps: PageDeps,
  { check, ...s }: Sheet,
  shown: Sheet,
  typed: Typed,
): Check {
  const { today } = c.var.frame
  const lay = one(typed, 'shownOn') !== today
  const { wires, ...rest } = check
  const here = placeOf({ ...s, check })
  // Where a swarm hangs is said in the form in which all the rest of it is tapped.
  const then = isShort(shown) ? { where: here.where, ...placeOf(shown) } : placeOf(shown)
  const stale = lay || !samePlace(then, here)
  // A blank day over hours that came back as they stood is the day that they are of.
  const gone = shown.check.on !== undefined && shown.check.on < today ? shown.check.on : undefined
  const kept = sameForecast({ ...s, check }, shown, c.var.frame.units, lay) ? gone : undefined
  // Of a job that was put off, what is typed today is of today.
  const planned = one(typed, 'is') === 'go' ? today : (s.job.plannedOn ?? today)
  const on = check.on ?? kept ?? (planned < today ? today : planned)
  // What is not asked is not ticked in advance.
  const done = check.done?.filter((d) => !TICKED.some((t) => t === d && !isAsked(t, { ...s, check })))
  return {
    ...rest,
    ...(wires === undefined || stale ? {} : { wires }),
    on,
    ...(done === undefined ? {} : { done: stale ? [] : done }),
    doneOn: today,
    doneAt: here,
    // Of the page on which it was tapped: it knows no later hour.
    tickedAt: since(c, deps, shown, typed) ?? shownAt(c, deps, typed),
  }
}
