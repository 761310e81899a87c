/**
 * Holm's adjustment: with several questions asked of one set of colonies, some will look answered by chance alone. An
 * adjusted p below 0.05 may be read with at most 5 % risk of one false answer among all. Holm S (1979) Scandinavian Journal
 * of Statistics 6:65-70.
 */

/** Adjusted p by place. Example: holm([0.01, 0.04, 0.03]) = [0.03, 0.06, 0.06]. */
export function holm(ps: readonly number[]): number[] {
  const order = ps.map((_, i) => i).sort((a, b) => (ps[a] ?? 1) - (ps[b] ?? 1))
  const adjusted = ps.map(() => 1)
  let most = 0
  for (const [rank, i] of order.entries()) {
    most = Math.max(most, Math.min(1, (ps.length - rank) * (ps[i] ?? 1)))
    adjusted[i] = most
  }
  return adjusted
}
