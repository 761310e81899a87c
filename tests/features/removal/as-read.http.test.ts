/** A “go” is of the sheet as it was read: whatever is said after it takes its ground away, in whatever words. Invented. */

import { beforeEach, describe, expect, test } from 'vitest'
import { TICKED } from '../../../src/features/removal/item.ts'
import { readNotes } from '../../../src/features/removal/notes-read.ts'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { type TestYard, testYard } from '../../support/yard-app.ts'
import { formIn, yardOn } from '../../support/yard-on.ts'
import { sheetIn } from './one-phone.ts'
import { DAY, goAt, READY } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000031'
const go: Sheet['decision'] = goAt('10:00', 'Odalys')
let yard: TestYard
beforeEach(() => {
  yard = testYard({ day: DAY })
})
const { last, saved, sync: send } = sheetIn(() => yard, ID, { by: 'Odalys', at: '10:00' })
const sync = async (sheet: Sheet, base: number): Promise<number> => (await send(sheet, { base })).status

describe('a word that no list knows, written after a “go”', () => {
  const words: Partial<Sheet['site']> = { behindNote: 'Zischt, wenn man klopft' }
  const written: Sheet = { ...READY, decision: go, site: { ...READY.site, ...words } }

  test('by a phone lets it fall', async () => {
    saved({ ...READY, decision: go })
    expect(await sync(written, 1)).toBe(200)
    expect(last().decision?.fell).toMatchObject({ by: 'Bram' })
    expect(last().site).toMatchObject(words)
  })

  test('by a colleague lets a “go” fall that a phone brings later', async () => {
    saved(READY)
    saved({ ...READY, site: { ...READY.site, ...words } })
    expect(await sync({ ...READY, decision: { ...go, by: 'Bram' } }, 1)).toBe(200)
    expect(last().decision).toMatchObject({ is: 'go', by: 'Bram' })
    expect(last().decision?.fell).toBeDefined()
  })

  test('lets none fall where nothing is said but how the customer is reached', async () => {
    saved({ ...READY, decision: go })
    expect(await sync({ ...READY, decision: go, job: { ...READY.job, phone: '555 0177' } }, 1)).toBe(200)
    expect(last().decision?.fell).toBeUndefined()
  })
})

test('a form that lay open while the call was said otherwise takes no “go” until it was read', async () => {
  const at = await yardOn(DAY)
  const sheets = at.store.removals
  const save = (s: Sheet, version: number) =>
    sheets.save(ID, version, s, { savedAt: `${DAY}T10:00:00.000Z`, savedBy: 'Bram' })
  save(READY, 0)
  const lay = formIn((await at.get(`/removals/${ID}/check`)).text)
  save({ ...READY, job: { ...READY.job, told: 'Zischt, wenn man klopft' } }, 1)
  const answer = await at.post(`/removals/${ID}/check`, { ...lay, is: 'go' })
  expect(answer.status).toBe(422)
  expect(answer.text).toContain('changed since this page was shown')
  expect(sheets.get(ID)?.last.sheet.decision).toBeUndefined()
  const again = formIn((await at.get(`/removals/${ID}/check`)).text)
  const done = [...TICKED, readNotes({ ...READY, job: { ...READY.job, told: 'Zischt, wenn man klopft' } })]
  expect((await at.post(`/removals/${ID}/check`, { ...again, done, is: 'go' })).status).toBe(303)
})
