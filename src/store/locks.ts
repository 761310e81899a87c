/**
 * What a suspected brood disease forbids: moving the colony, uniting it, taking brood, bees or comb from it; and the same
 * of colonies that are bound to a suspected one. Held against
 * what was known when the entry came in, so a suspicion that arrives late refuses nothing that is in the journal already,
 * and a journal that is loaded whole is not judged again.
 */

import type { Day } from '../days.ts'
import type { Entry } from '../journal/index.ts'
import { exposedWords, heldWords, lockedDeed, type Suspicion, suspicionOn } from '../recovery/index.ts'
import type { Exposures } from './exposures.ts'
import type { Member } from './roster.ts'

type Say = (field: string, message: string) => void

/** The colonies an entry names beside its own. */
export interface Others {
  /** Colonies of this yard with that name, if any. */
  named: (name: string) => readonly Member[]
  /** Those bound to a suspected colony, by id. */
  exposures: () => Exposures
}

/** Says why an entry may not be written because of a suspected disease. A correction of what was let in before is let in. */
export function checkLocks(e: Entry, member: Member, others: Others, say: Say): void {
  if (e.kind === 'disease-cleared') {
    checkClearance(e, member, others, say)
    return
  }
  for (const { field, of } of forbidden(e, member, others)) {
    if (corrects(e, member, field)) continue
    const held = suspicionAt(of, e)
    if (held !== null) {
      say(field, heldWords(of.tag, held))
      continue
    }
    const exposed = others.exposures().get(of.id)
    if (exposed !== undefined && e.on >= exposed.since) say(field, exposedWords(of.tag, exposed))
  }
}

function forbidden(e: Entry, member: Member, others: Others): { field: string; of: Member }[] {
  const deed = lockedDeed(e)
  const found =
    deed === null ? [] : [{ field: deed === 'move' && e.kind === 'move' ? 'yard' : 'what', of: member }]
  const also = (field: string, name: string | undefined) =>
    name === undefined
      ? []
      : others
          .named(name)
          .filter((m) => m !== member)
          .map((of) => ({ field, of }))
  if (e.kind === 'outcome' && e.what === 'united') return [...found, ...also('into', e.into)]
  return e.kind === 'given' ? [...found, ...also('donor', e.donor)] : found
}

/** On the day itself the clock decides, where both were noted: a box moved in the morning was moved before the look at noon. */
function suspicionAt(member: Member, e: Entry): Suspicion | null {
  const entries = member.folded.history?.entries ?? []
  const held = suspicionOn(entries, e.on)
  if (held === null || held.since !== e.on || e.at === undefined) return held
  const look = entries.find((x) => x.kind === 'inspection' && x.on === held.since && x.at !== undefined)
  return look?.at !== undefined && e.at < look.at ? null : held
}

/** Whether it corrects an entry that says the same of the field in question: only its other fields are mended. */
function corrects(e: Entry, member: Member, field: string): boolean {
  const old = member.rows.find((r) => r.entry.id === e.replaces)?.entry
  if (old === undefined || old.kind !== e.kind) return false
  const said = (x: Entry): unknown => (x as Record<string, unknown>)[field]
  return said(old) === said(e) && old.on <= e.on
}

function checkClearance(
  e: Extract<Entry, { kind: 'disease-cleared' }>,
  member: Member,
  others: Others,
  say: Say,
): void {
  if (e.replaces !== undefined) return
  const entries = member.folded.history?.entries ?? []
  const held = suspicionOn(entries, e.on)
  if (held === null) {
    // Of one that is only bound to a suspected colony, an inspector or a laboratory may say so before its look is due.
    if (e.clearedBy !== 'own-look' && others.exposures().has(member.id)) return
    const later: Day | undefined = entries.findLast(
      (x) => x.kind === 'inspection' && x.signs?.includes('brood-disease-suspected'),
    )?.on
    say(
      'on',
      later === undefined || later <= e.on
        ? 'no brood disease is suspected in this colony on that day, so there is nothing to clear'
        : `is before the look that suspected it, on ${later}`,
    )
    return
  }
  if (e.clearedBy === 'own-look' && !held.cleanLooks.some((on) => on > held.lastSeen && on <= e.on))
    say(
      'clearedBy',
      'needs a later look with the lid off, recorded as a visit with “looked: none” under signs of trouble, before you can clear it yourself',
    )
}
