/** Without signal the phone says the same: a box found lost, a colony bound to a suspected one, an empty visit. */
import { beforeEach, expect, it } from 'vitest'
import { down, good, nextId, type Phone, phoneIn, wordsOf } from '../support/phone.ts'
import { type TestYard, testYard } from '../support/yard-app.ts'

const TODAY = '2026-06-01'

let yard: TestYard
let phone: Phone

const entry = (colony: string, kind: string, on: string, more: object) => ({
  id: nextId(),
  colony,
  kind,
  on,
  by: 'Bram',
  ...more,
})
const intake = (tag: string) =>
  entry(tag, 'intake', '2026-05-20', {
    removal: { type: 'wall' },
    yard: 'North field',
    queen: 'unseen',
    brood: { eggs: 0.5, open: 1 },
  })

/** U-1 was suspected, died and is gone from every phone; D-1 had given it a frame. */
beforeEach(async () => {
  yard = testYard({ day: TODAY })
  const sent = await yard.send('beekeeper', [
    ...['U-1', 'D-1', 'W-1'].map(intake),
    entry('U-1', 'given', '2026-05-24', { what: 'egg-frame', donor: 'D-1' }),
    entry('U-1', 'inspection', '2026-05-28', { opened: true, signs: ['brood-disease-suspected'] }),
    entry('U-1', 'outcome', '2026-05-29', { what: 'died' }),
  ])
  expect(sent.status).toBe(200)
  phone = phoneIn(yard)
  expect(await phone.syncService.send()).toBe('done')
  phone.network(down)
})

it('a colony bound to one that has left is held on the phone as on the server', async () => {
  expect(wordsOf(await phone.open('/colony/D-1'))).toContain('Held: bound to U-1')
  const move = await phone.post('/colony/D-1/move', { yard: 'North field', stand: '9', on: TODAY })
  expect(move.status).toBe(422)
  expect(move.html).toContain('brood disease is suspected in U-1')
})

it('a helper says with one tap that a box is dead, and it arrives once', async () => {
  const tapped = { id: nextId(), lost: 'dead' }
  for (let n = 0; n < 2; n++) expect((await phone.post('/colony/W-1/lost', tapped)).status).toBe(303)
  expect(wordsOf(await phone.open('/'))).toContain('Found dead on Mon 1 Jun')
  phone.network(good)
  await phone.syncService.send()
  const { plan } = yard.services.store.colony('W-1')?.summary ?? {}
  expect(plan?.lost?.how).toBe('dead')
  expect(yard.services.store.colony('W-1')?.journal).toHaveLength(2)
})

it('an empty visit is asked about in the phone too', async () => {
  const empty = { on: TODAY, opened: 'yes' }
  const asked = await phone.post('/colony/W-1/visit', empty)
  expect(asked.status).toBe(422)
  expect(asked.html).toContain('Nothing is noted.')
  expect((await phone.post('/colony/W-1/visit', { ...empty, nothing: 'yes' })).status).toBe(303)
})
