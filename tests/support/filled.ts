/** The invented yard as a database file, filled once for each day by a worker: journeys only want it there. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fill } from '../../demo/fill.ts'
import { fillOffice } from '../../demo/office.ts'
import type { Day } from '../../src/days.ts'
import { openStore } from '../../src/store/node.ts'

const made = new Map<Day, Buffer>()

/** Writes the yard as it stands at noon of that day (UTC). */
export function writeFilled(to: string, day: Day): void {
  const bytes = made.get(day) ?? filled(day)
  made.set(day, bytes)
  writeFileSync(to, bytes)
}

function filled(day: Day): Buffer {
  const folder = mkdtempSync(join(tmpdir(), 'resettle-filled-'))
  const file = join(folder, 'resettle.db')
  const store = openStore(file)
  store.settings.set('timeZone', 'UTC')
  fill(store, day, `${day}T12:00:00.000Z`)
  fillOffice(store, day, `${day}T12:00:00.000Z`)
  store.close()
  const bytes = readFileSync(file)
  rmSync(folder, { recursive: true })
  return bytes
}
