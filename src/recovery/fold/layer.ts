/** A new layer proven: by eggs or open brood (laying), by capped worker brood (queenright); and a layer lost again. */

import {
  EMERGENCE_AFTER_LOSS_HARD,
  FIRST_EGG_AFTER_EMERGENCE_HARD,
  WORKER_EGG_LAID,
} from '../../biology/index.ts'
import { addDays, clamp, type Day, daysBetween, earlier, later, type Span } from '../../days.ts'
import type { Inspection } from '../../journal/index.ts'
import { matesOn } from '../protocol.ts'
import type { Reason } from '../says/said.ts'
import { horizonOf, type Source } from '../sources.ts'
import { expectedFirstEgg } from '../spans.ts'
import type { Layer, State } from '../state.ts'
import { fall } from './ladder.ts'

const ANSWERED_BY_EGGS = [
  'telling-visit',
  'recheck-eggs',
  'new-queen-eggs',
  'eggs-after-introduction',
] as const
const OVERTAKEN_BY_EGGS = ['egg-frame', 'buy-queen', 'cells-on-egg-frame'] as const

function settle(s: State, on: Day): void {
  s.answer(on, ...ANSWERED_BY_EGGS)
  s.takeOut = null
  s.otherQueen = null
  askAboutTheCage(s, on)
  for (const rule of OVERTAKEN_BY_EGGS) s.void(rule, on)
  if (s.doublesSince === null) s.void('laying-workers', on)
  s.testFrame = null
}

/** Eggs or open brood that no other source explains. `laidBy`: the last day on which the first egg can have been laid. */
export function layerProven(s: State, look: Inspection, laidBy: Day): void {
  const q = s.queen
  s.pausedSince = null
  if (q.is === 'laying' || q.is === 'queenright') {
    const fresh = q.is === 'laying' && !q.freshComb && look.onFreshComb === true
    s.queen = { ...q, lastSeen: look.on, ...(fresh ? { freshComb: true } : {}) } as typeof q
    if (fresh) reaskWorkerBrood(s)
    return
  }
  sayIfImpossible(s, laidBy)
  const firstEgg = firstEggSpan(s, laidBy)
  s.queen = {
    is: 'laying',
    firstSeen: look.on,
    lastSeen: look.on,
    freshComb: look.onFreshComb === true,
    firstEgg,
    layer: layerOf(s),
  }
  settle(s, look.on)
  askWorkerBrood(s, look.on, look.onFreshComb === true)
}

/** Eggs, and a cage nobody has looked into since: either she is out, or there are two queens. She is never forgotten. */
function askAboutTheCage(s: State, on: Day): void {
  const ask = s.pending('queen-release')
  if (s.caged === null || ask === undefined) return
  ask.why = { code: 'cage-and-eggs', since: s.caged.since, on }
}

function layerOf(s: State): Layer {
  const q = s.queen
  if (q.is === 'rearing') return 'raised'
  if (q.is === 'released' || q.is === 'caged') return q.origin === 'bought' ? 'bought' : 'own'
  return s.testFrame === null && s.sources.every((x) => x.from !== 'donor') ? 'own' : 'raised'
}

/** When the first egg was laid, as far as looks without eggs and what was expected allow. */
function firstEggSpan(s: State, laidBy: Day): Span {
  const expected = expectedFirstEgg(s)
  const from = expected?.earliest ?? addDays(s.lastOldEgg, 1)
  const earliest = s.lastNoEggs === null ? from : later(from, addDays(s.lastNoEggs, 1))
  const latest = expected === null ? laidBy : earlier(laidBy, expected.latest)
  const start = earliest <= latest ? earliest : addDays(latest, -WORKER_EGG_LAID.eggs.first)
  return { earliest: start, likely: clamp(expected?.likely ?? latest, start, latest), latest }
}

/** Eggs before the story so far allows them: said, with the likeliest explanations, and the eggs are believed. */
function sayIfImpossible(s: State, on: Day): void {
  const q = s.queen
  const first = FIRST_EGG_AFTER_EMERGENCE_HARD.earliest
  const expected = expectedFirstEgg(s)
  if (expected !== null && s.lastNoEggs !== null && on <= s.lastNoEggs && on < expected.earliest)
    s.surprises.push({ code: 'eggs-missed', by: on, none: s.lastNoEggs })
  if (q.is === 'rearing') {
    const possible = addDays(q.notBefore, first)
    if (on < possible) s.surprises.push({ code: 'eggs-before-possible', by: on, possible })
    return
  }
  const stillIn = q.is === 'caged' && q.stillCagedOn !== null && q.stillCagedOn >= addDays(on, -1)
  if (q.is === 'caged' && (on < addDays(q.since, 3) || stillIn)) {
    s.surprises.push({ code: 'eggs-while-caged', on, since: q.since })
    return
  }
  if (q.is !== 'none') return
  const start = s.testFrame?.given ?? (q.chance ? q.since : null)
  const possible = start === null ? null : addDays(start, EMERGENCE_AFTER_LOSS_HARD.earliest + first)
  if (possible !== null && on >= possible) return
  s.surprises.push({ code: 'eggs-though-queenless', by: on, because: q.why })
}

/** Worker brood is capped nine days after the egg; while old brood may still be capped, the window waits for it. */
export function askWorkerBrood(s: State, seenOn: Day, freshComb: boolean): void {
  const w = s.protocol.windows['worker-brood']
  const capped = horizonOf(s.sources).capped
  const opens = addDays(seenOn, w.opens)
  const from = freshComb || capped === null ? opens : later(opens, addDays(capped, 1))
  const why: Reason =
    from === opens
      ? { code: 'worker-caps', on: seenOn }
      : { code: 'worker-caps-later', on: seenOn, until: addDays(from, -1) }
  s.ask('worker-brood', from, why, { opens: 0, due: w.due - w.opens, closes: w.closes - w.opens })
}

/** The horizon has moved (a frame was given) or brood is on fresh comb: the same question, a new window. */
export function reaskWorkerBrood(s: State): void {
  const q = s.queen
  const pending = s.pending('worker-brood')
  if (q.is !== 'laying' || pending === undefined) return
  s.asks.splice(s.asks.indexOf(pending), 1)
  askWorkerBrood(s, q.firstSeen, q.freshComb)
}

/** Capped worker brood that no other source explains: a mated queen. */
export function queenProven(s: State, on: Day): void {
  const q = s.queen
  if (q.is === 'queenright') {
    s.queen = { ...q, lastSeen: on }
    return
  }
  const firstEgg = q.is === 'laying' ? q.firstEgg : firstEggSpan(s, addDays(on, -WORKER_EGG_LAID.capped.last))
  if (q.is !== 'laying') sayIfImpossible(s, addDays(on, -WORKER_EGG_LAID.capped.last))
  const layer = q.is === 'laying' ? q.layer : layerOf(s)
  if (s.pending('worker-brood') === undefined)
    askWorkerBrood(s, addDays(on, -WORKER_EGG_LAID.capped.last), true)
  s.queen = { is: 'queenright', provenOn: on, lastSeen: on, firstEgg, layer }
  s.doublesSince = null
  settle(s, on)
  s.answer(on, 'worker-brood')
}

/**
 * A layer that lays no more, as a source. A sighting is held against her up to the day of the look, lest she be taken for a
 * new one. But what was looked for and not found says that her last egg is older, and the risk of laying workers counts
 * from that. `seen`: the last look that found her brood.
 */
export function formerLayer(look: Inspection, seen: Day): Source {
  const none =
    look.eggs === 'none' ? (look.open === 'none' ? WORKER_EGG_LAID.open : WORKER_EGG_LAID.eggs) : null
  const youngUntil = none === null ? look.on : later(seen, addDays(look.on, -none.first - 1))
  return { from: 'former-layer', lastEgg: look.on, young: false, youngUntil }
}

/** A queen that has stopped is looked at again after seven to ten days, fed (common practice). */
const AFTER_PAUSE = { opens: 7, due: 8, closes: 10 }
/** Eggs seen so few days ago may all have hatched, but not have gone: then one of the two looks was wrong. */
const EGGS_HATCH = 3

/**
 * No eggs and no cells where a layer was proven. A pause is not a failure: with the queen seen, stores low or out of season
 * she is fed and looked at again; the ladder starts only after a second look, or with a frame of eggs, which is a test too.
 */
export function layerLost(s: State, look: Inspection): void {
  const q = s.queen
  if (q.is !== 'laying' && q.is !== 'queenright') return
  const { on } = look
  if (daysBetween(q.lastSeen, on) <= EGGS_HATCH && s.disagreeSince !== q.lastSeen) {
    s.disagree(on, { code: 'eggs-disagree', seen: q.lastSeen, on })
    return
  }
  if (!matesOn(s.protocol, on)) {
    s.pausedSince ??= on
    return
  }
  const hungry = s.stores?.level === 'low'
  if (s.pausedSince === null && (look.queen === 'seen' || hungry)) {
    s.pausedSince = on
    s.ask('look-again', on, { code: 'paused-queen', on, seen: look.queen === 'seen' }, AFTER_PAUSE)
    return
  }
  s.pausedSince = null
  s.void('look-again', on)
  s.sources.push(formerLayer(look, q.lastSeen))
  if (look.queen === 'seen') s.takeOut = on
  fall(s, on, [{ code: 'stopped-laying', about: q.lastSeen }], 'own')
}
