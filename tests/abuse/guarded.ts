/** What a request can change besides the journal: every table, who may change its rows, and who may take them out. */
import { type Action, may, type Role } from '../../src/people/permissions.ts'
import type { TestYard } from '../support/yard-app.ts'

interface Guard {
  /** Where the rows are; the name of the guard when left out. */
  table?: string
  columns: string
  /** What somebody must be allowed to do to add or change rows. */
  action: Action
  /** And to make rows vanish; null: nobody, ever. */
  erase: Action | null
  /** Rows that carry a person are that person's own: theirs to change too. */
  own?: true
}

/** Times of last use are left out: being used is no change. */
const GUARDS: Record<string, Guard> = {
  person: {
    columns: 'id, name, name_key, role, passphrase, created_at, created_by, closed_at',
    action: 'manage-people',
    erase: null,
  },
  // In which language a page speaks is everybody's own choice; nobody else's.
  'language of a person': {
    table: 'person',
    columns: 'id AS person, language',
    action: 'manage-people',
    erase: null,
    own: true,
  },
  invite: { columns: '*', action: 'manage-people', erase: null },
  setting: { columns: '*', action: 'change-settings', erase: 'change-settings' },
  protocol_change: { columns: '*', action: 'change-settings', erase: null },
  removal_sheet: { columns: '*', action: 'removal-sheets', erase: 'safekeeping' },
  removal_colony: { columns: '*', action: 'removal-sheets', erase: 'safekeeping' },
  customer_letter: { columns: '*', action: 'see-private', erase: null },
  move_record: { columns: '*', action: 'see-private', erase: 'safekeeping' },
  colony_import: { columns: '*', action: 'safekeeping', erase: null },
  colony_import_entry: { columns: '*', action: 'safekeeping', erase: null },
  api_token: {
    columns: 'id, digest, person, name, scopes, created_at, expires_at, revoked_at',
    action: 'manage-people',
    erase: null,
    own: true,
  },
  calendar_feed: {
    columns: 'digest, person, shows, yard, created_at, revoked_at',
    action: 'manage-people',
    erase: null,
    own: true,
  },
  // What was refused is kept in the name of who sent it; beekeepers settle it.
  refused_entry: { columns: '*', action: 'correct-any', erase: null, own: true },
  message_choice: { columns: '*', action: 'manage-people', erase: null, own: true },
}

/**
 * The journal is watched entry by entry; plans, sessions and what was sent are the app's own bookkeeping. What was refused
 * is added to by whoever sends, and leaves its list when it is accepted: tests/features/refused/refused.http.test.ts says who reads it.
 */
const ELSEWHERE = [
  '__drizzle_migrations',
  'calendar_event',
  'colony',
  'entry',
  'message_sent',
  'planned_check',
  'refused_entry',
  'session',
  'site_contact',
  'sqlite_sequence',
  'stay',
]

/** Tables that nobody has said anything about. */
export const forgottenTables = ({ services }: TestYard): string[] =>
  (
    services.connection.raw
      .prepare("SELECT name FROM sqlite_master WHERE type = 'table'")
      .pluck()
      .all() as string[]
  ).filter((name) => !(name in GUARDS) && !ELSEWHERE.includes(name))

/** Every guarded row, by table, as JSON. */
export type Snapshot = Record<string, Set<string>>

export const snapshotOf = ({ services }: TestYard): Snapshot =>
  Object.fromEntries(
    Object.entries(GUARDS).map(([name, { columns, table = name }]) => {
      const rows = services.connection.raw.prepare(`SELECT ${columns} FROM ${table}`).all()
      return [name, new Set(rows.map((row) => JSON.stringify(row)))]
    }),
  )

/** How many rows this connection has changed so far: where that stands still, no snapshot is needed. */
export const changesSoFar = ({ services }: TestYard): number =>
  Number(services.connection.raw.prepare('SELECT total_changes()').pluck().get())

/** What somebody changed who may not, a sentence each. `person`: who asked; null for a stranger. */
export function trespasses(
  before: Snapshot,
  after: Snapshot,
  person: { id: string; role: Role } | null,
): string[] {
  const allowed = (action: Action | null): boolean =>
    action !== null && person !== null && may(person.role, action)
  return Object.entries(GUARDS).flatMap(([table, guard]) => {
    const [was, is] = [before[table] ?? new Set(), after[table] ?? new Set()]
    const changed = [...[...is].filter((row) => !was.has(row)), ...[...was].filter((row) => !is.has(row))]
    const others = changed.filter(
      (row) => !(guard.own && person !== null && JSON.parse(String(row)).person === person.id),
    )
    return [
      ...(others.length > 0 && !allowed(guard.action) ? [`changed ${table}: ${others[0]}`] : []),
      ...(is.size < was.size && !allowed(guard.erase) ? [`took rows out of ${table}`] : []),
    ]
  })
}
