/** Making plans again beside the requests: slice after slice, each in a transaction of its own, answering in between. */
import type { Store } from '../store/index.ts'

/** Colonies in one slice: some tens of milliseconds at most. */
const SLICE = 10

export interface Recompute {
  /** Begins, or goes on, with what waits. */
  start: () => void
  /** How many were made in the last round; null before the first. */
  made: () => number | null
  /** Why it stopped before the end, in words; null while it runs or has nothing to do. */
  stopped: () => string | null
}

const remakers = new WeakMap<Store['protocols'], Recompute>()

/** The one remaker of a store: every role's pages share it. */
export function remakerOf(store: Pick<Store, 'protocols'>, report: (error: unknown) => void): Recompute {
  const known = remakers.get(store.protocols)
  if (known !== undefined) return known
  const made = remakerFor(store.protocols, report)
  remakers.set(store.protocols, made)
  return made
}

function remakerFor(protocols: Store['protocols'], report: (error: unknown) => void): Recompute {
  let running = false
  let made: number | null = null
  let stopped: string | null = null
  const step = (): void => {
    try {
      const before = protocols.recomputing()
      const left = protocols.remakeSome(SLICE)
      if (left !== null) {
        setImmediate(step)
        return
      }
      made = before?.total ?? made
    } catch (error) {
      stopped = error instanceof Error ? error.message : String(error)
      report(error)
    }
    running = false
  }
  return {
    start() {
      stopped = null
      if (running) return
      running = true
      setImmediate(step)
    },
    made: () => made,
    stopped: () => stopped,
  }
}
