/** Who may: a helper and a stranger open, decide, sign and learn nothing; a beekeeper neither writes the template nor erases. Invented. */
import { beforeEach, expect, test } from 'vitest'
import { wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'
import { aCall, CALLED_ON, typedIn, WORK } from './a-call.ts'

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
