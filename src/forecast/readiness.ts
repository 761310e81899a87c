/** When a colony can move out, as odds: from the odds of laying, the hold, what else is unmet, and the strength to come. */

import { addDays, type Day, daysBetween, later } from '../days.ts'
import type { Plan, Protocol, UnmetReason } from '../recovery/index.ts'
import type { DayPmf } from './pmf.ts'
import type { Story } from './queen-odds.ts'
import type { StrengthForecast } from './strength.ts'

export interface MoveOutForecast {
  /** Chance of becoming ready on each day from today on. */
  chances: DayPmf
  /** Chance of being ready within the forecast. */
  ever: number
  /** Median day, and the 10 % and 90 % days, of those that get ready; null when there is next to no chance. */
  expected: Day | null
  range: { from: Day; to: Day } | null
  /** What no day can be given for, such as suspected brood disease; null when nothing stands in the way. */
  blocked: UnmetReason | null
}

/** Capped worker brood is easily seen from this day after her first egg (capped on day 9). */
const CAPPED_SEEN_FROM = 10

interface Ground {
  /** No earlier, whatever the queen does: the hold, mites, a disease look. */
  atLeast: Day
  /** Capped brood proves nothing before the day after this one; null: no other source. */
  horizon: Day | null
  strength: StrengthForecast
}

/** Strong enough from this day on more likely than not. */
function strongFrom(f: StrengthForecast, from: Day): Day | null {
  const at = f.days.findIndex((d) => d.day >= from && d.under < 0.5)
  return at < 0 ? null : (f.days[at]?.day ?? null)
}

function readyOn(firstEgg: Day, g: Ground): Day | null {
  const capped = addDays(firstEgg, CAPPED_SEEN_FROM)
  const proof = g.horizon === null ? capped : later(capped, addDays(g.horizon, 1))
  return strongFrom(g.strength, later(g.atLeast, proof))
}

/** What the odds of laying and the strength to come say themselves. */
const MODELLED: readonly string[] = ['worker-brood', 'strength-uncounted', 'strength-low']

/** What is unmet besides brood and strength: the earliest day it can be met, or what cannot be dated. */
function others(plan: Plan, protocol: Protocol, story: Story): { atLeast: Day; blocked: UnmetReason | null } {
  let atLeast = later(plan.asOf, addDays(story.history.intake.on, protocol.holdDays))
  let blocked: UnmetReason | null = null
  for (const u of plan.readiness.unmet) {
    if (MODELLED.includes(u.reason.code)) continue
    if (u.earliest === null) blocked ??= u.reason
    else atLeast = later(atLeast, u.earliest)
  }
  return { atLeast, blocked }
}

const quantileDay = (p: readonly number[], share: number, today: Day): Day => {
  const total = p.reduce((a, b) => a + b, 0)
  let run = 0
  for (const [d, x] of p.entries()) {
    run += x
    if (run >= share * total - 1e-12) return addDays(today, d)
  }
  return addDays(today, p.length - 1)
}

/** Next to no chance of getting ready. */
const NO_CHANCE = 0.02

/**
 * The move-out day as odds.
 *
 * @param firstEgg chance by day since the removal that a queen begins to lay, with hindsight (`queenOdds(story).firstEgg`)
 */
export function moveOutForecast(
  story: Story,
  firstEgg: DayPmf,
  strength: StrengthForecast,
  plan: Plan,
  protocol: Protocol,
): MoveOutForecast {
  const { today, history } = story
  const ahead = daysBetween(today, strength.days.at(-1)?.day ?? today)
  const p = new Array<number>(Math.max(0, ahead) + 1).fill(0)
  const { atLeast, blocked } = others(plan, protocol, story)
  const add = (ready: Day | null, w: number): void => {
    if (ready === null) return
    const d = Math.max(0, daysBetween(today, ready))
    if (d < p.length) p[d] = (p[d] ?? 0) + w
  }
  if (plan.phase === 'closed') return { ...NOT_HERE }
  if (blocked === null) {
    const ground: Ground = { atLeast, horizon: plan.horizon.capped, strength }
    if (plan.phase === 'queenright') add(strongFrom(strength, atLeast), 1)
    else {
      const total = firstEgg.p.reduce((a, b) => a + b, 0)
      const scale = total > 1 ? 1 / total : 1
      firstEgg.p.forEach((w, t) => {
        if (w > 0) add(readyOn(addDays(history.removedOn, t), ground), w * scale)
      })
    }
  }
  const ever = Math.min(
    1,
    p.reduce((a, b) => a + b, 0),
  )
  const some = ever >= NO_CHANCE
  const expected = some ? quantileDay(p, 0.5, today) : null
  const range = some ? { from: quantileDay(p, 0.1, today), to: quantileDay(p, 0.9, today) } : null
  return {
    chances: { from: 0, p },
    ever,
    expected,
    range,
    blocked,
  }
}

const NOT_HERE: MoveOutForecast = {
  chances: { from: 0, p: [] },
  ever: 0,
  expected: null,
  range: null,
  blocked: null,
}
