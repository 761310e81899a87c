/** Sheets that came in with a file, and a yard whose day is another one: nothing that they say opens anything. Invented. */
import { beforeEach, expect, test } from 'vitest'
import { placeOf } from '../../../src/features/removal/place.ts'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { type TestYard, testYard } from '../../support/yard-app.ts'
import { wordsOf } from '../../support/yard-on.ts'
import { DAY, GAS_CLEARED, goAt, PHOTO, READY } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000009'
const go: Sheet['decision'] = goAt('11:00', 'Odalys')
const gas: Sheet = {
  ...GAS_CLEARED,
  check: {
    ...GAS_CLEARED.check,
    seconds: [{ item: 'kit', of: 'x', by: 'Bram', account: true, why: 'seen', on: DAY, ...placeOf(READY) }],
  },
  decision: go,
}

let yard: TestYard
beforeEach(async () => {
  yard = testYard({ day: DAY })
  await yard.services.photos.keep(PHOTO)
})
const removals = (of = yard) => of.services.store.removals
const sheet = (): Sheet | undefined => removals().get(ID)?.last.sheet
const opens = async (): Promise<number> => {
  const version = String(removals().get(ID)?.last.version)
  const work = { version, on: DAY, outdoorC: '75', now: 'openedAt', water: 'yes' }
  return (await yard.post('operator', `/removals/${ID}/work`, work)).status
}

/** A sheet of another yard, as its file says it. */
async function fileWith(...sheets: Sheet[]): Promise<string> {
  const other = testYard({ day: DAY })
  for (const [version, s] of sheets.entries())
    removals(other).save(ID, version, s, { savedAt: `${DAY}T08:0${version}:00.000Z`, savedBy: 'Odalys' })
  return (await other.ask('operator', '/data/export?private=yes')).text()
}
async function bringIn(text: string): Promise<string> {
  const body = new FormData()
  body.set('file', new File([text], 'yard.jsonl'))
  return wordsOf(await (await yard.ask('operator', '/data/import', { method: 'POST', body })).text())
}

test('a “go”, a clearance and a second person that came in with a file open nothing', async () => {
  expect(await bringIn(await fileWith(gas))).toContain('Taken in')
  expect(sheet()?.decision?.fell).toMatchObject({ because: 'import' })
  expect(sheet()?.check).not.toHaveProperty('clearances')
  expect(sheet()?.check).not.toHaveProperty('seconds')
  expect(sheet()?.site.lookedAt).toBeUndefined()
  expect(sheet()?.site.behind, 'what was found stays').toEqual(['gas'])
  expect(removals().version(ID, 1)?.sheet, 'as it came, it is kept').toEqual(gas)
  expect(await opens()).toBe(422)
  const page = wordsOf(await (await yard.ask('operator', `/removals/${ID}`)).text())
  expect(page).toContain('before it came in with a file')
  expect(page).toContain('Not yet: gas pipe cleared')
})

test('looks, ticks and papers of a sheet whose “go” had fallen before are asked again as well', async () => {
  const fell = { by: 'Odalys', on: DAY, at: '11:20' }
  expect(await bringIn(await fileWith({ ...gas, decision: { ...go, fell } }))).toContain('Taken in')
  expect(sheet()?.decision?.fell).toEqual(fell)
  expect(sheet()?.site.lookedAt).toBeUndefined()
  expect(sheet()?.check).not.toHaveProperty('done')
  expect(sheet()?.check).not.toHaveProperty('clearances')
  expect(sheet()?.site.behind).toEqual(['gas'])
})

test('the same file again changes nothing; a newer one is taken in all the same, and a changed one is not', async () => {
  const first = { ...gas, job: { ...gas.job, wayIn: 'Gate at the back' } }
  await bringIn(await fileWith(first))
  await bringIn(await fileWith(first))
  expect(removals().get(ID)?.last.version).toBe(2)
  expect(await bringIn(await fileWith(first, gas))).toContain('Taken in')
  expect(removals().version(ID, 2)?.sheet).toEqual(gas)
  expect(removals().get(ID)?.last).toMatchObject({ version: 3, savedBy: 'Coming in with a file' })
  expect(await bringIn(await fileWith(gas))).toContain('is another one here')
})

test('a “go” of an evening that is today again, in another time zone, opens nothing', async () => {
  removals().save(ID, 0, { ...READY, decision: go }, { savedAt: `${DAY}T08:00:00.000Z`, savedBy: 'Odalys' })
  const settings = { temperature: 'F', weight: 'lb', timeZone: 'UTC' }
  expect((await yard.post('operator', '/settings', settings)).status).toBe(303)
  expect(sheet()?.decision?.fell).toBeUndefined()
  expect((await yard.post('operator', '/settings', { ...settings, timeZone: 'America/Denver' })).status).toBe(
    303,
  )
  expect(sheet()?.decision?.fell).toMatchObject({ because: 'time-zone', at: '06:00' })
  expect(await opens()).toBe(422)
})
