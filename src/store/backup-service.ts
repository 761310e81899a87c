/** Keeps backups coming while the server runs: one a day, one after every change of the schema, old ones thinned out. */
import { rmSync } from 'node:fs'
import { type Backup, backupFolder, listBackups, type Prove, sameSchema, takeBackup } from './backup.ts'
import { chainFaults } from './chain.ts'
import type { Connection } from './connection.ts'
import { lossWords } from './integrity.ts'
import { lossAgainst } from './loss.ts'
import { surplus } from './rotation.ts'

export interface BackupService {
  folder: string
  state(): BackupState
  /** Takes one now, and thins out. Rejects when it cannot be taken; the state then says why. */
  backUp(): Promise<Backup>
  /** Takes one when this day has none yet or the newest is of an older schema. Never rejects. */
  ifDue(): Promise<void>
  /** Goes along the journal's chain, a slice at a time between requests, until its end or the first fault. */
  lookThrough(): Promise<void>
  /** Looks now and every hour; returns what stops it. */
  start(): () => Promise<void>
}

export interface BackupState {
  /** Newest first. */
  backups: Backup[]
  /** The last attempt, when it failed. */
  failed: { at: string; why: string } | null
  /** What is wrong with the journal in use, in a sentence; null as far as was looked. No backup is thrown away then. */
  damage: string | null
}

export interface BackupServiceOptions {
  clock: () => Date
  /** The yard's day of an instant. */
  dayOf: (instant: Date) => string
  /** Called with failures. */
  report: (error: unknown) => void
  folder?: string
  /** Proves a copy whole; here and now when left out. */
  prove?: Prove | undefined
}

const HOUR = 3_600_000
/** Between two slices of looking: the requests come first. */
const PAUSE_MS = 20

export function backupServiceOf(connection: Connection, options: BackupServiceOptions): BackupService {
  const { clock, dayOf, report, folder = backupFolder(connection.raw.name) } = options
  let failed: BackupState['failed'] = null
  let damage: string | null = null
  let stopped = false
  let turn: Promise<unknown> = Promise.resolve()
  /** One after the other. */
  const inTurn = <T>(work: () => Promise<T>): Promise<T> => {
    const next = turn.then(work, work)
    turn = next.catch(() => undefined)
    return next
  }

  const take = async (): Promise<Backup> => {
    const at = clock()
    try {
      const taken = await takeBackup(connection, folder, at, options.prove)
      failed = null
      const loss = lossAgainst(connection.raw, folder)
      if (loss !== null) damage = `The journal is not complete: ${lossWords(loss)}`
      if (damage === null)
        for (const old of surplus(listBackups(folder))) if (old.name !== taken.name) rmSync(old.file)
      return taken
    } catch (error) {
      failed = { at: at.toISOString(), why: whyOf(error) }
      report(error)
      throw error
    }
  }
  const due = (): boolean => {
    const today = dayOf(clock())
    const [newest, ...others] = listBackups(folder)
    if (newest === undefined) return true
    // Any of today's counts: after a clock ran ahead and was set right, the newest lies in the future.
    const ofToday = [newest, ...others].find((b) => dayOf(new Date(b.at)) === today)
    return ofToday === undefined || !sameSchema(ofToday, connection)
  }

  const ifDue = (): Promise<void> =>
    inTurn(async () => {
      if (due()) await take()
    }).catch(() => undefined)

  const lookThrough = async (): Promise<void> => {
    for (const fault of chainFaults(connection.raw)) {
      if (fault !== null) {
        damage = `The journal is damaged: ${fault}.`
        return report(new Error(damage))
      }
      await new Promise((go) => setTimeout(go, PAUSE_MS).unref())
      if (stopped) return
    }
  }

  return {
    folder,
    lookThrough,
    state: () => ({ backups: listBackups(folder), failed, damage }),
    backUp: () => inTurn(take),
    ifDue,
    start() {
      void ifDue()
      void lookThrough().catch(report)
      const timer = setInterval(() => void ifDue(), HOUR)
      timer.unref()
      return async () => {
        stopped = true
        clearInterval(timer)
        await turn
      }
    },
  }
}

/** Why it failed, for the page: the words of the system, without paths. */
function whyOf(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? String(error.code) : ''
  if (/ENOSPC|SQLITE_FULL/.test(code)) return 'the disk is full'
  if (/EACCES|EPERM|EROFS|READONLY|CANTOPEN/.test(code)) return 'the folder of backups cannot be written'
  return code || (error instanceof Error ? error.message.slice(0, 120) : 'unknown')
}
