/** Two people, and two devices of one person, at one job: nothing said earlier stands over what was said later. Invented. */
import { beforeEach, describe, expect, test } from 'vitest'
import { clearanceProblems } from '../../../src/features/removal/decide.ts'
import { otherSheetsOf } from '../../../src/features/removal/other-sheets.ts'
import { placeOf } from '../../../src/features/removal/place.ts'
import { mergeSheets } from '../../../src/records/merge-sheets.ts'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'
import { oneSheet } from './one-sheet.ts'
import { but, DAY, goAt, PAPER, READY, YARD } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000019'
const OTHER = '019e0000-0000-7000-8000-000000000018'
const PATH = `/removals/${ID}`
let yard: Yard
beforeEach(async () => {
  yard = await yardOn(DAY)
})
const { last, sheet, saved: put, post, words } = oneSheet(() => yard, ID, '08:00')
const saved = (s: Sheet, savedBy = 'Ines', of = ID): void => put(s, savedBy, { of })
const sync = (s: Sheet, base: number, over = false) =>
  yard.send('/removals/sync', { id: ID, base, over: over && last()?.version, sheet: s })
const decided = (is: 'go' | 'refuse' | 'wait', at: string, by = 'Ines'): Sheet['decision'] => ({
  is,
  by,
  on: DAY,
  at,
  unmet: [],
  ...(is === 'go' ? {} : { reason: 'It may be a gas main.' }),
  ...placeOf(READY),
})
/** All that the form before the cut sends, as it is tapped here. */
const form = (more: Record<string, string | string[]> = {}) => ({
  version: String(last()?.version),
  shownOn: DAY,
  on: DAY,
  wires: 'none',
  vacuum: 'bee-vacuum',
  cutMm: '0.8',
  hottestC: '80',
  done: READY.check.done ?? [],
  ...more,
})

describe('a phone that was without signal', () => {
  test('takes back no refusal of the same person that was later than its “go”', async () => {
    saved(READY)
    saved({ ...READY, decision: decided('refuse', '09:30') })
    const early = await sync({ ...READY, decision: decided('go', '08:05') }, 1)
    expect(early.status).toBe(422)
    expect(early.text).toContain('saved something else meanwhile')
    expect((await sync({ ...READY, decision: decided('go', '10:30') }, 1)).status).toBe(200)
  })

  test('put over what somebody else said, it is no “go” over both', async () => {
    saved(READY)
    saved({ ...READY, decision: decided('wait', '09:30', 'Bram') }, 'Bram')
    const go = goAt('08:05')
    expect((await sync({ ...READY, decision: decided('go', '08:05') }, 1)).status).toBe(422)
    const over = await sync({ ...READY, decision: decided('go', '08:05') }, 1, true)
    expect(over.text, 'why he had it wait is answered').toContain('is needed: Bram tapped “Wait”')
    const answered = { ...READY, decision: { ...go, reason: 'The supplier was here.' } }
    expect((await sync(answered, 1, true)).status).toBe(200)
    expect(sheet().decision).toMatchObject({ is: 'go', fell: { by: 'Ines' } })
  })

  test('brings back no tick that was taken off later, and makes none later than it is', async () => {
    const ticked = (tickedAt: string, done: string[]): Sheet =>
      ({ ...READY, check: { ...READY.check, tickedAt, done } }) as Sheet
    const all = READY.check.done ?? []
    const fewer = all.filter((d) => d !== 'children')
    saved(ticked('07:00', all))
    saved(ticked('09:30', fewer))
    expect((await sync({ ...ticked('08:05', all), decision: decided('go', '08:05') }, 1)).status).toBe(200)
    expect(sheet().check).toMatchObject({ done: fewer, tickedAt: '09:30' })
    // A clock that is hours ahead.
    const base = last()?.version ?? 0
    expect((await sync({ ...ticked('23:30', all), decision: decided('go', '23:30') }, base)).status).toBe(200)
    expect(sheet()).toMatchObject({ check: { tickedAt: '12:00' }, decision: { at: '12:00' } })
  })

  test('takes off nobody who has come back since', async () => {
    const line = (is: 'gone' | 'found', at: string, by: string) => ({
      what: 'allergic' as const,
      is,
      ...(is === 'gone' ? { why: 'left' as const } : {}),
      by,
      on: DAY,
      at,
      writtenAt: `${DAY}T${at}:00.000Z`,
    })
    const about = (bystanders: ('allergic' | 'children')[], ...noted: ReturnType<typeof line>[]): Sheet =>
      but({ site: { ...READY.site, bystanders, noted } })
    saved(about(['allergic']))
    saved(about([], line('gone', '09:00', 'Bram')), 'Bram')
    saved(about(['allergic'], line('gone', '09:00', 'Bram'), line('found', '09:30', 'Bram')), 'Bram')
    const answer = await sync(about([], line('gone', '08:05', 'Ines')), 1)
    expect(answer.status).toBe(422)
    expect(answer.text).toContain('without saying why')
  })

  test('has looked at nothing on a day that has not come', async () => {
    const seen = { ...placeOf(READY), on: '2027-06-12' }
    const looked = { behind: seen, hazards: seen, old: seen, bystanders: seen }
    const answer = await sync({ ...READY, site: { ...READY.site, lookedAt: looked } }, 0)
    expect(answer.text).toContain('of a day that has not come')
  })

  test('leaves a decision where it says none, and comes to no “go” of before a backup', async () => {
    saved({ ...READY, decision: decided('refuse', '09:30', 'Bram') }, 'Bram')
    expect((await sync({ ...READY, job: { ...READY.job, wayIn: 'Gate' } }, 1)).status).toBe(200)
    expect(sheet().decision?.by).toBe('Bram')
    saved(READY)
    yard.store.settings.set('setBack', `${DAY}T11:00:00.000Z`)
    const base = last()?.version ?? 0
    expect((await sync({ ...READY, decision: decided('go', '10:00') }, base)).status).toBe(200)
    expect(sheet().decision?.fell).toBeDefined()
  })
})

describe('a form', () => {
  test('that lay open since six is tapped again', async () => {
    saved(READY)
    const barred = await yard.post(`${PATH}/check`, form({ is: 'go', shownAt: '06:00' }))
    expect(barred.status).toBe(422)
    expect(barred.text).not.toMatch(/name="done"[^>]* checked/)
    expect((await yard.post(`${PATH}/check`, form({ is: 'go', shownAt: '11:30' }))).status).toBe(303)
    expect((await yard.get(`${PATH}/check`)).text).toContain('name="shownAt" value="12:00"')
  })

  test('does not tick again what somebody took off meanwhile', async () => {
    saved(READY)
    const open = form({ is: 'go' })
    const done = (READY.check.done ?? []).filter((d) => d !== 'children')
    saved({ ...READY, check: { ...READY.check, done } }, 'Bram')
    const clash = await yard.post(`${PATH}/check`, open)
    expect(clash.status).toBe(409)
    expect(clash.text).not.toMatch(/name="done"[^>]* checked/)
  })
})

test('a form that is refused for what it takes off keeps what it brings', async () => {
  saved({ ...READY, decision: decided('go', '11:00') })
  const { where, access, sheathingMm: _, ...more } = READY.site
  const answer = await post('site', {
    'removal.type': 'wall',
    type: 'wall',
    where: where ?? '',
    access: access ?? '',
    heightM: '13',
    temper: String(more.temper),
    africanized: 'no',
    behind: ['electric-in-cut'],
  })
  expect(answer.status).toBe(422)
  expect(sheet().site.behind).toEqual(['insulation', 'electric-in-cut'])
  expect(sheet().decision?.fell).toBeDefined()
  expect(await words('/removals')).toContain('No go any more')
})

describe('who stays and watches', () => {
  const stays: NonNullable<Sheet['check']['seconds']>[number] = {
    item: 'not-alone',
    of: 'Alone.',
    by: 'Ines',
    why: 'stays',
    account: true,
    on: DAY,
    ...placeOf(READY),
  }
  const watched: Sheet = { ...READY, check: { ...READY.check, seconds: [stays] } }

  test('decides no “go” at another job', async () => {
    saved({ ...watched, job: { name: 'Mrs Umber', address: '9 Other Lane' } }, 'Bram', OTHER)
    saved(READY)
    const barred = await yard.post(`${PATH}/check`, form({ is: 'go' }))
    expect(barred.status).toBe(422)
    expect(wordsOf(barred.text)).toContain('you are at Mrs Umber until')
  })

  test('nor does whoever has opened one today, before the bees are boxed or they have left', async () => {
    const go = decided('go', '09:00', 'Ines')
    const job = { name: 'Mrs Umber', address: '9 Other Lane' }
    const work = { on: DAY, openedAt: '09:10' }
    saved({ ...READY, job, decision: go, work }, 'Ines', OTHER)
    saved(READY)
    const barred = await yard.post(`${PATH}/check`, form({ is: 'go' }))
    expect(barred.status).toBe(422)
    expect(wordsOf(barred.text)).toContain('you are at Mrs Umber until')
    saved({ ...READY, job, decision: go, work: { ...work, leftAt: '11:30' } }, 'Ines', OTHER)
    expect((await yard.post(`${PATH}/check`, form({ is: 'go' }))).status).toBe(303)
  })

  test('opens nothing: that takes two', async () => {
    saved({ ...watched, decision: decided('go', '11:00', 'Bram') }, 'Bram')
    const barred = await post('work', { on: DAY, outdoorC: '75', now: 'openedAt', water: 'yes' })
    expect(barred.status).toBe(422)
    expect(wordsOf(barred.text)).toContain('that takes two')
  })
})

test('what was opened as bees and turns out to be wasps is no “go” any more', async () => {
  saved({ ...READY, job: { ...READY.job, bees: 'wasps' }, decision: decided('go', '11:00') })
  expect(await words('/removals')).toContain('No go any more')
})

describe('one house', () => {
  const gas = (job: Sheet['job'], work: Sheet['work'] = {}): Sheet => ({
    ...READY,
    job,
    work,
    site: { ...READY.site, behind: ['gas'], bystanders: ['allergic'] },
  })
  const others = (job: Sheet['job'], colonies: string[] = [], work: Sheet['work'] = {}) =>
    otherSheetsOf(
      ID,
      { ...READY, job: { address: '4 Invented Row', phone: '555 0100', email: 'o@example.org' } },
      [{ id: OTHER, sheet: gas(job, work), colonies }],
      DAY,
    ).map((o) => o.what)

  test.each([
    'No. 4 Invented Row',
    'Invented Row 4',
    'Flat 2, 4 Invented Row',
    '4, invented row, Springfield',
  ])('is %s', (address) => {
    expect(others({ address })).toEqual([['gas', 'allergic']])
  })
  test('is whose telephone or e-mail is the same', () => {
    expect(others({ address: '4 Inventd Road', phone: '+1 415 555 0100' })).toHaveLength(1)
    expect(others({ email: 'O@example.org' })).toHaveLength(1)
    expect(others({ address: '44 Invented Row', phone: '555 0199' })).toEqual([])
  })
  test('keeps its pipes, and who lives there, when the bees have left, for a season', () => {
    const address = '4 Invented Row'
    expect(others({ address }, ['c'], { on: DAY })).toEqual([['gas', 'allergic']])
    expect(others({ address }, ['c'], { on: '2026-02-01' })).toEqual([])
  })
})

test('one supplier is of one line, and a picture of the nest is no paper', () => {
  const both = but({
    site: { ...READY.site, behind: ['gas', 'electric'] },
    job: { ...READY.job, photos: [PAPER] },
  })
  const paper = 'b'.repeat(64)
  const cleared = {
    hazard: 'gas' as const,
    as: 'supplier' as const,
    who: 'Umber Gas',
    licence: 'T 4711',
    on: DAY,
    says: 'clear' as const,
  }
  const at = { ...both, check: { ...both.check, clearances: [{ ...cleared, photo: paper, knew: [] }] } }
  expect(clearanceProblems({ ...cleared, photo: paper }, both, YARD, DAY)).toEqual([])
  expect(clearanceProblems({ ...cleared, photo: PAPER }, both, YARD, DAY)).toMatchObject([
    { field: 'photos' },
  ])
  expect(clearanceProblems({ ...cleared, hazard: 'electric', photo: paper }, at, YARD, DAY)).toMatchObject([
    { field: 'licence' },
  ])
})

test('a second person who was taken off stays off beside a new one', () => {
  const by = (item: string) => ({ item, of: item, by: 'Zed Quill', why: 'seen' as const, on: DAY })
  const of = (...items: string[]): Sheet => ({ ...READY, check: { ...READY.check, seconds: items.map(by) } })
  const { sheet: merged } = mergeSheets(of('allergy'), of('allergy', 'kit'), of())
  expect(merged.check.seconds?.map((x) => x.item)).toEqual(['kit'])
})
