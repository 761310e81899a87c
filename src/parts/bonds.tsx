/** How a colony is bound to one in which brood disease is suspected, with the days. */

import type { Plan } from '../recovery/index.ts'
import { dayWords, fromTo } from '../words/index.ts'

/** Nothing where it is bound to none. */
export const Bonds = ({ plan }: { plan: Plan }) => {
  const { exposed, asOf } = plan
  return exposed === null ? null : (
    <div class="notice notice-late bonds">
      <h2>Held: bound to {exposed.from}, in which brood disease is suspected</h2>
      <ul>
        {exposed.bonds.map((b) => (
          <li>
            {dayWords(b.on, asOf)}: it {b.how}
          </li>
        ))}
      </ul>
      <p>
        Not to be moved, united or given from. Look at every brood frame, bees shaken off,{' '}
        {fromTo(exposed.look.opens, exposed.look.closes, asOf)}, and note the signs: that clears it.
      </p>
    </div>
  )
}
