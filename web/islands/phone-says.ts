/** Puts what the worker reports onto the page: in the phone's own line where there is one, else in a note. */
import { clockWords, type PhoneState, waitingWords } from '../../src/parts/index.ts'
import { dropNote, showNote } from './phone-note.ts'

const WAITING = 1
/** Said before what waits and before a newer version, but not before what was lost. */
const CLOCK = 2.5

export function showState(state: PhoneState): void {
  const line = document.getElementById('phone-line')
  if (line !== null) inLine(line, state)
  else inNote(state)
  showFacts(state)
  showReady(state)
  showClock(state)
}

/** On Today: whether one can walk away from the signal now. */
function showReady({ fetchedAt, boxes }: PhoneState): void {
  const ready = document.getElementById('phone-ready')
  if (ready !== null && fetchedAt !== null && boxes > 0)
    ready.textContent = `${boxes === 1 ? '1 box' : `${boxes} boxes`} on this phone, ready without signal.`
}

/** Where the page was made by the server; the phone's own says it in its line. */
function showClock({ clock }: PhoneState): void {
  if (clock === null || document.querySelector('.phone-clock') !== null) dropNote(CLOCK)
  else
    showNote({
      weight: CLOCK,
      words: clockWords(clock),
      way: { label: 'I see', press: () => dropNote(CLOCK) },
    })
}

function inLine(line: HTMLElement, state: PhoneState): void {
  const waiting = document.getElementById('phone-waiting')
  const words = waitingWords(state)
  if (waiting !== null) waiting.textContent = words ?? 'All sent'
  else if (words !== null) line.prepend(link('/outbox', words, 'phone-waiting'))
  const when = document.getElementById('phone-when')
  if (when === null) return
  if (state.signIn)
    when.replaceChildren(
      link(
        `/sign-in?to=${encodeURIComponent(location.pathname)}`,
        words === null ? 'Sign in again' : 'Sign in to send',
      ),
    )
  else if (state.newsAt > (line.dataset.news ?? '') && document.getElementById('entry-form') === null)
    when.replaceChildren(link(location.href, 'Newer entries came in: show them'))
}

function inNote(state: PhoneState): void {
  const words = waitingWords(state)
  const said = location.pathname.startsWith('/outbox') || document.getElementById('sign-out-warning') !== null
  if (words === null || said) dropNote(WAITING)
  else if (state.signIn && !('signedIn' in document.body.dataset))
    showNote({
      weight: WAITING,
      words: `${words}: sign in, and they go.`,
      way: { label: 'Sign in', href: '/sign-in' },
    })
  else showNote({ weight: WAITING, words, way: { label: 'Show them', href: '/outbox' } })
}

function link(href: string, words: string, name = ''): HTMLAnchorElement {
  const a = document.createElement('a')
  a.href = href
  a.textContent = words
  if (name !== '') {
    a.className = name
    a.id = name
  }
  return a
}

/** On the page about working without signal: what this browser does about it. */
function showFacts(state: PhoneState): void {
  const facts = document.getElementById('phone-facts')
  if (facts === null) return
  void navigator.storage.persisted().then((promised) => {
    const round =
      state.fetchedAt === null
        ? 'The round is not on this phone yet: open Today with signal.'
        : `This phone has the round as of ${new Date(state.fetchedAt).toLocaleString('en-GB', AS_SAID)}.`
    const room = promised
      ? 'The browser has promised to keep it.'
      : 'The browser may clear it out when it is short of room; on the home screen it is safer.'
    facts.textContent = `${round} ${room}`
  })
}

const AS_SAID = {
  weekday: 'short',
  day: 'numeric',
  month: 'short',
  hour: '2-digit',
  minute: '2-digit',
} as const
