/** From cells, or a cell or virgin given, to a queen being raised. */
import { addDays, type Day, inWords, later } from '../../days.ts'
import { type CellStage, type Emergence, emergedBy, firstEggAfter, narrowedByCells } from '../rearing.ts'
import type { Queen, State } from '../state.ts'

type Rearing = Extract<Queen, { is: 'rearing' }>

export function startRearing(s: State, from: Emergence, stage: CellStage, on: Day): void {
  if (from.surprise !== null) s.surprises.push(from.surprise)
  s.queen = {
    is: 'rearing',
    emergence: from.span,
    notBefore: from.notBefore,
    firstSeen: on,
    stage,
    emerged: stage === 'emerged',
  }
  for (const rule of ['egg-frame', 'buy-queen', 'recheck-eggs', 'laying-workers'] as const) s.void(rule, on)
  s.testFrame = null
  askNewQueenEggs(s)
}

/** The window follows the emergence span: likely +12, four days later, latest +21. */
function askNewQueenEggs(s: State): void {
  if (s.queen.is !== 'rearing') return
  const { emergence } = s.queen
  const w = s.protocol.windows['new-queen-eggs']
  const ask = s.ask(
    'new-queen-eggs',
    emergence.likely,
    `Eggs of the new queen? She emerges between ${inWords(emergence.earliest)} and ${inWords(emergence.latest)}, then needs 8 to 21 days to mature, mate and lay. None after the last day: she failed.`,
  )
  ask.closes = later(ask.due, addDays(emergence.latest, w.closes))
}

/** A newer sighting moves the span; the question moves with it. */
export function respan(
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

/** Cells seen again while a queen is being raised. Younger cells beside the ones known change nothing. */
export function moreCells(s: State, queen: Rearing, stage: CellStage, on: Day): void {
  if (ORDER[stage] < ORDER[queen.stage] || (queen.emerged && stage !== 'emerged')) return
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

/** Last day on which the first egg of the queen being raised is still expected. */
export const lastFirstEgg = (queen: Rearing): Day => firstEggAfter(queen.emergence).latest
