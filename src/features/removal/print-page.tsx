/** On paper, black and white: the agreement for the customer, and the job sheet for the crew. */

import { type Frame, Layout } from '../../parts/index.ts'
import type { Sheet } from '../../records/index.ts'
import { dayWords } from '../../words/index.ts'
import type { Reckoning } from './before-cut.ts'
import { FirstCheck } from './cautions.tsx'
import { SignatureView, Terms } from './signature.tsx'
import type { Part } from './stage.ts'
import { ITEM_STATE, PART_WORDS, RECKONING_NOTE, reckoningTitle } from './words.ts'

export interface RemovalPrintProps {
  frame: Frame
  path: string
  name: string
  what: 'agreement' | 'job'
  sheet: Sheet
  /** Which version it is, and the hour. '4, 07:40' */
  asOf: { version: number; at: string }
  terms: string
  parts: { part: Part; facts: [label: string, value: string][] }[]
  reckoning: Reckoning
}

export const RemovalPrintPage = (p: RemovalPrintProps) => (
  <Layout
    frame={p.frame}
    title={p.what === 'agreement' ? `Agreement ${p.name}` : `Job sheet ${p.name}`}
    ways={false}
  >
    <p class="crumb no-print">
      <a href={p.path}>‹ {p.name}</a>
    </p>
    <p class="hint no-print">Print this page from the browser’s menu; it comes out in black and white.</p>
    {p.what === 'agreement' ? <AgreementPaper {...p} /> : <JobPaper {...p} />}
  </Layout>
)

const AgreementPaper = ({ sheet, terms, frame }: RemovalPrintProps) => {
  const { signature } = sheet.agreement
  return (
    <article class="paper paper-print">
      <Terms text={signature?.terms ?? terms} />
      {signature === undefined ? (
        <div class="sign-lines">
          <p>
            <span class="write-line" />
            Customer, name and day
          </p>
          <p>
            <span class="write-line" />
            For the yard, name and day
          </p>
        </div>
      ) : (
        <SignatureView signature={signature} today={frame.today} />
      )}
    </article>
  )
}

const JobPaper = ({ sheet, name, frame, parts, reckoning, asOf }: RemovalPrintProps) => (
  <article class="job-paper">
    <h1>{name}</h1>
    <p>
      {sheet.job.address ?? ''}
      {sheet.job.plannedOn === undefined
        ? ''
        : ` · ${dayWords(sheet.job.plannedOn, frame.today)}${sheet.job.plannedAt === undefined ? '' : ` ${sheet.job.plannedAt}`}`}
    </p>
    <p>
      <b>
        As of {dayWords(frame.today, frame.today)} {asOf.at}, version {asOf.version}
      </b>
      : look at the phone again before the cut.
    </p>
    <FirstCheck sheet={sheet} />
    {parts
      .filter((x) => (x.part === 'job' || x.part === 'site') && x.facts.length > 0)
      .map(({ part, facts }) => (
        <section>
          <h2>{PART_WORDS[part]}</h2>
          <dl class="sheet-facts">
            {facts.map(([label, value]) => (
              <>
                <dt>{label}</dt>
                <dd>{value}</dd>
              </>
            ))}
          </dl>
        </section>
      ))}
    <section>
      <h2>Before the cut</h2>
      <p>{reckoningTitle(reckoning)}.</p>
      <ul class="tick-list">
        {reckoning.items
          .filter((i) => i.state !== 'not-needed')
          .map((i) => (
            <li>
              <span class={i.state === 'met' ? 'tick-box tick-met' : 'tick-box'} aria-hidden="true" />
              <span>
                <b>{i.what}</b> {i.state === 'met' ? '' : `(${ITEM_STATE[i.state]}) `}
                {i.why}
              </span>
            </li>
          ))}
      </ul>
      <p class="small">{RECKONING_NOTE}</p>
      <p class="write-row">
        Decision: go / wait / refuse <span class="write-line" /> by <span class="write-line" />
      </p>
    </section>
    <section>
      <h2>The removal</h2>
      <ul class="write-list">
        {[
          'Arrived, opened, boxed, left (times)',
          'Outdoor temperature',
          'Vacuum / brushed / walked in / trap / in a hive',
          'Queen: caged / loose / not seen / lost; found at',
          'Brood frames: eggs, open, capped; closed chest or in the open',
          'Queen cells: none / open / capped',
          'Frames of bees or weight; dead bees',
          'Comb tied in: yes / no; temper 1 to 5',
          'Entrance sealed; comb taken out: all / part / none',
          'Left to the owner',
          'Tag on the box, yard, stand',
        ].map((line) => (
          <li>
            {line} <span class="write-line" />
          </li>
        ))}
      </ul>
    </section>
  </article>
)
