/** When queens mate is asked at set-up, shown on the protocol, and the weather said where the lid comes off. */
import { beforeEach, describe, expect, test } from 'vitest'
import { newToken } from '../../../src/people/tokens.ts'
import { hemisphereOf, stretchWords } from '../../../src/words/index.ts'
import { day, intake, put, words } from '../../support/hard-yard.ts'
import { PASSPHRASE } from '../../support/people.ts'
import { type TestYard, testYard } from '../../support/yard-app.ts'
import { wordsOf, yardOn } from '../../support/yard-on.ts'

let yard: TestYard
const token = newToken()
const filled = { token, name: 'Odalys', passphrase: PASSPHRASE, again: PASSPHRASE }
beforeEach(() => {
  yard = testYard({ deps: { setUpToken: token } })
})
const chosen = () => yard.services.store.settings.get('protocol')

describe('set-up', () => {
  test('suggests months by climate, for the half of the world of the time zone', async () => {
    yard.services.store.settings.set('timeZone', 'Europe/Dublin')
    const north = wordsOf(await (await yard.ask(null, '/set-up')).text())
    expect(north).toContain('In which months do queens mate where you are?')
    expect(north).toContain('Temperate May to Aug')
    yard.services.store.settings.set('timeZone', 'Australia/Hobart')
    const south = wordsOf(await (await yard.ask(null, '/set-up')).text())
    expect(south).toContain('Temperate Nov to Feb')
  })

  test('keeps the months of a climate, a milder threshold far from them, and whom to call', async () => {
    yard.services.store.settings.set('timeZone', 'Europe/Dublin')
    const inspector = 'Perpetua Lindqvist, (555) 010-4477'
    expect((await yard.post(null, '/set-up', { ...filled, climate: 'temperate', inspector })).status).toBe(
      303,
    )
    expect(chosen().matingMonths).toEqual(['5', '6', '7', '8'])
    // Common practice: 1 to 2 per 100 where no brood is reared.
    expect(chosen().miteThresholdByMonth).toEqual({ '1': 2, '2': 2, '3': 2, '10': 2, '11': 2, '12': 2 })
    expect(yard.services.store.settings.get('inspector')).toBe(inspector)
    expect(yard.services.store.protocols.changes()[0]).toMatchObject({
      changedBy: 'Odalys',
      reason: 'Said at set-up',
    })
    expect(yard.services.store.protocols.recomputing()).toBeNull()
  })

  test('takes months that were tapped before a climate; nothing said, or all the year, rules nothing out', async () => {
    await yard.post(null, '/set-up', { ...filled, climate: 'cold', matingMonths: '4' })
    expect(chosen().matingMonths).toEqual(['4'])
    yard = testYard({ deps: { setUpToken: token } })
    await yard.post(null, '/set-up', { ...filled, climate: 'tropical' })
    expect(chosen()).toEqual({})
    yard = testYard({ deps: { setUpToken: token } })
    await yard.post(null, '/set-up', { ...filled, climate: 'lunar', matingMonths: '13' })
    expect(chosen()).toEqual({})
  })

  test('loses nothing that was said when the form comes back', async () => {
    const wrong = await yard.post(null, '/set-up', {
      ...filled,
      again: 'x',
      climate: 'warm',
      inspector: 'Ada',
    })
    const html = await wrong.text()
    expect(html).toMatch(/name="climate" value="warm" checked/)
    expect(html).toContain('value="Ada"')
  })
})

describe('the season on other pages', () => {
  test('the protocol shows the months and what is suggested', async () => {
    const own = await yardOn(day(0))
    own.store.settings.set('protocol', { matingMonths: ['5', '6'] })
    const page = await own.get('/protocol')
    expect(page.text).toMatch(/name="matingMonths" value="5" checked/)
    expect(wordsOf(page.text)).toContain(
      'Suggested for your time zone: cold, short summers Jun to Aug; temperate May to Aug',
    )
    expect(wordsOf(page.text)).toContain('Far from the months in which queens mate, 2 is usual.')
  })

  test('how warm it must be is said where the lid comes off, and not where it stays on', async () => {
    const own = await yardOn(day(6))
    put(own, intake('W-12'), intake('C-1', { queen: 'caged' }))
    // D. Caron: 70 °F for a full look, 60 °F for a short one.
    for (const path of ['/colony/W-12', '/colony/W-12/visit', '/round/box/W-12?yard='])
      expect(await words(own, path), path).toContain('Full look from 70 °F on; a short one from 60 °F.')
    own.setDay(day(1))
    expect(await words(own, '/colony/C-1')).not.toContain('Full look from')
  })
})

test.each([
  ['Europe/Dublin', 'north'],
  ['America/Phoenix', 'north'],
  ['Australia/Brisbane', 'south'],
  ['America/Argentina/Cordoba', 'south'],
  ['Africa/Johannesburg', 'south'],
  ['UTC', 'north'],
] as const)('%s lies in the %s', (zone, half) => {
  expect(hemisphereOf(zone)).toBe(half)
})

test.each([
  [['5', '6', '7', '8'], 'May to Aug'],
  [['1', '2', '11', '12'], 'Nov to Feb'],
  [['4'], 'Apr'],
  [['3', '4', '9'], 'Mar, Apr, Sep'],
  [[], 'none'],
] as const)('%s is said as %s', (months, said) => {
  expect(stretchWords(months)).toBe(said)
})
