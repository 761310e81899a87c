/** Takes a whole yard from JSON Lines (yard-file.ts says how) into a store, all or nothing. Safe to repeat. */

import { type Day, isDay, later } from '../../days.ts'
import { problemLine } from '../../journal/index.ts'
import type { PhotoFiles } from '../../photos/index.ts'
import { BROUGHT_IN } from '../../records/index.ts'
import { type Problems, type Result, refused } from '../../result.ts'
import { canonical, type JournalLine, type SettingKey, type Store } from '../../store/index.ts'
import { SETTINGS } from '../../store/node.ts'
import { goesFall } from '../removal/node.ts'
import {
  type KeptLine,
  type LineOf,
  type Lines,
  ofKind,
  photosIn,
  type ReadYard,
  readYard,
} from './yard-lines.ts'

export interface TakenOver {
  /** Entries that are new here, and that were here before. */
  accepted: number
  already: number
  /** Choices taken over: only into a yard without entries, whose own choices would otherwise be lost. */
  settings: number
}

/** When a file is taken in; `zone` where the yard itself has named none. */
export interface TakenAt {
  today: Day
  zone: string
  now: Date
}

/** A problem names the line of the file; nothing was written. */
export type Imported = Result<TakenOver, Problems<string>>

/** Enough to see what is wrong with a file. */
const SHOWN = 50

/** `photos`: where photos of the file go; without it they are left out. */
export const importYard = (
  store: Store,
  source: Lines,
  at: TakenAt,
  photos?: Pick<PhotoFiles, 'keepNow'>,
): Imported => takeYard(store, readYard(source), source, at, photos)

/** The same of a file that was read before there was a store. */
export function takeYard(
  store: Store,
  { lines, problems }: ReadYard,
  source: Lines,
  { today, ...at }: TakenAt,
  photos?: Pick<PhotoFiles, 'keepNow'>,
): Imported {
  if (problems.length > 0) return refused(problems.slice(0, SHOWN))
  const entries = ofKind(lines, 'entry')
  const settings = ofKind(lines, 'setting')
  const wrong = [...settings.flatMap(settingProblem), ...differing(lines, store)]
  if (wrong.length > 0) return refused(wrong.slice(0, SHOWN))

  const empty = store.changes({ limit: 1 }).length === 0
  // Before the entries that name them: a photo that no entry names is no harm.
  if (photos !== undefined) for (const photo of photosIn(source)) photos.keepNow(photo)
  const result = store.load(
    entries.map(({ entry, recordedAt, recordedBy }): JournalLine => ({ raw: entry, recordedAt, recordedBy })),
    lastDay(entries, today),
  )
  if (!result.ok)
    return refused(
      result.problems
        .slice(0, SHOWN)
        .map((p) => `line ${lineOf(p.entry, entries)}: ${problemLine({ ...p, entry: undefined })}`),
    )
  const sheets = newSheets(lines, store)
  takeOthers(store, lines, empty)
  if (empty) for (const s of settings) store.settings.set(s.key, s.value as never)
  store.refresh(today)
  // Nothing that they say opens anything here before it is looked at.
  const zone = store.settings.get('timeZone') ?? at.zone
  goesFall(store.removals, { ...at, zone }, 'import', sheets)
  return {
    ok: true,
    accepted: result.accepted.length,
    already: result.already.length,
    settings: empty ? settings.length : 0,
  }
}

/** Versions of removal sheets here that somebody saved. */
const savedHere = (store: Store) =>
  store.removals.everything().versions.filter((v) => v.savedBy !== BROUGHT_IN)

/** Ids of removal sheets of which something is new here. */
function newSheets(lines: readonly KeptLine[], store: Store): string[] {
  const here = new Set(savedHere(store).map((v) => sheetName(v.version, v.id)))
  const fresh = ofKind(lines, 'sheet').filter((l) => !here.has(sheetName(l.version, l.id)))
  return [...new Set(fresh.map((l) => l.id))]
}

/** Versions of removal sheets and move-out records that are others here: nothing is taken over then. */
function differing(lines: readonly KeptLine[], store: Store): string[] {
  const here = new Map<string, unknown>([
    ...savedHere(store).map((v): [string, unknown] => [sheetName(v.version, v.id), v.sheet]),
    ...store.after.records
      .everything()
      .map((v): [string, unknown] => [recordName(v.version, v.colony), v.record]),
  ])
  const coming = [
    ...ofKind(lines, 'sheet').map((l): [string, unknown] => [sheetName(l.version, l.id), l.sheet]),
    ...ofKind(lines, 'move-record').map((l): [string, unknown] => [
      recordName(l.version, l.colony),
      l.record,
    ]),
  ]
  return coming
    .filter(([name, content]) => here.has(name) && canonical(here.get(name)) !== canonical(content))
    .map(([name]) => `${name} is another one here`)
}

const sheetName = (version: number, id: string): string => `version ${version} of removal sheet ${id}`
const recordName = (version: number, colony: string): string =>
  `version ${version} of the move-out record of colony ${colony}`

/** A line without what makes it one. */
function bare<L extends { line: string; at: number }>({ line: _line, at: _at, ...rest }: L) {
  return rest
}

function takeOthers(store: Store, lines: readonly KeptLine[], empty: boolean): void {
  const versions = ofKind(lines, 'sheet').map((l) => bare(l))
  const boxes = ofKind(lines, 'box').map((l) => ({
    colony: l.colony,
    id: l.sheet,
    savedAt: l.linkedAt,
    savedBy: l.linkedBy,
  }))
  if (versions.length + boxes.length > 0) store.removals.take(versions, boxes)
  store.after.letters.take(ofKind(lines, 'letter').map((l) => bare(l)))
  store.after.records.take(ofKind(lines, 'move-record').map((l) => bare(l)))
  store.refused.take(ofKind(lines, 'refused').map((l) => bare(l)))
  store.imports.note(ofKind(lines, 'import').map((l) => bare(l)))
  if (empty) store.protocols.take(ofKind(lines, 'protocol').map((l) => bare(l)))
}

const lineOf = (entry: number | undefined, entries: readonly LineOf<'entry'>[]): number =>
  entries[(entry ?? 1) - 1]?.at ?? 0

const settingProblem = (s: LineOf<'setting'>): string[] =>
  SETTINGS[s.key as SettingKey].schema.safeParse(s.value).success
    ? []
    : [`line ${s.at}: value: is not one that "${s.key}" can have`]

/** A journal written under a clock that ran ahead must come in whole: its own last day counts as past. */
function lastDay(entries: readonly LineOf<'entry'>[], today: Day): Day {
  let last = today
  for (const { entry } of entries)
    if (typeof entry.on === 'string' && isDay(entry.on)) last = later(last, entry.on)
  return last
}
