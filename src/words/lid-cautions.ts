/** What to be careful of at one box today. Only what applies there; the general cautions stand on the round's first page. */
import type { History } from '../journal/index.ts'
import { leastC, type Plan } from '../recovery/index.ts'
import { type Words, wordsIn } from './catalogue.ts'
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
export function lidCautions(plan: Plan, history: History, w: Words = wordsIn('en')): string[] {
  const c = w.visit.cautions
  const { action } = plan.advice
  const temper = temperLast(history)
  const said: [boolean, string][] = [
    [action === 'call-inspector', c.suspected],
    [temper !== null && temper >= FIERCE, c.fierce(temper ?? FIERCE)],
    [isQuiet(plan), c.quiet],
    [history.intake.removal.sprayed === 'yes', c.sprayed],
    [action === 'buy-queen', c.buyQueen],
    [action === 'give-egg-frame', c.giveFrame],
    [action === 'unite', c.unite],
  ]
  return said.flatMap(([applies, text]) => (applies ? [text] : []))
}

/** What uniting asks first of a colony that has, or may have, a queen; null where it has none. */
export function unitingCaution(
  tag: string,
  { phase }: Pick<Plan, 'phase'>,
  w: Words = wordsIn('en'),
): string | null {
  const { hasQueen, uniting } = w.visit.cautions
  const has = hasQueen[phase]
  return has === undefined ? null : uniting(tag, has)
}

/** How warm it must be to open the box; null when it stays closed. */
export function warmthCaution(plan: Plan, units: Units, w: Words = wordsIn('en')): string | null {
  const { action } = plan.advice
  const opens =
    action !== 'outside-look' && action !== 'leave-alone' && action !== 'none' && action !== 'call-inspector'
  return opens && !isQuiet(plan)
    ? w.visit.cautions.warmth(temperature(leastC('full'), units), temperature(leastC('short'), units))
    : null
}
