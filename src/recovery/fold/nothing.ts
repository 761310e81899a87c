/** Nothing new was proven: what "no eggs", "no cells" and "the queen was seen" mean in each story. */
import { FIRST_EGG_AFTER_EMERGENCE_HARD } from '../../biology/index.ts'
import { addDays, type Day, daysBetween, inWords } from '../../days.ts'
import type { Inspection } from '../../journal/index.ts'
import type { Rule } from '../plan-types.ts'
import type { Queen, State } from '../state.ts'
import { fall } from './ladder.ts'
import { layerLost } from './layer.ts'
import { cellsAway, noCells } from './look.ts'
import { seenOut } from './raise.ts'

export function nothingNew(s: State, look: Inspection): void {
  readTestFrame(s, look)
  const q = s.queen
  switch (q.is) {
    case 'unseen':
    case 'present':
      searched(s, look)
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
      // Eggs seen three days ago may have hatched; before that, "none" contradicts itself and is taken for a miss.
      const gone = look.eggs === 'none' && noCells(look) && look.open !== 'some' && look.open !== 'plenty'
      if (gone && daysBetween(q.lastSeen, look.on) > 3 && (q.is === 'laying' || look.open === 'none'))
        layerLost(s, look)
      return
    }
    default:
      return
  }
}

/** A look at brood that could not settle these questions. A visit with nothing noted has looked at nothing. */
function unsettled(s: State, look: Inspection, ...rules: Rule[]): void {
  const nothing = look.eggs === undefined && look.open === undefined && look.capped === undefined
  if (nothing && look.cells === undefined) return
  s.looked(look.on, ...rules)
}

/** The frame of eggs: no cells from the third day on means they behave as if they had a queen. */
function readTestFrame(s: State, look: Inspection): void {
  const frame = s.testFrame
  if (frame === null || frame.read !== null || look.cells === undefined) return
  if (look.on < addDays(frame.given, s.protocol.windows['cells-on-egg-frame'].opens)) return
  frame.read = 'none'
  s.passOver(look.on)
  s.answer(look.on, 'cells-on-egg-frame')
  // The frame has taken over its question; a look at eggs and cells answers both.
  if (look.eggs !== undefined) s.answer(look.on, 'telling-visit')
  else s.void('telling-visit', look.on)
  if (s.queen.is === 'none') s.queen = { is: 'unseen' }
  s.ask(
    'recheck-eggs',
    frame.given,
    `No queen cells on the frame of eggs given on ${inWords(frame.given)}: they behave as if they had a queen, mated or not. Are there eggs once the frame’s own are out of the way?`,
  )
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
    else fall(s, look.on, `no cells on the frame of eggs, and no eggs on ${inWords(look.on)}`, 'frame')
  } else if (telling !== undefined && look.on >= telling.opens && cellsAway(look)) {
    s.answer(look.on, 'telling-visit')
    if (noCells(look)) s.passOver(look.on)
    if (seen) lookAgain(s, look.on)
    else if (look.cells === 'torn-down') tornDown(s, look)
    else fall(s, look.on, `neither eggs nor queen cells on ${inWords(look.on)}`, 'own')
  } else unsettled(s, look, 'telling-visit', 'recheck-eggs')
}

/** She is here and does not lay yet: asked again, until she is too old to begin. */
function lookAgain(s: State, on: Day): void {
  const since = s.queen.is === 'present' ? s.queen.seenOn : on
  if (daysBetween(since, on) >= FIRST_EGG_AFTER_EMERGENCE_HARD.latest) {
    fall(s, on, `the queen seen since ${inWords(since)} has not laid. Find her and take her out`, 'raised')
    return
  }
  s.queen = { is: 'present', seenOn: since }
  s.ask('telling-visit', on, `The queen was seen on ${inWords(on)} but there were no eggs: does she lay now?`)
}

/** Taken for queenless. A queen seen after all ends that; "neither" at the first brood check ends the chance of their own brood. */
function taken(s: State, look: Inspection, q: Extract<Queen, { is: 'none' }>): void {
  if (look.queen === 'seen') {
    s.surprises.push(
      `A queen was seen on ${inWords(look.on)} in a colony taken for queenless (${q.why}). Likeliest: she was missed before, or a stray virgin came in; or it was a mistake.`,
    )
    for (const rule of ['egg-frame', 'buy-queen'] as const) s.void(rule, look.on)
    s.queen = { is: 'present', seenOn: look.on }
    lookAgain(s, look.on)
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

function whileRearing(s: State, look: Inspection, q: Extract<Queen, { is: 'rearing' }>): void {
  const ask = s.pending('new-queen-eggs')
  if (look.eggs === 'none' && ask !== undefined && look.on > ask.closes) {
    s.answer(look.on, 'new-queen-eggs')
    fall(
      s,
      look.on,
      `the queen raised here has not laid by ${inWords(look.on)}, after the last day to expect it`,
      'raised',
    )
    return
  }
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
