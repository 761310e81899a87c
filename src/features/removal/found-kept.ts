/** What comes onto a sheet stays on it, and a “go” that it takes the ground from falls, whatever else the form is refused for. */
import type { AppContext, PageDeps } from '../../app/index.ts'
import { hasBegun, type Sheet, withFound } from '../../records/index.ts'
import { isOtherwise } from './as-read.ts'
import { refusedBefore } from './decide.ts'
import { withNoted } from './grave.ts'
import { momentNow, type Saved, stampOf } from './sheet-handlers.ts'
import { startOf, stoodOn } from './view.ts'
import { withWords } from './written.ts'

/** Who writes this, and when. */
export const whoAndWhen = (c: AppContext, deps: PageDeps) => {
  const { writtenAt: _, ...moment } = momentNow(c, deps)
  return moment
}

/** Open, not boxed, and hotter now than anybody may cut in, with no second person’s name under it. */
function grewTooHot(c: AppContext, deps: PageDeps, before: Sheet, after: Sheet): boolean {
  const { today } = c.var.frame
  const open = hasBegun(before) && before.work.boxedAt === undefined && after.work.on === today
  return open && startOf(c, deps, after).start.state === 'unmet'
}

/** A “go” that a change takes the ground from does not come back by itself: it is decided anew. */
export function fallen(c: AppContext, deps: PageDeps, before: Sheet, after: Sheet): Sheet {
  const { decision } = after
  if (decision === undefined || !stoodOn(c, deps, before, decision.on)) return after
  const stands = stoodOn(c, deps, after, decision.on) && !isOtherwise(before, after)
  if (stands && !grewTooHot(c, deps, before, after)) return after
  return { ...after, decision: { ...decision, fell: whoAndWhen(c, deps) } }
}

/**
 * A form that is not saved, for whatever it is refused or asked, loses nothing that it brings: live wires that were tapped beside a slip
 * of the pen are on the sheet, words for what can kill leave a line, and no “go” stands over what it says otherwise. `known`: what it
 * was made from. `holds`: it says to wait or to refuse.
 */
export function keepFound(
  c: AppContext,
  deps: PageDeps,
  { id, last }: Pick<Saved, 'id' | 'last'>,
  mine: Sheet,
  known?: Sheet,
  holds = false,
): void {
  const { sheet } = last
  const decision =
    JSON.stringify(mine.decision) === JSON.stringify(known?.decision) ? undefined : mine.decision
  const added: Sheet = {
    ...withFound(sheet, mine, known),
    ...heldBack(sheet.decision, decision, whoAndWhen(c, deps)),
  }
  const moment = momentNow(c, deps)
  const noted = fallen(c, deps, sheet, withWords(mine, withNoted(sheet, added, {}, moment), moment))
  const { decision: go } = noted
  const over = holds || (known !== undefined && fallen(c, deps, known, mine).decision?.fell !== undefined)
  const kept: Sheet =
    over && go?.is === 'go' && go.fell === undefined
      ? { ...noted, decision: { ...go, fell: whoAndWhen(c, deps) } }
      : noted
  if (JSON.stringify(kept) !== JSON.stringify(sheet))
    deps.store.removals.save(id, last.version, kept, stampOf(c, deps))
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
