/** Labels for the stands: the tag large, and a code that opens the colony on the phone that scans it. */

import { raw } from 'hono/html'
import { type Frame, Layout, YardChoice } from '../../parts/index.ts'
import { SIZE_WORDS, SIZES, type Size } from './page.tsx'
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
  return (
    <Layout frame={p.frame} title="Stand labels" scripts={['islands/print.ts']}>
      <div class="no-print">
        <h1>Stand labels</h1>
        <PaperWays frame={p.frame} />
        <p>
          A label for each box: the tag to read from a distance, and a code. Point a phone’s camera at it and
          the colony’s page opens, of whichever colony has the tag then.
        </p>
        <Choose {...p} />
        <Reach origin={p.origin} />
        {p.labels.length === 0 ? <p>No colonies stand there.</p> : null}
      </div>
      <section class={`leaves leaves-${p.size}`} tabindex={0} aria-label="As it is printed">
        {pages.map((labels) => (
          <section class="leaf label-page">
            {labels.map((l) => (
              <article class="label">
                <div class="label-code">{raw(l.code)}</div>
                <div class="label-text">
                  <b class="label-tag">{l.tag}</b>
                  <span>{l.yard}</span>
                  {l.stand === null ? null : <span>stand {l.stand}</span>}
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

const Choose = ({ yard, yards, size, origin, refused }: LabelsProps) => (
  <form class="sheet-choose" method="get" action="/labels">
    <YardChoice yard={yard} yards={yards} />
    <label>
      Paper
      <select name="size">
        {SIZES.map((s) => (
          <option value={s} selected={s === size}>
            {SIZE_WORDS[s]}
          </option>
        ))}
      </select>
    </label>
    <label class="choose-wide">
      Address of this book, as phones reach it
      {refused === null ? null : (
        <span class="problem" id="address-problem">
          must be an address like https://yard.example
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
    <button class="button" type="submit">
      Show
    </button>
    <button class="button button-do" type="button" id="print" hidden>
      Print
    </button>
  </form>
)

/** A code that leads nowhere is worse than none. */
const Reach = ({ origin }: { origin: string }) => {
  const { protocol, hostname } = new URL(origin)
  const here = /^(localhost|127\.|\[::1\])/.test(hostname)
  if (!here && protocol === 'https:') return null
  return (
    <div class="notice notice-late">
      <p>
        {here
          ? `${origin} is this machine alone: no phone in the yard can open it. Put in the address that phones use.`
          : `Phones open ${origin}, but keep no round without signal: that needs https.`}
      </p>
    </div>
  )
}
