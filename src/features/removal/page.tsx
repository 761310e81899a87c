/** One removal: how far it has come, what is unmet, what each part says, and who changed it when. */

import { type Frame, Layout } from '../../parts/index.ts'
import type { Sheet } from '../../records/index.ts'
import { dayAndDistance, dayWords } from '../../words/index.ts'
import type { Reckoning } from './before-cut.ts'
import { FirstCheck } from './cautions.tsx'
import { ReckoningBox } from './reckoning.tsx'
import { SignatureView } from './signature.tsx'
import type { Part, Stage } from './stage.ts'
import { DECIDE, NEXT_WORDS, PART_WORDS, reckoningTitle, STAGE_WORDS } from './words.ts'

export interface RemovalProps {
  frame: Frame
  path: string
  name: string
  sheet: Sheet
  stage: Stage
  /** Each part's facts in words, in order; a part with none is not filled yet. */
  parts: { part: Part; facts: [label: string, value: string][] }[]
  /** Null once the job is over. */
  reckoning: Reckoning | null
  next: { href: string; part: keyof typeof NEXT_WORDS } | null
  colonies: { tag: string; path: string }[]
  versions: { version: number; by: string; when: string }[]
  /** A day to be held against: an older version is shown. */
  older: { version: number; last: number } | null
  saved: boolean
  price: string | null
}

export const RemovalPage = (p: RemovalProps) => (
  <Layout frame={p.frame} title={p.name}>
    <p class="crumb">
      <a href="/removals">‹ Removals</a>
    </p>
    {p.saved ? (
      <div class="notice notice-do" role="status">
        <p>Saved as version {p.versions[0]?.version ?? 1}.</p>
      </div>
    ) : null}
    {p.older === null ? null : (
      <div class="notice">
        <p>
          This is version {p.older.version} of {p.older.last}, as it was.{' '}
          <a href={p.path}>Show the last one</a>
        </p>
      </div>
    )}
    <Head {...p} />
    {p.reckoning === null || p.older !== null ? null : <Reckoned reckoning={p.reckoning} stage={p.stage} />}
    {p.reckoning === null || p.older !== null ? null : <FirstCheck sheet={p.sheet} />}
    <div class="removal-parts">
      {p.parts.map(({ part, facts }) => (
        <PartSection part={part} facts={facts} page={p} />
      ))}
    </div>
    <Papers {...p} />
    <Versions {...p} />
  </Layout>
)

const Head = (p: RemovalProps) => {
  const { job } = p.sheet
  return (
    <header class="removal-head">
      <h1>{p.name}</h1>
      <p class="soft">
        <b>{STAGE_WORDS[p.stage]}</b>
        {job.address === undefined || job.address === p.name ? '' : ` · ${job.address}`}
        {job.plannedOn === undefined
          ? ''
          : ` · ${dayAndDistance(job.plannedOn, p.frame.today)}${job.plannedAt === undefined ? '' : `, ${job.plannedAt}`}`}
      </p>
      <Decided {...p} />
      {p.colonies.length === 0 ? null : (
        <p>
          Came to the yard as{' '}
          {p.colonies.map((c, i) => (
            <>
              {i === 0 ? '' : ', '}
              <a class="tag tall" href={c.path}>
                {c.tag}
              </a>
            </>
          ))}
          .
        </p>
      )}
      {p.older !== null ? null : (
        <div class="buttons">
          {p.next === null ? null : (
            <a class="button button-do" href={p.next.href}>
              {NEXT_WORDS[p.next.part]}
            </a>
          )}
          {p.colonies.length === 0 ? null : (
            <a class="button" href={`${p.path}/intake`}>
              Log another box from this job
            </a>
          )}
        </div>
      )}
    </header>
  )
}

/** Early on most of the list is simply not said yet: it is folded away, unless something said stands against the job. */
const Reckoned = ({ reckoning: r, stage }: { reckoning: Reckoning; stage: Stage }) =>
  r.says !== 'refuse' && (stage === 'called' || stage === 'looked-at') ? (
    <details class="caution">
      <summary>Before the cut: {reckoningTitle(r).toLowerCase()}</summary>
      <ReckoningBox reckoning={r} />
    </details>
  ) : (
    <ReckoningBox reckoning={r} />
  )

const Decided = ({ sheet, frame }: RemovalProps) => {
  const { decision: d, ended } = sheet
  return (
    <>
      {d === undefined ? null : (
        <p>
          <b>{DECIDE.find((c) => c.value === d.is)?.label}</b>, decided by {d.by},{' '}
          {dayWords(d.on, frame.today)}
          {d.at === undefined ? '' : ` ${d.at}`}
          {d.unmet.length === 0
            ? ', with nothing on the list unmet'
            : `, with ${d.unmet.length} unmet or not filled in`}
          {d.reason === undefined ? '.' : `: ${d.reason}`}
        </p>
      )}
      {ended === undefined ? null : (
        <p>
          <b>Ended without a removal</b>, {dayWords(ended.on, frame.today)}: {ended.why}
        </p>
      )}
    </>
  )
}

const PartSection = ({
  part,
  facts,
  page: p,
}: {
  part: Part
  facts: [string, string][]
  page: RemovalProps
}) => (
  <section class="section removal-part" id={part}>
    <h2>
      {PART_WORDS[part]}
      {p.older !== null ? null : (
        <a class="part-change tall" href={`${p.path}/${part}`}>
          {facts.length === 0 ? 'Fill in' : 'Change'}
          <span class="unseen"> {PART_WORDS[part].toLowerCase()}</span>
        </a>
      )}
    </h2>
    {facts.length === 0 ? (
      <p class="soft">Nothing yet.</p>
    ) : (
      <dl class="sheet-facts">
        {facts.map(([label, value]) => (
          <>
            <dt>{label}</dt>
            <dd>{value}</dd>
          </>
        ))}
      </dl>
    )}
    {part === 'agreement' ? <AgreementState {...p} /> : null}
    {part === 'check' && p.older === null ? (
      <div class="buttons">
        <a class="button" href={`${p.path}/decide`}>
          Go, wait or refuse
        </a>
      </div>
    ) : null}
  </section>
)

const AgreementState = (p: RemovalProps) => {
  const { signature } = p.sheet.agreement
  return (
    <>
      {signature === undefined ? null : <SignatureView signature={signature} today={p.frame.today} />}
      {p.older !== null ? null : (
        <div class="buttons">
          <a class={signature === undefined ? 'button button-do' : 'button'} href={`${p.path}/sign`}>
            {signature === undefined ? 'Read and sign' : 'Read what was signed'}
          </a>
        </div>
      )}
    </>
  )
}

const Papers = ({ path, older, stage }: RemovalProps) =>
  older !== null ? null : (
    <section class="section">
      <h2>On paper, and the end</h2>
      <div class="buttons">
        <a class="button" href={`${path}/print?what=agreement`}>
          Print the agreement
        </a>
        <a class="button" href={`${path}/print?what=job`}>
          Print the job sheet
        </a>
        {stage === 'boxed' || stage === 'ended' ? null : (
          <a class="button" href={`${path}/end`}>
            It ends without a removal
          </a>
        )}
      </div>
    </section>
  )

const Versions = (p: RemovalProps) => (
  <section class="section">
    <h2>Who changed it</h2>
    <ol class="versions">
      {p.versions.map((v) => (
        <li>
          <a class="tall" href={`${p.path}?version=${v.version}`}>
            Version {v.version}
          </a>{' '}
          <span class="soft">
            {v.by}, {v.when}
          </span>
        </li>
      ))}
    </ol>
    {p.frame.may('safekeeping') && p.older === null ? (
      <p>
        <a class="tall" href={`${p.path}/erase`}>
          Erase this sheet
        </a>
      </p>
    ) : null}
  </section>
)
