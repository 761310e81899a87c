/** `resettle verify`: proves the database whole, changing nothing. Safe while the server runs. */
import { existsSync } from 'node:fs'
import { parseArgs } from 'node:util'
import { photoFolder, photoNow, shelfIn } from '../photos/shelf.ts'
import { dataFile, openStore, type Store, StoreError } from '../store/index.ts'

/** Exit code 0: whole. 1: problems, one line each on stderr. 2: it cannot be opened. */
export async function run(args: string[]): Promise<number> {
  try {
    const { positionals } = parseArgs({ args, allowPositionals: true })
    const [file = dataFile(), ...more] = positionals
    if (more.length > 0) throw new StoreError('give one database file, or none for the yard’s own')
    if (!existsSync(file)) throw new StoreError(`no database at ${file}`)
    const store = openStore(file, { migrate: false })
    try {
      const { problems, colonies, entries } = store.verify()
      problems.push(...missingPhotos(store, file))
      const ok = problems.length === 0
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

/** Photos that entries name and that are not beside the database, or are not what their name says. */
function missingPhotos(store: Store, file: string): string[] {
  const shelf = shelfIn(photoFolder(file))
  return [...store.journal()].flatMap(({ entry }) =>
    ('photos' in entry ? (entry.photos ?? []) : []).flatMap((id) => {
      const bytes = shelf.readNow(id)
      const problem = bytes === null ? 'is missing' : photoNow(id, bytes)
      return typeof problem === 'string' ? [`entry ${entry.id}: its photo ${id}.jpg ${problem}`] : []
    }),
  )
}
