/** Nothing new was proven: what "no eggs", "no cells" and "the queen was seen" mean in each story. */
import {
  CELLS_SHOW_AFTER,
  EMERGENCE_AFTER_LOSS,
  FIRST_EGG_AFTER_EMERGENCE_HARD,
} from '../../biology/index.ts'
import { addDays, type Day, daysBetween, inWords } from '../../days.ts'
import type { Inspection } from '../../journal/index.ts'
import type { Rule } from '../plan-types.ts'
import { matesOn } from '../protocol.ts'
import { emergence, emergenceOfGivenVirgin } from '../rearing.ts'
import { coldSeason } from '../season.ts'
import type { Queen, State } from '../state.ts'
import { fall } from './ladder.ts'
import { layerLost } from './layer.ts'
import { cellsAway, noCells } from './look.ts'
import { seenOut, startRearing } from './raise.ts'

export function nothingNew(s: State, look: Inspection): void {
  readTestFrame(s, look)
  const q = s.queen
  switch (q.is) {
    case 'unseen':
    case 'present':
      searched(s, look)
      noBroodLeft(s, look)
      return
    case 'none':
      taken(s, look, q)
      return
    case 'released':
      afterRelease(s, look, q)
      return
    case 'rearing':
      whileRearing(s, look, q)
      return
    case 'laying':
    case 'queenright': {
      const gone = look.eggs === 'none' && noCells(look) && look.open !== 'some' && look.open !== 'plenty'
      if (gone && (q.is === 'laying' || look.open === 'none')) layerLost(s, look)
      else if (
        look.eggs === 'none' &&
        look.cells === undefined &&
        look.open !== 'some' &&
        look.open !== 'plenty'
      )
        halfALook(s, look)
      return
    }
    default:
      return
  }
}

/** No eggs where a queen lays, and nobody said whether there are cells: that decides it, and somebody has to look. */
function halfALook(s: State, look: Inspection): void {
  if (!matesOn(s.protocol, look.on) || s.pending('look-again') !== undefined) return
  s.ask(
    'look-again',
    look.on,
    `No eggs on ${inWords(look.on)} in a colony whose queen lays, and nothing was said of queen cells. Are there eggs now, and are there cells?`,
  )
}

/** A look at brood that could not settle these questions. A visit with nothing noted has looked at nothing. */
function unsettled(s: State, look: Inspection, ...rules: Rule[]): void {
  const nothing = look.eggs === undefined && look.open === undefined && look.capped === undefined
  if (nothing && look.cells === undefined) return
  s.looked(look.on, ...rules)
}

/** The brood that came along is dead, dried or eaten: no queen can come of it, and no cells need be awaited. */
function noBroodLeft(s: State, look: Inspection): boolean {
  if (look.eggs !== 'none' || look.open !== 'none' || !cellsAway(look)) return false
  // Later on, cells may have been begun on it and missed.
  for (const source of s.sources)
    if (source.from === 'old-queen' && look.on < addDays(source.lastEgg, CELLS_SHOW_AFTER))
      source.young = false
  return true
}

/** The frame of eggs: no cells from the third day on means they behave as if they had a queen. */
export function readTestFrame(s: State, look: Inspection): void {
  const frame = s.testFrame
  if (frame === null || frame.read !== null || look.cells === undefined) return
  if (look.on < addDays(frame.given, s.protocol.windows['cells-on-egg-frame'].opens)) return
  frame.read = 'none'
  s.passOver(look.on)
  s.answer(look.on, 'cells-on-egg-frame')
  // The frame has taken over its question; a look at eggs and cells answers both.
  if (look.eggs !== undefined) s.answer(look.on, 'telling-visit')
  else s.void('telling-visit', look.on)
  // A queen awaited, or laying workers, are asked about by their own days.
  if (s.queen.is === 'rearing' || s.queen.is === 'laying-workers') return
  if (s.queen.is === 'none') s.queen = { is: 'unseen' }
  s.ask(
    'recheck-eggs',
    frame.given,
    `No queen cells on the frame of eggs given on ${inWords(frame.given)}: they behave as if they had a queen, mated or not. Are there eggs once the frame’s own are out of the way?`,
  )
}

/** A queen not seen, or seen and not laying: the telling visit, and the recheck after a test frame. */
function searched(s: State, look: Inspection): void {
  const recheck = s.pending('recheck-eggs')
  const telling = s.pending('telling-visit')
  const seen = look.queen === 'seen'
  if (seen && s.queen.is === 'unseen') s.queen = { is: 'present', seenOn: look.on }
  if (look.eggs !== 'none') {
    unsettled(s, look, 'telling-visit', 'recheck-eggs')
    return
  }
  if (recheck !== undefined && look.on >= recheck.opens) {
    s.answer(look.on, 'recheck-eggs')
    if (seen) lookAgain(s, look.on)
    else fall(s, look.on, `no cells on the frame of eggs, and no eggs on ${inWords(look.on)}`, 'frame')
  } else if (coldSeason(s.protocol, look.on)) {
    // No brood is nothing out of the ordinary now.
    unsettled(s, look, 'telling-visit', 'recheck-eggs')
  } else if (telling !== undefined && look.on >= telling.opens && cellsAway(look)) {
    s.answer(look.on, 'telling-visit')
    if (noCells(look)) s.passOver(look.on)
    if (mayBeCast(s)) awaitVirgin(s, look.on)
    else if (seen) lookAgain(s, look.on)
    else if (look.cells === 'torn-down') tornDown(s, look)
    else fall(s, look.on, `neither eggs nor queen cells on ${inWords(look.on)}`, 'own')
  } else unsettled(s, look, 'telling-visit', 'recheck-eggs')
}

/**
 * A swarm without brood may have brought a virgin, unless somebody knows its queen by a mark or a clipped wing: "no cells" says
 * nothing of it, and she has her weeks.
 */
function mayBeCast(s: State): boolean {
  const { intake } = s.history
  const known = intake.queenMarked === true || intake.queenClipped === true || intake.queen === 'caged'
  return intake.removal.type === 'swarm' && !known && s.sources.every((x) => !x.young)
}

function awaitVirgin(s: State, on: Day): void {
  s.surprises.push(
    `No eggs on ${inWords(on)}, and no brood came with the swarm: it may have brought a virgin, and then no cells say nothing. Keep the lid on while she flies.`,
  )
  startRearing(s, emergence(emergenceOfGivenVirgin(s.lastOldEgg), null), 'emerged', on, { assumed: true })
}

/** A queen that laid until the removal and has not begun again by so many days after it is finished (common practice: 10-14). */
const BEGINS_AGAIN_BY = 12

/** Days out of the cage a queen of their own is given before she is called finished (common practice). */
const OUT_AT_LEAST = 7

const isFinished = (s: State, look: Inspection, q: Extract<Queen, { is: 'released' }>): boolean =>
  q.origin === 'salvaged' &&
  look.queen !== undefined &&
  cellsAway(look) &&
  daysBetween(s.lastOldEgg, look.on) >= BEGINS_AGAIN_BY &&
  daysBetween(q.on, look.on) >= OUT_AT_LEAST

/** She laid until the removal and has not begun again: seen or not, she is replaced. */
function finished(s: State, on: Day, seen: boolean): void {
  if (seen) s.takeOut = on
  const days = daysBetween(s.lastOldEgg, on)
  const who = seen ? `was seen on ${inWords(on)}, has laid` : 'laid until the removal and has laid'
  const out = seen ? '. Find her and take her out' : ''
  fall(s, on, `the queen ${who} nothing in the ${days} days since, and is finished${out}`, 'own')
}

/** Known as the queen that laid before the removal: no virgin can have been out so early. */
const isTheOldQueen = (s: State, since: Day): boolean =>
  !mayBeCast(s) && since < addDays(s.lastOldEgg, EMERGENCE_AFTER_LOSS.earliest)

/** She is here and does not lay yet: asked again, until she is too old to begin. */
function lookAgain(s: State, on: Day): void {
  const since = s.queen.is === 'present' ? s.queen.seenOn : on
  if (isTheOldQueen(s, since) && daysBetween(s.lastOldEgg, on) >= BEGINS_AGAIN_BY) {
    finished(s, on, true)
    return
  }
  if (daysBetween(since, on) >= FIRST_EGG_AFTER_EMERGENCE_HARD.latest) {
    s.takeOut = on
    fall(s, on, `the queen seen since ${inWords(since)} has not laid. Find her and take her out`, 'raised')
    return
  }
  s.queen = { is: 'present', seenOn: since }
  s.ask('telling-visit', on, `The queen was seen on ${inWords(on)} but there were no eggs: does she lay now?`)
}

/** Taken for queenless. A queen seen after all ends that; "neither" at the telling visit ends the chance of their own brood. */
function taken(s: State, look: Inspection, q: Extract<Queen, { is: 'none' }>): void {
  // She that is to come out, and is there still.
  if (look.queen === 'seen' && s.takeOut !== null) return
  if (look.queen === 'seen') {
    s.surprises.push(
      `A queen was seen on ${inWords(look.on)} in a colony taken for queenless (${q.why}). Likeliest: she was missed before, or a stray virgin came in; or it was a mistake.`,
    )
    for (const rule of ['egg-frame', 'buy-queen'] as const) s.void(rule, look.on)
    s.queen = { is: 'present', seenOn: look.on }
    lookAgain(s, look.on)
    return
  }
  if (q.chance && noBroodLeft(s, look) && s.testFrame === null) {
    s.answer(look.on, 'telling-visit')
    fall(s, look.on, `${q.why}, and no living young brood was left on ${inWords(look.on)}`, 'own')
    return
  }
  if (s.otherQueen !== null && look.eggs === 'none' && cellsAway(look)) {
    // Looked for, and not found: a frame of eggs is what tells now.
    s.otherQueen = null
    return
  }
  const telling = s.pending('telling-visit')
  if (!q.chance || telling === undefined || look.on < telling.opens) return
  if (look.eggs === 'none' && cellsAway(look)) {
    s.answer(look.on, 'telling-visit')
    if (noCells(look)) s.passOver(look.on)
    if (look.cells === 'torn-down') tornDown(s, look)
    else fall(s, look.on, `${q.why}, and no queen cells on ${inWords(look.on)}`, 'own')
  } else unsettled(s, look, 'telling-visit')
}

function afterRelease(s: State, look: Inspection, q: Extract<Queen, { is: 'released' }>): void {
  const ask = s.pending('eggs-after-introduction')
  if (ask === undefined || look.eggs !== 'none') {
    unsettled(s, look, 'eggs-after-introduction')
    return
  }
  if (isFinished(s, look, q)) {
    s.answer(look.on, 'eggs-after-introduction')
    finished(s, look.on, look.queen === 'seen')
    return
  }
  if (look.on < ask.closes) {
    unsettled(s, look, 'eggs-after-introduction')
    return
  }
  s.answer(look.on, 'eggs-after-introduction')
  if (look.queen === 'seen' && q.asked < 2) {
    s.queen = { ...q, asked: q.asked + 1 }
    s.ask(
      'eggs-after-introduction',
      look.on,
      `She was seen on ${inWords(look.on)} but has not laid yet: does she now?`,
    )
    return
  }
  const whose = q.origin === 'bought' ? 'the bought queen' : 'her queen'
  fall(
    s,
    look.on,
    `${whose} was let out on ${inWords(q.on)} and no eggs by ${inWords(look.on)}`,
    q.origin === 'bought' ? 'bought' : 'own',
  )
}

const fromDonor = (s: State): boolean => s.sources.some((x) => x.from === 'donor')

/** No eggs after the last day on which the queen raised here was to lay: she failed. */
export function failedToLay(s: State, on: Day): boolean {
  const ask = s.pending('new-queen-eggs')
  if (ask === undefined || on <= ask.closes) return false
  s.answer(on, 'new-queen-eggs')
  fall(
    s,
    on,
    `the queen raised here has not laid by ${inWords(on)}, after the last day to expect it`,
    'raised',
  )
  return true
}

function whileRearing(s: State, look: Inspection, q: Extract<Queen, { is: 'rearing' }>): void {
  if (look.eggs === 'none' && failedToLay(s, look.on)) return
  unsettled(s, look, 'new-queen-eggs')
  if (look.queen === 'seen' && look.on < q.emergence.earliest)
    s.surprises.push(
      `A queen was seen on ${inWords(look.on)}, before the one being raised can emerge (${inWords(q.emergence.earliest)}). Likeliest: the old queen is still there; or another cell was further on.`,
    )
  const gone = cellsAway(look)
  if (!gone && look.queen !== 'seen') return
  if (look.on >= q.emergence.earliest) {
    seenOut(s, q, look.on)
    return
  }
  if (gone) cellsGone(s, look, look.on)
}

/** Cells were there and were torn down: some queen did it, hers or one that had left her cell. */
function tornDown(s: State, { on, queen }: Inspection, when = ''): void {
  s.queen = queen === 'seen' ? { is: 'present', seenOn: on } : { is: 'unseen' }
  const why = `The queen cells were torn down by ${inWords(on)}${when}: some queen may be there. Eggs?`
  s.ask('recheck-eggs', on, why, { opens: 4, due: 6, closes: 10 })
}

/** The cells are gone before a virgin could leave one: torn down, so perhaps some queen is there; or simply lost. */
function cellsGone(s: State, look: Inspection, on: Day): void {
  s.void('new-queen-eggs', on)
  if (look.cells === 'torn-down' || look.queen === 'seen') {
    tornDown(s, look, ', before one could emerge')
    return
  }
  if (look.eggs !== 'none') {
    s.queen = { is: 'unseen' }
    const why = `The queen cells were gone on ${inWords(on)}, before one could emerge. Eggs?`
    s.ask('recheck-eggs', on, why, { opens: 1, due: 3, closes: 7 })
    return
  }
  fall(
    s,
    on,
    `the queen cells were gone on ${inWords(on)}, before one could emerge, and there were no eggs`,
    fromDonor(s) ? 'frame' : 'own',
  )
}
