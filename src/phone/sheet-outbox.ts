/**
 * Removal sheets on the phone: what the server said of them, and what was written here until the server has named its id.
 * What was written never expires; what the server said goes with the round.
 */
import type { RoundSheet } from '../features/offline/index.ts'
import { isOtherwise } from '../features/removal/index.ts'
import type { Problem } from '../journal/index.ts'
import {
  EMPTY_SHEET,
  heldIn,
  isOver,
  mergeSheets,
  type Sheet,
  sheetName,
  withFound,
} from '../records/index.ts'
import { canonical } from '../store/index.ts'
import {
  type Database,
  type KeptSheet,
  STRICT,
  type WaitingSheet,
  type Writing,
  waitingOn,
} from './database.ts'
import { type SavedHere, without } from './jobs.ts'
import { dropLoose } from './outbox.ts'

/** The sheet in the hands of a person: their own words are `mine`, and what anybody else wrote here waits beside them. */
export function inHandsOf(person: string | undefined, kept: KeptSheet): KeptSheet {
  const all = waitingOn(kept)
  const mine = all.find((w) => w.owner.id === person) ?? null
  return { ...kept, mine, aside: all.filter((w) => w !== mine) }
}

/** Keeps what the server says now to a person; a sheet it says nothing of any more goes. Says whether anything moved. */
export async function keepTheirs(
  store: Writing<'sheets'>,
  sheets: readonly RoundSheet[],
  person?: string,
): Promise<boolean> {
  const told = new Map(sheets.map((s) => [s.id, s]))
  const before = await store.getAll()
  let moved = false
  for (const was of before) {
    const theirs = told.get(was.id) ?? null
    told.delete(was.id)
    moved ||= canonical(was.theirs) !== canonical(theirs)
    const now = { ...inHandsOf(person, was), theirs }
    if (theirs === null && now.mine === null && now.aside?.length === 0 && !now.told)
      await store.delete(was.id)
    else await store.put(now)
  }
  for (const theirs of told.values()) await store.put({ id: theirs.id, mine: null, theirs })
  return moved || told.size > 0
}

/** Keeps sheets as forms saved them. When this resolves they are on the disk. Rejects when there is no room. */
export async function keepSheets(
  db: Database,
  saved: readonly SavedHere[],
  owner: WaitingSheet['owner'],
  behind = 0,
): Promise<void> {
  const tx = db.transaction('sheets', 'readwrite', STRICT)
  try {
    for (const { id, base, version } of saved) {
      const before = inHandsOf(owner.id, (await tx.store.get(id)) ?? { id, theirs: null, mine: null })
      const mine: WaitingSheet = {
        base,
        sheet: version.sheet,
        from: before.mine ? before.mine.from : before.theirs?.sheet,
        owner,
        keptAt: version.savedAt,
        behind: before.mine?.behind ?? behind,
        tries: 0,
        refused: before.mine?.refused ?? null,
        unaccepted: before.mine?.unaccepted === true || (before.mine?.refused ?? null) !== null,
        clash: before.mine?.clash,
        over: before.mine?.over ?? false,
      }
      await tx.store.put({ ...before, mine })
    }
    await tx.done
  } catch (error) {
    await tx.done.catch(() => {})
    throw error
  }
}

/** Every sheet that waits for a person, oldest first; what others wrote is put beside it. */
export async function waitingSheets(
  db: Database,
  person: string,
): Promise<(KeptSheet & { mine: WaitingSheet })[]> {
  const tx = db.transaction('sheets', 'readwrite', STRICT)
  const all = (await tx.store.getAll()).map((s) => inHandsOf(person, s))
  for (const s of all) await tx.store.put(s)
  await tx.done
  return all
    .flatMap((s) => (s.mine === null ? [] : [{ ...s, mine: s.mine }]))
    .sort((a, b) => (a.mine.keptAt < b.mine.keptAt ? -1 : 1))
}

export const triedSheet = (db: Database, id: string): Promise<void> =>
  change(db, id, (mine) => ({ ...mine, tries: mine.tries + 1 }))

/** `clash`: the version that it was refused over. */
export const refuseSheet = (db: Database, id: string, problems: Problem[], clash?: number): Promise<void> =>
  change(db, id, (mine) => ({ ...mine, refused: problems, unaccepted: false, clash }))

/** Somebody has read what the other one wrote: this one is to stand over that, and over nothing that came later. */
export const overSheet = (db: Database, id: string): Promise<void> =>
  change(db, id, (mine) => ({ ...mine, unaccepted: true, over: mine.clash ?? false }))

/** The server has named it: it is theirs now, unless it was written on meanwhile. */
export async function acknowledgeSheet(
  db: Database,
  { id, sent, now }: { id: string; sent: Sheet; now: string },
  answer: { version: number; sheet: Sheet; said: Problem[] },
): Promise<void> {
  const tx = db.transaction(['sheets', 'photos', 'outbox'], 'readwrite', STRICT)
  const store = tx.objectStore('sheets')
  const kept = await store.get(id)
  if (kept?.mine) {
    const { mine } = kept
    const { version, sheet, said } = answer
    const theirs = {
      id,
      version,
      savedAt: mine.keptAt,
      savedBy: mine.owner.name,
      sheet,
      colonies: kept.theirs?.colonies ?? [],
    }
    const written = canonical(mine.sheet) !== canonical(sent)
    // What the server put to it stays under what was written meanwhile; where both changed one field, the server says so.
    const both = mergeSheets(sent, mine.sheet, sheet)
    // A “go” that was tapped meanwhile had not read it.
    const unread = canonical(mine.sheet.decision) !== canonical(sent.decision) && isOtherwise(sent, sheet)
    const merged = unread ? without(both.sheet, mine.owner.name) : both.sheet
    const from = both.clashes.length > 0 ? {} : { base: version, from: sheet, sheet: merged }
    await store.put({
      ...kept,
      theirs,
      ...(said.length === 0
        ? {}
        : {
            told: {
              to: mine.owner.id,
              name: sheetName(sheet),
              lines: [...(kept.told?.lines ?? []), ...said],
            },
          }),
      mine: written ? { ...mine, ...from, over: false, refused: null, unaccepted: false } : null,
    })
  }
  await dropLoose(tx, now)
  await tx.done
}

/** What stays, and is sent, when what was written here is taken out; null where nothing does. `out`: the fields that go; null: all of it. */
export function takenOut({ theirs, mine }: KeptSheet): { left: WaitingSheet | null; out: string[] | null } {
  if (theirs === null || mine === null) return { left: null, out: null }
  const from = mine.from ?? EMPTY_SHEET
  // The other one's word stands where both said something, and the careful answer where there is one.
  const { sheet: both, clashes, settled } = mergeSheets(from, mine.sheet, theirs.sheet, theirs.sheet)
  const rest = clashes.length > 0 ? both : withFound(theirs.sheet, mine.sheet, from)
  const own = canonical(rest.decision) !== canonical(theirs.sheet.decision)
  const held = heldIn(mine.sheet, from)
  const hers = theirs.sheet.decision
  // A refusal is more careful than “Wait”, and one that was answered meanwhile was read.
  const stands = (held?.is === 'refuse' || hers?.is !== 'refuse') && !isOver(hers, held)
  const decision = stands ? held : undefined
  const sheet = decision !== undefined ? { ...rest, decision } : own ? without(rest, theirs.savedBy) : rest
  const same = canonical(sheet) === canonical(theirs.sheet)
  const made = { base: theirs.version, from: theirs.sheet, sheet }
  const again = { refused: null, unaccepted: false, clash: undefined, over: false }
  const gone = clashes.filter((path) => !settled.includes(path) && (path !== 'decision' || !decision))
  // Asked about, and nothing clashes any more: what is careful of it is in the book.
  const isIn = mine.clash !== undefined && theirs.version >= mine.clash
  return { left: same ? null : { ...mine, ...made, ...again }, out: clashes.length > 0 || isIn ? gone : null }
}

/** Takes out what was written here and clashes; what was found goes on waiting. */
export async function takeOutSheet(db: Database, id: string, now: string): Promise<void> {
  const tx = db.transaction(['sheets', 'photos', 'outbox'], 'readwrite', STRICT)
  const store = tx.objectStore('sheets')
  const kept = await store.get(id)
  if (kept !== undefined)
    await (kept.theirs === null && !kept.aside?.length
      ? store.delete(id)
      : store.put({ ...kept, mine: takenOut(kept).left }))
  await dropLoose(tx, now)
  await tx.done
}

/** It was said: what was told of it goes. */
export async function saidSheets(db: Database, person: string): Promise<void> {
  const tx = db.transaction('sheets', 'readwrite', STRICT)
  for (const { told, ...rest } of await tx.store.getAll()) if (told?.to === person) await tx.store.put(rest)
  await tx.done
}

async function change(db: Database, id: string, how: (mine: WaitingSheet) => WaitingSheet): Promise<void> {
  const tx = db.transaction('sheets', 'readwrite', STRICT)
  const kept = await tx.store.get(id)
  if (kept?.mine) await tx.store.put({ ...kept, mine: how(kept.mine) })
  await tx.done
}
