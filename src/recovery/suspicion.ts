/**
 * A suspected brood disease holds a colony where it is until somebody says, and signs, that it is cleared. A clean look
 * alone does not: about one colony in five that carries American foulbrood shows it within a month (19 %, then 49 % by
 * two months; afb.org.nz, time to visual symptoms).
 */

import { type Day, inWords } from '../days.ts'
import type { Entry, Inspection, StandingEntry } from '../journal/index.ts'

export interface Suspicion {
  /** The look on which it was first suspected, since the last clearance. */
  since: Day
  /** The latest look on which it was suspected. */
  lastSeen: Day
  /** Looks with the lid off since then that noted signs and no suspicion. */
  cleanLooks: Day[]
}

const suspects = (e: Inspection): boolean => e.signs?.includes('brood-disease-suspected') === true

/** What is suspected and not cleared on a day, from entries in order (a history's); null when nothing is. */
export const suspicionOn = (entries: readonly StandingEntry[], day: Day): Suspicion | null =>
  entries.filter((e) => e.on <= day).reduce<Suspicion | null>(after, null)

function after(held: Suspicion | null, e: StandingEntry): Suspicion | null {
  if (e.kind === 'disease-cleared') return null
  if (e.kind !== 'inspection' || e.signs === undefined) return held
  if (suspects(e)) return { since: held?.since ?? e.on, lastSeen: e.on, cleanLooks: [] }
  return held !== null && e.opened ? { ...held, cleanLooks: [...held.cleanLooks, e.on] } : held
}

/** What an entry does that a suspicion forbids; null when it forbids nothing. */
export function lockedDeed(e: Entry): 'move' | 'unite' | null {
  if (e.kind === 'move') return 'move'
  if (e.kind !== 'outcome') return null
  return e.what === 'united' ? 'unite' : e.what === 'moved-out' ? 'move' : null
}

/** Why a colony is held, and what ends it. Example: 'brood disease was suspected in W-7 on Sun 10 May and is not cleared: …' */
export function heldWords(tag: string, s: Suspicion): string {
  const clean = s.cleanLooks.at(-1)
  const butClean =
    clean === undefined ? '' : ` The clean look on ${inWords(clean)} does not clear it by itself.`
  return `brood disease was suspected in ${tag} on ${inWords(s.since)} and is not cleared: it may not be moved, united or give brood, bees or comb to others.${butClean} Close it up, call the apiary inspector, and record who cleared it; local codes decide`
}
