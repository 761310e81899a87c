/** The map of rooms in DEVELOPERS.md, written from the floor plan. Run it after a change: npx tsx tests/house/map.ts */
import { writeInto, writtenIn } from './between.ts'
import { ROOMS, type Room } from './rooms.ts'

/** One line a room, from the ground up. */
export const mapOf = (rooms: Readonly<Record<string, Room>>): string =>
  Object.entries(rooms)
    .map(([name, { holds, runs }]) => `- \`${pathOf(name)}\` (${runs}): ${holds}`)
    .join('\n')

const pathOf = (room: string): string => (room === 'src' || room.startsWith('web') ? room : `src/${room}`)

/** The map as it stands there. */
export const writtenMap = (): string => writtenIn('DEVELOPERS.md', 'map')

if (process.argv[1] === import.meta.filename) writeInto('DEVELOPERS.md', 'map', mapOf(ROOMS))
