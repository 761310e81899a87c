/** Writes a whole yard as JSON Lines (yard-file.ts says how). */
import { type Entry, photoId } from '../../journal/index.ts'
import { withoutPrivate } from '../../people/index.ts'
import type { PhotoFiles } from '../../photos/index.ts'
import { photosOfSheet } from '../../records/index.ts'
import type { SettingKey, Store } from '../../store/index.ts'
import { SETTINGS } from '../../store/node.ts'
import { VERSION, type YardLine } from './yard-file.ts'

export interface ExportOptions {
  /** False: leave out where colonies came from, what was paid, where they went, photos, removal sheets, letters, move-out records, entries that were refused and the names of imported files. */
  private: boolean
  /** Where photos are; without it they are left out. */
  photos?: Pick<PhotoFiles, 'readNow'>
}

type ExportedStore = Pick<
  Store,
  'settings' | 'journal' | 'protocols' | 'removals' | 'after' | 'imports' | 'refused'
>

/** The file's lines, each with its line feed. The journal is read in pages, so that a large one need not fit in memory. */
export function* exportLines(store: ExportedStore, options: ExportOptions): Generator<string> {
  const text = (line: YardLine): string => `${JSON.stringify(line)}\n`
  let settings = 0
  let entries = 0
  const photos = new Set<string>()
  yield text({ line: 'yard', version: VERSION, private: options.private })
  for (const key of Object.keys(SETTINGS) as SettingKey[]) {
    const value = store.settings.get(key)
    if (JSON.stringify(value) === JSON.stringify(SETTINGS[key].fallback)) continue
    settings++
    yield text({ line: 'setting', key, value })
  }
  for (const { entry, written, recordedAt, recordedBy } of store.journal()) {
    entries++
    const kept = options.private ? entry : withoutPhotos(withoutPrivate(entry))
    for (const id of photosIn(kept)) photos.add(id)
    yield text({ line: 'entry', recordedAt, recordedBy, entry: { ...kept, colony: written } })
  }
  if (options.private) for (const id of otherPhotos(store)) photos.add(id)
  let others = 0
  for (const id of photos) {
    const bytes = options.photos?.readNow(id) ?? null
    if (bytes === null) continue
    others++
    yield text({ line: 'photo', id, jpeg: Buffer.from(bytes).toString('base64') })
  }
  for (const line of otherLines(store, options)) {
    others++
    yield text(line)
  }
  yield text({ line: 'end', settings, entries, others })
}

const photosIn = (e: Entry): readonly string[] => ('photos' in e ? (e.photos ?? []) : [])

/** Photos that are named by a sheet, or by an entry that somebody may yet take in. */
const otherPhotos = (store: Pick<ExportedStore, 'removals' | 'refused'>): string[] => [
  ...store.removals.everything().versions.flatMap((v) => photosOfSheet(v.sheet)),
  ...store.refused.everything().flatMap(({ entry }) => {
    const { photos } = (entry ?? {}) as { photos?: unknown }
    return Array.isArray(photos) ? photos.filter((id) => photoId.safeParse(id).success) : []
  }),
]

/** A photo may show a house and its number. */
function withoutPhotos(e: Entry): Entry {
  if (!('photos' in e)) return e
  const { photos: _photos, ...rest } = e
  return rest
}

/** What is neither a setting nor an entry nor a photo. */
function* otherLines(
  store: Pick<ExportedStore, 'protocols' | 'removals' | 'after' | 'imports' | 'refused'>,
  options: ExportOptions,
): Generator<YardLine> {
  for (const change of store.protocols.changes(Number.MAX_SAFE_INTEGER).reverse())
    yield { line: 'protocol', ...change }
  if (!options.private) return
  const { versions, boxes } = store.removals.everything()
  for (const version of versions) yield { line: 'sheet', ...version }
  for (const { colony, id, savedAt, savedBy } of boxes)
    yield { line: 'box', colony, sheet: id, linkedAt: savedAt, linkedBy: savedBy }
  for (const letter of store.after.letters.everything()) yield { line: 'letter', ...letter }
  for (const version of store.after.records.everything()) yield { line: 'move-record', ...version }
  for (const note of store.imports.everything()) yield { line: 'import', ...note }
  for (const entry of store.refused.everything()) yield { line: 'refused', ...entry }
}
