/**
 * Notices that the browser has thrown away what was kept. The database has a name of its own from when it was made; a
 * cookie, which browsers clear apart from it, remembers the name and how many entries were waiting.
 */
import type { PhoneState } from '../../src/parts/index.ts'
import { dropNote, showNote } from './phone-note.ts'

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
      label: 'I know',
      press: () => {
        remember(state)
        dropNote(EVICTED)
      },
    },
  })
}

/** What is to be said when entries were lost with the browser's store. */
export function lostWords(unsent: number, lastKept: string | null): string {
  if (unsent === 0)
    return 'This browser had cleared what this phone kept. Nothing was waiting to be sent; the round has been fetched again.'
  const when =
    lastKept === null ? '' : `, the last one of ${new Date(lastKept).toLocaleString('en-GB', AS_SAID)}`
  const what = unsent === 1 ? '1 entry that was' : `${unsent} entries that were`
  return unsent === 1
    ? `This browser has cleared what this phone had kept. ${what} not sent yet is lost${when}. Write it down again. ${SAFER}`
    : `This browser has cleared what this phone had kept. ${what} not sent yet are lost${when}. Write them down again. ${SAFER}`
}

const AS_SAID = {
  weekday: 'short',
  day: 'numeric',
  month: 'short',
  hour: '2-digit',
  minute: '2-digit',
} as const

const SAFER = 'On the home screen Resettle is safer from this.'

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
