/** Sentences the store says about colonies and entries. */

import { type Day, inWords, inWordsWithYear } from '../days.ts'
import { type Entry, KIND_TABLE } from '../journal/index.ts'
import type { Member } from './roster.ts'

const UUID = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/i

export const isId = (text: string): boolean => UUID.test(text)

/** 'the visit of Sun 10 May' */
export const nameOf = (e: Entry): string => `${KIND_TABLE[e.kind].name} of ${inWords(e.on)}`

/** Why two colonies cannot both be in the yard under one tag. */
export function clash(member: Member, other: Member): string {
  const since = other.intakeOn === null ? '' : `, since ${inWordsWithYear(other.intakeOn)}`
  return member.known.length === 0
    ? `"${other.tag}" is already in the yard${since}: give this one another tag, or first record how that one left`
    : `the tag "${other.tag}" is by now on another colony in the yard${since}`
}

/** Why a colony was not in the yard on a day; null when it was. */
export function left(member: Member, on: Day): string | null {
  if (member.leftOn !== null && member.leftOn < on)
    return `${member.tag} left the yard on ${inWordsWithYear(member.leftOn)}`
  if (member.intakeOn !== null && member.intakeOn > on)
    return `${member.tag} came to the yard on ${inWordsWithYear(member.intakeOn)}`
  return null
}

/** Why a colony cannot have been united into `other`. */
export function intoProblem(name: string, other: Member | undefined, on: Day): string {
  if (other === undefined) return 'a colony cannot be united into itself'
  return `no such colony on ${inWords(on)}: ${left(other, on) ?? name}. Name one that was in the yard`
}
