/** Signs lead: what was found at the box and presses is the advice of the day, with what to do about it. */

import { addDays, type Day, daysBetween } from '../../days.ts'
import type { Inspection } from '../../journal/index.ts'
import { hotterThan } from '../../units.ts'
import { robbedOn } from '../guards.ts'
import type { Advised } from '../plan-types.ts'
import type { PressingSign } from '../says/advice.ts'
import type { Reason } from '../says/said.ts'
import type { State } from '../state.ts'
import type { Adviser, Context } from './context.ts'
import { lookAsked } from './looks.ts'

type Sign = NonNullable<Inspection['signs']>[number]

/** What presses, most pressing first, and the days for which it leads. */
const REMEDIES: readonly { sign: PressingSign; days: number }[] = [
  { sign: 'robbing', days: 2 },
  { sign: 'beetles', days: 2 },
  { sign: 'moths', days: 2 },
  { sign: 'deformed-wings', days: 2 },
]

type Told = 'mites-seen' | 'queenless-roar' | 'chalkbrood'
const TOLD: readonly string[] = ['mites-seen', 'queenless-roar', 'chalkbrood'] satisfies Told[]
const isTold = (sign: Sign): sign is Told => TOLD.includes(sign)

const seen = (s: State, sign: Sign): Day | null => (s.signs?.seen.includes(sign) ? s.signs.on : null)

type Remedy = (typeof REMEDIES)[number]

function sayRemedy({ s, today }: Context, { sign, days }: Remedy, on: Day): Advised {
  const again = addDays(on, days)
  const hungry = s.stores?.level === 'low' && sign === 'robbing'
  return {
    action: 'see-to-signs',
    sign,
    until: again,
    reasons: [
      { code: 'remedy', sign, on },
      today < again ? { code: 'look-again-on', on: again } : { code: 'is-it-over' },
      ...(hungry ? [{ code: 'robbed-and-hungry' } as const] : []),
    ],
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
export function signsNeed({ s, today }: Context, led: readonly Reason[]): Reason[] {
  if (s.signs === null) return []
  const pressing = REMEDIES.flatMap(({ sign, days }): Reason[] => {
    const on = seen(s, sign)
    if (on === null || led.some((r) => r.code === 'remedy' && r.sign === sign)) return []
    return [{ code: daysBetween(on, today) <= days ? 'remedy' : 'sign-not-over', sign, on }]
  })
  const told = s.signs.seen.filter(isTold).filter((sign) => !seenTo(s, sign))
  return [...pressing, ...told.map((code) => ({ code }))]
}

/** The mites were counted since, or the look that heard the roar has looked for eggs: then it need not be said. */
function seenTo({ signs, mites, lastNoEggs }: State, sign: Told): boolean {
  if (signs === null) return true
  if (sign === 'mites-seen') return mites !== null && mites.on >= signs.on
  return sign === 'queenless-roar' && lastNoEggs !== null && lastNoEggs >= signs.on
}

/** Days for which what the removal did to the bees is said. */
const AFTER_REMOVAL = 2
/** Dead bees in the box from which the journey was a bad one, kg: about a tenth of a common package (judgement). */
const MANY_DEAD_KG = 0.15

/** Heat, poison and dead bees at the removal: what to do in the first days. */
export function removalNeed(s: State, today: Day): Reason[] {
  const { intake } = s.history
  const { removal } = intake
  const { outdoorC } = removal
  const said: Reason[] = []
  const first = daysBetween(intake.on, today) <= AFTER_REMOVAL
  if (first && outdoorC !== undefined && hotterThan(outdoorC, s.protocol.heatLimitC))
    said.push({ code: 'removed-in-heat', outdoorC })
  if (first && (intake.deadBeesKg ?? 0) >= MANY_DEAD_KG) said.push({ code: 'many-dead' })
  if (first && intake.broodState === 'dead') said.push({ code: 'brood-dead' })
  if (removal.sprayed === 'yes' && !s.settled.has('sprayed-comb-out')) said.push({ code: 'sprayed' })
  return said
}

/** Whether the removal itself presses on the day it came. */
export const removalPresses: Adviser = ({ s, today }) => {
  const { intake } = s.history
  if (intake.on !== today) return null
  const hot = hotterThan(intake.removal.outdoorC ?? -99, s.protocol.heatLimitC)
  if (!hot && (intake.deadBeesKg ?? 0) < MANY_DEAD_KG) return null
  const reasons = removalNeed(s, today)
  return reasons.length === 0 ? null : { action: 'see-to-signs', until: today, reasons }
}
