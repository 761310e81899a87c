/** Labels for the stands: the tag large, and a code that opens the colony on the phone that scans it. */

import { raw } from 'hono/html'
import { type Frame, Layout, YardChoice } from '../../parts/index.ts'
import type { Words } from '../../words/index.ts'
import { ChooseSize, Show } from './choose.tsx'
import type { Size } from './sizes.ts'
import { PaperWays } from './ways.tsx'

interface Label {
  tag: string
  yard: string
  stand: string | null
  address: string
  /** SVG of the code. */
  code: string
}

export interface LabelsProps {
  frame: Frame
  yard: string | null
  yards: string[]
  size: Size
  /** How phones reach the book. */
  origin: string
  /** What was typed, when it is no address. */
  refused: string | null
  labels: Label[]
}

const LABELS_A_PAGE = 10

export const LabelsPage = (p: LabelsProps) => {
  const pages = Array.from({ length: Math.ceil(p.labels.length / LABELS_A_PAGE) }, (_, i) =>
    p.labels.slice(i * LABELS_A_PAGE, (i + 1) * LABELS_A_PAGE),
  )
  const { paper, parts } = p.frame.words
  return (
    <Layout frame={p.frame} title={paper.stands.title} scripts={['islands/print.ts']}>
      <div class="no-print">
        <h1>{paper.stands.title}</h1>
        <PaperWays frame={p.frame} />
        <p>{paper.stands.about}</p>
        <Choose {...p} />
        <Reach origin={p.origin} words={paper.stands} />
        {p.labels.length === 0 ? <p>{paper.stands.none}</p> : null}
      </div>
      <section class={`leaves leaves-${p.size}`} tabindex={0} aria-label={paper.asPrinted}>
        {pages.map((labels) => (
          <section class="leaf label-page">
            {labels.map((l) => (
              <article class="label">
                <div class="label-code">{raw(l.code)}</div>
                <div class="label-text">
                  <b class="label-tag">{l.tag}</b>
                  <span>{l.yard}</span>
                  {l.stand === null ? null : <span>{parts.stand(l.stand)}</span>}
                  <span class="label-address">{l.address.replace(/^https?:\/\//, '')}</span>
                </div>
              </article>
            ))}
          </section>
        ))}
      </section>
    </Layout>
  )
}

const Choose = ({ frame, yard, yards, size, origin, refused }: LabelsProps) => (
  <form class="sheet-choose" method="get" action="/labels">
    <YardChoice yard={yard} yards={yards} />
    <ChooseSize size={size} />
    <label class="choose-wide">
      {frame.words.paper.stands.address}
      {refused === null ? null : (
        <span class="problem" id="address-problem">
          {frame.words.paper.stands.badAddress}
        </span>
      )}
      <input
        type="text"
        name="address"
        value={refused ?? origin}
        inputmode="url"
        autocomplete="off"
        maxlength={200}
        aria-invalid={refused === null ? undefined : 'true'}
        aria-describedby={refused === null ? undefined : 'address-problem'}
      />
    </label>
    <Show print />
  </form>
)

/** A code that leads nowhere is worse than none. */
const Reach = ({ origin, words }: { origin: string; words: Words['paper']['stands'] }) => {
  const { protocol, hostname } = new URL(origin)
  const here = /^(localhost|127\.|\[::1\])/.test(hostname)
  if (!here && protocol === 'https:') return null
  return (
    <div class="notice notice-late">
      <p>{here ? words.here(origin) : words.notHttps(origin)}</p>
    </div>
  )
}
