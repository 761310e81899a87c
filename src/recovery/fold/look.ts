/** Readings of one inspection that several stories share. */
import type { Inspection } from '../../journal/index.ts'
import type { CellStage } from '../rearing.ts'

/** Looked for queen cells and found none, or empty cups, which mean nothing. */
export const noCells = (look: Inspection): boolean => look.cells === 'none' || look.cells === 'cups'

/** Looked for queen cells and found none that holds a queen: none at all, or torn down. */
export const cellsAway = (look: Inspection): boolean => noCells(look) || look.cells === 'torn-down'

/** The stage of cells that hold, or held, a queen. */
export const stageOf = (look: Inspection): CellStage | null =>
  look.cells === 'open' || look.cells === 'capped' || look.cells === 'emerged' ? look.cells : null
