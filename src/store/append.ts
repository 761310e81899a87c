/**
 * Appending: a batch of entries is read in order, each is given its colony, the whole is held against the history, and
 * all of it is written with its projections in one transaction, or none of it. What is refused is refused in words.
 *
 * Safe to repeat: an id already in the journal with the same content is answered "already". Who signed and what the
 * colony was called don't count as content, so a phone may send again after another helper signed in on it.
 */

import type { Day } from '../days.ts'
import type { ColonyId, Tag } from '../ids.ts'
import {
  type Entry,
  entry as entrySchema,
  type Problem,
  problemsOf,
  tag as tagSchema,
} from '../journal/index.ts'
import { type Problems, type Result, refused } from '../result.ts'
import { toTheEnd } from '../steps.ts'
import { conflicts } from './conflicts.ts'
import type { Connection } from './connection.ts'
import type { Exposures } from './exposures.ts'
import { canonical } from './fold.ts'
import type { Journal } from './journal.ts'
import { checkLocks } from './locks.ts'
import type { Recent } from './recent.ts'
import { type Fresh, type Member, Roster } from './roster.ts'
import type { Settler } from './settle.ts'
import type { AppendContext, AppendResult, JournalRow } from './types.ts'
import { clash, intoProblem, isId, left, nameOf } from './wording.ts'

/** An entry as it came, with the stamp it gets. */
export interface Incoming {
  raw: unknown
  recordedAt: string
  /** The entry's own `by` when left out. */
  recordedBy?: string
}

/** Where a batch is read and written: SQLite on the server, memory on a phone. */
export interface AppendParts {
  connection: Pick<Connection, 'write'>
  journal: Pick<Journal, 'byId' | 'insert'>
  /** A colony's rows so far; told what they are after an append. */
  recent: Recent
  /** Makes the plans of what was written. */
  settler: Pick<Settler, 'begin' | 'settle'>
  /** Which colonies are held because they are bound to a suspected one, as known before the batch. */
  exposures: () => Exposures
  idsByTag: (tag: Tag) => ColonyId[]
}

interface AppendOptions {
  judged?: boolean
  seen?: AppendContext['seen']
}

/**
 * See {@link AppendResult}. Throws only when the database cannot be written. `judged`: what is appended was let in once
 * before (a journal loaded whole), so locks are not held against it again.
 */
export function append(
  parts: AppendParts,
  incoming: readonly Incoming[],
  today: Day,
  options: AppendOptions = {},
): AppendResult {
  return parts.connection.write(() => {
    const judged = toTheEnd(judging(parts, incoming, today, options))
    if (!judged.ok) return judged
    const { batch } = judged
    if (batch.accepted.length > 0) write(parts, batch, today)
    return answerOf(batch)
  })
}

/** What {@link append} would answer now, a few entries at a step; nothing is written. */
export function* rehearsing(
  parts: AppendParts,
  incoming: readonly Incoming[],
  today: Day,
): Generator<undefined, AppendResult> {
  const judged = yield* judging(parts, incoming, today, {})
  return judged.ok ? answerOf(judged.batch) : judged
}

const answerOf = ({ accepted, already }: Batch): AppendResult => ({
  ok: true,
  accepted: accepted.map((a) => a.row.entry.id),
  already,
})

/** Entries held against the journal, pausing after each. */
function* judging(
  parts: AppendParts,
  incoming: readonly Incoming[],
  today: Day,
  { judged, seen }: AppendOptions,
): Generator<undefined, Result<{ batch: Batch }, Problems<Problem>>> {
  const { entries, problems } = yield* parsing(incoming)
  if (problems.length > 0) return refused(problems)
  const roster = new Roster({ byId: parts.journal.byId, of: parts.recent.of }, parts.idsByTag)
  const batch = new Batch(roster, parts.journal, judged === true ? null : once(parts.exposures), seen)
  for (const [i, e] of entries.entries()) {
    batch.read(e, i + 1, incoming[i])
    yield
  }
  const found = [...batch.problems]
  for (const member of roster.touched) {
    found.push(...conflicts(member, today))
    yield
  }
  return found.length > 0 ? refused(inOrder(found)) : { ok: true, batch }
}

/** Writes what was accepted, with the plans it changes. */
function write({ journal, recent, settler }: AppendParts, batch: Batch, today: Day): void {
  settler.begin()
  for (const { row, colony } of batch.accepted)
    row.seq = journal.insert({ ...row.entry, colony: row.written }, { ...row, colony })
  const { touched } = batch.roster
  for (const m of touched)
    recent.put(m.id, [...m.known, ...m.fresh.map(({ place: _place, ...row }) => row)], m.folded)
  settler.settle(touched, today, !batch.accepted.some(({ row }) => changesStanding(row.entry)))
}

/** Asked for only where an entry could be locked, and then once. */
function once<T>(make: () => T): () => T {
  let made: { value: T } | null = null
  return () => {
    made ??= { value: make() }
    return made.value
  }
}

const inOrder = (problems: Problem[]): Problem[] =>
  problems.sort((a, b) => (a.entry ?? Number.POSITIVE_INFINITY) - (b.entry ?? Number.POSITIVE_INFINITY))

function* parsing(
  incoming: readonly Incoming[],
): Generator<undefined, { entries: Entry[]; problems: Problem[] }> {
  const entries: Entry[] = []
  const problems: Problem[] = []
  for (const [i, { raw }] of incoming.entries()) {
    const parsed = entrySchema.safeParse(raw)
    if (parsed.success) entries.push(parsed.data)
    else problems.push(...problemsOf(parsed.error, raw, i + 1))
    yield
  }
  return { entries, problems }
}

/** Entries of one batch, each given its colony. */
class Batch {
  readonly problems: Problem[] = []
  readonly already: string[] = []
  readonly accepted: { row: Fresh; colony: ColonyId }[] = []
  readonly #seen = new Map<string, JournalRow>()

  constructor(
    readonly roster: Roster,
    private readonly journal: AppendParts['journal'],
    /** Null: what is appended was let in before. */
    private readonly exposures: (() => Exposures) | null,
    /** What of an entry the sender may see. */
    private readonly seen: (entry: Entry) => Entry = (entry) => entry,
  ) {}

  read(e: Entry, place: number, stamp: Incoming | undefined): void {
    const say = (field: string, message: string): void => {
      this.problems.push({ entry: place, field, message })
    }
    const before = this.#seen.get(e.id) ?? this.journal.byId(e.id)
    if (before !== null) {
      if (sameContent(this.seen(e), this.seen(before.entry)) && this.#sameColony(e.colony, before))
        this.already.push(e.id)
      else say('id', `is already that of another entry: ${nameOf(before.entry)}`)
      return
    }
    const home = this.#home(e, say)
    if (home === null) return
    const { member, written } = home
    const row: Fresh = {
      place,
      entry: { ...e, colony: member.id },
      seq: 0,
      recordedAt: stamp?.recordedAt ?? '',
      recordedBy: stamp?.recordedBy ?? e.by,
      written,
    }
    this.#checkInto(e, member, say)
    if (this.exposures !== null) {
      const named = (name: string): Member[] => this.#there(name, e.on)
      checkLocks(e, member, { named, exposures: this.exposures }, say)
    }
    this.#seen.set(e.id, row)
    this.roster.add(member, row)
    this.accepted.push({ row, colony: member.id })
    if (changesTag(e)) this.#checkTag(member, say)
  }

  /** The colony an entry belongs to and the name to write down; null after saying what is wrong. */
  #home(e: Entry, say: Say): { member: Member; written: string } | null {
    const corrected = e.replaces === undefined ? null : this.roster.homeOf(e.replaces)
    if (e.kind === 'intake') return this.#homeOfIntake(e, corrected, say)
    // A correction stays with its colony even after another one has got the tag.
    if (corrected !== null && isNameOf(e.colony, corrected)) return { member: corrected, written: e.colony }
    const member = this.roster.named(e.colony)
    if (member === null) {
      say('colony', `"${e.colony}" is no colony of this yard: log its intake first, or check the tag`)
      return null
    }
    return { member, written: e.colony }
  }

  /** A first intake founds a colony; a correction of one may also correct the tag. */
  #homeOfIntake(e: Entry, corrected: Member | null, say: Say): { member: Member; written: string } | null {
    if (corrected !== null && e.colony === corrected.id) return { member: corrected, written: corrected.tag }
    const tag = tagSchema.safeParse(e.colony)
    if (!tag.success) {
      for (const p of problemsOf(tag.error, e.colony)) say('colony', p.message)
      return null
    }
    if (isId(tag.data)) {
      say('colony', 'must be the tag painted on the box, not an id')
      return null
    }
    if (corrected === null && e.replaces !== undefined) {
      say('replaces', `names no entry of this yard: ${e.replaces}`)
      return null
    }
    return { member: corrected ?? this.roster.found(e.id), written: tag.data }
  }

  #sameColony(name: string, row: JournalRow): boolean {
    const member = this.roster.byId(row.entry.colony)
    return name.toLowerCase() === row.written.toLowerCase() || (member !== null && isNameOf(name, member))
  }

  #checkTag(member: Member, say: Say): void {
    if (!member.inYard) return
    const other = this.roster.tagged(member.tag).find((m) => m !== member && m.inYard)
    if (other !== undefined) say('colony', clash(member, other))
  }

  /** Colonies with that name or id that were in the yard on that day. */
  #there(name: string, on: Day): Member[] {
    const meant = this.roster.byId(name)
    return (meant === null ? this.roster.tagged(name) : [meant]).filter((m) => left(m, on) === null)
  }

  /** A colony united into one of this yard needs that one to be there. Any other name is a colony elsewhere. */
  #checkInto(e: Entry, member: Member, say: Say): void {
    if (e.kind !== 'outcome' || e.what !== 'united' || e.into === undefined) return
    const meant = this.roster.byId(e.into)
    const candidates = meant === null ? this.roster.tagged(e.into) : [meant]
    if (candidates.length === 0) return
    const others = candidates.filter((m) => m !== member)
    const there = others.some((m) => left(m, e.on) === null)
    if (!there) say('into', intoProblem(e.into, others[0], e.on))
  }
}

type Say = (field: string, message: string) => void

/** Whether the colony's name, or whether it is in the yard, may hang on it. */
const changesStanding = (e: Entry): boolean => changesTag(e) || e.kind === 'outcome'

const changesTag = (e: Entry): boolean =>
  e.kind === 'intake' || e.kind === 'withdrawal' || e.replaces !== undefined

const isNameOf = (name: string, member: Member): boolean =>
  name === member.id || name.toLowerCase() === member.tag.toLowerCase()

const sameContent = (a: Entry, b: Entry): boolean =>
  canonical({ ...a, by: '', colony: '' }) === canonical({ ...b, by: '', colony: '' })
