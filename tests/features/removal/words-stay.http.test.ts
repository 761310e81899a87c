/** What was written of a hazard outlives the field it was written in, and each answer is of one thing alone. Invented. */
import { beforeAll, beforeEach, describe, expect, test } from 'vitest'
import { readNotes } from '../../../src/features/removal/notes-read.ts'
import { placeOf } from '../../../src/features/removal/place.ts'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'
import { emptied, oneSheet } from './one-sheet.ts'
import { DAY, GAS_CLEARED, here, PHOTO, READY } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000049'
const OTHER = ID.replace(/9$/, '8')
const THIRD = ID.replace(/9$/, '7')
const PATH = `/removals/${ID}`
let yard: Yard
const { last, sheet, saved, formOf, save, words } = oneSheet(() => yard, ID, '08:00')
/** “Go” over the form as it stands, its notes read, with more of its boxes tapped. */
const go = async (...more: string[]) => {
  const typed = await formOf('check')
  return yard.post(`${PATH}/check`, {
    ...typed,
    done: [...(typed.done ?? []), readNotes(sheet()), ...more],
    is: 'go',
  })
}
const asked = async (value: string) =>
  (await yard.get(`${PATH}/check`)).text.includes(`name="again.${value}"`)

beforeAll(async () => {
  yard = await yardOn(DAY)
  await yard.photos.keep(PHOTO)
})
beforeEach(() => emptied(yard))

describe('words that are deleted', () => {
  const told: Sheet = { ...READY, job: { ...READY.job, told: 'By the gas pipe, my son is allergic' } }

  test('stay until each is looked for again, or tapped', async () => {
    saved(told)
    expect((await go()).status).toBe(422)
    expect((await save('job', { told: '', bystanders: 'none' })).status).toBe(303)
    expect(sheet().job.told).toBeUndefined()
    const barred = await go()
    expect(barred.status).toBe(422)
    expect(wordsOf(barred.text)).toContain('was written: “By the gas pipe, my son is allergic”')
    const { text } = await yard.get(`${PATH}/check`)
    expect(wordsOf(text)).toContain('In the words of this sheet (was written: “By the gas pipe')
    expect((await go('not-here:gas')).status, 'one of two').toBe(422)
    expect((await go('not-here:gas', 'not-here:allergic')).status).toBe(303)
    // Of a day, like every tick.
    yard.setDay('2026-06-13')
    expect(await asked('not-here:gas')).toBe(true)
  })

  test('tapped and taken off with a reason, they are answered', async () => {
    saved(told)
    await save('job', { told: '', bystanders: 'allergic' })
    expect(await asked('not-here:allergic')).toBe(false)
    await save('job', { bystanders: 'none', 'gone.allergic': 'left' })
    expect(sheet().site.bystanders).toEqual([])
    expect(await asked('not-here:allergic')).toBe(false)
    expect(await asked('not-here:gas')).toBe(true)
  })

  test('are not wiped by a second tab of one’s own', async () => {
    saved(READY)
    const stale = await formOf('site')
    expect((await save('site', { behindNote: 'Gas pipe behind, by the detector' })).status).toBe(303)
    await yard.post(`${PATH}/site`, { ...stale, temper: '3' })
    const version = String(last()?.version)
    expect((await yard.post(`${PATH}/site`, { ...stale, temper: '3', version })).status).toBe(303)
    expect(sheet().site.behindNote).toBeUndefined()
    expect((await go()).status).toBe(422)
  })

  test('stay when a phone or a program sends the sheet without them', async () => {
    saved(told)
    const { told: _, ...job } = told.job
    const body = { id: ID, base: 1, over: false, sheet: { ...told, job } }
    expect((await yard.send('/removals/sync', body)).status).toBe(200)
    expect(sheet().job.told).toBeUndefined()
    expect((await go()).status).toBe(422)
    // Once said is enough.
    expect((await yard.send('/removals/sync', { ...body, base: 2, sheet: sheet() })).status).toBe(200)
    expect(sheet().site.noted?.filter((n) => n.is === 'written')).toHaveLength(2)
  })

  test('leave no line where they were tapped, or looked for again, before', async () => {
    saved({ ...told, site: { ...READY.site, bystanders: ['allergic'] } })
    expect((await go('not-here:gas')).status).toBe(303)
    expect((await save('job', { told: '', bystanders: 'allergic' })).status).toBe(303)
    expect(sheet().site.noted ?? []).toEqual([])
    expect((await go()).status).toBe(303)
  })
})

describe('a tick for the gas station', () => {
  const station: Sheet = { ...READY, job: { ...READY.job, told: 'Opposite the gas station' } }
  const theirs: Sheet = here({
    ...READY,
    job: { name: 'Edgar Quill', address: '4 Invented Row' },
    site: { ...READY.site, behind: ['gas'] },
  })

  test('is none for the pipe of another sheet, nor that of one sheet for the next', async () => {
    saved(station)
    expect((await go('not-here:gas')).status).toBe(303)
    saved(theirs, 'Bram', { of: OTHER })
    const work = { version: String(last()?.version), outdoorC: '75', water: 'yes', now: 'openedAt' }
    expect((await yard.post(`${PATH}/work`, work)).status).toBe(422)
    expect((await go()).status).toBe(422)
    expect((await go(`not-there:gas:${OTHER}`)).status).toBe(303)
    saved(theirs, 'Bram', { of: THIRD })
    expect((await go()).status).toBe(422)
    expect((await go(`not-there:gas:${THIRD}`)).status).toBe(303)
    expect(await words()).toContain('not here: gas pipe')
  })
})

test('who erases a sheet reads what of the house is forgotten with it', async () => {
  saved({ ...READY, site: { ...READY.site, behind: ['gas'], behindNote: 'A cable above it' } })
  const page = await words(`${PATH}/erase`)
  expect(page).toContain(
    'What it says of this house: electric wires, gas pipe, its notes . A new sheet of it will not know.',
  )
  saved(READY)
  expect(await words(`${PATH}/erase`)).not.toContain('What it says of this house')
})

describe('one more, written before the “go”', () => {
  const ofEight = (s: Sheet): Sheet => ({
    ...s,
    check: {
      ...s.check,
      ...(s.check.clearances === undefined
        ? {}
        : { clearances: s.check.clearances.map((c) => ({ ...c, writtenAt: `${DAY}T08:00:00.000Z` })) }),
    },
  })

  test.each([['Another gas pipe right of it'], ['One more right of it, it hisses'], ['Hay otra al lado']])(
    'beside a cleared pipe: “%s”',
    async (behindNote) => {
      saved(ofEight(GAS_CLEARED))
      expect((await save('site', { behindNote })).status).toBe(303)
      const barred = await go()
      expect(barred.status).toBe(422)
      expect(wordsOf(barred.text)).toContain('Gas pipe: the same one?')
      expect((await go('same:gas')).status).toBe(303)
      // And so with what is written after that.
      expect((await save('site', { behindNote: `${behindNote}, and a third` })).status).toBe(303)
      expect((await go()).status).toBe(422)
    },
  )

  test('what a trade has not cleared is not “the same”', async () => {
    saved({ ...READY, site: { ...READY.site, behind: ['gas'] } })
    await save('site', { behindNote: 'Another gas pipe' })
    expect((await go('same:gas')).status).toBe(422)
  })

  test('beside an allergic person who is cared for, in any words', async () => {
    saved({ ...READY, site: { ...READY.site, bystanders: ['allergic'] } })
    expect((await go()).status).toBe(303)
    expect((await save('job', { bystandersNote: 'her sister too' })).status).toBe(303)
    expect(sheet().check.done).not.toContain('allergy')
    expect((await go()).status).toBe(422)
  })

  test('a note once it is open lets no “go” fall, but words for what can kill', async () => {
    saved(ofEight(GAS_CLEARED))
    expect((await go()).status).toBe(303)
    const work = { version: String(last()?.version), outdoorC: '75', water: 'yes', now: 'openedAt' }
    expect((await yard.post(`${PATH}/work`, work)).status).toBe(303)
    await save('site', { foundNote: 'Bigger than we thought' })
    expect(sheet().decision?.fell).toBeUndefined()
    await save('site', { foundNote: 'Another gas pipe' })
    expect(sheet().decision?.fell).toBeDefined()
  })

  test('the way in, or a job that has nothing of it, asks nothing more than to read it', async () => {
    saved(ofEight(GAS_CLEARED))
    await save('job', { wayIn: 'Gate code 1234' })
    expect((await go()).status).toBe(303)
    saved({ ...READY, decision: { is: 'wait', by: 'Ines', on: DAY, unmet: [], ...placeOf(READY) } })
    await save('site', { behindNote: 'Honey drips' })
    expect((await go()).status).toBe(303)
  })
})
