/** The head of a sheet's page: how far it is, what was decided, what came of it. */

import { Reach } from '../../parts/index.ts'
import { GRAVE_WORDS } from './hazard-words.ts'
import { Came } from './head-came.tsx'
import { Decided } from './head-decided.tsx'
import { AsKnown } from './head-heard.tsx'
import { sharing } from './other-sheets.ts'
import type { RemovalProps } from './page.tsx'
import { isOnGo, isOver } from './stage.ts'
import { beganWithoutGo, withoutGoWords } from './without-go.ts'
import { decidedWords, noGo, plannedWords, stageWords } from './words.ts'

export const Head = (p: RemovalProps) => {
  const { job } = p.sheet
  return (
    <header class="removal-head">
      <h1>{p.name}</h1>
      <p class="soft">
        <b>
          {isOnGo(p.stage, p.sheet) && (!p.goes || p.late !== null || p.older !== null)
            ? noGo(p.sheet, p.late, p.frame.today)
            : stageWords(p.stage, p.sheet)}
        </b>
        {job.address === undefined || job.address === p.name ? '' : ` · ${job.address}`}
        {job.plannedOn === undefined
          ? ''
          : ` · ${plannedWords(job.plannedOn, p.frame.today, isOver(p.stage))}${job.plannedAt === undefined ? '' : `, ${job.plannedAt}`}`}
        {p.saved ? <span role="status"> · saved</span> : null}
      </p>
      <Reach phone={job.phone} email={job.email} address={job.address} />
      {job.bees === 'wasps' && p.stage === 'called' ? (
        <p>
          <b>Not honey bees</b>: name somebody who takes wasps, and{' '}
          <a href={`${p.path}/end`}>end the sheet</a>.
        </p>
      ) : null}
      <AsKnown {...p} />
      {p.elsewhere === undefined ? null : <p class="notice notice-late">No “go” by you: {p.elsewhere}.</p>}
      <Others {...p} />
      {p.since.map(({ lead, who, words }) => (
        <p class="notice notice-late">
          <b>
            {lead}
            {who === undefined ? '' : ` (${who})`}:
          </b>{' '}
          {words}
        </p>
      ))}
      {p.warms === null ? null : (
        <p class="notice notice-late">
          <b>{p.warms}.</b> Read the thermometer and type it under “Opening”; water and shade, or stop.
        </p>
      )}
      <Decided {...p} />
      {beganWithoutGo(p.sheet, p.colonies.length) ? (
        <p class="notice notice-late">
          <b>Begun without a “go”</b>. {withoutGoWords(p.sheet) ?? 'Nobody has said why.'}
        </p>
      ) : null}
      {p.newSigners === null ? null : <p>Second person with a new account: {p.newSigners}.</p>}
      <UnmetThen unmet={p.sheet.work.withoutGo?.unmet ?? []} />
      <Came {...p} />
    </header>
  )
}

/** Another sheet says more. */
const Others = ({ others }: Pick<RemovalProps, 'others'>) => (
  <>
    {others.map((o) => (
      <p class="notice notice-late">
        <b>Another sheet {sharing(o)}:</b>{' '}
        <a class="tall" href={o.path}>
          {o.name}
        </a>
        .
        {o.what.length === 0 ? null : (
          <>
            {' '}
            On it, and not on this one: <b>{o.what.map((g) => GRAVE_WORDS[g].toLowerCase()).join(', ')}</b>.
          </>
        )}
        {o.what.length > 0 || o.stopped !== undefined
          ? null
          : ` It says: ${o.notes.map((words) => `“${words}”`).join(', ')}.`}
        {o.stopped === undefined
          ? null
          : ` It was stopped. ${typeof o.stopped === 'string' ? o.stopped : decidedWords(o.stopped)}.`}
      </p>
    ))}
  </>
)

/** What was unmet when it was begun: it does not go away with the bees. */
const UnmetThen = ({ unmet }: { unmet: readonly string[] }) =>
  unmet.length === 0 ? null : (
    <details class="caution">
      <summary>What was unmet then: {unmet.length}</summary>
      <ul class="unmet">
        {unmet.map((words) => (
          <li>{words}</li>
        ))}
      </ul>
    </details>
  )
