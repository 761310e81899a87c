/** What came of a job, in the head of its page: its boxes, the letter, what is left to close. */
import { daysBetween } from '../../days.ts'
import { type ClosingId, leftToClose } from './closing.ts'
import type { RemovalProps } from './page.tsx'
import { CLOSING_WORDS } from './words.ts'

/** The boxes that came of a job, each leading to its page. */
export const Boxes = ({ of }: { of: RemovalProps['colonies'] }) => (
  <>
    {of.map((c, i) => (
      <>
        {i === 0 ? '' : ', '}
        <a class="tag tall" href={c.path}>
          {c.tag}
        </a>
      </>
    ))}
  </>
)

export const Came = ({ colonies, path, sheet, stage, frame }: RemovalProps) => {
  if (colonies.length === 0) return null
  return (
    <>
      <p>
        Came to the yard as <Boxes of={colonies} />.{' '}
        <a href={`${path}/intake`}>Log another box from this job</a>
      </p>
      <LetterOffer colonies={colonies} sheet={sheet} today={frame.today} />
      {stage === 'boxed' ? <LeftToClose left={leftToClose(sheet)} path={path} /> : null}
    </>
  )
}

/** Days from the removal on which the customer's letter is offered here (src/features/letters/due.ts says to whom it is due). */
const LETTER_DAYS = { from: 30, to: 60 }

const LetterOffer = ({
  colonies,
  sheet,
  today,
}: Pick<RemovalProps, 'colonies' | 'sheet'> & { today: string }) => {
  const on = sheet.work.on ?? sheet.job.plannedOn
  const days = on === undefined ? 0 : daysBetween(on, today)
  if (days < LETTER_DAYS.from || days > LETTER_DAYS.to) return null
  return (
    <p>
      Day {days}: tell the customer how they are.{' '}
      {colonies.map((c) => (
        <a class="tall" href={`${c.path}/letter`}>
          Letter about {c.tag}
        </a>
      ))}
    </p>
  )
}

const LeftToClose = ({ left, path }: { left: ClosingId[]; path: string }) => (
  <p>
    <b>Not finished:</b> {left.map((id) => CLOSING_WORDS[id]).join(', ')}.{' '}
    <a href={`${path}/work#now`}>Close up</a>
  </p>
)
