/** All colonies of a world under some rules, on one thread or on all. */
import { fork } from 'node:child_process'
import { availableParallelism } from 'node:os'
import { inProcess, throughLines } from './ask.ts'
import { type Costs, DEFAULT_COSTS } from './keeper.ts'
import { play, type Result } from './play.ts'
import { RULES } from './rules/all.ts'
import type { World } from './world.ts'

export interface Job {
  world: World
  /** Names of rules. */
  rules: readonly string[]
  seed: number
  /** Colonies from..to-1. */
  from: number
  to: number
  /** How the advice is asked. */
  ask: 'plan' | 'lines'
  costs?: Costs
}

/** By rule, the results of its colonies in order. */
export type Results = Record<string, Result[]>

export async function measure(job: Job): Promise<Results> {
  const asker = job.ask === 'lines' ? throughLines() : inProcess()
  const settings = { asker, costs: job.costs ?? DEFAULT_COSTS }
  const results: Results = {}
  for (const name of job.rules) {
    const rule = RULES.find((r) => r.name === name)
    if (rule === undefined) throw new RangeError(`no rule "${name}"`)
    const row: Result[] = []
    for (let n = job.from; n < job.to; n++) row.push(await play(job.world, rule, job.seed, n, settings))
    results[name] = row
  }
  asker.close()
  return results
}

/** The same on every core: each process takes a run of colonies, and they are put together in order. */
export async function measureOnAllCores(job: Job): Promise<Results> {
  const cores = Math.min(availableParallelism(), 8)
  const size = Math.ceil((job.to - job.from) / cores)
  const parts = Array.from({ length: cores }, (_, i) => ({
    ...job,
    from: job.from + i * size,
    to: Math.min(job.to, job.from + (i + 1) * size),
  })).filter((part) => part.from < part.to)
  const done = await Promise.all(parts.map(inChild))
  return Object.fromEntries(job.rules.map((rule) => [rule, done.flatMap((part) => part[rule] ?? [])]))
}

function inChild(job: Job): Promise<Results> {
  return new Promise((resolve, reject) => {
    const child = fork(new URL('./child.ts', import.meta.url).pathname, { execArgv: ['--import', 'tsx'] })
    child.once('message', (results) => {
      resolve(results as Results)
      child.disconnect()
    })
    child.once('exit', (code) => reject(new Error(`a part of the bench ended with exit ${code}`)))
    child.send(job)
  })
}
