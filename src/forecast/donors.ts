/** Which colonies can spare brood frames: strong, healthy, with a laying queen, and not asked lately. */

import { addDays, type Day, daysBetween } from '../days.ts'
import type { History, Inspection, MiteWash } from '../journal/index.ts'
import { suspicionOn } from '../recovery/index.ts'

/** What is asked of a donor. Common practice: strong colonies only, one frame at a time, a week or more between. */
export interface DonorRules {
  /** Frames of bees it must have, and keep. Judgement. */
  minFramesOfBees: number
  /** One frame may be spared for each so many frames of bees above that. Judgement. */
  framesOfBeesPerFrame: number
  mostFrames: number
  /** Days it rests after giving. */
  restDays: number
  /** A look at its strength counts this many days. */
  lookValidDays: number
  /** Odds of a laying queen it must have. */
  minOdds: number
  /** Mites per 100 bees from which it is no donor. */
  miteThreshold: number
}

export const DEFAULT_DONOR_RULES: DonorRules = {
  minFramesOfBees: 6,
  framesOfBeesPerFrame: 2,
  mostFrames: 2,
  restDays: 10,
  lookValidDays: 21,
  minOdds: 0.95,
  miteThreshold: 3,
}

export interface Donor {
  tag: string
  framesOfBees: number | null
  /** Frames of brood it can spare today; 0 when it cannot. */
  spare: number
  /** When a frame was last taken from it; null: never. */
  lastUsed: Day | null
  /** Earliest day on which it has rested. */
  restedOn: Day | null
  /** Why it cannot give today; empty when it can. */
  reasons: string[]
}

export interface DonorCandidate {
  history: History
  /** Odds of a laying queen today. */
  laying: number
}

/** When each colony last gave a frame, by tag, from everybody's entries. */
function lastGiven(histories: readonly History[], today: Day): Map<string, Day> {
  const last = new Map<string, Day>()
  for (const h of histories)
    for (const e of h.entries)
      if (e.kind === 'given' && e.donor !== undefined && e.on <= today) {
        const known = last.get(e.donor)
        if (known === undefined || known < e.on) last.set(e.donor, e.on)
      }
  return last
}

const looks = (h: History, today: Day): Inspection[] =>
  h.entries.filter((e): e is Inspection => e.kind === 'inspection' && e.on <= today)

function healthReasons(h: History, today: Day, rules: DonorRules): string[] {
  const reasons: string[] = []
  const signs = looks(h, today).findLast((e) => e.signs !== undefined)?.signs ?? []
  if (suspicionOn(h.entries, today) !== null)
    reasons.push('brood disease was suspected here and is not cleared')
  if (signs.includes('beetles') || signs.includes('moths') || signs.includes('deformed-wings'))
    reasons.push('beetles, moths or deformed wings were seen at the last look')
  const wash = h.entries.findLast((e): e is MiteWash => e.kind === 'mite-wash' && e.on <= today)
  if (wash !== undefined && (100 * wash.mites) / wash.bees >= rules.miteThreshold)
    reasons.push('too many mites at the last wash')
  return reasons
}

function donorOf(c: DonorCandidate, today: Day, used: Day | null, rules: DonorRules): Donor {
  const { history: h } = c
  const counted = looks(h, today).findLast((e) => e.framesOfBees !== undefined)
  const bees = counted?.framesOfBees ?? null
  const reasons = healthReasons(h, today, rules)
  const restedOn = used === null ? null : addDays(used, rules.restDays)
  if (c.laying < rules.minOdds) reasons.push('no laying queen is certain')
  if (counted === undefined || daysBetween(counted.on, today) > rules.lookValidDays)
    reasons.push('its strength was not looked at lately')
  else if ((bees ?? 0) < rules.minFramesOfBees + rules.framesOfBeesPerFrame) reasons.push('not strong enough')
  if (restedOn !== null && restedOn > today) reasons.push('it gave a frame lately')
  const over = Math.floor(((bees ?? 0) - rules.minFramesOfBees) / rules.framesOfBeesPerFrame)
  const spare = reasons.length > 0 ? 0 : Math.min(rules.mostFrames, over)
  return { tag: h.tag, framesOfBees: bees, spare, lastUsed: used, restedOn, reasons }
}

/** Every open colony as a donor: those that can give first, the longest rested and the strongest before the others. */
export function donorsOf(
  candidates: readonly DonorCandidate[],
  today: Day,
  rules: DonorRules = DEFAULT_DONOR_RULES,
): Donor[] {
  const used = lastGiven(
    candidates.map((c) => c.history),
    today,
  )
  return candidates
    .filter((c) => c.history.outcome === null || c.history.outcome.on > today)
    .map((c) => donorOf(c, today, used.get(c.history.tag) ?? null, rules))
    .sort(
      (a, b) =>
        Number(b.spare > 0) - Number(a.spare > 0) ||
        (a.lastUsed ?? '').localeCompare(b.lastUsed ?? '') ||
        (b.framesOfBees ?? 0) - (a.framesOfBees ?? 0) ||
        a.tag.localeCompare(b.tag),
    )
}
