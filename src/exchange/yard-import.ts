/** Reads a whole yard from JSON Lines (yard-file.ts says how) into a store, all or nothing. Safe to repeat. */
import { type Day, isDay, later } from '../days.ts'
import { problemLine, problemsOf } from '../journal/problem.ts'
import type { Photo } from '../photos/photo.ts'
import { type PhotoFiles, photoNow } from '../photos/shelf.ts'
import { canonical } from '../store/fold.ts'
import { type JournalLine, SETTINGS, type SettingKey, type Store } from '../store/index.ts'
import { type YardLine, yardLine } from './yard-file.ts'

export type Imported =
  | {
      ok: true
      /** Entries that are new here, and that were here before. */
      accepted: number
      already: number
      /** Choices taken over: only into a yard without entries, whose own choices would otherwise be lost. */
      settings: number
    }
  /** One line a problem, naming the line of the file. Nothing was written. */
  | { ok: false; problems: string[] }

/** Enough to see what is wrong with a file. */
const SHOWN = 50

type Located<T> = T & { at: number }
type EntryLine = Located<Extract<YardLine, { line: 'entry' }>>
type SettingLine = Located<Extract<YardLine, { line: 'setting' }>>

/** `photos`: where photos of the file go; without it they are left out. */
export function importYard(
  store: Store,
  text: string,
  today: Day,
  photos?: Pick<PhotoFiles, 'keepNow'>,
): Imported {
  const { lines, problems } = parse(text)
  problems.push(...whole(lines))
  if (problems.length > 0) return { ok: false, problems: problems.slice(0, SHOWN) }
  const entries = lines.filter((l): l is EntryLine => l.line === 'entry')
  const settings = lines.filter((l): l is SettingLine => l.line === 'setting')
  const read = lines.flatMap((l) => (l.line === 'photo' ? [photoOf(l)] : []))
  const wrong = [...settings.flatMap(settingProblem), ...read.filter((p) => typeof p === 'string')]
  if (wrong.length > 0) return { ok: false, problems: wrong }

  const empty = store.changes({ limit: 1 }).length === 0
  const differing = sheetsOf(lines, store)
  if (differing.length > 0) return { ok: false, problems: differing }
  // Before the entries that name them: a photo that no entry names is no harm.
  for (const p of read) if (typeof p !== 'string') photos?.keepNow(p)
  const result = store.load(
    entries.map(({ entry, recordedAt, recordedBy }): JournalLine => ({ raw: entry, recordedAt, recordedBy })),
    lastDay(entries, today),
  )
  if (!result.ok)
    return {
      ok: false,
      problems: result.problems
        .slice(0, SHOWN)
        .map((p) =>
          problemLine({ ...p, entry: undefined }).replace(/^/, `line ${lineOf(p.entry, entries)}: `),
        ),
    }
  takeOthers(store, lines, empty)
  if (empty) for (const s of settings) store.settings.set(s.key, s.value as never)
  store.refresh(today)
  return {
    ok: true,
    accepted: result.accepted.length,
    already: result.already.length,
    settings: empty ? settings.length : 0,
  }
}

type SheetLine = Extract<YardLine, { line: 'sheet' }>

/** Versions of removal sheets that are others here: nothing is taken over then. */
function sheetsOf(lines: readonly YardLine[], store: Store): string[] {
  const here = new Map(store.removals.everything().versions.map((v) => [`${v.id} ${v.version}`, v]))
  return lines
    .filter((l): l is SheetLine => l.line === 'sheet')
    .filter((l) => {
      const known = here.get(`${l.id} ${l.version}`)
      return known !== undefined && canonical(known.sheet) !== canonical(l.sheet)
    })
    .map((l) => `version ${l.version} of removal sheet ${l.id} is another one here`)
}

function takeOthers(store: Store, lines: readonly YardLine[], empty: boolean): void {
  const versions = lines.flatMap((l) => {
    if (l.line !== 'sheet') return []
    const { id, version, savedAt, savedBy, sheet } = l
    return [{ id, version, savedAt, savedBy, sheet }]
  })
  const boxes = lines.flatMap((l) =>
    l.line === 'box' ? [{ colony: l.colony, id: l.sheet, savedAt: l.linkedAt, savedBy: l.linkedBy }] : [],
  )
  if (versions.length + boxes.length > 0) store.removals.take(versions, boxes)
  if (!empty) return
  store.protocols.take(
    lines.flatMap((l) => {
      if (l.line !== 'protocol') return []
      const { changedAt, changedBy, before, after, reason } = l
      return [{ changedAt, changedBy, before, after, reason }]
    }),
  )
}

/** The photo of a line, or what is wrong with it. */
function photoOf({ at, id, jpeg }: Located<Extract<YardLine, { line: 'photo' }>>): Photo | string {
  const photo = photoNow(id, Buffer.from(jpeg, 'base64'))
  return typeof photo === 'string' ? `line ${at}: jpeg: ${photo}` : photo
}

const OTHERS: readonly YardLine['line'][] = ['protocol', 'sheet', 'box', 'photo']

const lineOf = (entry: number | undefined, entries: readonly EntryLine[]): number =>
  entries[(entry ?? 1) - 1]?.at ?? 0

function parse(text: string): { lines: Located<YardLine>[]; problems: string[] } {
  const lines: Located<YardLine>[] = []
  const problems: string[] = []
  for (const [i, raw] of text
    .replace(/^\uFEFF/, '')
    .split('\n')
    .entries()) {
    if (raw.trim() === '') continue
    const at = i + 1
    let value: unknown
    try {
      value = JSON.parse(raw)
    } catch {
      problems.push(`line ${at}: is not JSON`)
      continue
    }
    const parsed = yardLine.safeParse(value)
    if (parsed.success) lines.push({ ...parsed.data, at })
    else problems.push(...problemsOf(parsed.error, value).map((p) => `line ${at}: ${problemLine(p)}`))
  }
  return { lines, problems }
}

/** Whether the file begins and ends as it must, and holds as many lines as it says. */
function whole(lines: readonly Located<YardLine>[]): string[] {
  const end = lines.at(-1)
  if (lines[0]?.line !== 'yard') return ['line 1: is not the beginning of a yard: {"line":"yard",…}']
  if (end?.line !== 'end') return ['the file was cut short: its last line is not {"line":"end",…}']
  const count = (kind: YardLine['line']): number => lines.filter((l) => l.line === kind).length
  const problems: string[] = []
  for (const [name, kind] of [
    ['settings', 'setting'],
    ['entries', 'entry'],
  ] as const)
    if (end[name] !== count(kind))
      problems.push(`line ${end.at}: says ${end[name]} ${name}, but there are ${count(kind)}`)
  const others = OTHERS.reduce((n, kind) => n + count(kind), 0)
  if ((end.others ?? 0) !== others)
    problems.push(`line ${end.at}: says ${end.others ?? 0} other lines, but there are ${others}`)
  if (count('yard') !== 1 || count('end') !== 1) problems.push('the file holds more than one yard')
  return problems
}

const settingProblem = (s: SettingLine): string[] =>
  SETTINGS[s.key as SettingKey].schema.safeParse(s.value).success
    ? []
    : [`line ${s.at}: value: is not one that "${s.key}" can have`]

/** A journal written under a clock that ran ahead must come in whole: its own last day counts as past. */
function lastDay(entries: readonly EntryLine[], today: Day): Day {
  let last = today
  for (const { entry } of entries)
    if (typeof entry.on === 'string' && isDay(entry.on)) last = later(last, entry.on)
  return last
}
