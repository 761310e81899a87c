/** Whether a colony can move on, and what is still missing. */

import { useWords } from '../../forms/index.ts'
import type { Plan } from '../../recovery/index.ts'

export const Ready = ({ plan }: { plan: Plan }) => {
  const { ready, unmet, expected } = plan.readiness
  const { colony, dates, reasons } = useWords()
  const said = colony.ready
  return (
    <section class="section">
      <h2>{ready ? said.yes : said.notYet}</h2>
      {unmet.length === 0 ? null : (
        <>
          <p>{said.missing}</p>
          <ul>
            {unmet.map((u) => (
              <li>
                {reasons.unmet(u.reason)}
                <span class="soft">
                  {u.earliest === null
                    ? said.undated
                    : u.earliest <= plan.asOf
                      ? said.today
                      : said.earliest(dates.day(u.earliest, plan.asOf))}
                </span>
              </li>
            ))}
          </ul>
        </>
      )}
      {expected === null || ready ? null : <p>{said.expected(dates.span(expected, plan.asOf))}</p>}
      <p class="fine">{said.dayThirty}</p>
    </section>
  )
}
