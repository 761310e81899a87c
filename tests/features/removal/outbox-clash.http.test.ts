/** What is offered where two people’s words crossed: only what a tap can do. Bram holds the phone; Odalys saved first. Invented. */
import { beforeEach, describe, expect, test } from 'vitest'
import { placeOf } from '../../../src/features/removal/place.ts'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { type Phone, phoneIn, wordsOf } from '../../support/phone.ts'
import { type TestYard, testYard } from '../../support/yard-app.ts'
import { DAY, READY } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000044'
const PLANNED: Sheet = { ...READY, job: { ...READY.job, plannedOn: DAY } }
let yard: TestYard
let phone: Phone
const removals = () => yard.services.store.removals
const last = (): Sheet => removals().get(ID)?.last.sheet ?? READY
const saved = (s: Sheet): void => {
  const stamp = { savedAt: `${DAY}T08:00:00.000Z`, savedBy: 'Odalys' }
  expect(removals().save(ID, removals().get(ID)?.last.version ?? 0, s, stamp).ok).toBe(true)
}
const signal = () => phone.signal()
const outbox = async () => wordsOf(await phone.open('/outbox'))
beforeEach(async () => {
  yard = testYard({ day: DAY })
  await yard.session('operator')
  await yard.session('beekeeper')
  saved(PLANNED)
  phone = phoneIn(yard, 'beekeeper')
  phone.at(`${DAY}T12:00:00Z`)
  await signal()
})

const but = (site: Partial<Sheet['site']>, job: Partial<Sheet['job']> = {}): Sheet => ({
  ...PLANNED,
  job: { ...PLANNED.job, ...job },
  site: { ...PLANNED.site, ...site },
})
const decided = (is: 'go' | 'refuse', by: string): Sheet => ({
  ...PLANNED,
  decision: {
    is,
    by,
    on: DAY,
    at: '11:50',
    unmet: [],
    ...(is === 'refuse' ? { reason: 'The truss is cracked through' } : {}),
    ...placeOf(PLANNED),
  },
})
const hidden = (page: string, name: string): string =>
  new RegExp(`name="${name}" value="([^"]*)"`).exec(page)?.[1] ?? ''
/** Written on the phone without signal, and sent after what Odalys saved. */
async function wrote(part: string, fields: Record<string, string>) {
  const page = await phone.open(`/removals/${ID}/${part}`)
  const seen = { version: hidden(page, 'version'), shownOn: DAY, shownAt: hidden(page, 'shownAt') }
  expect(await phone.post(`/removals/${ID}/${part}`, { ...seen, ...fields })).toMatchObject({ status: 303 })
}
const CALL = {
  name: 'Ottoline Fairweather',
  address: '4 Invented Row',
  plannedOn: DAY,
  what: 'wall',
  access: 'ladder',
  heightM: '13.123',
  sprayed: 'no',
  bystanders: 'none',
}
/** The second time the phone hears what stands in the book by then. */
const crossed = async (hers: Sheet) => {
  saved(hers)
  await signal()
  await signal()
}
/** Nothing is left to choose: it is out of the outbox, and said once what was made of it. */
const toldOnce = async (words: string) => {
  expect(await phone.syncService.state()).toMatchObject({ waiting: 0, refused: 0, told: 1, kills: [] })
  expect(wordsOf(await phone.open('/removals'))).toContain('1 put together with a colleague’s: read')
  const page = await outbox()
  expect(page).toContain('Ottoline Fairweather Odalys saved something else meanwhile')
  expect(page).toContain(words)
  expect(page).not.toMatch(/Let that stand|Put mine over theirs|Take mine out|Mend it|Not accepted/)
  expect(await outbox()).toContain('Nothing waits to be sent')
  expect(await outbox()).not.toContain(words)
}

describe('where a careful answer stays whatever is tapped, it leaves the outbox by itself and says so once', () => {
  test('a colleague’s', async () => {
    await wrote('job', { ...CALL, sprayed: 'unknown' })
    await crossed(but({ sprayed: 'yes' }))
    await toldOnce('Sprayed: theirs “Yes”, yours “Not known”. The more careful answer stays: “Yes”')
    expect(last().site.sprayed).toBe('yes')
  })
  test('one’s own', async () => {
    await wrote('job', { ...CALL, sprayed: 'yes' })
    await crossed(but({ sprayed: 'unknown' }))
    await toldOnce('The more careful answer stays: “Yes”')
    expect(last().site.sprayed).toBe('yes')
  })
  test('one’s own refusal over a colleague’s “go”', async () => {
    await wrote('check', { is: 'refuse', reason: 'The truss is cracked through', hottestC: '75' })
    await crossed(decided('go', 'Odalys'))
    await toldOnce('The more careful answer stays: Bram tapped “Refuse”')
    expect(last().decision).toMatchObject({ is: 'refuse', by: 'Bram' })
  })
})

test('what is said once is said to who wrote it, also where somebody else signs in before', async () => {
  await wrote('job', { ...CALL, told: 'Honey drips' })
  await crossed(but({}, { told: 'Meter beside it' }))
  await phone.handedTo('operator')
  expect(await phone.syncService.state()).toMatchObject({ told: 0 })
  expect(await outbox()).not.toContain('The words of both stay')
  await phone.handedTo('beekeeper')
  await toldOnce('The words of both stay')
})

test('a “go” that came beside it stands no more: it had not read the other one’s words', async () => {
  saved(but({}, { told: 'Meter beside it' }))
  const mine = decided('go', 'Bram')
  const answer = await yard.ask('beekeeper', '/removals/sync', {
    method: 'POST',
    headers: { 'Content-Type': 'application/json' },
    body: JSON.stringify({
      id: ID,
      base: 1,
      over: false,
      sheet: { ...mine, job: { ...mine.job, told: 'Honey drips' } },
    }),
  })
  expect(answer.status).toBe(200)
  expect(JSON.stringify(await answer.json())).toContain('The words of both stay')
  expect(last()).toMatchObject({
    job: { told: 'Meter beside it. Honey drips' },
    decision: { is: 'go', by: 'Bram', fell: { by: 'Odalys' } },
  })
})

test('words of both stay', async () => {
  await wrote('job', { ...CALL, told: 'Honey drips' })
  await crossed(but({}, { told: 'Meter beside it' }))
  await toldOnce('The words of both stay')
  expect(last().job.told).toBe('Meter beside it. Honey drips')
})

test('beside a careful answer, the one that is chosen is named', async () => {
  await wrote('job', { ...CALL, sprayed: 'unknown', phone: '555 0199' })
  await crossed(but({ sprayed: 'yes' }, { phone: '555 0100' }))
  expect(await outbox()).toContain('Take mine out: telephone')
  expect(await outbox()).toContain('Put mine over theirs')
  await phone.post(`/outbox/sheet/${ID}/over`, {})
  await signal()
  expect(last()).toMatchObject({ job: { phone: '555 0199' }, site: { sprayed: 'yes' } })
  expect(await phone.syncService.state()).toMatchObject({ waiting: 0, refused: 0 })
})

test('of two decisions the careless one is no careful answer: it is put over with a reason, or taken out', async () => {
  await wrote('check', { is: 'wait', reason: 'Rain until noon', hottestC: '75' })
  await crossed(decided('refuse', 'Odalys'))
  expect(await outbox()).toContain('Put mine over theirs')
  expect(await outbox()).not.toContain('Let that stand')
  await phone.post(`/outbox/sheet/${ID}/take-out`, {})
  await signal()
  expect(last().decision).toMatchObject({ is: 'refuse', by: 'Odalys' })
})

test('one’s own refusal that was answered meanwhile is not put back by taking it out', async () => {
  await wrote('check', { is: 'refuse', reason: 'The truss is cracked through', hottestC: '75' })
  await crossed(decided('go', 'Odalys'))
  const { decision } = decided('go', 'Odalys')
  const over = { by: 'Bram', on: DAY, at: last().decision?.at ?? '', reason: 'The truss is cracked through' }
  if (decision !== undefined)
    saved({ ...last(), decision: { ...decision, at: '12:00', reason: 'The truss is shored up now', over } })
  await signal()
  await phone.post(`/outbox/sheet/${ID}/take-out`, {})
  await signal()
  expect(last().decision).toMatchObject({ is: 'go', by: 'Odalys' })
})

describe('a page of the phone shows what is in the book, whatever waits on it', () => {
  const page = async (part = '') => wordsOf(await phone.open(`/removals/${ID}${part}`))
  const opened = (s: Sheet): Sheet => ({
    ...s,
    work: {
      on: DAY,
      openedAt: '11:55',
      outdoorC: 20,
      water: true,
      underGo: { by: 'Odalys', on: DAY, at: '11:55' },
    },
  })
  beforeEach(async () => {
    await wrote('job', { ...CALL, phone: '555 0199' })
  })

  test('that it is open, on whose “go”, and that it is boxed', async () => {
    const go = decided('go', 'Odalys')
    await crossed(opened({ ...go, job: { ...go.job, phone: '555 0100' } }))
    expect(await outbox()).toContain('Put mine over theirs')
    expect(await page()).toMatch(/Fairweather Go · 4 Invented Row/)
    expect(await page()).toContain('decided by Odalys')
    expect(await page()).not.toContain('Begun without a “go”')
    saved({ ...last(), work: { ...last().work, boxedAt: '11:58', queen: 'caged' } })
    await signal()
    expect(await page()).toContain('Bees are out')
  })

  test('a refusal, though nobody here decided anything: it is answered before “Go”', async () => {
    const refusal = decided('refuse', 'Odalys')
    await crossed({ ...refusal, job: { ...refusal.job, phone: '555 0100' } })
    expect(await page()).toContain('Refused')
    expect(await page()).toContain('The truss is cracked through')
  })

  test('of that, nothing is sent as one’s own', async () => {
    const go = decided('go', 'Odalys')
    await crossed(opened({ ...go, job: { ...go.job, phone: '555 0100' } }))
    await wrote('site', {
      where: 'left of the porch',
      surface: 'cedar',
      sheathingMm: '3/4',
      behind: 'insulation',
      hazards: 'none',
      old: 'no',
      temper: '3',
      africanized: 'no',
    })
    await signal()
    expect(last()).toMatchObject({ site: { temper: 3 }, work: { openedAt: '11:55' } })
    expect(last().work.withoutGo).toBeUndefined()
    expect(await outbox()).not.toMatch(/signed by somebody else|begun without/)
    await phone.post(`/outbox/sheet/${ID}/over`, {})
    await signal()
    expect(last()).toMatchObject({ job: { phone: '555 0199' }, decision: { by: 'Odalys' } })
    expect(await phone.syncService.state()).toMatchObject({ waiting: 0, refused: 0 })
  })

  test('what goes on with it here is judged as what goes on', async () => {
    const go = decided('go', 'Odalys')
    await crossed(opened({ ...go, job: { ...go.job, phone: '555 0100' } }))
    await wrote('work', { on: DAY, openedAt: '11:55', boxedAt: '11:59', queen: 'caged', outdoorC: '68' })
    await signal()
    expect(await outbox()).not.toMatch(/signed by somebody else|begun without/)
    expect(last().work).toMatchObject({ openedAt: '11:55', boxedAt: '11:59', queen: 'caged' })
    expect(last().work.withoutGo).toBeUndefined()
  })
})

test('what was found on a sheet that was erased meanwhile is named, for the yard does not have it', async () => {
  await wrote('job', { ...CALL, bystanders: 'allergic' })
  expect((await yard.post('operator', `/removals/${ID}/erase`, { sure: 'yes' })).status).toBe(303)
  expect(removals().get(ID)).toBeNull()
  await signal()
  expect(await phone.syncService.state()).toMatchObject({ refused: 1 })
  expect(await outbox()).toMatch(/Removal sheet: somebody allergic/i)
})
