/** A “go” is of the sheet as it was read: whatever is said after it takes its ground away, in whatever words. Invented. */

import { beforeEach, describe, expect, test } from 'vitest'
import { isOtherwise } from '../../../src/features/removal/as-read.ts'
import { TICKED } from '../../../src/features/removal/item.ts'
import { readNotes } from '../../../src/features/removal/notes-read.ts'
import { placeOf } from '../../../src/features/removal/place.ts'
import { check, job, type Sheet, site } from '../../../src/records/removal-sheet.ts'
import { type TestYard, testYard } from '../../support/yard-app.ts'
import { formIn, yardOn } from '../../support/yard-on.ts'
import { DAY, READY } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000031'
const go: Sheet['decision'] = { is: 'go', by: 'Odalys', on: DAY, at: '10:00', unmet: [], ...placeOf(READY) }
let yard: TestYard
beforeEach(() => {
  yard = testYard({ day: DAY })
})
const removals = () => yard.services.store.removals
const last = (): Sheet => removals().get(ID)?.last.sheet ?? READY
const saved = (s: Sheet, savedBy = 'Odalys'): void => {
  const stamp = { savedAt: `${DAY}T10:00:00.000Z`, savedBy }
  expect(removals().save(ID, removals().get(ID)?.last.version ?? 0, s, stamp).ok).toBe(true)
}
const sync = async (sheet: Sheet, base: number): Promise<number> => {
  const body = JSON.stringify({ id: ID, base, over: false, sheet })
  const headers = { 'Content-Type': 'application/json' }
  return (await yard.ask('beekeeper', '/removals/sync', { method: 'POST', headers, body })).status
}

/** How somebody is reached, pictures, and what is kept beside the answers: of no weight for a “go”. */
const NO_GROUND = ['photos', 'name', 'phone', 'email', 'noted', 'lookedAt', 'tickedAt', 'doneAt']
const fieldsOf = (part: 'job' | 'site' | 'check'): [typeof part, string][] =>
  Object.keys({ job, site, check }[part].def.shape).map((field) => [part, field])

test.each([...fieldsOf('job'), ...fieldsOf('site'), ...fieldsOf('check')])(
  '%s.%s said otherwise is another sheet, but for what has no weight',
  (part, field) => {
    // Of clearances and second persons, who and for what.
    const said = ['clearances', 'seconds'].includes(field) ? [{ hazard: 'gas', item: 'kit' }] : 'otherwise'
    const after = { ...READY, [part]: { ...READY[part], [field]: said } } as Sheet
    expect(isOtherwise(READY, after)).toBe(!NO_GROUND.includes(field))
  },
)

test('whatever it says after the opening asks only of what can kill', () => {
  const open: Sheet = { ...READY, work: { on: DAY, openedAt: '10:10' } }
  expect(isOtherwise(open, { ...open, job: { ...open.job, wayIn: 'By the gate' } })).toBe(false)
})

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
