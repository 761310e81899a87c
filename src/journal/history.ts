/**
 * Folds a colony's entries into its history: what stands after corrections and withdrawals, in one fixed order.
 *
 * Who replaces what: a correction takes the place of the entry it names; a withdrawal takes the whole line back
 * (withdrawing a correction does not bring the first version back). If two corrections name the same entry, the one
 * with the greater id stands: ids are time-ordered (UUIDv7), so that is the later one, on every device alike.
 */
import { type Day, inWords } from '../days.ts'
import type { Entry, Intake, Outcome, Withdrawal } from './entry.ts'
import { KIND_TABLE } from './kinds.ts'
import type { Problem } from './problem.ts'

/** Entries that stand, never withdrawals. */
export type StandingEntry = Exclude<Entry, Withdrawal>

export interface History {
  tag: string
  intake: Intake
  /** Removal day: the old queen's last day on her comb. */
  removedOn: Day
  /** Standing entries in order, the intake first. */
  entries: StandingEntry[]
  outcome: Outcome | null
}

const rankOf = (e: Entry): number => KIND_TABLE[e.kind].rank

/** Entries are never changed, so their text is made once: a colony's whole history is put in order at every append. */
const contents = new WeakMap<Entry, string>()

function content(e: Entry): string {
  const known = contents.get(e)
  if (known !== undefined) return known
  const { id: _id, ...rest } = e
  const text = JSON.stringify(rest, Object.keys(rest).sort())
  contents.set(e, text)
  return text
}

const less = (x: string, y: string): number => (x === y ? 0 : x < y ? -1 : 1)

/** By rank, time and content: a total order, whatever order entries were handed over in. */
const byRank = (a: Entry, b: Entry): number =>
  rankOf(a) - rankOf(b) || less(a.at ?? '', b.at ?? '') || less(content(a), content(b))

/** Nothing comes before the intake or after the outcome of its day, whatever the clock said. */
const movable = (e: Entry): boolean => e.at !== undefined && e.kind !== 'intake' && e.kind !== 'outcome'

/** One day's entries: those with a time by the clock, each other before the first of them that custom puts after it. */
function dayInOrder<E extends Entry>(day: E[]): E[] {
  const timed = day.filter(movable).sort((a, b) => less(a.at ?? '', b.at ?? '') || byRank(a, b))
  const merged: E[] = []
  for (const e of day.filter((x) => !movable(x)).sort(byRank)) {
    while (timed[0] !== undefined && rankOf(timed[0]) <= rankOf(e)) merged.push(timed.shift() as E)
    merged.push(e)
  }
  return [...merged, ...timed]
}

/** By day, and within a day as {@link dayInOrder} says. Does not depend on how the entries were handed over. */
function inOrder<E extends Entry>(entries: readonly E[]): E[] {
  const days = new Map<Day, E[]>()
  for (const e of entries) {
    const day = days.get(e.on)
    if (day === undefined) days.set(e.on, [e])
    else day.push(e)
  }
  return [...days.keys()].sort(less).flatMap((on) => {
    const day = days.get(on) ?? []
    return day.length > 1 ? dayInOrder(day) : day
  })
}

/** What became of each entry: the id that replaced it, by the id replaced. */
export function replacements(entries: readonly Entry[]): Map<string, Entry> {
  const by = new Map<string, Entry>()
  for (const e of entries) {
    if (e.replaces === undefined) continue
    const rival = by.get(e.replaces)
    if (rival === undefined || rival.id < e.id) by.set(e.replaces, e)
  }
  return by
}

/** The entries that stand, in order. */
export function standing(entries: readonly Entry[]): StandingEntry[] {
  const replaced = replacements(entries)
  const byId = new Map(entries.map((e) => [e.id, e]))
  // A correction of a correction that lost to a rival, or was withdrawn with its line, does not stand either. Ends on
  // any input: in a ring of replacements every entry is replaced, and only one link into an entry can have won.
  const won = (e: Entry): boolean => {
    if (e.replaces === undefined) return true
    if (replaced.get(e.replaces) !== e) return false
    const target = byId.get(e.replaces)
    return target === undefined || won(target)
  }
  const kept = entries.filter(
    (e): e is StandingEntry => e.kind !== 'withdrawal' && !replaced.has(e.id) && won(e),
  )
  return inOrder(kept)
}

/** The history of one colony, or null when no intake stands (never logged, or withdrawn). */
export const historyOf = (tag: string, entries: readonly Entry[]): History | null =>
  historyAs(tag, standing(entries))

/** The same of entries that stand, in their order. */
export function historyAs(tag: string, kept: readonly StandingEntry[]): History | null {
  const intake = kept.find((e): e is Intake => e.kind === 'intake')
  if (intake === undefined) return null
  return {
    tag,
    intake,
    removedOn: intake.removal.removedOn ?? intake.on,
    entries: [intake, ...kept.filter((e) => e !== intake)],
    outcome: kept.findLast((e): e is Outcome => e.kind === 'outcome') ?? null,
  }
}

const INSIDE = ['eggs', 'open', 'capped', 'cells'] as const

/** The last look with the lid off. */
export const lastOpening = ({ entries }: History): StandingEntry | undefined =>
  entries.findLast((e) => e.kind === 'inspection' && e.opened)

/**
 * What in these entries of one colony contradicts itself, the others, or the calendar. Empty when all is well.
 * Numbers entries by their place in the list, from 1.
 */
export function contradictions(entries: readonly Entry[], today: Day): Problem[] {
  const problems: Problem[] = []
  const place = new Map(entries.map((e, i) => [e, i + 1]))
  const say = (e: Entry, field: string, message: string): void => {
    problems.push({ entry: place.get(e), field, message })
  }
  const byId = new Map(entries.map((e) => [e.id, e]))
  for (const e of entries) {
    if (e.on > today) say(e, 'on', `${e.on} is in the future (today is ${today})`)
    ownContradictions(e, say)
    if (e.replaces === undefined) continue
    const target = byId.get(e.replaces)
    if (target === undefined) say(e, 'replaces', `names no entry of this colony: ${e.replaces}`)
    else if (e.kind !== 'withdrawal' && target.kind !== e.kind)
      say(
        e,
        'replaces',
        `a correction must be of the same kind: this is "${e.kind}", that is "${target.kind}"`,
      )
    else if (target.kind === 'withdrawal')
      say(e, 'replaces', 'a withdrawal cannot be corrected; enter it again')
    else if (target.id === e.id) say(e, 'replaces', 'an entry cannot replace itself')
  }
  acrossEntries(standing(entries), entries, say)
  return problems
}

type Say = (e: Entry, field: string, message: string) => void

function ownContradictions(e: Entry, say: Say): void {
  if (e.kind === 'intake' && e.removal.removedOn !== undefined && e.removal.removedOn > e.on)
    say(e, 'removal.removedOn', `${e.removal.removedOn} is after the intake on ${e.on}`)
  if (e.kind === 'inspection' && !e.opened)
    for (const field of INSIDE)
      if (e[field] !== undefined && e[field] !== 'none')
        say(e, field, 'cannot be seen with the lid on: say that the box was opened, or leave this out')
  if (e.kind === 'missed-visit' && e.again !== undefined && e.again <= e.on)
    say(e, 'again', `${e.again} is not after ${e.on}: say a later day, or leave it out`)
  if (e.kind === 'mite-wash' && e.mites > e.bees)
    say(e, 'mites', `${e.mites} mites on ${e.bees} bees: are the two numbers swapped?`)
}

function acrossEntries(kept: StandingEntry[], all: readonly Entry[], say: Say): void {
  const intakes = kept.filter((e) => e.kind === 'intake')
  const [first, ...more] = intakes
  if (first === undefined) {
    const any = all[0]
    // A colony logged by mistake may be withdrawn whole; anything else without an intake hangs in the air.
    if (any !== undefined && kept.length > 0)
      say(kept[0] ?? any, 'kind', 'comes without an intake: log the intake first')
    return
  }
  for (const e of more) say(e, 'kind', 'is a second intake of the same colony; correct the first one instead')
  const outcomes = kept.filter((e) => e.kind === 'outcome')
  for (const e of outcomes.slice(1))
    say(
      e,
      'kind',
      `is a second outcome; the colony already left the yard on ${inWords(outcomes[0]?.on ?? e.on)}`,
    )
  for (const e of kept) {
    if (e.on < first.on) say(e, 'on', `${e.on} is before the intake on ${first.on}`)
    const end = outcomes[0]
    if (end !== undefined && e !== end && e.on > end.on && e.kind !== 'note')
      say(e, 'on', `${e.on} is after the colony left the yard (${end.what}) on ${end.on}`)
  }
}
