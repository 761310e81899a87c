/**
 * `npm run bench -- advice`: what becomes of simulated colonies whose keeper does as told. Options by environment:
 * BENCH_COLONIES (300), BENCH_SEED (1), BENCH_WORLDS (parts of names, comma between; `random:5` adds five drawn worlds),
 * BENCH_RULES (parts of names), BENCH_ASK (`plan` in process, `lines` through `resettle plan --lines -`), BENCH_JSON (a file),
 * BENCH_KEEP (anything: writes what the page of the rates shows).
 */
import { writeFileSync } from 'node:fs'
import { keep } from './keep.ts'
import { type Job, measureOnAllCores, type Results } from './measure.ts'
import { reportOf } from './report.ts'
import { RULES } from './rules/all.ts'
import type { World } from './world.ts'
import { randomWorld, WORLDS } from './worlds.ts'

const listOf = (text: string | undefined): string[] => (text ?? '').split(',').filter((part) => part !== '')

function chosen<T extends { name: string }>(all: readonly T[], parts: readonly string[]): T[] {
  if (parts.length === 0) return [...all]
  const unknown = parts.filter((part) => !all.some((one) => one.name.includes(part)))
  if (unknown.length > 0)
    throw new RangeError(`there is no ${unknown.join(', ')} among: ${all.map((one) => one.name).join('; ')}`)
  return all.filter((one) => parts.some((part) => one.name.includes(part)))
}

/** The worlds named; `random:5` stands for five drawn ones. */
function worldsOf(text: string | undefined, seed: number): World[] {
  const parts = listOf(text)
  const drawn = parts.find((part) => part.startsWith('random:'))
  const named = parts.filter((part) => part !== drawn)
  const count = drawn === undefined ? 0 : Number(drawn.slice('random:'.length))
  return [
    ...(named.length > 0 || drawn === undefined ? chosen(WORLDS, named) : []),
    ...Array.from({ length: count }, (_, n) => randomWorld(seed, n)),
  ]
}

export async function bench(env: NodeJS.ProcessEnv = process.env): Promise<void> {
  const seed = Number(env.BENCH_SEED ?? 1)
  const colonies = Number(env.BENCH_COLONIES ?? 300)
  const rules = chosen(RULES, listOf(env.BENCH_RULES)).map((rule) => rule.name)
  const ask: Job['ask'] = env.BENCH_ASK === 'lines' ? 'lines' : 'plan'
  const all: Record<string, Results> = {}
  const worlds = worldsOf(env.BENCH_WORLDS, seed)
  process.stdout.write(`simulated: ${colonies} colonies a world, the same for every rule; seed ${seed}\n`)
  for (const world of worlds) {
    const started = performance.now()
    const results = await measureOnAllCores({ world, rules, seed, from: 0, to: colonies, ask })
    all[world.name] = results
    const seconds = ((performance.now() - started) / 1000).toFixed(1)
    process.stdout.write(`${reportOf(world, results)}\n(${seconds} s)\n`)
  }
  if (env.BENCH_KEEP !== undefined)
    keep(
      worlds.map((world) => ({ world, results: all[world.name] ?? {} })),
      seed,
      colonies,
    )
  if (env.BENCH_JSON !== undefined) writeFileSync(env.BENCH_JSON, JSON.stringify(all))
}
