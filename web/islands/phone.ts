/**
 * On every page: starts the service worker, has it send what waits whenever there may be signal, and says how it stands.
 * Without a worker (a plain http address, an old browser) everything goes straight to the server, and this says nothing.
 */
import type { Ask, PhoneState } from '../../src/parts/index.ts'
import { keepDrafts } from './drafts.ts'
import { offerNow } from './now.ts'
import { watchForEviction } from './phone-evicted.ts'
import { showState } from './phone-says.ts'
import { offerNewer } from './phone-version.ts'
import { offerScan } from './scan.ts'
import { ownZone } from './zone.ts'

/** Seconds until it is tried again, the longer the more often it failed. */
const BACK_OFF = [5, 15, 60, 300]

const signedIn = 'signedIn' in document.body.dataset
let failures = 0
let timer: ReturnType<typeof setTimeout> | undefined

async function ask(what: Ask): Promise<void> {
  const registration = await navigator.serviceWorker.ready
  registration.active?.postMessage({ ask: what })
}

function hear(event: MessageEvent): void {
  const state = (event.data as { phone?: PhoneState } | null)?.phone
  if (state === undefined) return
  watchForEviction(state)
  showState(state)
  if (state.waiting > 0) void keepForMe()
  again(state)
}

/** While something waits it is tried again and again, as long as the page is looked at. */
function again(state: PhoneState): void {
  clearTimeout(timer)
  if (state.waiting === 0 || state.signIn) {
    failures = 0
    return
  }
  const seconds = BACK_OFF[Math.min(failures, BACK_OFF.length - 1)] ?? 300
  timer = setTimeout(() => {
    failures++
    if (document.visibilityState === 'visible') void ask('send')
  }, seconds * 1000)
}

/** Asks the browser not to clear this out when it is short of room. */
async function keepForMe(): Promise<void> {
  if (!(await navigator.storage?.persisted?.())) await navigator.storage?.persist?.()
}

/** Null where a browser has workers and will not start one: in a private window, or when told so. */
async function registered(): Promise<ServiceWorkerRegistration | null> {
  const options = { updateViaCache: 'none' } as const
  const starting: Promise<ServiceWorkerRegistration | undefined> = navigator.serviceWorker.register(
    '/service-worker.js',
    options,
  )
  return (await starting.catch(() => null)) ?? null
}

async function start(): Promise<void> {
  if (!('serviceWorker' in navigator)) return
  navigator.serviceWorker.addEventListener('message', hear)
  if (signedIn) {
    const registration = await registered()
    if (registration === null) return
    offerNewer(registration)
  } else if ((await navigator.serviceWorker.getRegistration()) === undefined) return
  await ask('state')
  if (signedIn) await ask('send')
  window.addEventListener('online', () => void ask('send'))
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') void ask('send')
  })
  if (matchMedia('(display-mode: standalone)').matches) void keepForMe()
}

keepDrafts()
offerNow()
offerScan()
ownZone()
// After everything that the page itself needs.
if (document.readyState === 'complete') void start()
else window.addEventListener('load', () => void start(), { once: true })
