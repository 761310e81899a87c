/** What a sheet is reckoned to lack before “go”, and sheets on which something is so, cleared, signed or not. Invented. */
import { beforeCut, holds } from '../../../src/features/removal/before-cut.ts'
import { decisionProblems } from '../../../src/features/removal/decide.ts'
import { CLEARED_BY } from '../../../src/features/removal/hazards.ts'
import type { TickedId } from '../../../src/features/removal/item.ts'
import { placeOf } from '../../../src/features/removal/place.ts'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import type { Noted, Trade, TradeHazard } from '../../../src/records/said-by-others.ts'
import { DEFAULT_PROTOCOL } from '../../../src/recovery/protocol.ts'
import { DAY, PAPER, SHOWS } from './ready.ts'

export const reckon = (s: Sheet, day = DAY) => beforeCut(s, DEFAULT_PROTOCOL, SHOWS, day)
/** What holds a “go”, by its ids. */
export const holding = (s: Sheet, day = DAY): string[] =>
  reckon(s, day)
    .unmet.filter(holds)
    .map((i) => i.id)
/** A reason and a decider are always given: only what no reason gets past is left. */
export const mayGo = (s: Sheet, day = DAY): boolean =>
  decisionProblems({ is: 'go', by: 'Ines', reason: 'It is late, the customer waits.' }, reckon(s, day), s)
    .length === 0

export const withHazard = (s: Sheet, hazard: TradeHazard): Sheet => {
  const behind = (['electric', 'electric-in-cut', 'gas', 'flue'] as const).filter((b) => b === hazard)
  const found = (['asbestos', 'lead-paint', 'weak-structure'] as const).filter((h) => h === hazard)
  return {
    ...s,
    site: {
      ...s.site,
      behind: [...(s.site.behind ?? []), ...behind],
      hazards: [...(s.site.hazards ?? []), ...found],
      ...(hazard === 'near-wires' ? { nearWires: true } : {}),
    },
  }
}
/** By the first of the trades that may. */
export const tradeOf = (hazard: TradeHazard): { as: Trade } => ({ as: CLEARED_BY[hazard][0] ?? 'builder' })
export const cleared = (s: Sheet, hazard: TradeHazard, knew: TradeHazard[] = [hazard]): Sheet => ({
  ...s,
  check: {
    ...s.check,
    clearances: [
      ...(s.check.clearances ?? []),
      {
        hazard,
        ...tradeOf(hazard),
        who: 'Edda Brandt',
        licence: 'Brandt & Co, 4711',
        on: DAY,
        photo: PAPER,
        knew,
        ...placeOf(s),
      },
    ],
  },
})
export const signedFor = (s: Sheet, item: string, by = 'Bram'): Sheet => {
  const of = reckon(s).items.find((i) => i.id === item)?.why ?? ''
  const account = { account: true as const }
  const second = { item, by, why: 'stays' as const, ...account, on: DAY, of, ...placeOf(s) }
  return { ...s, check: { ...s.check, seconds: [...(s.check.seconds ?? []), second] } }
}
export const without = (s: Sheet, ...ids: TickedId[]): Sheet => ({
  ...s,
  check: { ...s.check, done: s.check.done?.filter((d) => !(ids as string[]).includes(d)) ?? [] },
})

/** A line of this morning on the sheet. */
export const line = (s: Sheet, n: Pick<Noted, 'what' | 'is'> & { words?: string }): Sheet => ({
  ...s,
  site: {
    ...s.site,
    noted: [
      ...(s.site.noted ?? []),
      { ...n, by: 'Ines', on: DAY, at: '09:00', writtenAt: `${DAY}T09:00:00.000Z` },
    ],
  },
})
