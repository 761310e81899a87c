/** A small seeded random source (mulberry32, public domain) so that every run draws the same. */
export type Random = () => number

export function seeded(seed: number): Random {
  let a = seed >>> 0
  return () => {
    a = (a + 0x6d2b79f5) >>> 0
    let t = a
    t = Math.imul(t ^ (t >>> 15), t | 1)
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61)
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
}

/** Index drawn with those weights; the rest up to 1 falls to the index after the last. */
export function draw(random: Random, weights: readonly number[]): number {
  let u = random()
  for (let i = 0; i < weights.length; i++) {
    u -= weights[i] ?? 0
    if (u < 0) return i
  }
  return weights.length
}
