/** Quantiles of values with weights. */

/**
 * The values below which those shares of the weight lie, in the order of `shares` (ascending). Linear between neighbours, each
 * value standing at the middle of its own weight. Example: bands([1, 2, 3], [0.25, 0.5, 0.25], [0.5]) = [2].
 */
export function bands(
  values: readonly number[],
  weights: readonly number[],
  shares: readonly number[],
): number[] {
  const order = values.map((_, i) => i).sort((a, b) => (values[a] ?? 0) - (values[b] ?? 0))
  const out: number[] = []
  let run = 0
  let [lastAt, lastValue] = [0, values[order[0] ?? 0] ?? 0]
  let next = 0
  for (const i of order) {
    const [w, value] = [weights[i] ?? 0, values[i] ?? 0]
    if (w <= 0) continue
    const at = run + w / 2
    while (next < shares.length && at >= (shares[next] ?? 0)) {
      const part = at > lastAt ? ((shares[next] ?? 0) - lastAt) / (at - lastAt) : 1
      out.push(lastValue + part * (value - lastValue))
      next++
    }
    run += w
    lastAt = at
    lastValue = value
  }
  while (out.length < shares.length) out.push(lastValue)
  return out
}
