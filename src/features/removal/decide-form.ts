/** Go, wait or refuse, as it was tapped: judged against the sheet that was just saved, then written down. */
import { type AppContext, type PageDeps, signedIn } from '../../app/index.ts'
import { type FieldProblem, fieldsIn, type Typed } from '../../forms/index.ts'
import type { Decision, Sheet } from '../../records/index.ts'
import { timeIn } from '../../time-of-day.ts'
import { decisionProblems, refusedBy, unmetWords } from './decide.ts'
import { DECISION_FIELDS } from './fields.ts'
import { schemaProblems } from './form.ts'
import { placeOf } from './place.ts'
import { keep, type Saved } from './sheet-handlers.ts'
import { reckoningOf } from './view.ts'

function refusedBefore(s: Sheet, by: string): Pick<Decision, 'refused' | 'over'> {
  const refused = refusedBy(s, by) ?? s.decision?.refused
  return refused === undefined
    ? {}
    : { refused, ...(s.decision?.over === undefined ? {} : { over: s.decision.over }) }
}

/** Writes it down, or says why not. */
export function decide(c: AppContext, deps: PageDeps, saved: Saved, typed: Typed): FieldProblem[] {
  const { sheet } = saved.last
  const { frame } = c.var
  const reckoning = reckoningOf(c, deps, sheet)
  const { raw } = fieldsIn(DECISION_FIELDS, typed, frame.units)
  const at = timeIn(frame.zone, deps.clock())
  const decision = {
    // A refusal is forgotten neither by “wait” nor by the “go” over it.
    ...(raw.is === 'refuse' ? {} : refusedBefore(sheet, signedIn(c))),
    ...raw,
    by: signedIn(c),
    on: frame.today,
    at,
    unmet: unmetWords(reckoning),
    ...placeOf(sheet),
  }
  const problems = schemaProblems('decision', { raw: decision, problems: [] })
  if (problems.length > 0) return problems
  const made = decision as unknown as Decision
  const wrong = decisionProblems(made, reckoning, sheet)
  if (wrong.length === 0) keep(c, deps, saved, { ...sheet, decision: made })
  return wrong
}
