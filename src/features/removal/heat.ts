/** Heat when work starts, and what it did to the bees afterwards. The limit is the yard's protocol (default 29.4 °C, common practice). */

import { openToBoxed, type Sheet } from '../../records/index.ts'
import { hotterThan } from '../../units.ts'
import { coldWords, type Shows, TOO_COLD_C } from './forecast.ts'
import type { Facts } from './item.ts'
import { isSigned } from './second.ts'

/** Comb with brood and honey slumps from about here, °C (from memory, trade practice). */
const COMB_SLUMPS_C = 40

/** The item that a second person signs when work starts over the limit. */
export const HEAT_AT_START = 'heat-at-start'

/** What is asked the moment the surface is opened: how hot it is now, and whether clothing, tools, water and shade are there. */
export function atStart(s: Sheet, limitC: number, shows: Shows, today: string): Facts {
  const { outdoorC, water, on } = s.work
  if (outdoorC === undefined || (on !== undefined && on !== today))
    return {
      state: 'unsaid',
      why: `How hot is it now? The forecast was a guess; look at a thermometer in the shade.${water === true ? '' : ' And clothing, smoker and tools, water and shade: are they here?'}`,
    }
  const cold = outdoorC < TOO_COLD_C
  const ready: Facts =
    water === true
      ? { state: 'met', why: `${shows.temperature(outdoorC)} when work started.` }
      : { state: 'unsaid', why: 'Clothing, smoker and tools, water and shade: are they here, now? Tap it.' }
  if (!hotterThan(outdoorC, limitC) && !cold) return ready
  const why = cold
    ? coldWords(outdoorC, shows)
    : `${shows.temperature(outdoorC)} now, over the limit of ${shows.temperature(limitC)}: wait for a cooler hour, or another day.`
  const second = s.check.seconds?.some(
    (x) => x.item === HEAT_AT_START && isSigned(x) && x.of === why && x.on === today,
  )
  if (second !== true) return { state: 'unmet', why }
  return water === true ? { state: 'signed', why } : ready
}

/**
 * What the heat and the hours did to the bees, for whoever receives the box; nothing where nothing was out of the ordinary.
 * No published figure for losses of removed colonies was found: these are common practice.
 */
export function heatToBees(s: Sheet, limitC: number, shows: Shows): string[] {
  const said: string[] = []
  const w = s.work
  const { outdoorC, boxC, boxHours } = w
  const hours = openToBoxed(s) ?? 0
  if (outdoorC !== undefined && hotterThan(outdoorC, limitC))
    said.push(
      `Taken out at ${shows.temperature(outdoorC)}, over the limit of ${shows.temperature(limitC)}: shade, water nearby, vents open; expect dead bees below in the first days, and look early whether the queen and the open brood lived.`,
    )
  if (boxC !== undefined && boxC >= COMB_SLUMPS_C)
    said.push(
      `${shows.temperature(boxC)} in the box: comb may have slumped onto bees and queen; clear fallen comb and running honey first, at dusk.`,
    )
  else if (boxC !== undefined && hotterThan(boxC, limitC))
    said.push(
      `${shows.temperature(boxC)} in the box on the way: let them settle shaded and vented before any look.`,
    )
  // Four hours: open larvae without nurses and eggs in dry air suffer (common practice; Doull 1976 for eggs).
  if (hours + (boxHours ?? 0) >= 4 && w.broodCare !== 'closed-chest')
    said.push(
      'Brood was long in open air: larvae and eggs may have dried out; do not count on them for a new queen.',
    )
  return said
}
