/** The yard's health: every colony, the pressing ones first. */

import { type Frame, Layout } from '../../parts/index.ts'
import type { Exposure, Plan } from '../../recovery/index.ts'
import { dayWords, fromTo, wordsIn } from '../../words/index.ts'
import { DiseaseGuide } from './guide.tsx'
import { type Health, needsWash, urgencyOf } from './health.ts'
import { rateWords, standsShort } from './words.ts'

export interface HealthRow {
  tag: string
  path: string
  yard: string
  stand: string | null
  /** What the plan says of a sign, where one leads. */
  says: string | null
  health: Health
}

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

export const HealthPage = ({ frame, rows, counts, inspector, bound, gone }: HealthPageProps) => (
  <Layout frame={frame} title="Health">
    <h1>Health</h1>
    {rows.length === 0 ? <p>No colony is in the yard.</p> : <p class="today-sum">{sumWords(counts)}</p>}
    <DiseaseGuide inspector={inspector} open={false} />
    <ul class="health-rows">
      {rows
        .filter((r) => pressing(r.health) || r.says !== null)
        .map((row) => (
          <Row row={row} frame={frame} />
        ))}
    </ul>
    <Bound bound={bound} />
    <Gone gone={gone} frame={frame} />
    <Windows rows={rows} frame={frame} />
    <Tags
      title="To wash"
      note="No wash yet, or one too old to count."
      rows={rows.filter((r) => needsWash(r.health))}
    />
    <Tags title="Nothing pressing" rows={rows.filter((r) => urgencyOf(r.health) === 4)} />
  </Layout>
)

/** Foulbrood traced: who is bound to whom, and how. */
const Bound = ({ bound }: Pick<HealthPageProps, 'bound'>) =>
  bound.length === 0 ? null : (
    <section class="section">
      <h2>Bound to a suspected colony</h2>
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
    </section>
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

/** Windows for a mite treatment still to come or open, the nearest first. */
const Windows = ({ rows, frame }: Pick<HealthPageProps, 'rows' | 'frame'>) => {
  const coming = rows
    .flatMap((r) => (r.health.broodless === null ? [] : [{ ...r, window: r.health.broodless }]))
    .filter((r) => r.window.to >= frame.today)
    .sort((a, b) => a.window.from.localeCompare(b.window.from))
  if (coming.length === 0) return null
  return (
    <section class="section">
      <h2>Windows for a mite treatment</h2>
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
    </section>
  )
}

const Tags = ({ title, note, rows }: { title: string; note?: string; rows: HealthRow[] }) =>
  rows.length === 0 ? null : (
    <section class="section">
      <h2>{title}</h2>
      {note === undefined ? null : <p class="soft">{note}</p>}
      <p class="health-tags">
        {rows.map((r) => (
          <a class="tag tall" href={`${r.path}/health`}>
            {r.tag}
          </a>
        ))}
      </p>
    </section>
  )

function sumWords(c: HealthPageProps['counts']): string {
  const parts = [
    c.held === 0 ? '' : `${c.held} held for a suspected brood disease`,
    c.seen === 0 ? '' : `${c.seen} with beetles, moths, robbing or low stores`,
    c.over === 0 ? '' : `${c.over} with mites over the threshold, or near it`,
    c.unwashed === 0 ? '' : `${c.unwashed} to wash`,
  ].filter(Boolean)
  return parts.length === 0 ? 'Nothing pressing in any box.' : `${parts.join('; ')}.`
}

const Row = ({
  row: { tag, path, yard, stand, says, health: h },
  frame,
}: {
  row: HealthRow
  frame: Frame
}) => {
  const seen = h.watches.filter((w) => w.stands === 'seen')
  return (
    <li class={h.suspicion === null ? 'health-row' : 'health-row health-held'}>
      <div class="health-tag">
        <a class="tag tall" href={`${path}/health`}>
          {tag}
        </a>
        <span class="stand">
          {yard}
          {stand === null ? '' : `, stand ${stand}`}
        </span>
      </div>
      <ul class="health-says">
        {h.suspicion === null ? null : (
          <li>
            <b>▲ Held</b>: brood disease suspected {dayWords(h.suspicion.since, frame.today)}, not cleared
          </li>
        )}
        {says === null ? null : <li>{says}</li>}
        {seen.map((w) => (
          <li>
            <b>{wordsIn('en').health.pests.names[w.what]}</b> seen{' '}
            {dayWords(w.lastSeen ?? frame.today, frame.today)}
            {w.late
              ? ', look again now'
              : `, look again by ${dayWords(w.lookAgainBy ?? frame.today, frame.today)}`}
          </li>
        ))}
        {h.stores?.level === 'low' ? (
          <li>
            <b>Stores low</b> {dayWords(h.stores.on, frame.today)}
          </li>
        ) : null}
        <li>
          {h.last === null ? (
            'Mites: no wash yet'
          ) : (
            <>
              Mites: {rateWords(h.last)}
              {/* A held box stays closed: what to do about its mites can wait. */}
              {h.suspicion !== null ? null : h.last.stands === 'under' ? (
                `, ${standsShort(h.last)}`
              ) : (
                <>
                  , <b>{standsShort(h.last)}</b>
                </>
              )}
              {h.washStale ? `; washed ${dayWords(h.last.on, frame.today)}, too long ago` : ''}
            </>
          )}
        </li>
      </ul>
    </li>
  )
}
