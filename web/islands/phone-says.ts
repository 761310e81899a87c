/** Puts what the worker reports onto the page: in the phone's own line where there is one, else in a note. */
import { clockWords, type PhoneState, waitingWords } from '../../src/parts/index.ts'
import { dropNote, showNote } from './phone-note.ts'
import { momentSaid, words } from './words.ts'

const WAITING = 1
/** Said before what waits and before a newer version, but not before what was lost. */
const CLOCK = 2.5
/** Before everything else. */
const KILLS = 4

export function showState(state: PhoneState): void {
  const line = document.getElementById('phone-line')
  if (line !== null) inLine(line, state)
  else inNote(state)
  showFacts(state)
  showReady(state)
  showClock(state)
  showKills(state)
}

/** Where the page was made by the server, the sign-in page too; the phone’s own says it in its line. */
function showKills({ kills = [] }: PhoneState): void {
  const said = kills.map((k) => words.phone.kills(k)).join(' ')
  if (said === '' || document.querySelector('.phone-kills') !== null) dropNote(KILLS)
  else
    showNote({
      weight: KILLS,
      alarm: true,
      words: said,
      way: { label: words.islands.showThem, href: '/outbox' },
    })
}

/** On Today: whether one can walk away from the signal now. */
function showReady({ fetchedAt, boxes }: PhoneState): void {
  const ready = document.getElementById('phone-ready')
  if (ready !== null && fetchedAt !== null && boxes > 0) ready.textContent = words.today.ready(boxes)
}

/** Where the page was made by the server; the phone's own says it in its line. */
function showClock({ clock }: PhoneState): void {
  if (clock === null || document.querySelector('.phone-clock') !== null) dropNote(CLOCK)
  else
    showNote({
      weight: CLOCK,
      words: clockWords(clock, words),
      way: { label: words.islands.iSee, press: () => dropNote(CLOCK) },
    })
}

function inLine(line: HTMLElement, state: PhoneState): void {
  const waiting = document.getElementById('phone-waiting')
  const said = waitingWords(state, words)
  if (waiting !== null) waiting.textContent = said ?? words.phone.allSent
  else if (said !== null) line.prepend(link('/outbox', said, 'phone-waiting'))
  const when = document.getElementById('phone-when')
  if (when === null) return
  if (state.signIn)
    when.replaceChildren(
      link(
        `/sign-in?to=${encodeURIComponent(location.pathname)}`,
        said === null ? words.phone.signIn : words.phone.signInToSend,
      ),
    )
  else if (state.newsAt > (line.dataset.news ?? '') && document.getElementById('entry-form') === null)
    when.replaceChildren(link(location.href, words.islands.newer))
}

function inNote(state: PhoneState): void {
  const waiting = waitingWords(state, words)
  const said = location.pathname.startsWith('/outbox') || document.getElementById('sign-out-warning') !== null
  if (waiting === null || said) dropNote(WAITING)
  else if (state.signIn && !('signedIn' in document.body.dataset))
    showNote({
      weight: WAITING,
      words: words.islands.signInTheyGo(waiting),
      way: { label: words.signIn.title, href: '/sign-in' },
    })
  else
    showNote({
      weight: WAITING,
      words: waiting,
      way: { label: words.islands.showThem, href: '/outbox' },
    })
}

function link(href: string, text: string, name = ''): HTMLAnchorElement {
  const a = document.createElement('a')
  a.href = href
  a.textContent = text
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
        ? words.islands.roundNotHere
        : words.islands.roundAsOf(momentSaid(state.fetchedAt))
    const room = promised ? words.islands.promised : words.islands.mayClear
    facts.textContent = `${round} ${room}`
  })
}
