/** Short of time: how long the round takes, and the round that fits. */

import { roundPath } from '../../app/index.ts'
import { Select } from '../../parts/index.ts'
import { isAcrossYards, type RoundView } from './page.tsx'
import { byUrgency } from './short-of-time.ts'
import { minutesWords, paceWords } from './words.ts'

const OFFERED = [20, 40, 60, 90]

export const Time = (p: RoundView) => {
  const { round, where, pace } = p
  const { words } = p.frame
  const w = words.round
  const across = isAcrossYards(p)
  return (
    <details class="caution" open={where.until !== null}>
      <summary>
        {round.minutesLeft === 0 ? w.shortOfTime : w.itTakes(minutesWords(round.minutesLeft, words))}
      </summary>
      {round.minutesLeft === 0 ? null : (
        <p>
          {across ? w.walkingNotBetween : w.walkingIncluded}{' '}
          <span class="fine">{paceWords(pace, words)}</span>
        </p>
      )}
      <form class="short-time" method="get" action="/round">
        {across ? <WhichYard {...p} /> : <input type="hidden" name="yard" value={where.yard ?? ''} />}
        <fieldset>
          <legend>{w.iHaveOnly}</legend>
          {OFFERED.map((n) => (
            <button class="button" type="submit" name="minutes" value={String(n)}>
              {n} min
            </button>
          ))}
        </fieldset>
      </form>
      {where.until === null ? null : (
        <p>
          <a class="tall" href={roundPath({ ...where, until: null })}>
            {w.wholeRound}
          </a>
        </p>
      )}
    </details>
  )
}

/** Short of time one stays in one yard, the one that presses most, unless all of them are chosen. */
const WhichYard = ({ round, yards, choice, frame: { words } }: RoundView) => {
  const first = choice === null ? byUrgency(round.stops.filter((s) => s.state === 'to-do'))[0]?.box.yard : ''
  return (
    <Select
      class="short-yard"
      name="yard"
      label={words.round.where}
      value={first}
      options={[
        ...yards.filter((y) => y.due > 0).map((y) => [y.yard, y.yard] as const),
        ['', words.round.allYardsNoWay],
      ]}
    />
  )
}
