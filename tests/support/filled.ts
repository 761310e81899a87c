/** The invented yard as a database file, filled once for each day by a whole run of tests: most only want it there. */
import { closeSync, copyFileSync, existsSync, openSync, renameSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { threadId } from 'node:worker_threads'
import { fill } from '../../demo/fill.ts'
import { fillOffice } from '../../demo/office.ts'
import type { Day } from '../../src/days.ts'
import { openStore } from '../../src/store/node.ts'

/** With what stands in the office (letters, removal sheets, papers), or what was seen at the boxes alone. */
export type Filled = 'whole' | 'boxes'

/** Milliseconds that a worker waits for another that fills the same yard; usually two, a minute on a busy machine. Judgement. */
const PATIENT = 120_000

/** Writes the yard as it stands at noon of that day (UTC). */
export function writeFilled(to: string, day: Day, filled: Filled = 'whole'): void {
  const folder = process.env.FILLED_AT
  // Outside a run of tests, pictures for the README say, there is nobody to share it with.
  if (folder === undefined) make(to, day, filled)
  else copyFileSync(shared(folder, day, filled), to)
}

let copies = 0
/** A yard as `writeFilled` writes it, in a file of its own that goes when the run of tests ends. */
export function filledFile(day: Day, filled: Filled): string {
  const file = join(process.env.FILLED_AT ?? tmpdir(), `copy-${process.pid}-${threadId}-${copies++}.db`)
  writeFilled(file, day, filled)
  return file
}

function shared(folder: string, day: Day, filled: Filled): string {
  const file = join(folder, `${filled}-${day}.db`)
  if (!existsSync(file) && begun(`${file}.begun`)) {
    make(`${file}.part`, day, filled)
    // In one step, so that nobody copies half of it.
    renameSync(`${file}.part`, file)
  }
  for (const until = Date.now() + PATIENT; !existsSync(file); pause())
    if (Date.now() > until) throw new Error(`nobody has filled the yard of ${day}`)
  return file
}

/** Whether it is for this worker to fill it: of several, only one can make the mark. */
function begun(mark: string): boolean {
  try {
    closeSync(openSync(mark, 'wx'))
    return true
  } catch {
    return false
  }
}

/** The others wait without taking anything of the processor. */
const pause = (): void => void Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 50)

function make(file: string, day: Day, filled: Filled): void {
  const store = openStore(file)
  store.settings.set('timeZone', 'UTC')
  fill(store, day, `${day}T12:00:00.000Z`)
  if (filled === 'whole') fillOffice(store, day, `${day}T12:00:00.000Z`)
  store.close()
}
