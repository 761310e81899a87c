/** Pages that a large yard, or a long past, makes long: those are made beside the requests, not between them. */

/** Longer with every colony in the yard. */
const OF_THE_YARD =
  /^\/($|yard$|round$|round\/end$|phone\/round$|paper$|labels$|sheet-entry$|supplies\/stands$)/

/** Longer with every colony there ever was: health with those that left, where a disease is suspected. */
const OF_THE_PAST =
  /^\/(review($|\/)|changes\/csv$|data\/export$|data\/colonies\/colonies\.csv$|yard-book($|\/)|letters$|supplies$|rates$|health$)/

/** The yard by a word or in another order: every colony that ever left is looked at. Else only a page of them. */
const YARD_OF_THE_PAST = /^\?(?=.*\bshow=(left|all)\b)(?=.*(\bfind=[^&]|\bsort=(next|day|tag)\b))/

/** Neither short nor long: one colony with its forecasts, the form of a visit, a page of changes. */
const BETWEEN = /^\/(colony\/[^/]+(\/visit)?|changes)$/

/** Colonies up to which a page is made at once: in less than 50 ms, as measured (tests/bench/README.md). */
const FEW = { inYard: 60, ever: 250 }

/** Whether the page takes a while even where it is not long, so that it had better wait for its turn. */
export const takesAWhile = (method: string, path: string): boolean =>
  method === 'GET' && (BETWEEN.test(path) || OF_THE_YARD.test(path) || OF_THE_PAST.test(path))

/** Whether the page is better made in the reading thread. */
export function isLong(
  method: string,
  path: string,
  size: () => { inYard: number; ever: number },
  search = '',
): boolean {
  if (method !== 'GET') return false
  const past = OF_THE_PAST.test(path) || (path === '/yard' && YARD_OF_THE_PAST.test(search))
  if (OF_THE_YARD.test(path) && !past) return size().inYard > FEW.inYard
  return past && (size().inYard > FEW.inYard || size().ever > FEW.ever)
}
