/** `resettle rebuild`: makes the projections again from the journal. */

import { existsSync } from 'node:fs'
import { parseArgs } from 'node:util'
import { dayIn, isDay } from '../../days.ts'
import { dataFile, openStore, StoreError } from '../../store/node.ts'

/** Exit code 0 when made, 2 when it cannot be. */
export async function run(args: string[]): Promise<number> {
  try {
    const { values } = parseArgs({ args, options: { 'as-of': { type: 'string' } } })
    const asOf = values['as-of']
    if (asOf !== undefined && !isDay(asOf))
      throw new StoreError(`--as-of must be a date written YYYY-MM-DD, not "${asOf}"`)
    const file = dataFile()
    if (!existsSync(file)) throw new StoreError(`no database at ${file}`)
    const store = openStore(file)
    try {
      const zone = store.settings.get('timeZone') ?? Intl.DateTimeFormat().resolvedOptions().timeZone
      const { colonies, entries } = store.rebuild(asOf ?? dayIn(zone, new Date()))
      process.stdout.write(`made again: ${colonies} colonies from ${entries} entries\n`)
      return 0
    } finally {
      store.close()
    }
  } catch (error) {
    if (!(error instanceof Error)) throw error
    process.stderr.write(`resettle rebuild: ${error.message}\n`)
    return 2
  }
}
