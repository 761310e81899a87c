/** What comes onto a sheet stays on it, and a “go” that it takes the ground from falls, whatever else the form is refused for. */
import type { AppContext, PageDeps } from '../../app/index.ts'
import { isUnderWay, mergeSheets, type Sheet, withFound } from '../../records/index.ts'
import { isOtherwise } from './as-read.ts'
import { refusedBefore } from './decide.ts'
import { withNoted } from './grave.ts'
import { momentNow, type Saved, stampOf } from './sheet-handlers.ts'
import { startOf, stoodOn } from './view.ts'
import { withFoundAt, withLines, withUnkept } from './was-said.ts'
import { withNamed } from './written.ts'

/** Who writes this, and when. */
export const whoAndWhen = (c: AppContext, deps: PageDeps) => {
  const { writtenAt: _, ...moment } = momentNow(c, deps)
  return moment
}

/** Open, not boxed, and hotter now than anybody may cut in, with no second person’s name under it. */
function grewTooHot(c: AppContext, deps: PageDeps, before: Sheet, after: Sheet): boolean {
  const { today } = c.var.frame
  const open = isUnderWay(before, today) && before.work.boxedAt === undefined && after.work.on === today
  return open && startOf(c, deps, after).start.state === 'unmet'
}

/** A “go” that a change takes the ground from does not come back by itself: it is decided anew. */
export function fallen(c: AppContext, deps: PageDeps, before: Sheet, after: Sheet, id?: string): Sheet {
  const { decision } = after
  if (decision === undefined || !stoodOn(c, deps, before, decision.on, id)) return after
  const stands = stoodOn(c, deps, after, decision.on, id) && !isOtherwise(before, after)
  if (stands && !grewTooHot(c, deps, before, after)) return after
  return { ...after, decision: { ...decision, fell: whoAndWhen(c, deps) } }
}

/**
 * What is refused, for whatever it is, loses nothing that it brings: live wires that were tapped beside a slip of the thumb are on the
 * sheet, words of gas are a line of it, and no “go” stands that it would have ended. `known`: the sheet that it was made from; `sent`: it
 * comes from a phone, on which its words lie unread, where a form hands them back.
 */
export function keepFound(
  c: AppContext,
  deps: PageDeps,
  { id, last }: Pick<Saved, 'id' | 'last'>,
  mine: Sheet,
  known: Sheet,
  sent = false,
): void {
  const kept = withKeptFound(c, deps, last.sheet, mine, known, sent)
  if (JSON.stringify(kept) !== JSON.stringify(last.sheet))
    deps.store.removals.save(id, last.version, kept, stampOf(c, deps))
}

/** The sheet as it stands with what `mine` brings, and is not saved as it says it. */
export function withKeptFound(
  c: AppContext,
  deps: PageDeps,
  sheet: Sheet,
  mine: Sheet,
  known: Sheet,
  sent: boolean,
): Sheet {
  const moment = momentNow(c, deps)
  const fell = whoAndWhen(c, deps)
  const same = JSON.stringify(mine.decision) === JSON.stringify(known.decision)
  const both = mergeSheets(known, mine, sheet).sheet
  const tapped = withNoted(sheet, withNamed(both, withFound(sheet, mine, known), moment), {}, moment)
  const kept = withUnsaved(tapped, both, withNoted(sheet, both, {}, moment), known)
  const found = withFoundAt(mine, sheet, kept, moment)
  const after = fallen(c, deps, sheet, {
    ...(sent ? withUnkept(found, mine, known, moment) : found),
    ...heldBack(sheet.decision, same ? undefined : mine.decision, fell),
  })
  const go = after.decision
  const falls = go?.is === 'go' && go.fell === undefined && go.on === fell.on && isOtherwise(sheet, both)
  return falls ? { ...after, decision: { ...go, fell } } : after
}

/**
 * A line for what was said again and is not saved, a second pipe, his wife too; and no tick of it. `both`: the sheet had it been saved;
 * `noted`: that with its lines. What is sent twice has one line.
 */
function withUnsaved(tapped: Sheet, both: Sheet, noted: Sheet, known: Sheet): Sheet {
  const had = new Set((tapped.site.noted ?? []).map((n) => JSON.stringify(n)))
  const read = new Set((known.site.noted ?? []).map((n) => JSON.stringify(n)))
  const since = (tapped.site.noted ?? []).filter((n) => n.is === 'found' && !read.has(JSON.stringify(n)))
  const lines = (noted.site.noted ?? []).filter(
    (n) =>
      n.is === 'found' &&
      !had.has(JSON.stringify(n)) &&
      !since.some((x) => x.what === n.what && x.by === n.by),
  )
  const off = (both.check.done ?? []).filter((d) => noted.check.done?.includes(d) !== true)
  const { done } = tapped.check
  return {
    ...tapped,
    ...(lines.length === 0 ? {} : { site: withLines(tapped.site, lines) }),
    ...(done === undefined || off.length === 0
      ? {}
      : { check: { ...tapped.check, done: done.filter((d) => !off.includes(d)) } }),
  }
}

/** Somebody refuses, or has it wait, while another one's “go” stands: it falls, and who decides anew reads why. */
function heldBack(
  go: Sheet['decision'],
  mine: Sheet['decision'],
  fell: ReturnType<typeof whoAndWhen>,
): Pick<Sheet, 'decision'> {
  if (go?.is !== 'go' || go.fell !== undefined || mine === undefined || mine.is === 'go') return {}
  const over = refusedBefore(mine, go.by)
  return { decision: { ...go, fell, ...(over === undefined ? {} : { over }) } }
}
