/** A small yard for what people see of hard histories. */
import { v7 } from 'uuid'
import { addDays, type Day } from '../../src/days.ts'
import { given, wordsOf, type Yard } from './yard-on.ts'

const IN: Day = '2026-05-01'
export const day = (n: number): Day => addDays(IN, n)

type More = Record<string, unknown>

const entry = (colony: string, kind: string, n: number, more: More = {}): More => ({
  id: v7(),
  colony,
  kind,
  on: day(n),
  by: 'Juno',
  ...more,
})
export const intake = (colony: string, more: More = {}): More =>
  entry(colony, 'intake', 0, {
    removal: { type: 'wall' },
    yard: 'North field',
    queen: 'unseen',
    brood: { eggs: 0.5, open: 1, capped: 1 },
    bees: { frames: 6 },
    ...more,
  })
export const look = (colony: string, n: number, more: More = {}): More =>
  entry(colony, 'inspection', n, { opened: true, ...more })
export const gift = (colony: string, n: number, what: string, more: More = {}): More =>
  entry(colony, 'given', n, { what, ...more })
export const outcome = (colony: string, n: number, more: More = {}): More =>
  entry(colony, 'outcome', n, { what: 'moved-out', ...more })
export const put = (yard: Yard, ...entries: More[]): void => given(yard, entries)

/** What can be read on a page, its marks as signs. */
export const words = async (yard: Yard, path: string): Promise<string> =>
  wordsOf((await yard.get(path)).text).replaceAll('&#39;', '’')
