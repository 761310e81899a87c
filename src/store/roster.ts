/**
 * Which colony an entry means, while a batch is being read. Holds every colony the batch touches as it would be after
 * the entries read so far, so that a batch may log a colony, close it, and use its tag again.
 *
 * A name is a colony's id or a tag; a tag means the colony in the yard that has it, else the last one that had it.
 */

import type { Day } from '../days.ts'
import type { ColonyId, Tag } from '../ids.ts'
import { type Folded, fold, type Known, knownBy } from './fold.ts'
import type { Journal } from './journal.ts'
import type { JournalRow } from './types.ts'

/** A new entry with its place in the batch, from 1. */
export interface Fresh extends JournalRow {
  place: number
}

/** A colony a batch touches. */
export class Member {
  readonly fresh: Fresh[] = []
  #folded: Folded | undefined

  constructor(
    readonly id: ColonyId,
    private readonly before: Known,
  ) {}

  get known(): readonly JournalRow[] {
    return this.before.rows
  }

  get rows(): JournalRow[] {
    return [...this.known, ...this.fresh]
  }

  get folded(): Folded {
    this.#folded ??= this.fresh.length === 0 ? this.before.folded : fold(this.id, this.rows)
    return this.#folded
  }

  get tag(): string {
    return this.folded.tag
  }

  get inYard(): boolean {
    return this.folded.history !== null && this.folded.history.outcome === null
  }

  get intakeOn(): Day | null {
    return this.folded.history?.intake.on ?? null
  }

  get leftOn(): Day | null {
    return this.folded.history?.outcome?.on ?? null
  }

  add(row: Fresh): void {
    this.fresh.push(row)
    this.#folded = undefined
  }
}

export class Roster {
  readonly #members = new Map<string, Member>()
  /** Ids by every tag, in small letters, that a member has had. */
  readonly #byTag = new Map<string, Set<string>>()
  readonly #homes = new Map<string, Member>()

  constructor(
    private readonly journal: Pick<Journal, 'byId'> & { of(id: ColonyId): Known },
    private readonly idsByTag: (tag: Tag) => ColonyId[],
  ) {}

  /** Colonies with new entries. */
  get touched(): Member[] {
    return [...this.#members.values()].filter((m) => m.fresh.length > 0)
  }

  /** The colony with that id, with or without an intake; null when the journal has never heard of it. */
  byId(id: ColonyId): Member | null {
    const here = this.#members.get(id)
    if (here !== undefined) return here
    const known = this.journal.of(id)
    return known.rows.length === 0 ? null : this.#enlist(new Member(id, known))
  }

  /** Every colony that has or had this tag, the one a name means first. */
  tagged(tag: Tag): Member[] {
    const key = tag.toLowerCase()
    const ids = new Set([...this.idsByTag(tag), ...(this.#byTag.get(key) ?? [])])
    return [...ids]
      .flatMap((id) => this.byId(id) ?? [])
      .filter((m) => m.folded.history !== null && m.tag.toLowerCase() === key)
      .sort(presentThenLatest)
  }

  /** The colony a name means. */
  named(name: string): Member | null {
    return this.byId(name) ?? this.tagged(name)[0] ?? null
  }

  /** The colony whose journal holds that entry. */
  homeOf(entryId: string): Member | null {
    const row = this.journal.byId(entryId)
    return this.#homes.get(entryId) ?? (row === null ? null : this.byId(row.entry.colony))
  }

  /** A colony that begins with this batch. */
  found(id: ColonyId): Member {
    return this.#enlist(new Member(id, knownBy(id, [])))
  }

  add(member: Member, row: Fresh): void {
    member.add(row)
    this.#homes.set(row.entry.id, member)
    if (row.entry.kind === 'intake') this.#remember(member, row.written)
  }

  #enlist(member: Member): Member {
    this.#members.set(member.id, member)
    if (member.known.length > 0) this.#remember(member, member.tag)
    return member
  }

  #remember(member: Member, tag: Tag): void {
    const key = tag.toLowerCase()
    this.#byTag.set(key, (this.#byTag.get(key) ?? new Set()).add(member.id))
  }
}

function presentThenLatest(a: Member, b: Member): number {
  if (a.inYard !== b.inYard) return a.inYard ? -1 : 1
  const key = (m: Member): string => `${m.leftOn ?? ''} ${m.intakeOn ?? ''} ${m.id}`
  return key(a) > key(b) ? -1 : 1
}
