/**
 * Sheets that a phone wrote without signal, and what anybody could send by hand: taken by the same rules as the pages.
 * Invented people.
 */
import { beforeEach, describe, expect, test } from 'vitest'
import type { Sheet } from '../../src/records/removal-sheet.ts'
import { type TestYard, testYard } from '../support/yard-app.ts'
import { down, good, type Phone, phoneIn } from '../web/phone.ts'
import { but, DAY, READY } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000001'

let yard: TestYard
beforeEach(() => {
  yard = testYard({ day: DAY })
  yard.services.store.settings.set('yardName', 'Quarry yard')
})

const post = async (sheet: Sheet, { base = 0, over = false, as = 'beekeeper' as const, id = ID } = {}) => {
  const answer = await yard.ask(as, '/removals/sync', {
    method: 'POST',
    headers: { 'Content-Type': 'application/json' },
    body: JSON.stringify({ id, base, over, sheet }),
  })
  return { status: answer.status, text: await answer.text() }
}
const kept = (): Sheet | undefined => yard.services.store.removals.get(ID)?.last.sheet
const page = async (): Promise<string> => (await yard.ask('beekeeper', `/removals/${ID}`)).text()

const signature = { how: 'paper', name: 'Ottoline Fairweather', on: DAY, terms: 'As agreed.' } as const
const go: Sheet['decision'] = { is: 'go', by: 'Bram', on: DAY, unmet: [] }
const cleared = (s: Sheet, who: string): Sheet => ({
  ...s,
  check: {
    ...s.check,
    clearances: [{ hazard: 'gas', who, licence: 'GF 12', on: DAY, knew: ['gas'] }],
  },
})
const gas = but({ site: { ...READY.site, behind: ['gas'] } })

describe('nothing gets in by the queue or by hand that no form would take', () => {
  test('a “go” with nothing unmet is taken, again as often as it comes', async () => {
    expect((await post({ ...READY, decision: go })).status).toBe(200)
    expect((await post({ ...READY, decision: go })).text).toContain('"version":1')
    expect(kept()?.decision?.is).toBe('go')
  })

  test.each<[string, Sheet]>([
    ['gas that no trade has cleared', gas],
    ['gas that the crew cleared itself', cleared(gas, 'bram')],
    ['a wall nobody looked into', but({ site: { type: 'wall', access: 'ground', bystanders: [] } })],
    ['38 °C', but({ check: { ...READY.check, hours: [{ at: '09:00', c: 38 }] } })],
    ['an empty sheet', { job: {}, site: {}, agreement: {}, check: {}, work: {} }],
  ])('no “go” over %s', async (_, sheet) => {
    const answer = await post({ ...sheet, decision: go })
    expect(answer.status).toBe(422)
    expect(kept()).toBeUndefined()
  })

  test('no “go” for a day that has not come, and none signed by one person as two', async () => {
    expect((await post({ ...READY, decision: { ...go, on: '2026-06-13' } })).text).toContain('has not come')
    const alone = but({ check: { ...READY.check, done: READY.check.done?.filter((t) => t !== 'not-alone') } })
    const of = 'Somebody within call all the time, with a telephone that works here.'
    const second = { item: 'not-alone', of, by: 'Bram', reason: 'It is a very small job.', on: DAY }
    const asTwo = { ...alone, check: { ...alone.check, seconds: [second] }, decision: go }
    expect((await post(asTwo)).text).toContain('must be a second person')
    const other = { ...asTwo, check: { ...asTwo.check, seconds: [{ ...second, by: 'Teuila' }] } }
    expect((await post(other)).status).toBe(200)
  })

  test('nothing is ticked for a day that has not come', async () => {
    const answer = await post({ ...READY, check: { ...READY.check, doneOn: '2026-06-13' } })
    expect(answer.text).toContain('of a day that has not come')
  })

  test('nobody signs for gas in the place of its trade', async () => {
    const second = { item: 'trade-gas', of: 'x', by: 'Teuila', reason: 'I know this pipe well.', on: DAY }
    const answer = await post({ ...gas, check: { ...gas.check, seconds: [second] } })
    expect(answer.text).toContain('no second person can sign for that')
  })

  test('nothing is signed blank', async () => {
    const blank = but({ job: { name: 'Ottoline' }, agreement: { signature } })
    expect((await post(blank)).text).toContain('nothing is signed blank')
    const lines = but({
      agreement: { ...READY.agreement, signature: { ...signature, terms: 'At ________.' } },
    })
    expect((await post(lines)).text).toContain('nothing is signed blank')
  })

  test('a helper is not let in, and learns nothing', async () => {
    const answer = await yard.ask('helper', '/removals/sync', { method: 'POST', body: '{}' })
    expect(answer.status).toBe(403)
  })
})

describe('two people, one sheet', () => {
  test('what one found takes the “go” of the other away, and the hazard stays', async () => {
    await post(READY)
    await post({ ...READY, site: gas.site }, { base: 1, as: 'beekeeper' })
    const answer = await post({ ...READY, decision: go }, { base: 1, as: 'beekeeper' })
    expect(answer.status).toBe(200)
    expect(kept()?.site.behind).toEqual(['gas'])
    const words = await page()
    expect(words).toContain('no longer stands')
    expect(words).toContain('Gas pipe')
  })

  test('work that was begun without a “go” is kept, and said', async () => {
    await post({ ...READY, work: { on: DAY, openedAt: '09:00', boxedAt: '11:00' } })
    expect(await page()).toContain('Begun without a “go”')
    await post(
      { ...READY, decision: go, work: { on: DAY, openedAt: '09:00', boxedAt: '11:00' } },
      { base: 1 },
    )
    expect(await page()).not.toContain('Begun without a “go”')
  })
})

describe('on the phone', () => {
  let phone: Phone
  beforeEach(async () => {
    await post(READY)
    phone = phoneIn(yard, 'beekeeper')
    phone.at(`${DAY}T12:00:00Z`)
    expect(await phone.syncService.send()).toBe('done')
  })
  const onDisk = async (): Promise<string> => JSON.stringify(await (await phone.database()).getAll('sheets'))

  test('the jobs of today and tomorrow are there without signal; others are not', async () => {
    await post(but({ job: { ...READY.job, plannedOn: '2026-06-13' } }), { id: ID.replace(/1$/, '2') })
    await post(but({ job: { ...READY.job, plannedOn: '2026-06-20' } }), { id: ID.replace(/1$/, '3') })
    await phone.syncService.send()
    phone.network(down)
    expect(await phone.open(`/removals/${ID}`)).toContain('Ottoline Fairweather')
    expect(await phone.open(`/removals/${ID.replace(/1$/, '2')}`)).toContain('Ottoline Fairweather')
    await expect(phone.open(`/removals/${ID.replace(/1$/, '3')}`)).rejects.toThrow('the phone has no page')
  })

  test('what is written waits, survives, and is sent once there is signal', async () => {
    phone.network(down)
    expect((await phone.post(`/removals/${ID}/job`, { version: '1', ...CALL })).status).toBe(303)
    await phone.syncService.send()
    expect(kept()?.job.wayIn).toBeUndefined()
    expect((await phone.syncService.state()).waiting).toBe(1)
    phone.network(good)
    expect(await phone.syncService.send()).toBe('done')
    expect(kept()?.job.wayIn).toBe('Gate code 1234')
    expect((await phone.syncService.state()).waiting).toBe(0)
  })

  test('“go” over gas is refused without signal too', async () => {
    await post(gas, { base: 1 })
    await phone.syncService.send()
    phone.network(down)
    const version = '2'
    const answer = await phone.post(`/removals/${ID}/check`, {
      version,
      hottestC: '70',
      cutMm: '7/8',
      is: 'go',
    })
    expect(answer.status).toBe(422)
    expect(answer.html).toContain('cannot be “go”')
  })

  test('names leave the phone at sign-out; what waits stays for its owner', async () => {
    expect(await onDisk()).toContain('Fairweather')
    await phone.syncService.signedOut()
    expect(await onDisk()).not.toContain('Fairweather')
    phone.heldBy('beekeeper')
    await phone.syncService.send()
    phone.network(down)
    await phone.post(`/removals/${ID}/job`, { version: '1', ...CALL })
    await phone.syncService.signedOut()
    expect(await onDisk()).toContain('Gate code 1234')
    phone.heldBy('helper')
    phone.network(good)
    await phone.syncService.send()
    expect(kept()?.job.wayIn).toBeUndefined()
    await expect(phone.open(`/removals/${ID}`)).rejects.toThrow()
    expect(await phone.open('/outbox')).not.toContain('Fairweather')
    phone.heldBy('beekeeper')
    await phone.syncService.send()
    expect(kept()?.job.wayIn).toBe('Gate code 1234')
  })
})

const CALL = {
  name: 'Ottoline Fairweather',
  address: '4 Invented Row',
  plannedOn: DAY,
  what: 'wall',
  access: 'ladder',
  sprayed: 'no',
  bystanders: 'none',
  wayIn: 'Gate code 1234',
}

describe('Find without signal', () => {
  test('looks through the sheets that the phone keeps, sent or not, and shows them to no helper', async () => {
    await post(READY)
    const phone = phoneIn(yard, 'beekeeper')
    phone.at(`${DAY}T12:00:00Z`)
    await phone.syncService.send()
    phone.network(down)
    const [name = ''] = (READY.job.name ?? '').split(' ')
    expect(name).not.toBe('')
    const found = await phone.open(`/find?q=${encodeURIComponent(name)}`)
    expect(found).toContain(`/removals/${ID}`)
    expect(found).toContain('removal sheets')

    const called = await phone.post('/removals/new', {
      name: 'Casimir Underhill',
      phone: '555 0142',
    })
    expect(called.status, called.html).toBe(303)
    expect(await phone.open('/find?q=underhill')).toContain('Casimir Underhill')

    phone.network(good)
    phone.heldBy('helper')
    await phone.syncService.send()
    for (const typed of [name, 'underhill'])
      expect(await phone.open(`/find?q=${encodeURIComponent(typed)}`)).toContain('Nothing fits')
  })
})
