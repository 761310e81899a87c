/** Amounts in Spanish. */
import type { units as English } from '../en/units.ts'

export const units: typeof English = {
  symbols: { 'US quarts': 'cuartos de galón', litres: 'litros', miles: 'millas' },
  one: { 'cuartos de galón': 'cuarto de galón', litros: 'litro', millas: 'milla' },
  noFrames: 'ningún cuadro',
  frame: 'cuadro',
  frames: 'cuadros',
}
