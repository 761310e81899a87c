/** The invented yard several times over, each copy with tags and yards of its own: how pages look when there are two hundred boxes. */
import { v7 } from 'uuid'
import { demoEntries } from '../../demo/entries.ts'
import { momentOf } from '../../demo/ids.ts'
import { seeded } from '../../demo/seeded.ts'
import type { Day } from '../../src/days.ts'
import type { Entry } from '../../src/journal/index.ts'

const UUID = /"([0-9a-f]{8}-(?:[0-9a-f]{4}-){3}[0-9a-f]{12})"/g
/** Colonies of these weeks: past seasons' tags begin with their year. */
const TAG = /"([MT])-(\d\d)"/g

/** Another id of the same moment, the same on every run. */
function another(id: string, n: number): string {
  const draw = seeded(`${id} ${n}`)
  const random = Uint8Array.from({ length: 16 }, () => Math.floor(draw() * 256))
  return v7({ msecs: momentOf(id), random })
}

/** One copy: M-01 becomes M3-01 in the yard "Marl Hollow 3". Ids keep the moment they were made at. */
function copied(entries: readonly Entry[], n: number): Entry[] {
  const text = JSON.stringify(entries)
    .replaceAll(UUID, (_, id: string) => `"${another(id, n)}"`)
    .replaceAll(TAG, (_, letter: string, number: string) => `"${letter}${n}-${number}"`)
    .replaceAll(/"yard":"([^"]+)"/g, (_, yard: string) => `"yard":"${yard} ${n}"`)
  return JSON.parse(text) as Entry[]
}

/** The live colonies of the demo `copies` times more, in the order in which they were typed in: to be added to the demo. */
export function moreEntries(today: Day, copies: number): Entry[] {
  const live = demoEntries(today).filter((e) => /^[MT]-/.test(e.colony))
  return Array.from({ length: copies }, (_, i) => copied(live, i + 2))
    .flat()
    .sort((a, b) => (a.id < b.id ? -1 : 1))
}
