/** When the colony can move out, as odds. */

import { addDays, type Day } from '../../days.ts'
import type { MoveOutForecast } from '../../forecast/index.ts'
import type { Plan } from '../../recovery/index.ts'
import { chance, dayWords } from '../../words/index.ts'

const WEEKS = [7, 14, 21, 28, 42]

interface MoveOutProps {
  moveOut: MoveOutForecast
  plan: Plan
  today: Day
}

export const MoveOut = ({ moveOut, plan, today }: MoveOutProps) => {
  const by = (n: number): number => moveOut.chances.p.slice(0, n + 1).reduce((a, b) => a + b, 0)
  return (
    <>
      <h3>Moving out</h3>
      <p>
        {plan.advice.action === 'unite' ? 'The plan says to unite it. Were it kept: ' : ''}
        {moveOut.sentence}
      </p>
      {moveOut.blocked !== null || moveOut.expected === null ? null : (
        <details class="caution">
          <summary>The chance by date</summary>
          <table class="numbers">
            <thead>
              <tr>
                <th scope="col">Ready by</th>
                <th scope="col">Chance</th>
              </tr>
            </thead>
            <tbody>
              {WEEKS.map((n) => (
                <tr>
                  <th scope="row">{dayWords(addDays(today, n), today)}</th>
                  <td>{chance(Math.min(1, by(n)))}</td>
                </tr>
              ))}
            </tbody>
          </table>
          <p class="fine">
            From the odds of laying, capped worker brood ten days after her first egg, the strength to come,
            and what else the protocol asks. Rules for moving bees are local.
          </p>
        </details>
      )}
    </>
  )
}
