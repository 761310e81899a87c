/**
 * Dice that do not shift: every draw is a hash of (seed, colony, purpose, day or count), never "the next number". Two rules
 * that treat one colony differently meet the same weather, the same spans and the same slips of the eye.
 */

/** What a draw is for. The number keeps the streams apart; add at the end, or every figure changes. */
const PURPOSES = {
  intake: 1,
  weather: 2,
  presence: 3,
  queen: 4,
  cells: 5,
  mating: 6,
  introduction: 7,
  opening: 8,
  sight: 9,
  hazard: 10,
  mites: 11,
  donor: 12,
  layingWorkers: 13,
  world: 14,
  resample: 15,
} as const
export type Purpose = keyof typeof PURPOSES

/** Murmur3's finalizer (public domain): every bit of the input moves every bit of the output. */
function mix(hash: number, value: number): number {
  let h = Math.imul(hash ^ value, 0x85ebca6b)
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35)
  return (h ^ (h >>> 16)) + 0x9e3779b9
}

/** A number for a text, for seeds by name (FNV-1a). */
export function numberOf(text: string): number {
  let h = 0x811c9dc5
  for (let i = 0; i < text.length; i++) h = Math.imul(h ^ text.charCodeAt(i), 0x01000193)
  return h >>> 0
}

export class Dice {
  readonly #base: number

  constructor(seed: number, colony: number) {
    this.#base = mix(mix(0x2545f491, seed), colony)
  }

  /** In [0, 1): the same for the same purpose and numbers, whatever was asked before. */
  at(purpose: Purpose, a = 0, b = 0): number {
    const h = mix(mix(mix(mix(this.#base, PURPOSES[purpose]), a), b), 0x51ed270b)
    return ((h ^ (h >>> 15)) >>> 0) / 4294967296
  }

  chance(p: number, purpose: Purpose, a = 0, b = 0): boolean {
    return this.at(purpose, a, b) < p
  }

  /** Normal, by the Box-Muller transform. */
  normal(mean: number, sd: number, purpose: Purpose, a = 0, b = 0): number {
    const radius = Math.sqrt(-2 * Math.log(1 - this.at(purpose, a, b * 2 + 1_000_003)))
    return mean + sd * radius * Math.cos(2 * Math.PI * this.at(purpose, a, b * 2 + 1_000_004))
  }

  between(low: number, high: number, purpose: Purpose, a = 0, b = 0): number {
    return low + (high - low) * this.at(purpose, a, b)
  }

  /** One of `options` by weight. */
  pick<T extends string>(options: Readonly<Record<T, number>>, purpose: Purpose, a = 0, b = 0): T {
    const all = Object.entries(options) as [T, number][]
    let u = this.at(purpose, a, b) * all.reduce((sum, [, weight]) => sum + weight, 0)
    for (const [name, weight] of all) {
      u -= weight
      if (u < 0) return name
    }
    const last = all.at(-1)
    if (last === undefined) throw new RangeError('pick: nothing to pick from')
    return last[0]
  }
}
