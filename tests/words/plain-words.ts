/** What is left in plain letters on a page that is drawn in the made-up language, and was not written by people. */
import type { Store } from '../../src/store/index.ts'
import { textsOf } from './made-up.ts'

/** Fields that hold what somebody wrote, and no word of ours. */
const WRITTEN = new Set([
  ...['colony', 'by', 'yard', 'stand', 'note', 'text', 'donor', 'into'],
  ...['cause', 'destination', 'product', 'batch', 'reference'],
])
/** What people wrote: tags, yards, notes, whom to call, and these names; the longest first. */
export function writtenIn(store: Store, names: readonly string[]): string[] {
  const said = [
    ...[...store.journal()].flatMap(({ entry }) =>
      Object.entries(entry).flatMap(([field, value]) => (WRITTEN.has(field) ? [String(value)] : [])),
    ),
    // Of what was taken back, why; of a box that was not reached it is one of our answers.
    ...[...store.journal()].flatMap(({ entry }) => (entry.kind === 'withdrawal' ? [entry.reason] : [])),
    // Where the bees came from, which beekeepers see.
    ...[...store.journal()].flatMap(({ entry }) =>
      entry.kind === 'intake' ? (entry.removal.site ?? []) : [],
    ),
    ...store.colonies({}).map((c) => c.tag),
    ...names,
    // Its number is a link of its own.
    ...store.settings.get('inspector').split(/[^A-Za-z ]+/),
  ]
  return [...new Set(said)].filter((t) => t.length > 1).sort((a, b) => b.length - a.length)
}

/** Names that are the same in every language, and signs of units. */
const SAME = new Set(['Resettle', 'Español', 'English', 'min', 'lb', 'kg'])

const PLAIN = /[A-Za-zÀ-ÿ]{2,}/g

/** Words in plain letters that nobody here wrote. */
export const leftIn = (html: string, written: readonly string[]): string[] =>
  textsOf(html).flatMap((escaped) => {
    const text = unescaped(escaped)
    // Nearly all texts have none, and looking for all that was written in each took most of the time.
    if (text.search(PLAIN) < 0) return []
    const ours = written.reduce((rest, words) => rest.replaceAll(words, ' '), text)
    return (ours.match(PLAIN) ?? []).filter((word) => !SAME.has(word))
  })

const unescaped = (text: string): string =>
  text.replaceAll('&#39;', "'").replaceAll('&quot;', '"').replaceAll('&amp;', '&')
