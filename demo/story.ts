/**
 * A small language for telling a colony's story by days since its intake:
 *
 *     colony('M-05', { daysAgo: 6, yard: MARL, … })
 *       .outside(1)
 *       .open(5, { eggs: 'none', cells: 'capped', cellCount: 4 })
 *       .note(6, 'Piping heard at dusk.')
 *
 * Telling it for a given today makes journal entries, such as a phone would have sent.
 */

import { addDays, type Day } from '../src/days.ts'
import type {
  DiseaseCleared,
  Entry,
  EntryKind,
  Gift,
  Intake,
  MissedReason,
  Outcome,
  QueenCage,
} from '../src/journal/index.ts'
import { helperOf } from './cast.ts'
import { idMadeAt } from './ids.ts'

type Base = 'id' | 'colony' | 'on' | 'at' | 'by' | 'kind' | 'replaces'
type Of<K extends EntryKind> = Extract<Entry, { kind: K }>
/** Who did it, and when, if not the yard's helper on the usual round. */
interface Signed {
  by?: string
  at?: string
}
type Fields<K extends EntryKind, Given extends string = never> = Omit<Of<K>, Base | Given> & Signed
/** What happened, before it has a day, a colony and an id. */
type Deed = { [K in EntryKind]: { kind: K } & Fields<K> }[EntryKind]

interface Told {
  /** Days since intake on which it happened, and on which it was typed in. */
  day: number
  typedOn: number
  deed: Deed
  /** Position in the story of what it corrects or withdraws. */
  replaces?: number
}

/** When a colony came: so many days before today, or on a given day. */
type Arrival = { daysAgo: number } | { on: Day }
/** An intake as told: `removedBefore` is how many days earlier it was cut out. */
export type Arriving = Arrival & { removedBefore?: number } & Required<Signed> & Omit<Intake, Base>

/** When the paperwork is put right. */
const EVENING = '20:15'
/** When whoever brought a colony is done with it. */
const SETTLED = '20:50'

export class Story {
  readonly tag: string
  readonly #arriving: Arriving
  readonly #told: Told[] = []
  #yard: string

  constructor(tag: string, arriving: Arriving) {
    this.tag = tag
    this.#arriving = arriving
    this.#yard = arriving.yard
    const {
      daysAgo: _a,
      on: _o,
      removedBefore: _r,
      ...intake
    } = { daysAgo: 0, on: '', removedBefore: 0, ...arriving }
    this.#tell(0, { kind: 'intake', ...intake })
  }

  /** An outside look: the lid stays on. Nothing is wrong, and it is heavy enough, unless something else is said. */
  outside(day: number, seen: Partial<Fields<'inspection'>> = {}): this {
    return this.#tell(day, { kind: 'inspection', opened: false, stores: 'enough', signs: [], ...seen })
  }

  /** The box is opened and frames are looked at. */
  open(day: number, seen: Partial<Fields<'inspection'>>): this {
    return this.#tell(day, { kind: 'inspection', opened: true, stores: 'enough', signs: [], ...seen })
  }

  give(day: number, what: Gift, more: Partial<Fields<'given', 'what'>> = {}): this {
    return this.#tell(day, { kind: 'given', what, ...more })
  }

  /** The queen's cage is looked at. */
  cage(day: number, found: QueenCage['found'], more: Partial<Fields<'queen-cage', 'found'>> = {}): this {
    return this.#tell(day, { kind: 'queen-cage', found, ...more })
  }

  tiesOff(day: number, more: Fields<'ties-removed'> = {}): this {
    return this.#tell(day, { kind: 'ties-removed', ...more })
  }

  /** Mites washed off a sample of bees (a half cup is about 300). */
  wash(day: number, mites: number, bees = 300): this {
    return this.#tell(day, { kind: 'mite-wash', bees, mites })
  }

  move(day: number, yard: string, stand: string): this {
    this.#tell(day, { kind: 'move', yard, stand })
    this.#yard = yard
    return this
  }

  /** On the round, but not reached. */
  missed(day: number, reason: MissedReason, more: Partial<Fields<'missed-visit', 'reason'>> = {}): this {
    return this.#tell(day, { kind: 'missed-visit', reason, ...more })
  }

  /** A suspected brood disease is found not to be there. */
  cleared(
    day: number,
    clearedBy: DiseaseCleared['clearedBy'],
    more: Partial<Fields<'disease-cleared', 'clearedBy'>> = {},
  ): this {
    return this.#tell(day, { kind: 'disease-cleared', clearedBy, ...more })
  }

  note(day: number, text: string, more: Signed = {}): this {
    return this.#tell(day, { kind: 'note', text, ...more })
  }

  ends(day: number, what: Outcome['what'], more: Partial<Fields<'outcome', 'what'>> = {}): this {
    return this.#tell(day, { kind: 'outcome', what, ...more })
  }

  /** What was told last was wrong: so many days after intake it is typed in again, with these fields changed. */
  corrected(typedOn: number, change: Partial<Deed> & Signed & { day?: number }): this {
    const last = this.#last()
    const { day = last.day, ...fields } = change
    this.#told.push({
      day,
      typedOn,
      deed: { ...last.deed, ...fields } as Deed,
      replaces: this.#told.length - 1,
    })
    return this
  }

  /** What was told last is taken back. */
  withdrawn(typedOn: number, reason: string): this {
    const { by } = this.#last().deed
    this.#told.push({
      day: typedOn,
      typedOn,
      deed: { kind: 'withdrawal', reason, at: EVENING, ...(by === undefined ? {} : { by }) },
      replaces: this.#told.length - 1,
    })
    return this
  }

  /** The entries of this story as of `today`. Throws RangeError when something would happen after today. */
  entries(today: Day): Entry[] {
    const arrived = 'on' in this.#arriving ? this.#arriving.on : addDays(today, -this.#arriving.daysAgo)
    const ids: string[] = []
    return this.#told.map((told, i) => {
      const typed = addDays(arrived, told.typedOn)
      if (typed > today)
        throw new RangeError(`${this.tag}: day ${told.typedOn} of its story is after ${today}`)
      const at = told.deed.at ?? '10:00'
      const id = idMadeAt(typed, typedAt(told, at), `${this.tag} ${arrived} ${i}`)
      ids.push(id)
      const replaces = told.replaces === undefined ? {} : { replaces: ids[told.replaces] }
      return { ...this.#dated(told, arrived), id, colony: this.tag, ...replaces } as Entry
    })
  }

  #dated(told: Told, arrived: Day): object {
    const { deed, day } = told
    const on = addDays(arrived, day)
    if (deed.kind !== 'intake') return { ...deed, on }
    const before = this.#arriving.removedBefore
    const removedOn = before === undefined ? {} : { removedOn: addDays(arrived, -before) }
    return { ...deed, on, removal: { ...removedOn, ...deed.removal } }
  }

  #tell(day: number, deed: Deed): this {
    // A yard is walked in the order of its stands, so the hour follows from where the box stands.
    const hour = `${9 + (this.#told.length % 2)}:${String((Number(this.#arriving.stand ?? 0) * 4) % 60).padStart(2, '0')}`
    const { by } = this.#arriving
    const signed = day === 0 ? { by, at: SETTLED } : { by: helperOf(this.#yard), at: hour.padStart(5, '0') }
    this.#told.push({ day, typedOn: day, deed: { ...signed, ...deed } })
    return this
  }

  #last(): Told {
    const last = this.#told.at(-1)
    if (last === undefined) throw new RangeError(`${this.tag}: nothing was told yet`)
    return last
  }
}

/** What was seen in the morning is typed in on the spot; a correction in the evening of the day it was noticed. */
const typedAt = (told: Told, at: string): string => (told.replaces === undefined ? at : EVENING)

/** Begins a story. */
export const colony = (tag: string, arriving: Arriving): Story => new Story(tag, arriving)
