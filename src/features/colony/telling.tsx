/** When a look tells most: a small curve over two weeks. */

import type { Day } from '../../days.ts'
import { HARDLY_TELLING, type TellingDay } from '../../forecast/index.ts'
import { betweenPath, DaysPlot, linePath, stretchOf, type ValueScale, Wide } from '../../parts/index.ts'
import type { Plan } from '../../recovery/index.ts'
import { dayWords, planActs, whenToLook } from '../../words/index.ts'

const scaleTo = (top: number): ValueScale => ({ top, steps: [0, top / 2, top], label: (v) => String(v) })

export const Telling = ({ plan, telling, today }: { plan: Plan; telling: TellingDay[]; today: Day }) => {
  const [first, last] = [telling[0], telling.at(-1)]
  if (first === undefined || last === undefined) return null
  const words = whenToLook(plan, telling)
  const most = Math.max(...telling.map((t) => t.bits))
  const top = most > 1 ? 2 : most > 0.5 ? 1 : 0.5
  return (
    <>
      <h3>When a look tells most</h3>
      <p>{words}</p>
      {most < HARDLY_TELLING || planActs(plan) ? null : (
        <DaysPlot
          low
          stretch={stretchOf(first.day, last.day)}
          scale={scaleTo(top)}
          today={null}
          text={`What a look on each coming day is expected to tell. ${words}`}
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
        <summary>Each day in numbers</summary>
        <Wide label="What each day tells">
          <table class="numbers">
            <thead>
              <tr>
                <th scope="col">Day</th>
                <th scope="col">Tells</th>
                <th scope="col">Risks</th>
                <th scope="col">Worth</th>
              </tr>
            </thead>
            <tbody>
              {telling.map((t) => (
                <tr>
                  <th scope="row">{dayWords(t.day, today)}</th>
                  <td>{t.bits.toFixed(2)}</td>
                  <td>{t.harm.toFixed(2)}</td>
                  <td>{t.net.toFixed(2)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </Wide>
        <p class="fine">
          In bits: one bit halves the doubt between two things equally likely (Shannon 1948; Lindley 1956),
          here the doubt about what to do next. Risks: what opening may cost while a virgin is about to fly,
          one bit if she surely is (judgement). The dashed line is what a look tells, the area what it is
          worth.
        </p>
      </details>
    </>
  )
}
