/** A few at a time: hashing takes 32 MiB and a core each, and a crowd signing in must not take them all. */
export class Busy extends Error {
  override name = 'Busy'
}

/** Runs at most `atOnce` works side by side and keeps at most `waiting` more waiting; throws Busy beyond. */
export function queueOf(atOnce: number, waiting: number): <T>(work: () => Promise<T>) => Promise<T> {
  let running = 0
  const line: (() => void)[] = []
  return async (work) => {
    if (running >= atOnce) {
      if (line.length >= waiting) throw new Busy('too many at once')
      await new Promise<void>((go) => line.push(go))
    } else running++
    try {
      return await work()
    } finally {
      const next = line.shift()
      if (next === undefined) running--
      else next()
    }
  }
}
