/** A colony: where it is on its way, why, and everything that was written down of it. */
import type { History } from '../../src/journal/history.ts'
import type { Plan } from '../../src/recovery/plan-types.ts'
import type { ColonySummary } from '../../src/store/index.ts'
import { Checks } from '../parts/checks.tsx'
import { Journal, type JournalLine } from '../parts/journal.tsx'
import { type Frame, Layout } from '../parts/layout.tsx'
import { Ready } from '../parts/readiness.tsx'
import { ribbonOf } from '../parts/ribbon/model.ts'
import { RibbonDefs, RibbonStrip } from '../parts/ribbon/strip.tsx'
import { Saved } from '../parts/saved.tsx'
import { labelIn, removalTypes } from '../words/choices.ts'
import { dayWords, fromTo, spanWords } from '../words/dates.ts'
import { headline, toDoOf } from '../words/lines.ts'
import { ACTION_WORDS, isQuiet } from '../words/rules.ts'

export interface ColonyProps {
  frame: Frame
  summary: ColonySummary
  history: History
  journal: JournalLine[]
  path: string
  /** The entry just saved, when one was. */
  saved: JournalLine | null
}

export const ColonyPage = (p: ColonyProps) => {
  const { summary: s, frame } = p
  const { plan } = s
  const open = s.outcome === null
  return (
    <Layout frame={frame} title={s.tag}>
      {p.saved === null ? null : <Saved line={p.saved} plan={plan} summary={s} frame={frame} path={p.path} />}
      <header class="colony-head">
        <h1>
          <span class="colony-tag">{s.tag}</span> {headline(plan, s.outcome)}
        </h1>
        <p class="soft">
          {open
            ? `Day ${s.day}`
            : `Stayed ${s.day} days, until ${dayWords(s.closedOn ?? s.asOf, frame.today)}`}{' '}
          · {s.yard}
          {s.stand === null ? '' : `, stand ${s.stand}`} · {labelIn(removalTypes(), s.removalType)}, in{' '}
          {dayWords(s.intakeOn, frame.today)}
        </p>
      </header>
      {plan.surprises.map((text) => (
        <div class="notice notice-late">
          <h2>This does not fit</h2>
          <p>{text}</p>
        </div>
      ))}
      {open ? <Advice plan={plan} path={p.path} /> : null}
      <RibbonDefs />
      <RibbonStrip ribbon={ribbonOf(p.history, plan)} />
      {open ? (
        <div class="two">
          <Checks plan={plan} />
          <div>
            <Ready plan={plan} />
            <Spans plan={plan} />
          </div>
        </div>
      ) : null}
      <Journal lines={p.journal} frame={frame} />
    </Layout>
  )
}

const Advice = ({ plan, path }: { plan: Plan; path: string }) => {
  const { action, why } = plan.advice
  const lidOn = action === 'leave-alone' || action === 'outside-look'
  const toDo = toDoOf(plan)
  return (
    <div class={toDo === null ? 'notice' : 'notice notice-do'}>
      <h2>{toDo?.question ?? ACTION_WORDS[action]}</h2>
      <p>{why}</p>
      {isQuiet(plan) && plan.quiet !== null ? (
        <p>
          Quiet time {fromTo(plan.quiet.from, plan.quiet.to, plan.asOf)}: a queen may be leaving her cell,
          maturing or flying to mate. Look from outside only.
        </p>
      ) : null}
      <div class="buttons colony-ways">
        <a class="button button-do" href={`${path}/visit${lidOn ? '?lid=on' : ''}`}>
          Record a visit
        </a>
        <a class={action === 'move-out' ? 'button button-do' : 'button'} href={`${path}/outcome`}>
          It left the yard
        </a>
        <a class="button" href={`${path}/move`}>
          Other stand
        </a>
        <a class="button" href={`${path}/note`}>
          Note
        </a>
      </div>
    </div>
  )
}

const HORIZON = { eggs: 'eggs', open: 'open brood', capped: 'capped brood' } as const

/** What the dates rest on: spans, and until when a sighting proves nothing. */
const Spans = ({ plan }: { plan: Plan }) => {
  const { spans, horizon, asOf } = plan
  const ambiguous = (['eggs', 'open', 'capped'] as const).filter((k) => {
    const until = horizon[k]
    return until !== null && until >= asOf
  })
  const rows: [string, string | null][] = [
    [
      'Cells can still be started until',
      spans.cellsPossibleUntil ? dayWords(spans.cellsPossibleUntil, asOf) : null,
    ],
    ['The queen leaves her cell', spans.emergence ? spanWords(spans.emergence, asOf) : null],
    ['First egg', spans.firstEgg ? spanWords(spans.firstEgg, asOf) : null],
    ['Capped worker brood as proof', spans.workerBroodProof ? spanWords(spans.workerBroodProof, asOf) : null],
    ['Laying workers to be feared', spans.layingWorkerRisk ? spanWords(spans.layingWorkerRisk, asOf) : null],
    [
      'No capped brood (window for a mite treatment)',
      spans.broodless ? fromTo(spans.broodless.from, spans.broodless.to, asOf) : null,
    ],
  ]
  const shown = rows.filter((r): r is [string, string] => r[1] !== null)
  if (shown.length === 0 && ambiguous.length === 0) return null
  return (
    <section class="section">
      <h2>What the dates say</h2>
      <dl class="stacked">
        {shown.map(([label, value]) => (
          <>
            <dt>{label}</dt>
            <dd>{value}</dd>
          </>
        ))}
        {ambiguous.map((k) => (
          <>
            <dt>
              Until {dayWords(horizon[k] ?? asOf, asOf)}, {HORIZON[k]} prove nothing new
            </dt>
            <dd class="small">
              They may still be from brood that came along or was given; unless they are on comb drawn since
              the intake.
            </dd>
          </>
        ))}
      </dl>
      {spans.broodless ? (
        <p class="fine">
          A treatment then reaches mites that cannot hide in cells. Respirator, gloves, and the label
          registered where you are: the label is the law.
        </p>
      ) : null}
    </section>
  )
}
