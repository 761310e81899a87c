/** The yard's health: every colony, the pressing ones first. */

import { useWords } from '../../forms/index.ts'
import { Fold, type Frame, InspectorLine, Layout, YardFold } from '../../parts/index.ts'
import type { Exposure, Plan } from '../../recovery/index.ts'
import type { Words } from '../../words/index.ts'
import { DiseaseGuide } from './guide.tsx'
import { type Health, needsWash, urgencyOf } from './health.ts'
import { type HealthRow, Row } from './row.tsx'

export interface HealthPageProps {
  frame: Frame
  rows: HealthRow[]
  counts: { held: number; seen: number; over: number; unwashed: number }
  inspector: string
  /** Colonies bound to one that is suspected. */
  bound: { tag: string; path: string; plan: Plan }[]
  /** Those of them that have left: how, and when. */
  gone: { tag: string; path: string; left: string; bonds: Exposure['bonds'] }[]
}

type Said = Words['health']['yard']

/** More entries than this under one heading are folded behind it (judgement: half a screen of a phone). */
const MOST = 5

export const HealthPage = ({ frame, rows, counts, inspector, bound, gone }: HealthPageProps) => {
  const said = frame.words.health.yard
  const wash = rows.filter((r) => needsWash(r.health))
  return (
    <Layout frame={frame} title={said.title}>
      <h1>{said.title}</h1>
      {rows.length === 0 ? <p>{said.noColony}</p> : <Sum counts={counts} call={rows.some((r) => r.call)} />}
      {counts.held === 0 ? null : <InspectorLine inspector={inspector} frame={frame} />}
      <Rows rows={rows.filter((r) => first(r.health))} frame={frame} named />
      <DiseaseGuide inspector={inspector} open={false} />
      <ByYard
        rows={rows.filter((r) => !first(r.health) && (pressing(r.health) || r.says !== null))}
        frame={frame}
      />
      <Bound bound={bound} />
      <Gone gone={gone} frame={frame} />
      <Windows rows={rows} frame={frame} />
      <Tags id="to-wash" title={said.toWash} note={said.toWashNote} rows={wash} />
      <Tags id="well" title={said.well} rows={rows.filter((r) => urgencyOf(r.health) === 4)} />
    </Layout>
  )
}

/** What comes before all else is the headline. */
const Sum = ({ counts, call }: Pick<HealthPageProps, 'counts'> & { call: boolean }) => {
  const said = useWords().health.yard
  const [head, ...rest] = sumOf(counts, said)
  return (
    <>
      <p class="today-sum">
        {head ?? said.nothing}
        {call ? said.call : ''}.
      </p>
      {rest.length === 0 ? null : <p>{rest.join('; ')}.</p>}
    </>
  )
}

const Rows = ({
  rows,
  frame,
  named = false,
}: Pick<HealthPageProps, 'rows' | 'frame'> & { named?: boolean }) => (
  <ul class="health-rows">
    {rows.map((row) => (
      <Row row={row} frame={frame} named={named} />
    ))}
  </ul>
)

/** As one drives: yard by yard, folded where there are many boxes. */
const ByYard = ({ rows, frame }: Pick<HealthPageProps, 'rows' | 'frame'>) => {
  const yards = [...new Set(rows.map((r) => r.yard))].map((yard) => ({
    yard,
    of: rows.filter((r) => r.yard === yard),
  }))
  // A row here is as high as two lines of Today.
  const size = { lines: 2 * rows.length, yards: yards.length }
  return (
    <>
      {yards.map(({ yard, of }) => (
        <YardFold yard={yard} says={yardWords(of, frame.words.health.yard)} of={size}>
          <Rows rows={of} frame={frame} />
        </YardFold>
      ))}
    </>
  )
}

/** '3 with signs or low stores, 2 with mites' */
function yardWords(rows: readonly HealthRow[], said: Said): string {
  const mites = rows.filter((r) => urgencyOf(r.health) === 2).length
  const signs = rows.length - mites
  return [signs === 0 ? '' : said.withSigns(signs), mites === 0 ? '' : said.withMites(mites)]
    .filter(Boolean)
    .join(', ')
}

/** Foulbrood traced: who is bound to whom, and how. */
const Bound = ({ bound }: Pick<HealthPageProps, 'bound'>) => {
  const { dates, health, reasons } = useWords()
  const said = health.yard
  return bound.length === 0 ? null : (
    <Fold id="bound" title={said.bound} says={String(bound.length)} open={bound.length <= MOST}>
      <ul class="feeds">
        {bound.map(({ tag, path, plan: { exposed, asOf } }) =>
          exposed === null ? null : (
            <li>
              <a class="tag tall" href={`${path}/health`}>
                {tag}
              </a>{' '}
              <b>▲ {said.isHeld}</b>:{' '}
              {exposed.bonds.map((b) => `${reasons.deed(b)}, ${dates.day(b.on, asOf)}`).join('; ')}.{' '}
              {said.lookAt(dates.fromTo(exposed.look.opens, exposed.look.closes, asOf))}
            </li>
          ),
        )}
      </ul>
    </Fold>
  )
}

/** Nothing holds them here: who has them is to be told. */
const Gone = ({ gone, frame }: Pick<HealthPageProps, 'gone' | 'frame'>) => {
  const { dates, health, reasons } = frame.words
  const said = health.yard
  return gone.length === 0 ? null : (
    <section class="section">
      <h2>{said.gone}</h2>
      <p>{said.tell}</p>
      <ul class="feeds">
        {gone.map(({ tag, path, left, bonds }) => (
          <li>
            <a class="tag tall" href={path}>
              {tag}
            </a>{' '}
            {left}: {bonds.map((b) => `${reasons.deed(b)}, ${dates.day(b.on, frame.today)}`).join('; ')}.
          </li>
        ))}
      </ul>
    </section>
  )
}

const pressing = (h: Health): boolean => urgencyOf(h) < 3

/** A suspected disease, or a look that is late. */
const first = (h: Health): boolean => h.suspicion !== null || h.watches.some((w) => w.late)

/** Windows for a mite treatment still to come or open, the nearest first. */
const Windows = ({ rows, frame }: Pick<HealthPageProps, 'rows' | 'frame'>) => {
  const { dates, health } = frame.words
  const said = health.yard
  const coming = rows
    .flatMap((r) => (r.health.broodless === null ? [] : [{ ...r, window: r.health.broodless }]))
    .filter((r) => r.window.to >= frame.today)
    .sort((a, b) => a.window.from.localeCompare(b.window.from))
  if (coming.length === 0) return null
  const openNow = coming.filter((r) => r.window.from <= frame.today).length
  return (
    <Fold
      id="windows"
      title={said.windows}
      says={said.openOf(coming.length, openNow)}
      open={coming.length <= MOST}
    >
      <p class="soft">{said.allOnBees}</p>
      <ul class="feeds">
        {coming.map((r) => (
          <li>
            <a class="tag tall" href={`${r.path}/health`}>
              {r.tag}
            </a>{' '}
            {dates.fromTo(r.window.from, r.window.to, frame.today)}
            {r.window.from <= frame.today ? said.openNow : ''}
          </li>
        ))}
      </ul>
    </Fold>
  )
}

const Tags = (p: { id: string; title: string; note?: string; rows: HealthRow[] }) =>
  p.rows.length === 0 ? null : (
    <Fold id={p.id} title={p.title} says={String(p.rows.length)} open={p.rows.length <= 4 * MOST}>
      {p.note === undefined ? null : <p class="soft">{p.note}</p>}
      <p class="tags">
        {p.rows.map((r) => (
          <a class="tag tall" href={`${r.path}/health`}>
            {r.tag}
          </a>
        ))}
      </p>
    </Fold>
  )

/** What there is of each trouble, the worst first. */
const sumOf = (c: HealthPageProps['counts'], said: Said): string[] =>
  [
    c.held === 0 ? '' : said.held(c.held),
    c.seen === 0 ? '' : said.seen(c.seen),
    c.over === 0 ? '' : said.over(c.over),
    c.unwashed === 0 ? '' : said.unwashed(c.unwashed),
  ].filter(Boolean)
