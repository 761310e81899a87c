/** `resettle verify`: proves the database whole, changing nothing. Safe while the server runs. */
import { existsSync } from 'node:fs'
import { parseArgs } from 'node:util'
import { dataFile, openStore, StoreError } from '../store/index.ts'

/** Exit code 0: whole. 1: problems, one line each on stderr. 2: it cannot be opened. */
export async function run(args: string[]): Promise<number> {
  try {
    const { positionals } = parseArgs({ args, allowPositionals: true })
    const [file = dataFile(), ...more] = positionals
    if (more.length > 0) throw new StoreError('give one database file, or none for the yard’s own')
    if (!existsSync(file)) throw new StoreError(`no database at ${file}`)
    const store = openStore(file, { migrate: false })
    try {
      const { ok, problems, colonies, entries } = store.verify()
      for (const problem of problems) process.stderr.write(`${problem}\n`)
      if (ok) process.stdout.write(`whole: ${entries} entries, ${colonies} colonies\n`)
      return ok ? 0 : 1
    } finally {
      store.close()
    }
  } catch (error) {
    if (!(error instanceof Error)) throw error
    process.stderr.write(`resettle verify: ${error.message}\n`)
    return 2
  }
}
