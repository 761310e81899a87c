/** What is said while a wall is open, or once the bees are boxed, stands in the head for whoever is there. Invented. */
import { beforeEach, describe, expect, test } from 'vitest'
import { beforeCut } from '../../../src/features/removal/before-cut.ts'
import { readNotes } from '../../../src/features/removal/notes-read.ts'
import { placeOf } from '../../../src/features/removal/place.ts'
import { DEFAULT_PROTOCOL } from '../../../src/recovery/index.ts'
import { INTAKE, wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'
import { oneSheet } from './one-sheet.ts'
import { DAY, READY, read, SHOWS, TAPPED } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000062'
const PATH = `/removals/${ID}`
const NEXT = '2026-06-13'
const STUNG = 'Grandma cannot breathe after a sting, she is at home'
let yard: Yard
const { sheet, saved, post, save, words } = oneSheet(() => yard, ID)
const told = (said: string, by = 'Bram') =>
  saved({ ...sheet(), job: { ...sheet().job, told: said } }, by, { at: '09:10' })
const READS = { outdoorC: '76', water: 'yes' }

beforeEach(async () => {
  yard = await yardOn(DAY)
  yard.setDay(DAY, '08:00')
  saved({
    ...read({
      ...READY,
      job: { ...READY.job, wayIn: 'Ring twice' },
      check: { ...READY.check, tickedAt: '08:00' },
    }),
    decision: {
      is: 'go',
      by: 'Ines',
      on: DAY,
      at: '08:00',
      unmet: [],
      reason: 'All read',
      ...placeOf(READY),
    },
  })
  yard.setDay(DAY, '09:00')
})

describe('words, once it is open', () => {
  beforeEach(async () => {
    expect((await save('work', { ...READS, now: 'openedAt' })).status).toBe(303)
  })

  test('are shown with who wrote them and when, and stop nobody', async () => {
    expect(await words()).not.toContain('Since it was opened')
    told(STUNG)
    const said = await words()
    expect(said).toContain(`Since it was opened (Bram, Fri 12 Jun, 09:10): “${STUNG}”`)
    expect(said).not.toContain('“Ring twice”')
    expect(await words(`${PATH}/work`)).toContain(STUNG)
    expect((await save('work', { now: 'boxedAt intake' })).status).toBe(303)
  })

  test('and to whoever closes up, until all is closed', async () => {
    expect((await save('work', { now: 'boxedAt' })).status).toBe(303)
    told(STUNG)
    expect(await words()).toContain('Since it was opened')
    expect(
      (await yard.post('/intake', { ...INTAKE, id: ID, on: DAY, 'removal.removedOn': DAY })).status,
    ).toBe(303)
    yard.setDay(NEXT, '08:00')
    const said = await words()
    expect(said).toContain(STUNG)
    // What is so now, and no “Go”.
    expect(said).toContain('Boxed, to be closed up')
    expect(said).toContain('It was go, decided by Ines, Fri 12 Jun 08:00, with nothing on the list unmet')
    expect((await yard.get(PATH)).text).not.toContain('<b>Go</b>')
    const closedUp = ['void', 'smell', 'stragglers']
    const photos = ['a'.repeat(64)]
    const { work } = sheet()
    saved({
      ...sheet(),
      work: { ...work, cleaned: 'all', sealed: 'yes', closedUp: closedUp as never, photos },
    })
    expect(await words()).not.toContain('Since it was opened')
  })

  test('every call since it was boxed is in the head', async () => {
    expect((await save('work', { now: 'boxedAt' })).status).toBe(303)
    expect(
      (await yard.post('/intake', { ...INTAKE, id: ID, on: DAY, 'removal.removedOn': DAY })).status,
    ).toBe(303)
    const call = { on: DAY, what: 'smell', opened: 'no' }
    for (const note of ['Gas leaks where you closed it', 'It is fine'])
      expect((await yard.post(`${PATH}/call-back`, { ...call, note })).status).toBe(303)
    const said = await words()
    expect(said.indexOf('Gas leaks')).toBeGreaterThan(said.indexOf('They called again:'))
    expect(said.indexOf('It is fine')).toBeLessThan(said.indexOf('Finding and opening'))
    expect(said.slice(0, said.indexOf('Finding and opening'))).not.toContain('Since it was opened')
  })

  test('of the day before are read before “go”, and are no news at the next visit', async () => {
    told(STUNG)
    yard.setDay(NEXT, '08:00')
    expect(await words()).not.toContain('Since it was opened')
    const unread = await save('check', { shownOn: NEXT, on: NEXT, ...TAPPED })
    expect(wordsOf(unread.text)).toContain(STUNG)
    const done = [...TAPPED.done, readNotes(sheet(), NEXT)]
    expect((await save('check', { shownOn: NEXT, on: NEXT, ...TAPPED, done })).status).toBe(303)
    expect((await save('work', { ...READS, now: 'openedAt' })).status).toBe(303)
    expect(sheet().work.earlier).toHaveLength(1)
    expect(await words()).not.toContain('Since it was opened')
  })
})

test('an hour before the “go” is what the mark says', async () => {
  const early = { on: DAY, openedAt: '07:00', ...READS, 'withoutGo.why': 'could-not-wait' }
  expect((await post('work', early)).status).toBe(303)
  expect(sheet().work.withoutGo?.unmet[0]).toBe('opened at 07:00, and the “go” is of 08:00')
})

describe('what is said to what came to light later', () => {
  test('is a note, here and on every other sheet of the house', async () => {
    const { decision: _, ...rest } = sheet()
    saved(rest)
    const mark = { openedAt: '08:30', 'withoutGo.why': 'open-already' }
    expect((await post('work', { on: DAY, ...mark })).status).toBe(303)
    saved({ ...sheet(), site: { ...sheet().site, behind: ['insulation', 'gas'] } })
    const answer = {
      ...{ now: 'boxedAt', 'withoutGo.why': 'could-not-wait' },
      'withoutGo.words':
        'Her mother lies upstairs and cannot breathe after stings, so we closed up quickly, and it hisses still',
    }
    expect((await save('work', answer)).status).toBe(303)
    expect(sheet().work.withoutGo?.more).toEqual([answer['withoutGo.words']])
    const other = ID.replace(/62$/, '63')
    saved({ ...READY, job: { ...READY.job, name: 'Tilda Brow' } }, 'Ines', { of: other })
    expect(await words(`/removals/${other}/check`)).toContain('it hisses still')
  })
})

test('no sentence ends twice, and heat is said once', async () => {
  const { decision } = sheet()
  const over = { by: 'Bram', on: DAY, at: '07:30', reason: 'It smells of smoke.' }
  saved({ ...sheet(), ...(decision === undefined ? {} : { decision: { ...decision, over } }) })
  expect(await words()).toContain('It smells of smoke.')
  const barred = await save('work', { outdoorC: '97', water: 'yes', now: 'openedAt' })
  expect(barred.status).toBe(422)
  for (const said of [wordsOf(barred.text), await words(), await words('/removals')])
    expect(said.match(/.{40}[.?!…]”?\s?\.(?!\.).{0,10}/g)).toBeNull()
  const page = await words()
  expect(page.split('97 °F now')).toHaveLength(2)
  expect(beforeCut(sheet(), DEFAULT_PROTOCOL, SHOWS, DAY).says).toBe('nothing-unmet')
})
