/** What each thing seen says, in words: how many times likelier it is if a queen lays than if none does, and the like. */
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
  /** 'no eggs on day 6' */
  seen: string
  /** How many times likelier that is if `holds` is so than if it is not; below 1: likelier if not. */
  factor: number
  holds: Question
  /** 'no eggs on day 6: 8 times likelier if no queen lays' */
  text: string
}

/** What a sighting bears on. */
type Question = 'lays' | 'here' | 'raising' | 'emerged' | 'workers' | 'gone'

const QUESTIONS: Record<Question, { kinds: readonly Kind[]; yes: string; no: string }> = {
  lays: { kinds: ['laying'], yes: 'a queen lays', no: 'no queen lays' },
  here: { kinds: ['laying', 'present', 'virgin'], yes: 'a queen is here', no: 'there is none' },
  raising: { kinds: ['raising'], yes: 'they are raising a queen', no: 'they are not raising one' },
  emerged: { kinds: ['virgin'], yes: 'a virgin is loose', no: 'there is no virgin' },
  workers: {
    kinds: ['laying-workers'],
    yes: 'workers lay, or a drone layer',
    no: 'neither workers nor a drone layer lay',
  },
  gone: {
    kinds: ['chance', 'queenless', 'laying-workers'],
    yes: 'she is gone',
    no: 'a queen is here or being raised',
  },
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

const SEEN: Record<LookedAt, Record<string, string>> = {
  eggs: { none: 'no eggs', single: 'single eggs', multiple: 'several eggs in a cell' },
  open: { none: 'no open brood', some: 'open brood', plenty: 'plenty of open brood' },
  capped: {
    none: 'no capped brood',
    worker: 'capped worker brood',
    'drone-in-worker': 'raised drone caps in worker cells',
  },
  queen: { seen: 'the queen seen', unseen: 'no queen seen' },
  cells: {
    none: 'no queen cells',
    cups: 'only cups',
    open: 'open queen cells',
    capped: 'capped queen cells',
    emerged: 'an emerged queen cell',
    'torn-down': 'queen cells torn down',
  },
  roar: { heard: 'the queenless roar', 'not heard': 'no queenless roar' },
}

/** 'twice', '8 times', 'over 1000 times'. */
export function times(factor: number): string {
  if (factor >= 1000) return 'over 1000 times'
  if (factor >= 100) return `about ${Math.round(factor / 50) * 50} times`
  if (factor >= 20) return `about ${Math.round(factor / 5) * 5} times`
  if (factor >= 2.5) return `${Math.round(factor)} times`
  if (factor >= 1.75) return 'twice'
  return `${factor.toFixed(1)} times`
}

function words(seen: string, factor: number, question: Question): string {
  const { yes, no } = QUESTIONS[question]
  const strength = factor >= 1 ? factor : 1 / factor
  if (strength < 1.15) return `${seen}: says next to nothing`
  return `${seen}: ${times(strength)} likelier if ${factor >= 1 ? yes : no}`
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
    const inside = new Set(QUESTIONS[holds].kinds.map((k) => KINDS.indexOf(k)))
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
    const seen = `${SEEN[sighting.what][sighting.value] ?? sighting.value} on day ${dayNo}`
    return [{ on, entry: id, what: sighting.what, seen, factor, holds, text: words(seen, factor, holds) }]
  })
}

/** The weight of everything seen inside the box, oldest first. */
export const evidenceOf = (story: Story): EvidenceWeight[] =>
  story.walk.links.filter((l) => l.kind === 'look').flatMap((l) => weightsOfLook(story, l))
