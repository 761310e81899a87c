/**
 * One decision: the option worth most over the belief, the gentler of two that are worth about the same, and the day until which
 * it stands. Decided on the day of the last evidence, so that asking again the next day gives the same answer.
 */
import type { Option } from './options.ts'

export interface Decision {
  /** 'wait': nothing until `inDays`, then a look. */
  act: 'wait' | 'look' | 'give' | 'boost' | 'queen' | 'unite'
  /** Days from the decision until the look it waits for; 0 for what is done at once. */
  inDays: number
  /** She is likely to be needed: send for a queen meanwhile. */
  order: boolean
  chosen: Option
  /** The best of the other kinds of option, for the sentence and the list. */
  options: Option[]
}

/** From gentle to grave. */
const GENTLE = ['look', 'boost', 'give', 'queen', 'unite'] as const

/** Worth this share of a colony less, an option is still as good: the reckoning is no finer. */
const NOISE = 0.002
/** A graver step must be worth this share of a colony more. */
const GRAVER = 0.006
/** So many queens kept more are plain to see: then the gentler of two alike does not go first, and no queen is bought to win days. Judgement. */
const PLAINLY = 0.03
/** A queen is sent for ahead where having her in time is worth this share of a colony more. */
const ORDERED = 0.02

/** Whether a graver option is taken in place of a gentler one. */
function goesBefore(graver: Option, gentler: Option, worth: number): boolean {
  const more = graver.keeps - gentler.keeps
  if (graver.act === 'queen' && more < -PLAINLY) return false
  return graver.value > gentler.value + (more > PLAINLY ? 0 : GRAVER * worth)
}

/** The option to take. Of looks the best day, the later of two alike; of gifts the sooner; a graver act only if it is plainly worth more. */
function choose(options: readonly Option[], worth: number): Option | null {
  let chosen: Option | null = null
  for (const act of GENTLE) {
    const same = options.filter((o) => o.act === act)
    const top = same.reduce((m, o) => Math.max(m, o.value), Number.NEGATIVE_INFINITY)
    const candidate = same
      .filter((o) => o.value >= top - NOISE * worth)
      .sort((a, b) => (act === 'look' ? b.inDays - a.inDays : a.inDays - b.inDays))[0]
    if (candidate === undefined) continue
    if (chosen === null || goesBefore(candidate, chosen, worth)) chosen = candidate
  }
  return chosen
}

/** The best of each kind of option, best first. */
function bestOfEach(options: readonly Option[]): Option[] {
  const best = new Map<string, Option>()
  for (const o of options) {
    const kind = o.act === 'look' && o.inDays > 0 ? 'wait' : o.act
    const known = best.get(kind)
    if (known === undefined || o.value > known.value) best.set(kind, o)
  }
  return [...best.values()].sort((a, b) => b.value - a.value)
}

export function decisionOf(
  options: readonly Option[],
  worth: number,
  orderGain: (o: Option) => number,
): Decision | null {
  const chosen = choose(options, worth)
  if (chosen === null) return null
  const act = chosen.act === 'look' && chosen.inDays > 0 ? 'wait' : chosen.act
  return {
    act,
    inDays: chosen.inDays,
    order: orderGain(chosen) > ORDERED * worth,
    chosen,
    options: bestOfEach(options),
  }
}
