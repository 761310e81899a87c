/** Writes a whole yard as JSON Lines (yard-file.ts says how). */
import { withoutPrivate } from '../people/privacy.ts'
import { SETTINGS, type SettingKey, type Store } from '../store/index.ts'
import { VERSION, type YardLine } from './yard-file.ts'

export interface ExportOptions {
  /** False: leave out where colonies came from, what was paid, and where they went. */
  private: boolean
}

/** The file's lines, each with its line feed. The journal is read in pages, so that a large one need not fit in memory. */
export function* exportLines(
  store: Pick<Store, 'settings' | 'journal'>,
  options: ExportOptions,
): Generator<string> {
  const text = (line: YardLine): string => `${JSON.stringify(line)}\n`
  let settings = 0
  let entries = 0
  yield text({ line: 'yard', version: VERSION, private: options.private })
  for (const key of Object.keys(SETTINGS) as SettingKey[]) {
    const value = store.settings.get(key)
    if (JSON.stringify(value) === JSON.stringify(SETTINGS[key].fallback)) continue
    settings++
    yield text({ line: 'setting', key, value })
  }
  for (const { entry, written, recordedAt, recordedBy } of store.journal()) {
    entries++
    const kept = options.private ? entry : withoutPrivate(entry)
    yield text({ line: 'entry', recordedAt, recordedBy, entry: { ...kept, colony: written } })
  }
  yield text({ line: 'end', settings, entries })
}
