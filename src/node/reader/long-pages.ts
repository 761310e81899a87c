/** Pages that a large yard, or a long past, makes long: those are made beside the requests, not between them. */

/** Longer with every colony in the yard. */
const OF_THE_YARD =
  /^\/($|yard$|round$|round\/end$|phone\/round$|paper$|labels$|sheet-entry$|health$|supplies\/stands$)/

/** Longer with every colony there ever was. */
const OF_THE_PAST =
  /^\/(review($|\/)|changes\/csv$|data\/export$|data\/colonies\/colonies\.csv$|yard-book($|\/)|letters$|supplies$|rates$)/

/** Neither short nor long: one colony with its forecasts, a page of changes. */
const BETWEEN = /^\/(colony\/[^/]+|changes)$/

/** Colonies up to which a page is made at once: in less than 50 ms, as measured (tests/bench/README.md). */
const FEW = { inYard: 60, ever: 250 }

/** Whether the page takes a while even where it is not long, so that it had better wait for its turn. */
export const takesAWhile = (method: string, path: string): boolean =>
  method === 'GET' && (BETWEEN.test(path) || OF_THE_YARD.test(path) || OF_THE_PAST.test(path))

/** Whether the page is better made in the reading thread. */
export function isLong(method: string, path: string, size: () => { inYard: number; ever: number }): boolean {
  if (method !== 'GET') return false
  if (OF_THE_YARD.test(path)) return size().inYard > FEW.inYard
  return OF_THE_PAST.test(path) && (size().inYard > FEW.inYard || size().ever > FEW.ever)
}
