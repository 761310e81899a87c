/**
 * What a phone needs to walk the round without signal: every colony in the yard with its whole journal, the yard's rules,
 * and who is signed in. Plans are left out: the phone makes them itself, so that its "today" can move on without us.
 *
 * The book handed in is the one the viewer's role may see; nothing else can get onto the phone.
 */

import { addDays, type Day } from '../../days.ts'
import type { Happening } from '../../journal/index.ts'
import type { Language } from '../../languages.ts'
import { guardFor, type Member, type Role } from '../../people/index.ts'
import { sharedWith } from '../../records/index.ts'
import type { Exposure } from '../../recovery/index.ts'
import {
  type ColonySummary,
  type Joined,
  type JournalRow,
  joinings,
  type Repository,
  type SettingValue,
  type SheetVersion,
} from '../../store/index.ts'

/**
 * Goes up when an older phone could not read what a newer server sends. `format`, `viewer` and `zone` are where they are
 * in every format: by them a phone that cannot read the rest still knows whose entries wait on it.
 */
export const FORMAT = 1

/** The choices of the yard that pages on the round ask for. */
export const ROUND_SETTINGS = [
  'timeZone',
  'temperature',
  'weight',
  'yardName',
  'removalTypes',
  'inspector',
  'currency',
  'agreementTerms',
  'stands',
  'ownRates',
  'costs',
  'supplies',
  'protocol',
] as const
export type RoundSettings = { [K in (typeof ROUND_SETTINGS)[number]]: SettingValue<K> }

export interface RoundViewer {
  id: string
  name: string
  role: Role
  /** What they read, as the server last heard; servers of before said nothing. */
  language?: Language | undefined
}

export interface RoundColony {
  id: string
  rows: JournalRow[]
}

/** A removal sheet with the colonies that came of it. */
export type RoundSheet = SheetVersion & { colonies: string[] }

export interface RoundBundle {
  format: typeof FORMAT
  /** Order number of the newest entry in it; asked again with it, only what changed is sent. */
  seq: number
  viewer: RoundViewer
  /** IANA name; decides which day is today. */
  zone: string
  /** The server’s clock, by which a phone sees that its own is off. UTC, ISO; servers of before said nothing. */
  at?: string
  settings: RoundSettings
  /** Every yard ever used, with the number of colonies in it. */
  yards: ReturnType<Repository['yards']>
  /** Ids of all colonies in the yard: one that is not named has left, and is forgotten. */
  open: string[]
  /** All of them, or those with something new since the number asked with. */
  colonies: RoundColony[]
  whole: boolean
  /** Sheets of the jobs of today and tomorrow, and of those begun and not over: all of them, every time. None for helpers. */
  sheets?: RoundSheet[]
  /** Of colonies that have left: what happened at them lately, in brief, for reckoning how long boxes take. Only with a whole. */
  past?: Happening[]
  /** Who has an account: a second person at a removal is one of them. None for helpers, who have no removal sheets. */
  crew?: Member[]
  /** What was united into colonies in the yard; those that were united have left, and the phone knows them no more. */
  joined?: Joined[]
  /** Colonies bound to one with suspected brood disease, by id: a phone does not know those that have left. */
  exposed?: Record<string, Exposure>
}

export interface RoundAsked {
  viewer: RoundViewer
  zone: string
  today: Day
  now: Date
  crew: readonly Member[]
  /** `seq` of the bundle the phone has, of this viewer in this role; null for none. */
  since: number | null
}

/** More changes than this since the last time: the whole is sent. */
const MOST_CHANGES = 500

/** The bundle for a viewer. */
export function roundBundle(
  book: Repository,
  { viewer, zone, today, now, since, crew }: RoundAsked,
): RoundBundle {
  const seq = book.changes({ limit: 1 })[0]?.seq ?? 0
  const here = book.colonies({ open: true })
  const open = here.map((s) => s.id)
  const touched = since === null ? null : changedSince(book, seq, since)
  return {
    format: FORMAT,
    seq,
    viewer,
    zone,
    at: now.toISOString(),
    settings: Object.fromEntries(ROUND_SETTINGS.map((key) => [key, book.settings.get(key)])) as RoundSettings,
    yards: book.yards(),
    open,
    colonies: open
      .filter((id) => touched?.has(id) ?? true)
      .map((id) => ({ id, rows: book.colony(id)?.journal ?? [] })),
    whole: touched === null,
    joined: joinings(book, here),
    sheets: sheetsFor(book, today),
    ...(guardFor(viewer.role).may('removal-sheets')
      ? { crew: crew.map(({ name, open }) => ({ name, open })) }
      : {}),
    exposed: exposedAmong(book, here),
    ...(touched === null ? { past: pastOf(book, today, new Set(open)) } : {}),
  }
}

/** Days after its day in which a job with no bees yet stays on the phone: its intake may be logged the day after. */
const LATE_DAYS = 3

/**
 * Jobs of today and tomorrow, those of the last days that no bees came of, refused or ended ones too (a phone on which something waits
 * does not forget why), calls that came in today, and other sheets of their houses.
 */
function sheetsFor(book: Repository, today: Day): RoundSheet[] {
  const [from, to] = [addDays(today, -LATE_DAYS), addDays(today, 1)]
  const all = book.removals.list()
  const due = all.filter(({ sheet: { job }, colonies }) => {
    const day = job.plannedOn ?? job.calledOn
    return day !== undefined && day <= to && day >= (colonies.length > 0 ? today : from)
  })
  // What another sheet of the same house says, of whatever day, holds this one without signal too.
  return all.filter((v) => due.some((d) => d === v || sharedWith(v.sheet, d.sheet.job) !== undefined))
}

function exposedAmong(book: Repository, here: readonly ColonySummary[]): Record<string, Exposure> {
  const all = book.exposed()
  return Object.fromEntries(
    here.flatMap(({ id }): [string, Exposure][] => {
      const exposure = all.get(id)
      return exposure === undefined ? [] : [[id, exposure]]
    }),
  )
}

/** As far back as the round reckons (src/features/round/today-round.ts). */
const PAST_DAYS = 60

const pastOf = (book: Repository, today: Day, open: ReadonlySet<string>): Happening[] =>
  book.happenings(addDays(today, -PAST_DAYS), today).filter((h) => h.at !== null && !open.has(h.colony))

/** Ids of colonies with entries newer than `since`; null when that cannot be told from these changes. */
function changedSince(book: Repository, newest: number, since: number): Set<string> | null {
  if (since === newest) return new Set()
  const changes = book.changes({ limit: MOST_CHANGES })
  const reachesBack = changes.length < MOST_CHANGES || (changes.at(-1)?.seq ?? 0) <= since
  // A phone that knows more than we do has been with another database: a backup was put back.
  if (!reachesBack || since > newest) return null
  return new Set(changes.filter((r) => r.seq > since).map((r) => r.entry.colony))
}
