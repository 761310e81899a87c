/** What a page says of a button that was refused: what else was typed is saved, and what is asked is what is missing. Invented. */
import { beforeAll, beforeEach, expect, test } from 'vitest'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'
import { emptied, oneSheet } from './one-sheet.ts'
import { DAY, goAt, READY } from './ready.ts'

let yard: Yard
const { sheet, saved, save, post, words } = oneSheet(() => yard, '019e0000-0000-7000-8000-000000000071')
const GO: Sheet['decision'] = goAt('11:00')

beforeAll(async () => {
  yard = await yardOn(DAY)
})
beforeEach(() => emptied(yard))

test('a “Go” that is refused leaves its ticks saved, and the page says so', async () => {
  saved({ ...READY, check: { ...READY.check, done: [] } })
  const answer = await save('check', { is: 'go', hottestC: '78', done: ['sting-plan'] })
  expect(answer.status).toBe(422)
  expect(wordsOf(answer.text)).toContain('Saved, all but the decision')
  expect(answer.text).not.toContain('Nothing was saved')
  expect(sheet().check.done).toContain('sting-plan')
})

test('an opening that is refused keeps what else was typed, and the page says so', async () => {
  saved(READY)
  const answer = await save('work', { now: 'openedAt', outdoorC: '76', water: 'yes', note: '' })
  expect(answer.status).toBe(422)
  expect(wordsOf(answer.text)).toContain('Saved, all but the opening')
  expect(sheet().work).toMatchObject({ water: true })
})

test('a form with a slip in it still says that nothing was saved', async () => {
  saved(READY)
  expect(wordsOf((await save('check', { is: 'go', hottestC: 'warm' })).text)).toContain(
    'Nothing was saved yet',
  )
})

test('opened by hand under a “go” with no thermometer read: that is what is asked', async () => {
  saved({ ...READY, decision: GO })
  const answer = await post('work', { on: DAY, openedAt: '11:40' })
  expect(answer.status).toBe(422)
  const said = wordsOf(answer.text)
  expect(said).toContain('Why it was begun is not said: this was to be met first. How hot is it now?')
  expect(said).toContain('Begun before that was met: why?')
  expect(said).not.toContain('no “go” stood')
  expect((await post('work', { on: DAY, openedAt: '11:40', outdoorC: '76', water: 'yes' })).status).toBe(303)
  expect(sheet().work.withoutGo).toBeUndefined()
})

test('“before it fell” of a box that was shut after it is not taken, and why is said', async () => {
  const fell = { by: 'Bram', on: DAY, at: '11:20' }
  const work = { on: DAY, openedAt: '11:05', underGo: { by: 'Ines', on: DAY, at: '11:05' } }
  saved({ ...READY, decision: { ...GO, fell } as Sheet['decision'], work })
  const answer = await post('work', { ...work, underGo: [], boxedAt: '11:40', 'withoutGo.why': 'that-day' })
  expect(answer.status).toBe(422)
  expect(wordsOf(answer.text)).toContain('boxed at 11:40, and the “go” fell at 11:20')
})

test('too hot once it is open: the list does not say that nothing is unmet', async () => {
  const work = {
    on: DAY,
    openedAt: '11:05',
    outdoorC: 36,
    water: true,
    underGo: { by: 'Ines', on: DAY, at: '11:05' },
  }
  saved({ ...READY, decision: GO, work })
  const said = await words()
  expect(said).toContain('over the limit')
  expect(said).not.toContain('..')
  expect(said).not.toContain('Nothing on this list is unmet')
})

test('a page that somebody else left open is not tapped by whoever is signed in now', async () => {
  saved({ ...READY, check: { ...READY.check, done: [] } })
  const answer = await save('check', { shownTo: 'Bram', is: 'go', done: ['sting-plan'], wires: 'near' })
  expect(answer.status).toBe(422)
  expect(wordsOf(answer.text)).toContain('This page was open for Bram: read it, and tap what is so now.')
  expect(sheet().check.done).toEqual([])
  expect(sheet().decision).toBeUndefined()
  // What it found stays all the same.
  expect(sheet().site.nearWires).toBe(true)
  expect((await save('check', { wires: 'near' })).status).toBe(303)
})

test('a forecast that was typed into a page of yesterday is not of today', async () => {
  const { hours: _h, on: _o, ...check } = READY.check
  saved({ ...READY, check: { ...check, done: [] } })
  const yesterday = '2026-06-11'
  const answer = await save('check', { shownOn: yesterday, shownAt: '11:00', is: 'go', hottestC: '66' })
  expect(answer.status).toBe(422)
  expect(sheet().check.hottestC).toBeUndefined()
  expect(wordsOf(answer.text)).toContain('Not yet: outdoor heat under the limit')
})

test('opened at an hour before its “go”: that is what is said, and the “go” is still one', async () => {
  saved({ ...READY, decision: GO })
  const early = { on: DAY, openedAt: '10:00', outdoorC: '76', water: 'yes' }
  const answer = await post('work', early)
  expect(answer.status).toBe(422)
  expect(wordsOf(answer.text)).toContain('opened at 10:00, and the “go” is of 11:00')
})

test('decided anew after it was begun without a “go”, the head does not say that it fell', async () => {
  const withoutGo = { why: 'could-not-wait' as const, by: 'Ines', on: DAY, at: '10:00', unmet: [] }
  saved({ ...READY, decision: GO, work: { on: DAY, openedAt: '10:00', withoutGo } })
  const said = await words()
  expect(said).toContain('Begun without a “go”')
  expect(said).not.toContain('It was go')
})

test('another telephone asks nothing of who was about days ago: they stay on the sheet, and are asked for still', async () => {
  const before = { address: '4 Invented Row', on: '2026-06-02' }
  const site = {
    ...READY.site,
    bystanders: ['allergic' as const],
    lookedAt: { ...READY.site.lookedAt, bystanders: before },
  }
  saved({ ...READY, site })
  expect((await save('job', { phone: '555 0111' })).status).toBe(303)
  expect(sheet().job.phone).toBe('555 0111')
  expect(sheet().site.bystanders).toEqual(['allergic'])
  expect(sheet().site.lookedAt?.bystanders?.on, 'nobody was asked today').toBe('2026-06-02')
  expect(await words()).toContain('Not yet: asked who is about and who is allergic')
  // Whoever is asked today, and is not there any more, goes off with a word.
  expect((await save('job', { bystanders: 'none' })).status).toBe(422)
})
