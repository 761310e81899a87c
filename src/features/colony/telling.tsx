/** When a look tells most: a small curve over two weeks. */

import type { Day } from '../../days.ts'
import { HARDLY_TELLING, type TellingDay } from '../../forecast/index.ts'
import { useWords } from '../../forms/index.ts'
import {
  betweenPath,
  DaysPlot,
  linePath,
  Numbers,
  stretchOf,
  type ValueScale,
  Wide,
} from '../../parts/index.ts'
import type { Plan } from '../../recovery/index.ts'
import { planActs, whenToLook } from '../../words/index.ts'

const scaleTo = (top: number): ValueScale => ({ top, steps: [0, top / 2, top], label: (v) => String(v) })

export const Telling = ({ plan, telling, today }: { plan: Plan; telling: TellingDay[]; today: Day }) => {
  const [first, last] = [telling[0], telling.at(-1)]
  if (first === undefined || last === undefined) return null
  const w = useWords()
  const said = w.likely.telling
  const words = whenToLook(plan, telling, w)
  const most = Math.max(...telling.map((t) => t.bits))
  const top = most > 1 ? 2 : most > 0.5 ? 1 : 0.5
  return (
    <>
      <h3>{said.title}</h3>
      <p>{words}</p>
      {most < HARDLY_TELLING || planActs(plan) ? null : (
        <DaysPlot
          low
          stretch={stretchOf(first.day, last.day)}
          scale={scaleTo(top)}
          today={null}
          text={said.chart(words)}
        >
          <path
            class="told"
            d={betweenPath(
              telling.map(() => 0),
              telling.map((t) => Math.max(0, t.net)),
              top,
            )}
          />
          <path
            class="told-line"
            d={linePath(
              telling.map((t) => Math.max(0, t.net)),
              top,
            )}
          />
          <path
            class="told-harm"
            d={linePath(
              telling.map((t) => t.bits),
              top,
            )}
          />
        </DaysPlot>
      )}
      <details class="caution">
        <summary>{said.numbers}</summary>
        <Wide label={said.table}>
          <Numbers heads={[w.likely.day, said.tells, said.risks, said.worth]}>
            {telling.map((t) => (
              <tr>
                <th scope="row">{w.dates.day(t.day, today)}</th>
                <td>{t.bits.toFixed(2)}</td>
                <td>{t.harm.toFixed(2)}</td>
                <td>{t.net.toFixed(2)}</td>
              </tr>
            ))}
          </Numbers>
        </Wide>
        <p class="fine">{said.bits}</p>
      </details>
    </>
  )
}
