/** What to be careful of at one box today. Only what applies there; the general cautions stand on the round's first page. */
import type { History } from '../journal/index.ts'
import { leastC, type Phase, type Plan } from '../recovery/index.ts'
import { isQuiet } from './rules.ts'
import { temperature, type Units } from './units.ts'

/** 4 of 5 and more: common practice calls that a box not to be opened alone. */
const FIERCE = 4

function temperLast(history: History): number | null {
  const last = history.entries.findLast(
    (e) => (e.kind === 'inspection' || e.kind === 'intake') && e.temper !== undefined,
  )
  return last !== undefined && 'temper' in last ? (last.temper ?? null) : null
}

/** Short sentences, the gravest first. Empty when nothing particular applies. */
export function lidCautions(plan: Plan, history: History): string[] {
  const { action } = plan.advice
  const temper = temperLast(history)
  const said: [boolean, string][] = [
    [
      action === 'call-inspector',
      'Suspected brood disease: leave it closed, clean tools and gloves before the next box, take no comb or brood from it.',
    ],
    [
      temper !== null && temper >= FIERCE,
      `Fierce when last seen (${temper} of 5): full veil and gloves, somebody within call. Where Africanized bees are established, local rules decide.`,
    ],
    [isQuiet(plan), 'Lid on: a young queen may be leaving her cell, or out to mate.'],
    [
      history.intake.removal.sprayed === 'yes',
      'Sprayed before the removal: keep none of its comb or honey, feed none of it.',
    ],
    [
      action === 'buy-queen',
      'Look for a virgin and for queen cells first, and cut cells out: either kills a bought queen.',
    ],
    [
      action === 'give-egg-frame',
      'Take the frame from a colony in which brood disease was looked for and none seen.',
    ],
    [
      action === 'unite',
      'Look for brood disease in both first. Laying workers kill a queen: unite only with a strong queenright colony.',
    ],
  ]
  return said.flatMap(([applies, text]) => (applies ? [text] : []))
}

const HAS_A_QUEEN: Partial<Record<Phase, string>> = {
  'awaiting-release': 'has a queen in a cage',
  'awaiting-eggs': 'has a queen',
  laying: 'has a laying queen',
  queenright: 'has a laying queen',
  rearing: 'is raising a queen',
  'awaiting-new-queen': 'may have a young queen',
  'queen-unknown': 'may have a queen',
}

/** What uniting asks first of a colony that has, or may have, a queen; null where it has none. */
export function unitingCaution(tag: string, { phase }: Pick<Plan, 'phase'>): string | null {
  const has = HAS_A_QUEEN[phase]
  return has === undefined
    ? null
    : `${tag} ${has}. Where the colony it goes into has one too, take out the lesser one before you unite them, cells too: two queens fight, and both can be lost.`
}

/** How warm it must be to open the box; null when it stays closed. */
export function warmthCaution(plan: Plan, units: Units): string | null {
  const { action } = plan.advice
  const opens =
    action !== 'outside-look' && action !== 'leave-alone' && action !== 'none' && action !== 'call-inspector'
  return opens && !isQuiet(plan)
    ? `Full look from ${temperature(leastC('full'), units)} on; a short one from ${temperature(leastC('short'), units)}.`
    : null
}
