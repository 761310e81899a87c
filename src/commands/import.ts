/** `resettle import FILE.jsonl|FILE.csv|-`: a whole yard from JSON Lines, or colonies from CSV. All or nothing. */
import { readFileSync } from 'node:fs'
import { parseArgs } from 'node:util'
import { v7 } from 'uuid'
import { type Day, dayIn } from '../days.ts'
import { entriesOf, readColonies } from '../exchange/colonies-csv.ts'
import { lineOf } from '../exchange/csv-table.ts'
import { importYard } from '../exchange/yard-import.ts'
import { problemLine } from '../journal/problem.ts'
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
      return /\.csv$/i.test(from) ? fromCsv(store, text, today, values) : fromLines(store, text, today)
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
  const result = importYard(store, text, today)
  if (!result.ok) return complain(...result.problems)
  process.stdout.write(
    `taken in: ${result.accepted} entries, ${result.settings} choices; ${result.already} entries were here already\n`,
  )
  return 0
}

/** Rows by intake, so that a tag used again comes after the colony that had it before. */
function fromCsv(store: Store, text: string, today: Day, options: Options): number {
  const { rows, problems } = readColonies(text, today)
  if (problems.length > 0) process.stderr.write(`${problems.map(lineOf).join('\n')}\n`)
  if (problems.length > 0 && !options['skip-bad'])
    return complain('Nothing was written. --skip-bad takes the other lines.')
  const inOrder = [...rows].sort((a, b) => (a.intake_on < b.intake_on ? -1 : 1))
  const entries = inOrder.flatMap((row) =>
    entriesOf(row, { newId: () => v7(), by: options.by, yard: options.yard }).map((entry) => ({
      entry,
      line: row.line,
    })),
  )
  const result = store.append(
    entries.map((e) => e.entry),
    { today, recordedAt: new Date().toISOString(), recordedBy: options.by },
  )
  if (!result.ok)
    return complain(
      ...result.problems.map(
        (p) => `line ${entries[(p.entry ?? 1) - 1]?.line ?? '?'}: ${problemLine({ ...p, entry: undefined })}`,
      ),
      'Nothing was written.',
    )
  process.stdout.write(`taken in: ${rows.length} colonies, ${result.accepted.length} entries\n`)
  return 0
}
