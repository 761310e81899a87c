/** Forecasts in words; the plan's advice stays in charge. */

import { type Day, later } from '../days.ts'
import {
  HARDLY_TELLING,
  type Kind,
  mostTelling,
  type TellingDay,
  tellingSentence,
} from '../forecast/index.ts'
import { type Check, type Plan, rulesWhere } from '../recovery/index.ts'
import { type Words, wordsIn } from './catalogue.ts'
import { dayWords, fromTo } from './dates.ts'
import { toDoOf } from './lines.ts'
import { ACTION_WORDS, coming, isQuiet, live, RULE_WORDS } from './rules.ts'

/** 'under 1 %', '34 %', 'over 99 %'. */
export function chance(p: number): string {
  if (p <= 1e-9) return '0 %'
  if (p < 0.01) return 'under 1 %'
  if (p > 0.99 && p < 1 - 1e-9) return 'over 99 %'
  return `${Math.round(p * 100)} %`
}

/** '4.2' frames. */
export const frames = (n: number): string => n.toFixed(1)

/** Names short enough to stand in a chart. */
export const SHORT_KIND: Record<Kind, string> = {
  laying: 'laying queen',
  present: 'mated, not laying',
  raising: 'being raised',
  virgin: 'virgin',
  chance: 'queenless, a chance',
  queenless: 'queenless',
  'laying-workers': 'laying workers',
}

const lower = (s: string): string => s.charAt(0).toLowerCase() + s.slice(1)

/** What is done rather than looked for: no look decides it. */
const ACTS = new Set<Plan['advice']['action']>([
  'release-queen',
  'give-egg-frame',
  'buy-queen',
  'unite',
  'move-out',
  'call-inspector',
])

/** Whether the plan says what to do, so that no look has to be chosen. */
export const planActs = (plan: Plan): boolean => ACTS.has(plan.advice.action)

/**
 * When to look, in a sentence. Where the plan says to act, to look now, or to leave the lid on, that stands; the worth of
 * looking only chooses among the days that the plan leaves open.
 */
export function whenToLook(plan: Plan, telling: readonly TellingDay[]): string {
  const { action } = plan.advice
  if (planActs(plan))
    return `The plan says what to do: ${lower(ACTION_WORDS[action])}. No look tells enough to wait for.`
  if (isQuiet(plan) && plan.quiet !== null)
    return `Quiet time: the lid stays on until ${dayWords(plan.quiet.to, plan.asOf)}, whatever a look would tell.`
  const next = nextAboutQueen(plan)
  if (next === null)
    return `The plan asks nothing about the queen in the coming days. ${tellingSentence(telling)}`
  const name = lower(RULE_WORDS[next.rule].name)
  if (next.status === 'due' || next.status === 'overdue')
    return `The plan says to look now (${name}): no later day is worth waiting for.`
  if (next.rule === 'queen-release')
    return `The plan asks to ${name} ${fromTo(later(next.opens, plan.asOf), next.closes, plan.asOf)}: that comes first.`
  const open = telling.filter((t) => t.day >= next.opens && t.day <= next.closes)
  const when = fromTo(later(next.opens, plan.asOf), next.closes, plan.asOf)
  if (open.length < 2) return `The next look for the queen is planned ${when}: ${name}.`
  const head = `The plan leaves ${when} to choose (${name}).`
  const tells = open.some((t) => t.bits >= HARDLY_TELLING)
  return `${head} ${tells ? tellingSentence(open) : 'For the queen’s sake no day of it is better than another.'}`
}

/** Checks whose question is whether there is a queen. */
const ABOUT_THE_QUEEN: ReadonlySet<Check['rule']> = new Set(
  rulesWhere((f) => f.task === 'look' && f.finds !== 'laying-workers'),
)

/** The check about the queen that is asked now, or comes first. */
function nextAboutQueen(plan: Plan): Check | null {
  const asked = [...live(plan), ...coming(plan)].filter(
    (c) => ABOUT_THE_QUEEN.has(c.rule) || c.rule === 'queen-release',
  )
  return asked.reduce<Check | null>((first, c) => (first === null || c.opens < first.opens ? c : first), null)
}

/** The last day on which the look asked for today can as well be made; null where no other day is open to choose. */
export function mayWaitUntil(plan: Plan): Day | null {
  const toDo = toDoOf(plan)
  if (toDo === null || toDo.lidOn || toDo.late || ACTS.has(toDo.action)) return null
  const { check } = toDo
  if (check === null || check.status !== 'open' || !ABOUT_THE_QUEEN.has(check.rule)) return null
  return check.due > plan.asOf ? check.due : null
}

/** So much more must another day tell to be worth a word. */
const WORTH_A_WORD = 1.5

/** 'Tue 12 May tells twice what today does.' Null where today is as good, or neither tells much. */
export function betterDay(days: readonly TellingDay[], w: Words = wordsIn('en')): string | null {
  const best = mostTelling(days)
  const [today] = days
  if (best === null || today === undefined || best.day === today.day || best.net < HARDLY_TELLING) return null
  const when = w.dates.day(best.day, today.day)
  if (today.net < HARDLY_TELLING) return w.today.tellsMost(when)
  const ratio = best.net / today.net
  if (ratio < WORTH_A_WORD) return null
  return w.today.tellsMore(when, ratio < 2.5 ? 2 : Math.round(ratio))
}
