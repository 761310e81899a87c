/**
 * The server, killed with SIGKILL at random moments under write load, 200 times in the long run and 10 times every day:
 * every acknowledged entry is there, none twice, and verify finds nothing. Two servers on two databases side by side.
 */
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { built } from '../support/build.ts'
import { LONG_ENOUGH, often } from '../support/long.ts'
import { killAgainAndAgain } from './killing.ts'

const OUTPUT = fileURLToPath(new URL('../output/faults', import.meta.url))
let folder = ''
let program = ''
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'resettle-kill-'))
  program = await built('tests/store/killed-server.ts', OUTPUT)
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

/** Deaths of each of the two servers. */
const KILLS = often(200, 5)

test(`killed ${2 * KILLS} times while four phones write: nothing acknowledged is lost, nothing is double`, {
  timeout: LONG_ENOUGH,
}, async () => {
  const lanes = await Promise.all(
    [1, 2].map((seed) => {
      // A folder each: two servers on one are refused, and would wait for each other's death.
      const own = join(folder, `${seed}`)
      mkdirSync(own)
      return killAgainAndAgain({ program, file: join(own, 'resettle.db'), kills: KILLS, seed })
    }),
  )
  for (const lane of lanes) {
    expect(lane).toMatchObject({ kills: KILLS, lost: [], extra: [], problems: [] })
    expect(lane.acknowledged).toBeGreaterThan(KILLS / 5)
    // The deaths did hit writes under way.
    expect(lane.inFlight).toBeGreaterThan(KILLS / 2)
  }
  const sum = (key: 'kills' | 'acknowledged' | 'inFlight' | 'writtenUnheard') =>
    lanes.reduce((n, l) => n + l[key], 0)
  console.log(
    `${sum('kills')} kills: ${sum('acknowledged')} entries acknowledged, ${sum('inFlight')} unanswered (${sum('writtenUnheard')} of them written), 0 lost, 0 double`,
  )
})
