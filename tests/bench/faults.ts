/**
 * Kills the server many times under write load and tells what was kept; the tests do the same with 200 deaths.
 *
 *     npm run bench -- faults          (BENCH_KILLS=1000)
 */
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { killAgainAndAgain } from '../store/killing.ts'
import { built } from '../support/build.ts'

const OUTPUT = fileURLToPath(new URL('../output/bench-faults', import.meta.url))
const KILLS = Number(process.env.BENCH_KILLS ?? 200)

export async function bench(): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'resettle-faults-'))
  const seed = Date.now() % 2 ** 31
  try {
    const program = await built('tests/store/killed-server.ts', OUTPUT)
    const started = performance.now()
    const k = await killAgainAndAgain({ program, file: join(folder, 'resettle.db'), kills: KILLS, seed })
    const seconds = ((performance.now() - started) / 1000).toFixed(0)
    process.stdout.write(
      `faults: ${k.kills} kills in ${seconds} s (seed ${seed}): ${k.acknowledged} entries acknowledged, ${k.inFlight} unanswered when the server died, ${k.writtenUnheard} of them written; ${k.lost.length} lost, ${k.extra.length} double, ${k.problems.length} problems found by verify\n`,
    )
    if (k.lost.length + k.extra.length + k.problems.length > 0)
      throw new Error('entries were lost or doubled')
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}
