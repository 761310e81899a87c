/** Notes of another sheet, and what is tapped as “It is here”, on a phone without signal, and on the server afterwards. Invented. */
import { beforeEach, expect, test } from 'vitest'
import { readThere } from '../../../src/features/removal/other-sheets.ts'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { type Phone, wordsOf } from '../../support/phone.ts'
import { type TestYard, testYard } from '../../support/yard-app.ts'
import { formIn } from '../../support/yard-on.ts'
import { phoneAtNoon, sheetIn, sheetOn, type Taps } from './one-phone.ts'
import { DAY, READY, TAPPED } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000063'
const OTHER = '019e0000-0000-7000-8000-000000000064'
const PATH = `/removals/${ID}`
const TOLD = 'deep well under the planks'
let yard: TestYard
let phone: Phone
const { last, saved: put } = sheetIn(() => yard, ID)
const saved = (s: Sheet, of = ID): void => put(s, 'Bram', of)
const phoned = sheetOn(() => phone, ID)
const tap = async (part: string, fields: Taps) => (await phoned.tap(part, fields)).status
const signal = () => phone.signal()
const decide = (more: Taps = {}, ...ticks: string[]) =>
  tap('check', { ...TAPPED, done: [...TAPPED.done, ...ticks], ...more })
const theirs = (more: Partial<Sheet>): Sheet => ({
  ...READY,
  ...more,
  job: { name: 'Edgar', address: '4 Invented Row', ...more.job },
})

beforeEach(async () => {
  yard = testYard({ day: DAY })
  await yard.session('operator')
  await yard.session('beekeeper')
  saved({ ...READY, job: { ...READY.job, plannedOn: DAY } })
  phone = await phoneAtNoon(yard, { heard: false })
})

test('it asks for the notes of the sheet that it keeps', async () => {
  saved(theirs({ job: { told: TOLD, plannedOn: DAY } }), OTHER)
  await signal()
  expect(wordsOf(await phone.open(`${PATH}/check`))).toContain(`same house “${TOLD}”`)
  expect(await decide()).toBe(422)
  expect(await decide({}, readThere({ id: OTHER, notes: [TOLD] }))).toBe(303)
  await signal()
  expect(last().decision).toMatchObject({ is: 'go' })
  expect(last().decision?.fell).toBeUndefined()
})

test('a “go” over notes that it had not heard of falls when it is sent', async () => {
  await signal()
  expect(await decide()).toBe(303)
  saved(theirs({ job: { told: TOLD } }), OTHER)
  await signal()
  expect(last().decision?.is).toBe('go')
  expect(last().decision?.fell).toBeDefined()
})

test('“It is here” stands on the phone, and in the yard’s book, with who found it', async () => {
  saved(theirs({ site: { ...READY.site, behind: ['gas'] }, job: { plannedOn: DAY } }), OTHER)
  await signal()
  expect(await decide({ [`again.not-there:gas:${OTHER}`]: 'here' })).toBe(422)
  expect((await phoned.mine())?.sheet.site.behind).toEqual(['insulation', 'gas'])
  await signal()
  expect(last().site.behind).toEqual(['insulation', 'gas'])
  const [line] = last().site.noted ?? []
  expect(line).toMatchObject({ what: 'gas', is: 'found', on: DAY, at: '12:00' })
})

test('of two scores of how they behave at work the fierce one stays', async () => {
  await signal()
  expect(await tap('work', { temper: '2', 'withoutGo.why': 'not-opened' })).toBe(303)
  saved({ ...last(), work: { temper: 5 } })
  await signal()
  expect(last().work.temper).toBe(5)
})

test('words that nobody has read are read on a phone that takes them out, and once on the server', async () => {
  const job = { ...READY.job, plannedOn: DAY, told: TOLD }
  saved({ ...READY, job })
  await signal()
  const called = { ...formIn(await phone.open(`${PATH}/job`)), bystanders: 'none' }
  const { version: _, ...typed } = called as Record<string, string | string[]>
  // Its own version lies over the one that others may have seen.
  expect(await tap('job', { ...typed, told: TOLD, wayIn: 'By the gate' })).toBe(303)
  expect(await tap('job', { ...typed, told: '', wayIn: 'By the gate' })).toBe(303)
  expect(wordsOf(await phone.open(`${PATH}/check`))).toContain(`“Was written: ${TOLD}”`)
  // What it typed itself a minute ago it puts right in peace.
  expect(await tap('job', { ...typed, told: '', wayIn: 'By the door' })).toBe(303)
  await signal()
  expect(last().job.told).toBeUndefined()
  expect(
    last()
      .site.noted?.filter((n) => n.is === 'was')
      .map((n) => n.words),
  ).toEqual([TOLD])
})
