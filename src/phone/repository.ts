/**
 * The book as this phone knows it: what the server last said, and what waits in the outbox laid over it. Reads and judges
 * with the server's own code, so a page made here says what the server's page would.
 *
 * Lives in memory for as long as the worker does. What a form appends is handed to `kept`; it counts only when it is on
 * the disk, which is the caller's business.
 */

import type { Day } from '../days.ts'
import type { RoundBundle, RoundColony } from '../features/offline/index.ts'
import type { ColonyId, Tag } from '../ids.ts'
import { type History, happeningOf } from '../journal/index.ts'
import { type Protocol, yardProtocol } from '../recovery/index.ts'
import {
  append,
  type ColonySummary,
  type Exposures,
  exposuresAmong,
  fold,
  type JournalRow,
  joinings,
  knownBy,
  matches,
  mentions,
  natural,
  type Projected,
  plannerOf,
  project,
  type Repository,
  summaryOf,
  walkingOrder,
} from '../store/index.ts'
import type { KeptSheet, Waiting } from './database.ts'
import { jobsOf, type PhoneJobs, withFinds } from './jobs.ts'

export interface BookParts {
  head: Pick<RoundBundle, 'settings' | 'yards' | 'past' | 'joined' | 'exposed'>
  colonies: readonly RoundColony[]
  waiting: readonly Waiting[]
  /** Removal sheets on this phone. */
  sheets?: readonly KeptSheet[]
  today: Day
}

export interface PhoneBook extends Repository {
  /** What forms appended since the book was made, in order. */
  readonly kept: JournalRow[]
  readonly removals: PhoneJobs
}

/** Rows that are not in the server's journal yet come after all that are. */
const NOT_YET = 1_000_000_000

/** Makes the book of a day. */
export function bookOf({ head, colonies, waiting, sheets = [], today }: BookParts): PhoneBook {
  const rows = new Map(colonies.map((c) => [c.id, [...c.rows]]))
  for (const w of waiting) if (counts(w)) add(rows, rowOf(w))
  const byId = new Map([...rows.values()].flat().map((r) => [r.entry.id, r]))
  const protocol: Protocol = yardProtocol(head.settings.protocol)
  const settings: Repository['settings'] = {
    get(key) {
      const known = head.settings as Record<string, unknown>
      if (!Object.hasOwn(known, key)) throw new Error(`the phone does not keep the setting ${key}`)
      return known[key] as never
    },
  }
  const planner = plannerOf(settings, () => protocol)
  const kept: JournalRow[] = []
  const histories = new Map<ColonyId, History | null>()
  const summaries = new Map<ColonyId, ColonySummary | null>()

  const historyOf = (id: ColonyId): History | null => {
    const known = histories.get(id)
    const made = known === undefined ? fold(id, rows.get(id) ?? []).history : known
    histories.set(id, made)
    return made
  }

  let traced: Exposures | null = null
  /** What the phone can tell from the colonies it knows; and what the server told of others. */
  const exposures = (): Exposures => {
    traced ??= new Map([
      ...Object.entries(head.exposed ?? {}),
      ...exposuresAmong(
        [...rows.keys()].flatMap((id) => {
          const history = historyOf(id)
          return history === null ? [] : [[id, history] as const]
        }),
      ),
    ])
    return traced
  }
  const summary = (id: ColonyId): ColonySummary | null => {
    const known = summaries.get(id)
    if (known !== undefined) return known
    const history = historyOf(id)
    const made =
      history === null ? null : summarised(project(id, history, today, planner, exposures().get(id) ?? null))
    summaries.set(id, made)
    return made
  }
  const everyone = (): ColonySummary[] => [...rows.keys()].flatMap((id) => summary(id) ?? [])
  /** Those with that tag, those in the yard first: from their histories, since a plan of each box takes a hundred times as long. */
  const tagged = (tag: Tag): { id: ColonyId; here: boolean }[] =>
    [...rows.keys()]
      .flatMap((id) => {
        const history = historyOf(id)
        const is = history !== null && history.tag.toLowerCase() === tag.toLowerCase()
        return is ? [{ id, here: history.outcome === null }] : []
      })
      .sort((a, b) => Number(b.here) - Number(a.here))
  const named = (name: string): ColonySummary | null => summary(name) ?? summary(tagged(name)[0]?.id ?? '')
  const withTag = (row: JournalRow) => ({ ...row, tag: historyOf(row.entry.colony)?.tag ?? row.written })

  const repository: PhoneBook = {
    kept,
    append: (raw, { today: day, ...stamp }) =>
      append(
        {
          connection: { write: (work) => work() },
          journal: {
            byId: (id) => byId.get(id) ?? null,
            insert(entry, { colony, recordedAt, recordedBy }) {
              const seq = NOT_YET * 2 + kept.length
              const row = { entry: { ...entry, colony }, seq, recordedAt, recordedBy, written: entry.colony }
              kept.push(row)
              byId.set(entry.id, row)
              add(rows, row)
              return seq
            },
          },
          recent: { of: (id) => knownBy(id, [...(rows.get(id) ?? [])]), put: () => {}, forget: () => {} },
          settler: {
            begin: () => {},
            settle() {
              traced = null
              histories.clear()
              summaries.clear()
            },
          },
          exposures,
          idsByTag: (tag) => tagged(tag).map((s) => s.id),
        },
        raw.map((r) => ({ raw: r, ...stamp })),
        day,
      ),
    colony(name) {
      const found = named(name)
      if (found === null) return null
      const journal = rows.get(found.id) ?? []
      const history = historyOf(found.id)
      return history === null ? null : { summary: found, history, journal }
    },
    left({ yard, skip, limit }) {
      const gone = everyone()
        .filter((s) => matches(s, { open: false, yard }))
        .sort((a, b) => (b.closedOn ?? '').localeCompare(a.closedOn ?? '') || (a.id < b.id ? -1 : 1))
      return { total: gone.length, found: gone.slice(skip, skip + limit) }
    },
    colonies: (filter = {}) =>
      everyone()
        .filter((s) => matches(s, filter))
        .sort(walkingOrder),
    today: () =>
      everyone()
        .filter((s) => s.closedOn === null && s.toDo)
        .sort(walkingOrder),
    yards() {
      const here = everyone()
      const names = new Set([...head.yards.map((y) => y.yard), ...here.map((s) => s.yard)])
      return [...names]
        .sort(natural)
        .map((yard) => ({ yard, open: here.filter((s) => s.yard === yard && s.closedOn === null).length }))
    },
    exposed: exposures,
    removalTypes: () => [...new Set(everyone().map((s) => s.removalType))].sort(),
    tagTaken: (tag) => tagged(tag).some(({ here }) => here),
    entry(id) {
      const row = byId.get(id)
      return row === undefined ? null : withTag(row)
    },
    changes: ({ before = Number.POSITIVE_INFINITY, limit = 50, colony } = {}) =>
      [...rows.values()]
        .flat()
        .filter((r) => r.seq < before && (colony === undefined || r.entry.colony === colony))
        .sort((a, b) => b.seq - a.seq)
        .slice(0, limit)
        .map(withTag),
    mentions: (word) =>
      [...rows.values()]
        .flat()
        .filter((r) => mentions(r.entry, word))
        .sort((a, b) => b.seq - a.seq)
        .map(withTag),
    happenings(from, to, only) {
      const here = [...rows].flatMap(([id, list]) => {
        const yard = summary(id)?.yard
        return yard === undefined ? [] : list.map((r) => happeningOf(r.entry, yard))
      })
      return [...(head.past ?? []).filter((h) => !rows.has(h.colony)), ...here].filter(
        (h) => h.on >= from && h.on <= to && (only === undefined || h.kind === only),
      )
    },
    joined(colony) {
      const told = (head.joined ?? []).filter((j) => j.into === colony.id)
      // What was united on this phone and is not sent yet.
      const own = joinings(repository, [colony]).filter((j) => !told.some((t) => t.colony === j.colony))
      return [...told, ...own]
    },
    settings,
    protocol: () => protocol,
    plan: planner,
    removals: jobsOf(sheets.map(withFinds), (id) => summary(id) !== null),
  }
  return repository
}

/** What was refused proves nothing until it is mended; but a colony stays on the round even where its intake was refused. */
const counts = (w: Waiting): boolean => w.refused === null || w.entry.kind === 'intake'

const rowOf = (w: Waiting): JournalRow => ({
  entry: { ...w.entry, colony: w.colony },
  seq: NOT_YET + w.n,
  recordedAt: w.keptAt,
  recordedBy: w.owner.name,
  written: w.entry.colony,
})

function add(rows: Map<string, JournalRow[]>, row: JournalRow): void {
  const list = rows.get(row.entry.colony) ?? []
  if (!list.some((r) => r.entry.id === row.entry.id)) list.push(row)
  rows.set(row.entry.colony, list)
}

const summarised = ({ row: { plan, ...row } }: Projected): ColonySummary =>
  summaryOf(row, () => JSON.parse(plan))
