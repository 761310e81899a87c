/** Cautions where the act happens: only what this job asks for, in the fewest words. */

import type { Sheet } from '../../records/index.ts'
import { cuts, tradesNeeded } from './hazards.ts'
import { climbs, fierce } from './people.ts'

/** `ticked`: stings, ladder, water and smoker are asked one by one below, and not said here as well. */
export const FirstCheck = ({ sheet, ticked = false }: { sheet: Sheet; ticked?: boolean }) =>
  ticked && !saysMore(sheet) ? null : (
    <aside class="first-check" aria-label="Check first">
      <h2>Check first</h2>
      <ul>
        {tradesNeeded(sheet).map((t) => (
          <li>
            <strong>Stop</strong>: {t}.
          </li>
        ))}
        {ticked ? null : (
          <li>Stings: who is allergic, where is the adrenaline, who calls for help. Never alone.</li>
        )}
        {!ticked && (climbs(sheet) || sheet.site.access === undefined) ? (
          <li>Ladder or roof: a second person, firm ground, three points of contact; nobody reaches out.</li>
        ) : null}
        {cuts(sheet) ? <li>Wires, pipes, asbestos, lead paint: stop, call the trade.</li> : null}
        {ticked ? null : (
          <li>
            Water and shade, for people and boxed bees. No smoker in dry grass or dust. Heavy boxes: two
            people.
          </li>
        )}
        {sheet.site.sprayed === 'yes' ? (
          <li>
            <strong>Sprayed</strong>: gloves; no comb and no honey kept or fed; robbers kept off the waste.
          </li>
        ) : null}
        {fierce(sheet) ? (
          <li>
            <strong>Fierce bees</strong>: everybody 100 m (330 ft) away or shut indoors, a car to get into.
          </li>
        ) : null}
      </ul>
    </aside>
  )

/** Beside what is ticked below, this job has something to be said. */
const saysMore = (s: Sheet): boolean =>
  cuts(s) || fierce(s) || s.site.sprayed === 'yes' || tradesNeeded(s).length > 0
