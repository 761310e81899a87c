/**
 * A number that changes whenever the rules of planning do: a hash of the code that makes projections. Kept in the
 * database (PRAGMA user_version), it shows at start that the projections were made by other rules, so that nobody has
 * to remember to rebuild after an update.
 */
import { createHash } from 'node:crypto'
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

const SOURCE = fileURLToPath(new URL('..', import.meta.url))
const RULES = ['biology', 'journal', 'recovery', 'forecast', 'decision', 'stays']
const FILES = [
  'days.ts',
  'store/exposures.ts',
  'store/fold.ts',
  'store/planner.ts',
  'store/project.ts',
  'store/stay-row.ts',
  'store/tracer.ts',
]

/** Put in by the build, whose one file has no sources beside it. */
declare const RULES_STAMP: number | undefined

let stamp: number | undefined

/** 1 to 2^31 - 1; the same for the same code. */
export function rulesStamp(): number {
  if (typeof RULES_STAMP === 'number') return RULES_STAMP
  stamp ??= hashOf(sources()).readUInt32BE() & 0x7fffffff || 1
  return stamp
}

function sources(): string[] {
  const inRooms = RULES.flatMap((room) =>
    readdirSync(join(SOURCE, room), { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith('.ts'))
      .map((name) => join(room, name)),
  )
  return [...FILES, ...inRooms].sort()
}

function hashOf(files: string[]): Buffer {
  const hash = createHash('sha256')
  for (const file of files) hash.update(readFileSync(join(SOURCE, file)))
  return hash.digest()
}
