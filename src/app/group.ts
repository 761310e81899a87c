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

/** `together` runs what it is given as one durable transaction, and undoes all of it when something throws. */
export function groupOf(together: (work: () => void) => void): Grouped {
  let waiting: Job[] = []
  const flush = (): void => {
    const jobs = waiting
    waiting = []
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
      if (waiting.length === 0) setImmediate(flush)
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
