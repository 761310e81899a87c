/** What waits on a phone, as its pages list it. */
import type { Day } from '../../days.ts'
import type { FormState } from '../../forms/index.ts'
import type { Entry } from '../../journal/index.ts'
import type { ClockOff, Frame } from '../../parts/index.ts'
import { entryWords } from '../../words/index.ts'

interface Kept {
  /** Its number in the outbox. */
  n: number
  id: string
  tag: string
  on: Day
  /** Name of whoever wrote it. */
  owner: string
}

/** An entry of whoever is signed in. */
export interface OwnItem extends Kept {
  entry: Entry
  keptAt: string
  /** waiting: goes next. resting: after another one that does not go. day: its day is to be looked at first. */
  state: 'waiting' | 'resting' | 'refused' | 'day'
  /** The phone’s day and the yard’s, where they were not the same. */
  clock: ClockOff | null
  /** Why the server would not have it. */
  problems: FormState['problems']
  /** Where it is changed; null where it can only be taken out. */
  change: string | null
  /** Whether it can be taken out as if it had never been. */
  removable: boolean
  /** Where it is taken back like any entry, because the server may have it; null where it cannot. */
  back: string | null
}

/** Of another person: it goes when they sign in again. What it says is not here, for it may be more than one may see. */
export interface TheirItem extends Kept {
  kind: Entry['kind']
  state: 'theirs'
  /** The server would not have it: no sign-in sends it. */
  stuck: boolean
}

export type OutboxItem = OwnItem | TheirItem

/** A removal sheet that waits. */
export interface SheetItem {
  id: string
  owner: string
  keptAt: string
  /** What on it can kill and the yard does not know; '' for nothing. 'gas pipe' */
  kills: string
  /** The server would not have it, and it does not go again. */
  stuck: boolean
  /** Null where it is another person's: it names a customer. */
  own: {
    name: string
    problems: FormState['problems']
    /** It was written on since, or is to stand over the other one: it goes again. */
    again: boolean
    /** It was refused over what somebody else said: it can be put over that. */
    over: boolean
    /** What goes when it is taken out; null: all that was written here; '': nothing, the words of both stay, or the careful answer. */
    out: string | null
    /** Whether anything of it stays then, and is sent; and what was found, in words. */
    stays: boolean
    found: string[]
    /** Names of the photos that were taken for it here. */
    photos: string[]
  } | null
}

/** A sheet that was put together with a colleague's, and what stands of two words where no tap could choose. */
export interface ToldItem {
  id: string
  told?: { name: string; lines: FormState['problems'] }
}

/** Names of the photos that go with an entry. */
export const photosOf = ({ entry }: OwnItem): readonly string[] =>
  'photos' in entry ? (entry.photos ?? []) : []

/** Even one's own: a beekeeper who is a helper by now is shown what helpers are. */
export const wordsOf = ({ entry }: OwnItem, frame: Frame) =>
  entryWords(entry, frame.units, frame.today, frame.may('see-private'), frame.words)
