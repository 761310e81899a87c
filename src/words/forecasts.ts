/** Forecasts in words; the plan's advice stays in charge. */

import { type Day, later } from '../days.ts'
import {
  type BestLook,
  bestLook,
  type EvidenceWeight,
  HARDLY_TELLING,
  KINDS,
  type Kind,
  type MoveOutForecast,
  mostTelling,
  strengthOf,
  type TellingDay,
} from '../forecast/index.ts'
import { type Check, type Plan, rulesWhere } from '../recovery/index.ts'
import { capital } from './capital.ts'
import { type Words, wordsIn } from './catalogue.ts'
import { toDoOf } from './lines.ts'
import { coming, isQuiet, live } from './rules.ts'

const ENGLISH = wordsIn('en')

/** 'under 1 %', '34 %', 'over 99 %'. */
export function chance(p: number, { likely }: Words = ENGLISH): string {
  if (p <= 1e-9) return '0 %'
  if (p < 0.01) return likely.chance.under
  if (p > 0.99 && p < 1 - 1e-9) return likely.chance.over
  return `${Math.round(p * 100)} %`
}

/** '4.2' frames. */
export const frames = (n: number): string => n.toFixed(1)

/** Names short enough to stand in a chart, in English. */
export const SHORT_KIND: Record<Kind, string> = ENGLISH.likely.short

const lower = (s: string): string => s.charAt(0).toLowerCase() + s.slice(1)

/** A share as people say it: '9 in 10', 'almost certain'. Example: inTen(0.72) = '7 in 10'. */
function inTen(p: number, { likely: { chance: said } }: Words): string {
  if (p >= 0.975) return said.almostCertain
  if (p >= 0.945) return said.of(19, 20)
  if (p < 0.01) return said.nextToNone
  if (p < 0.035) return said.of(1, 50)
  if (p < 0.07) return said.of(1, 20)
  return said.of(Math.max(1, Math.round(p * 10)), 10)
}

/** The likeliest, and what else may well be. Example: 'A queen being raised: 7 in 10. Otherwise a laying queen (2 in 10).' */
export function oddsWords(odds: Readonly<Record<Kind, number>>, w: Words = ENGLISH): string {
  const { kinds, odds: said } = w.likely
  const [first = 'laying', ...rest] = [...KINDS].sort((a, b) => odds[b] - odds[a])
  const head = said.is(capital(kinds[first]), inTen(odds[first], w))
  const others = rest.filter((k) => odds[k] >= 0.05).slice(0, 2)
  if (others.length === 0) return head
  return `${head} ${said.otherwise(others.map((k) => `${kinds[k]} (${inTen(odds[k], w)})`))}`
}

/** 'twice', '8 times', 'over 1000 times'. */
function times(factor: number, { likely }: Words): string {
  if (factor >= 1000) return likely.times(1000, 'over')
  if (factor >= 100) return likely.times(Math.round(factor / 50) * 50, 'about')
  if (factor >= 20) return likely.times(Math.round(factor / 5) * 5, 'about')
  if (factor >= 2.5) return likely.times(Math.round(factor), null)
  return likely.times(factor >= 1.75 ? 2 : factor, null)
}

/** 'no eggs on day 6: 8 times likelier if no queen lays' */
export function evidenceWords(e: EvidenceWeight, w: Words = ENGLISH): string {
  const { odds, questions, seen } = w.likely
  const what = odds.onDay(seen[e.what][e.value] ?? e.value, e.day)
  const strength = strengthOf(e)
  return strength === null
    ? odds.nextToNothing(what)
    : odds.likelier(what, times(strength, w), questions[e.holds][e.factor >= 1 ? 'yes' : 'no'])
}

/** When it can move out, in a sentence. */
export function moveOutWords(
  { blocked, expected, range, ever }: MoveOutForecast,
  w: Words = ENGLISH,
): string {
  const said = w.likely.moveOut
  const { dayAlone } = w.dates
  if (blocked !== null) return said.blocked(w.reasons.unmet(blocked))
  if (expected === null || range === null) return said.never
  const when =
    range.from === range.to
      ? said.on(dayAlone(expected))
      : said.about(dayAlone(expected), dayAlone(range.from), dayAlone(range.to))
  return ever > ALMOST_CERTAIN ? said.ready(when) : said.readyIf(when, Math.round(ever * 100))
}

/** Said without "if it gets there" from here on. */
const ALMOST_CERTAIN = 0.975

/** 'A look on Tue 5 May tells most: twice what Sun does.' */
export function bestLookWords(days: readonly TellingDay[], w: Words = ENGLISH, other = days[0]): string {
  const said = w.likely.telling
  const { dayAlone, weekday } = w.dates
  const best: BestLook = bestLook(days, other)
  switch (best.says) {
    case 'costs':
      return said.costs
    case 'little':
      return said.little
    case 'most':
      return said.most(dayAlone(best.day))
    case 'other-little':
      return said.otherLittle(dayAlone(best.day), weekday(best.other))
    case 'hardly-more':
      return said.hardlyMore(dayAlone(best.day), weekday(best.other))
    case 'times': {
      const same = weekday(best.other) === weekday(best.day)
      return said.mostBy(
        dayAlone(best.day),
        times(best.times, w),
        same ? dayAlone(best.other) : weekday(best.other),
      )
    }
  }
}

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
export function whenToLook(plan: Plan, telling: readonly TellingDay[], w: Words = ENGLISH): string {
  const said = w.likely.telling
  const { day, fromTo } = w.dates
  if (planActs(plan)) return said.acts(lower(w.trade.actions[plan.advice.action]))
  if (isQuiet(plan) && plan.quiet !== null) return said.quiet(day(plan.quiet.to, plan.asOf))
  const next = nextAboutQueen(plan)
  if (next === null) return `${said.asksNothing} ${bestLookWords(telling, w)}`
  const name = lower(w.trade.rules[next.rule].name)
  if (next.status === 'due' || next.status === 'overdue') return said.lookNow(name)
  const when = fromTo(later(next.opens, plan.asOf), next.closes, plan.asOf)
  if (next.rule === 'queen-release') return said.cageFirst(name, when)
  const open = telling.filter((t) => t.day >= next.opens && t.day <= next.closes)
  if (open.length < 2) return said.next(name, when)
  const tells = open.some((t) => t.bits >= HARDLY_TELLING)
  return `${said.leaves(name, when)} ${tells ? bestLookWords(open, w) : said.noBetter}`
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
export function betterDay(days: readonly TellingDay[], w: Words = ENGLISH): string | null {
  const best = mostTelling(days)
  const [today] = days
  if (best === null || today === undefined || best.day === today.day || best.net < HARDLY_TELLING) return null
  const when = w.dates.day(best.day, today.day)
  if (today.net < HARDLY_TELLING) return w.today.tellsMost(when)
  const ratio = best.net / today.net
  if (ratio < WORTH_A_WORD) return null
  return w.today.tellsMore(when, ratio < 2.5 ? 2 : Math.round(ratio))
}
