/** What to check first, on every page that sends somebody up a ladder or into a wall. */

import type { Sheet } from '../../records/index.ts'
import { climbs, cuts, tradesNeeded, WIRES_BEHIND, wiresToClear } from './before-cut.ts'

export const FirstCheck = ({ sheet }: { sheet: Sheet }) => {
  const trades = tradesNeeded(sheet)
  const { clearedBy } = sheet.check
  return (
    <aside class="first-check" aria-label="Check first">
      <h2>Check first</h2>
      <ul>
        {clearedBy === undefined ? (
          trades.map((t) => (
            <li>
              <strong>Stop</strong>: {t}.
            </li>
          ))
        ) : trades.length === 0 ? null : (
          <li>
            Cleared by {clearedBy}: {trades.join('; ')}. Look again, and stop when anything else comes to
            light.
          </li>
        )}
        {wiresToClear(sheet) ? <li>{WIRES_BEHIND}.</li> : null}
        <li>Stings: who is allergic, where is the adrenaline, who calls for help. Never alone.</li>
        {climbs(sheet) || sheet.site.access === undefined ? (
          <li>
            Ladder or roof: a second person, firm ground, three points of contact; nobody reaches out
            sideways.
          </li>
        ) : null}
        {cuts(sheet) ? (
          <li>
            Before anything goes into the surface: wires, gas, water and flues located. Live wires, pipes,
            asbestos, lead paint: stop and call the licensed trade.
          </li>
        ) : null}
        <li>Heat: water and shade, for people and for boxed bees. Smoker: no dry grass, no dust.</li>
        <li>Heavy comb and boxes: two people, straight backs.</li>
        {sheet.site.sprayed === 'yes' ? (
          <li>
            <strong>Sprayed</strong>: gloves, no comb and no honey kept, none of it fed, robbers kept off the
            waste.
          </li>
        ) : null}
        {sheet.site.africanized === 'yes' || (sheet.site.temper ?? 0) >= 4 ? (
          <li>
            Fierce bees: people and animals out of the whole plot; local rules decide whether they may be
            moved.
          </li>
        ) : null}
        <li>
          Registration, removal, transport and building rules differ from place to place: local codes decide.
        </li>
      </ul>
    </aside>
  )
}
