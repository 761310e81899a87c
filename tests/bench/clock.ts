/** Times calls and prints the result. */

/** Milliseconds of each of `calls` calls, sorted, after `warmUp` that don't count. */
export function timed(call: () => void, calls: number, warmUp = Math.ceil(calls / 5)): number[] {
  for (let n = 0; n < warmUp; n++) call()
  const times: number[] = []
  for (let n = 0; n < calls; n++) {
    const start = process.hrtime.bigint()
    call()
    times.push(Number(process.hrtime.bigint() - start) / 1e6)
  }
  return times.sort((a, b) => a - b)
}

/** The value below which a share `q` (0 to 1) of sorted times lies. */
export const quantile = (sorted: readonly number[], q: number): number =>
  sorted[Math.min(sorted.length - 1, Math.floor(q * sorted.length))] ?? Number.NaN

/** One line: name, median and 95th percentile in ms, and the goal. Returns the median. */
export function report(name: string, sorted: readonly number[], goal = ''): number {
  const [median, p95] = [quantile(sorted, 0.5), quantile(sorted, 0.95)]
  const figures = `median ${median.toFixed(3)} ms, p95 ${p95.toFixed(3)} ms`
  process.stdout.write(`${name.padEnd(58)} ${figures}${goal && `   (goal: ${goal})`}\n`)
  return median
}
