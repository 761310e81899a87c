/** Offers a newer version of the worker when one is ready. It never takes over by itself: a half-filled form may be open. */
import type { Ask } from '../../src/parts/index.ts'
import { showNote } from './phone-note.ts'
import { words } from './words.ts'

const NEWER = 2

export function offerNewer(registration: ServiceWorkerRegistration): void {
  const offer = (): void => {
    const { waiting } = registration
    // The first one has nobody to take over from.
    if (waiting === null || navigator.serviceWorker.controller === null) return
    showNote({
      weight: NEWER,
      words: words.islands.newerVersion,
      way: { label: words.islands.useIt, press: () => takeOver(waiting) },
    })
  }
  registration.addEventListener('updatefound', () => {
    registration.installing?.addEventListener('statechange', offer)
  })
  offer()
}

function takeOver(waiting: ServiceWorker): void {
  navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true })
  waiting.postMessage({ ask: 'take-over' satisfies Ask })
}
