/** Days and hours that come from a phone: what this server did not see on the day is kept, and marked. */
import { type AppContext, type PageDeps, signedIn } from '../../app/index.ts'
import { dayIn } from '../../days.ts'
import { beginsIn, type Decision, type Sheet } from '../../records/index.ts'
import type { SavedSheet } from '../../store/index.ts'
import { unmetWords } from './decide.ts'
import { hazardsFound, isCleared } from './hazards.ts'
import { momentNow } from './sheet-handlers.ts'
import { reckoningOf } from './view.ts'

/** Clocks of phones differ by minutes, and not by more than this (judgement). */
const AHEAD_MINUTES = 10

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
 * The sheet as it is kept: work that begins with it, under a “go” of another day, of an hour that has not come, or of which this
 * server knows only that it fell over what it held already, was begun without a “go” for all anybody here can tell.
 */
export function asSeenHere(
  c: AppContext,
  deps: PageDeps,
  { id, known, merged, found }: { id: string; known: Sheet; merged: Sheet; found: SavedSheet | null },
): Sheet {
  const { decision: d, work } = merged
  const marked = work.withoutGo !== undefined && work.withoutGo !== known.work.withoutGo
  if (d === undefined || !beginsIn(known, merged) || marked) return merged
  const { on, at } = momentNow(c, deps)
  const late = d.on < on
  const ahead = [d, d.fell, work.underGo].some(
    (x) => x?.at !== undefined && x.on === on && minutes(x.at) > minutes(at) + AHEAD_MINUTES,
  )
  const fellOverKnown = d.fell !== undefined && hazardsFound(known).some((h) => !isCleared(known, h, d.on))
  if (!ahead && !((late || fellOverKnown) && !heldHere(c, deps, id, d, found))) return merged
  const withoutGo = {
    why: 'sent-later' as const,
    by: signedIn(c),
    on,
    at,
    unmet: unmetWords(reckoningOf(c, deps, merged)),
  }
  return { ...merged, work: { ...work, withoutGo } }
}
