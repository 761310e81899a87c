/** Long reckonings in slices, so that others are answered in between. */
import { setImmediate } from 'node:timers/promises'

/** Work of so many milliseconds at a stretch. */
const STRETCH_MS = 15

/** Drains a generator, letting other requests in between its steps. */
export async function inSlices<T>(steps: Generator<unknown, T>): Promise<T> {
  let began = performance.now()
  for (;;) {
    const { done, value } = steps.next()
    if (done === true) return value
    if (performance.now() - began < STRETCH_MS) continue
    await setImmediate()
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
