/** Parts of a README that are written by a script: what stands between `<!-- name -->` and `<!-- /name -->`. */
import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { ROOT } from './files.ts'

const shapeOf = (name: string): RegExp => new RegExp(`(<!-- ${name} -->)([\\s\\S]*?)(<!-- /${name} -->)`)

/** What stands there now; empty when the file has no such part. */
export const writtenIn = (file: string, name: string): string =>
  shapeOf(name)
    .exec(readFileSync(join(ROOT, file), 'utf8'))?.[2]
    ?.trim() ?? ''

/** Writes that part anew. Throws when the file has no such part. */
export function writeInto(file: string, name: string, text: string): void {
  const [path, shape] = [join(ROOT, file), shapeOf(name)]
  const before = readFileSync(path, 'utf8')
  if (!shape.test(before)) throw new Error(`${file} has no <!-- ${name} -->`)
  writeFileSync(
    path,
    before.replace(shape, (_, open: string, _old, close: string) => `${open}\n\n${text}\n\n${close}`),
  )
}
