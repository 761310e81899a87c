/** Go, wait or refuse, as it was tapped: judged against the sheet that was just saved, then written down. */
import { type AppContext, type PageDeps, signedIn } from '../../app/index.ts'
import { type FieldProblem, fieldsIn, one, type Typed } from '../../forms/index.ts'
import type { Decision, Sheet } from '../../records/index.ts'
import { timeIn } from '../../time-of-day.ts'
import { heardOf, heardTyped } from './as-known.ts'
import { asRead } from './as-read.ts'
import { decisionProblems, refusedBefore, unmetWords } from './decide.ts'
import { DECISION_FIELDS } from './fields.ts'
import { schemaProblems } from './form.ts'
import { stillRead } from './notes-read.ts'
import { placeOf } from './place.ts'
import { isElsewhere, keep, momentNow, type Saved } from './sheet-handlers.ts'
import { reckoningOf } from './view.ts'
import { decidedWords } from './words.ts'
import { andSaid, withWords } from './written.ts'

/** What somebody else decided since the form was made: it is read before anything is decided over it. */
function decidedMeanwhile(deps: PageDeps, saved: Saved, shown: number, by: string): Decision | undefined {
  const last = saved.last.sheet.decision
  const then = deps.store.removals.version(saved.id, shown)?.sheet.decision
  return last === undefined || last.by === by || JSON.stringify(last) === JSON.stringify(then)
    ? undefined
    : last
}

/** Whether call or site were said otherwise since the form was made: a “go” is of what was read. */
function saidMeanwhile(deps: PageDeps, id: string, shown: number, before: Sheet): boolean {
  const then = deps.store.removals.version(id, shown)?.sheet
  const read = (s: Sheet): string => asRead({ ...s, check: {} })
  return then !== undefined && read(then) !== read(before)
}

/** Writes it down, or says why not. `before`: the sheet before what was typed beside it was saved. */
export function decide(
  c: AppContext,
  deps: PageDeps,
  saved: Saved,
  typed: Typed,
  before: Sheet,
): FieldProblem[] {
  const { sheet } = saved.last
  const { frame } = c.var
  const { raw } = fieldsIn(DECISION_FIELDS, typed, frame.units)
  // A reason is words like any others: “smells of gas, it always does”.
  const reckoning = reckoningOf(c, deps, andSaid(sheet, one(typed, 'reason')))
  const at = timeIn(frame.zone, deps.clock())
  const by = signedIn(c)
  const over = refusedBefore(sheet.decision, by)
  const known = heardOf(c, deps)
  const heard = known === null || one(typed, 'is') !== 'go' ? null : heardTyped(known, typed, at)
  const decision = {
    ...raw,
    ...(heard === null ? {} : { heard: heard.heard }),
    by,
    on: frame.today,
    at,
    unmet: unmetWords(reckoning),
    ...placeOf(sheet),
    ...(over === undefined ? {} : { over }),
  }
  const problems = schemaProblems('decision', { raw: decision, problems: [] })
  if (problems.length > 0) return problems
  const made = decision as unknown as Decision
  const shown = Number(one(typed, 'version'))
  if (made.is === 'go' && saidMeanwhile(deps, saved.id, shown, before))
    return [
      {
        field: 'is',
        message:
          'was not written down: the sheet was changed since this page was shown. Read it, and tap again',
      },
    ]
  const meanwhile = decidedMeanwhile(deps, saved, shown, by)
  if (made.is !== 'refuse' && meanwhile !== undefined)
    return [
      { field: 'is', message: `was not written down. ${decidedWords(meanwhile)}. Read it, and tap again` },
    ]
  const stays = made.is === 'go' ? isElsewhere(deps, saved.id, by, frame.today) : undefined
  if (stays !== undefined)
    return [
      {
        field: 'is',
        message: `cannot be “go” by you: ${stays}`,
      },
    ]
  const wrong = [...decisionProblems(made, reckoning, sheet), ...(heard?.problems ?? [])]
  if (wrong.length === 0) {
    const decided = { ...sheet, decision: made }
    const read = made.is === 'go' ? stillRead(sheet, decided, frame.today) : decided
    keep(c, deps, saved, withWords(sheet, read, momentNow(c, deps)))
  }
  return wrong
}
