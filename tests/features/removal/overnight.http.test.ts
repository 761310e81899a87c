/** A form before the cut that lay open over night and comes back: what was tapped yesterday is not tapped in it any more. Invented. */
import { beforeEach, expect, test } from 'vitest'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { formIn, type Yard, yardOn } from '../../support/yard-on.ts'
import { oneSheet } from './one-sheet.ts'
import { DAY, here, READY, TAPPED } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000073'
const NEXT = '2026-06-13'
let yard: Yard
const { sheet, saved, formOf } = oneSheet(() => yard, ID)

beforeEach(async () => {
  yard = await yardOn(DAY)
  const { cutMm, vacuum } = READY.check
  const s: Sheet = here({ ...READY, check: { cutMm, vacuum, doneOn: NEXT } })
  const { doneOn: _, ...check } = s.check
  saved({ ...s, check })
  yard.setDay(DAY, '18:00')
})

const overnight = async (more: Record<string, string> = {}) => {
  const form = { ...(await formOf('check')), ...TAPPED, ...more }
  yard.setDay(NEXT, '06:30')
  return yard.post(`/removals/${ID}/check`, form)
}

test('a second tap on “Go” makes no ticks of today of them', async () => {
  const first = await overnight()
  expect(first.status).toBe(422)
  const back = formIn(first.text)
  expect(back).toMatchObject({ shownOn: [NEXT], shownAt: ['06:30'] })
  expect(back.done).toBeUndefined()
  expect(back.wires).toBeUndefined()
  const second = await yard.post(`/removals/${ID}/check`, { ...back, hottestC: '75', is: 'go' })
  expect(second.status).toBe(422)
  expect(sheet().check.done ?? []).toEqual([])
  expect(sheet().decision?.is).not.toBe('go')
})

test('wires that were seen near stay near', async () => {
  await overnight({ wires: 'near' })
  expect(sheet().site.nearWires).toBe(true)
})
