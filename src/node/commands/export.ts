/** `resettle export FILE.jsonl|FILE.csv|- [--from DATABASE]`: the whole yard as JSON Lines, or its colonies as CSV. Never overwrites. */

import { existsSync, fsyncSync, openSync, writeSync } from 'node:fs'
import { parseArgs } from 'node:util'
import { exportLines } from '../../features/data/node.ts'
import { rowOf, writeColonies } from '../../features/import/node.ts'
import { photoFolder, shelfIn } from '../../photos/node.ts'
import type { Store } from '../../store/index.ts'
import { dataFile, openStore, StoreError } from '../../store/node.ts'
import { saying } from './terminal.ts'

/** Exit code 0: written. 2: not. */
export const run = (args: string[]): Promise<number> =>
  saying('export', () => {
    const { values, positionals } = parseArgs({
      args,
      options: { 'without-private': { type: 'boolean', default: false }, from: { type: 'string' } },
      allowPositionals: true,
    })
    const [to, ...more] = positionals
    if (to === undefined || more.length > 0 || !/^-$|\.(jsonl|csv)$/i.test(to))
      throw new StoreError(
        'name one file: NAME.jsonl for the whole yard, NAME.csv for its colonies, - for JSON Lines on standard output',
      )
    const file = values.from ?? dataFile()
    if (!existsSync(file)) throw new StoreError(`no database at ${file}`)
    const store = openStore(file, { migrate: false })
    try {
      write(to, lines(store, to, !values['without-private'], file))
      return 0
    } finally {
      store.close()
    }
  })

function* lines(store: Store, to: string, withPrivate: boolean, file: string): Generator<string> {
  if (!/\.csv$/i.test(to)) {
    yield* exportLines(store, { private: withPrivate, photos: shelfIn(photoFolder(file)) })
    return
  }
  // These columns hold nothing private.
  yield writeColonies([...store.histories()].map(({ history }) => rowOf(history)))
}

function write(to: string, text: Iterable<string>): void {
  if (to !== '-' && existsSync(to)) throw new StoreError(`${to} is there already; nothing was written`)
  // For its owner's eyes: it may hold names and addresses.
  const handle = to === '-' ? 1 : openSync(to, 'wx', 0o600)
  for (const line of text) writeSync(handle, line)
  if (to !== '-') fsyncSync(handle)
}
