/** From cells, or a cell or virgin given, to a queen being raised. */
import { EMERGENCE_AFTER_LOSS, EMERGENCE_AFTER_LOSS_HARD } from '../../biology/index.ts'
import { addDays, type Day, later } from '../../days.ts'
import { type CellStage, type Emergence, emergedBy, emergenceFromCells, narrowedByCells } from '../rearing.ts'
import type { Queen, State } from '../state.ts'
import { fall } from './ladder.ts'

type Rearing = Extract<Queen, { is: 'rearing' }>

export function startRearing(
  s: State,
  from: Emergence,
  stage: CellStage,
  on: Day,
  assumed: { assumed?: true } = {},
): void {
  if (from.surprise !== null) s.surprises.push(from.surprise)
  s.queen = {
    is: 'rearing',
    emergence: from.span,
    notBefore: from.notBefore,
    firstSeen: on,
    stage,
    emerged: stage === 'emerged',
    ...assumed,
  }
  for (const rule of ['egg-frame', 'buy-queen', 'recheck-eggs', 'laying-workers'] as const) s.void(rule, on)
  s.testFrame = null
  s.takeOut = null
  s.otherQueen = null
  askNewQueenEggs(s)
}

/** The window follows the emergence span: likely +12, four days later, latest +21. */
function askNewQueenEggs(s: State): void {
  if (s.queen.is !== 'rearing') return
  const { emergence } = s.queen
  const w = s.protocol.windows['new-queen-eggs']
  const ask = s.ask('new-queen-eggs', emergence.likely, {
    code: 'new-queen',
    from: emergence.earliest,
    to: emergence.latest,
  })
  ask.closes = later(ask.due, addDays(emergence.latest, w.closes))
}

/** A newer sighting moves the span; the question moves with it. */
function respan(
  s: State,
  queen: Rearing,
  emergence: Rearing['emergence'],
  changes: Partial<Rearing> = {},
): void {
  s.queen = { ...queen, ...changes, emergence }
  const old = s.pending('new-queen-eggs')
  if (old === undefined) return
  s.asks.splice(s.asks.indexOf(old), 1)
  askNewQueenEggs(s)
  const fresh = s.pending('new-queen-eggs')
  if (fresh !== undefined) fresh.lookedOn = old.lookedOn
}

const ORDER: Record<CellStage, number> = { open: 0, capped: 1, emerged: 2 }

/** Cells on a frame of eggs that was given while a queen was awaited: she is not there, and these are the next. */
function fromTestFrame(s: State, stage: CellStage, on: Day): boolean {
  const frame = s.testFrame
  if (frame === null || frame.read !== null || on <= frame.given) return false
  const given = s.sources.filter((x) => x.from === 'donor' && x.lastEgg === frame.given)
  s.answer(on, 'cells-on-egg-frame')
  startRearing(s, emergenceFromCells(stage, on, given, null), stage, on)
  return true
}

/** A cell still sealed after the last day on which a queen can have left it, and nothing young was added since. */
function deadCells(s: State, queen: Rearing, stage: CellStage, on: Day): boolean {
  const slack = EMERGENCE_AFTER_LOSS_HARD.latest - EMERGENCE_AFTER_LOSS.latest
  if (stage !== 'capped' || queen.emerged || on <= addDays(queen.emergence.latest, slack)) return false
  const young = s.sources.some((x) => x.young && addDays(x.lastEgg, EMERGENCE_AFTER_LOSS_HARD.latest) >= on)
  if (young) return false
  s.surprises.push({ code: 'cell-dead', on, last: addDays(queen.emergence.latest, slack) })
  s.answer(on, 'new-queen-eggs')
  fall(s, on, [{ code: 'cells-dead', on }], 'own')
  return true
}

/** Cells seen again while a queen is being raised. Younger cells beside the ones known change nothing. */
export function moreCells(s: State, queen: Rearing, stage: CellStage, on: Day): void {
  if (fromTestFrame(s, stage, on)) return
  if (ORDER[stage] < ORDER[queen.stage] || (queen.emerged && stage !== 'emerged')) return
  if (deadCells(s, queen, stage, on)) return
  const next = narrowedByCells(queen.emergence, stage, on, s.sources)
  if (next.surprise !== null) s.surprises.push(next.surprise)
  const notBefore = next.surprise === null ? later(queen.notBefore, next.notBefore) : next.notBefore
  respan(s, queen, next.span, { notBefore, stage, emerged: queen.emerged || stage === 'emerged' })
}

/** She was seen walking, or her cells are gone after she could have left one. */
export function seenOut(s: State, queen: Rearing, on: Day): void {
  if (on < queen.emergence.earliest || on >= queen.emergence.latest) return
  respan(s, queen, emergedBy(queen.emergence, on))
}
