/** Signs lead: what was found at the box and presses is the advice of the day, with what to do about it. */
import { addDays, type Day, daysBetween, inWords } from '../../days.ts'
import type { Inspection } from '../../journal/entry.ts'
import { robbedOn } from '../guards.ts'
import type { State } from '../state.ts'
import type { Adviser } from './context.ts'
import { lookAsked } from './looks.ts'

type Sign = NonNullable<Inspection['signs']>[number]

/** What presses, most pressing first, and what is done about it (common practice). */
const REMEDIES: readonly { sign: Sign; days: number; what: string }[] = [
  {
    sign: 'robbing',
    days: 2,
    what: 'Robbing: close the entrance to one bee’s width today, shut every gap, leave no honey or syrup about and do not open it. Feed only at dusk, inside, once it has stopped',
  },
  {
    sign: 'beetles',
    days: 2,
    what: 'Small hive beetles: crush what you see, put traps in, take out comb the bees do not cover, and narrow the box; slimed comb goes out at once',
  },
  {
    sign: 'moths',
    days: 2,
    what: 'Wax moths: take out comb the bees do not cover and freeze it, scrape out the webs, and narrow the box to what they fill',
  },
  {
    sign: 'deformed-wings',
    days: 2,
    what: 'Deformed wings: that is what mites do. Wash bees for mites now, whatever the last wash said, and treat by the label if they are over the threshold',
  },
]

const SIGN_SENTENCES: Partial<Record<Sign, string>> = {
  'mites-seen': 'Mites were seen on bees: wash, to know how many there are.',
  chalkbrood: 'Chalkbrood: keep it dry, strong and fed; a new queen often clears it.',
}

const seen = (s: State, sign: Sign): Day | null => (s.signs?.seen.includes(sign) ? s.signs.on : null)

/** When somebody looks again whether it is over. */
const again = (on: Day): string => `Look again on ${inWords(addDays(on, 2))}.`

export const signsThatPress: Adviser = (c) => {
  const { s, today } = c
  for (const { sign, days, what } of REMEDIES) {
    const on = seen(s, sign)
    if (on === null || daysBetween(on, today) > days) continue
    // Robbing keeps the lid on whatever is asked inside; the others wait for a look that is asked anyway.
    if (sign !== 'robbing' && on < today && lookAsked(c) !== null) continue
    const hungry =
      s.stores?.level === 'low' && sign === 'robbing'
        ? ' Stores are low: close down first, then feed at dusk, inside.'
        : ''
    return { action: 'see-to-signs', why: `${what} (seen on ${inWords(on)}). ${again(on)}${hungry}` }
  }
  return null
}

/** Said beside the advice until a look finds it gone; null on the days on which it leads. */
export function signsNeed(s: State, today: Day): string | null {
  if (s.signs === null) return null
  const lines = REMEDIES.flatMap(({ sign, what }) => {
    const on = seen(s, sign)
    return on === null ? [] : [`${what} (seen on ${inWords(on)}).`]
  })
  for (const sign of s.signs.seen)
    lines.push(...(SIGN_SENTENCES[sign] === undefined ? [] : [SIGN_SENTENCES[sign]]))
  return lines.length === 0 || robbedOn(s, today) === today ? null : lines.join(' ')
}

/** Days for which what the removal did to the bees is said. */
const AFTER_REMOVAL = 2
/** Dead bees in the box from which the journey was a bad one, kg: about a tenth of a common package (judgement). */
const MANY_DEAD_KG = 0.15

/** Heat, poison and dead bees at the removal: what to do in the first days. */
export function removalNeed(s: State, today: Day): string | null {
  const { intake } = s.history
  const { removal } = intake
  const lines: string[] = []
  const first = daysBetween(intake.on, today) <= AFTER_REMOVAL
  if (first && removal.outdoorC !== undefined && removal.outdoorC > s.protocol.heatLimitC)
    lines.push(
      `It was removed in the heat, at ${removal.outdoorC} °C: shade and water at once, an open entrance, and look at the floor for dead bees and slumped comb.`,
    )
  if (first && (intake.deadBeesKg ?? 0) >= MANY_DEAD_KG)
    lines.push(
      'Many bees died on the way: clear the dead from the floor and the entrance, and count the frames of bees soon.',
    )
  if (first && intake.broodState === 'dead')
    lines.push('The brood that came along is dead: take that comb out before beetles and moths find it.')
  if (removal.sprayed === 'yes' && !s.settled.has('sprayed-comb-out'))
    lines.push(
      'It was sprayed: keep, feed and give on none of its comb or honey. No cells are to be awaited from that brood; take the comb out, and note it.',
    )
  return lines.length === 0 ? null : lines.join(' ')
}

/** Whether the removal itself presses on the day it came. */
export const removalPresses: Adviser = ({ s, today }) => {
  const { intake } = s.history
  if (intake.on !== today) return null
  const hot = (intake.removal.outdoorC ?? -99) > s.protocol.heatLimitC
  if (!hot && (intake.deadBeesKg ?? 0) < MANY_DEAD_KG) return null
  const why = removalNeed(s, today)
  return why === null ? null : { action: 'see-to-signs', why }
}
