/** A colony: where it is on its way, why, and everything that was written down of it. */

import { addDays, type Day, daysBetween } from '../../days.ts'
import type { Foreseen, FrameSeen } from '../../forecast/index.ts'
import { useWords } from '../../forms/index.ts'
import type { Given, History } from '../../journal/index.ts'
import {
  BESIDE,
  Bonds,
  BoxAndList,
  Fold,
  type Frame,
  Journal,
  type JournalLine,
  Jumps,
  Layout,
  RibbonDefs,
  RibbonStrip,
  ribbonOf,
} from '../../parts/index.ts'
import type { Plan } from '../../recovery/index.ts'
import type { ColonySummary, Joined } from '../../store/index.ts'
import { coming, doubtWays, headline, labelIn, live, removalTypes, treatedWords } from '../../words/index.ts'
import { Advice, LeftWays } from './advice.tsx'
import { AfterWays } from './after-ways.tsx'
import { Checks } from './checks.tsx'
import { Forecasts } from './forecast.tsx'
import { ColonyPages } from './links.tsx'
import { Ready } from './readiness.tsx'
import { Saved } from './saved.tsx'
import { SharedDays } from './shared-days.tsx'
import { Spans } from './spans.tsx'

export interface ColonyProps {
  frame: Frame
  summary: ColonySummary
  history: History
  journal: JournalLine[]
  path: string
  /** Colonies that were united into it. */
  joined: Joined[]
  /** What was just saved: of a visit, everything done there; empty when nothing was. */
  saved: JournalLine[]
  /** Others on the stand it was just put on. */
  shares: ColonySummary[]
  /** The removal sheet it came of, for those who may see it. */
  sheet: string | null
  /** Whom to call about a brood disease. */
  inspector: string
  /** Somebody asked what a frame of brood would do: that part stands open. */
  asksFrame: boolean
  /** What is likely; null for a colony that has left. */
  forecasts: { seen: Foreseen; frame: FrameSeen } | null
}

/** What contradicts itself, and what one does about it. */
const Doubts = ({ plan, frame }: { plan: Plan; frame: Frame }) =>
  plan.surprises.length === 0 ? null : (
    <div class="notice notice-late">
      <h2>{frame.words.colony.doesNotFit}</h2>
      {plan.surprised.map((reason) => (
        <p>{frame.words.reasons.all([reason])}</p>
      ))}
      {plan.phase === 'closed' ? null : <p>{doubtWays(plan, frame.may('correct-any'), frame.words)}</p>}
    </div>
  )

/** The last treatment, while something is still to be done or kept to because of it. */
const Treated = ({ history, today }: { history: History; today: Day }) => {
  const last = history.entries.findLast((e): e is Given => e.kind === 'given' && e.what === 'treatment')
  if (last === undefined || daysBetween(last.on, today) > SAID_DAYS) return null
  const washed = history.entries.some((e) => e.kind === 'mite-wash' && daysBetween(last.on, e.on) >= 10)
  const open = last.withdrawalDays !== undefined && addDays(last.on, last.withdrawalDays) >= today
  return washed && !open ? null : <p>{treatedWords(last, washed, today, useWords())}</p>
}

/** A treatment is spoken of for so many days, if nothing more is heard of it (judgement). */
const SAID_DAYS = 60

/** What is folded, as links under the ribbon. */
const jumpsOf = ({ frame, summary, forecasts }: ColonyProps): { id: string; label: string }[] => {
  const { jumps } = frame.words.colony
  return [
    { id: 'journal', label: jumps.journal },
    ...(summary.outcome === null
      ? [
          { id: 'checks', label: jumps.checks },
          { id: 'dates', label: jumps.dates },
        ]
      : []),
    ...(forecasts === null ? [] : [{ id: 'likely', label: jumps.likely }]),
  ]
}

const ChecksFold = ({ plan, frame }: { plan: Plan; frame: Frame }) => {
  const { checks, jumps } = useWords().colony
  return (
    <Fold id="checks" title={jumps.checks} says={checks.count(live(plan).length, coming(plan).length)}>
      <Checks plan={plan} units={frame.units} />
    </Fold>
  )
}

export const ColonyPage = (p: ColonyProps) => {
  const { summary: s, frame } = p
  const { plan } = s
  const { words } = frame
  const said = words.colony
  const open = s.outcome === null
  return (
    <Layout frame={frame} title={s.tag} scripts={[BESIDE]}>
      <BoxAndList>
        {p.saved.length === 0 ? null : (
          <Saved lines={p.saved} shares={p.shares} plan={plan} summary={s} frame={frame} path={p.path} />
        )}
        <header class="colony-head">
          <h1>
            <span class="colony-tag">{s.tag}</span> {headline(plan, s.outcome, words)}
          </h1>
          <p class="soft">
            {open ? said.day(s.day) : said.stayed(s.day, words.dates.day(s.closedOn ?? s.asOf, frame.today))}{' '}
            · {words.entries.at(s.yard, s.stand ?? undefined)} ·{' '}
            {said.cameIn(
              labelIn(removalTypes([], words.choiceWords), s.removalType),
              words.dates.day(s.intakeOn, frame.today),
            )}
          </p>
        </header>
        <SharedDays history={p.history} today={frame.today} />
        <Doubts plan={plan} frame={frame} />
        {open ? <Bonds plan={plan} /> : null}
        {open ? (
          <Advice frame={frame} plan={plan} path={p.path} said={p.saved.length > 0} inspector={p.inspector} />
        ) : (
          <LeftWays path={p.path} />
        )}
        {open ? <Treated history={p.history} today={frame.today} /> : null}
        <RibbonDefs />
        <RibbonStrip ribbon={ribbonOf(p.history, plan)} />
        <Jumps to={jumpsOf(p)} />
        <Journal lines={p.journal} joined={p.joined} frame={frame} path={p.path} />
        {open ? <ChecksFold plan={plan} frame={frame} /> : null}
        {open ? (
          <Fold id="dates" title={plan.readiness.ready ? said.ready.yes : said.ready.fold}>
            <Ready plan={plan} />
            <Spans plan={plan} />
          </Fold>
        ) : null}
        {p.forecasts === null ? null : (
          <Fold id="likely" title={words.likely.title} open={p.asksFrame}>
            <Forecasts {...p.forecasts} plan={plan} today={frame.today} path={p.path} />
          </Fold>
        )}
        <ColonyPages frame={frame} path={p.path} sheet={p.sheet} />
        {!open && p.saved.length > 0 ? null : (
          <AfterWays frame={frame} path={p.path} moved={s.outcome === 'moved-out'} />
        )}
      </BoxAndList>
    </Layout>
  )
}
