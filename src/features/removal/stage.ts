/** How far a job has come, and what is next on its sheet. */
import { hasBegun, type Sheet } from '../../records/index.ts'
import { leftToClose } from './closing.ts'
import { cuts } from './hazards.ts'

export const STAGES = [
  'called',
  'looked-at',
  'agreed',
  'go',
  'wait',
  'worked',
  'boxed',
  'finished',
  'refused',
  'ended',
] as const
export type Stage = (typeof STAGES)[number]

/** `colonies`: how many came of it so far. */
export function stageOf(s: Sheet, colonies: number): Stage {
  if (colonies > 0) return leftToClose(s).length > 0 ? 'boxed' : 'finished'
  if (s.ended !== undefined) return 'ended'
  // What is open is not over, whoever refuses it then.
  if (s.decision?.is === 'refuse' && !hasBegun(s)) return 'refused'
  if (s.work.boxedAt !== undefined || s.work.queen !== undefined) return 'worked'
  if (s.decision !== undefined) return s.decision.is === 'go' ? 'go' : 'wait'
  if (s.agreement.signature !== undefined) return 'agreed'
  return isLookedAt(s) ? 'looked-at' : 'called'
}

/** Somebody has looked at the place; a swarm that hangs in the open needs no more than the call. */
const isLookedAt = (s: Sheet): boolean =>
  isShort(s) ||
  (s.site.where !== undefined && s.site.type !== 'swarm') ||
  s.site.behind !== undefined ||
  s.site.hazards !== undefined

/** A swarm needs only the short sheet: the call, heat and people, the box. */
export const isShort = (s: Sheet): boolean => s.site.type === 'swarm' && !cuts(s)

/** Nothing keeps from the next job; of a boxed one, something may be left to close up. */
export const isOver = (stage: Stage): boolean =>
  stage === 'boxed' || stage === 'finished' || stage === 'refused' || stage === 'ended'

/** It was “go”, and the bees are not in the box: whether it is one still is asked. */
export const isOnGo = (stage: Stage, s: Sheet): boolean =>
  stage === 'go' || (stage === 'worked' && s.decision?.is === 'go' && s.work.boxedAt === undefined)

/** A part of the sheet, each filled on its own page. */
export const PARTS = ['job', 'site', 'agreement', 'check', 'work'] as const
export type Part = (typeof PARTS)[number]

const NEXT: Record<Stage, Part | 'intake' | null> = {
  called: 'site',
  'looked-at': 'agreement',
  agreed: 'check',
  wait: 'check',
  go: 'work',
  worked: 'intake',
  boxed: null,
  finished: null,
  refused: null,
  ended: null,
}
export const nextPart = (stage: Stage, s: Sheet): Part | 'intake' | null =>
  isShort(s) && stage === 'looked-at' ? 'check' : NEXT[stage]
