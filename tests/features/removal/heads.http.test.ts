/** What head and list say of a job is so: no “Go” over heat that was saved, over gas found at work, or over another hour. Invented. */
import { beforeEach, describe, expect, test } from 'vitest'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { formIn, wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'
import { oneSheet } from './one-sheet.ts'
import { DAY, goAt, here, READY, swarmAt, TAPPED } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000019'
const PATH = `/removals/${ID}`
const NEXT = '2026-06-13'
let yard: Yard
const { last, sheet, post, words, formOf } = oneSheet(() => yard, ID, '08:00')
const saved = (s: Sheet): void => {
  const stamp = { savedAt: `${sheet().check.doneOn ?? DAY}T08:00:00.000Z`, savedBy: 'Ines' }
  expect(yard.store.removals.save(ID, last()?.version ?? 0, s, stamp).ok).toBe(true)
}
const work = (fields: Record<string, string | string[]>) =>
  post('work', { on: DAY, outdoorC: '75', water: 'yes', shownOn: DAY, ...fields })
const list = (): Promise<string> => words('/removals')

beforeEach(async () => {
  yard = await yardOn(DAY)
  yard.setDay(DAY, '08:00')
  saved({
    ...READY,
    check: { ...READY.check, tickedAt: '08:00' },
    decision: goAt('08:00'),
  })
})
const foundGas = async (): Promise<void> => {
  const form = await formOf('site')
  expect((await yard.post(`${PATH}/site`, { ...form, behind: ['gas', 'insulation'] })).status).toBe(303)
}

describe('heat over the limit that was saved and not opened in', () => {
  beforeEach(async () => {
    expect((await work({ outdoorC: '95' })).status).toBe(303)
  })

  test('takes the word “Go” from head, list of what is unmet, and list of jobs', async () => {
    for (const said of [await words(), await list()]) {
      expect(said).toContain('95 °F now, over the limit of 85 °F')
      expect(said).not.toContain('Nothing on this list is unmet')
      expect(said).not.toContain('with nothing on the list unmet')
    }
    expect((await yard.get('/removals')).text).not.toContain('<b>Go</b>')
    // It is asked right there.
    expect((await yard.get(PATH)).text).toContain('value="openedAt"')
  })

  test('and a cooler hour gives it back', async () => {
    expect((await work({ outdoorC: '80' })).status).toBe(303)
    expect(await words()).not.toContain('over the limit')
    expect((await yard.get('/removals')).text).toContain('<b>Go</b>')
  })
})

describe('gas found while it is open', () => {
  beforeEach(async () => {
    expect((await work({ now: 'openedAt' })).status).toBe(303)
    await foundGas()
  })

  test('the list says what the head says, and leads nowhere on', async () => {
    const { text } = await yard.get('/removals')
    expect(wordsOf(text)).toContain('No go any more')
    expect(text).not.toContain('<b>Go</b>')
    expect(text).not.toContain(`href="${PATH}/work#now"`)
  })

  test('nor once the queen is said', async () => {
    saved({ ...sheet(), work: { ...sheet().work, queen: 'caged' } })
    const { text } = await yard.get('/removals')
    expect(wordsOf(text)).toContain('No go any more')
    expect(wordsOf(text)).not.toContain('Bees are out')
    expect(text).not.toContain(`href="${PATH}/intake"`)
  })

  test('to stop and to leave is the big button, and asks nothing', async () => {
    const { text } = await yard.get(`${PATH}/work`)
    expect(text).toMatch(/button-do"[^>]*value="leftAt"[^>]*>Stopped, left now/)
    expect(text).not.toContain('value="boxedAt intake"')
    yard.setDay(DAY, '09:00')
    const form = formIn(text)
    expect((await yard.post(`${PATH}/work`, { ...form, now: 'leftAt' })).status).toBe(303)
    expect(sheet().work).toMatchObject({ leftAt: '09:00' })
    expect(sheet().work.withoutGo).toBeUndefined()
  })

  test.each([
    ['the queen', { queen: 'caged' }],
    ['frames', { 'bees.frames': '8' }],
    ['all the comb', { cleaned: 'all' }],
    ['the void', { closedUp: 'void' }],
  ])('%s said after it asks why it was gone on with', async (_, fields) => {
    const asked = await work({ openedAt: '08:00', ...fields })
    expect(asked.status).toBe(422)
    expect(asked.text).toContain('name="withoutGo.why"')
    expect(wordsOf(asked.text)).toContain('Before 08:00, written down now')
    expect((await work({ openedAt: '08:00', ...fields, 'withoutGo.why': 'could-not-wait' })).status).toBe(303)
    expect(sheet().work.withoutGo).toMatchObject({ why: 'could-not-wait' })
  })

  test('what was done before is written down as such', async () => {
    const fields = { openedAt: '08:00', queen: 'caged', 'withoutGo.why': 'that-day' }
    expect((await work(fields)).status).toBe(303)
    expect(sheet().work.withoutGo).toBeUndefined()
  })

  test('a box of afterwards was none before it', async () => {
    yard.setDay(DAY, '10:00')
    const fields = { openedAt: '08:00', boxedAt: '09:30', 'withoutGo.why': 'that-day' }
    expect((await work(fields)).status).toBe(422)
  })

  test('comb that is left, and a note, are no going on', async () => {
    expect(
      (await work({ openedAt: '08:00', cleaned: 'none', left: 'Open, boards leant on it' })).status,
    ).toBe(303)
  })
})

describe('a job that was put off', () => {
  const swarm = here({ ...swarmAt('On a branch of the pear tree'), check: {} })
  beforeEach(() => {
    saved({ ...swarm, job: { ...swarm.job, plannedOn: DAY } })
    yard.setDay(NEXT, '08:00')
  })

  test('heat typed today is of today, and the planned day is said to be the planned one', async () => {
    const form = await formOf('check')
    const { cutMm: _, vacuum: __, ...tapped } = TAPPED
    const site = { temper: '2', africanized: 'no' }
    const answer = await yard.post(`${PATH}/check`, { ...form, ...tapped, ...site, hottestC: '78' })
    expect(answer.status).toBe(303)
    expect(sheet().decision).toMatchObject({ is: 'go', on: NEXT })
    expect(sheet().check).toMatchObject({ on: NEXT })
    const page = await words()
    expect(page).not.toContain('Not yet: outdoor heat')
    expect(page).toContain('planned for yesterday')
    expect(await list()).toContain('planned for yesterday')
  })
})

test('what lacks of the cutting depth is named, and asked where it is', async () => {
  const { sheathingMm: _, ...site } = READY.site
  saved({ ...sheet(), site })
  const { text } = await yard.get(`${PATH}/check`)
  expect(text).toContain(`href="${PATH}/site#f-sheathingMm"`)
  expect(wordsOf(text)).toContain('how thick the sheathing is')
})

test('a go that is on the server says nothing of the phone it came from, unless it had heard nothing for hours', async () => {
  const { decision } = sheet()
  if (decision === undefined) throw new Error('no go')
  const of = `${DAY}T06:30:00.000Z`
  saved({ ...sheet(), decision: { ...decision, heard: { of } } })
  expect(await words()).toContain('decided by Ines, Fri 12 Jun 08:00, with nothing on the list unmet')
  expect(await words()).not.toContain('the phone')
  saved({ ...sheet(), decision: { ...decision, heard: { of, by: 'Bram', at: '07:50', news: 'none' } } })
  expect(await words()).toContain('the phone had last heard at 06:30; Bram read the list at 07:50')
})

test('what another sheet of the house says is named, and not the day', async () => {
  expect((await work({ now: 'openedAt' })).status).toBe(303)
  const gas = { ...READY, site: { ...READY.site, behind: ['gas' as const] } }
  yard.store.removals.save(ID.replace(/9$/, '8'), 0, gas, {
    savedAt: `${DAY}T08:00:00.000Z`,
    savedBy: 'Bram',
  })
  const page = await words()
  expect(page).not.toContain('Open since another day')
  expect(page).toContain('before another sheet of this house said more')
  expect(page).not.toContain('a nest that is opened')
})
