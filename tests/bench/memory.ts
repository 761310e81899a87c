/**
 * Resident memory of the built server on a small machine's yard, 60 colonies in it and 5,000 that left: after the start,
 * after a day's pages and entries, and with the long pages of the past. Goal: 180 MB.
 *
 *     npm run bench -- memory
 */
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout } from 'node:timers/promises'
import { backupTaken, look, madeBook, memoryOf, openTag, SERVE, served } from './load.ts'

const PAGES = ['/', '/yard', '/round', '/colony/TAG', '/colony/TAG/visit', '/paper', '/health', '/changes']
const PAST = ['/supplies', '/review', '/yard-book', '/changes/csv', '/data/export']
/** Until the reading thread has gone (src/node/reader/reader.ts). */
const AFTER_MS = 125_000
/** A helper's day: so many boxes, each opened and written down. */
const BOXES = 150

export async function bench(): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'resettle-memory-'))
  const session = await madeBook(join(folder, 'resettle.db'))
  const server = await served(SERVE, { RESETTLE_DATA: folder, RESETTLE_MEMORY: 'small' })
  const say = (when: string): void => {
    const { now, most } = memoryOf(server)
    process.stdout.write(`  memory ${when.padEnd(44)} ${now.toFixed(0)} MB, at most ${most.toFixed(0)} MB\n`)
  }
  const headers = { Cookie: `resettle=${session}`, Origin: server.url }
  const ask = async (path: string): Promise<void> => {
    const answer = await fetch(server.url + path.replace('TAG', openTag()), { headers })
    await answer.arrayBuffer()
    if (answer.status !== 200) throw new Error(`${path}: ${answer.status}`)
  }
  try {
    await backupTaken(folder)
    await setTimeout(3000)
    say('after the start and a backup')
    for (let n = 0; n < BOXES; n++) {
      for (const path of PAGES.slice(n % 5, (n % 5) + 3)) await ask(path)
      const body = JSON.stringify(look(openTag()))
      const sent = await fetch(`${server.url}/entries`, {
        method: 'POST',
        headers: { ...headers, 'Content-Type': 'application/json' },
        body,
      })
      if (sent.status !== 200) throw new Error(`an entry: ${sent.status}`)
    }
    for (const path of PAGES) await ask(path)
    say(`after ${BOXES} boxes`)
    for (const path of PAST) await ask(path)
    say('after supplies, review, yard book, an export')
    await setTimeout(AFTER_MS)
    say('two minutes later')
  } finally {
    server.child.kill()
    rmSync(folder, { recursive: true, force: true })
  }
}
