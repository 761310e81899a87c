/** One question to the server, asked as a program asks: what came back, or why nothing of ours did. */

/** Milliseconds to wait for one answer. */
const PATIENCE_MS = 20_000

/** An answer, whoever gave it. */
export interface Heard {
  ok: boolean
  status: number
  /** Null where it is not JSON, or broke off. */
  body: unknown
}

export type Unheard =
  /** No answer came. */
  | 'no-answer'
  /** The session has ended: somebody has to sign in. */
  | 'sign-in'
  /** Another person is signed in by now. */
  | 'other-person'

export type Fetch = (path: string, init: RequestInit) => Promise<Response>

/** Asks. Never rejects. */
export async function ask(
  fetch: Fetch,
  path: string,
  init: RequestInit = {},
  patience = PATIENCE_MS,
): Promise<Heard | Unheard> {
  try {
    const response = await fetch(path, {
      ...init,
      headers: { ...init.headers, Accept: 'application/json' },
      redirect: 'error',
      cache: 'no-store',
      signal: AbortSignal.timeout(patience),
    })
    const body: unknown = await response.json().catch(() => null)
    if (response.status === 401) return 'sign-in'
    if (response.status === 409) return 'other-person'
    return { ok: response.ok, status: response.status, body }
  } catch {
    return 'no-answer'
  }
}
