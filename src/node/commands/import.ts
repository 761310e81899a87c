/** `resettle import FILE.jsonl|FILE.csv|-`: a whole yard from JSON Lines, or colonies from CSV. All or nothing. */

import { readFileSync } from 'node:fs'
import { basename } from 'node:path'
import { parseArgs } from 'node:util'
import { v7 } from 'uuid'
import { type Day, dayIn } from '../../days.ts'
import type { Lines, ReadYard } from '../../features/data/index.ts'
import { fileLines, readYard, takeYard } from '../../features/data/node.ts'
import type { ImportRow } from '../../features/import/index.ts'
import { lineOf, readColonies, rehearsing, takingIn } from '../../features/import/node.ts'
import { photoFolder, shelfIn } from '../../photos/node.ts'
import { toTheEnd } from '../../steps.ts'
import type { Store } from '../../store/index.ts'
import { dataFile, openStore, StoreError } from '../../store/node.ts'
import { machineZone } from '../services.ts'
import { complain, saying } from './terminal.ts'

interface Options {
  'skip-bad': boolean
  by: string
  yard: string
}

/** Exit code 0: taken in; what is new is said on stdout. 2: nothing was written, one problem a line on stderr. */
export const run = (args: string[]): Promise<number> =>
  saying('import', () => {
    const { values, positionals } = parseArgs({
      args,
      options: {
        'skip-bad': { type: 'boolean', default: false },
        by: { type: 'string', default: 'import' },
        yard: { type: 'string', default: 'Yard' },
      },
      allowPositionals: true,
    })
    const [from, ...more] = positionals
    if (from === undefined || more.length > 0 || !/^-$|\.(jsonl|csv)$/i.test(from))
      throw new StoreError(
        'name one file: NAME.jsonl from an export of a whole yard, NAME.csv of colonies, - for JSON Lines on standard input',
      )
    // Read to the end before a database is made: a file that cannot be read makes none.
    const takeInto = /\.csv$/i.test(from) ? coloniesIn(from, values) : yardIn(from)
    const store = openStore(dataFile({ make: true }))
    try {
      const zone = store.settings.get('timeZone') ?? Intl.DateTimeFormat().resolvedOptions().timeZone
      return takeInto(store, dayIn(zone, new Date()))
    } finally {
      store.close()
    }
  })

/** What stopped the reading of a file, in words. */
function unreadable(from: string, error: unknown): StoreError {
  const { code } = error as NodeJS.ErrnoException
  if (code === 'ERR_STRING_TOO_LONG')
    return new StoreError(`${from} is too large to be read at once; name the file itself`)
  return error instanceof TypeError
    ? new StoreError(`${from} is not UTF-8 text; save it as "UTF-8"`)
    : new StoreError(`cannot read ${from}: ${code ?? 'unknown error'}`)
}

function* readable(from: string): Generator<string> {
  try {
    yield* fileLines(from)
  } catch (error) {
    throw unreadable(from, error)
  }
}

function textOf(from: string): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(readFileSync(from === '-' ? 0 : from))
  } catch (error) {
    throw unreadable(from, error)
  }
}

type TakeInto = (store: Store, today: Day) => number

function coloniesIn(from: string, options: Options): TakeInto {
  const text = textOf(from)
  return (store, today) => fromCsv(store, from, text, today, options)
}

/** A file is read again for its photos; standard input cannot be, and is held. */
function yardIn(from: string): TakeInto {
  const text = from === '-' ? textOf(from) : null
  const lines = (): Iterable<string> => text?.split('\n') ?? readable(from)
  const read = readYard(lines)
  return (store, today) => fromLines(store, read, lines, today)
}

function fromLines(store: Store, read: ReadYard, lines: Lines, today: Day): number {
  const at = { today, zone: machineZone(), now: new Date() }
  const result = takeYard(store, read, lines, at, shelfIn(photoFolder(dataFile())))
  if (!result.ok) return complain(...result.problems)
  process.stdout.write(
    `taken in: ${result.accepted} entries, ${result.settings} choices; ${result.already} entries were here already\n`,
  )
  return 0
}

/** All rows, or none; noted as an import, so that the whole can be taken back from the page of imports. */
function fromCsv(store: Store, from: string, text: string, today: Day, options: Options): number {
  const { rows, problems } = readColonies(text, today)
  if (problems.length > 0) process.stderr.write(`${problems.map(lineOf).join('\n')}\n`)
  if (problems.length > 0 && !options['skip-bad'])
    return complain('Nothing was written. --skip-bad takes the other lines.')
  const signing = { importId: v7(), by: options.by, yard: options.yard }
  const stamp = { today, recordedAt: new Date().toISOString(), recordedBy: options.by }
  let taken: ImportRow[] = rows
  if (options['skip-bad']) {
    const { good, problems: refused } = toTheEnd(rehearsing(store.imports, rows, signing, stamp))
    if (refused.length > 0) process.stderr.write(`${refused.map(lineOf).join('\n')}\n`)
    taken = good
  }
  if (taken.length === 0) return complain('No line can be taken in. Nothing was written.')
  const result = toTheEnd(takingIn(store, taken, basename(from), signing, stamp))
  if (!result.ok) return complain(...result.problems.map(lineOf), 'Nothing was written.')
  process.stdout.write(`taken in: ${result.colonies} colonies, ${result.entries} entries\n`)
  return 0
}
