/** The queen ladder: their own brood, a frame of eggs, a bought queen, uniting; and bees for a queen that lacks them. */
import { MATES_AFTER_EMERGENCE, TEST_FRAME_IGNORED_AFTER } from '../../biology/index.ts'
import { addDays, inWords } from '../../days.ts'
import { INSURED_UNTIL } from '../derived-asks.ts'
import { frameCount } from '../fold/strength.ts'
import {
  isHeld,
  MATING_NUCLEUS_FRAMES,
  mayBuy,
  mayGive,
  mayUnite,
  NUCLEUS_FRAMES,
  robbedOn,
  wouldMate,
} from '../guards.ts'
import { isQuiet } from '../phase.ts'
import type { Advice } from '../plan-types.ts'
import { matesOn } from '../protocol.ts'
import { coldSeason } from '../season.ts'
import type { Adviser, Context } from './context.ts'

const DISEASE_FIRST = 'Look for brood disease first.'

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
    why: 'Laying workers: unite with a strong queenright colony, after a look for brood disease. A bought queen would be killed.',
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
  const unite = (why: string): Advice | null =>
    mayUnite(s, today, c) === null
      ? { action: 'unite', rule: ask.rule, why: `Only ${frameCount(few)}: ${why} ${DISEASE_FIRST}` }
      : null
  const boost = (why: string): Advice | null =>
    coldSeason(s.protocol, today)
      ? null
      : { action: 'boost', rule: ask.rule, why: `Only ${frameCount(few)}: ${why}` }
  switch (queen.is) {
    case 'laying':
    case 'queenright':
      return few < NUCLEUS_FRAMES
        ? unite(
            'too few to keep brood warm, even with a laying queen. Unite it with a queenright colony and keep the better queen, or add bees and a frame of capped brood.',
          )
        : boost(
            'a laying queen with a nucleus of bees. Add a frame of capped brood with its bees, feed, and keep it small; do not unite it.',
          )
    case 'present':
    case 'released':
      return boost(
        'a queen is here. Add a frame of capped brood with its bees and feed, and see first whether she lays.',
      )
    case 'rearing':
      return few < MATING_NUCLEUS_FRAMES
        ? unite(
            'too few to raise a queen well. Cut the queen cells, then unite it with a queenright colony, or add a frame of capped brood.',
          )
        : boost('enough for a virgin to mate from. Add a frame of capped brood now, before quiet time.')
    case 'unseen':
      // Whether there is a queen to save is asked first.
      return s.pending('telling-visit') !== undefined
        ? null
        : unite('and no queen is proven. Unite it with a queenright colony, or add a frame of capped brood.')
    case 'none':
      return unite('unite it with a queenright colony, or add a frame of capped brood.')
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
    return buyOrUnite(
      c,
      `A queen raised now would fly to mate about ${inWords(about)}, when queens do not mate here.`,
    )
  }
  if (queen.is !== 'rearing' || queen.assumed === true) return null
  const about = addDays(queen.emergence.likely, MATES_AFTER_EMERGENCE)
  if (
    matesOn(s.protocol, about) ||
    matesOn(s.protocol, addDays(queen.emergence.latest, MATES_AFTER_EMERGENCE))
  )
    return null
  return buyOrUnite(
    c,
    `She would fly to mate about ${inWords(about)}, when queens do not mate here. Cut the queen cells, or find the virgin and take her out.`,
  )
}

function buyOrUnite(c: Context, why: string): Advice | null {
  const { s, today } = c
  const weak = s.strength !== null && s.strength.frames < s.protocol.minFramesOfBees
  if ((weak || coldSeason(s.protocol, today)) && mayUnite(s, today, c) === null)
    return {
      action: 'unite',
      why: `${why} Unite it with a queenright colony on a mild day. ${DISEASE_FIRST}`,
    }
  if (mayBuy(s, today, c) !== null) return null
  return buy(c, `${why} Look for a virgin and for cells, then introduce a mated queen; or unite it.`)
}

/** A queen has to be there to go in. */
function buy({ supplies }: Context, why: string, rule?: 'buy-queen'): Advice {
  const lead = rule === undefined ? {} : { rule }
  if (supplies.queensInHand !== 0) return { action: 'buy-queen', ...lead, why }
  const days = supplies.daysUntilQueens
  return {
    action: 'order-queen',
    ...lead,
    why: `${why} None is in hand: order one today${days === undefined ? '' : `, she takes ${days} days to come`}.`,
  }
}

/** A frame of eggs as the next rung: a cure, and a test. */
const frameOfEggs: Adviser = (c) => {
  const { s, today, asked } = c
  const ask = asked('egg-frame')
  if (ask === undefined || barred(c) || s.queen.is === 'laying-workers') return null
  if (ask.insurance === true) return insurance(c)
  if (s.takeOut !== null && mayGive(s, today, c) === null)
    return { action: 'take-out-queen', rule: ask.rule, why: ask.why }
  const barredBy = mayGive(s, today, c)
  if (barredBy?.code === 'no-mating') return null
  if (barredBy !== null) return null
  if (c.supplies.eggFrames === 0)
    return mayBuy(s, today, c) === null
      ? buy(
          c,
          'No donor can spare a frame of eggs. Look for a virgin and for cells, then introduce a mated queen.',
        )
      : null
  const until = addDays(s.lastYoungBrood, TEST_FRAME_IGNORED_AFTER)
  if (today > until && s.otherQueen !== null) return { action: 'open-and-look', rule: ask.rule, why: ask.why }
  if (today > until)
    return buy(
      c,
      `More than a month without young brood: a frame of eggs may be ignored. Look for a virgin and for cells, then introduce a mated queen.`,
    )
  return { action: 'give-egg-frame', rule: ask.rule, until, why: `${ask.why}${castWords(c)}` }
}

const castWords = ({ s }: Context): string =>
  s.history.intake.removal.type === 'swarm' ? ' A swarm may have brought a virgin: look for one.' : ''

/** Where no layer is proven by about day 18 to 22: does a queen live here? Answered in four days. */
const insurance: Adviser = (c) => {
  const { s, today, asked } = c
  const ask = asked('egg-frame')
  if (ask === undefined || barred(c) || mayGive(s, today, c) !== null) return null
  const gently = isQuiet(today, c.quiet)
    ? ' Give it early or late in the day, gently: a virgin may be about.'
    : ''
  const until = addDays(s.lastYoungBrood, INSURED_UNTIL)
  return { action: 'give-egg-frame', rule: ask.rule, until, why: `${ask.why}${gently}` }
}

/** A bought queen, where raising one has failed; uniting, where that failed too and few bees are left. */
const boughtQueen: Adviser = (c) => {
  const { s, today, asked } = c
  const ask = asked('buy-queen')
  if (ask === undefined || barred(c)) return null
  if (s.takeOut !== null) return { action: 'take-out-queen', rule: ask.rule, why: ask.why }
  const twice = s.queen.is === 'none' && s.queen.failed === 'bought'
  const strong = s.strength?.counted === true && s.strength.frames >= s.protocol.minFramesOfBees
  if (twice && !strong && mayUnite(s, today, c) === null)
    return { action: 'unite', rule: 'unite-or-boost', why: s.pending('unite-or-boost')?.why ?? ask.why }
  const barredBy = mayBuy(s, today, c)
  if (barredBy !== null) return null
  return buy(c, ask.why, 'buy-queen')
}

/** In the order in which they are asked. */
export const LADDER: readonly Adviser[] = [layingWorkers, fewBees, outOfSeason, frameOfEggs, boughtQueen]
