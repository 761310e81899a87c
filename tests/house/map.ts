/** The map of rooms in DEVELOPERS.md, written from the floor plan. Run it after a change: npx tsx tests/house/map.ts */
import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { ROOT } from './files.ts'
import { ROOMS, type Room } from './rooms.ts'

const FILE = join(ROOT, 'DEVELOPERS.md')
const BETWEEN = /(<!-- map -->\n)([\s\S]*?)(\n?<!-- \/map -->)/

/** One line a room, from the ground up. */
export const mapOf = (rooms: Readonly<Record<string, Room>>): string =>
  Object.entries(rooms)
    .map(([name, { holds, runs }]) => `- \`${pathOf(name)}\` (${runs}): ${holds}`)
    .join('\n')

const pathOf = (room: string): string => (room === 'src' || room.startsWith('web') ? room : `src/${room}`)

/** The map as it stands there. */
export const writtenMap = (): string => BETWEEN.exec(readFileSync(FILE, 'utf8'))?.[2] ?? ''

if (process.argv[1] === import.meta.filename)
  writeFileSync(
    FILE,
    readFileSync(FILE, 'utf8').replace(BETWEEN, (_, open, _old, close) => `${open}${mapOf(ROOMS)}${close}`),
  )
