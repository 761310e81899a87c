/** Looking at a backup of an earlier schema: at a copy of it, brought up to date, because a backup is never changed. */
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { openConnection, openStore } from './open.ts'
import type { Store } from './types.ts'

/** Gives `look` the store of such a copy, with the plans that were kept in it; leaves nothing behind. */
export async function withOlderCopy<T>(file: string, look: (store: Store) => T): Promise<T> {
  const folder = mkdtempSync(join(tmpdir(), 'resettle-copy-'))
  const copy = join(folder, 'copy.db')
  try {
    const source = new Database(file, { readonly: true, fileMustExist: true })
    try {
      await source.backup(copy)
    } finally {
      source.close()
    }
    openConnection(copy, { before: () => undefined }).raw.close()
    const store = openStore(copy, { migrate: false })
    try {
      return look(store)
    } finally {
      store.close()
    }
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}
