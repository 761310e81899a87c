/** What people wrote freely in an entry, to be found by its words: on the server and on a phone. */
import { folded } from '../folded.ts'
import type { Entry } from '../journal/index.ts'

/** Fields in which people write freely, whatever the kind of entry. */
export const WRITTEN = [
  'note',
  'text',
  'reason',
  'cause',
  'destination',
  'product',
  'batch',
  'reference',
] as const

/** Of what is left out of an entry, nothing. */
export function writtenIn(e: Entry): string[] {
  const fields = e as unknown as Record<string, unknown>
  const site = e.kind === 'intake' ? e.removal.site : undefined
  return [site, ...WRITTEN.map((name) => fields[name])].filter((v): v is string => typeof v === 'string')
}

/** Whether an entry holds the word; capitals and accents don't matter. */
export const mentions = (e: Entry, word: string): boolean =>
  writtenIn(e).some((text) => folded(text).includes(folded(word)))
