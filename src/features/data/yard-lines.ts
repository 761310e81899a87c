/** Reads the lines of a whole yard (yard-file.ts says which there are) and says what is wrong with them, line by line. */
import { problemLine, problemsOf } from '../../journal/index.ts'
import type { Photo, PhotoRead } from '../../photos/index.ts'
import { photoNow } from '../../photos/node.ts'
import { type YardLine, yardLine } from './yard-file.ts'

/** A file's lines, without their line feeds. Called once to look and once more to keep the photos, so it begins anew each time. */
export type Lines = () => Iterable<string>

type Located<T> = T & { at: number }
type PhotoLine = Extract<YardLine, { line: 'photo' }>
/** All but photos, which are too many to hold at once. */
export type KeptLine = Located<Exclude<YardLine, PhotoLine>>
export type LineOf<K extends KeptLine['line']> = Extract<KeptLine, { line: K }>

export interface ReadYard {
  lines: KeptLine[]
  /** A sentence each, naming the line. */
  problems: string[]
}

export const ofKind = <K extends KeptLine['line']>(lines: readonly KeptLine[], kind: K): LineOf<K>[] =>
  lines.filter((l): l is LineOf<K> => l.line === kind)

/** Reads and judges every line. Photos are looked at one at a time and let go again. */
export function readYard(source: Lines): ReadYard {
  const lines: KeptLine[] = []
  const problems: string[] = []
  let photos = 0
  for (const read of located(source)) {
    if (typeof read === 'string') problems.push(read)
    else if (read.line !== 'photo') lines.push(read)
    else {
      photos++
      const found = photoOf(read)
      if (!found.ok) problems.push(...found.problems.map((p) => `line ${read.at}: jpeg: ${p}`))
    }
  }
  return { lines, problems: [...problems, ...whole(lines, photos)] }
}

/** The photos of a file that was found good, one at a time. */
export function* photosIn(source: Lines): Generator<Photo> {
  for (const read of located(source)) {
    if (typeof read === 'string' || read.line !== 'photo') continue
    const found = photoOf(read)
    if (found.ok) yield found.photo
  }
}

/** Each line that holds something, or what is wrong with it. */
function* located(source: Lines): Generator<Located<YardLine> | string> {
  let at = 0
  for (const text of source()) {
    at++
    const raw = at === 1 ? text.replace(/^\uFEFF/, '') : text
    if (raw.trim() === '') continue
    let value: unknown
    try {
      value = JSON.parse(raw)
    } catch {
      yield `line ${at}: is not JSON`
      continue
    }
    const parsed = yardLine.safeParse(value)
    if (parsed.success) yield { ...parsed.data, at }
    else for (const p of problemsOf(parsed.error, value)) yield `line ${at}: ${problemLine(p)}`
  }
}

/** The photo of a line, or what is wrong with it. */
const photoOf = ({ id, jpeg }: PhotoLine): PhotoRead => photoNow(id, Buffer.from(jpeg, 'base64'))

/** Whether the file begins and ends as it must, and holds as many lines as it says. */
function whole(lines: readonly KeptLine[], photos: number): string[] {
  const end = lines.at(-1)
  if (lines[0]?.line !== 'yard') return ['line 1: is not the beginning of a yard: {"line":"yard",…}']
  if (end?.line !== 'end') return ['the file was cut short: its last line is not {"line":"end",…}']
  const count = (kind: KeptLine['line']): number => ofKind(lines, kind).length
  const problems: string[] = []
  for (const [name, kind] of [
    ['settings', 'setting'],
    ['entries', 'entry'],
  ] as const)
    if (end[name] !== count(kind))
      problems.push(`line ${end.at}: says ${end[name]} ${name}, but there are ${count(kind)}`)
  const frame = count('yard') + count('end')
  const others = lines.length + photos - frame - count('setting') - count('entry')
  if ((end.others ?? 0) !== others)
    problems.push(`line ${end.at}: says ${end.others ?? 0} other lines, but there are ${others}`)
  if (frame !== 2) problems.push('the file holds more than one yard')
  return problems
}
