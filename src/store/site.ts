/**
 * Where a colony was removed is written in its intake entry, but kept in a table of its own: it is somebody's name and
 * address, and unlike the journal it can be erased. Taken out on the way in, put back on the way out.
 */
import type { Entry } from '../journal/index.ts'

/** The entry as the journal keeps it, and what goes beside it. */
export function apart(written: Entry): { kept: Entry; site: string | null } {
  if (written.kind !== 'intake' || written.removal.site === undefined) return { kept: written, site: null }
  const { site, ...removal } = written.removal
  return { kept: { ...written, removal }, site }
}

/** The entry whole again. Entries from before there was such a table have it inside. */
export const together = (kept: Entry, site: string | null | undefined): Entry =>
  kept.kind === 'intake' && typeof site === 'string' ? { ...kept, removal: { ...kept.removal, site } } : kept
