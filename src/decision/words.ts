/** The advice of a decision in two reasons: the one from biology, then the number. */

import { addDays, type Day, daysBetween } from '../days.ts'
import { oddsToday } from '../forecast/index.ts'
import {
  type Advised,
  type Ask,
  type Context,
  isQuiet,
  lookAsked,
  type Reason,
  untilDay,
  type Way,
} from '../recovery/index.ts'
import type { LayerPlan } from './layer.ts'
import type { Option } from './options.ts'
import type { Settings, Standing } from './stand.ts'

const hundred = (p: number): number => Math.round(100 * p)

/** An option so many days after it was thought of. */
const wayOf = (o: Option, since: number): Way => ({
  act: o.act,
  days: Math.max(0, o.inDays - since),
  keep: hundred(o.keeps),
})

/** 'Of 100 colonies like this, 84 keep a queen if it gets a frame of eggs now, 76 if you wait a week.' */
function numberReason(chosen: Option, options: readonly Option[], since = 0): Reason {
  const kind = (o: Option): string => `${o.act}${o.inDays > 0}`
  const other = options.find((o) => kind(o) !== kind(chosen) && o.act !== 'unite')
  return {
    code: 'of-100',
    way: wayOf(chosen, since),
    other: other === undefined ? null : wayOf(other, since),
  }
}

/** Queen cells were seen here, so that a queen is being raised as far as the plan knows. */
const cellsSeen = ({ s }: Context): boolean => s.queen.is === 'rearing' && s.queen.assumed !== true

/** Why an act, by what is likeliest in the box. */
function reason(standing: Standing, cells: boolean): Reason {
  const { decision, on, story } = standing
  const odds = oddsToday(story)
  const orphaned = odds.queenless + odds.chance + odds['laying-workers']
  switch (decision.chosen.act) {
    case 'give':
      if (orphaned > 0.5) return { code: cells ? 'cells-in-doubt' : 'nobody-lays' }
      return { code: odds.raising + odds.virgin > 0.5 ? 'young-queen-not-proven' : 'not-proven' }
    case 'queen':
      return { code: 'bought-lays-soon' }
    case 'unite':
      return { code: 'no-queen-to-save' }
    case 'boost':
      return { code: 'few-bees-to-save' }
    default:
      break
  }
  if (odds.raising + odds.virgin > 0.5) return { code: 'being-raised', on }
  if (odds.laying + odds.present > 0.5) return { code: 'queen-likely', by: on }
  return { code: 'look-tells', on }
}

/** Said where a box is opened in quiet time for a frame. */
const GENTLY = { code: 'give-gently' } as const

/** The advice of the decision that stands. */
export function standingAdvice(
  c: Context,
  standing: Standing,
  settings: Settings & { saidSupplies: boolean },
): Advised {
  const { decision, on } = standing
  const { today, supplies } = c
  const { chosen, options } = decision
  const why = reason(standing, cellsSeen(c))
  const number = numberReason(chosen, options, daysBetween(standing.taken, today))
  const needsQueen = settings.saidSupplies && settings.supplies.queensInHand === 0
  const cells: Reason[] = cellsSeen(c) ? [{ code: 'cut-cells-first' }] : []
  const comes: Reason[] =
    supplies.daysUntilQueens === undefined ? [] : [{ code: 'takes-days', days: supplies.daysUntilQueens }]
  if (today < on) {
    // Something may be asked of it before: a look from outside, a question whose day has come.
    const next = untilDay(c.s, today, c.quiet, on) ?? on
    const until = addDays(next, -1)
    if (decision.order && needsQueen)
      return {
        action: 'order-queen',
        until,
        reasons: [{ code: 'order-now' }, ...comes, number],
      }
    const task = chosen.act === 'give' ? 'give' : 'look'
    return {
      action: 'leave-alone',
      until,
      reasons: [{ code: 'leave-then', until: next, task, on: next < on ? on : null }, why, number],
    }
  }
  switch (chosen.act) {
    case 'look': {
      // What the open question asks for says best what to look for.
      const ask = lookAsked(c)
      return ask === null
        ? { action: 'open-and-look', reasons: [{ code: 'look-now-tells' }, number] }
        : { action: 'open-and-look', rule: ask.rule, reasons: [ask.why, number] }
    }
    case 'give':
      return {
        action: 'give-egg-frame',
        rule: 'egg-frame',
        reasons: [why, ...(isQuiet(today, c.quiet) ? [GENTLY] : []), number],
      }
    case 'boost':
      return { action: 'boost', reasons: [why, number] }
    case 'queen':
      return needsQueen
        ? {
            action: 'order-queen',
            rule: 'buy-queen',
            reasons: [why, ...cells, { code: 'order-one-today' }, ...comes, number],
          }
        : { action: 'buy-queen', rule: 'buy-queen', reasons: [why, ...cells, number] }
    default:
      return { action: 'unite', rule: 'unite-or-boost', reasons: [why] }
  }
}

/** A chore that cannot wait for the next look. */
export const choreAdvice = ({ rule, why }: Ask): Advised => ({
  action: 'open-and-look',
  rule,
  reasons: [why],
})

/** A question that is asked before the look that lets a layer go. */
export const layerUntil = (until: Day): Advised => ({
  action: 'leave-alone',
  until: addDays(until, -1),
  reasons: [{ code: 'leave-then', until, task: 'look', on: null }],
})

/** What is said of a proven layer before the look on which it can go. */
export const layerAdvice = (plan: LayerPlan, chore: Ask | null = null): Advised =>
  plan.boost
    ? {
        action: 'boost',
        rule: 'unite-or-boost',
        reasons: [{ code: 'boost-layer' }],
      }
    : {
        action: 'leave-alone',
        until: addDays(plan.look, -1),
        reasons:
          chore === null
            ? [{ code: 'leave-layer', until: plan.look }]
            : [{ code: 'leave-to-grow', until: plan.look }, chore.why, { code: 'lets-go-later' }],
      }
