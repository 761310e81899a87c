/** Long reckonings in slices, so that others are answered in between. */
import { setImmediate } from 'node:timers/promises'

/** Work of so many milliseconds at a stretch. */
const STRETCH_MS = 15

/**
 * Turns of the event loop between two stretches of work. A turn takes in one new connection and no more, so with one turn
 * only, fifty phones that come at once would each wait for fifty stretches. An empty turn costs some microseconds.
 */
const TURNS = 32

/** Lets everybody in who waits, and answers what is short, before the next stretch of long work. */
export async function othersFirst(): Promise<void> {
  for (let turn = 0; turn < TURNS; turn++) await setImmediate()
}

/** Drains a generator, letting other requests in between its steps. */
export async function inSlices<T>(steps: Generator<unknown, T>): Promise<T> {
  let began = performance.now()
  for (;;) {
    const { done, value } = steps.next()
    if (done === true) return value
    if (performance.now() - began < STRETCH_MS) continue
    await othersFirst()
    began = performance.now()
  }
}

/** The same for a list. */
export const mappedInSlices = <A, B>(items: readonly A[], work: (item: A) => B): Promise<B[]> =>
  inSlices(
    (function* () {
      const out: B[] = []
      for (const item of items) {
        out.push(work(item))
        yield
      }
      return out
    })(),
  )
