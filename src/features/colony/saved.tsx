/** After saving: what comes next, then what is in the book now. */
import type { Entry } from '../../journal/index.ts'
import { correctPath, type Frame, HowTo, type JournalLine } from '../../parts/index.ts'
import type { Check, Plan } from '../../recovery/index.ts'
import type { ColonySummary } from '../../store/index.ts'
import {
  ACTION_WORDS,
  afterQuiet,
  coming,
  dayWords,
  entryWords,
  fromTo,
  inUnits,
  leftOutWords,
  lidShutUntil,
  live,
  RULE_WORDS,
  toDoOf,
} from '../../words/index.ts'

interface SavedProps {
  /** What one form wrote; the first leads. */
  lines: JournalLine[]
  /** Others on the stand it was put on. */
  shares: ColonySummary[]
  plan: Plan
  summary: ColonySummary
  frame: Frame
  /** Path of the colony's page. */
  path: string
}

export const Saved = ({ lines, shares, plan, summary, frame, path }: SavedProps) => {
  const [line] = lines
  if (line === undefined) return null
  const { entry: e } = line
  const open = summary.outcome === null
  const unsent = frame.phone?.unsent.includes(e.id) ?? false
  return (
    <div class="notice notice-do saved" role="status">
      {shares.length === 0 ? null : (
        <p>
          <b>
            {shares.map((s) => s.tag).join(' and ')} {shares.length === 1 ? 'stands' : 'stand'} on stand{' '}
            {summary.stand} too.
          </b>
        </p>
      )}
      {open ? <LeftOut plan={plan} path={path} /> : null}
      {open ? (
        <PlanNow plan={plan} first={e.kind === 'intake'} units={frame.units} />
      ) : (
        <Gone summary={summary} frame={frame} path={path} />
      )}
      <p class="small">
        <b>{unsent ? 'Kept on this phone, not sent yet:' : 'In the book:'}</b>{' '}
        {lines.map((l, i) => doneWords(l.entry, frame, i > 0)).join('; ')}, {dayWords(e.on, frame.today)},
        signed {e.by}.
      </p>
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
          <a class="button button-plain" href={correctPath(e.id, frame)}>
            Correct it
          </a>
        ) : null}
      </div>
    </div>
  )
}

/** After it has left: whom to tell, and what goes with it. */
const Gone = ({ summary, frame, path }: Pick<SavedProps, 'summary' | 'frame' | 'path'>) => {
  const moved = summary.outcome === 'moved-out'
  return (
    <>
      <p>
        <b>{summary.tag} is off the round.</b>
        {frame.mayOpen(`${path}/letter`)
          ? ` What comes next: ${moved ? 'its papers for the new keeper, and a letter to the customer' : 'tell the customer'}.`
          : ''}
      </p>
      {frame.mayOpen(`${path}/letter`) ? (
        <div class="buttons">
          {moved ? <HandingOver path={path} /> : null}
          <a class={moved ? 'button' : 'button button-do'} href={`${path}/letter`}>
            Letter to the customer
          </a>
        </div>
      ) : null}
    </>
  )
}

const HandingOver = ({ path }: { path: string }) => (
  <>
    <a class="button button-do" href={`${path}/keeper-sheet`}>
      Sheet for the new keeper
    </a>
    <a class="button" href={`${path}/move-record`}>
      Move-out record
    </a>
  </>
)

/** Half a look: what is still to be said, while one stands at the box. */
const LeftOut = ({ plan, path }: { plan: Plan; path: string }) => {
  const words = leftOutWords(plan)
  return words === null ? null : (
    <p class="left-out">
      <b>{words}</b>{' '}
      <a class="tall" href={`${path}/visit`}>
        Say it now
      </a>
    </p>
  )
}

/** What was done beside the look is said with all there is to it: which frame, from which colony. */
function doneWords(e: Entry, { units, today }: Frame, whole: boolean): string {
  const { title, facts } = entryWords(e, units, today)
  const words = whole && facts.length > 0 ? `${title} (${facts.join(', ')})` : title
  return whole ? `${words.charAt(0).toLowerCase()}${words.slice(1)}` : words
}

/** The plan in a sentence or two: what is to be done, and the next days that matter. */
const PlanNow = ({ plan, first, units }: { plan: Plan; first: boolean; units: Frame['units'] }) => {
  const { action, why } = plan.advice
  const next = (first ? [...live(plan), ...coming(plan)] : coming(plan)).slice(0, first ? 4 : 1)
  const shut = first ? lidShutUntil(plan) : null
  return (
    <>
      <p>
        <b>The plan now: {ACTION_WORDS[action].toLowerCase()}.</b>{' '}
        {inUnits(why.replace(leftOutWords(plan) ?? '', ''), units)}
      </p>
      <HowTo act={toDoOf(plan)?.act ?? null} />
      {shut === null ? null : (
        <p>
          <b>The lid comes off first on {dayWords(shut, plan.asOf)}.</b> What comes before that is looked at
          from outside.
        </p>
      )}
      {next.length === 0 ? null : (
        <ul>
          {next.map((c) => (
            <li>{stepWords(c, plan)}</li>
          ))}
        </ul>
      )}
    </>
  )
}

function stepWords(c: Check, plan: Plan): string {
  const { name } = RULE_WORDS[c.rule]
  const from = afterQuiet(c, plan)
  return from === null
    ? `${name}: ${fromTo(c.opens, c.closes, plan.asOf)}, best ${dayWords(c.due, plan.asOf)}`
    : `${name}: from ${dayWords(from, plan.asOf)}, when the lid may come off again`
}
