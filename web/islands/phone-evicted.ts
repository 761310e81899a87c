/**
 * Notices that the browser has thrown away what was kept. The database has a name of its own from when it was made; a
 * cookie, which browsers clear apart from it, remembers the name and how many entries were waiting.
 */
import type { PhoneState } from '../../src/parts/index.ts'
import { dropNote, showNote } from './phone-note.ts'
import { momentSaid, words } from './words.ts'

const COOKIE = 'resettle_phone'
const YEAR = 365 * 86_400
const EVICTED = 3

export function watchForEviction(state: PhoneState): void {
  const before = remembered()
  if (before === null || before.birth === state.birth) {
    remember(state)
    return
  }
  showNote({
    weight: EVICTED,
    words: lostWords(before.unsent, before.lastKept),
    way: {
      label: words.islands.iKnow,
      press: () => {
        remember(state)
        dropNote(EVICTED)
      },
    },
  })
}

/** What is to be said when entries were lost with the browser's store. */
export function lostWords(unsent: number, lastKept: string | null): string {
  const { cleared, clearedNothing } = words.islands
  if (unsent === 0) return clearedNothing
  return cleared(unsent, lastKept === null ? null : momentSaid(lastKept))
}

interface Remembered {
  birth: string
  unsent: number
  lastKept: string | null
}

function remembered(): Remembered | null {
  const value = document.cookie
    .split('; ')
    .find((c) => c.startsWith(`${COOKIE}=`))
    ?.slice(COOKIE.length + 1)
  if (value === undefined) return null
  const [birth = '', unsent = '0', lastKept = ''] = decodeURIComponent(value).split('|')
  return { birth, unsent: Number(unsent) || 0, lastKept: lastKept || null }
}

function remember({ birth, waiting, refused, lastKept }: PhoneState): void {
  const value = encodeURIComponent([birth, waiting + refused, lastKept ?? ''].join('|'))
  const secure = location.protocol === 'https:' ? '; Secure' : ''
  // biome-ignore lint/suspicious/noDocumentCookie: the other way to set one is not in every browser yet
  document.cookie = `${COOKIE}=${value}; Path=/; Max-Age=${YEAR}; SameSite=Lax${secure}`
}
