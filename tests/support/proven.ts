/**
 * Long studies: what one found is kept in tests/proven/, with a hash of all code and figures that it rests on. While that
 * hash holds, the kept result is what would come out again, and is taken; when it does not, or in the long run, the study
 * is run. Either way the test judges the result. `npm run prove` runs all of them and keeps what was found.
 */
import { createHash } from 'node:crypto'
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { dirname, join, relative, resolve } from 'node:path'
import { LONG } from './long.ts'

const ROOT = resolve(import.meta.dirname, '../..')
export const PROVE = process.env.PROVE === '1'
const IMPORTED = /(?:\bfrom|\bimport)\s*\(?\s*'([^']+)'/g

/** A file and every file of ours that it imports, and they import, in one order; what comes from npm is known by package-lock.json. An import that stands in a text names no file. */
export function restsOn(file: string): string[] {
  const found = new Set<string>([join(ROOT, 'package-lock.json')])
  const follow = (at: string): void => {
    if (found.has(at)) return
    found.add(at)
    if (!/\.tsx?$/.test(at)) return
    for (const [, to = ''] of readFileSync(at, 'utf8').matchAll(IMPORTED))
      if (to.startsWith('.') && existsSync(resolve(dirname(at), to))) follow(resolve(dirname(at), to))
  }
  follow(file)
  return [...found].sort()
}

function hashOf(files: readonly string[]): string {
  const hash = createHash('sha256')
  for (const file of files)
    hash
      .update(`${relative(ROOT, file)}\0`)
      .update(readFileSync(file))
      .update('\0')
  return hash.digest('hex')
}

interface Kept<T> {
  hash: string
  result: T
}

/** What is kept of a study, if it still holds, and a way to keep what it finds when it is run again. */
function kept<T>(name: string, code: string): { result: T } | { keep: (found: T) => T } {
  const file = join(ROOT, 'tests/proven', `${name}.json`)
  const hash = hashOf(restsOn(code))
  if (!LONG && !PROVE && existsSync(file)) {
    const was = JSON.parse(readFileSync(file, 'utf8')) as Kept<T>
    if (was.hash === hash) return was
    console.log(`${name}: what it rests on has changed, so it is run; npm run prove keeps the result`)
  }
  return {
    keep: (found) => {
      const result = JSON.parse(JSON.stringify(found)) as T
      if (PROVE) writeFileSync(file, `${JSON.stringify({ hash, result }, null, 2)}\n`)
      return result
    },
  }
}

/**
 * What a study found. Its figures must be JSON.
 * @param name of the file in tests/proven/
 * @param code the file of the study (`import.meta.filename`), from which everything it rests on is reached
 */
export function proven<T>(name: string, code: string, study: () => T): T {
  const was = kept<T>(name, code)
  return 'result' in was ? was.result : was.keep(study())
}

/** The same of a study that takes turns. */
export async function provenLater<T>(name: string, code: string, study: () => Promise<T>): Promise<T> {
  const was = kept<T>(name, code)
  return 'result' in was ? was.result : was.keep(await study())
}
