/** A hazard is cleared by its trade alone: by name, licence, day and the photo of a paper, and by nobody of the crew. Invented. */
import { beforeAll, beforeEach, expect, test } from 'vitest'
import { wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'
import { emptied, oneSheet } from './one-sheet.ts'
import { DAY, goAt, PAPER, PHOTO, READY } from './ready.ts'

const PATH = '/removals/019e0000-0000-7000-8000-000000000009'
const PLACE = { address: '4 Invented Row', where: 'left of the porch' }
let yard: Yard
const { sheet, saved, save, words, go, find, clear } = oneSheet(() => yard, PATH.slice(10), '08:00')
const fitter = (more: Record<string, string> = {}) => clear('gas', 'gas-fitter', more)
beforeAll(async () => {
  yard = await yardOn(DAY)
  await yard.photos.keep(PHOTO)
})
beforeEach(() => {
  emptied(yard)
  saved({ ...READY, decision: goAt() })
})

test('one hazard by its trade, by name, licence and day; the crew clears none', async () => {
  await find('gas')
  const barred = await go({ reason: 'Fine.' })
  expect(barred.status).toBe(422)
  expect(wordsOf(barred.text)).toContain('cannot be “go”. Not yet: gas pipe cleared')
  const own = await fitter({ who: 'Ines', photos: '' })
  expect(own.status).toBe(422)
  expect(wordsOf(own.text)).toContain('must be somebody of the licensed trade, not of the yard')
  expect((await fitter({ licence: 'Brandt & Co, 4711' })).status).toBe(303)
  expect(sheet().check.clearances).toMatchObject([
    { hazard: 'gas', as: 'gas-fitter', knew: ['gas'], ...PLACE },
  ])
  expect(await words(`${PATH}/check`)).not.toContain('A gas pipe: the gas fitter')
  // Another one comes to light: the gas fitter is asked again.
  await save('site', { hazards: 'lead-paint' })
  expect(await words(`${PATH}/check`)).toContain('It was cleared before something else was found')
})

test('gas is not cleared by a name and a number: its paper is photographed', async () => {
  await find('gas')
  const bare = await fitter({ photos: '' })
  expect(bare.status).toBe(422)
  expect(wordsOf(bare.text)).toContain('is missing: their paper, the tag on the line, or the test result')
  expect((await fitter({ photos: 'b'.repeat(64) })).status, 'one that is only named').toBe(422)
  expect((await fitter()).status).toBe(303)
  expect(sheet().check.clearances).toMatchObject([{ photo: PAPER }])
})

test('nobody who has written on the sheet clears its gas', async () => {
  await find('gas')
  // Bram wrote a version of it once, and is at home today.
  saved({ ...sheet(), job: { ...sheet().job, told: 'Bees.' } }, 'Bram', { at: '09:00' })
  expect((await fitter({ who: 'Bram Oyelaran', licence: 'GF 4711' })).status).toBe(422)
  expect((await fitter({ licence: 'GF 4711' })).status).toBe(303)
  expect(sheet().check.clearances).toMatchObject([PLACE])
})

test('wires near bees or ladder: asked at every job, and they do not go off by another look', async () => {
  const near = (wires: string) => go({ wires })
  expect(wordsOf((await near('')).text)).toContain('wires near bees or ladder')
  expect((await near('unknown')).status).toBe(422)
  expect((await near('near')).status).toBe(422)
  expect(sheet().site.nearWires).toBe(true)
  const back = await near('none')
  expect(back.status).toBe(422)
  expect(wordsOf(back.text)).toContain('wires, meter or pole near')
  const supplier = { who: 'Quarry Power Supply', licence: 'ticket 4711' }
  expect((await clear('near-wires', 'supplier', supplier)).status).toBe(303)
  expect((await near('near')).status).toBe(303)
})
