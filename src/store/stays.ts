/** What a review counts of every colony: rows kept of those that have left, their histories of those in the yard. */
import { gt, sql } from 'drizzle-orm'
import type { Day } from '../days.ts'
import type { ColonyId } from '../ids.ts'
import type { History } from '../journal/index.ts'
import type { Protocol } from '../recovery/index.ts'
import { type ColonyFacts, factsOf, historyUntil, type Stay, stayOf } from '../stays/index.ts'
import type { Connection } from './connection.ts'
import { stay } from './schema.ts'
import { factsIn, type StayRow, stayIn } from './stay-row.ts'

/** A colony, as a review reads it. */
export interface ColonyStay {
  id: ColonyId
  /** Followed from its intake on. */
  facts: ColonyFacts
  /** When its first entry was recorded, UTC ISO. */
  recordedAt: string
  /** The day it left, as the journal has it; null while it is in the yard. */
  leftOn: Day | null
  /** Its stay as it was known at the end of a day. */
  stayOn: (asOf: Day) => Stay
}

export interface Stays {
  /** Every colony with an intake, in no order. */
  all(): Iterable<ColonyStay>
  /** Another text whenever that may have changed. */
  stamp(): string
}

/** Rows read at a time. */
const PAGE = 1000

/** Columns in which a few texts come again and again: kept once each, they take a third of the memory. */
const REPEATED = [
  'removalType',
  'yard',
  'removedBy',
  'lookedAfterBy',
  'intakeOn',
  'lastSeen',
  'leftOn',
  'queenrightOn',
] as const

/** Gives equal texts of many rows as one. */
function sharing(): (row: StayRow) => StayRow {
  const known = new Map<string, string>()
  return (row) => {
    for (const column of REPEATED) {
      const text = row[column]
      if (text === null) continue
      const before = known.get(text)
      if (before === undefined) known.set(text, text)
      else row[column] = before
    }
    return row
  }
}

/** `historyOf` reads one colony's journal; null when no intake of it stands. */
export function staysOf(
  { raw, db }: Connection,
  historyOf: (id: ColonyId) => History | null,
  protocol: () => Protocol,
): Stays {
  const page = db
    .select()
    .from(stay)
    .where(gt(stay.colony, sql.placeholder('after')))
    .orderBy(stay.colony)
    .limit(PAGE)
    .prepare()
  const recordedAt = raw.prepare('SELECT recorded_at FROM entry WHERE id = ?').pluck()
  const inYard = raw.prepare('SELECT id FROM colony WHERE closed_on IS NULL').pluck()
  const counts = raw.prepare(
    'SELECT (SELECT count(*) FROM colony WHERE closed_on IS NOT NULL) AS gone, (SELECT count(*) FROM stay) AS kept',
  )
  const missing = raw
    .prepare('SELECT id FROM colony WHERE closed_on IS NOT NULL AND id NOT IN (SELECT colony FROM stay)')
    .pluck()
  const newest = raw.prepare('SELECT max(seq) FROM entry').pluck()

  const stayThen = (id: ColonyId, history: History | null, asOf: Day): Stay => {
    if (history === null) throw new RangeError(`stays: ${id} has no intake`)
    return stayOf(historyUntil(history, asOf), asOf, protocol())
  }
  const fromRow = (r: StayRow): ColonyStay => {
    const { colony: id, leftOn, recordedAt } = r
    const kept = stayIn(r)
    return {
      id,
      facts: factsIn(r),
      recordedAt,
      leftOn,
      // It was still there on the day looked at: what is kept knows too much.
      stayOn: (asOf) => (leftOn <= asOf ? kept : stayThen(id, historyOf(id), asOf)),
    }
  }
  const rows = function* (): Iterable<StayRow> {
    const shared = sharing()
    for (let after = ''; ; ) {
      const found = page.all({ after })
      for (const row of found) yield shared(row)
      const last = found.at(-1)
      if (last === undefined) return
      after = last.colony
    }
  }
  /** Of a colony in the yard, and of one that left while an update has yet to make its row. */
  const fromJournal = (id: ColonyId): ColonyStay[] => {
    const history = historyOf(id)
    if (history === null) return []
    return [
      {
        id,
        facts: factsOf(history),
        recordedAt: (recordedAt.get(id) as string | undefined) ?? `${history.intake.on}T12:00:00.000Z`,
        leftOn: history.outcome?.on ?? null,
        stayOn: (asOf) => stayThen(id, history, asOf),
      },
    ]
  }

  return {
    *all() {
      for (const row of rows()) yield fromRow(row)
      for (const id of inYard.all() as ColonyId[]) yield* fromJournal(id)
      const { gone, kept } = counts.get() as { gone: number; kept: number }
      if (gone !== kept) for (const id of missing.all() as ColonyId[]) yield* fromJournal(id)
    },
    stamp: () =>
      [newest.get(), raw.pragma('user_version', { simple: true }), JSON.stringify(protocol())].join(' '),
  }
}
