/** `resettle import FILE.jsonl|FILE.csv|-`: a whole yard from JSON Lines, or colonies from CSV. All or nothing. */
import { readFileSync } from 'node:fs'
import { basename } from 'node:path'
import { parseArgs } from 'node:util'
import { v7 } from 'uuid'
import { type Day, dayIn } from '../days.ts'
import { readColonies } from '../exchange/colonies-csv.ts'
import { lineOf } from '../exchange/csv-table.ts'
import { type ImportRow, rehearsed, takeIn } from '../exchange/spreadsheet/take-in.ts'
import { importYard } from '../exchange/yard-import.ts'
import { photoFolder, shelfIn } from '../photos/shelf.ts'
import { dataFile, openStore, type Store, StoreError } from '../store/index.ts'
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
    const text = textOf(from)
    const store = openStore(dataFile({ make: true }))
    try {
      const zone = store.settings.get('timeZone') ?? Intl.DateTimeFormat().resolvedOptions().timeZone
      const today = dayIn(zone, new Date())
      return /\.csv$/i.test(from) ? fromCsv(store, from, text, today, values) : fromLines(store, text, today)
    } finally {
      store.close()
    }
  })

function textOf(from: string): string {
  let bytes: Uint8Array
  try {
    bytes = readFileSync(from === '-' ? 0 : from)
  } catch (error) {
    throw new StoreError(`cannot read ${from}: ${(error as NodeJS.ErrnoException).code ?? 'unknown error'}`)
  }
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes)
  } catch {
    throw new StoreError(`${from} is not UTF-8 text; save it as "UTF-8"`)
  }
}

function fromLines(store: Store, text: string, today: Day): number {
  const result = importYard(store, text, today, shelfIn(photoFolder(dataFile())))
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
    const { good, problems: refused } = rehearsed(store.imports, rows, signing, stamp)
    if (refused.length > 0) process.stderr.write(`${refused.map(lineOf).join('\n')}\n`)
    taken = good
  }
  if (taken.length === 0) return complain('No line can be taken in. Nothing was written.')
  const result = takeIn(store.imports, taken, basename(from), signing, stamp)
  if (!result.ok) return complain(...result.problems.map(lineOf), 'Nothing was written.')
  process.stdout.write(`taken in: ${result.colonies} colonies, ${result.entries} entries\n`)
  return 0
}
