/** After saving: what comes next, then what is in the book now. */
import { useWords } from '../../forms/index.ts'
import type { Entry } from '../../journal/index.ts'
import { correctPath, type Frame, HowTo, type JournalLine } from '../../parts/index.ts'
import type { Check, Plan } from '../../recovery/index.ts'
import type { ColonySummary } from '../../store/index.ts'
import {
  afterQuiet,
  coming,
  entryWords,
  inUnits,
  leftOutWords,
  lidShutUntil,
  live,
  toDoOf,
  type Words,
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
  const { words } = frame
  const said = words.colony.saved
  const open = summary.outcome === null
  const unsent = frame.phone?.unsent.includes(e.id) ?? false
  return (
    <div class="notice notice-do saved" role="status">
      {shares.length === 0 ? null : (
        <p>
          <b>
            {said.onStandToo(
              shares.map((s) => s.tag),
              summary.stand ?? '',
            )}
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
        <b>{unsent ? said.unsent : said.inBook}</b>{' '}
        {said.signed(
          lines.map((l, i) => doneWords(l.entry, frame, i > 0)).join('; '),
          words.dates.day(e.on, frame.today),
          e.by,
        )}
      </p>
      <div class="buttons">
        <a class="button" href="/">
          {said.backToToday}
        </a>
        {e.kind === 'intake' && e.replaces === undefined ? (
          <a class="button" href="/intake">
            {said.logAnother}
          </a>
        ) : null}
        {line.superseded === null && e.kind !== 'withdrawal' ? (
          <a class="button button-plain" href={correctPath(e.id, frame)}>
            {said.correctIt}
          </a>
        ) : null}
      </div>
    </div>
  )
}

/** After it has left: whom to tell, and what goes with it. */
const Gone = ({ summary, frame, path }: Pick<SavedProps, 'summary' | 'frame' | 'path'>) => {
  const moved = summary.outcome === 'moved-out'
  const { colony } = frame.words
  const said = colony.saved
  return (
    <>
      <p>
        <b>{said.offTheRound(summary.tag)}</b>
        {frame.mayOpen(`${path}/letter`) ? ` ${moved ? said.nextPapers : said.nextCustomer}` : ''}
      </p>
      {frame.mayOpen(`${path}/letter`) ? (
        <div class="buttons">
          {moved ? <HandingOver path={path} /> : null}
          <a class={moved ? 'button' : 'button button-do'} href={`${path}/letter`}>
            {colony.letter}
          </a>
        </div>
      ) : null}
    </>
  )
}

const HandingOver = ({ path }: { path: string }) => {
  const { keeperSheet, moveRecord } = useWords().colony
  return (
    <>
      <a class="button button-do" href={`${path}/keeper-sheet`}>
        {keeperSheet}
      </a>
      <a class="button" href={`${path}/move-record`}>
        {moveRecord}
      </a>
    </>
  )
}

/** Half a look: what is still to be said, while one stands at the box. */
const LeftOut = ({ plan, path }: { plan: Plan; path: string }) => {
  const w = useWords()
  const words = leftOutWords(plan, w)
  return words === null ? null : (
    <p class="left-out">
      <b>{words}</b>{' '}
      <a class="tall" href={`${path}/visit`}>
        {w.colony.saved.sayNow}
      </a>
    </p>
  )
}

/** What was done beside the look is said with all there is to it: which frame, from which colony. */
function doneWords(e: Entry, { units, today, words: w }: Frame, whole: boolean): string {
  const { title, facts } = entryWords(e, units, today, false, w)
  const words = whole && facts.length > 0 ? `${title} (${facts.join(', ')})` : title
  return whole ? `${words.charAt(0).toLowerCase()}${words.slice(1)}` : words
}

/** The plan in a sentence or two: what is to be done, and the next days that matter. */
const PlanNow = ({ plan, first, units }: { plan: Plan; first: boolean; units: Frame['units'] }) => {
  const w = useWords()
  const said = w.colony.saved
  const why = w.reasons.all(plan.advice.reasons)
  const next = (first ? [...live(plan), ...coming(plan)] : coming(plan)).slice(0, first ? 4 : 1)
  const shut = first ? lidShutUntil(plan) : null
  return (
    <>
      <p>
        <b>{said.planNow(w.trade.actions[plan.advice.action].toLowerCase())}</b>{' '}
        {inUnits(why.replace(leftOutWords(plan, w) ?? '', ''), units)}
      </p>
      <HowTo act={toDoOf(plan, w)?.act ?? null} />
      {shut === null ? null : (
        <p>
          <b>{said.lidFirst(w.dates.day(shut, plan.asOf))}</b> {said.beforeThat}
        </p>
      )}
      {next.length === 0 ? null : (
        <ul>
          {next.map((c) => (
            <li>{stepWords(c, plan, w)}</li>
          ))}
        </ul>
      )}
    </>
  )
}

function stepWords(c: Check, plan: Plan, w: Words): string {
  const { step, afterQuiet: after } = w.colony.saved
  const { day, fromTo } = w.dates
  const { name } = w.trade.rules[c.rule]
  const from = afterQuiet(c, plan)
  return from === null
    ? step(name, fromTo(c.opens, c.closes, plan.asOf), day(c.due, plan.asOf))
    : after(name, day(from, plan.asOf))
}
