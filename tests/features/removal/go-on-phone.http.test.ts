/** A “go” on a phone without signal: of what the phone knows, asked like on the server, and it falls over what others found. Invented people. */
import { beforeEach, expect, test } from 'vitest'
import { TICKED } from '../../../src/features/removal/item.ts'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import type { Phone } from '../../support/phone.ts'
import { type TestYard, testYard } from '../../support/yard-app.ts'
import { phoneAtNoon, sheetIn, sheetOn } from './one-phone.ts'
import { but, CALLED, DAY, goAt, READY, SITED, TAPPED } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000001'
const PATH = `/removals/${ID}`
const OTHER = ID.replace(/1$/, '2')
const NEXT = '2026-06-13'
const CALL = { ...CALLED, heightM: '', wayIn: 'Gate code 1234' }
let yard: TestYard
let phone: Phone
const { kept, sync, page } = sheetIn(() => yard, ID)
const { form, send, tap, decide, words } = sheetOn(() => phone, ID)
/** With the hour of its ticks, as every form saves them: that of the “go”. */
const post: typeof sync = (s, how) =>
  sync(s.decision?.at === undefined ? s : { ...s, check: { tickedAt: s.decision.at, ...s.check } }, how)
/** A sheet that comes to the server, and the phone hears of it. */
const heard = async (...sent: Parameters<typeof sync>) => {
  await post(...sent)
  await phone.signal()
}
const GONE: Sheet = { ...READY, decision: goAt('11:00', 'Bram') }
const gas = but({ site: { ...READY.site, behind: ['gas', 'insulation'] } })
beforeEach(async () => {
  yard = testYard({ day: DAY })
  await post(READY)
  phone = await phoneAtNoon(yard)
})

test('says of when it knows; another sheet of the house that it keeps holds the next one', async () => {
  await heard(GONE, { base: 1 })
  expect(await phone.open(PATH)).toContain('Go, as this phone knows it')
  const theirs = but({ site: { ...READY.site, behind: ['gas'] } })
  await heard({ ...theirs, job: { ...READY.job, name: 'Edgar Quill' } }, { of: OTHER })
  const html = await phone.open(PATH)
  expect(html).toContain('Another sheet of this house')
  expect(html).not.toContain('Go, as this phone knows it')
  expect(html).toContain('name="again.not-there:gas:')
})

test('where nothing was heard today it is none, but on what somebody read aloud, and when', async () => {
  const go = (said: Record<string, string>) => decide({ shownOn: NEXT, on: NEXT, hottestC: '70', ...said })
  await post({ ...READY, job: { ...READY.job, plannedOn: NEXT } }, { base: 1 })
  await yard.session('operator')
  await phone.signal()
  phone.at(`${NEXT}T08:00:00Z`)
  expect(await words()).toContain('Heard nothing since Fri 12 Jun, 12:00.')
  const barred = await go({ reason: 'The bees must go today.' })
  expect(barred.status).toBe(422)
  expect(barred.text).toContain(
    'Who read you the list is not said: this phone has heard nothing since Fri 12 Jun, 12:00',
  )
  for (const reason of ['ok 07:50', 'Bram, 07:50', 'Odalys', 'Odalys read it, 07:50'])
    expect((await go({ reason })).status, reason).toBe(422)
  expect((await go({ 'heard.by': 'Odalys', 'heard.at': '07:50', 'heard.news': 'none' })).status).toBe(303)
  expect(await words()).toContain(
    'the phone had last heard at Fri 12 Jun, 12:00; Odalys read the list at 07:50: nothing new',
  )
})

test('another sheet of the house of next week holds it, in words and with its refusal', async () => {
  const job = {
    name: 'Edgar Quill',
    address: '4a Inventd Rd',
    plannedOn: '2026-06-20',
    told: 'Grandma is allergic.',
  }
  const refused = { ...goAt('08:00', 'Bram'), is: 'refuse' as const, reason: 'Smell of gas in the hall' }
  await heard({ ...but({ job }), decision: refused }, { of: OTHER })
  const html = await phone.open(PATH)
  expect(html).toContain('Smell of gas in the hall')
  expect(html).toContain('name="again.not-there:gas:')
  expect(html).toContain('name="again.not-there:allergic:')
  expect((await decide({ cutMm: '7/8' })).status).toBe(422)
  expect(kept()?.decision).toBeUndefined()
})

test('of this morning it has run out on the phone’s own page too', async () => {
  await heard({ ...READY, decision: goAt('08:00', 'Bram') }, { base: 1 })
  const html = await phone.open(PATH)
  expect(html).toContain('The go of 08:00 has run out: look again before you begin')
  expect(html).not.toContain('Go, as this phone knows it')
  expect(html).not.toContain('Nothing on this list is unmet')
  expect(html).toContain('name="is" value="go"')
})

test('what somebody found meanwhile is on the phone’s own page, though the two clash, and its “go” falls', async () => {
  await heard(GONE, { base: 1 })
  expect(await phone.open(PATH)).toContain('Go, as this phone knows it')
  expect((await send('job', { version: '2', ...CALL })).status).toBe(303)
  const front = { ...READY.job, wayIn: 'Gate at the front' }
  await heard({ ...GONE, site: gas.site, job: front }, { base: 2, as: 'operator' })
  expect(kept()?.job.wayIn, 'the two clash').toBe('Gate at the front. Gate code 1234')
  const html = await phone.open(PATH)
  expect(html).not.toContain('Go, as this phone knows it')
  expect(html).toContain('No go any more')
  expect(html.toLowerCase()).toContain('gas pipe')
})

test('over gas it is refused without signal too', async () => {
  await heard(gas, { base: 1 })
  const answer = await send('check', { version: '2', hottestC: '70', cutMm: '7/8', is: 'go' })
  expect(answer.status).toBe(422)
  expect(answer.text).toContain('cannot be “go”')
})

test('times by hand without one are asked why without signal too, and sent with it', async () => {
  const times = { version: '1', on: DAY, openedAt: '09:00', boxedAt: '11:00' }
  const asked = await send('work', times)
  expect(asked.status).toBe(422)
  expect(asked.text).toContain('name="withoutGo.why"')
  expect((await send('work', { ...times, 'withoutGo.why': 'open-already' })).status).toBe(303)
  await phone.signal()
  expect(kept()?.work.withoutGo).toMatchObject({ why: 'open-already', by: 'Bram', on: DAY })
})

test('another wall without signal: what was looked for at the first one is asked again', async () => {
  const site = { ...SITED, version: '1', where: 'the north wall', behind: 'insulation' }
  expect((await send('site', site)).status).toBe(303)
  const bare = { version: '2', hottestC: '70', cutMm: '7/8', vacuum: 'bee-vacuum', is: 'go' }
  const answer = await send('check', bare)
  expect(answer.status).toBe(422)
  expect(answer.text).toContain('nobody has looked since')
})

test('a form that lay open while the wall was changed says nothing of the new one, without signal', async () => {
  // Something of the phone's own is saved, so that the form's version is one of the phone's.
  await send('job', { version: '1', ...CALL })
  const { version } = await form('check')
  const moved = { ...SITED, where: 'the north gable', behind: 'insulation', 'gone.climb': 'mistake' }
  expect((await tap('site', moved)).status).toBe(303)
  const answer = await send('check', { version: version ?? '', shownOn: DAY, ...TAPPED, hottestC: '70' })
  expect(answer.status).toBe(422)
  expect(answer.text).toContain('changed since this form was opened')
})

test('one whose ground is gone, and work that was begun under it, are sent all the same', async () => {
  expect((await decide({ hottestC: '70', done: [...TICKED] })).status).toBe(303)
  const open = { outdoorC: '70', now: 'openedAt', water: 'yes' }
  expect((await tap('work', open)).status).toBe(303)
  expect((await tap('site', { ...SITED, behind: 'gas', 'gone.insulation': 'mistake' })).status).toBe(303)
  await phone.signal()
  expect(await phone.syncService.state()).toMatchObject({ waiting: 0, refused: 0 })
  expect(kept()?.site.behind).toContain('gas')
  expect(kept()?.decision?.fell).toBeDefined()
  expect(kept()?.work.openedAt).toBeDefined()
  expect(await page()).not.toContain('Begun without a “go”')
})
