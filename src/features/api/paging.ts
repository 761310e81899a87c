/** Pages of a list: an opaque cursor in the body and a Link header (RFC 8288). */
import { USUAL_ITEMS } from './operations.ts'

export interface Paging {
  limit?: number | undefined
  cursor?: string | undefined
}

export interface Page<T> {
  items: T[]
  /** Where the next page begins; null on the last one. */
  next: string | null
}

export const limitOf = ({ limit }: Paging): number => limit ?? USUAL_ITEMS

/** What a cursor stands for is ours to change: programs only hand it back. */
const cursorOf = (key: string): string => Buffer.from(`1:${key}`).toString('base64url')

/** The key in a cursor; null when it is none of ours. */
export function keyIn(cursor: string): string | null {
  const text = Buffer.from(cursor, 'base64url').toString('utf8')
  return text.startsWith('1:') && cursorOf(text.slice(2)) === cursor ? text.slice(2) : null
}

/** A page out of a list in rising order of its keys: those after the cursor. */
export function pageAfter<T>(items: readonly T[], keyOf: (item: T) => string, paging: Paging): Page<T> {
  const key = paging.cursor === undefined ? null : keyIn(paging.cursor)
  const rest = key === null ? items : items.filter((item) => keyOf(item) > key)
  return pageOf(rest, keyOf, limitOf(paging))
}

/** The first `limit` of what is left. */
export function pageOf<T>(rest: readonly T[], keyOf: (item: T) => string, limit: number): Page<T> {
  const items = rest.slice(0, limit)
  const last = items.at(-1)
  return { items, next: rest.length > limit && last !== undefined ? cursorOf(keyOf(last)) : null }
}

/** The Link header of a page. `url`: the request's own. */
export function linkHeader(url: URL, next: string | null): string {
  const at = (cursor: string | null): string => {
    const to = new URL(url)
    if (cursor === null) to.searchParams.delete('cursor')
    else to.searchParams.set('cursor', cursor)
    return `<${to}>`
  }
  return [...(next === null ? [] : [`${at(next)}; rel="next"`]), `${at(null)}; rel="first"`].join(', ')
}
