/** What can kill goes off a sheet with a reason that stays, and what no trade has cleared does not go off at all. Invented. */
import { beforeAll, beforeEach, expect, test } from 'vitest'
import { wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'
import { emptied, oneSheet } from './one-sheet.ts'
import { DAY, goAt, PHOTO, READY } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000009'
let yard: Yard
const { sheet, saved, formOf, save, post, words, version, go, open, find, clear } = oneSheet(
  () => yard,
  ID,
  '08:00',
)
beforeAll(async () => {
  yard = await yardOn(DAY)
  await yard.photos.keep(PHOTO)
})
beforeEach(() => {
  emptied(yard)
  saved({ ...READY, decision: goAt() })
})

test('an allergic person goes off with a reason, which stays', async () => {
  const call = await formOf('job')
  const job = (more: object) => post('job', { ...call, version: version(), ...more })
  await job({ bystanders: ['allergic', 'children'] })
  const off = (more: object) => job({ bystanders: 'none', ...more })
  const asked = await off({})
  expect(asked.status).toBe(422)
  expect(asked.text).toContain('name="gone.allergic"')
  expect(sheet().site.bystanders).toContain('allergic')
  expect((await off({ 'gone.allergic': 'left' })).status, 'the children too').toBe(422)
  expect((await off({ 'gone.allergic': 'left', 'gone.children': 'mistake' })).status).toBe(303)
  expect(sheet().site.bystanders).toEqual([])
  expect(await words()).toContain('Somebody allergic, not so any more, Ines')
  // Back again: cared for anew.
  await job({ bystanders: 'allergic' })
  const answer = await go()
  expect(answer.status).toBe(422)
  expect(wordsOf(answer.text)).toContain('the allergic person cared for')
})

test('a ladder, a nest, droppings: nothing that asks for care goes off by a tap', async () => {
  const ground = await save('job', { access: 'ground', heightM: '' })
  expect(ground.status).toBe(422)
  expect(ground.text).toContain('name="gone.climb"')
  const site = await formOf('site')
  await post('site', { ...site, hazards: 'droppings' })
  const off = await post('site', { ...site, version: version(), hazards: 'none-tested' })
  expect(off.text).toContain('name="gone.droppings"')

  const other = oneSheet(() => yard, ID.replace(/9$/, '3'), '08:00')
  const { where: _w, sheathingMm: _s, behind: _b, ...bare } = READY.site
  const { cutMm: _c, ...check } = READY.check
  other.saved({ ...READY, site: bare, check })
  expect((await other.save('job', { what: 'swarm', since: 'today' })).text).toContain('name="gone.nest"')
})

test('gas that comes to light after “Go” holds the opening until its trade has cleared it', async () => {
  const site = await formOf('site')
  await find('gas')
  // Nothing offers to open it.
  expect((await yard.get(`/removals/${ID}/work`)).text).not.toContain('value="openedAt"')
  expect((await open()).status).toBe(422)
  // Neither a tap takes it off …
  const tap = await post('site', { ...site, version: version(), behind: 'none-detector' })
  expect(tap.status).toBe(422)
  expect(wordsOf(tap.text)).toContain('stays: “Gas pipe” was seen here')
  expect(sheet().site.behind).toContain('gas')
  // … nor the kind of bees, nor the customer's word.
  await post('job', { name: 'Ottoline Fairweather', what: 'swarm' })
  expect((await clear('gas', 'gas-fitter', { who: 'Ottoline Fairweather' })).status).toBe(422)
  expect((await open()).status).toBe(422)
  expect(sheet().work.openedAt).toBeUndefined()
  expect(sheet().site.behind).toContain('gas')
})

test('“Looked: none” together with a gas pipe is a gas pipe', async () => {
  await find('none', 'gas')
  expect(sheet().site.behind).toEqual(['gas', 'insulation'])
})

test('another word for the wall does not take gas, wires or asbestos off', async () => {
  const behind = ['gas', 'electric', 'insulation']
  const site = await formOf('site')
  await post('site', { ...site, behind, hazards: 'asbestos' })
  for (const moved of [{ where: 'left of the porch, low' }, { surface: 'siding' }]) {
    await save('site', { ...moved, behind, hazards: 'asbestos' })
    const off = await save('site', {
      behind: 'none-detector',
      hazards: 'none-tested',
      'gone.gas': 'elsewhere',
      'gone.electric': 'elsewhere',
      'gone.asbestos': 'elsewhere',
      'gone.insulation': 'elsewhere',
    })
    expect(off.status).toBe(422)
    expect(wordsOf(off.text)).toContain('Another place has a sheet of its own')
  }
  await save('job', { address: '9 Other Lane' })
  const tested = { 'gone.gas': 'elsewhere', hazards: 'none-tested' }
  expect((await post('site', { ...site, version: version(), ...tested })).status).toBe(422)
  expect(sheet().site.behind).toContain('gas')
  expect(sheet().site.hazards).toContain('asbestos')
})

test('what its trade cleared days ago, good for one, does not go off with a word', async () => {
  const site = await formOf('site')
  await find('electric-in-cut')
  expect((await clear('electric-in-cut', 'electrician')).status).toBe(303)
  yard.setDay('2026-06-15')
  const off = { version: version(), behind: ['insulation'], 'gone.electric-in-cut': 'removed' }
  expect((await post('site', { ...site, ...off })).status).toBe(422)
  expect(sheet().site.behind).toContain('electric-in-cut')
})
