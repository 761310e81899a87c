/** The connection to what the phone keeps: opened when first needed, and again when the browser has closed it under us. */
import type { Database } from './database.ts'

export type On = <T>(work: (db: Database) => Promise<T>) => Promise<T>

/** `onGone` is called when what was read before may be out of date. */
export function connectionOf(open: (onGone: () => void) => Promise<Database>, onGone: () => void): On {
  let opened: Promise<Database> | null = null
  const forget = (): void => {
    opened = null
    onGone()
  }
  return async (work) => {
    opened ??= open(forget)
    const mine = opened
    try {
      return await work(await mine)
    } catch (error) {
      if (opened === mine) forget()
      if (!isClosed(error)) throw error
      opened ??= open(forget)
      return work(await opened)
    }
  }
}

const isClosed = (error: unknown): boolean =>
  error instanceof Error && (error.name === 'InvalidStateError' || error.name === 'UnknownError')
