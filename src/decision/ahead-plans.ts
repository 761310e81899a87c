/** Which plans are thought of ahead, and which of them are ever the best. */
import { COMPACT, COMPACT_STATES } from './compact.ts'

/** A plan and what it is worth in each state, in the yard's money. */
export interface Vector {
  /** What the plan begins with. */
  first: Step | 'proof' | 'workers'
  /** Its name in the library. */
  key: string
  value: Float64Array
}

/** One step of a plan: wait so many days and look; a frame of eggs; a bought queen; unite. */
export type Step = 'w4' | 'w9' | 'w17' | 'g' | 'b' | 'u'

/** Plans of up to four steps: at most two frames, two queens, and two waits on end. */
function plans(): Step[][] {
  const out: Step[][] = [[]]
  let level: Step[][] = [[]]
  const most = (steps: Step[], step: Step, n: number): boolean => steps.filter((s) => s === step).length <= n
  for (let length = 1; length <= 4; length++) {
    level = level
      .flatMap((steps) => (['w4', 'w9', 'w17', 'g', 'b'] as const).map((s): Step[] => [s, ...steps]))
      .filter((steps) => most(steps, 'g', 2) && most(steps, 'b', 2))
      .filter((steps) => !steps.some((s, i) => s === steps[i + 1] && s.startsWith('w')))
      .filter((steps) => steps.filter((s) => s.startsWith('w')).length <= 2)
    out.push(...level)
  }
  return out
}

export const PLANS = plans()

/** Beliefs to try plans on: every state alone, and mixtures of a few. */
const TRIALS: readonly (readonly (readonly [state: number, w: number])[])[] = (() => {
  // A plain congruential generator (Numerical Recipes): any fixed scatter will do.
  let seed = 1
  const next = (): number => {
    seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0
    return seed / 4294967296
  }
  const alone = COMPACT.map((_, s): [number, number][] => [[s, 1]])
  const mixed = Array.from({ length: 400 }, () =>
    Array.from({ length: 2 + Math.floor(next() * 4) }, (): [number, number] => [
      Math.floor(next() * COMPACT_STATES),
      next() ** 2,
    ]),
  )
  return [...alone, ...mixed]
})()

/** Plans that are best for some belief; the others are never chosen, so nobody need think of them. The best of each first step stays. */
export function worthKeeping(all: readonly Vector[]): Vector[] {
  const kept = new Set<Vector>()
  const keep = (among: readonly Vector[], trial: (typeof TRIALS)[number]): void => {
    let [top, most] = [among[0], Number.NEGATIVE_INFINITY]
    for (const v of among) {
      let value = 0
      for (let k = 0; k < trial.length; k++) {
        const part = trial[k]
        if (part !== undefined) value += part[1] * (v.value[part[0]] ?? 0)
      }
      if (value > most) [top, most] = [v, value]
    }
    if (top !== undefined) kept.add(top)
  }
  const beginning = (['g', 'b', 'u'] as const).map((first) => all.filter((v) => v.first === first))
  for (const trial of TRIALS) {
    keep(all, trial)
    if (trial.length === 1) for (const some of beginning) keep(some, trial)
  }
  return [...kept]
}
