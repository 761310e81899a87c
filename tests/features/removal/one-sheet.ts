/** One removal sheet of a yard, as its pages are used: what stands on it, its forms as they are shown, and what is posted. */
import { expect } from 'vitest'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { formIn, wordsOf, type Yard } from '../../support/yard-on.ts'
import { DAY, READY } from './ready.ts'

export type Fields = Record<string, string | string[]>

/** `yard`: the one of this test. `savedAt`: the hour of `DAY` at which sheets are saved, where a test says none. */
export function oneSheet(yard: () => Yard, id: string, savedAt = '06:00') {
  const path = `/removals/${id}`
  const last = (of = id) => yard().store.removals.get(of)?.last
  const formOf = async (part: string): Promise<Fields> => formIn((await yard().get(`${path}/${part}`)).text)
  return {
    last,
    sheet: (): Sheet => last()?.sheet ?? READY,
    saved: (s: Sheet, savedBy = 'Ines', { at = savedAt, of = id } = {}): void => {
      const stamp = { savedAt: `${DAY}T${at}:00.000Z`, savedBy }
      expect(yard().store.removals.save(of, last(of)?.version ?? 0, s, stamp).ok).toBe(true)
    },
    formOf,
    /** The form of a part as it stands now, with what is changed in it. */
    save: async (part: string, more: Fields) =>
      yard().post(`${path}/${part}`, { ...(await formOf(part)), ...more }),
    /** Only these fields of a part, over the last version. */
    post: (part: string, fields: Fields) =>
      yard().post(`${path}/${part}`, { version: String(last()?.version), ...fields }),
    words: async (at = path): Promise<string> => wordsOf((await yard().get(at)).text),
  }
}
