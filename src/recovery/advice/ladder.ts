/** The queen ladder: their own brood, a frame of eggs, a bought queen, uniting; and bees for a queen that lacks them. */
import { MATES_AFTER_EMERGENCE, TEST_FRAME_IGNORED_AFTER } from '../../biology/index.ts'
import { addDays } from '../../days.ts'
import { INSURED_UNTIL } from '../derived-asks.ts'
import {
  isHeld,
  MATING_NUCLEUS_FRAMES,
  mayBuy,
  mayGive,
  mayUnite,
  NUCLEUS_FRAMES,
  robbedOn,
  toTakeOut,
  wouldMate,
} from '../guards.ts'
import { isQuiet } from '../phase.ts'
import type { Advised } from '../plan-types.ts'
import { matesOn } from '../protocol.ts'
import type { Few } from '../says/advice.ts'
import type { Reason } from '../says/said.ts'
import { coldSeason } from '../season.ts'
import type { Adviser, Context } from './context.ts'

const DISEASE_FIRST = { code: 'disease-first' } as const

/** Nothing of the ladder is done to a colony that is held, or with robbers about. */
const barred = ({ s, today, exposure }: Context): boolean =>
  isHeld(s, exposure) !== null || robbedOn(s, today) !== null

const layingWorkers: Adviser = (c) => {
  if (c.s.queen.is !== 'laying-workers' || barred(c) || mayUnite(c.s, c.today, c) !== null) return null
  // A frame of eggs is in: cells on it are read before they are given up.
  if (c.s.testFrame !== null && c.s.testFrame.read === null) return null
  return {
    action: 'unite',
    rule: 'laying-workers',
    reasons: [{ code: 'laying-workers-unite' }],
  }
}

/** Few bees: a laying queen is boosted or left; what has no queen to save is united. */
const fewBees: Adviser = (c) => {
  const { s, today, asked } = c
  const ask = asked('unite-or-boost')
  if (ask === undefined || barred(c) || isQuiet(today, c.quiet) || s.caged !== null) return null
  const { strength, queen } = s
  const few = strength !== null && strength.frames < s.protocol.minFramesOfBees ? strength.frames : null
  if (few === null) return null
  const only = (who: Few): Reason => ({ code: 'few-bees', frames: few, few: who })
  const unite = (who: Few): Advised | null =>
    mayUnite(s, today, c) === null
      ? { action: 'unite', rule: ask.rule, reasons: [only(who), DISEASE_FIRST] }
      : null
  const boost = (who: Few): Advised | null =>
    coldSeason(s.protocol, today) ? null : { action: 'boost', rule: ask.rule, reasons: [only(who)] }
  switch (queen.is) {
    case 'laying':
    case 'queenright':
      return few < NUCLEUS_FRAMES ? unite('layer') : boost('nucleus')
    case 'present':
    case 'released':
      return boost('queen')
    case 'rearing':
      return few < MATING_NUCLEUS_FRAMES ? unite('raising') : boost('mating')
    case 'unseen':
      // Whether there is a queen to save is asked first.
      return s.pending('telling-visit') !== undefined ? null : unite('unproven')
    case 'none':
      return unite('queenless')
    default:
      return null
  }
}

/** Out of the months in which queens mate no queen is raised: a mated one, or uniting, from the first day. */
const outOfSeason: Adviser = (c) => {
  const { s, today } = c
  if (barred(c)) return null
  const { queen } = s
  if (queen.is === 'none') {
    const about = wouldMate(queen.chance ? s.lastYoungBrood : today)
    if (matesOn(s.protocol, about) || matesOn(s.protocol, wouldMate(today))) return null
    return buyOrUnite(c, { code: 'mates-out-of-season', about })
  }
  if (queen.is !== 'rearing' || queen.assumed === true) return null
  const about = addDays(queen.emergence.likely, MATES_AFTER_EMERGENCE)
  if (
    matesOn(s.protocol, about) ||
    matesOn(s.protocol, addDays(queen.emergence.latest, MATES_AFTER_EMERGENCE))
  )
    return null
  return buyOrUnite(c, { code: 'raised-out-of-season', about })
}

function buyOrUnite(c: Context, why: Reason): Advised | null {
  const { s, today } = c
  const weak = s.strength !== null && s.strength.frames < s.protocol.minFramesOfBees
  if ((weak || coldSeason(s.protocol, today)) && mayUnite(s, today, c) === null)
    return { action: 'unite', reasons: [why, { code: 'unite-on-a-mild-day' }, DISEASE_FIRST] }
  if (mayBuy(s, today, c) !== null) return null
  return buy(c, [why, { code: 'buy-or-unite' }])
}

/** A queen has to be there to go in. */
function buy({ supplies }: Context, why: readonly Reason[], rule?: 'buy-queen'): Advised {
  const lead = rule === undefined ? {} : { rule }
  if (supplies.queensInHand !== 0) return { action: 'buy-queen', ...lead, reasons: why }
  const days = supplies.daysUntilQueens ?? null
  return { action: 'order-queen', ...lead, reasons: [...why, { code: 'order-today', days }] }
}

/** A frame of eggs as the next rung: a cure, and a test. */
const frameOfEggs: Adviser = (c) => {
  const { s, today, asked } = c
  const ask = asked('egg-frame')
  if (ask === undefined || barred(c) || s.queen.is === 'laying-workers') return null
  if (ask.insurance === true) return insurance(c)
  if (toTakeOut(s) !== null && mayGive(s, today, c) === null)
    return { action: 'take-out-queen', rule: ask.rule, reasons: [ask.why] }
  const barredBy = mayGive(s, today, c)
  if (barredBy?.code === 'no-mating') return null
  if (barredBy !== null) return null
  if (c.supplies.eggFrames === 0) return mayBuy(s, today, c) === null ? buy(c, [{ code: 'no-donor' }]) : null
  const until = addDays(s.lastYoungBrood, TEST_FRAME_IGNORED_AFTER)
  if (today > until && s.otherQueen !== null)
    return { action: 'open-and-look', rule: ask.rule, reasons: [ask.why] }
  if (today > until) return buy(c, [{ code: 'eggs-may-be-ignored' }])
  return { action: 'give-egg-frame', rule: ask.rule, until, reasons: [ask.why, ...castWords(c)] }
}

const castWords = ({ s }: Context): Reason[] =>
  s.history.intake.removal.type === 'swarm' ? [{ code: 'swarm-may-bring-virgin' }] : []

/** Where no layer is proven by about day 18 to 22: does a queen live here? Answered in four days. */
const insurance: Adviser = (c) => {
  const { s, today, asked } = c
  const ask = asked('egg-frame')
  if (ask === undefined || barred(c) || mayGive(s, today, c) !== null) return null
  const gently = isQuiet(today, c.quiet) ? [{ code: 'give-gently' } as const] : []
  const until = addDays(s.lastYoungBrood, INSURED_UNTIL)
  return { action: 'give-egg-frame', rule: ask.rule, until, reasons: [ask.why, ...gently] }
}

/** A bought queen, where raising one has failed; uniting, where that failed too and few bees are left. */
const boughtQueen: Adviser = (c) => {
  const { s, today, asked } = c
  const ask = asked('buy-queen')
  if (ask === undefined || barred(c)) return null
  // She comes out on the day on which another can go in.
  if (toTakeOut(s) !== null && c.supplies.queensInHand !== 0)
    return { action: 'take-out-queen', rule: ask.rule, reasons: [ask.why] }
  const twice = s.queen.is === 'none' && s.queen.failed === 'bought'
  const strong = s.strength?.counted === true && s.strength.frames >= s.protocol.minFramesOfBees
  if (twice && !strong && mayUnite(s, today, c) === null)
    return { action: 'unite', rule: 'unite-or-boost', reasons: [s.pending('unite-or-boost')?.why ?? ask.why] }
  const barredBy = mayBuy(s, today, c)
  if (barredBy !== null) return null
  return buy(c, [ask.why], 'buy-queen')
}

/** In the order in which they are asked. */
export const LADDER: readonly Adviser[] = [layingWorkers, fewBees, outOfSeason, frameOfEggs, boughtQueen]
