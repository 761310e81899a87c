/** What is unmet is one list, with who decides, above the act; the price is asked with the site; and what is typed wrongly is said of its field. Invented. */
import { beforeEach, describe, expect, test } from 'vitest'
import { wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'
import { aCall, CALL, CALLED_ON, SITE } from './a-call.ts'

let yard: Yard
const { call, fill, sheetOf } = aCall(() => yard)
beforeEach(async () => {
  yard = await yardOn(CALLED_ON)
  yard.store.settings.set('yardName', 'Quarry yard')
})
const wordsAt = async (path: string): Promise<string> => wordsOf((await yard.get(path)).text)

test('is one list on the sheet, with who decides; and named in the list of jobs', async () => {
  const path = await call()
  await fill(path, 'site', { ...SITE, hazards: 'asbestos' })
  for (const page of [path, `${path}/check`, `${path}/site`]) {
    const words = await wordsAt(page)
    expect(words, page).toContain('Stop. Not yet: ')
    expect(words, page).toContain('Asbestos suspected')
    expect(words, page).toContain('Who decides: a licensed trade, and local codes.')
    expect(words, page).not.toMatch(/\bsafe\b/i)
  }
  expect(await wordsAt('/removals')).toMatch(
    /Stop\. Not yet: asbestos tested, and none\. \d+ not filled in yet\./,
  )
})

test('the cautions stand before the act, not under the form', async () => {
  const path = await call()
  await fill(path, 'site', SITE)
  for (const part of ['check', 'work']) {
    const { text } = await yard.get(`${path}/${part}`)
    expect(text.indexOf('Check first'), part).toBeGreaterThan(0)
    expect(text.indexOf('Check first'), part).toBeLessThan(text.indexOf('id="entry-form"'))
  }
  expect(await wordsAt(`${path}/print?what=job`)).toContain('Check first')
})

test('local codes and licensed practice are said once', async () => {
  const path = await call()
  await fill(path, 'site', SITE)
  const words = await wordsAt(`${path}/check`)
  expect(words.match(/Local codes and licensed practice/g)).toHaveLength(1)
})

test('the price is asked with the site, and what the agreement says besides stays', async () => {
  const path = await call()
  expect((await yard.get(path)).text).toContain('name="hourly"')
  const answer = await yard.post(`${path}/site`, {
    ...SITE,
    version: '1',
    hourly: '95',
    hours: '4',
    next: 'sign',
  })
  expect(answer.to).toBe(`${path}/sign`)
  expect(sheetOf(path)?.agreement).toEqual({ pricing: 'hourly', hourly: 95, hours: 4 })
  // Once it is named it is changed in its own part.
  expect((await yard.get(`${path}/site`)).text).not.toContain('name="hourly"')
  await yard.post(`${path}/site`, { ...SITE, version: '2', hourly: '5' })
  expect(sheetOf(path)?.agreement.hourly).toBe(95)
  const other = await call()
  const both = await yard.post(`${other}/site`, { ...SITE, version: '1', hourly: 'much' })
  expect(both.status).toBe(422)
  expect(wordsOf(both.text)).toContain('Price of an hour must be a number')
})

describe('bad input', () => {
  test('a sheet needs something to be found by', async () => {
    const answer = await yard.post('/removals/new', { told: 'Bees.', version: '0' })
    expect(answer.status).toBe(422)
    expect(wordsOf(answer.text)).toContain('type a name, a telephone number or an address')
    expect(answer.text).toContain('Bees.')
  })
  test('every field says what it wants, and what was typed is kept', async () => {
    const path = await call()
    for (const [part, fields, says] of [
      ['job', { plannedOn: '2026-02-30' }, 'must be a real date'],
      ['job', { ...CALL, heightM: 'high' }, 'must be a number'],
      ['job', { ...CALL, heightM: '9999' }, 'must be at most'],
      ['job', { ...CALL, access: 'wings' }, 'must be one of'],
      ['site', { behind: ['wires'] }, 'must be one of'],
      ['agreement', { hourly: '-4' }, 'must be at least 0'],
      ['check', { 'hours.0.at': '07:00', 'hours.0.c': 'warm' }, 'must be a number'],
      ['check', { 'hours.0.at': '07:00', 'hours.0.c': '500' }, 'is it the right unit'],
      ['check', { cutMm: 'deep' }, 'must be a number'],
      ['work', { 'bees.frames': '0.3' }, 'quarter frames'],
      ['work', { boxedAt: '25:00' }, 'must be a time'],
      ['work', { note: 'x'.repeat(1600) }, 'must be at most 1500'],
    ] as const) {
      const answer = await yard.post(`${path}/${part}`, { ...fields, version: '1' } as Record<string, string>)
      expect(answer.status, JSON.stringify(fields)).toBe(422)
      expect(wordsOf(answer.text)).toContain(says)
    }
    expect(yard.store.removals.get(path.split('/').at(-1) ?? '')?.last.version).toBe(1)
  })
  test('hostile text stays text', async () => {
    const path = await call({
      ...CALL,
      name: '<img src=x onerror=alert(1)>',
      told: '</textarea><script>alert(1)</script>',
    })
    for (const page of [path, `${path}/job`, `${path}/sign`, `${path}/print?what=job`, '/removals'])
      expect((await yard.get(page)).text).not.toMatch(/<img src=x|<script>alert/)
  })
  test('an unknown sheet is a 404', async () => {
    for (const end of ['', '/site', '/sign', '/check', '/print', '/call-back', '/intake', '/erase'])
      expect((await yard.get(`/removals/019707a0-0000-7000-8000-000000000001${end}`)).status).toBe(404)
  })
})
