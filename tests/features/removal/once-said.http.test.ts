/** What was said once stays with the house: at the address a sheet had before, and where words were taken out unread. Invented. */
import { beforeEach, describe, expect, test } from 'vitest'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { formIn, wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'
import { oneSheet } from './one-sheet.ts'
import { DAY, here, READY } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000071'
const OTHER = '019e0000-0000-7000-8000-000000000072'
let yard: Yard
const own = oneSheet(() => yard, ID, '08:00')
const theirs = oneSheet(() => yard, OTHER, '08:00')
const form = async (path: string) => formIn((await yard.get(path)).text)
const read = (text: string) =>
  [...text.matchAll(/name="done" value="(read[^"]+)"/g)].map(([, value]) => value ?? '')
/** “Go” over the form as it stands, with more of its boxes tapped. */
const go = async (...more: string[]) => {
  const typed = await form(`/removals/${ID}/check`)
  return own.save('check', { done: [...(typed.done ?? []), ...more], is: 'go' })
}
const STRANGER = { name: 'Edgar Quill', phone: '555 010 7788', address: '4 Invented Row' }
const lines = (of: typeof own, what: string) => of.sheet().site.noted?.filter((n) => n.what === what) ?? []

beforeEach(async () => {
  yard = await yardOn(DAY)
})

describe('an address that is changed', () => {
  const gasThere: Sheet = here({
    ...READY,
    job: { ...STRANGER, phone: '555 010 2233', plannedOn: DAY },
    site: { ...READY.site, where: 'by the gate', surface: 'brick', behind: ['gas'] },
  })

  test.each([
    ['what was found there is asked there still', { address: '9 Elm Street' }, { phone: '555 010 9999' }],
    [
      'so with its telephone',
      { phone: '555 010 1111', address: '9 Elm Street' },
      { phone: '555 010 2233', address: '77 Upper Lane' },
    ],
  ])('%s', async (_, changed, caller) => {
    theirs.saved(gasThere)
    expect((await theirs.save('job', changed)).status).toBe(303)
    own.saved(here({ ...READY, job: { ...READY.job, ...STRANGER, ...caller } }))
    const barred = await go()
    expect(barred.status).toBe(422)
    const page = wordsOf(barred.text)
    expect(page).toContain('gas pipe')
    expect(page).toContain('was on it before')
    expect((await go(`not-there:gas:${OTHER}`, ...read(barred.text))).status).toBe(303)
  })

  test('by a phone or a program is kept too', async () => {
    theirs.saved(gasThere)
    const moved = { ...gasThere, job: { ...gasThere.job, address: '9 Elm Street' } }
    const body = { id: OTHER, base: 1, over: false, sheet: moved }
    expect((await yard.send('/removals/sync', body)).status).toBe(200)
    own.saved(here({ ...READY, job: { ...READY.job, ...STRANGER } }))
    expect((await go()).status).toBe(422)
    // A program that leaves the line out takes nothing off.
    const { noted: _, ...site } = theirs.sheet().site
    const bare = { ...body, base: 2, sheet: { ...theirs.sheet(), site } }
    expect((await yard.send('/removals/sync', bare)).status).toBe(200)
    expect((await go()).status).toBe(422)
  })

  test('gas of a phone that had the old address stays with that as well', async () => {
    const called: Sheet = { ...gasThere, site: { ...gasThere.site, behind: [] } }
    theirs.saved(called)
    theirs.saved({ ...called, job: { ...called.job, address: '9 Elm Street' } }, 'Bram')
    const body = { id: OTHER, base: 1, over: false, sheet: gasThere }
    expect((await yard.send('/removals/sync', body)).status).toBe(200)
    expect(theirs.sheet()).toMatchObject({ job: { address: '9 Elm Street' }, site: { behind: ['gas'] } })
    own.saved(here({ ...READY, job: { ...READY.job, ...STRANGER } }))
    expect((await go()).status).toBe(422)
  })

  test('gas of a phone that is asked which address stands is asked at both', async () => {
    const called: Sheet = { ...gasThere, job: { ...gasThere.job, address: '5 Invented Row' }, site: {} }
    theirs.saved(called)
    theirs.saved({ ...called, job: { ...called.job, address: '9 Elm Street' } }, 'Bram')
    const body = { id: OTHER, base: 1, over: false, sheet: gasThere }
    expect((await yard.send('/removals/sync', body)).status).toBe(422)
    expect(theirs.sheet()).toMatchObject({ job: { address: '9 Elm Street' }, site: { behind: ['gas'] } })
    for (const address of ['9 Elm Street', '4 Invented Row']) {
      own.saved(here({ ...READY, job: { ...READY.job, ...STRANGER, address } }))
      expect((await go()).status, address).toBe(422)
    }
  })

  test.each([
    ['completed', gasThere, '4 Invented Row, Springfield'],
    ['mended before anything stands on it', { ...READY, job: STRANGER, site: {} }, '9 Elm Street'],
  ])('is no other one where it is %s', async (_, before: Sheet, address) => {
    theirs.saved(before)
    expect((await theirs.save('job', { address })).status).toBe(303)
    expect(theirs.sheet().job.address).toBe(address)
    expect(lines(theirs, 'house')).toEqual([])
  })
})

describe('words nobody had read', () => {
  const told = 'Grandma cannot breathe after a sting'

  test.each([
    ['emptied', '', ''],
    ['written over', 'boards', ''],
    ['shortened', 'Grandma is there', ''],
  ])('that are %s are read all the same, by one tap', async (_, words) => {
    own.saved({ ...READY, job: { ...READY.job, told } }, 'Bram')
    expect((await own.save('job', { told: words, bystanders: 'none' })).status).toBe(303)
    const barred = await go()
    expect(barred.status).toBe(422)
    expect(wordsOf(barred.text)).toContain(`“Was written: ${told}”`)
    expect((await go(...read(barred.text))).status).toBe(303)
  })

  test('are read on another sheet of the house', async () => {
    theirs.saved({ ...READY, job: { ...STRANGER, told } }, 'Bram')
    expect((await theirs.save('job', { told: '', bystanders: 'none' })).status).toBe(303)
    own.saved(READY)
    expect(wordsOf((await go()).text)).toContain(`“Was written: ${told}”`)
  })

  test('leave no line where they were read, stand elsewhere now, or are put right by their writer within the hour', async () => {
    own.saved({ ...READY, job: { ...READY.job, told } }, 'Bram')
    const { text } = await yard.get(`/removals/${ID}/check`)
    expect((await go(...read(text))).status).toBe(303)
    await own.save('job', { told: '', bystanders: 'none' })
    expect(lines(own, 'note')).toEqual([])

    own.saved({ ...READY, job: { ...READY.job, told } }, 'Bram')
    await own.save('job', { told: '', bystandersNote: `${told}, says Edgar`, bystanders: 'none' })
    expect(lines(own, 'note')).toEqual([])

    own.saved({ ...READY, job: { ...READY.job } })
    await own.save('job', { told: 'Gradma canot breath', bystanders: 'none' })
    await own.save('job', { told, bystanders: 'none' })
    expect(lines(own, 'note')).toEqual([])
    // Typed again, they are read once.
    own.saved(own.sheet(), 'Bram')
    yard.setDay('2026-06-13')
    await own.save('job', { told: '', bystanders: 'none' })
    expect(lines(own, 'note')).toHaveLength(1)
    await own.save('job', { told, bystanders: 'none' })
    expect(lines(own, 'note')).toHaveLength(1)
    expect(wordsOf((await yard.get(`/removals/${ID}/check`)).text)).not.toContain('Was written')
  })

  test('that a phone took out are kept once', async () => {
    own.saved({ ...READY, job: { ...READY.job, told } }, 'Bram')
    const body = { id: ID, base: 1, over: false, sheet: READY }
    expect((await yard.send('/removals/sync', body)).status).toBe(200)
    expect(lines(own, 'note')).toHaveLength(1)
    expect((await yard.send('/removals/sync', { ...body, base: 2, sheet: own.sheet() })).status).toBe(200)
    expect(lines(own, 'note')).toHaveLength(1)
  })
})

describe('a street as somebody wrote it down by ear', () => {
  const gas: Sheet = {
    ...READY,
    job: { name: 'Edgar Quill', phone: '555 010 7788', address: '5 Kwarble Lane', plannedOn: DAY },
    site: { ...READY.site, behind: ['gas'], foundNote: 'Key at the gate' },
  }
  const mine = here({ ...READY, job: { ...READY.job, address: '5 Quarble Lane, Vlixham' } })
  const perhaps = `not-there:stopped:${OTHER}:gas`

  test('is asked about by one tap, where something stands on the other sheet', async () => {
    theirs.saved(gas)
    own.saved(mine)
    const barred = await go()
    expect(barred.status).toBe(422)
    expect(wordsOf(barred.text)).toContain('Is it the same house?')
    expect(wordsOf(barred.text)).toContain('Edgar Quill, 5 Kwarble Lane')
    expect(barred.text).not.toContain('Key at the gate')
    expect((await go(perhaps)).status).toBe(303)
    // More was found there since.
    theirs.saved({ ...gas, site: { ...gas.site, hazards: ['asbestos'] } })
    expect((await go(perhaps)).status).toBe(422)
  })

  test('where it is the same house, all of its sheet is asked and read', async () => {
    theirs.saved(gas)
    own.saved(mine)
    await own.save('check', { [`again.${perhaps}`]: 'here' })
    const barred = await go()
    expect(barred.status).toBe(422)
    expect(wordsOf(barred.text)).not.toContain('Is it the same house')
    expect((await go(...read(barred.text))).status).toBe(422)
    expect((await go(...read(barred.text), `not-there:gas:${OTHER}`)).status).toBe(303)
  })

  test.each<[string, Sheet]>([
    ['nothing more is said there', { ...gas, site: { ...READY.site } }],
    ['it is of last year', { ...gas, job: { ...gas.job, plannedOn: '2025-06-12' } }],
    ['the number is another', { ...gas, job: { ...gas.job, address: '7 Kwarble Lane' } }],
  ])('is none where %s', async (_, other) => {
    theirs.saved(other)
    own.saved(mine)
    expect((await go()).status).toBe(303)
  })
})
