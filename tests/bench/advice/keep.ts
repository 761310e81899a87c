/** The closed loop in few numbers, as the page of the rates shows it: BENCH_KEEP=1 writes them. */
import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Results } from './measure.ts'
import { best } from './report.ts'
import { cost, type Estimate, rowOf, saved } from './tally.ts'
import type { World } from './world.ts'

const ROOT = new URL('../../..', import.meta.url).pathname
const FILE = join(ROOT, 'src', 'features', 'rates', 'closed-loop.json')

/** Shares to a tenth of a per cent, costs to a whole unit: more than that is noise. */
const share = (e: Estimate) => ({
  mean: round(e.mean, 3),
  lower: round(e.lower, 3),
  upper: round(e.upper, 3),
})
const round = (n: number, digits: number): number => Number(n.toFixed(digits))

function lineOf(world: World, results: Results) {
  const advice = results['the advice']
  const truth = results['a rule that knows the truth']
  const [most, cheapest] = [best(results, saved, 1), best(results, cost, -1)]
  if (advice === undefined || truth === undefined || most === null || cheapest === null)
    throw new Error(`${world.name}: keep needs every rule`)
  const own = rowOf('the advice', advice)
  return {
    name: world.name,
    about: world.about,
    saved: share(own.fates.saved),
    cost: round(own.cost.mean, 0),
    bestFixed: { rule: most[0], saved: share(rowOf(most[0], most[1]).fates.saved) },
    cheapest: { rule: cheapest[0], cost: round(rowOf(cheapest[0], cheapest[1]).cost.mean, 0) },
    truth: share(rowOf('truth', truth).fates.saved),
  }
}

/** Writes what the page shows. Throws where a rule was left out. */
export function keep(
  ran: readonly { world: World; results: Results }[],
  seed: number,
  colonies: number,
): void {
  const worlds = ran.map(({ world, results }) => lineOf(world, results))
  const command = `BENCH_KEEP=1 BENCH_COLONIES=${colonies} npm run bench -- advice`
  writeFileSync(FILE, `${JSON.stringify({ command, seed, colonies, worlds }, null, 2)}\n`)
}
