/** Long work as a generator that pauses, so that whoever runs it can let others in between. */

/** Runs it to its end in one go. */
export function toTheEnd<T>(steps: Generator<unknown, T>): T {
  for (;;) {
    const { done, value } = steps.next()
    if (done === true) return value
  }
}
