/** How a colony is bound to one in which brood disease is suspected, with the days. */

import { useWords } from '../forms/index.ts'
import type { Plan } from '../recovery/index.ts'

/** Nothing where it is bound to none. */
export const Bonds = ({ plan }: { plan: Plan }) => {
  const { colony, dates, reasons } = useWords()
  const said = colony.held
  const { exposed, asOf } = plan
  return exposed === null ? null : (
    <div class="notice notice-late bonds">
      <h2>{said.boundSuspected(exposed.from)}</h2>
      <ul>
        {exposed.bonds.map((b) => (
          <li>{said.did(dates.day(b.on, asOf), reasons.deed(b))}</li>
        ))}
      </ul>
      <p>{said.look(dates.fromTo(exposed.look.opens, exposed.look.closes, asOf))}</p>
    </div>
  )
}
