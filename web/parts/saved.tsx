/** After saving: what is in the book now, and what the plan says. */
import type { Check, Plan } from '../../src/recovery/plan-types.ts'
import type { ColonySummary } from '../../src/store/index.ts'
import { dayWords, fromTo } from '../words/dates.ts'
import { entryWords } from '../words/entries.ts'
import { ACTION_WORDS, coming, live, RULE_WORDS } from '../words/rules.ts'
import type { JournalLine } from './journal.tsx'
import type { Frame } from './layout.tsx'

interface SavedProps {
  line: JournalLine
  plan: Plan
  summary: ColonySummary
  frame: Frame
  path: string
}

export const Saved = ({ line, plan, summary, frame }: SavedProps) => {
  const { entry: e } = line
  const words = entryWords(e, frame.units, frame.today)
  const open = summary.outcome === null
  const unsent = frame.phone?.unsent.includes(e.id) ?? false
  return (
    <div class="notice notice-do saved" role="status">
      <p>
        <b>{unsent ? 'Kept on this phone, not sent yet:' : 'In the book:'}</b> {words.title},{' '}
        {dayWords(e.on, frame.today)}, signed {e.by}.
      </p>
      {open ? <PlanNow plan={plan} first={e.kind === 'intake'} /> : <p>{summary.tag} is off the round.</p>}
      <div class="buttons">
        <a class="button" href="/">
          Back to today
        </a>
        {e.kind === 'intake' && e.replaces === undefined ? (
          <a class="button" href="/intake">
            Log another
          </a>
        ) : null}
        {line.superseded === null && e.kind !== 'withdrawal' ? (
          <a class="button button-plain" href={unsent ? `/outbox#o-${e.id}` : `/entry/${e.id}/correct`}>
            Correct it
          </a>
        ) : null}
      </div>
    </div>
  )
}

/** The plan in a sentence or two: what is to be done, and the next days that matter. */
const PlanNow = ({ plan, first }: { plan: Plan; first: boolean }) => {
  const { action, why } = plan.advice
  const next = (first ? [...live(plan), ...coming(plan)] : coming(plan)).slice(0, first ? 4 : 1)
  return (
    <>
      <p>
        <b>The plan now: {ACTION_WORDS[action].toLowerCase()}.</b> {why}
      </p>
      {next.length === 0 ? null : (
        <ul>
          {next.map((c) => (
            <li>{stepWords(c, plan.asOf)}</li>
          ))}
        </ul>
      )}
    </>
  )
}

const stepWords = (c: Check, today: string): string =>
  `${RULE_WORDS[c.rule].name}: ${fromTo(c.opens, c.closes, today)}, best ${dayWords(c.due, today)}`
