/**
 * The tables, as drizzle knows them. `entry` is the journal and the only truth; `colony`, `planned_check` and `stay` are
 * caches of it, dropped and recomputed at will; `setting` holds the yard's choices.
 *
 * drizzle cannot say STRICT, WITHOUT ROWID, DEFERRABLE or CREATE TRIGGER: migrations/README.md says how those get
 * into the SQL, and tests/store/schema.http.test.ts checks that they did. Days are 'YYYY-MM-DD', instants UTC ISO text.
 */

import { sql } from 'drizzle-orm'
import {
  type AnySQLiteColumn,
  check,
  index,
  integer,
  primaryKey,
  real,
  sqliteTable,
  text,
} from 'drizzle-orm/sqlite-core'
import type { Day } from '../days.ts'
import type { ColonyId, EntryId, Tag } from '../ids.ts'
import type { EntryKind, Intake, Outcome } from '../journal/index.ts'
import type { Action, Phase, Rule } from '../recovery/index.ts'
import type { ColonyFacts, LossPhase, RecoveryPath } from '../stays/index.ts'

/** One row an entry, in the order in which they came to be known. Append-only by trigger. */
export const entry = sqliteTable(
  'entry',
  {
    seq: integer('seq').primaryKey({ autoIncrement: true }),
    id: text('id').$type<EntryId>().notNull().unique(),
    /** The colony's id: the id of its first intake entry, whatever name the entry used. */
    colony: text('colony').$type<ColonyId>().notNull(),
    kind: text('kind').$type<EntryKind>().notNull(),
    onDay: text('on_day').$type<Day>().notNull(),
    /** Checked at the end of the transaction: a batch may correct an entry that comes later in it. */
    replaces: text('replaces')
      .$type<EntryId>()
      .references((): AnySQLiteColumn => entry.id),
    recordedAt: text('recorded_at').notNull(),
    recordedBy: text('recorded_by').notNull(),
    /** The entry as it was written, colony by the name used then; keys sorted. */
    payload: text('payload').notNull(),
    /** Chains the row to all before it (chain.ts). Null only in rows that no program of ours wrote. */
    digest: text('digest'),
  },
  (t) => [
    index('entry_by_colony').on(t.colony, t.seq),
    index('entry_by_day').on(t.onDay, t.kind),
    check('entry_on_day', sql`${t.onDay} GLOB '[12][0-9][0-9][0-9]-[01][0-9]-[0-3][0-9]'`),
    check('entry_payload', sql`json_valid(${t.payload})`),
  ],
)

/**
 * Where a colony was removed: somebody's name and address. Apart from the journal, which can never forget, so that
 * exports and pages can leave it out and an operator can erase it.
 */
export const siteContact = sqliteTable('site_contact', {
  /** The intake entry that said so. */
  entry: text('entry')
    .primaryKey()
    .references(() => entry.id),
  site: text('site').notNull(),
})

/** Where each colony stands, with its plan as of a day. No site, no costs: those stay in the journal. */
export const colony = sqliteTable(
  'colony',
  {
    id: text('id')
      .$type<ColonyId>()
      .primaryKey()
      .references(() => entry.id),
    tag: text('tag').$type<Tag>().notNull(),
    yard: text('yard').notNull(),
    stand: text('stand'),
    removalType: text('removal_type').notNull(),
    queenAtIntake: text('queen_at_intake').$type<Intake['queen']>().notNull(),
    intakeOn: text('intake_on').$type<Day>().notNull(),
    removedOn: text('removed_on').$type<Day>().notNull(),
    phase: text('phase').$type<Phase>().notNull(),
    outcome: text('outcome').$type<Outcome['what']>(),
    /** The day it left; null while it is in the yard. */
    closedOn: text('closed_on').$type<Day>(),
    /** The day the plan was made for; of a colony that left, the day it left. */
    asOf: text('as_of').$type<Day>().notNull(),
    day: integer('day').notNull(),
    nextRule: text('next_rule').$type<Rule>(),
    nextOpens: text('next_opens').$type<Day>(),
    nextDue: text('next_due').$type<Day>(),
    nextCloses: text('next_closes').$type<Day>(),
    action: text('action').$type<Action>().notNull(),
    actionWhy: text('action_why').notNull(),
    /** 1 when the plan asks for something on its day. */
    toDo: integer('to_do').notNull(),
    plan: text('plan').notNull(),
  },
  (t) => [
    index('colony_by_tag').on(sql`${t.tag} COLLATE NOCASE`),
    index('colony_in_yard').on(t.toDo, t.asOf).where(sql`closed_on IS NULL`),
    index('colony_by_yard').on(t.yard, t.closedOn),
    index('colony_by_removal_type').on(t.removalType),
    index('colony_that_left').on(t.closedOn).where(sql`closed_on IS NOT NULL`),
  ],
)

/** Every check still asked of a colony in the yard, for lists by day across colonies. */
export const plannedCheck = sqliteTable(
  'planned_check',
  {
    colony: text('colony')
      .$type<ColonyId>()
      .notNull()
      .references(() => colony.id, { onDelete: 'cascade' }),
    /** Place among the colony's checks, from 0. */
    place: integer('place').notNull(),
    rule: text('rule').$type<Rule>().notNull(),
    opens: text('opens').$type<Day>().notNull(),
    due: text('due').$type<Day>().notNull(),
    closes: text('closes').$type<Day>().notNull(),
    why: text('why').notNull(),
  },
  (t) => [primaryKey({ columns: [t.colony, t.place] }), index('planned_check_by_day').on(t.opens, t.closes)],
)

/**
 * What a review counts of a colony that has left (src/stays), so that looking back reads a row a colony and no journals.
 * With costs: only for those who may see them.
 */
export const stay = sqliteTable('stay', {
  colony: text('colony')
    .$type<ColonyId>()
    .primaryKey()
    .references(() => colony.id, { onDelete: 'cascade' }),
  tag: text('tag').$type<Tag>().notNull(),
  removalType: text('removal_type').notNull(),
  /** The yard it was taken to. */
  yard: text('yard').notNull(),
  intakeOn: text('intake_on').$type<Day>().notNull(),
  /** When its first entry was recorded, UTC ISO. */
  recordedAt: text('recorded_at').notNull(),
  queen: text('queen').$type<Intake['queen']>().notNull(),
  /** 0 or 1; null: not said. */
  broodSalvaged: integer('brood_salvaged'),
  outdoorC: real('outdoor_c'),
  hoursOpenToBoxed: real('hours_open_to_boxed'),
  method: text('method').$type<NonNullable<ColonyFacts['method']>>(),
  removedBy: text('removed_by').notNull(),
  lookedAfterBy: text('looked_after_by'),
  lastSeen: text('last_seen').$type<Day>().notNull(),
  outcome: text('outcome').$type<Outcome['what']>().notNull(),
  leftOn: text('left_on').$type<Day>().notNull(),
  /** 1: nobody wrote down the day, and `left_on` stands for it. */
  dayUnknown: integer('day_unknown').notNull(),
  into: text('into'),
  path: text('path').$type<RecoveryPath>().notNull(),
  queenrightOn: text('queenright_on').$type<Day>(),
  queens: real('queens').notNull(),
  feed: real('feed').notNull(),
  other: real('other').notNull(),
  frames: real('frames').notNull(),
  unpricedQueens: integer('unpriced_queens').notNull(),
  unpricedFeed: integer('unpriced_feed').notNull(),
  visits: integer('visits').notNull(),
  phaseBeforeLoss: text('phase_before_loss').$type<LossPhase>(),
})

/** The yard's choices, JSON by key; src/store/settings.ts says which keys there are. */
export const setting = sqliteTable('setting', {
  key: text('key').primaryKey(),
  value: text('value').notNull(),
})

/** Every change of the yard's protocol: who, when, from what to what. */
export const protocolChange = sqliteTable(
  'protocol_change',
  {
    seq: integer('seq').primaryKey({ autoIncrement: true }),
    changedAt: text('changed_at').notNull(),
    changedBy: text('changed_by').notNull(),
    /** Overrides before and after, as JSON (src/recovery/protocol.ts). */
    before: text('before').notNull(),
    after: text('after').notNull(),
    /** Why, in the words of who changed it. */
    reason: text('reason'),
  },
  (t) => [check('protocol_change_json', sql`json_valid(${t.before}) AND json_valid(${t.after})`)],
)
