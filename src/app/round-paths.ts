/** Addresses of the round's pages. What was chosen travels in the address, so that "back" and a shared link do what they say. */

/** Which round one is on. */
export interface Where {
  /** Null: all yards. */
  yard: string | null
  /** 'HH:MM', when time is short: the most urgent first until then. Null: the whole round, from stand to stand. */
  until: string | null
}

function query({ yard, until }: Where, more: Record<string, string> = {}): string {
  const q = new URLSearchParams({
    yard: yard ?? '',
    ...(until === null ? {} : { until }),
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
