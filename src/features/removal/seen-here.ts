/** Days and hours that come from a phone: what this server did not see on the day is kept, and marked. */
import { type AppContext, type PageDeps, signedIn } from '../../app/index.ts'
import { dayIn } from '../../days.ts'
import { beginsIn, type Decision, goesOnIn, hasLostGo, lostAt, type Sheet } from '../../records/index.ts'
import type { SavedSheet } from '../../store/index.ts'
import { unmetWords } from './decide.ts'
import { hazardsFound, isCleared } from './hazards.ts'
import { momentNow, staysBy } from './sheet-handlers.ts'
import { reckoningOf } from './view.ts'

/** Clocks of phones differ by minutes, and not by more than this (judgement). */
const AHEAD_MINUTES = 10

/** A phone that takes another moment for now than the server does: no hour on its sheet says anything. */
export const isUnclocked = (now: string, here: Date): boolean =>
  Math.abs(Date.parse(now) - here.getTime()) > AHEAD_MINUTES * 60_000

/** Ticks that come with no hour are as old as their day; an hour that the sheet had before is not taken off them. */
export function withTickedAt({ check: was }: Sheet, s: Sheet): Sheet {
  const { done, doneOn, tickedAt } = s.check
  const same = JSON.stringify([done, doneOn]) === JSON.stringify([was.done, was.doneOn])
  const at = tickedAt ?? (same || doneOn === undefined ? was.tickedAt : '00:00')
  return at === tickedAt || at === undefined ? s : { ...s, check: { ...s.check, tickedAt: at } }
}

/** What was tapped before the cut, as far as it needs no hour of that phone's: what stood here and stands there; wires that were seen. */
export function withoutHours(before: Sheet, s: Sheet): Sheet {
  const { done = [], doneOn: _on, doneAt: _at, tickedAt: _t, wires, ...check } = s.check
  const { done: had, doneOn, doneAt, tickedAt, wires: were } = before.check
  const seen = wires === 'near' || wires === 'unknown' ? wires : were
  return {
    ...s,
    check: {
      ...check,
      ...(had === undefined ? {} : { done: had.filter((d) => done.includes(d)) }),
      ...(doneOn === undefined ? {} : { doneOn }),
      ...(doneAt === undefined ? {} : { doneAt }),
      ...(tickedAt === undefined ? {} : { tickedAt }),
      ...(seen === undefined ? {} : { wires: seen }),
    },
  }
}

const minutes = (at: string): number => Number(at.slice(0, 2)) * 60 + Number(at.slice(3))

/** On that day this server held a version on which this very “go” stood. */
function heldHere(c: AppContext, deps: PageDeps, id: string, d: Decision, found: SavedSheet | null): boolean {
  const { zone } = c.var.frame
  return (found?.versions ?? []).some(({ version, savedAt }) => {
    const held = deps.store.removals.version(id, version)?.sheet.decision
    return (
      dayIn(zone, new Date(savedAt)) === d.on &&
      held?.is === 'go' &&
      held.fell === undefined &&
      [held.by, held.on, held.at].join() === [d.by, d.on, d.at].join()
    )
  })
}

/** Its “go” was lost here, the phone had not heard that, and what is new of its work is of an hour after it. */
function isUnheard(known: Sheet, sent: Sheet, s: Sheet): boolean {
  const lost = lostAt(s)
  if (!hasLostGo(s) || lost === undefined || lostAt(sent) !== undefined) return false
  const { openedAt, boxedAt, on, underGo } = s.work
  const hours = [
    openedAt === known.work.openedAt ? undefined : openedAt,
    boxedAt === known.work.boxedAt ? undefined : boxedAt,
  ].filter((at) => at !== undefined)
  const all = hours.length === 0 && underGo !== undefined ? [underGo.at] : hours
  // One's own “go” falls when it comes in: it was none from the hour at which that was found.
  const had = new Set((sent.site.noted ?? []).map((n) => JSON.stringify(n)))
  const found = (s.site.noted ?? []).filter((n) => n.is === 'found' && !had.has(JSON.stringify(n)))
  return [lost, ...found].some((x) => all.some((at) => `${x.on} ${x.at}` < `${on ?? underGo?.on} ${at}`))
}

/**
 * The sheet as it is kept: work that begins with it, under a “go” of another day, of an hour that has not come, or of which this
 * server knows only that it fell over what it held already, was begun without a “go” for all anybody here can tell. So was what was
 * opened by the one who stays and watches, or by a hand or clock that cannot have been there (`unseen`), and what was opened or boxed
 * at an hour at which its “go” was lost here, and the phone had not heard it.
 */
export function asSeenHere(
  c: AppContext,
  deps: PageDeps,
  {
    id,
    known,
    sent,
    merged,
    found,
    unseen,
  }: { id: string; known: Sheet; sent: Sheet; merged: Sheet; found: SavedSheet | null; unseen: boolean },
): Sheet {
  const { decision: d, work } = merged
  const marked = work.withoutGo !== undefined && work.withoutGo !== known.work.withoutGo
  const { on, at } = momentNow(c, deps)
  const begins = beginsIn(known, merged)
  const unheard = (begins || goesOnIn(known, merged, on)) && isUnheard(known, sent, merged)
  if (d === undefined || marked || !(begins || unheard)) return merged
  const late = d.on < on
  const ahead = [d, d.fell, work.underGo].some(
    (x) => x?.at !== undefined && x.on === on && minutes(x.at) > minutes(at) + AHEAD_MINUTES,
  )
  const fellOverKnown = d.fell !== undefined && hazardsFound(known).some((h) => !isCleared(known, h, d.on))
  const watches = staysBy({ ...merged, work: {} }, d.on).includes(signedIn(c))
  if (
    !unheard &&
    !ahead &&
    !unseen &&
    !watches &&
    !((late || fellOverKnown) && !heldHere(c, deps, id, d, found))
  )
    return merged
  const withoutGo = {
    why: 'sent-later' as const,
    by: signedIn(c),
    on,
    at,
    unmet: unmetWords(reckoningOf(c, deps, merged)),
  }
  return { ...merged, work: { ...work, withoutGo } }
}
