/** Days and hours that come from a phone: what this server did not see on the day is kept, and marked. */
import { type AppContext, type PageDeps, signedIn } from '../../app/index.ts'
import { dayIn } from '../../days.ts'
import {
  beginsIn,
  type Decision,
  EMPTY_SHEET,
  goesOnIn,
  hasLostGo,
  lostAt,
  type Noted,
  type Sheet,
} from '../../records/index.ts'
import type { SavedSheet } from '../../store/index.ts'
import { unmetWords } from './decide.ts'
import { GRAVE_WORDS } from './hazard-words.ts'
import { hazardsFound, isCleared } from './hazards.ts'
import { momentNow, staysBy } from './sheet-handlers.ts'
import { reckoningOf } from './view.ts'
import { decidedWords } from './words.ts'

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

/**
 * What ended its “go” here before it was opened or boxed, where whoever did that had not heard it: in words, and the day and hour of what was
 * begun or gone on with over it. Null where nothing has.
 */
function unheardBy(known: Sheet, sent: Sheet, s: Sheet): { words: string; on: string; at: string } | null {
  const lost = lostAt(s)
  if (!hasLostGo(s) || lost === undefined || lostAt(sent) !== undefined) return null
  const { openedAt, boxedAt, on, underGo } = s.work
  const hours = [
    openedAt === known.work.openedAt ? undefined : openedAt,
    boxedAt === known.work.boxedAt ? undefined : boxedAt,
  ].filter((at) => at !== undefined)
  const all = hours.length === 0 && underGo !== undefined ? [underGo.at] : hours
  const day = on ?? underGo?.on ?? lost.on
  const before = (x: { on: string; at: string }): string | undefined =>
    all.filter((at) => `${x.on} ${x.at}` < `${day} ${at}`).sort()[0]
  // One's own “go” falls when it comes in: it was none from the hour at which that was found.
  const had = new Set((sent.site.noted ?? []).map((n) => JSON.stringify(n)))
  const found = (s.site.noted ?? []).filter(
    (n): n is Noted => n.is === 'found' && !had.has(JSON.stringify(n)) && before(n) !== undefined,
  )
  const at = [lost, ...found]
    .map(before)
    .filter((x) => x !== undefined)
    .sort()[0]
  return at === undefined ? null : { words: `${endedBy(s, found)}; not heard by then`, on: day, at }
}

/** 'Bram tapped “Refuse”, 2026-06-12 11:05: …', 'Gas pipe found (Odalys, 2026-06-12 10:40)' */
function endedBy({ decision: d }: Sheet, found: readonly Noted[]): string {
  const lines = found.map((n) => `${GRAVE_WORDS[n.what]} found (${n.by}, ${n.on} ${n.at})`)
  const fell = d?.fell === undefined ? '' : `The “go” fell (${d.fell.by}, ${d.fell.on} ${d.fell.at})`
  const said = d === undefined || d.is === 'go' ? lines.join(', ') || fell : decidedWords(d)
  return said.slice(0, 270)
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
  const goesOn = beginsIn(known, merged) || goesOnIn(known, merged, on)
  const unheard = goesOn ? unheardBy(known, sent, merged) : null
  // What began here was judged when it came, whoever sends something else now.
  const begins = beginsIn(known, merged) && beginsIn(found?.last.sheet ?? EMPTY_SHEET, merged)
  if (d === undefined || marked || !(begins || unheard !== null)) return merged
  const late = d.on < on
  const ahead = [d, d.fell, work.underGo].some(
    (x) => x?.at !== undefined && x.on === on && minutes(x.at) > minutes(at) + AHEAD_MINUTES,
  )
  const fellOverKnown = d.fell !== undefined && hazardsFound(known).some((h) => !isCleared(known, h, d.on))
  const watches = staysBy({ ...merged, work: {} }, d.on).includes(signedIn(c))
  if (
    unheard === null &&
    !ahead &&
    !unseen &&
    !watches &&
    !((late || fellOverKnown) && !heldHere(c, deps, id, d, found))
  )
    return merged
  const withoutGo = {
    why: 'sent-later' as const,
    // Whose work it was: of what stood here before, not who sent what ended its “go”.
    by:
      (begins || goesOnIn(found?.last.sheet ?? EMPTY_SHEET, merged, on) ? undefined : work.underGo?.by) ??
      signedIn(c),
    ...(unheard ?? { on, at }),
    unmet: unmetWords(reckoningOf(c, deps, merged)),
  }
  return { ...merged, work: { ...work, withoutGo } }
}
