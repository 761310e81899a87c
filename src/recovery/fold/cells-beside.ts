/** Queen cells beside a queen that lays, or that came along with one: asked after by days, and quiet if they are capped. */

import type { Day } from '../../days.ts'
import type { Inspection } from '../../journal/index.ts'
import { emergenceFromCells } from '../rearing.ts'
import type { Reason } from '../says/said.ts'
import type { CellsBeside, State } from '../state.ts'
import { cellsAway } from './look.ts'

export function noteCellsBeside(s: State, cells: CellsBeside): void {
  const before = s.cellsBeside
  s.cellsBeside =
    before === null
      ? cells
      : { ...cells, emergence: before.stage === 'capped' ? before.emergence : cells.emergence }
  const { earliest: from, latest: to } = cells.emergence
  s.ask('cells-beside', cells.on, { code: 'what-of-the-cells', on: cells.on, from, to })
}

/** Cells beside a proven layer, or a queen who was seen. */
export function cellsBesideHer(s: State, look: Inspection, surprise: Reason): void {
  if (look.cells !== 'open' && look.cells !== 'capped') return
  s.surprises.push(surprise)
  const { span } = emergenceFromCells(look.cells, look.on, s.sources, look.on)
  noteCellsBeside(s, { on: look.on, stage: look.cells, count: look.cellCount ?? null, emergence: span })
}

/** Cut, torn down or hatched: nothing more is asked of them. Still there: asked again. */
export function cellsBesideGone(s: State, look: Inspection): void {
  if (s.cellsBeside === null || look.cells === undefined || look.on <= s.cellsBeside.on) return
  if (cellsAway(look) || look.cells === 'emerged') endCellsBeside(s, look.on)
  else if (look.cells === 'open' || look.cells === 'capped') {
    // Still there: answered for this time, and asked again.
    s.answer(look.on, 'cells-beside')
    noteCellsBeside(s, { ...s.cellsBeside, on: look.on, stage: look.cells, count: look.cellCount ?? null })
  }
}

function endCellsBeside(s: State, on: Day): void {
  s.answer(on, 'cells-beside')
  s.cellsBeside = null
}
