/** Chance that is the same on every run: the invented past must not change between two starts of the demo. */

/** Draws numbers in [0, 1). */
export type Draw = () => number

/** FNV-1a, 32 bits (Fowler, Noll & Vo): turns text into a seed. */
function hash(text: string): number {
  let h = 0x811c9dc5
  for (let i = 0; i < text.length; i++) h = Math.imul(h ^ text.charCodeAt(i), 0x01000193)
  return h >>> 0
}

/** A generator that depends only on the text (mulberry32, by T. Ettinger; public domain). */
export function seeded(text: string): Draw {
  let state = hash(text)
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let t = Math.imul(state ^ (state >>> 15), 1 | state)
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296
  }
}

/** True with that chance. */
export const chance = (draw: Draw, p: number): boolean => draw() < p

/** A whole number from `from` to `to`, both included. */
export const between = (draw: Draw, from: number, to: number): number =>
  from + Math.floor(draw() * (to - from + 1))

/** One of the choices, as often as its weight says. */
export function pick<T>(draw: Draw, choices: readonly (readonly [T, number])[]): T {
  const total = choices.reduce((sum, [, weight]) => sum + weight, 0)
  let left = draw() * total
  for (const [value, weight] of choices) {
    left -= weight
    if (left < 0) return value
  }
  const last = choices.at(-1)
  if (last === undefined) throw new RangeError('pick: nothing to choose from')
  return last[0]
}

/** A draw from the normal distribution (Box-Muller). */
export const normal = (draw: Draw, mean: number, sd: number): number =>
  mean + sd * Math.sqrt(-2 * Math.log(1 - draw())) * Math.cos(2 * Math.PI * draw())
