/** A box in the list of Health: its trouble in a line each, the remedy on a tap. */

import type { Day } from '../../days.ts'
import { useWords } from '../../forms/index.ts'
import type { Frame } from '../../parts/index.ts'
import type { Health } from './health.ts'
import type { Watch } from './watch.ts'
import { rateWords, standsShort } from './words.ts'

export interface HealthRow {
  tag: string
  path: string
  yard: string
  stand: string | null
  /** The plan asks for the inspector. */
  call: boolean
  /** What the plan says of a sign, where one leads. */
  says: string | null
  health: Health
}

/** One box on Health: where it stands, and what is wrong with it. */
export const Row = ({
  row: { tag, path, yard, stand, says, health: h },
  frame,
  named,
}: {
  row: HealthRow
  frame: Frame
  /** The boxes around it stand in other yards. */
  named: boolean
}) => {
  const { words } = frame
  const { dates, parts } = words
  const said = words.health.yard
  const seen = h.watches.filter((w) => w.stands === 'seen')
  return (
    <li class={h.suspicion === null ? 'health-row' : 'health-row health-held'}>
      <div class="health-tag">
        <a class="tag tall" href={`${path}/health`}>
          {tag}
        </a>
        <span class="stand">
          {[named ? yard : '', stand === null ? '' : parts.stand(stand)].filter(Boolean).join(', ')}
        </span>
      </div>
      <ul class="health-says">
        {h.suspicion === null ? null : (
          <li>
            <b>▲ {said.isHeld}</b>
            {said.suspected(dates.day(h.suspicion.since, frame.today))}
          </li>
        )}
        <Signs seen={seen} says={says} today={frame.today} />
        {h.stores?.level === 'low' ? (
          <li>
            <b>{said.storesLow}</b> {dates.day(h.stores.on, frame.today)}
          </li>
        ) : null}
        {/* A held box stays closed: what to do about its mites can wait. */}
        {h.last === null || h.suspicion !== null || h.last.stands === 'under' ? null : (
          <li>
            {said.mites(rateWords(h.last, words))}
            <b>{standsShort(h.last, words)}</b>
            {h.washStale ? said.washedLongAgo(dates.day(h.last.on, frame.today)) : ''}
          </li>
        )}
      </ul>
    </li>
  )
}

/** What was seen, and by when to look again; what to do about it is folded behind. */
const Signs = ({ seen, says, today }: { seen: Watch[]; says: string | null; today: Day }) => {
  const { dates, health } = useWords()
  const said = health.yard
  const lines = seen.map((w) => (
    <>
      <b>{health.pests.names[w.what]}</b>
      {said.seenOn(dates.day(w.lastSeen ?? today, today))}
      {w.late ? said.lookNow : said.lookBy(dates.day(w.lookAgainBy ?? today, today))}
    </>
  ))
  if (says === null) return lines.map((line) => <li>{line}</li>)
  const [first, ...rest] = lines
  return first === undefined ? (
    <li>{says}</li>
  ) : (
    <>
      <li>
        <details>
          <summary class="health-seen">{first}</summary>
          <p>{says}</p>
        </details>
      </li>
      {rest.map((line) => (
        <li>{line}</li>
      ))}
    </>
  )
}
