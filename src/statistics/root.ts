/** One root of a function of one number. */

/**
 * Where f changes sign between a and b, to 1e-12 relative: regula falsi in the Illinois form, Dowell M, Jarratt P (1971)
 * BIT 11:168-174. Null when f is undefined on the way. Example: root((x) => x * x - 2, 0, 2) = 1.41421…
 */
export function root(f: (x: number) => number, a: number, b: number): number | null {
  let [x0, x1] = [a, b]
  let [f0, f1] = [f(a), f(b)]
  if (f1 === 0) return x1
  for (let i = 0; i < 200; i++) {
    const x = x1 - (f1 * (x1 - x0)) / (f1 - f0)
    const y = f(x)
    if (!Number.isFinite(y)) return null
    if (y === 0 || Math.abs(x - x1) <= 1e-12 * Math.max(1, Math.abs(x))) return x
    if (y * f1 < 0) {
      x0 = x1
      f0 = f1
    } else f0 /= 2
    x1 = x
    f1 = y
  }
  return x1
}
