/** Plausible colonies from a seed: what a yard's people would enter, in the order in which they would. Invented data. */
import { addDays, type Day } from '../../src/days.ts'
import {
  type Entry,
  type EntryKind,
  GIFTS,
  METHODS,
  QUEEN_AT_INTAKE,
  REMOVAL_TYPES,
  SIGNS,
} from '../../src/journal/entry.ts'
import { historyOf } from '../../src/journal/history.ts'
import { lockedDeed, suspicionOn } from '../../src/recovery/suspicion.ts'

/** An entry and the day somebody entered it. */
export interface Entered {
  enteredOn: Day
  entry: Entry
}

export type Random = () => number

/** mulberry32 (Tommy Ettinger, public domain): 0 <= x < 1, the same sequence for the same seed. */
export function randomFrom(seed: number): Random {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let t = Math.imul(state ^ (state >>> 15), state | 1)
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61)
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296
  }
}

export class Dice {
  #made = 0
  constructor(readonly random: Random) {}
  chance = (p: number): boolean => this.random() < p
  int = (from: number, to: number): number => from + Math.floor(this.random() * (to - from + 1))
  pick = <T>(list: readonly T[]): T => {
    const picked = list[this.int(0, list.length - 1)]
    if (picked === undefined) throw new RangeError('pick: empty list')
    return picked
  }
  maybe = <T extends object>(p: number, fields: () => T): T | Record<string, never> =>
    this.chance(p) ? fields() : {}
  quarters = (max: number): number => this.int(0, max * 4) / 4
  /** A version 7 UUID: later ones sort later. */
  id = (): string => {
    const hex = (n: number, digits: number): string => n.toString(16).padStart(digits, '0')
    this.#made++
    return `${hex(this.#made, 8)}-${hex(this.int(0, 0xffff), 4)}-7${hex(this.int(0, 0xfff), 3)}-8${hex(this.int(0, 0xfff), 3)}-${hex(this.int(0, 0xffffff), 12)}`
  }
}

const PEOPLE = ['Odalys', 'Bram', 'Teuila']
const YARDS = ['Quarry yard', 'Orchard lane']

export interface StoryOptions {
  tag: string
  intakeOn: Day
  /** Nothing is entered after this day; a colony that would leave later is still there. */
  until: Day
  /** Days in the yard. */
  stay: number
  /** How likely it is that leaving is recorded when the stay is over. Default 0.9. */
  leaves?: number
}

/** One colony from intake on. */
export function story(dice: Dice, { tag, intakeOn, until, stay, leaves = 0.9 }: StoryOptions): Entered[] {
  const told: Entered[] = []
  const tell = (enteredOn: Day, entry: Entry): void => {
    if (enteredOn > until) return
    // A suspected disease holds the colony until somebody clears it.
    const known =
      historyOf(
        tag,
        told.map((t) => t.entry),
      )?.entries ?? []
    if (lockedDeed(entry) !== null && suspicionOn(known, entry.on) !== null)
      told.push({ enteredOn, entry: { ...base(entry.on), kind: 'disease-cleared', clearedBy: 'inspector' } })
    told.push({ enteredOn, entry })
  }
  const base = (on: Day) => ({ id: dice.id(), colony: tag, on, by: dice.pick(PEOPLE) })
  tell(intakeOn, intakeEntry(dice, base(intakeOn)))
  for (let day = dice.int(1, 3); day < stay; day += dice.int(1, 4)) {
    const on = addDays(intakeOn, day)
    for (let n = dice.int(1, 2); n > 0; n--) tell(on, visitEntry(dice, base(on)))
    if (dice.chance(0.12)) tell(on, secondThought(dice, told, base(on)))
  }
  const last = addDays(intakeOn, stay)
  if (!dice.chance(leaves)) return told
  tell(last, outcomeEntry(dice, base(last)))
  if (dice.chance(0.2)) {
    const after = addDays(last, dice.int(1, 20))
    tell(after, { ...base(after), kind: 'note', text: 'Heard from them: doing well.' })
  }
  return told
}

type Base = { id: string; colony: string; on: Day; by: string }

function intakeEntry(dice: Dice, base: Base): Entry {
  return {
    ...base,
    kind: 'intake',
    removal: {
      type: dice.pick(REMOVAL_TYPES),
      ...dice.maybe(0.3, () => ({ removedOn: addDays(base.on, -dice.int(0, 2)) })),
      ...dice.maybe(0.7, () => ({ outdoorC: dice.int(12, 38), method: dice.pick(METHODS) })),
      ...dice.maybe(0.5, () => ({ site: `${dice.int(1, 99)} Invented Way` })),
    },
    yard: dice.pick(YARDS),
    ...dice.maybe(0.8, () => ({ stand: String(dice.int(1, 40)) })),
    queen: dice.pick(QUEEN_AT_INTAKE),
    ...dice.maybe(0.8, () => ({
      brood: { eggs: dice.quarters(2), open: dice.quarters(2), capped: dice.quarters(3) },
      broodCare: dice.pick(['closed-chest', 'open-air'] as const),
    })),
    ...dice.maybe(0.7, () => ({ bees: { frames: dice.quarters(10) } })),
    ...dice.maybe(0.5, () => ({ tiedComb: dice.chance(0.7) })),
  }
}

function visitEntry(dice: Dice, base: Base): Entry {
  const roll = dice.random()
  if (roll < 0.6) return inspectionEntry(dice, base)
  if (roll < 0.72)
    return {
      ...base,
      kind: 'given',
      what: dice.pick(GIFTS),
      ...dice.maybe(0.3, () => ({ cost: dice.int(1, 40) })),
    }
  if (roll < 0.78)
    return { ...base, kind: 'queen-cage', found: dice.pick(['released', 'still-caged', 'rejected', 'dead']) }
  if (roll < 0.82) return { ...base, kind: 'ties-removed' }
  if (roll < 0.88) return { ...base, kind: 'mite-wash', bees: dice.int(100, 400), mites: dice.int(0, 30) }
  if (roll < 0.92)
    return {
      ...base,
      kind: 'move',
      yard: dice.pick(YARDS),
      ...dice.maybe(0.7, () => ({ stand: String(dice.int(1, 40)) })),
    }
  return {
    ...base,
    kind: 'note',
    text: dice.pick(['Loud at noon.', 'Took syrup.', 'Entrance narrowed; “quiet” ✓']),
  }
}

function inspectionEntry(dice: Dice, base: Base): Entry {
  const opened = dice.chance(0.7)
  return {
    ...base,
    kind: 'inspection',
    opened,
    ...(opened
      ? {
          ...dice.maybe(0.7, () => ({ eggs: dice.pick(['none', 'none', 'single', 'multiple'] as const) })),
          ...dice.maybe(0.6, () => ({ open: dice.pick(['none', 'some', 'plenty'] as const) })),
          ...dice.maybe(0.6, () => ({ capped: dice.pick(['none', 'worker', 'drone-in-worker'] as const) })),
          ...dice.maybe(0.5, () => ({
            cells: dice.pick(['none', 'none', 'cups', 'open', 'capped', 'emerged', 'torn-down'] as const),
          })),
          ...dice.maybe(0.2, () => ({ onFreshComb: true })),
          ...dice.maybe(0.4, () => ({ queen: dice.pick(['seen', 'unseen'] as const) })),
          ...dice.maybe(0.4, () => ({ framesOfBees: dice.quarters(10) })),
        }
      : {}),
    ...dice.maybe(0.5, () => ({ stores: dice.pick(['low', 'enough', 'heavy'] as const) })),
    ...dice.maybe(0.2, () => ({ signs: dice.chance(0.5) ? [] : [dice.pick(SIGNS)] })),
    ...dice.maybe(0.2, () => ({ at: `${dice.int(10, 18)}:${dice.int(10, 59)}` })),
  }
}

/** A correction or a withdrawal of something entered before; of the intake only its facts, never its day. */
function secondThought(dice: Dice, told: readonly Entered[], base: Base): Entry {
  const { entry } = dice.pick(told)
  // Neither is ever made by a visit, so neither can be recomputed by one.
  if (entry.kind === 'withdrawal' || entry.kind === 'disease-cleared')
    return { ...base, kind: 'note', text: 'Nothing to take back.' }
  if (entry.kind !== 'intake' && dice.chance(0.4))
    return { ...base, kind: 'withdrawal', replaces: entry.id, reason: 'Wrong box.' }
  const remade = remake(dice, entry.kind, { ...base, on: entry.on })
  if (remade.kind !== 'intake' || entry.kind !== 'intake') return { ...remade, replaces: entry.id }
  return {
    ...remade,
    removal: { ...remade.removal, removedOn: entry.removal.removedOn ?? entry.on },
    replaces: entry.id,
  }
}

function remake(dice: Dice, kind: EntryKind, base: Base): Entry {
  if (kind === 'intake') return intakeEntry(dice, base)
  for (;;) {
    const made = visitEntry(dice, base)
    if (made.kind === kind) return made
  }
}

function outcomeEntry(dice: Dice, base: Base): Entry {
  const what = dice.pick([
    'moved-out',
    'moved-out',
    'moved-out',
    'died',
    'absconded',
    'united',
    'other',
  ] as const)
  return { ...base, kind: 'outcome', what, ...(what === 'united' ? { into: 'a hive at home' } : {}) }
}

/** What is entered day by day, one list a day, days in order. */
export function byDay(entered: readonly Entered[]): { day: Day; entries: Entry[] }[] {
  const days = new Map<Day, Entry[]>()
  for (const { enteredOn, entry } of entered) days.set(enteredOn, [...(days.get(enteredOn) ?? []), entry])
  return [...days].sort(([a], [b]) => (a < b ? -1 : 1)).map(([day, entries]) => ({ day, entries }))
}
