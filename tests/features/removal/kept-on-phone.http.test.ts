/** What a phone keeps of removal sheets: the jobs of today and tomorrow, what waits to be sent, for its owner alone. Invented people. */
import { beforeEach, expect, test } from 'vitest'
import { AS_TOLD } from '../../../src/features/removal/people.ts'
import { good, type Phone } from '../../support/phone.ts'
import { type TestYard, testYard } from '../../support/yard-app.ts'
import { phoneAtNoon, sheetIn, sheetOn } from './one-phone.ts'
import { but, CALLED, DAY, DRAWING, READY } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000001'
const PATH = `/removals/${ID}`
const CALL = { ...CALLED, heightM: '', wayIn: 'Gate code 1234' }
let yard: TestYard
let phone: Phone
const { kept, sync: post } = sheetIn(() => yard, ID)
const { send, words } = sheetOn(() => phone, ID)
const waiting = async () => (await phone.syncService.state()).waiting
const onDisk = async (): Promise<string> => JSON.stringify(await (await phone.database()).getAll('sheets'))
beforeEach(async () => {
  yard = testYard({ day: DAY })
  await post(READY)
  phone = await phoneAtNoon(yard)
})

test('the jobs of today and tomorrow are there without signal; others are not', async () => {
  await post(but({ job: { ...READY.job, plannedOn: '2026-06-13' } }), { of: ID.replace(/1$/, '2') })
  const elsewhere = { name: 'Edgar Quill', address: '9 Other Lane', plannedOn: '2026-06-20' }
  await post(but({ job: elsewhere }), { of: ID.replace(/1$/, '3') })
  await phone.signal()
  expect(await phone.open(PATH)).toContain('Ottoline Fairweather')
  expect(await phone.open(PATH.replace(/1$/, '2'))).toContain('Ottoline Fairweather')
  await expect(phone.open(PATH.replace(/1$/, '3'))).rejects.toThrow('the phone has no page')
})

test('what is written waits, survives, and is sent once there is signal', async () => {
  expect((await send('job', { version: '1', ...CALL })).status).toBe(303)
  await phone.syncService.send()
  expect(kept()?.job.wayIn).toBeUndefined()
  expect(await waiting()).toBe(1)
  phone.network(good)
  expect(await phone.syncService.send()).toBe('done')
  expect(kept()?.job.wayIn).toBe('Gate code 1234')
  expect(await waiting()).toBe(0)
})

test('words that are deleted there stay a line, on the phone and on the server', async () => {
  await post({ ...READY, job: { ...READY.job, told: 'By the gas pipe' } }, { base: 1 })
  await phone.signal()
  expect((await send('job', { version: '2', ...CALL, told: '' })).status).toBe(303)
  expect(await words(`${PATH}/check`)).toContain(
    'In the words of this sheet (was written: “By the gas pipe”)',
  )
  phone.network(good)
  expect(await phone.syncService.send()).toBe('done')
  expect(kept()?.job.told).toBeUndefined()
  const lines = kept()?.site.noted?.filter((n) => n.is === 'written')
  expect(lines).toMatchObject([{ what: 'gas', words: 'By the gas pipe', by: 'Bram' }])
})

test('a second person without signal: the accounts of the yard are on the phone, and not on a helper’s', async () => {
  await post({ ...READY, check: { ...READY.check, done: [] } }, { base: 1 })
  await phone.signal()
  await phone.open(`${PATH}/check`)
  // Nothing else is new when somebody gets an account.
  await yard.session('helper')
  await phone.signal()
  const shown = await phone.open(`${PATH}/second?item=not-alone`)
  expect(shown).toContain('name="not-alone.by"')
  expect(shown).toContain('value="Teuila"')
  expect(shown).not.toContain('value="Bram"')
  expect(shown).toContain('There is no signal here')
  expect(shown).not.toContain('data-pad-field')
  const of = AS_TOLD['not-alone']
  const alone = { item: 'not-alone', of, 'not-alone.by': 'Teuila', 'not-alone.why': 'stays' }
  const answer = await send('second', { ...alone, passphrase: 'slow lantern' })
  expect(answer.status).toBe(422)
  expect(answer.text).toContain('without signal')
  // Who has none draws, and leaves a number: that works here, and is sent.
  const drawn = await send('second', {
    item: 'exclusion',
    of: AS_TOLD.exclusion,
    'exclusion.by': 'Zed Quill',
    'exclusion.why': 'seen',
    'exclusion.phone': '555 0177',
    drawing: DRAWING,
  })
  expect(drawn.status, drawn.text).toBe(303)
  phone.network(good)
  expect(await phone.syncService.send()).toBe('done')
  expect(kept()?.check.seconds).toMatchObject([{ by: 'Zed Quill', phone: '555 0177' }])
  const known = await (await (await phoneAtNoon(yard, { role: 'helper' })).database()).get('kept', 'round')
  expect(JSON.stringify(known)).not.toContain('crew')
})

test('names leave the phone at sign-out; what waits stays for its owner', async () => {
  expect(await onDisk()).toContain('Fairweather')
  await phone.syncService.signedOut()
  expect(await onDisk()).not.toContain('Fairweather')
  phone.heldBy('beekeeper')
  await phone.signal()
  await send('job', { version: '1', ...CALL })
  await phone.syncService.signedOut()
  expect(await onDisk()).toContain('Gate code 1234')
  phone.heldBy('helper')
  phone.network(good)
  await phone.syncService.send()
  expect(kept()?.job.wayIn).toBeUndefined()
  await expect(phone.open(PATH)).rejects.toThrow()
  expect(await phone.open('/outbox')).not.toContain('Fairweather')
  phone.heldBy('beekeeper')
  await phone.syncService.send()
  expect(kept()?.job.wayIn).toBe('Gate code 1234')
})

test('Find looks through the sheets that the phone keeps, sent or not, and shows them to no helper', async () => {
  const [name = ''] = (READY.job.name ?? '').split(' ')
  expect(name).not.toBe('')
  const find = (typed: string) => phone.open(`/find?q=${encodeURIComponent(typed)}`)
  const found = await find(name)
  expect(found).toContain(PATH)
  expect(found).toContain('removal sheets')

  const called = await phone.post('/removals/new', { name: 'Casimir Underhill', phone: '555 0142' })
  expect(called.status, called.html).toBe(303)
  expect(await find('underhill')).toContain('Casimir Underhill')

  phone.network(good)
  phone.heldBy('helper')
  await phone.syncService.send()
  for (const typed of [name, 'underhill']) expect(await find(typed)).toContain('Nothing fits')
})
