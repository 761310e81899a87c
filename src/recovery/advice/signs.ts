/** Signs lead: what was found at the box and presses is the advice of the day, with what to do about it. */

import { addDays, type Day, daysBetween, inWords } from '../../days.ts'
import type { Inspection } from '../../journal/index.ts'
import { robbedOn } from '../guards.ts'
import type { Advice } from '../plan-types.ts'
import type { State } from '../state.ts'
import type { Adviser, Context } from './context.ts'
import { lookAsked } from './looks.ts'

type Sign = NonNullable<Inspection['signs']>[number]

export type PressingSign = 'robbing' | 'beetles' | 'moths' | 'deformed-wings'

const NAMES: Record<PressingSign, string> = {
  robbing: 'Robbing',
  beetles: 'Small hive beetles',
  moths: 'Wax moths',
  'deformed-wings': 'Deformed wings',
}

/** What presses, most pressing first, and what is done about it (common practice). */
const REMEDIES: readonly { sign: PressingSign; days: number; what: string }[] = [
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
  'queenless-roar': 'They roar like bees without a queen: look for eggs and cells when the lid is off.',
  chalkbrood: 'Chalkbrood: keep it dry, strong and fed; a new queen often clears it.',
}

const seen = (s: State, sign: Sign): Day | null => (s.signs?.seen.includes(sign) ? s.signs.on : null)

/** What is done about it, in the words of the advice, without its full stop. */
export const remedyFor = (sign: PressingSign): string => REMEDIES.find((r) => r.sign === sign)?.what ?? ''

type Remedy = (typeof REMEDIES)[number]

function sayRemedy({ s, today }: Context, { sign, what, days }: Remedy, on: Day): Advice {
  const again = addDays(on, days)
  const hungry =
    s.stores?.level === 'low' && sign === 'robbing'
      ? ' Stores are low: close down first, then feed at dusk, inside.'
      : ''
  const look = today < again ? ` Look again on ${inWords(again)}.` : ' Look whether it is over.'
  return {
    action: 'see-to-signs',
    sign,
    until: again,
    why: `${what} (seen on ${inWords(on)}).${look}${hungry}`,
  }
}

/** Robbing comes before everything, and keeps the lid on. */
export const robbing: Adviser = (c) => {
  const on = robbedOn(c.s, c.today)
  const remedy = REMEDIES.find((r) => r.sign === 'robbing')
  return on === null || remedy === undefined ? null : sayRemedy(c, remedy, on)
}

/** Pests and deformed wings lead for some days, where no look is asked that would see to them anyway. */
export const pests: Adviser = (c) => {
  for (const remedy of REMEDIES) {
    const on = remedy.sign === 'robbing' ? null : seen(c.s, remedy.sign)
    if (on === null || daysBetween(on, c.today) > remedy.days) continue
    if (on === c.today || lookAsked(c) === null) return sayRemedy(c, remedy, on)
  }
  return null
}

/** Said beside the advice until a look finds it gone; `led`: what the advice says already. */
export function signsNeed({ s, today }: Context, led: string): string | null {
  if (s.signs === null) return null
  const lines = REMEDIES.flatMap(({ sign, what, days }) => {
    const on = seen(s, sign)
    if (on === null || led.includes(what)) return []
    return daysBetween(on, today) <= days
      ? [`${what} (seen on ${inWords(on)}).`]
      : [`${NAMES[sign]} on ${inWords(on)}, and nobody has noted since that it is over: look.`]
  })
  for (const sign of s.signs.seen) {
    const sentence = SIGN_SENTENCES[sign]
    if (sentence !== undefined) lines.push(sentence)
  }
  return lines.length === 0 ? null : lines.join(' ')
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
  return why === null ? null : { action: 'see-to-signs', until: today, why }
}
