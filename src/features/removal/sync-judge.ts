/** A sheet that a phone or a program sends is held to what the pages hold it to: nothing gets in that no form would take. */
import type { AppContext, PageDeps } from '../../app/index.ts'
import { signedIn } from '../../app/index.ts'
import type { Problem } from '../../journal/index.ts'
import type { Sheet } from '../../records/index.ts'
import type { SavedSheet } from '../../store/index.ts'
import { beforeCut, type Reckoning } from './before-cut.ts'
import { clearanceProblems, decisionProblems, secondProblems } from './decide.ts'
import { hazardsFound } from './hazards.ts'
import { HEAT_AT_START } from './heat.ts'
import { crewOf } from './sheet-handlers.ts'
import { blanksNow } from './view.ts'
import { HAZARD_WORDS, showsIn } from './words.ts'

/**
 * Why a sheet is not taken: a “go” over what holds it, a crew that clears itself, one person as two, a signature under
 * blanks. Only what is new since `known` is judged: what the server has, it has judged.
 */
export function sentProblems(
  c: AppContext,
  deps: PageDeps,
  known: Sheet,
  sent: Sheet,
  found: SavedSheet | null,
): string[] {
  const { today } = c.var.frame
  const first = [signedIn(c), ...(sent.decision === undefined ? [] : [sent.decision.by])]
  const reckoned = (day: string): Reckoning =>
    beforeCut(sent, deps.store.protocol(), showsIn(c.var.frame.units), day)
  const said: string[] = []
  for (const x of fresh(known.check.clearances, sent.check.clearances))
    said.push(
      ...lines(
        `The clearance of “${HAZARD_WORDS[x.hazard]}”`,
        clearanceProblems(x, crewOf(first, found), sent.job.name, today),
      ),
    )
  for (const x of fresh(known.check.seconds, sent.check.seconds)) {
    const about = `The second person for “${x.of}”`
    said.push(...lines(about, secondProblems(x, first, sent.job.name)))
    if (x.on > today) said.push(`${about}: the day is in the future`)
    if (!isSignable(x.item, reckoned(x.on))) said.push(`${about}: no second person can sign for that`)
  }
  // What will be so tomorrow, nobody has seen.
  if (sent.check.doneOn !== undefined && sent.check.doneOn > today)
    said.push('What was ticked is of a day that has not come')
  if (sent.decision !== undefined && key(sent.decision) !== key(known.decision)) {
    const { decision } = sent
    if (decision.on > today) said.push('The decision is of a day that has not come')
    said.push(...lines('The decision', decisionProblems(decision, reckoned(decision.on), sent)))
  }
  const signed = sent.agreement.signature
  if (signed !== undefined && key(signed) !== key(known.agreement.signature))
    if (signed.terms.includes('____') || blanksNow(c, deps, sent).length > 0)
      said.push('The agreement: nothing is signed blank')
  return said
}

/** Hazards only a trade clears, and items that a reason is enough for, have no second person. */
const isSignable = (item: string, { items }: Reckoning): boolean =>
  item === HEAT_AT_START || items.some((i) => i.id === item && i.weight === 'second')

const lines = (about: string, problems: readonly Problem[]): string[] =>
  problems.map((p) => `${about} ${p.message}`)

const key = (x: unknown): string => JSON.stringify(x) ?? ''

function fresh<T>(known: readonly T[] | undefined, sent: readonly T[] | undefined): T[] {
  const had = new Set((known ?? []).map(key))
  return (sent ?? []).filter((x) => !had.has(key(x)))
}

/** A clearance names no hazard as known that is not on the sheet: what a phone sends proves nothing beyond that. */
export function honest(s: Sheet): Sheet {
  if (s.check.clearances === undefined) return s
  const found = hazardsFound(s)
  const clearances = s.check.clearances.map((c) => ({ ...c, knew: c.knew.filter((h) => found.includes(h)) }))
  return { ...s, check: { ...s.check, clearances } }
}
