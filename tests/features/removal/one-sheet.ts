/** One removal sheet of a yard, as its pages are used: what stands on it, its forms as they are shown, and what is posted. */
import { expect } from 'vitest'
import { seenOn } from '../../../src/features/removal/hazards.ts'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import type { Trade, TradeHazard } from '../../../src/records/said-by-others.ts'
import { formIn, wordsOf, type Yard } from '../../support/yard-on.ts'
import { DAY, PAPER, READY } from './ready.ts'

export type Fields = Record<string, string | string[]>

/** One yard for all tests of a file that write sheets alone: each begins with none, at noon. Opening one takes as long as a page. */
export function emptied(yard: Yard): void {
  for (const { id } of yard.store.removals.list()) yard.store.removals.erase(id)
  yard.setDay(DAY)
}

/** `yard`: the one of this test. `savedAt`: the hour of `DAY` at which sheets are saved, where a test says none. */
export function oneSheet(yard: () => Yard, id: string, savedAt = '06:00') {
  const path = `/removals/${id}`
  const last = (of = id) => yard().store.removals.get(of)?.last
  const formOf = async (part: string): Promise<Fields> => formIn((await yard().get(`${path}/${part}`)).text)
  const sheet = (): Sheet => last()?.sheet ?? READY
  const version = (): string => String(last()?.version)
  /** The form of a part as it stands now, with what is changed in it. */
  const save = async (part: string, more: Fields) =>
    yard().post(`${path}/${part}`, { ...(await formOf(part)), ...more })
  /** Only these fields of a part, over the last version. */
  const post = (part: string, fields: Fields) =>
    yard().post(`${path}/${part}`, { version: version(), ...fields })
  return {
    last,
    sheet,
    version,
    saved: (s: Sheet, savedBy = 'Ines', { at = savedAt, of = id } = {}): void => {
      const stamp = { savedAt: `${DAY}T${at}:00.000Z`, savedBy }
      expect(yard().store.removals.save(of, last(of)?.version ?? 0, s, stamp).ok).toBe(true)
    },
    formOf,
    save,
    post,
    words: async (at = path): Promise<string> => wordsOf((await yard().get(at)).text),
    /** “Go” over the form before the cut as it stands. */
    go: (more: Fields = {}) => save('check', { is: 'go', ...more }),
    /** “Opened now”, with all that is asked with it. */
    open: (more: Fields = {}) => post('work', { outdoorC: '75', water: 'yes', now: 'openedAt', ...more }),
    /** Work as it is typed on the day; nothing of how hot it is. */
    typed: (more: Fields) => post('work', { on: DAY, ...more }),
    /** What runs behind it, as it is found. */
    find: async (...behind: string[]): Promise<void> =>
      expect((await save('site', { behind: [...behind, 'insulation'] })).status).toBe(303),
    /** Its trade clears a hazard, with a paper; `more` is without the name of the hazard. */
    clear: (
      hazard: TradeHazard,
      as: Trade,
      { photos = PAPER, ...more }: Record<string, string | undefined> = {},
    ) => {
      const told = { as, who: 'Edda Brandt', licence: '4711', on: DAY, says: 'clear', ...more }
      const named = Object.entries(told).map(([name, value]) => [`trade-${hazard}.${name}`, value ?? ''])
      return yard().post(`${path}/clear`, {
        seen: seenOn(sheet()),
        hazard,
        photos,
        ...Object.fromEntries(named),
      })
    },
  }
}
