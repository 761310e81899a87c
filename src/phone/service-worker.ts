/**
 * The service worker: stands between the pages and the network. Pages of the round come from the server where it answers
 * at once, else from the phone itself; their forms go into the outbox first, always. Everything else goes to the server.
 */

import { type Language, languageOf } from '../languages.ts'
import type { Ask, PhoneState } from '../parts/index.ts'
import { openDatabase } from './database.ts'
import { type Built, files } from './files.ts'
import { noSignal, notKept } from './no-signal.ts'
import { syncServiceOf } from './sync-service.ts'
import { type Fetching, worker } from './worker-scope.ts'

/** Put in by the build. */
declare const BUILT: Built

/** Milliseconds the server has to answer before the phone shows its own page. */
const GRACE_MS = 150
/** The same for a removal: what a colleague found a minute ago is worth more than a quick page (judgement). */
const SHEET_GRACE_MS = 1500
/** Milliseconds to wait, after a form was kept, for the server to have it. */
const SENDING_MS = 2500
/** Milliseconds within which the round is not fetched again. */
const FRESH_MS = 15_000
/** Forms that end the session of this phone. */
const SIGNS_OUT = new Set(['/sign-out', '/account/sign-out-everywhere'])
/** Forms that put another session in its place, which may be of another person. */
const SIGNS_IN = /^\/(sign-in(\/as)?|invite\/[^/]+|set-up)$/
/** The form that says which language its pages are in. */
const SETS_LANGUAGE = '/account/language'
const LOCK = 'resettle-outbox'
const SYNC = 'resettle-send'

const kept = files(BUILT)

const syncService = syncServiceOf({
  open: openDatabase,
  fetch: (path, init) => fetch(path, init),
  now: () => new Date(),
  alone: async (work) => navigator.locks.request(LOCK, work),
  built: kept.address,
  browserReads: languageOf(navigator.language) ?? 'en',
  tell: (state) => void tell(state),
  report: (error, request) => console.error(request, error),
})

/** In the language of whoever the round is for. */
const withoutSignal = async (): Promise<Response> => noSignal(kept.address, await language())
const withoutRoom = async (): Promise<Response> => notKept(kept.address, await language())
const language = (): Promise<Language> => syncService.language().catch(() => browserReads())
const browserReads = (): Language => languageOf(navigator.language) ?? 'en'

async function tell(state: PhoneState): Promise<void> {
  for (const page of await worker.clients.matchAll({ type: 'window' })) page.postMessage({ phone: state })
}

worker.addEventListener('install', (event) => event.waitUntil(kept.fetchAll()))

worker.addEventListener('activate', (event) => {
  event.waitUntil(kept.dropOld().then(() => worker.clients.claim()))
})

worker.addEventListener('message', (event) => {
  const { ask } = (event.data ?? {}) as { ask?: Ask }
  if (ask === 'take-over') event.waitUntil(worker.skipWaiting())
  if (ask === 'state')
    event.waitUntil(syncService.state().then((state) => event.source?.postMessage({ phone: state })))
  if (ask === 'send') event.waitUntil(syncService.send(FRESH_MS))
})

worker.addEventListener('sync', (event) => {
  if (event.tag !== SYNC) return
  // A rejection makes the browser try again later.
  event.waitUntil(
    syncService.send().then((ended) => {
      if (ended === 'no-answer') throw new Error('not sent yet')
    }),
  )
})

worker.addEventListener('fetch', (event) => {
  const url = new URL(event.request.url)
  if (url.origin !== worker.location.origin) return
  const { method, mode } = event.request
  if (method === 'GET' && kept.holds(url.pathname)) event.respondWith(kept.file(event.request))
  else if (method === 'GET' && url.pathname.startsWith('/photos/')) event.respondWith(photo(event))
  else if (mode !== 'navigate') return
  else if (method === 'GET') event.respondWith(page(event))
  else if (SIGNS_OUT.has(url.pathname)) event.respondWith(signOut(event))
  else if (method === 'POST' && SIGNS_IN.test(url.pathname)) event.respondWith(signIn(event))
  else if (method === 'POST' && url.pathname === SETS_LANGUAGE) event.respondWith(languageSet(event))
  else if (method === 'POST') event.respondWith(form(event))
})

const isOfRemovals = ({ url }: Request): boolean => new URL(url).pathname.startsWith('/removals')

/** A page: the server's where nothing waits here and it answers at once, else the phone's, else the server's after all. */
async function page(event: Fetching): Promise<Response> {
  const { request } = event
  const state = await syncService.state().catch(() => null)
  // What is said once is said by the phone's own page.
  const says = (state?.told ?? 0) > 0 && new URL(request.url).pathname === '/outbox'
  const patient = state !== null && state.waiting + state.refused === 0 && !says
  const keeps = state !== null && (state.fetchedAt !== null || !patient)
  const ofRemovals = isOfRemovals(request)
  // This page is the phone's, and there is signal: what a colleague found a minute ago stands on it all the same.
  if (ofRemovals && keeps && !patient && state.reached) await sent(event, 0)
  const own = keeps ? ownPage(request) : Promise.resolve(null)
  if (patient && state.reached) {
    const server = fetch(request)
    event.waitUntil(server.catch(() => undefined))
    const early = await Promise.race([
      server.catch(() => null),
      after(ofRemovals ? SHEET_GRACE_MS : GRACE_MS),
    ])
    if (early !== null && early.status < 500) return early
    return (await own) ?? server.catch(() => withoutSignal())
  }
  return (await own) ?? fromServer(request)
}

const ownPage = (request: Request): Promise<Response | null> =>
  syncService.page(request).catch((error: unknown) => {
    console.error(error)
    return null
  })

const fromServer = (request: Request): Promise<Response> => fetch(request).catch(() => withoutSignal())

const after = (milliseconds: number): Promise<null> =>
  new Promise((done) => setTimeout(() => done(null), milliseconds))

/** A photo: the phone's own while its entry waits. */
async function photo({ request }: Fetching): Promise<Response> {
  const id = new URL(request.url).pathname.slice('/photos/'.length)
  const bytes = await syncService.photo(id).catch(() => null)
  return bytes === null ? fetch(request) : new Response(bytes, { headers: { 'Content-Type': 'image/jpeg' } })
}

/** A form: kept first, then sent. Where the phone cannot keep it, the server has to take it now. */
async function form(event: Fetching): Promise<Response> {
  const { request } = event
  const again = request.clone()
  // It is judged here: by what the yard says now, where that can be heard.
  if (isOfRemovals(request) && (await syncService.state().catch(() => null))?.reached) await sent(event)
  const answer = await syncService.form(request).catch((error: unknown) => {
    console.error(error)
    return null
  })
  if (answer === null) return fetch(again).catch(() => withoutRoom())
  await sent(event)
  return answer
}

/** Sends what waits; where that takes long, it goes on while the page is shown. */
async function sent(event: Fetching, fresh = FRESH_MS): Promise<void> {
  const sending = syncService.send(fresh)
  event.waitUntil(
    sending
      .then((ended) => (ended === 'no-answer' ? worker.registration.sync?.register(SYNC) : undefined))
      .catch(() => undefined),
  )
  await Promise.race([sending.catch(() => undefined), after(SENDING_MS)])
}

/** Warns first where something waits; then, once the server has ended the session, forgets the round. */
async function signOut({ request }: Fetching): Promise<Response> {
  const warning = await syncService.signOutWarning(request.clone()).catch(() => null)
  if (warning !== null) return warning
  try {
    const answer = await fetch(request)
    // 401: the session had ended before; whoever taps “Sign out” wants their round gone all the same.
    if (answer.status < 400 || answer.status === 401) await syncService.signedOut()
    return answer
  } catch {
    return withoutSignal()
  }
}

/**
 * Once somebody has signed in, the round of whoever was before is forgotten, before any page can be made of it: it may hold
 * what they may not see, and what they write would be signed by the other. Their own is fetched at once.
 */
async function signIn(event: Fetching): Promise<Response> {
  const answer = await fetch(event.request).catch(() => null)
  if (answer === null) return withoutSignal()
  if (answer.status < 400) {
    await syncService.signedOut()
    await sent(event)
  }
  return answer
}

/** Who sets a language and walks out of reach reads the round in it: fetched at once, however fresh the one that is kept. */
async function languageSet(event: Fetching): Promise<Response> {
  const answer = await fetch(event.request).catch(() => null)
  if (answer === null) return withoutSignal()
  await sent(event, 0)
  return answer
}
