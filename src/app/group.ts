/**
 * Writes that arrive at the same time share one wait for the disk. Each is answered only after it is durable, and each
 * succeeds or fails by itself.
 */
import type { PageDeps } from './context.ts'

/** Runs a write with others, and gives its answer when it is durable. */
export type Grouped = <T>(write: () => T) => Promise<T>

/** How to write here: with others on the server, at once on a phone, which has no others. */
export const grouped = (deps: Pick<PageDeps, 'grouped'>): Grouped =>
  deps.grouped ?? (async (write) => write())

interface Job {
  run: () => void
  done: () => void
  fail: (error: unknown) => void
}

/** Writes in one transaction at most: each costs two to four milliseconds with its plan, and others wait meanwhile. */
const MOST = 6

interface Pace {
  /** Lets others in before a transaction, whose writes may then share it. */
  pause?: () => Promise<void>
  /** Nothing is written before; default at once. */
  ready?: Promise<unknown> | undefined
}

/** `together` runs what it is given as one durable transaction, and undoes all of it when something throws. */
export function groupOf(
  together: (work: () => void) => void,
  { pause = () => new Promise((go) => setImmediate(go)), ready = Promise.resolve() }: Pace = {},
): Grouped {
  const waiting: Job[] = []
  const settle = (jobs: readonly Job[]): void => {
    try {
      together(() => {
        for (const job of jobs) job.run()
      })
    } catch {
      // One of them took the others with it: each for itself, then.
      for (const job of jobs) alone(job)
      return
    }
    for (const job of jobs) job.done()
  }
  const flush = (): void => {
    settle(waiting.splice(0, MOST))
    if (waiting.length > 0) pause().then(flush)
  }
  const alone = (job: Job): void => {
    try {
      together(job.run)
    } catch (error) {
      job.fail(error)
      return
    }
    job.done()
  }
  return <T>(write: () => T): Promise<T> =>
    new Promise((done, fail) => {
      let made: { value: T } | undefined
      if (waiting.length === 0) ready.then(pause).then(flush)
      waiting.push({
        run: () => {
          made = { value: write() }
        },
        done: () => {
          if (made !== undefined) done(made.value)
        },
        fail,
      })
    })
}
