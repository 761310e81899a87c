/** A form that came and is not saved, for a slip of the thumb or for what somebody else saved meanwhile. */
import type { AppContext, PageDeps } from '../../app/index.ts'
import { one, type Typed } from '../../forms/index.ts'
import type { Sheet } from '../../records/index.ts'
import { canonical } from '../../store/index.ts'
import type { Units } from '../../words/index.ts'
import { typedPart } from './form.ts'
import { keepFound, whoAndWhen } from './found-kept.ts'
import { GRAVE_WORDS } from './hazard-words.ts'
import type { Saved } from './sheet-handlers.ts'
import type { Part } from './stage.ts'

/** Seen near once, it stays near until its supplier has been there, whatever day the form is of. */
export const nearIn = ({ site, check }: Sheet): Sheet['site'] =>
  check.wires === 'near' ? { ...site, nearWires: true } : site

/** With “Refuse” or “Wait”, and its reason, where that was tapped in it. */
function withHeld(c: AppContext, deps: PageDeps, read: Sheet, typed: Typed): Sheet {
  const [is, reason] = [one(typed, 'is'), one(typed, 'reason').slice(0, 1000)]
  if (is !== 'refuse' && is !== 'wait') return read
  const said = reason === '' ? {} : { reason }
  return { ...read, decision: { is, ...whoAndWhen(c, deps), unmet: [], ...said } }
}

/** Nothing was typed: the part says what it said, in the units in which it is shown, and a swarm what is asked of it beside the box. */
const isAsShown = (part: Part, shown: Sheet, read: Sheet, units: Units): boolean =>
  canonical(typedPart(part, shown, units)) === canonical(typedPart(part, read, units)) &&
  (part !== 'check' || canonical(shown.site) === canonical(read.site))

/**
 * Keeps what can kill of a form that is not saved, and lets a “go” fall over it. `shown`: the sheet that it was made from; `read`: that
 * with what was typed. The sheet as it stands then.
 */
export function keepTyped(
  c: AppContext,
  deps: PageDeps,
  saved: Saved,
  { part, shown, read, typed }: { part: Part; shown: Sheet; read: Sheet; typed: Typed },
): Saved {
  const near = { ...read, site: nearIn(read) }
  const mine = isAsShown(part, shown, near, c.var.frame.units) ? shown : near
  keepFound(c, deps, saved, withHeld(c, deps, mine, typed), shown)
  return freshOf(deps, saved)
}

/** As it was just saved. */
export const freshOf = (deps: PageDeps, saved: Saved): Saved => ({
  ...saved,
  ...(deps.store.removals.get(saved.id) ?? saved),
})

/** What is kept of a form that came back, exactly; undefined where nothing is. `but`: all that is not. 'Not saved, but kept: gas pipe' */
export function keptWords(before: Sheet, { last: { sheet } }: Saved, but?: string): string | undefined {
  if (canonical(before) === canonical(sheet)) return undefined
  if (but !== undefined) return `Saved, all but ${but}`
  const had = (before.site.noted ?? []).map(canonical)
  const lines = (sheet.site.noted ?? []).filter((n) => !had.includes(canonical(n)))
  const said = [
    ...new Set(lines.map((n) => (n.is === 'was' ? n.words : (n.words ?? GRAVE_WORDS[n.what].toLowerCase())))),
    ...(sheet.decision?.fell !== undefined && before.decision?.fell === undefined ? ['no “go” stands'] : []),
  ]
  return `Not saved, but kept: ${said.join(', ') || 'what was found'}`
}
