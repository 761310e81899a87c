/** What the store promises to the rest of the program. */

import type { Day } from '../days.ts'
import type { ColonyId, EntryId, Tag } from '../ids.ts'
import type { Entry, EntryKind, Happening, History, Intake, Outcome, Problem } from '../journal/index.ts'
import type { Permit } from '../records/index.ts'
import type { Action, Phase, Plan, Protocol, Rule } from '../recovery/index.ts'
import type { Problems, Result } from '../result.ts'
import type { Exposures } from './exposures.ts'
import type { ColonyImports } from './imports.ts'
import type { Joined } from './joined.ts'
import type { Letters } from './letters.ts'
import type { MoveRecords } from './move-records.ts'
import type { Planner } from './planner.ts'
import type { Protocols } from './protocols.ts'
import type { Refused } from './refused.ts'
import type { Jobs, Removals } from './removals.ts'
import type { Settings } from './settings.ts'
import type { Stays } from './stays.ts'

export interface AppendContext {
  /** The yard's today: an entry dated later is refused, and plans are made as of it. */
  today: Day
  /** UTC, ISO. */
  recordedAt: string
  /** Who is signed in; the entry's own `by` when left out. */
  recordedBy?: string
  /**
   * An entry as whoever sends may see it. An entry sent again is held against what is there by that alone: an answer
   * that tells same from other would tell anything that can be guessed. All of it when left out.
   */
  seen?: ((entry: Entry) => Entry) | undefined
}

/**
 * Ids now in the journal, and ids that were there before with the same content; or nothing was written. Problems number
 * the entries of the batch from 1.
 */
export type AppendResult = Result<{ accepted: EntryId[]; already: EntryId[] }, Problems<Problem>>

/** A new version, or why not: what does not fit, or the version that somebody saved since `base` was shown. */
export type Versioned<V> = Result<{ version: number }, Problems<Problem> | { newer: V }>

export interface JournalRow {
  /** `entry.colony` is the colony's id. */
  entry: Entry
  /** Order in which entries came to be known, from 1, rising. */
  seq: number
  recordedAt: string
  recordedBy: string
  /** What the entry called its colony: a tag, or an id. An intake always names the tag. */
  written: string
}

/** With the tag its colony has now. */
export interface TaggedRow extends JournalRow {
  tag: Tag
}

export interface ColonySummary {
  id: ColonyId
  tag: Tag
  yard: string
  stand: string | null
  removalType: string
  queenAtIntake: Intake['queen']
  intakeOn: Day
  removedOn: Day
  phase: Phase
  outcome: Outcome['what'] | null
  closedOn: Day | null
  /** The day the plan is as of; of a colony that left, the day it left. */
  asOf: Day
  /** Days since intake on that day. */
  day: number
  /** The most urgent check still asked. */
  nextRule: Rule | null
  nextOpens: Day | null
  nextDue: Day | null
  nextCloses: Day | null
  action: Action
  actionWhy: string
  /** The plan asks for something on that day. */
  toDo: boolean
  /** Parsed when first looked at. */
  readonly plan: Plan
}

export interface ColonyFilter {
  open?: boolean | undefined
  yard?: string | undefined
  /** Those logged on that day or later. */
  intakeFrom?: Day | undefined
  /** Part of a tag, yard, stand or removal type; capitals don't matter. */
  text?: string | undefined
}

/** Some of the colonies that have left, of one yard or of all: so many, after so many that left later. */
export interface LeftPage {
  yard?: string | undefined
  skip: number
  limit: number
}

export interface Left {
  /** How many have left in all. */
  total: number
  found: ColonySummary[]
}

/** A page of changes, newest first. */
interface ChangesPage {
  /** Only rows with a lower `seq`: the last one of the page before. */
  before?: number | undefined
  /** Default 50, at most 500. */
  limit?: number | undefined
  /** One colony's id. */
  colony?: ColonyId | undefined
}

export interface PlannedCheck {
  colony: ColonyId
  tag: Tag
  yard: string
  stand: string | null
  rule: Rule
  opens: Day
  due: Day
  closes: Day
  why: string
}

/** One entry with who recorded it when: what an export keeps of the journal. */
export interface JournalLine {
  raw: unknown
  recordedAt: string
  recordedBy: string
}

export interface VerifyReport {
  ok: boolean
  problems: string[]
  /** Whether the plans kept were held against the journal; not while they are yet to be made by today's rules. */
  compared: boolean
  colonies: number
  entries: number
}

/** What pages read and forms write: the store on the server, and what a phone keeps of it. */
export interface Repository {
  /** Checks and writes entries, all or none, with the projections of every colony they touch. Safe to repeat. */
  append(raw: readonly unknown[], context: AppendContext): AppendResult
  colony(tagOrId: ColonyId | Tag): { summary: ColonySummary; history: History; journal: JournalRow[] } | null
  /** By yard, stand and tag in walking order. */
  colonies(filter?: ColonyFilter): ColonySummary[]
  /** The last to leave first, those of one day by id. Costs by the page, not by the past. */
  left(page: LeftPage): Left
  /**
   * Colonies in the yard with something to do on that day, in walking order: an action is advised, or a check is open
   * (one that is not due yet can wait until `nextCloses`). Plans of other days are recomputed first; where the disk is
   * full they are made in memory, so the round can be walked all the same.
   */
  today(today: Day): ColonySummary[]
  /** Every yard ever used, with the number of colonies in it now. */
  yards(): { yard: string; open: number }[]
  /** Every removal type ever used. */
  removalTypes(): string[]
  /** True when a colony in the yard has this tag; capitals don't matter. */
  tagTaken(tag: Tag): boolean
  entry(id: EntryId): TaggedRow | null
  changes(page?: ChangesPage): TaggedRow[]
  /** Entries in which somebody wrote that word, the newest first, a few hundred at most; capitals and accents don't matter. */
  mentions(word: string): TaggedRow[]
  /** What happened from one day to another, both included, by day: in brief, without anything private. */
  happenings(from: Day, to: Day, only?: EntryKind): Happening[]
  /** Colonies that were united into this one. */
  joined(colony: ColonySummary): Joined[]
  /** Colonies that are held because they are bound to one with suspected brood disease. */
  exposed(): Exposures
  settings: Pick<Settings, 'get'>
  protocol(): Protocol
  /** The plan as this yard makes it, by its protocol, rates, costs and what is at hand. */
  plan: Planner
  /** Removal sheets: private. */
  removals: Jobs
  /** Papers noted for its move, of the last record; private. Left out where the book does not keep them, as on a phone. */
  papers?(colony: ColonyId): readonly Permit[]
}

/** What goes out of the yard about a colony: private. */
export interface After {
  letters: Letters
  records: MoveRecords
}

export interface Store extends Repository {
  /** Appends whole journals: every line keeps who recorded it when. */
  load(lines: readonly JournalLine[], today: Day): AppendResult
  /** Makes the plans of colonies in the yard that are as of another day. Cheap when there are none. Returns how many. */
  refresh(today: Day): number
  /** The same in slices, a few colonies and a transaction each. */
  refreshing(today: Day): Generator<void, number>
  /** Reads in steps what traces brood disease; without it the first entry after a start reads all of that at once. */
  tracing(): Generator<void, void>
  /** How many colonies are in the yard, and how many ever were. */
  size(): { inYard: number; ever: number }
  /** Checks asked of colonies in the yard whose window touches these days, by day. */
  checksBetween(from: Day, to: Day): PlannedCheck[]
  /** The whole journal, oldest first, read in pages so that writing can go on. */
  journal(): Iterable<JournalRow>
  /** Colonies that have left and are bound to one in which brood disease is suspected: who has them is to be told. */
  goneBound(): Exposures
  /** Every colony with its history, closed ones too. */
  histories(): Iterable<{ id: ColonyId; history: History }>
  /** What a review counts of every colony. With costs. */
  stays: Stays
  settings: Settings
  /** Changes of the protocol, with the plans recomputed in slices. */
  protocols: Protocols
  /** Removal sheets: private. */
  removals: Removals
  after: After
  /** What phones sent and the journal would not have. */
  refused: Refused
  /** Colonies from spreadsheets. */
  imports: ColonyImports
  /** Writes the file and its log anew after something was erased; false where that could not be done (no room, or others at it). */
  clean(): boolean
  /** Runs several appends as one durable transaction: one wait for the disk. What throws undoes all of them. */
  together<T>(work: () => T): T
  /** Makes all projections again from the journal. */
  rebuild(today: Day): { colonies: number; entries: number }
  /** Looks, and changes nothing. */
  verify(): VerifyReport
  close(): void
}
