/** Queen cells beside a queen that lays, or that came along with one: asked after by days, and quiet if they are capped. */

import { type Day, inWords } from '../../days.ts'
import type { Inspection } from '../../journal/index.ts'
import { emergenceFromCells } from '../rearing.ts'
import type { CellsBeside, State } from '../state.ts'
import { cellsAway } from './look.ts'

export function noteCellsBeside(s: State, cells: CellsBeside): void {
  const before = s.cellsBeside
  s.cellsBeside =
    before === null
      ? cells
      : { ...cells, emergence: before.stage === 'capped' ? before.emergence : cells.emergence }
  s.ask(
    'cells-beside',
    cells.on,
    `What became of the queen cells seen on ${inWords(cells.on)}? Left alone, a virgin comes out between ${inWords(cells.emergence.earliest)} and ${inWords(cells.emergence.latest)} and the queen is replaced, or they swarm. Cut them all, or leave one, and write down which.`,
  )
}

/** Cells beside a proven layer, or a queen who was seen. */
export function cellsBesideHer(s: State, look: Inspection, words: string): void {
  if (look.cells !== 'open' && look.cells !== 'capped') return
  s.surprises.push(words)
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
