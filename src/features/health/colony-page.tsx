/** One colony's health: mites, treatment window, brood disease, pests, feed. */

import type { History } from '../../journal/index.ts'
import {
  Bonds,
  type Frame,
  InspectorLine,
  Layout,
  RibbonDefs,
  RibbonStrip,
  ribbonOf,
  Wide,
} from '../../parts/index.ts'
import { type DayRange, type Exposure, heldWords, type Protocol, REMEDY } from '../../recovery/index.ts'
import type { ColonySummary } from '../../store/index.ts'
import { dayAndDistance, dayWords, fromTo, inUnits } from '../../words/index.ts'
import { WashChart } from './chart.tsx'
import { FeedSection } from './feed-section.tsx'
import { DiseaseGuide, TreatmentNote } from './guide.tsx'
import type { Health } from './health.ts'
import { unwatched, WATCHED } from './watch.ts'
import { rateWords, standsWords, trendWords, WATCH_NAMES, watchWords } from './words.ts'

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

export const ColonyHealthPage = (p: ColonyHealthProps) => (
  <Layout frame={p.frame} title={`Health of ${p.summary.tag}`}>
    <p class="crumb">
      <a href={p.path}>‹ {p.summary.tag}</a>
    </p>
    <h1>Health of {p.summary.tag}</h1>
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

const Held = ({ health, summary, path, inspector, frame, bound }: ColonyHealthProps) => {
  const { suspicion } = health
  if (suspicion === null) return null
  const words = heldWords(summary.tag, suspicion)
  return (
    <div class="notice notice-late">
      <h2>Held: brood disease suspected</h2>
      <p>{`${words.charAt(0).toUpperCase()}${words.slice(1)}.`}</p>
      <InspectorLine inspector={inspector} frame={frame} />
      {bound.length === 0 ? null : (
        <p>
          Bound to it:{' '}
          {bound.map((b, i) => (
            <>
              {i === 0 ? '' : '; '}
              <a href={`${b.path}/health`}>{b.tag}</a>{' '}
              {b.exposed?.bonds.map((x) => `${x.how}, ${dayWords(x.on, frame.today)}`).join(', ')}
            </>
          ))}
          .
        </p>
      )}
      <div class="buttons">
        {frame.may('clear-disease') && summary.outcome === null ? (
          <a class="button" href={`${path}/cleared`}>
            Record who cleared it
          </a>
        ) : null}
        <a class="button" href={`${path}/visit`}>
          Record a look
        </a>
      </div>
    </div>
  )
}

/** What the plan says of the signs, in its own words: the same as on Today and at the box. */
const Signs = ({ summary: { plan, outcome }, frame }: ColonyHealthProps) =>
  outcome !== null || plan.advice.action !== 'see-to-signs' ? null : (
    <div class="notice notice-late">
      <p>{inUnits(plan.advice.why, frame.units)}</p>
    </div>
  )

const Mites = ({ health: h, path, protocol, frame, summary }: ColonyHealthProps) => (
  <section class="section">
    <h2>Mites</h2>
    {h.last === null ? (
      <p>No wash yet. Half a cup of bees from a brood frame, about 300, without the queen.</p>
    ) : (
      <>
        <p class="health-sum">
          <strong>{rateWords(h.last)}</strong>, {dayAndDistance(h.last.on, frame.today)}.
        </p>
        <p>
          {standsWords(h.last)}
          {h.washStale ? ` It is older than ${protocol.miteWashValidDays} days and counts no longer.` : ''}
        </p>
        {h.trend === null ? null : <p>{trendWords(h.trend, frame.today)}</p>}
        <WashChart washes={h.washes} protocol={protocol} today={frame.today} />
        <Wide label="Every wash">
          <table class="plain-table">
            <thead>
              <tr>
                <th scope="col">Day</th>
                <th scope="col">Mites on bees</th>
                <th scope="col">Per 100</th>
                <th scope="col">Threshold</th>
              </tr>
            </thead>
            <tbody>
              {[...h.washes].reverse().map((w) => (
                <tr>
                  <td>{dayWords(w.on, frame.today)}</td>
                  <td>
                    {w.mites} on {w.bees}
                  </td>
                  <td>{rateWords(w).replace(' per 100 bees', '')}</td>
                  <td>{w.threshold}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </Wide>
      </>
    )}
    {summary.outcome === null ? (
      <div class="buttons">
        <a class="button" href={`${path}/wash`}>
          Record a wash
        </a>
      </div>
    ) : null}
  </section>
)

const Window = ({ health: h, history, summary, frame, path }: ColonyHealthProps) => (
  <section class="section">
    <h2>Window for a mite treatment</h2>
    {h.broodless === null ? (
      <p>
        No time without capped brood is in sight: mites in cells are out of reach of what works on bees alone.
      </p>
    ) : (
      <p>
        <strong>{fromTo(h.broodless.from, h.broodless.to, frame.today)}</strong>: no capped brood, so every
        mite is on a bee.
        {h.broodless.to < frame.today
          ? ' It is over.'
          : ' Reckoned from the brood seen and expected: a look can move it.'}{' '}
        <QuietToo window={h.broodless} quiet={summary.plan.quiet} today={frame.today} />
      </p>
    )}
    <RibbonDefs />
    <RibbonStrip ribbon={ribbonOf(history, summary.plan)} />
    {h.treatments.length === 0 ? null : (
      <p>
        Treated:{' '}
        {h.treatments
          .map((t) => `${dayWords(t.on, frame.today)}${t.product === null ? '' : ` (${t.product})`}`)
          .join('; ')}
        .
      </p>
    )}
    <TreatmentNote />
    {summary.outcome === null ? (
      <div class="buttons">
        <a class="button" href={`${path}/treat`}>
          Record a treatment
        </a>
      </div>
    ) : null}
  </section>
)

/** A window that falls into quiet time: a treatment that opens the box can cost the young queen. */
const QuietToo = ({ window, quiet, today }: { window: DayRange; quiet: DayRange | null; today: string }) =>
  quiet === null || quiet.to < window.from || quiet.from > window.to || quiet.to < today ? null : (
    <>
      The lid stays on until {dayWords(quiet.to, today)} for the young queen: take the days after, or a way
      that opens nothing.
    </>
  )

const Disease = ({ health: h, inspector, frame }: ColonyHealthProps) => (
  <section class="section">
    <h2>Brood disease</h2>
    <p>
      {h.lastDiseaseLook === null
        ? 'Nobody has looked at the brood and noted the signs yet.'
        : `Last looked at with the lid off: ${dayAndDistance(h.lastDiseaseLook, frame.today)}.`}
    </p>
    <DiseaseGuide inspector={inspector} open={h.suspicion !== null} />
  </section>
)

const Pests = ({ health: h, frame }: ColonyHealthProps) => (
  <section class="section">
    <h2>Beetles, moths, robbing</h2>
    <dl class="watch">
      {WATCHED.map((name) => {
        const w = h.watches.find((x) => x.what === name)
        if (w === undefined) return null
        return (
          <div class={w.stands === 'seen' ? 'watch-row watch-seen' : 'watch-row'}>
            <dt>{WATCH_NAMES[name]}</dt>
            <dd>
              {watchWords(w, frame.today)}
              {w.stands !== 'seen' && w.lastLooked !== null && unwatched(w, frame.today)
                ? ' That is a while ago: look again.'
                : ''}
              {w.stands === 'seen' ? <p class="small">{REMEDY[name]}.</p> : null}
            </dd>
          </div>
        )
      })}
    </dl>
  </section>
)
