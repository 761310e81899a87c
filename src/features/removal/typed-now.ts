/** What a form of the work brings, with the hour of the button that was tapped, and no temperature of long before. */
import type { AppContext, PageDeps } from '../../app/index.ts'
import { type FieldProblem, one, type Typed } from '../../forms/index.ts'
import { isTime, timeIn } from '../../time-of-day.ts'
import { typedPart } from './form.ts'
import { heatSince, isPast } from './heat-read.ts'
import type { Saved } from './sheet-handlers.ts'
import { isNext } from './visit.ts'

/** Times a button can set to now. */
const NOW = ['arrivedAt', 'openedAt', 'boxedAt', 'leftAt']

/** What was typed, with the time of the button that was tapped. */
export function withNow(
  c: AppContext,
  deps: PageDeps,
  saved: Saved,
  typed: Typed,
): { typed: Typed; opens: boolean; problems: FieldProblem[] } {
  // 'boxedAt' or 'boxedAt intake': the time, and where it leads.
  const [now = '', next = ''] = one(typed, 'now').split(' ')
  if (!NOW.includes(now)) return byHand(c, deps, saved, typed)
  const time = [timeIn(c.var.frame.zone, deps.clock())]
  const { today } = c.var.frame
  const opens = now === 'openedAt'
  // What is opened is opened today, and not on a temperature from a form that lay open for hours.
  const shownOn = one(typed, 'shownOn')
  const [at = ''] = time
  const stale = opens && ((shownOn !== '' && shownOn !== today) || isPast(readAt(c, deps, saved, typed), at))
  const on = opens || one(typed, 'on') === '' ? { on: [today] } : {}
  const then = next === '' ? {} : { next: [next] }
  const heat = stale ? ASKED_ANEW : {}
  return { typed: { ...typed, ...on, ...then, ...heat, [now]: time }, opens, problems: [] }
}

const ASKED_ANEW = { outdoorC: [], water: [], shownAt: [] }

/** An hour that was typed: how hot it was then was not read long before. */
function byHand(c: AppContext, deps: PageDeps, saved: Saved, typed: Typed): ReturnType<typeof withNow> {
  const at = one(typed, 'openedAt')
  const stood = isNext(saved.last.sheet, c.var.frame.today) ? undefined : saved.last.sheet.work.openedAt
  const anew = isTime(at) && at !== stood && one(typed, 'outdoorC') !== ''
  if (!anew || !isPast(readAt(c, deps, saved, typed), at)) return { typed, opens: false, problems: [] }
  const message = 'was read over an hour before: how hot was it when it was opened?'
  return { typed: { ...typed, ...ASKED_ANEW }, opens: false, problems: [{ field: 'outdoorC', message }] }
}

/** The hour at which the temperature of a form was read, as far as anybody knows: before it is opened its form asks it anew. */
function readAt(c: AppContext, deps: PageDeps, saved: Saved, typed: Typed): string | undefined {
  const { sheet } = saved.last
  const shownAt = one(typed, 'shownAt')
  const { today } = c.var.frame
  const asked = isTime(shownAt) && (sheet.work.openedAt === undefined || isNext(sheet, today))
  const stood = typedPart('work', sheet, c.var.frame.units).outdoorC?.[0] === one(typed, 'outdoorC')
  if (stood && !asked) return heatSince(c, deps, saved.id, saved, sheet)
  return isTime(shownAt) ? shownAt : undefined
}
