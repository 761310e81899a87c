/** What each thing seen says: how many times likelier it is if a queen lays than if none does, and the like. */
import { type Day, daysBetween } from '../days.ts'
import type { Story } from './queen-odds.ts'
import { KINDS, type Kind, kindOf } from './story/kinds.ts'
import type { LookedAt } from './story/look.ts'
import { STATE } from './story/state.ts'
import type { HeldSighting, Link } from './story/walk.ts'

export interface EvidenceWeight {
  on: Day
  /** The id of the entry it comes from. */
  entry: string
  what: LookedAt
  /** As it was written down: 'none', 'single'. */
  value: string
  /** Days since the intake. */
  day: number
  /** How many times likelier that is if `holds` is so than if it is not; below 1: likelier if not. */
  factor: number
  holds: Question
}

/** A factor nearer to 1 than this says next to nothing. Judgement. */
const LEAST = 1.15

/** How many times likelier, whichever way; null where it says next to nothing. */
export const strengthOf = ({ factor }: Pick<EvidenceWeight, 'factor'>): number | null => {
  const strength = factor >= 1 ? factor : 1 / factor
  return strength < LEAST ? null : strength
}

/** What a sighting bears on. */
type Question = 'lays' | 'here' | 'raising' | 'emerged' | 'workers' | 'gone'

/** The kinds of state in which it is so. */
const QUESTIONS: Record<Question, readonly Kind[]> = {
  lays: ['laying'],
  here: ['laying', 'present', 'virgin'],
  raising: ['raising'],
  emerged: ['virgin'],
  workers: ['laying-workers'],
  gone: ['chance', 'queenless', 'laying-workers'],
}

function questionOf(s: HeldSighting): Question {
  if (s.value === 'multiple' || s.value === 'drone-in-worker') return 'workers'
  switch (s.what) {
    case 'queen':
      return 'here'
    case 'cells':
      return s.value === 'emerged' || s.value === 'torn-down' ? 'emerged' : 'raising'
    case 'roar':
      return 'gone'
    default:
      return 'lays'
  }
}

function weightsOfLook(story: Story, link: Link): EvidenceWeight[] {
  const day = story.days[link.t]
  if (day === undefined || link.entry === null) return []
  const { on, id } = link.entry
  const dayNo = daysBetween(story.history.intake.on, on)
  const { states } = link.before
  const w = Float64Array.from(link.before.w)
  return link.sightings.flatMap((sighting) => {
    const holds = questionOf(sighting)
    const inside = new Set(QUESTIONS[holds].map((k) => KINDS.indexOf(k)))
    const [yes, no] = [
      { w: 0, seen: 0 },
      { w: 0, seen: 0 },
    ]
    states.forEach((s, i) => {
      const state = STATE[s]
      if (state === undefined) return
      const side = inside.has(kindOf(state, day.around)) ? yes : no
      const chance = sighting.chance[i] ?? 0
      side.w += w[i] ?? 0
      side.seen += (w[i] ?? 0) * chance
      w[i] = (w[i] ?? 0) * chance
    })
    // Where only one answer was possible beforehand, nothing can weigh on it.
    if (yes.w < 1e-9 || no.w < 1e-9) return []
    const factor = yes.seen / yes.w / (no.seen / no.w)
    const { what, value } = sighting
    return [{ on, entry: id, what, value, day: dayNo, factor, holds }]
  })
}

/** The weight of everything seen inside the box, oldest first. */
export const evidenceOf = (story: Story): EvidenceWeight[] =>
  story.walk.links.filter((l) => l.kind === 'look').flatMap((l) => weightsOfLook(story, l))
