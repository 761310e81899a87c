/** When the colony can move out, as odds. */

import { addDays, type Day } from '../../days.ts'
import type { MoveOutForecast } from '../../forecast/index.ts'
import { useWords } from '../../forms/index.ts'
import { Numbers } from '../../parts/index.ts'
import type { Plan } from '../../recovery/index.ts'
import { chance, moveOutWords } from '../../words/index.ts'

const WEEKS = [7, 14, 21, 28, 42]

interface MoveOutProps {
  moveOut: MoveOutForecast
  plan: Plan
  today: Day
}

export const MoveOut = ({ moveOut, plan, today }: MoveOutProps) => {
  const words = useWords()
  const said = words.likely.moveOut
  const by = (n: number): number => moveOut.chances.p.slice(0, n + 1).reduce((a, b) => a + b, 0)
  return (
    <>
      <h3>{said.title}</h3>
      <p>
        {plan.advice.action === 'unite' ? said.wereItKept : ''}
        {moveOutWords(moveOut, words)}
      </p>
      {moveOut.blocked !== null || moveOut.expected === null ? null : (
        <details class="caution">
          <summary>{said.byDate}</summary>
          <Numbers heads={[said.readyBy, said.chance]}>
            {WEEKS.map((n) => (
              <tr>
                <th scope="row">{words.dates.day(addDays(today, n), today)}</th>
                <td>{chance(Math.min(1, by(n)), words)}</td>
              </tr>
            ))}
          </Numbers>
          <p class="fine">{said.from}</p>
        </details>
      )}
    </>
  )
}
