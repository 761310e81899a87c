/** The advice of a decision in two sentences: the reason from biology, then the number. */

import { addDays, daysBetween, inWords } from '../days.ts'
import { oddsToday } from '../forecast/index.ts'
import { type Advice, type Ask, type Context, isQuiet, lookAsked, untilDay } from '../recovery/index.ts'
import type { LayerPlan } from './layer.ts'
import type { Option } from './options.ts'
import type { Settings, Standing } from './stand.ts'

const hundred = (p: number): number => Math.round(100 * p)

/** What an option is, after 'keep a queen', so many days after it was thought of. */
function when(o: Option, since: number): string {
  const left = Math.max(0, o.inDays - since)
  const days = left === 1 ? 'a day' : left === 7 ? 'a week' : left === 14 ? 'two weeks' : `${left} days`
  switch (o.act) {
    case 'look':
      return left === 0 ? 'if you look now' : `if you wait ${days}`
    case 'give':
      return left === 0 ? 'if it gets a frame of eggs now' : `if it gets a frame of eggs in ${days}`
    case 'boost':
      return 'if it gets a frame of capped brood'
    case 'queen':
      return 'if a bought queen goes in'
    default:
      return 'if it is united'
  }
}

/** 'Of 100 colonies like this, 84 keep a queen if it gets a frame of eggs now, 76 if you wait a week.' */
function numberSentence(chosen: Option, options: readonly Option[], since = 0): string {
  const kind = (o: Option): string => `${o.act}${o.inDays > 0}`
  const other = options.find((o) => kind(o) !== kind(chosen) && o.act !== 'unite')
  const than = other === undefined ? '' : `, ${hundred(other.keeps)} ${when(other, since)}`
  return `Of 100 colonies like this, ${hundred(chosen.keeps)} keep a queen ${when(chosen, since)}${than}.`
}

/** Why an act, by what is likeliest in the box. */
function reason(standing: Standing): string {
  const { decision, on, story } = standing
  const odds = oddsToday(story)
  const orphaned = odds.queenless + odds.chance + odds['laying-workers']
  switch (decision.chosen.act) {
    case 'give':
      return orphaned > 0.5
        ? 'Nobody seems to lay here, and there is nothing left to raise a queen from: a frame of eggs lets them raise one, and its brood holds laying workers off.'
        : 'Whether a queen lives here is not proven: they build cells on a frame of eggs within five days if she does not, it holds laying workers off, and they can start again.'
    case 'queen':
      return 'A mated queen lays within days of her release; one raised here takes four weeks, if she mates. Look for a virgin and for cells first.'
    case 'unite':
      return 'There is no queen to save here, and few bees to raise one: their work is worth more in a queenright colony. Look for brood disease first.'
    case 'boost':
      return 'Few bees, and a queen to save: a frame of capped brood gives two frames of bees within two weeks.'
    default:
      break
  }
  if (odds.raising + odds.virgin > 0.5)
    return `A queen is being raised or mating: her eggs are not to be expected before a look on ${inWords(on)} can tell.`
  if (odds.laying + odds.present > 0.5)
    return `A queen is likely here: by ${inWords(on)} her eggs or brood can tell, and nobody else's can be mistaken for them.`
  return `A look on ${inWords(on)} tells most: eggs, queen cells or neither decide what follows.`
}

/** Said where a box is opened in quiet time for a frame. */
const GENTLY = ' Give it early or late in the day, gently: a virgin may be about.'

/** The advice of the decision that stands. */
export function standingAdvice(
  c: Context,
  standing: Standing,
  settings: Settings & { saidSupplies: boolean },
): Advice {
  const { decision, on } = standing
  const { today, supplies } = c
  const { chosen, options } = decision
  const why = reason(standing)
  const number = numberSentence(chosen, options, daysBetween(standing.taken, today))
  const needsQueen = settings.saidSupplies && settings.supplies.queensInHand === 0
  const comes =
    supplies.daysUntilQueens === undefined ? '' : ` She takes ${supplies.daysUntilQueens} days to come.`
  if (today < on) {
    // Something may be asked of it before: a look from outside, a question whose day has come.
    const next = untilDay(c.s, today, c.quiet, on) ?? on
    const until = addDays(next, -1)
    if (decision.order && needsQueen)
      return {
        action: 'order-queen',
        until,
        why: `A mated queen is likely to be needed here, and none is in hand: order one now.${comes} ${number}`,
      }
    const task = chosen.act === 'give' ? 'give it a frame of eggs' : 'look'
    const then = next < on ? `; ${task} on ${inWords(on)}` : `, then ${task}`
    return {
      action: 'leave-alone',
      until,
      why: `Leave it alone until ${inWords(next)}${then}. ${why} ${number}`,
    }
  }
  switch (chosen.act) {
    case 'look': {
      // What the open question asks for says best what to look for.
      const ask = lookAsked(c)
      return ask === null
        ? {
            action: 'open-and-look',
            why: `A look now tells most: eggs, queen cells or neither decide what follows. ${number}`,
          }
        : { action: 'open-and-look', rule: ask.rule, why: `${ask.why} ${number}` }
    }
    case 'give':
      return {
        action: 'give-egg-frame',
        rule: 'egg-frame',
        why: `${why}${isQuiet(today, c.quiet) ? GENTLY : ''} ${number}`,
      }
    case 'boost':
      return { action: 'boost', why: `${why} ${number}` }
    case 'queen':
      return needsQueen
        ? {
            action: 'order-queen',
            rule: 'buy-queen',
            why: `${why} None is in hand: order one today.${comes} ${number}`,
          }
        : { action: 'buy-queen', rule: 'buy-queen', why: `${why} ${number}` }
    default:
      return { action: 'unite', rule: 'unite-or-boost', why }
  }
}

/** A chore that cannot wait for the next look. */
export const choreAdvice = ({ rule, why }: Ask): Advice => ({ action: 'open-and-look', rule, why })

/** What is said of a proven layer before the look on which it can go. */
export const layerAdvice = (plan: LayerPlan, chore: Ask | null = null): Advice =>
  plan.boost
    ? {
        action: 'boost',
        rule: 'unite-or-boost',
        why: 'A laying queen with few bees: a frame of capped brood with its bees keeps her brood warm until her own emerges. Do not unite it.',
      }
    : {
        action: 'leave-alone',
        until: addDays(plan.look, -1),
        why:
          chore !== null
            ? `A queen lays here, and it is to grow: leave her in peace until ${inWords(plan.look)}. ${chore.why} The look that lets it go comes later.`
            : `A queen lays here: leave her in peace until ${inWords(plan.look)}, when one look can show capped worker brood, count the bees, and settle what else is missing.`,
      }
