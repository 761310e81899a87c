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

/**
 * Takes the same out of intakes that the journal would not have: those of these ids, and those that name the same place
 * or the same person. Call within a transaction.
 */
export function eraseRefusedSites(
  { raw }: Connection,
  ids: readonly string[],
  said: readonly string[],
): void {
  const out = raw.prepare(
    `UPDATE refused_entry SET payload = json_remove(payload, '$.removal.site')
     WHERE json_extract(payload, '$.removal.site') IS NOT NULL
       AND (id IN (SELECT value FROM json_each(:ids)) OR EXISTS
         (SELECT 1 FROM json_each(:said) WHERE instr(json_extract(payload, '$.removal.site'), value) > 0))`,
  )
  out.run({ ids: JSON.stringify(ids), said: JSON.stringify(said) })
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
