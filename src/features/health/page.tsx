/** The yard's health: every colony, the pressing ones first. */

import { Fold, type Frame, InspectorLine, Layout, YardFold } from '../../parts/index.ts'
import type { Exposure, Plan } from '../../recovery/index.ts'
import { dayWords, fromTo } from '../../words/index.ts'
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

/** More entries than this under one heading are folded behind it (judgement: half a screen of a phone). */
const MOST = 5

export const HealthPage = ({ frame, rows, counts, inspector, bound, gone }: HealthPageProps) => {
  const wash = rows.filter((r) => needsWash(r.health))
  return (
    <Layout frame={frame} title="Health">
      <h1>Health</h1>
      {rows.length === 0 ? (
        <p>No colony is in the yard.</p>
      ) : (
        <Sum counts={counts} call={rows.some((r) => r.call)} />
      )}
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
      <Tags id="to-wash" title="To wash" note="No wash yet, or one too old to count." rows={wash} />
      <Tags id="well" title="Nothing pressing" rows={rows.filter((r) => urgencyOf(r.health) === 4)} />
    </Layout>
  )
}

/** What comes before all else is the headline. */
const Sum = ({ counts, call }: Pick<HealthPageProps, 'counts'> & { call: boolean }) => {
  const [head, ...rest] = sumOf(counts)
  return (
    <>
      <p class="today-sum">
        {head ?? 'Nothing pressing in any box'}
        {call ? ': close up, and call the inspector' : ''}.
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
        <YardFold yard={yard} says={yardWords(of)} of={size}>
          <Rows rows={of} frame={frame} />
        </YardFold>
      ))}
    </>
  )
}

/** '3 with signs or low stores, 2 with mites' */
function yardWords(rows: readonly HealthRow[]): string {
  const mites = rows.filter((r) => urgencyOf(r.health) === 2).length
  const signs = rows.length - mites
  return [signs === 0 ? '' : `${signs} with signs or low stores`, mites === 0 ? '' : `${mites} with mites`]
    .filter(Boolean)
    .join(', ')
}

/** Foulbrood traced: who is bound to whom, and how. */
const Bound = ({ bound }: Pick<HealthPageProps, 'bound'>) =>
  bound.length === 0 ? null : (
    <Fold
      id="bound"
      title="Bound to a suspected colony"
      says={String(bound.length)}
      open={bound.length <= MOST}
    >
      <ul class="feeds">
        {bound.map(({ tag, path, plan: { exposed, asOf } }) =>
          exposed === null ? null : (
            <li>
              <a class="tag tall" href={`${path}/health`}>
                {tag}
              </a>{' '}
              <b>▲ Held</b>: {exposed.bonds.map((b) => `${b.how}, ${dayWords(b.on, asOf)}`).join('; ')}. Look
              at every brood frame {fromTo(exposed.look.opens, exposed.look.closes, asOf)}.
            </li>
          ),
        )}
      </ul>
    </Fold>
  )

/** Nothing holds them here: who has them is to be told. */
const Gone = ({ gone, frame }: Pick<HealthPageProps, 'gone' | 'frame'>) =>
  gone.length === 0 ? null : (
    <section class="section">
      <h2>Gone since, and bound to a suspected colony</h2>
      <p>Tell who has it now, and the inspector.</p>
      <ul class="feeds">
        {gone.map(({ tag, path, left, bonds }) => (
          <li>
            <a class="tag tall" href={path}>
              {tag}
            </a>{' '}
            {left}: {bonds.map((b) => `${b.how}, ${dayWords(b.on, frame.today)}`).join('; ')}.
          </li>
        ))}
      </ul>
    </section>
  )

const pressing = (h: Health): boolean => urgencyOf(h) < 3

/** A suspected disease, or a look that is late. */
const first = (h: Health): boolean => h.suspicion !== null || h.watches.some((w) => w.late)

/** Windows for a mite treatment still to come or open, the nearest first. */
const Windows = ({ rows, frame }: Pick<HealthPageProps, 'rows' | 'frame'>) => {
  const coming = rows
    .flatMap((r) => (r.health.broodless === null ? [] : [{ ...r, window: r.health.broodless }]))
    .filter((r) => r.window.to >= frame.today)
    .sort((a, b) => a.window.from.localeCompare(b.window.from))
  if (coming.length === 0) return null
  const openNow = coming.filter((r) => r.window.from <= frame.today).length
  return (
    <Fold
      id="windows"
      title="Windows for a mite treatment"
      says={openNow === 0 ? String(coming.length) : `${coming.length}, ${openNow} open now`}
      open={coming.length <= MOST}
    >
      <p class="soft">No capped brood: every mite is on a bee. The label is the law.</p>
      <ul class="feeds">
        {coming.map((r) => (
          <li>
            <a class="tag tall" href={`${r.path}/health`}>
              {r.tag}
            </a>{' '}
            {fromTo(r.window.from, r.window.to, frame.today)}
            {r.window.from <= frame.today ? ', open now' : ''}
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
const sumOf = (c: HealthPageProps['counts']): string[] =>
  [
    c.held === 0 ? '' : `${c.held} held for a suspected brood disease`,
    c.seen === 0 ? '' : `${c.seen} with beetles, moths, robbing or low stores`,
    c.over === 0 ? '' : `${c.over} with mites over the threshold, or near it`,
    c.unwashed === 0 ? '' : `${c.unwashed} to wash`,
  ].filter(Boolean)
