/** How a colony came by a laying queen, and when that was proven. */

import { type Day, daysBetween } from '../days.ts'
import type { Gift, History } from '../journal/index.ts'
import { fold, type Protocol } from '../recovery/index.ts'

export const PATHS = [
  'own-queen',
  'own-brood',
  'egg-frame',
  'given-cell',
  'purchased-queen',
  'united',
  'lost',
  'left-unproven',
  'not-yet',
] as const
/**
 * own-queen: the queen that came along laid on. own-brood: raised from brood that came along. egg-frame: raised on a
 * frame of eggs or young brood given. given-cell: from a queen cell or virgin given. united: ended in another colony.
 * lost: died or absconded without a proven queen. left-unproven: left some other way without one. not-yet: still open.
 */
export type RecoveryPath = (typeof PATHS)[number]

export interface Recovery {
  tag: string
  path: RecoveryPath
  /** Day on which worker brood proved a mated queen; null when never. */
  queenrightOn: Day | null
  /** From intake to that day. */
  days: number | null
  /** From intake to that day, or else to the end of the stay, or to `asOf`. */
  followed: number
}

const RAISED_FROM: Partial<Record<Gift, RecoveryPath>> = {
  'egg-frame': 'egg-frame',
  'open-brood': 'egg-frame',
  'queen-cell': 'given-cell',
  virgin: 'given-cell',
}

/** What a queen raised here was raised from: the last gift that can become one before she was proven, else own brood. */
function raisedFrom(history: History, provenOn: Day): RecoveryPath {
  const gift = history.entries.findLast(
    (e) => e.kind === 'given' && e.on <= provenOn && RAISED_FROM[e.what] !== undefined,
  )
  return gift?.kind === 'given' ? (RAISED_FROM[gift.what] ?? 'own-brood') : 'own-brood'
}

/** The recovery path of a colony; entries after `asOf` must not be in its history. */
export function recoveryOf(history: History, asOf: Day, protocol: Protocol): Recovery {
  const { queen } = fold(history, protocol)
  const proven = queen.is === 'queenright' ? queen : null
  const queenrightOn = proven?.provenOn ?? null
  const end = history.outcome?.on ?? asOf
  const base = {
    tag: history.tag,
    queenrightOn,
    days: queenrightOn === null ? null : daysBetween(history.intake.on, queenrightOn),
    followed: daysBetween(history.intake.on, queenrightOn ?? end),
  }
  const outcome = history.outcome?.what
  if (outcome === 'united') return { ...base, path: 'united' }
  if (proven !== null) {
    if (proven.layer === 'bought') return { ...base, path: 'purchased-queen' }
    if (proven.layer === 'own') return { ...base, path: 'own-queen' }
    return { ...base, path: raisedFrom(history, proven.provenOn) }
  }
  if (outcome === 'died' || outcome === 'absconded') return { ...base, path: 'lost' }
  return { ...base, path: outcome === undefined ? 'not-yet' : 'left-unproven' }
}
