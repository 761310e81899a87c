/**
 * Erased means erased: what SQLite takes out of a table lies on in free pages of the file and in its log until something
 * else is written there. So deleted bytes are overwritten (connection.ts), and after an erasure the file and its log are
 * written anew. What copies hold, copies hold: nothing here reaches into a backup.
 */
import type { ColonyId } from '../ids.ts'
import { chainUp } from './chain.ts'
import type { Connection } from './connection.ts'

/** Takes out where these colonies came from, of every version of their intakes. Call within a transaction. */
export function eraseSites({ raw }: Connection, colonies: readonly ColonyId[]): void {
  const beside = raw.prepare(
    'DELETE FROM site_contact WHERE entry IN (SELECT id FROM entry WHERE colony = ?)',
  )
  for (const colony of colonies) beside.run(colony)
  const inside = raw
    .prepare(
      `SELECT id FROM entry WHERE colony = ? AND kind = 'intake' AND json_extract(payload, '$.removal.site') IS NOT NULL`,
    )
    .pluck()
  const old = colonies.flatMap((colony) => inside.all(colony) as string[])
  if (old.length > 0) eraseInside(raw, old)
}

/** Whose entries lose where they came from. */
interface Customer {
  /** The sheet, and the colonies that came of it. */
  ids: readonly string[]
  /** Name and address, as any version of the sheet had them. */
  said: readonly string[]
}

/**
 * The same of entries that the journal would not have: those of the colonies, and intakes of the job that never became
 * one, known by the name or the address in them. Settled ones too. Call within a transaction.
 */
export function eraseRefusedSites({ raw }: Connection, { ids, said }: Customer): void {
  const tags = raw.prepare<[string], string>('SELECT tag FROM colony WHERE id = ?').pluck()
  const tagged = ids.flatMap((id) => tags.get(id) ?? [])
  // Fewer letters are within too many other words.
  const names = said.map((text) => text.trim().toLowerCase()).filter((text) => text.length >= 4)
  const rows = raw
    .prepare<[], { id: string; payload: string; problems: string; site: string }>(
      `SELECT id, payload, problems, json_extract(payload, '$.removal.site') AS site FROM refused_entry
       WHERE json_extract(payload, '$.removal.site') IS NOT NULL`,
    )
    .all()
  // Why it was refused may quote what was typed.
  const out = raw.prepare(
    `UPDATE refused_entry SET payload = json_remove(payload, '$.removal.site'), problems = ? WHERE id = ?`,
  )
  for (const { id, payload, problems, site } of rows) {
    const { colony, replaces } = JSON.parse(payload) as { colony?: string; replaces?: string }
    const ofColony = ids.includes(id) || ids.includes(colony ?? '') || ids.includes(replaces ?? '')
    // A tag is given again to later boxes: it says which one only where an intake that stands is corrected.
    const corrects = replaces !== undefined && tagged.includes(colony ?? '')
    const named = names.some((text) => String(site).toLowerCase().includes(text))
    if (!ofColony && !corrects && !named) continue
    const kept = (JSON.parse(problems) as { field?: string }[]).filter((p) => p.field !== 'removal.site')
    out.run(JSON.stringify(kept), id)
  }
}

/** Of entries from before sites had a table: the only change that is ever made to the journal, and it only takes out. */
function eraseInside(raw: Connection['raw'], entries: readonly string[]): void {
  const guard = raw
    .prepare<[], string>(`SELECT sql FROM sqlite_master WHERE type = 'trigger' AND name = 'entry_no_update'`)
    .pluck()
    .get()
  if (guard === undefined) throw new Error('the journal has no guard against changes')
  raw.exec('DROP TRIGGER entry_no_update')
  const out = raw.prepare(`UPDATE entry SET payload = json_remove(payload, '$.removal.site') WHERE id = ?`)
  for (const id of entries) out.run(id)
  raw.exec(guard)
  // What comes after rests on what was there: the digests are made anew from what is left.
  chainUp(raw)
}

/**
 * Writes file and log anew, so that nothing erased lies on in free pages. Needs room for a second copy for a moment, and
 * nobody else reading; false where that could not be had. Not within a transaction.
 */
export function cleaned({ raw }: Connection): boolean {
  try {
    raw.exec('VACUUM')
    const [log] = raw.pragma('wal_checkpoint(TRUNCATE)') as { busy: number }[]
    return log === undefined || log.busy === 0
  } catch {
    return false
  }
}
