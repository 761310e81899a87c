/** What was decided, in the head of a page: whether it is so now, and what became of it. */
import { dayWords } from '../../words/index.ts'
import { DECIDE } from './choices.ts'
import { endedIt, heardWords } from './fell-why.ts'
import type { RemovalProps } from './page.tsx'
import { isOnGo } from './stage.ts'
import { beganWithoutGo } from './without-go.ts'
import { decidedWords } from './words.ts'

export const Decided = (p: RemovalProps) => {
  const { sheet, frame, goes, late, stage, colonies, older, aside } = p
  const { decision: d, ended } = sheet
  const past =
    d?.is === 'go' &&
    (older !== null ||
      (isOnGo(stage, sheet) && !goes) ||
      d.fell !== undefined ||
      ended !== undefined ||
      (beganWithoutGo(sheet, colonies.length) && !goes))
  // Of bees that are in the box it is no word of now.
  const done = d?.is === 'go' && (sheet.work.boxedAt !== undefined || colonies.length > 0)
  const waits = d?.is === 'go' && stage === 'go' && late !== null
  return (
    <>
      {d === undefined ? null : (
        <p>
          {past || done ? 'It was go' : waits ? 'Go' : <b>{DECIDE.find((c) => c.value === d.is)?.label}</b>},
          decided by {d.by}, {dayWords(d.on, frame.today)}
          {d.at === undefined ? '' : ` ${d.at}`}
          {past
            ? `, before ${endedIt(p)}`
            : waits
              ? ', and nothing is begun on it now'
              : d.is !== 'go'
                ? ''
                : `, with ${[...(d.unmet.length === 0 ? [] : [`${d.unmet.length} unmet or not filled in`]), ...aside].join(', ') || 'nothing on the list unmet'}`}
          {heardWords(p)}
          {d.reason === undefined ? '.' : `. Reason: ${d.reason}`}
        </p>
      )}
      {d?.over === undefined ? null : (
        <p>
          <b>{d.over.wait === true ? 'Over a “Wait”.' : 'Over a refusal.'}</b>{' '}
          {decidedWords({ ...d.over, is: d.over.wait === true ? 'wait' : 'refuse' })}.
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
