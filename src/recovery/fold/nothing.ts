/** Nothing new was proven: what "no eggs", "no cells" and "the queen was seen" mean in each story. */
import { CELLS_SHOW_AFTER } from '../../biology/index.ts'
import { addDays, type Day } from '../../days.ts'
import type { Inspection } from '../../journal/index.ts'
import { matesOn } from '../protocol.ts'
import { coldSeason } from '../season.ts'
import type { Queen, State } from '../state.ts'
import { fall } from './ladder.ts'
import { layerLost } from './layer.ts'
import { cellsAway, noCells } from './look.ts'
import { afterRelease, awaitVirgin, lookAgain, mayBeCast, unsettled } from './not-laying.ts'
import { seenOut } from './raise.ts'

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
  s.ask('look-again', look.on, { code: 'half-a-look', on: look.on })
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
  s.ask('recheck-eggs', frame.given, { code: 'no-cells-on-frame', on: frame.given })
}

/** A queen not seen, or seen and not laying: the first brood check, and the recheck after a test frame. */
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
    else fall(s, look.on, [{ code: 'test-frame-and-no-eggs', on: look.on }], 'frame')
  } else if (coldSeason(s.protocol, look.on)) {
    // No brood is nothing out of the ordinary now.
    unsettled(s, look, 'telling-visit', 'recheck-eggs')
  } else if (telling !== undefined && look.on >= telling.opens && cellsAway(look)) {
    s.answer(look.on, 'telling-visit')
    if (noCells(look)) s.passOver(look.on)
    if (mayBeCast(s)) awaitVirgin(s, look.on)
    else if (seen) lookAgain(s, look.on)
    else if (look.cells === 'torn-down') tornDown(s, look)
    else fall(s, look.on, [{ code: 'neither', on: look.on }], 'own')
  } else unsettled(s, look, 'telling-visit', 'recheck-eggs')
}

/** Taken for queenless. A queen seen after all ends that; "neither" at the telling visit ends the chance of their own brood. */
function taken(s: State, look: Inspection, q: Extract<Queen, { is: 'none' }>): void {
  // She that is to come out, and is there still.
  if (look.queen === 'seen' && s.takeOut !== null) return
  if (look.queen === 'seen') {
    s.surprises.push({ code: 'queen-though-queenless', on: look.on, because: q.why })
    for (const rule of ['egg-frame', 'buy-queen'] as const) s.void(rule, look.on)
    s.queen = { is: 'present', seenOn: look.on }
    lookAgain(s, look.on)
    return
  }
  if (q.chance && noBroodLeft(s, look) && s.testFrame === null) {
    s.answer(look.on, 'telling-visit')
    fall(s, look.on, [...q.why, { code: 'no-living-brood', on: look.on }], 'own')
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
    else fall(s, look.on, [...q.why, { code: 'no-cells', on: look.on }], 'own')
  } else unsettled(s, look, 'telling-visit')
}

const fromDonor = (s: State): boolean => s.sources.some((x) => x.from === 'donor')

/** No eggs after the last day on which the queen raised here was to lay: she failed. */
export function failedToLay(s: State, on: Day): boolean {
  const ask = s.pending('new-queen-eggs')
  if (ask === undefined || on <= ask.closes) return false
  s.answer(on, 'new-queen-eggs')
  fall(s, on, [{ code: 'raised-not-laying', on }], 'raised')
  return true
}

function whileRearing(s: State, look: Inspection, q: Extract<Queen, { is: 'rearing' }>): void {
  if (look.eggs === 'none' && failedToLay(s, look.on)) return
  unsettled(s, look, 'new-queen-eggs')
  if (look.queen === 'seen' && look.on < q.emergence.earliest)
    s.surprises.push({ code: 'queen-before-possible', on: look.on, earliest: q.emergence.earliest })
  const gone = cellsAway(look)
  if (!gone && look.queen !== 'seen') return
  if (look.on >= q.emergence.earliest) {
    seenOut(s, q, look.on)
    return
  }
  if (gone) cellsGone(s, look, look.on)
}

/** Cells were there and were torn down: some queen did it, hers or one that had left her cell. */
function tornDown(s: State, { on, queen }: Inspection, early = false): void {
  s.queen = queen === 'seen' ? { is: 'present', seenOn: on } : { is: 'unseen' }
  s.ask('recheck-eggs', on, { code: 'cells-torn-down', on, early }, { opens: 4, due: 6, closes: 10 })
}

/** The cells are gone before a virgin could leave one: torn down, so perhaps some queen is there; or simply lost. */
function cellsGone(s: State, look: Inspection, on: Day): void {
  s.void('new-queen-eggs', on)
  if (look.cells === 'torn-down' || look.queen === 'seen') {
    tornDown(s, look, true)
    return
  }
  if (look.eggs !== 'none') {
    s.queen = { is: 'unseen' }
    s.ask('recheck-eggs', on, { code: 'cells-were-gone', on }, { opens: 1, due: 3, closes: 7 })
    return
  }
  fall(s, on, [{ code: 'cells-gone', on }], fromDonor(s) ? 'frame' : 'own')
}
