/**
 * `resettle review [--from FILE|-] [--as-of DAY] [--json] [--united-as-loss] [--skip-bad]`: which removals survive, from
 * a colonies CSV or from the yard's own database. The JSON is a public format (README).
 */

import { existsSync, readFileSync } from 'node:fs'
import { parseArgs } from 'node:util'
import { type Day, dayIn, isDay } from '../../days.ts'
import { lineOf, readColonies } from '../../features/import/node.ts'
import { factsInStore, factsOfRow, reviewOf, summaryOf } from '../../features/review/index.ts'
import type { ColonyFacts } from '../../stays/index.ts'
import { dataFile, openStore, StoreError } from '../../store/node.ts'

const USAGE =
  'usage: resettle review [--from FILE|-] [--as-of YYYY-MM-DD] [--json] [--united-as-loss] [--skip-bad]'

const here = (): string => Intl.DateTimeFormat().resolvedOptions().timeZone

function complain(...lines: string[]): number {
  process.stderr.write(`${lines.join('\n')}\n`)
  return 2
}

export async function run(args: string[]): Promise<number> {
  try {
    const { values } = parseArgs({
      args,
      options: {
        from: { type: 'string' },
        'as-of': { type: 'string' },
        json: { type: 'boolean', default: false },
        'united-as-loss': { type: 'boolean', default: false },
        'skip-bad': { type: 'boolean', default: false },
      },
    })
    const asOf = values['as-of']
    if (asOf !== undefined && !isDay(asOf))
      return complain(`review: --as-of: must be a real date written YYYY-MM-DD, not "${asOf}"`)
    const found = values.from === undefined ? fromYard(asOf) : fromFile(values.from, asOf, values['skip-bad'])
    if (typeof found === 'number') return found
    const united = values['united-as-loss']
    const text = values.json
      ? JSON.stringify(reviewOf(found.colonies, found.asOf, united))
      : summaryOf(found.colonies, found.asOf, united).join('\n')
    process.stdout.write(`${text}\n`)
    return 0
  } catch (error) {
    if (error instanceof StoreError) return complain(`review: ${error.message}`)
    if (error instanceof TypeError && 'code' in error) return complain(`review: ${error.message}`, USAGE)
    throw error
  }
}

interface Found {
  colonies: ColonyFacts[]
  asOf: Day
}

/** Reads the file; every bad row goes to stderr. An exit code when nothing may be made of it. */
function fromFile(file: string, asOf: Day | undefined, skipBad: boolean): Found | number {
  const today = dayIn(here(), new Date())
  const day = asOf ?? today
  let bytes: Uint8Array
  try {
    bytes = readFileSync(file === '-' ? 0 : file)
  } catch (error) {
    return complain(
      `review: cannot read ${file}: ${(error as NodeJS.ErrnoException).code ?? 'unknown error'}`,
    )
  }
  let text: string
  try {
    text = new TextDecoder('utf-8', { fatal: true }).decode(bytes)
  } catch {
    return complain(`review: ${file} is not UTF-8 text; save it as "CSV UTF-8"`)
  }
  // A look as of a past day takes a file that knows more: what came later is left out by the review itself.
  const { rows, problems } = readColonies(text, day > today ? day : today)
  if (problems.length > 0) {
    process.stderr.write(`${problems.map(lineOf).join('\n')}\n`)
    // A header that cannot be read leaves nothing to skip to.
    if (!skipBad || rows.length === 0) return 2
  }
  return { colonies: rows.map(factsOfRow), asOf: day }
}

function fromYard(asOf: Day | undefined): Found | number {
  const file = dataFile()
  if (!existsSync(file))
    return complain(
      `review: no yard's book at ${file}; name a file with --from, or set RESETTLE_DATA to the yard's folder`,
      USAGE,
    )
  const store = openStore(file, { migrate: false })
  try {
    const zone = store.settings.get('timeZone') ?? here()
    return { colonies: factsInStore(store, zone), asOf: asOf ?? dayIn(zone, new Date()) }
  } finally {
    store.close()
  }
}
