/** The second day of a wall that was left open, on a phone without signal: asked like an opening, and so it is in the book. Invented. */
import { beforeEach, expect, test } from 'vitest'
import { placeOf } from '../../../src/features/removal/place.ts'
import { EMPTY_SHEET, type Sheet } from '../../../src/records/removal-sheet.ts'
import { type Phone, phoneIn, wordsOf } from '../../support/phone.ts'
import { type TestYard, testYard } from '../../support/yard-app.ts'
import { DAY, here, READY } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000064'
const PATH = `/removals/${ID}`
const NEXT = '2026-06-13'
let yard: TestYard
let phone: Phone
const removals = () => yard.services.store.removals
const last = (): Sheet => removals().get(ID)?.last.sheet ?? EMPTY_SHEET
const tap = async (fields: Record<string, string>) => {
  const shown = await phone.open(`${PATH}/work`)
  const hidden = Object.fromEntries(
    [...shown.matchAll(/type="hidden" name="(\w+)" value="([^"]*)"/g)].map(([, name = '', value = '']) => [
      name,
      value,
    ]),
  )
  return phone.post(`${PATH}/work`, { ...hidden, ...fields })
}

beforeEach(async () => {
  yard = testYard({ day: NEXT })
  await yard.session('operator')
  await yard.session('beekeeper')
  yard.at(`${NEXT}T08:00:00Z`)
  const check = { ...READY.check, on: NEXT, doneOn: NEXT, tickedAt: '07:50' }
  const s: Sheet = here({
    ...READY,
    job: { ...READY.job, plannedOn: NEXT },
    check,
    decision: { is: 'go', by: 'Bram', on: NEXT, at: '07:50', unmet: [], ...placeOf(READY) },
    work: {
      on: DAY,
      openedAt: '09:00',
      outdoorC: 24,
      water: true,
      underGo: { by: 'Bram', on: DAY, at: '09:00' },
    },
  })
  const stamp = { savedAt: `${NEXT}T07:50:00.000Z`, savedBy: 'Bram' }
  expect(removals().save(ID, 0, s, stamp).ok).toBe(true)
  phone = phoneIn(yard, 'beekeeper')
  phone.at(`${NEXT}T08:00:00Z`)
  await phone.signal()
  phone.at(`${NEXT}T08:10:00Z`)
})

test('a box waits for going on, going on for the thermometer, and the book has both visits', async () => {
  const page = await phone.open(PATH)
  expect(page).toContain('Go on, now')
  expect(wordsOf(page)).toContain('Go, as this phone knows it')
  expect((await tap({ now: 'boxedAt intake' })).status).toBe(422)
  expect((await tap({ now: 'openedAt' })).status).toBe(422)
  expect((await tap({ now: 'openedAt', outdoorC: '70', water: 'yes' })).status).toBe(303)
  phone.at(`${NEXT}T12:10:00Z`)
  expect((await tap({ now: 'boxedAt intake', openedAt: '08:10', outdoorC: '70', water: 'yes' })).status).toBe(
    303,
  )
  const intake = await phone.open(`${PATH}/intake`)
  expect(intake).toMatch(/name="removal.hoursOpenToBoxed"[^>]*value="27.17"/)
  yard.at(`${NEXT}T12:20:00Z`)
  phone.at(`${NEXT}T12:20:00Z`)
  await phone.signal()
  expect(await phone.syncService.state()).toMatchObject({ waiting: 0, refused: 0 })
  expect(last().work).toMatchObject({
    on: NEXT,
    openedAt: '08:10',
    boxedAt: '12:10',
    underGo: { on: NEXT, at: '08:10' },
    earlier: [{ on: DAY, openedAt: '09:00', underGo: { on: DAY } }],
  })
  expect(last().work.withoutGo).toBeUndefined()
  expect(last().decision?.fell).toBeUndefined()
})

test('of two who go on, the later one is asked which hour it was, and both have one first day', async () => {
  expect((await tap({ now: 'openedAt', outdoorC: '70', water: 'yes' })).status).toBe(303)
  const { work } = last()
  const theirs: Sheet = {
    ...last(),
    work: {
      on: NEXT,
      openedAt: '08:05',
      outdoorC: 20,
      water: true,
      underGo: { by: 'Odalys', on: NEXT, at: '08:05' },
      earlier: [work],
    },
  }
  expect(removals().save(ID, 1, theirs, { savedAt: `${NEXT}T08:05:00.000Z`, savedBy: 'Odalys' }).ok).toBe(
    true,
  )
  yard.at(`${NEXT}T08:20:00Z`)
  phone.at(`${NEXT}T08:20:00Z`)
  await phone.signal()
  expect(last().work).toMatchObject({ on: NEXT, openedAt: '08:05', earlier: [{ on: DAY }] })
  expect(last().work.earlier).toHaveLength(1)
  expect(wordsOf(await phone.open('/outbox'))).toContain('Opened: theirs “08:05”, yours “08:10”')
})
