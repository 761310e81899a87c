/** The head of a sheet's page: how far it is, what was decided, what came of it. */

import { dayAndDistance, dayWords } from '../../words/index.ts'
import { type ClosingId, leftToClose } from './closing.ts'
import { beganWithoutGo } from './decide.ts'
import type { RemovalProps } from './page.tsx'
import { CLOSING_WORDS, DECIDE, STAGE_WORDS } from './words.ts'

export const Head = (p: RemovalProps) => {
  const { job } = p.sheet
  return (
    <header class="removal-head">
      <h1>{p.name}</h1>
      <p class="soft">
        <b>{p.stage === 'go' && !p.goes ? 'Go was decided, and no longer stands' : STAGE_WORDS[p.stage]}</b>
        {job.address === undefined || job.address === p.name ? '' : ` · ${job.address}`}
        {job.plannedOn === undefined
          ? ''
          : ` · ${dayAndDistance(job.plannedOn, p.frame.today)}${job.plannedAt === undefined ? '' : `, ${job.plannedAt}`}`}
        {p.saved ? <span role="status"> · saved</span> : null}
      </p>
      {job.bees === 'wasps' && p.stage === 'called' ? (
        <p>
          <b>Not honey bees</b>: name somebody who takes wasps, and{' '}
          <a href={`${p.path}/end`}>end the sheet</a>.
        </p>
      ) : null}
      <Decided {...p} />
      {beganWithoutGo(p.sheet) ? (
        <p>
          <b>Begun without a “go”</b>: nobody had decided it, or something that holds it was unmet.
        </p>
      ) : null}
      <Came {...p} />
    </header>
  )
}

const Came = ({ colonies, letters, path, sheet, stage }: RemovalProps) => {
  if (colonies.length === 0) return null
  return (
    <>
      <p>
        Came to the yard as{' '}
        {colonies.map((c, i) => (
          <>
            {i === 0 ? '' : ', '}
            <a class="tag tall" href={c.path}>
              {c.tag}
            </a>
          </>
        ))}
        . <a href={`${path}/intake`}>Log another box from this job</a>
      </p>
      <LetterOffer letters={letters} />
      {stage === 'boxed' ? <LeftToClose left={leftToClose(sheet)} path={path} /> : null}
    </>
  )
}

/** Offered while the letter is due and nobody has made one. */
const LetterOffer = ({ letters }: Pick<RemovalProps, 'letters'>) =>
  letters.length === 0 ? null : (
    <p>
      Day 30: tell the customer how they are.{' '}
      {letters.map((c) => (
        <a class="tall" href={`${c.path}/letter`}>
          Letter about {c.tag}
        </a>
      ))}
    </p>
  )

const LeftToClose = ({ left, path }: { left: ClosingId[]; path: string }) => (
  <p>
    <b>Not finished:</b> {left.map((id) => CLOSING_WORDS[id]).join(', ')}.{' '}
    <a href={`${path}/work#now`}>Close up</a>
  </p>
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
