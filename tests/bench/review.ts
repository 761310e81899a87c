/**
 * Measures Review's statistics: `tsx tests/bench/review.ts`. Invented colonies, the same ones every time.
 * R, where it is installed with its package survival, is timed in the same run on the same rows; else its absence is said.
 */
import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { addDays } from '../../src/days.ts'
import { groupsOf, staysOf } from '../../src/features/review/cohort.ts'
import { typesOnDay } from '../../src/features/review/comparison.ts'
import { goesWithLosing } from '../../src/features/review/factors.ts'
import { countedBy, reviewOfTypes } from '../../src/features/review/review.ts'
import { yardStay } from '../../src/features/review/stay.ts'
import { asLost, countByDay } from '../../src/statistics/day-counts.ts'
import { kaplanMeier } from '../../src/statistics/kaplan-meier.ts'
import { logRank } from '../../src/statistics/log-rank.ts'
import type { ColonyFacts } from '../../src/stays/index.ts'

const SIZES = [1_000, 10_000, 100_000, 1_000_000]
const AS_OF = '2026-10-01'
const TYPES = ['wall', 'tree', 'swarm', 'trap-out']

/** mulberry32, public domain: a small seeded source of numbers in [0, 1). */
function seeded(seed: number): () => number {
  let a = seed
  return () => {
    a = (a + 0x6d2b79f5) | 0
    let t = Math.imul(a ^ (a >>> 15), 1 | a)
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
}

function colonies(count: number): ColonyFacts[] {
  const random = seeded(count)
  const pick = <T>(list: readonly [T, ...T[]]): T => list[Math.floor(random() * list.length)] ?? list[0]
  return Array.from({ length: count }, (_, i) => {
    const type = Math.floor(random() * TYPES.length)
    const intakeOn = addDays('2026-04-01', Math.floor(random() * 120))
    const outdoorC = Math.round((15 + random() * 20) * 10) / 10
    const day = Math.floor(
      (-Math.log(1 - random()) * (60 - 8 * type)) / (1 + Math.max(0, outdoorC - 25) / 10),
    )
    const on = addDays(intakeOn, day > 45 ? 30 + Math.floor(random() * 15) : day)
    const what = day > 45 ? ('moved-out' as const) : pick(['died', 'died', 'absconded', 'united'] as const)
    return {
      tag: `C${i}`,
      removalType: TYPES[type] ?? 'wall',
      yard: pick(['home', 'orchard']),
      intakeOn,
      queen: pick(['caged', 'loose', 'unseen', 'lost'] as const),
      broodSalvaged: random() < 0.6,
      outdoorC,
      hoursOpenToBoxed: Math.round(random() * 60) / 10,
      method: pick(['vacuum', 'brushed', 'trap'] as const),
      removedBy: null,
      lookedAfterBy: null,
      lastSeen: null,
      outcome: on <= AS_OF && random() < 0.95 ? { what, on, into: null } : null,
      followedFrom: intakeOn,
    }
  })
}

/** Median and best time of several runs, after two to warm up, ms. On a busy machine the best is the nearer to true. */
function timed(runs: number, work: () => unknown): { median: number; best: number } {
  work()
  work()
  const times = Array.from({ length: runs }, () => {
    const from = performance.now()
    work()
    return performance.now() - from
  }).sort((a, b) => a - b)
  return { median: times[Math.floor(times.length / 2)] ?? Number.NaN, best: times[0] ?? Number.NaN }
}

function everything(all: ColonyFacts[]): void {
  const types = countedBy(all, AS_OF, (c) => c.removalType)
  const { names, counts } = types
  reviewOfTypes(types, AS_OF)
  const curves = counts.map((c) => kaplanMeier(asLost(c, [1, 2])))
  typesOnDay(names, curves, 30)
  typesOnDay(names, curves, 60)
  goesWithLosing(all, AS_OF)
  yardStay(all, AS_OF)
}

/** survfit and survdiff in R on the same rows, ms; null when R cannot be run. */
function inR(day: ArrayLike<number>, lost: ArrayLike<number>, group: ArrayLike<number>): number | null {
  const folder = mkdtempSync(join(tmpdir(), 'resettle-bench-'))
  try {
    const rows = Array.from(day, (d, i) => `${d},${lost[i]},${group[i]}`)
    writeFileSync(join(folder, 'rows.csv'), `day,lost,group\n${rows.join('\n')}\n`)
    const script = `suppressMessages(library(survival)); d <- read.csv("rows.csv")
      once <- function() { survfit(Surv(day, lost) ~ group, d, conf.type = "log-log"); invisible(survdiff(Surv(day, lost) ~ group, d)) }
      invisible(once()); cat(median(sapply(1:5, function(i) system.time(once())[["elapsed"]])) * 1000)`
    writeFileSync(join(folder, 'once.R'), script)
    const run = spawnSync('Rscript', ['--vanilla', 'once.R'], { cwd: folder, encoding: 'utf8' })
    if (run.error !== undefined) return null
    const time = Number.parseFloat(run.stdout)
    if (run.status !== 0 || !Number.isFinite(time))
      throw new Error(`R did not say a time: ${run.stdout}${run.stderr}`)
    return time
  } finally {
    rmSync(folder, { recursive: true })
  }
}

const ms = (n: number): string => `${n.toFixed(n < 10 ? 2 : 0)} ms`
const both = (t: { median: number; best: number }): string => `${ms(t.median)} (best ${ms(t.best)})`
let absent = false
for (const size of SIZES) {
  const all = colonies(size)
  const stays = staysOf(all, AS_OF)
  const lost = Uint8Array.from(stays.way, (w) => (w === 1 || w === 2 ? 1 : 0))
  const { grouping } = groupsOf(all, (c) => c.removalType)
  const core = (): void => {
    const counts = countByDay({ day: stays.day, way: lost }, 1, grouping)
    for (const c of counts) kaplanMeier(c)
    logRank(counts)
  }
  const runs = size > 100_000 ? 5 : 15
  const own = timed(runs, core)
  const whole = timed(size > 100_000 ? 3 : 7, () => everything(all))
  const r: number | null = absent ? null : inR(stays.day, lost, grouping.of)
  absent ||= r === null
  const beside =
    r === null
      ? 'R: not installed here, not timed'
      : `R: ${ms(r)}, ${(r / own.median).toFixed(0)} times as long`
  console.log(
    `${size} colonies: curves with limits and log-rank, 4 groups: ${both(own)}; ${beside}; all statistics from facts: ${both(whole)}`,
  )
}
