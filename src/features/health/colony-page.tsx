/** One colony's health: mites, treatment window, brood disease, pests, feed. */

import { useWords } from '../../forms/index.ts'
import type { History } from '../../journal/index.ts'
import {
  Bonds,
  Crumb,
  type Frame,
  InspectorLine,
  Layout,
  RibbonDefs,
  RibbonStrip,
  ribbonOf,
  Wide,
} from '../../parts/index.ts'
import { type DayRange, type Exposure, heldWords, type Protocol } from '../../recovery/index.ts'
import type { ColonySummary } from '../../store/index.ts'
import { inUnits } from '../../words/index.ts'
import { WashChart } from './chart.tsx'
import { FeedSection, RecordLink } from './feed-section.tsx'
import { DiseaseGuide, TreatmentNote } from './guide.tsx'
import type { Health } from './health.ts'
import { unwatched, WATCHED } from './watch.ts'
import { rateWords, shortRate, standsWords, trendWords, watchWords } from './words.ts'

export interface ColonyHealthProps {
  frame: Frame
  summary: ColonySummary
  history: History
  path: string
  health: Health
  protocol: Protocol
  inspector: string
  /** Colonies bound to this one, where it is suspected. */
  bound: { tag: string; path: string; exposed: Exposure | null }[]
}

export const ColonyHealthPage = (p: ColonyHealthProps) => {
  const title = p.frame.words.health.title(p.summary.tag)
  return (
    <Layout frame={p.frame} title={title}>
      <Crumb to={p.path}>{p.summary.tag}</Crumb>
      <h1>{title}</h1>
      {p.health.suspicion === null ? null : <Held {...p} />}
      {p.summary.outcome === null ? <Bonds plan={p.summary.plan} /> : null}
      <Signs {...p} />
      <Mites {...p} />
      <Window {...p} />
      <Disease {...p} />
      <Pests {...p} />
      <FeedSection health={p.health} frame={p.frame} path={p.path} here={p.summary.outcome === null} />
    </Layout>
  )
}

const Held = ({ health, summary, path, inspector, frame, bound }: ColonyHealthProps) => {
  const { suspicion } = health
  if (suspicion === null) return null
  const { words: w } = frame
  const said = w.health
  const words = w.forms.problem(heldWords(summary.tag, suspicion))
  return (
    <div class="notice notice-late">
      <h2>{w.colony.held.suspected}</h2>
      <p>{`${words.charAt(0).toUpperCase()}${words.slice(1)}.`}</p>
      <InspectorLine inspector={inspector} frame={frame} />
      {bound.length === 0 ? null : (
        <p>
          {said.boundToIt}{' '}
          {bound.map((b, i) => (
            <>
              {i === 0 ? '' : '; '}
              <a href={`${b.path}/health`}>{b.tag}</a>{' '}
              {b.exposed?.bonds
                .map((x) => `${w.reasons.deed(x)}, ${w.dates.day(x.on, frame.today)}`)
                .join(', ')}
            </>
          ))}
          .
        </p>
      )}
      <div class="buttons">
        {frame.may('clear-disease') && summary.outcome === null ? (
          <a class="button" href={`${path}/cleared`}>
            {said.recordCleared}
          </a>
        ) : null}
        <a class="button" href={`${path}/visit`}>
          {said.recordLook}
        </a>
      </div>
    </div>
  )
}

/** What the plan says of the signs, in its own words: the same as on Today and at the box. */
const Signs = ({ frame, summary: { plan, outcome } }: ColonyHealthProps) =>
  outcome !== null || plan.advice.action !== 'see-to-signs' ? null : (
    <div class="notice notice-late">
      <p>{inUnits(frame.words.reasons.all(plan.advice.reasons), frame.units)}</p>
    </div>
  )

const Mites = ({ health: h, path, protocol, frame, summary }: ColonyHealthProps) => {
  const { words } = frame
  const { dates } = words
  const said = words.health.mites
  return (
    <section class="section">
      <h2>{said.title}</h2>
      {h.last === null ? (
        <p>{said.noWash}</p>
      ) : (
        <>
          <p class="health-sum">
            <strong>{rateWords(h.last, words)}</strong>, {dates.dayAndDistance(h.last.on, frame.today)}.
          </p>
          <p>
            {standsWords(h.last, words)}
            {h.washStale ? said.stale(protocol.miteWashValidDays) : ''}
          </p>
          {h.trend === null ? null : <p>{trendWords(h.trend, frame.today, words)}</p>}
          <WashChart washes={h.washes} protocol={protocol} today={frame.today} />
          <Wide label={said.every}>
            <table class="plain-table">
              <thead>
                <tr>
                  <th scope="col">{said.day}</th>
                  <th scope="col">{said.onBees}</th>
                  <th scope="col">{said.per100}</th>
                  <th scope="col">{said.threshold}</th>
                </tr>
              </thead>
              <tbody>
                {[...h.washes].reverse().map((w) => (
                  <tr>
                    <td>{dates.day(w.on, frame.today)}</td>
                    <td>{said.of(w.mites, w.bees)}</td>
                    <td>{shortRate(w, words)}</td>
                    <td>{w.threshold}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </Wide>
        </>
      )}
      {summary.outcome === null ? <RecordLink to={`${path}/wash`} words={said.record} /> : null}
    </section>
  )
}

const Window = ({ health: h, history, summary, frame, path }: ColonyHealthProps) => {
  const { dates, health } = frame.words
  const said = health.window
  return (
    <section class="section">
      <h2>{said.title}</h2>
      {h.broodless === null ? (
        <p>{said.none}</p>
      ) : (
        <p>
          <strong>{dates.fromTo(h.broodless.from, h.broodless.to, frame.today)}</strong>
          {said.allOnBees}
          {h.broodless.to < frame.today ? said.over : said.reckoned}{' '}
          <QuietToo window={h.broodless} quiet={summary.plan.quiet} today={frame.today} />
        </p>
      )}
      <RibbonDefs />
      <RibbonStrip ribbon={ribbonOf(history, summary.plan)} />
      {h.treatments.length === 0 ? null : (
        <p>
          {said.treated(
            h.treatments
              .map((t) => `${dates.day(t.on, frame.today)}${t.product === null ? '' : ` (${t.product})`}`)
              .join('; '),
          )}
        </p>
      )}
      <TreatmentNote />
      {summary.outcome === null ? <RecordLink to={`${path}/treat`} words={said.record} /> : null}
    </section>
  )
}

/** A window that falls into quiet time: a treatment that opens the box can cost the young queen. */
const QuietToo = ({ window, quiet, today }: { window: DayRange; quiet: DayRange | null; today: string }) => {
  const { dates, health } = useWords()
  return quiet === null || quiet.to < window.from || quiet.from > window.to || quiet.to < today ? null : (
    <span>{health.window.quietToo(dates.day(quiet.to, today))}</span>
  )
}

const Disease = ({ health: h, inspector, frame }: ColonyHealthProps) => {
  const { dates, health } = frame.words
  const said = health.disease
  return (
    <section class="section">
      <h2>{said.title}</h2>
      <p>
        {h.lastDiseaseLook === null
          ? said.nobodyLooked
          : said.lastLooked(dates.dayAndDistance(h.lastDiseaseLook, frame.today))}
      </p>
      <DiseaseGuide inspector={inspector} open={h.suspicion !== null} />
    </section>
  )
}

const Pests = ({ health: h, frame }: ColonyHealthProps) => {
  const { words } = frame
  const said = words.health.pests
  return (
    <section class="section">
      <h2>{said.title}</h2>
      <dl class="watch">
        {WATCHED.map((name) => {
          const w = h.watches.find((x) => x.what === name)
          if (w === undefined) return null
          return (
            <div class={w.stands === 'seen' ? 'watch-row watch-seen' : 'watch-row'}>
              <dt>{said.names[name]}</dt>
              <dd>
                {watchWords(w, frame.today, words)}
                {w.stands !== 'seen' && w.lastLooked !== null && unwatched(w, frame.today)
                  ? said.longAgo
                  : ''}
                {w.stands === 'seen' ? <p class="small">{words.reasons.remedy[name]}.</p> : null}
              </dd>
            </div>
          )
        })}
      </dl>
    </section>
  )
}
