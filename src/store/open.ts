/** Opens the store: connection, migrations, prepared statements, and the parts put together. */

import Database from 'better-sqlite3'
import type { Day } from '../days.ts'
import type { ColonyId } from '../ids.ts'
import { type Plan, type Protocol, yardProtocol } from '../recovery/index.ts'
import { append, type Incoming, rehearsing } from './append.ts'
import { type Connection, connect } from './connection.ts'
import { cleaned } from './erasing.ts'
import { exposureOf } from './exposures.ts'
import { fold } from './fold.ts'
import { happeningsOf } from './happenings.ts'
import { importsOf } from './imports.ts'
import { joinings } from './joined.ts'
import { journalOf } from './journal.ts'
import { lettersOf } from './letters.ts'
import { mentionsOf } from './mentions.ts'
import {
  DamagedError,
  type MigrateOptions,
  migrate,
  OlderError,
  pendingMigrations,
  StoreError,
} from './migrate.ts'
import { moveRecordsOf } from './move-records.ts'
import { PLANNED_BY, plannerOf } from './planner.ts'
import { project } from './project.ts'
import { type Projections, projectionsOf } from './projections.ts'
import { protocolsOf } from './protocols.ts'
import { queriesOf } from './queries.ts'
import { type Recent, recentOf } from './recent.ts'
import { refusedOf } from './refused.ts'
import { type Removals, removalsOf } from './removals.ts'
import { rulesStamp } from './rules-stamp.ts'
import { settingsOf } from './settings.ts'
import { staysOf } from './stays.ts'
import { summaryOf } from './summaries.ts'
import { tracerOf } from './tracer.ts'
import type { ColonySummary, JournalRow, Store, TaggedRow } from './types.ts'
import { verify } from './verify.ts'

export interface OpenOptions extends MigrateOptions {
  /** False: refuse a database that is not up to date, and one that is not there, instead of changing anything. */
  migrate?: boolean
}

/** Throws StoreError, in words for the person at the terminal, when the database cannot be used. */
export function openStore(file: string, options: OpenOptions = {}): Store {
  const connection = openConnection(file, options)
  return options.migrate === false ? assemble(connection).store : storeOn(connection)
}

/** An empty database of this version: tests open hundreds in memory, which were all made migration by migration. */
let empty: Buffer | undefined

function emptyInMemory(): Connection {
  if (empty === undefined) {
    const { raw } = connect(':memory:')
    migrate(raw)
    empty = raw.serialize()
    raw.close()
  }
  return connect(':memory:', { contents: empty })
}

/** For other parts that keep their own tables in the same file. */
export function openConnection(file: string, options: OpenOptions = {}): Connection {
  if (file === ':memory:' && options.folder === undefined && options.migrate !== false) return emptyInMemory()
  let connection: Connection | undefined
  try {
    connection = connect(file, { asIs: options.migrate === false })
    if (options.migrate !== false) migrate(connection.raw, options)
    else if (pendingMigrations(connection.raw, options.folder).length > 0)
      throw new OlderError(`${file} is from an older version: start the server once to bring it up to date.`)
    return connection
  } catch (error) {
    connection?.raw.close()
    throw inWords(error, file)
  }
}

function inWords(error: unknown, file: string): unknown {
  if (!(error instanceof Database.SqliteError)) return error
  if (error.code === 'SQLITE_NOTADB' || error.code.startsWith('SQLITE_CORRUPT'))
    return new DamagedError(`${file} is damaged or is not a database (${error.message}). Restore a backup.`)
  if (error.code.startsWith('SQLITE_CANTOPEN'))
    return new StoreError(`${file} cannot be opened: is it there?`)
  return error
}

/**
 * The store on a connection that is up to date; projections made by other rules are recomputed first. `pastLater`: those of
 * colonies that have left wait for `protocols.remakeSome`, so that a start does not grow with them.
 */
export function storeOn(connection: Connection, { pastLater = false } = {}): Store {
  const { store, projections } = assemble(connection)
  try {
    if (!pastLater) projections.catchUp(rulesStamp())
    else if (projections.catchUp(rulesStamp(), 'inYard')) store.protocols.remakeAll()
  } catch (error) {
    // Old plans are better than a server that will not start; it is tried again next time.
    if (!cannotWrite(error)) throw error
  }
  return store
}

/** The store on a connection that only reads: plans are as whoever writes has left them. */
export const readingStoreOn = (connection: Connection): Store => ({
  ...assemble(connection).store,
  refresh: () => 0,
})

function assemble(connection: Connection): { store: Store; projections: Projections } {
  const journal = journalOf(connection)
  const settings = settingsOf(connection, (key) => {
    if (PLANNED_BY.some((k) => k === key)) projections.replan()
  })
  const protocol = (): Protocol => yardProtocol(settings.get('protocol'))
  const planner = plannerOf(settings, protocol)
  const recent = recentOf(connection, journal.ofColony)
  const tracer = tracerOf(connection, (id) => recent.of(id).folded)
  const projections = projectionsOf(connection, journal, planner, protocol, tracer)
  const inMemory = (id: ColonyId, today: Day): ColonySummary | null => {
    const { history } = fold(id, journal.ofColony(id))
    if (history === null) return null
    const { plan, ...row } = project(
      id,
      history,
      today,
      planner,
      exposureOf(tracer.exposures(), id, history),
    ).row
    return summaryOf(row, () => JSON.parse(plan) as Plan)
  }
  const remake = (id: ColonyId): Plan => {
    const row = queries.byName(id)
    const made = row === null ? null : inMemory(id, row.asOf)
    if (made === null) throw new StoreError(`the plan of colony ${id} cannot be read; run "resettle verify"`)
    return made.plan
  }
  const queries = queriesOf(connection, remake, () => protocols.recomputing() !== null)
  const unplanned = settingsOf(connection, () => {})
  const protocols = protocolsOf({ connection, journal, projections, settings: unplanned })
  const { exposures } = tracer
  const mentioned = mentionsOf(connection)
  const parts = {
    connection,
    journal,
    recent,
    settler: projections.settler,
    exposures,
    idsByTag: queries.idsByTag,
  }
  const tagged = (row: JournalRow): TaggedRow => ({
    ...row,
    tag:
      queries.byName(row.entry.colony)?.tag ?? fold(row.entry.colony, journal.ofColony(row.entry.colony)).tag,
  })

  const records = moveRecordsOf(connection)
  const store: Store = {
    append: (raw, { today, seen, ...stamp }) => append(parts, stamped(raw, stamp), today, { seen }),
    load: (lines, today) => append(parts, lines, today, { judged: true }),
    refresh: projections.refresh,
    refreshing: projections.refreshing,
    tracing: tracer.reading,
    size: queries.size,
    colony: (name) => whole(queries.byName(name), recent),
    colonies: (filter = {}) => queries.list(filter),
    left: queries.left,
    today(today) {
      try {
        projections.refresh(today)
      } catch (error) {
        if (!cannotWrite(error)) throw error
        const open = queries.list({ open: true })
        return open.map((c) => (c.asOf === today ? c : (inMemory(c.id, today) ?? c))).filter((c) => c.toDo)
      }
      return queries.toDo()
    },
    checksBetween: queries.checksBetween,
    yards: queries.yards,
    exposed: exposures,
    removalTypes: queries.removalTypes,
    tagTaken: queries.tagTaken,
    entry(id) {
      const row = journal.byId(id)
      return row === null ? null : tagged(row)
    },
    changes: ({ before = Number.MAX_SAFE_INTEGER, limit = 50, colony = null } = {}) =>
      journal.page({ before, limit: Math.min(Math.max(limit, 1), 500), colony: colony ?? null }).map(tagged),
    mentions: (word) => mentioned(word).map(tagged),
    happenings: happeningsOf(connection),
    joined: (s) => joinings(store, [s]),
    journal: journal.all,
    *histories() {
      for (const id of journal.colonyIds()) {
        const { history } = fold(id, journal.ofColony(id))
        if (history !== null) yield { id, history }
      }
    },
    stays: staysOf(connection, (id) => fold(id, journal.ofColony(id)).history, protocol),
    settings,
    protocol,
    plan: planner,
    protocols,
    removals: erasing(removalsOf(connection), recent),
    after: { letters: lettersOf(connection), records },
    papers: (colony) => records.of(colony)[0]?.record.permits ?? [],
    refused: refusedOf(connection),
    imports: importsOf(connection, {
      append: (raw, context) => store.append(raw, context),
      rehearsing: (raw, { today, ...stamp }) => rehearsing(parts, stamped(raw, stamp), today),
    }),
    clean: () => cleaned(connection),
    together: projections.settler.together,
    rebuild: (today) => ({ colonies: projections.rebuild(today), entries: journal.count() }),
    goneBound: tracer.gone,
    verify: () => verify(connection, journal, { planner, protocol }, exposures),
    close: () => connection.raw.close(),
  }
  return { store, projections }
}

const stamped = (raw: readonly unknown[], stamp: Omit<Incoming, 'raw'>): Incoming[] =>
  raw.map((r) => ({ raw: r, ...stamp }))

/** Where a colony came from is remembered with its rows. */
const erasing = (removals: Removals, recent: Recent): Removals => ({
  ...removals,
  erase(id) {
    const versions = removals.erase(id)
    recent.forget()
    return versions
  },
})

/** A full disk or a read-only file stops writing; reading goes on. */
const cannotWrite = (error: unknown): boolean =>
  error instanceof Database.SqliteError && /^SQLITE_(FULL|READONLY|IOERR|BUSY)/.test(error.code)

function whole(summary: ColonySummary | null, recent: Recent): ReturnType<Store['colony']> {
  if (summary === null) return null
  const { rows, folded } = recent.of(summary.id)
  const { history } = folded
  return history === null ? null : { summary, history, journal: [...rows] }
}
