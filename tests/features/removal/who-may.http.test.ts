/** Who may: a helper and a stranger open, decide, sign and learn nothing; a beekeeper neither writes the template nor erases. Invented. */
import { beforeEach, expect, test } from 'vitest'
import { testYard } from '../../support/yard-app.ts'
import { wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'
import { aCall, CALLED_ON, typedIn, WORK } from './a-call.ts'
import { sheetIn } from './one-phone.ts'
import { DAY, READY } from './ready.ts'

let yard: Yard
const { call, fill } = aCall(() => yard)
beforeEach(async () => {
  yard = await yardOn(CALLED_ON)
  yard.store.settings.set('yardName', 'Quarry yard')
})
const wordsAt = async (path: string): Promise<string> => wordsOf((await yard.get(path)).text)

test('a helper opens none of it, and learns no name', async () => {
  const path = await call()
  const helper = await yardOn(CALLED_ON, 'helper')
  for (const page of ['/removals', '/removals/new', '/removals/terms', path, `${path}/site`])
    expect((await helper.get(page)).status).toBe(403)
  expect((await helper.get('/')).text).not.toContain('/removals')
})
test('a beekeeper uses sheets, but neither writes the template nor erases', async () => {
  const beekeeper = await yardOn(CALLED_ON, 'beekeeper')
  expect((await beekeeper.get('/removals')).status).toBe(200)
  const made = await beekeeper.post('/removals/new', { name: 'O', version: '0' })
  const path = (made.to ?? '').replace(/\?.*/, '')
  expect((await beekeeper.get(path)).status).toBe(200)
  expect((await beekeeper.get('/removals/terms')).status).toBe(403)
  expect((await beekeeper.get(`${path}/erase`)).status).toBe(403)
  expect((await beekeeper.post(`${path}/erase`, {})).status).toBe(403)
})
test('an operator erases a sheet for good', async () => {
  const path = await call()
  expect(await wordsAt(`${path}/erase`)).toContain('Backups of before keep it')
  expect((await yard.post(`${path}/erase`, {})).to).toBe('/removals?erased=clean')
  expect((await yard.get(path)).status).toBe(404)
})
test('nothing of the customer gets into the journal’s notes, the changes or the colony page of a helper', async () => {
  const path = await call()
  await fill(path, 'work', { ...WORK, 'withoutGo.why': 'said-aloud' })
  const intake = await yard.get(`${path}/intake`)
  await yard.post('/intake', {
    ...typedIn(intake.text),
    colony: 'W-9',
    yard: 'Quarry yard',
    'removal.type': 'wall',
  })
  const [row] = [...yard.store.journal()]
  const { removal, ...rest } = row?.entry.kind === 'intake' ? row.entry : { removal: {} }
  expect(JSON.stringify(rest)).not.toMatch(/Ottoline|Invented|555 01|code 1234/)
  expect(removal).toHaveProperty('site')
})

const ID = '019e0000-0000-7000-8000-000000000001'
test('a helper decides, clears, signs and opens nothing by any address, and a stranger neither', async () => {
  const yard = testYard({ day: DAY })
  const { removals, kept, saved } = sheetIn(() => yard, ID)
  saved(READY)
  const acts: [string, Record<string, string>][] = [
    ['check', { version: '1', is: 'go' }],
    ['site', { version: '1', behind: 'none-detector' }],
    [
      'clear',
      { hazard: 'gas', 'trade-gas.who': 'Edda Brandt', 'trade-gas.licence': '4711', 'trade-gas.on': DAY },
    ],
    ['second', { item: 'not-alone', 'not-alone.by': 'Juno', 'not-alone.reason': 'I stay here with them.' }],
    ['work', { version: '1', outdoorC: '75', now: 'openedAt', water: 'yes' }],
    ['sign', { how: 'paper', name: 'Ottoline Fairweather', on: DAY }],
    ['end', { why: 'Left.' }],
    ['intake', { colony: 'W-1' }],
  ]
  for (const [act, fields] of acts)
    for (const role of ['helper', null] as const) {
      const { status } = await yard.post(role, `/removals/${ID}/${act}`, fields)
      expect(status, `${role} ${act}`).toBe(role === null ? 401 : 403)
    }
  expect(removals().get(ID)?.versions).toHaveLength(1)
  expect(kept()?.decision).toBeUndefined()
  expect(yard.services.store.colony('W-1')).toBeNull()
})

test('a helper sends none, and learns nothing', async () => {
  const answer = await testYard({ day: DAY }).ask('helper', '/removals/sync', { method: 'POST', body: '{}' })
  expect(answer.status).toBe(403)
})
