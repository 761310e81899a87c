/** Work as it is written down: under a “go” that stands, or with a reason, once for everything that was known then. */
import type { AppContext, PageDeps } from '../../app/index.ts'
import { fieldsIn, one, type Typed } from '../../forms/index.ts'
import {
  beginsIn,
  comesBack,
  goesOnIn,
  hasBegun,
  isUnderWay,
  lastDayOf,
  leftOpen,
  lostAt,
  type Sheet,
  tellsOfWork,
  visitBegun,
  withoutGo,
} from '../../records/index.ts'
import { unmetWords } from './decide.ts'
import { NOT_OPENED, THAT_DAY, WITHOUT_GO_FIELDS } from './fields.ts'
import { whoAndWhen } from './found-kept.ts'
import { isAnswered, sinceMark, withMore } from './since-mark.ts'
import { reckoningOf, startOf, stoodOn, wentAhead } from './view.ts'
import { andSaid } from './written.ts'

export const underGo = (c: AppContext, deps: PageDeps, s: Sheet): Sheet => ({
  ...s,
  work: { ...s.work, underGo: whoAndWhen(c, deps) },
})

/** Nothing is said to be begun, and yet something is told of it while no “go” stands: whether it was opened is asked, once. */
export const isOnlyTold = (c: AppContext, deps: PageDeps, before: Sheet, after: Sheet): boolean =>
  !hasBegun(after) && tellsOfWork(before, after) && !startOf(c, deps, before).goes

/** What was done before its “go” fell is written down after it. */
const isBefore = ({ work }: Sheet, lost: ReturnType<typeof lostAt>): boolean =>
  lost !== undefined && (work.boxedAt ?? '') <= lost.at

/** The sheet before its box; with it, where somebody has typed that it was boxed by the hour at which they left. */
const wasOpen = (before: Sheet, after: Sheet): Sheet =>
  (after.work.boxedAt ?? '') <= (before.work.leftAt ?? '') ? after : before

/** Why it was begun, or gone on with, today is said on its mark, and nothing came to light since. */
const isSaid = (c: AppContext, deps: PageDeps, before: Sheet, after: Sheet): boolean => {
  const mark = before.work.withoutGo
  const { today } = c.var.frame
  const day = visitBegun(before) ? before.work.on : undefined
  return (
    mark !== undefined &&
    ([mark.on, day].includes(today) || isAnswered(mark, today)) &&
    sinceMark(reckoningOf(c, deps, after), after).length === 0
  )
}

/** The sheet with a reason where work was begun, or gone on with, that had no “go”; null where nobody has said one. */
export function withReason(
  c: AppContext,
  deps: PageDeps,
  before: Sheet,
  after: Sheet,
  typed: Typed,
): Sheet | null {
  const { today } = c.var.frame
  const why = one(typed, 'withoutGo.why')
  const thatDay = one(typed, 'now') === '' && why === THAT_DAY
  const mark = before.work.withoutGo
  if (isOnlyTold(c, deps, before, after)) {
    if (why === NOT_OPENED) return after
  } else if (beginsIn(before, after)) {
    // Whoever has said why it is gone on with that day has said it of the whole visit.
    if (comesBack(before, today) && isSaid(c, deps, before, after)) return after
    const on = [after.work.on ?? today].filter((day) => day <= today)[0] ?? today
    // A day that is gone may stand in the form by itself: that it was that day is said by a tap.
    const said = on === today || thatDay
    if (said && wentAhead(c, deps, before, after, on)) return underGo(c, deps, after)
  } else {
    if (!goesOnIn(before, after, today)) return after
    if (isSaid(c, deps, before, after)) return after
    // Gone on with when nothing stands any more: what came to light since, or another day, is answered for once.
    // Boxed before it was left, or without having been left.
    const open = isUnderWay(wasOpen(before, after), today)
    const { goes } = startOf(c, deps, after)
    if (goes && open) return after
    // Of another day it is asked on which day it was, and not taken from what stood in the form.
    const then = lastDayOf(before)
    const stood =
      then === today ? isBefore(after, lostAt(before)) : then !== undefined && stoodThen(c, deps, after, then)
    if (thatDay && stood) return after
  }
  // Why it was begun is words like any others, and answered for by whoever gives it.
  const reckoning = reckoningOf(c, deps, andSaid(after, one(typed, 'withoutGo.words')))
  const { raw } = fieldsIn(WITHOUT_GO_FIELDS, typed, c.var.frame.units, 'withoutGo.')
  const unmet = [...beforeGo(after), ...unmetWords(reckoning)].slice(0, 40)
  const said = withoutGo.safeParse({ ...raw, ...whoAndWhen(c, deps), unmet })
  if (!said.success) return null
  const more = mark === undefined ? said.data : withMore(mark, said.data, sinceMark(reckoning, after))
  return { ...after, work: { ...after.work, withoutGo: more } }
}

/** A “go” stood on that day: the last one, or the one that it was begun on before it was decided for another day. */
const stoodThen = (c: AppContext, deps: PageDeps, s: Sheet, day: string): boolean =>
  s.decision?.on === day ? stoodOn(c, deps, s, day) : s.work.underGo?.on === day

/** What was done at an hour at which nobody had said “go” yet. */
function beforeGo({ work: { on, openedAt: at }, decision: d }: Sheet): string[] {
  const early = d?.is === 'go' && d.at !== undefined && at !== undefined && at < d.at && (on ?? d.on) === d.on
  return early ? [`opened at ${at}, and the “go” is of ${d.at}`] : []
}

/** Why a reason is asked, in words, where `withReason` has none. */
export function asksWhy(c: AppContext, deps: PageDeps, before: Sheet, after: Sheet, typed: Typed): string {
  const { on, boxedAt } = after.work
  const { goes, start } = startOf(c, deps, after)
  const lost = lostAt(before)
  if (on !== undefined && on < c.var.frame.today) return `was it on ${on}, or on another day with no “go”?`
  if (leftOpen(before, c.var.frame.today) && !startOf(c, deps, before).goes)
    return `left at ${before.work.leftAt}, and no “go” since: look again, or type the hour it was boxed`
  const [early] = beforeGo(after)
  if (goes && early !== undefined) return early
  if (goes) return `this was to be met first. ${start.why}`
  return one(typed, 'withoutGo.why') === THAT_DAY && lost !== undefined
    ? `boxed at ${boxedAt}, and the “go” fell at ${lost.at}`
    : 'no “go” stood when this was done'
}
