/**
 * The most telling day: how much a look on each coming day is expected to say about what decides the next action, less the
 * harm of opening while a virgin may be about to fly.
 *
 * "How much" is mutual information in bits (Shannon 1948; Lindley 1956, Ann. Math. Stat. 27:986-1005): 1 bit halves the doubt
 * between two things equally likely; 0 says nothing that is not known.
 */
import { addDays, type Day } from '../days.ts'
import type { Story } from './queen-odds.ts'
import { kindOf } from './story/kinds.ts'
import { broodSeen, CELL_ANSWERS, cappedChances, cellChances, eggsChances, queenSeen } from './story/look.ts'
import { Q, STATE, type State } from './story/state.ts'
import type { DayOfStory } from './story/steps.ts'
import type { Shares } from './story/walk.ts'

export interface TellingDay {
  day: Day
  /** Expected information of a full look then, bits. */
  bits: number
  /** What opening then may cost, in bits. */
  harm: number
  /** bits - harm. */
  net: number
}

/** What decides the next action, by kind: she is here, so wait for proof; they have what they need, so leave them alone; they have nothing, so give eggs or a queen; workers lay, so unite. */
const ACTION_OF_KIND = [0, 0, 1, 1, 1, 2, 3] as const
const ACTIONS = 4

/** Looking into a box in quiet time costs as much as one bit tells. Judgement: a virgin lost costs a month. */
const QUIET_COST_BITS = 1
/** A virgin younger than this many days may be lost by opening; so may one about to leave her cell. */
const VIRGIN_IN_DANGER_DAYS = 14
const CELL_IN_DANGER_DAYS = 2
/** States rarer than this add nothing that shows. */
const RARE = 1e-5

const OUTCOMES = 3 * 2 * 3 * 2 * CELL_ANSWERS.length

/** Chance of every outcome of a full look in a state: eggs x open x capped x queen x cells, as one list. */
function outcomesOf(s: State, story: Story, day: DayOfStory, into: Float64Array): void {
  const { seen: rates, tables } = story.model
  const brood = broodSeen(s, day.around, rates)
  const eggs = eggsChances(s, brood, rates)
  const open = [1 - brood.open, brood.open]
  const capped = cappedChances(brood, rates)
  const seen = queenSeen(s, rates)
  const queen = [1 - seen, seen]
  const cells = cellChances(s, rates, tables)
  let o = 0
  for (const a of eggs)
    for (const b of open)
      for (const c of capped) {
        const abc = a * b * c
        for (const d of queen) for (const e of cells) into[o++] = abc * d * e
      }
}

/** Mutual information, bits, of the rows (what is) and columns (what is seen) of a table of joint chances. */
export function mutualInformation(joint: readonly Float64Array[]): number {
  const rows = joint.map((row) => row.reduce((a, b) => a + b, 0))
  const n = joint[0]?.length ?? 0
  let bits = 0
  for (let o = 0; o < n; o++) {
    let column = 0
    for (const row of joint) column += row[o] ?? 0
    joint.forEach((row, a) => {
      const p = row[o] ?? 0
      if (p > 0) bits += p * Math.log2(p / (column * (rows[a] ?? 0)))
    })
  }
  return Math.max(0, bits)
}

function tellingOn(story: Story, shares: Shares, day: DayOfStory): { bits: number; harm: number } {
  const joint = Array.from({ length: ACTIONS }, () => new Float64Array(OUTCOMES))
  const outcomes = new Float64Array(OUTCOMES)
  let quiet = 0
  let kept = 0
  shares.states.forEach((n, i) => {
    const s = STATE[n]
    const w = shares.w[i] ?? 0
    if (s === undefined || w < RARE) return
    kept += w
    if (s.stage === Q.virgin && s.age <= VIRGIN_IN_DANGER_DAYS) quiet += w
    if (s.stage === Q.raising && s.age <= CELL_IN_DANGER_DAYS) quiet += w
    outcomesOf(s, story, day, outcomes)
    const row = joint[ACTION_OF_KIND[kindOf(s, day.around)] ?? 0]
    if (row === undefined) return
    for (let o = 0; o < OUTCOMES; o++) row[o] = (row[o] ?? 0) + w * (outcomes[o] ?? 0)
  })
  for (const row of joint) for (let o = 0; o < OUTCOMES; o++) row[o] = (row[o] ?? 0) / kept
  return { bits: mutualInformation(joint), harm: QUIET_COST_BITS * quiet }
}

/** Today and each of the coming days. Throws RangeError when the story does not run so far. */
export function tellingDays(story: Story, ahead = 14): TellingDay[] {
  return Array.from({ length: ahead + 1 }, (_, d) => {
    const [shares, day] = [story.walk.byDay[story.t + d], story.days[story.t + d]]
    if (shares === undefined || day === undefined)
      throw new RangeError(`tellingDays: the story ends before ${addDays(story.today, d)}`)
    const { bits, harm } = tellingOn(story, shares, day)
    return { day: addDays(story.today, d), bits, harm, net: bits - harm }
  })
}

/** People plan a week ahead; beyond it the doubt that time alone brings would always win. */
const PLANNED_AHEAD = 7

/** The day of the coming week on which a look is worth most; the sooner of two within a twentieth of each other. */
export function mostTelling(days: readonly TellingDay[], ahead = PLANNED_AHEAD): TellingDay | null {
  const week = days.slice(0, ahead + 1)
  const most = week.reduce((m, d) => Math.max(m, d.net), Number.NEGATIVE_INFINITY)
  return week.find((d) => d.net >= most - 0.05 * Math.abs(most)) ?? null
}

/** Less than this is not worth a visit for the queen's sake. Judgement: a fifth of a bit. */
export const HARDLY_TELLING = 0.2

/** What the coming days tell: the day that tells most, and how it stands beside another. */
export type BestLook =
  | { says: 'costs' | 'little' }
  | { says: 'most'; day: Day }
  | { says: 'other-little' | 'hardly-more'; day: Day; other: Day }
  | { says: 'times'; day: Day; other: Day; times: number }

/** A day that tells fewer times more than this tells hardly more. Judgement. */
const HARDLY_MORE = 1.15

/** `other` is the day compared with, today by default. */
export function bestLook(days: readonly TellingDay[], other = days[0]): BestLook {
  const best = mostTelling(days)
  if (best === null || best.net < HARDLY_TELLING)
    return { says: best !== null && best.bits >= HARDLY_TELLING ? 'costs' : 'little' }
  const { day } = best
  if (other === undefined || other.day === day) return { says: 'most', day }
  if (other.net < HARDLY_TELLING) return { says: 'other-little', day, other: other.day }
  const times = best.net / other.net
  return times < HARDLY_MORE
    ? { says: 'hardly-more', day, other: other.day }
    : { says: 'times', day, other: other.day, times }
}
