/** The files of the house, what they import, and the room each is in. */
import { readdirSync, readFileSync } from 'node:fs'
import { dirname, join, normalize } from 'node:path'

export const ROOT = join(import.meta.dirname, '../..')

const STATIC = /^(?:import|export)\b[^'";]*?\bfrom '([^']+)'/gm
const BARE = /^import '([^']+)'/gm
const DYNAMIC = /\bimport\('([^']+)'\)/g

/** Every source file below those folders, as 'src/recovery/plan.ts'. */
export const filesIn = (...folders: string[]): string[] =>
  folders.flatMap((folder) =>
    readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' })
      .filter((f) => /\.tsx?$/.test(f))
      .map((f) => join(folder, f)),
  )

export const textOf = (file: string): string => readFileSync(join(ROOT, file), 'utf8')

/** What a file imports, as it is written there. */
export const importsOf = (file: string): string[] => importsIn(textOf(file))
export const importsIn = (text: string): string[] =>
  [STATIC, BARE, DYNAMIC].flatMap((shape) => [...text.matchAll(shape)].map((m) => m[1] ?? ''))

/** Where a relative import leads, from the top of the project. */
export const targetOf = (file: string, target: string): string => normalize(join(dirname(file), target))

/** The room of a file: 'src/recovery/fold/act.ts' is in 'recovery', 'src/days.ts' in 'src'. */
export function roomOf(file: string): string {
  const [top = '', first = '', second = '', ...rest] = file.split('/')
  if (top === 'src' && first === 'features') return rest.length > 0 ? `features/${second}` : 'features'
  if (top === 'src') return second === '' ? 'src' : first
  return second === '' || top === 'demo' ? top : `${top}/${first}`
}

/** Where the files of a room lie. */
export const folderOf = (room: string): string =>
  room === 'src' || room === 'demo' || room.startsWith('web') ? room : `src/${room}`
