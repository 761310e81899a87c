/** Where in the plan colonies were when they were lost: 'Of the 12 lost, 7 were waiting for a new queen'. */

import { PHASES } from '../../recovery/index.ts'
import type { LossPhase } from '../../stays/index.ts'

export interface LossPhases {
  lost: number
  /** Most first; phases in which none was lost are left out. */
  phases: { phase: LossPhase; colonies: number }[]
}

/** Counts the phases before each loss; null stands for a colony that was not lost, or on a day nobody wrote down. */
export function lossPhases(before: readonly (LossPhase | null)[]): LossPhases {
  const counts = new Map<LossPhase, number>()
  for (const phase of before) if (phase !== null) counts.set(phase, (counts.get(phase) ?? 0) + 1)
  const phases = [...counts]
    .map(([phase, colonies]) => ({ phase, colonies }))
    .sort((a, b) => b.colonies - a.colonies || PHASES.indexOf(a.phase) - PHASES.indexOf(b.phase))
  return { lost: phases.reduce((sum, p) => sum + p.colonies, 0), phases }
}

const WORDS: Record<LossPhase, [one: string, many: string]> = {
  'awaiting-release': ['still had its queen caged', 'still had their queens caged'],
  'awaiting-eggs': ['was waiting for its queen’s eggs', 'were waiting for their queens’ eggs'],
  'queen-unknown': ['was not known to have a queen', 'were not known to have a queen'],
  rearing: ['was raising a queen', 'were raising a queen'],
  'awaiting-new-queen': ['was waiting for a new queen', 'were waiting for a new queen'],
  laying: ['had eggs, not yet proven worker brood', 'had eggs, not yet proven worker brood'],
  queenright: ['was queenright', 'were queenright'],
  queenless: ['was queenless', 'were queenless'],
  'laying-workers': ['had laying workers', 'had laying workers'],
}

/** Example: 'Of the 12 lost, 7 were waiting for a new queen, 3 were queenright and 2 were queenless the day before.' */
export function lossPhasesReading({ lost, phases }: LossPhases): string {
  if (lost === 0) return 'None was lost on a known day.'
  const parts = phases.map(({ phase, colonies }) => `${colonies} ${WORDS[phase][colonies === 1 ? 0 : 1]}`)
  const list = parts.length === 1 ? parts[0] : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`
  return `Of the ${lost} lost, ${list} the day before.`
}
