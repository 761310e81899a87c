/**
 * Removal sheets as this phone knows them: what the server last said, and what was written here and waits laid over it.
 * Saving hands the sheet to `kept`; it counts only when it is on the disk, which is the caller's business.
 */
import { problemsOf } from '../journal/index.ts'
import {
  comesBack,
  EMPTY_SHEET,
  hasBegun,
  heldIn,
  isOver,
  mergeSheets,
  type Sheet,
  sheet as sheetSchema,
  withFound,
} from '../records/index.ts'
import { refused } from '../result.ts'
import { canonical, fractionOf, type Jobs, type SheetVersion } from '../store/index.ts'
import type { KeptSheet, WaitingSheet } from './database.ts'

/** A sheet saved by a form since the book was made. */
export interface SavedHere {
  id: string
  /** The server's version it was made from; 0 where the server does not know it yet. */
  base: number
  version: SheetVersion
}

export interface PhoneJobs extends Jobs {
  readonly kept: SavedHere[]
}

interface Known {
  base: number
  last: SheetVersion
  /** What was written here, where more is shown with it than that. */
  own?: Sheet
  colonies: string[]
}

/** What stands of a kept sheet: what was written here, else what the server said. */
function knownOf({ id, theirs, mine }: KeptSheet): Known | null {
  if (mine !== null) {
    const { base, keptAt, owner } = mine
    const newer = theirs !== null && theirs.version > base ? theirs : null
    // Not accepted: whatever it was refused for has to be read first.
    const shown =
      newer === null && mine.refused === null && mine.unaccepted !== true
        ? mine.sheet
        : overTheirs(mine.sheet, newer ?? { sheet: mine.sheet, savedBy: owner.name }, mine.from)
    const sheet = newer === null ? shown : withBook(shown, mine, newer.sheet)
    const last = { id, version: base + fractionOf(sheet), savedAt: keptAt, savedBy: owner.name, sheet }
    return { base, last, own: mine.sheet, colonies: theirs?.colonies ?? [] }
  }
  return theirs === null ? null : { base: theirs.version, last: theirs, colonies: theirs.colonies }
}

/** No “go” of it stands any more: `by` said something else that was not read when it was decided. */
export const without = (s: Sheet, by: string): Sheet =>
  s.decision?.is === 'go' && s.decision.fell === undefined
    ? { ...s, decision: { ...s.decision, fell: { by, on: s.decision.on, at: s.decision.at ?? '00:00' } } }
    : s

/**
 * What was written here, when the server has told of something newer meanwhile, or has not taken it: what anybody found is on it, and
 * no “go” stands that was decided without having read that. The two are put together by the server; until then this is what is shown.
 */
function overTheirs(
  mine: Sheet,
  { sheet: theirs, savedBy }: Pick<SheetVersion, 'sheet' | 'savedBy'>,
  from?: Sheet,
): Sheet {
  const held = heldIn(theirs, from)
  const { work, decision } = mine
  const open = work.openedAt !== undefined && !comesBack(mine, decision?.on ?? '')
  const stands = open && held === undefined
  const fell = stands ? mine : without(mine, savedBy)
  // A refusal that was not read stands in place of a “go”: it is what is answered next.
  const unread = held !== undefined && mine.decision?.is === 'go' && !isOver(mine.decision, held)
  const shown = withFound(unread ? { ...fell, decision: held } : fell, theirs, from)
  const noted = [
    ...new Map([mine, theirs].flatMap((s) => s.site.noted ?? []).map((n) => [canonical(n), n])).values(),
  ]
  return noted.length === 0 ? shown : { ...shown, site: { ...shown.site, noted } }
}

/** What happened and what was decided, of which the book may say more than was written here. */
const OF_THE_BOOK = ['work', 'decision', 'ended', 'boxes'] as const

/** It is open, boxed, ended or refused in the book: so it is shown, whatever of this phone's waits. A “go” that had not read that is none. */
function withBook(shown: Sheet, { sheet, from = EMPTY_SHEET, owner }: WaitingSheet, theirs: Sheet): Sheet {
  const { work, ended, boxes } = mergeSheets(from, sheet, theirs).sheet
  const happened = { ...shown, work, ended, boxes }
  if (theirs.decision === undefined || canonical(sheet.decision) !== canonical(from.decision)) return happened
  const decided = { ...happened, decision: theirs.decision }
  return hasBegun(theirs) ? decided : without(decided, owner.name)
}

/** What is only shown of the book is not sent as one's own. */
function withoutBook(saved: Sheet, { own, last }: Known): Sheet {
  if (own === undefined) return saved
  const same = OF_THE_BOOK.filter((key) => canonical(saved[key]) === canonical(last.sheet[key]))
  return { ...saved, ...Object.fromEntries(same.map((key) => [key, own[key]])) }
}

/** What others found on site and have not sent is everybody's; what they wrote is asked about as if on another sheet (`unsent`). */
export function withFinds(kept: KeptSheet): KeptSheet {
  let { theirs } = kept
  for (const { sheet, owner, from } of kept.aside ?? [])
    theirs = theirs && { ...theirs, sheet: overTheirs(theirs.sheet, { sheet, savedBy: owner.name }, from) }
  return { ...kept, theirs }
}

/** `boxed`: whether a colony was logged under this id. */
export function jobsOf(sheets: readonly KeptSheet[], boxed: (id: string) => boolean): PhoneJobs {
  const known = new Map<string, Known>()
  const before = new Map<string, SheetVersion>()
  for (const kept of sheets) {
    const made = knownOf(kept)
    if (made === null) continue
    known.set(kept.id, made)
    if (kept.theirs !== null) before.set(`${kept.id} ${kept.theirs.version}`, kept.theirs)
  }
  const kept: SavedHere[] = []
  const coloniesOf = (
    { id, sheet: { boxes = [] } }: Pick<SheetVersion, 'id' | 'sheet'>,
    told: readonly string[],
  ): string[] => [...new Set([...(boxed(id) ? [id] : []), ...told, ...boxes])]
  const save: PhoneJobs['save'] = (id, base, content, { savedAt, savedBy }) => {
    const parsed = sheetSchema.safeParse(content)
    if (!parsed.success) return refused(problemsOf(parsed.error, content))
    const found = known.get(id)
    if (found !== undefined && canonical(found.last.sheet) === canonical(parsed.data))
      return { ok: true, version: found.last.version }
    if (found !== undefined && found.last.version !== base) return { ok: false, newer: found.last }
    const from = found?.base ?? 0
    // No form of a version of this phone's bears a number that the server gives: it is known by what it says.
    const last = { id, version: from + fractionOf(parsed.data), savedAt, savedBy, sheet: parsed.data }
    const sheet = found === undefined ? parsed.data : withoutBook(parsed.data, found)
    known.set(id, { base: from, last, own: sheet, colonies: found?.colonies ?? [] })
    kept.push({ id, base: from, version: { ...last, sheet } })
    return { ok: true, version: last.version }
  }

  return {
    kept,
    list: () =>
      [...known.values()].map(({ last, colonies }) => ({ ...last, colonies: coloniesOf(last, colonies) })),
    unsent: () =>
      sheets.flatMap(({ id, theirs, aside = [] }) =>
        aside.map(({ sheet, owner, from }) => ({
          id,
          by: owner.name,
          // What was decided before is no word of theirs.
          sheet: { ...sheet, decision: heldIn(sheet, from) },
          colonies: coloniesOf({ id, sheet }, theirs?.colonies ?? []),
        })),
      ),
    get(id) {
      const found = known.get(id)
      if (found === undefined) return null
      const { sheet: _sheet, ...version } = found.last
      return { last: found.last, versions: [version], colonies: coloniesOf(found.last, found.colonies) }
    },
    version(id, version) {
      const last = known.get(id)?.last
      return last?.version === version ? last : (before.get(`${id} ${version}`) ?? null)
    },
    save,
    withoutGo: (since) =>
      [...known.values()]
        .map((k) => k.last)
        .filter(({ sheet, savedAt }) => sheet.work.withoutGo !== undefined && savedAt >= since),
    link(id, colony, stamp) {
      const found = known.get(id)?.last
      if (found !== undefined)
        save(id, found.version, { ...found.sheet, boxes: [...(found.sheet.boxes ?? []), colony] }, stamp)
    },
    ofColony: (colony) =>
      [...known.values()].find(({ last, colonies }) =>
        [last.id, ...coloniesOf(last, colonies)].includes(colony),
      )?.last.id ?? null,
  }
}
