/** What is read on a page before anything is done: what was found, set aside or changed, by whom; and that nothing is saved unsaid. Invented. */
import { beforeEach, describe, expect, test } from 'vitest'
import { placeOf } from '../../../src/features/removal/place.ts'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { INTAKE, wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'
import { oneSheet } from './one-sheet.ts'
import { DAY, goAt, READY } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000041'
const OTHER = ID.replace(/1$/, '2')
const PATH = `/removals/${ID}`
const NEXT = '2026-06-13'
let yard: Yard
const { sheet, saved, save, post, words } = oneSheet(() => yard, ID)
const GO: Sheet = {
  ...READY,
  check: { ...READY.check, tickedAt: '08:00' },
  decision: goAt('08:00'),
}

beforeEach(async () => {
  yard = await yardOn(DAY)
  yard.setDay(DAY, '08:00')
})

describe('boxed, and still to be closed up', () => {
  const WORK = { on: DAY, outdoorC: '75', water: 'yes', openedAt: '08:00' }
  beforeEach(async () => {
    saved(GO)
    expect((await post('work', { ...WORK, now: 'openedAt' })).status).toBe(303)
    yard.setDay(DAY, '09:00')
    expect((await post('work', { ...WORK, now: 'boxedAt' })).status).toBe(303)
  })
  const log = () => yard.post('/intake', { ...INTAKE, id: ID, on: DAY, 'removal.removedOn': DAY })
  const found = async (more: Record<string, string | string[]>, part = 'site'): Promise<void> => {
    yard.setDay(DAY, '09:40')
    expect((await save(part, more)).status).toBe(303)
  }
  const WIRES =
    'This was found (Ines, Fri 12 Jun 09:40): Live wires in the way: an electrician makes them dead first.'

  test.each([
    ['once the bees are in the book', true],
    ['while they are not', false],
  ])('live wires that were found are read in the head, %s', async (_, logged) => {
    if (logged) expect((await log()).status).toBe(303)
    expect(await words()).not.toContain('This was found')
    await found({ behind: ['insulation', 'electric-in-cut'] })
    yard.setDay(NEXT, '10:00')
    expect(await words()).toContain(WIRES)
    expect((await yard.get(PATH)).text, 'it is cleared right there').toContain(
      'name="trade-electric-in-cut.who"',
    )
    expect(await words(`${PATH}/work`)).toContain(WIRES)
  })

  test('so is somebody allergic, who was not known at the “go”; not what was', async () => {
    expect((await log()).status).toBe(303)
    await found({ bystanders: ['allergic'] }, 'job')
    const said = await words()
    expect(said).toContain('This was found (Ines, Fri 12 Jun 09:40): Somebody allergic is about: away')
    expect(said.split('This was found')).toHaveLength(2)
  })

  test('nothing of it once all is closed up', async () => {
    expect((await log()).status).toBe(303)
    await found({ behind: ['insulation', 'electric-in-cut'] })
    const { work } = sheet()
    const closedUp: Sheet['work']['closedUp'] = ['void', 'smell', 'stragglers']
    saved({
      ...sheet(),
      work: { ...work, cleaned: 'all', sealed: 'yes', closedUp, photos: ['a'.repeat(64)] },
    })
    const said = await words()
    expect(said).toContain('Finished')
    expect(said).not.toContain('This was found')
  })
})

describe('another sheet', () => {
  const gas: Sheet = {
    ...READY,
    job: { name: 'Edgar Quill', address: '4 Invented row' },
    site: { ...READY.site, behind: ['gas'] },
  }

  test('whose gas was only looked for again is no “nothing unmet”: it says so, and who looked', async () => {
    saved({ ...GO, check: { ...GO.check, done: [...(GO.check.done ?? []), `not-there:gas:${OTHER}`] } })
    saved(gas, 'Bram', { of: OTHER })
    const said = await words()
    expect(said).not.toContain('with nothing on the list unmet')
    expect(said).toContain('08:00, with “not here: gas pipe” set aside by Ines, not cleared.')
  })

  test('each with whoever looked', async () => {
    const tapped = (...more: string[]): Sheet => ({
      ...GO,
      check: { ...GO.check, done: [...(GO.check.done ?? []), ...more] },
    })
    const gasThere = `not-there:gas:${OTHER}`
    const { decision: _, ...undecided } = tapped(gasThere)
    saved(READY)
    saved(undecided, 'Teuila')
    saved(tapped(gasThere, 'not-here:asbestos'))
    expect(await words()).toContain(
      '“not here: gas pipe” set aside by Teuila, not cleared, “not here: asbestos” set aside by Ines, not',
    )
  })

  test.each([
    ['telephone', { phone: '555 0142 77' }],
    ['e-mail', { email: 'edgar@yard.example' }],
  ])('with only the same %s is not said to be of this house', async (what, same) => {
    saved({ ...GO, job: { ...GO.job, ...same } })
    saved({ ...gas, job: { name: 'Edgar Quill', address: '9 Larch Hill', ...same } }, 'Bram', { of: OTHER })
    for (const path of [PATH, `${PATH}/check`]) {
      const said = await words(path)
      expect(said).toContain(`Another sheet with the same ${what}: Edgar Quill`)
      expect(said).not.toContain('of this house')
      expect(said).not.toContain('same house')
    }
  })
})

describe('a “go” that fell', () => {
  test('says what a colleague changed, in the words of the form', async () => {
    saved(GO)
    const { site, work, decision } = GO
    if (decision === undefined) throw new Error('no go')
    const fell = { by: 'Bram', on: DAY, at: '08:20' }
    const changed = { ...site, entrance: 'under the sill', behindNote: 'Hollow, all of it.' }
    const after = { ...GO, site: changed, work: { ...work, note: 'Calm.' }, decision: { ...decision, fell } }
    saved(after, 'Bram')
    saved({ ...after, job: { ...after.job, wayIn: 'By the gate.' } }, 'Teuila')
    expect(await words()).toContain('before Bram changed: Entrance, More about it, Note')
  })

  test('and what one changed oneself', async () => {
    saved(GO)
    expect((await save('site', { entrance: 'under the sill' })).status).toBe(303)
    expect(await words()).toContain('before Ines changed: Entrance')
  })

  test('says no field where the version that it fell with brought the “go” itself', async () => {
    const { decision, ...rest } = GO
    if (decision === undefined) throw new Error('no go')
    saved(rest)
    const fell = { by: 'Bram', on: DAY, at: '08:20' }
    saved({ ...rest, job: { ...rest.job, told: 'Many.' }, decision: { ...decision, fell } }, 'Bram')
    expect(await words()).toContain('before Bram changed something')
  })
})

test('who stays at another job reads it before the button “Go”, and before “Open”', async () => {
  const watch = { item: 'not-alone', by: 'Ines', account: true as const, on: DAY, of: 'x', ...placeOf(READY) }
  saved({ ...READY, job: { name: 'Edgar Quill' }, check: { ...READY.check, seconds: [watch] } }, 'Bram', {
    of: OTHER,
  })
  const { decision: _, ...undecided } = GO
  saved(undecided)
  const before = async (part: string, button: string): Promise<string> => {
    const { text } = await yard.get(`${PATH}/${part}`)
    return wordsOf(text.slice(0, text.indexOf(button)))
  }
  const said = 'No “go” by you: you are at Edgar Quill until'
  expect(await before('check', 'value="go"')).toContain(said)
  saved(GO)
  expect(await before('work', 'value="openedAt"')).toContain(said)
  expect(await words(`${PATH}/site`)).not.toContain(said)
})

describe('what is only offered', () => {
  test('is not saved by “Left”, and is offered to the intake', async () => {
    saved(GO)
    expect((await save('work', { outdoorC: '75', water: 'yes', now: 'openedAt' })).status).toBe(303)
    expect((await save('work', { now: 'leftAt' })).status).toBe(303)
    expect(sheet().work.leftAt).toBe('08:00')
    expect(sheet().work.method).toBeUndefined()
    expect((await save('work', { now: 'boxedAt' })).status).toBe(303)
    expect(sheet().work.method).toBeUndefined()
    const { text } = await yard.get(`${PATH}/intake`)
    expect(text).toMatch(/<input[^>]*name="removal.method"[^>]*value="vacuum"[^>]*checked/)
  })

  test.each(['wait', 'refuse'])('is not saved by “%s”; what was tapped is', async (is) => {
    const { vacuum: _, ...check } = GO.check
    const { decision: __, ...undecided } = GO
    saved(GO, 'Bram', { of: OTHER })
    saved({ ...undecided, check, job: { address: '9 Larch Hill' } })
    expect((await save('check', { is, reason: 'Nobody at home.' })).status).toBe(303)
    expect(sheet().decision?.is).toBe(is)
    expect(sheet().check.vacuum).toBeUndefined()
    expect((await save('check', { is, reason: 'Nobody at home.', vacuum: 'none' })).status).toBe(303)
    expect(sheet().check.vacuum).toBe('none')
  })
})
