/** Addresses of the round's pages. What was chosen travels in the address, so that "back" and a shared link do what they say. */

/** Which round one is on. */
export interface Where {
  /** Null: all yards. */
  yard: string | null
  /** "I have so many minutes"; null: the whole round, in stand order. */
  minutes: number | null
}

function query({ yard, minutes }: Where, more: Record<string, string> = {}): string {
  const q = new URLSearchParams({
    yard: yard ?? '',
    ...(minutes === null ? {} : { minutes: String(minutes) }),
    ...more,
  })
  return `?${q}`
}

export const roundPath = (where: Where): string => `/round${query(where)}`
export const boxPath = (where: Where, tag: string, more: Record<string, string> = {}): string =>
  `/round/box/${encodeURIComponent(tag)}${query(where, more)}`
export const endPath = (where: Where): string => `/round/end${query(where)}`

/** A form that, once saved, leads on to `then`. Only addresses on the round are followed. */
export const thenTo = (path: string, then: string | null): string =>
  then === null ? path : `${path}${path.includes('?') ? '&' : '?'}${new URLSearchParams({ then })}`
