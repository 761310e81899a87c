/** Notes in words that no list knows: each was written, and “go” was had over it, by somebody in a hurry. Invented. */
import { beforeAll, beforeEach, expect, test } from 'vitest'
import { readNotes } from '../../../src/features/removal/notes-read.ts'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'
import { emptied, oneSheet } from './one-sheet.ts'
import { DAY, READY } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000052'
const PATH = `/removals/${ID}`
let yard: Yard
const { sheet, saved, save, formOf } = oneSheet(() => yard, ID, '08:00')
const SECOND = { item: 'kit', by: 'Bram', on: DAY, of: 'Veil' }
const go = async (...more: string[]) => {
  const typed = await formOf('check')
  return save('check', { done: [...(typed.done ?? []), ...more], is: 'go' })
}

beforeAll(async () => {
  yard = await yardOn(DAY)
})
beforeEach(() => emptied(yard))

test.each<[string, Partial<Sheet['job']>, Partial<Sheet['site']>]>([
  ['somebody allergic', {}, { bystandersNote: 'boy across the street carries a pen' }],
  ['children', { told: 'the nanny comes with the little ones at ten' }, {}],
  ['lead', { told: 'the paint flakes off in scales' }, {}],
  ['droppings', { told: 'bats in the attic before, it stinks' }, {}],
  ['weak boards', {}, { foundNote: 'floor gives when one steps there' }],
  ['gas, in German', {}, { behindNote: 'es zischt, wenn man klopft' }],
])('what is noted of %s is read before “go”, by one tap', async (_, job, site) => {
  saved({ ...READY, job: { ...READY.job, ...job }, site: { ...READY.site, ...site } })
  const barred = await go()
  expect(barred.status).toBe(422)
  expect(wordsOf(barred.text)).toContain(
    `Read: all it says of danger is tapped “${[job.told, Object.values(site)[0]].find(Boolean)}”`,
  )
  expect((await go(readNotes(sheet()))).status).toBe(303)
})

test('the tap is of exactly these words, and of this day', async () => {
  saved({ ...READY, job: { ...READY.job, told: 'Honey drips' } })
  const first = readNotes(sheet())
  expect((await go(first)).status).toBe(303)
  await save('job', { told: 'Honey drips, and it hums' })
  expect(sheet().decision?.fell).toBeDefined()
  expect((await go(first)).status).toBe(422)
  expect((await go(readNotes(sheet()))).status).toBe(303)
  yard.setDay('2026-06-13')
  expect((await yard.get(`${PATH}/check`)).text).not.toMatch(
    new RegExp(`value="${readNotes(sheet())}"[^>]*checked`),
  )
})

test('a job without notes asks nothing more', async () => {
  saved(READY)
  expect((await yard.get(`${PATH}/check`)).text).not.toContain('Read: all it says')
  expect((await go()).status).toBe(303)
})

test.each<[string, Sheet]>([
  ['the way in', { ...READY, job: { ...READY.job, wayIn: 'deep well under the planks' } }],
  ['the entrance', { ...READY, site: { ...READY.site, entrance: 'through the hook-up of the range' } }],
  ['what is agreed', { ...READY, agreement: { ...READY.agreement, extra: 'nobody wakes the night nurse' } }],
  ['the note of a look', { ...READY, work: { note: 'grandma cannot breathe after a sting' } }],
  [
    'what a second person said',
    { ...READY, check: { ...READY.check, seconds: [{ ...SECOND, reason: 'I cannot hear him up there' }] } },
  ],
  [
    'a call-back',
    { ...READY, callBacks: [{ on: DAY, what: 'other', by: 'Bram', note: 'the ceiling hums at night' }] },
  ],
])('%s is read before “go”', async (_, written) => {
  saved(written)
  expect((await go()).status).toBe(422)
  expect((await go(readNotes(sheet()))).status).toBe(303)
})

test('why it was to wait is read before the next “go”, which answers it; a “go” that fell over it is none', async () => {
  const waits = { is: 'wait', reason: 'The floor hums under the stove' }
  saved({ ...READY, job: { ...READY.job, told: 'Honey drips' } })
  const told = readNotes(sheet())
  await save('check', waits)
  const over = { is: 'go', reason: 'It was the old fridge' }
  const typed = await formOf('check')
  const tap = (read: string) => save('check', { ...over, done: [...(typed.done ?? []), read] })
  expect((await tap(told)).status).toBe(422)
  expect((await tap(readNotes(sheet()))).status).toBe(303)
  expect(sheet().decision).toMatchObject({ is: 'go', over: { reason: waits.reason } })
  // It stands, though the reason that was read with the note is on the sheet as answered.
  expect((await save('work', { outdoorC: '75', water: 'yes', now: 'openedAt' })).status).toBe(303)
})

test('why it was a “go” is read before the “go” of another day, and once it has fallen', async () => {
  const reason = 'Tenant signs later; her mother cannot breathe after a sting'
  const { signature: _, ...agreement } = READY.agreement
  saved({ ...READY, agreement })
  expect((await save('check', { is: 'go', reason })).status).toBe(303)
  const text = async () => wordsOf((await yard.get(`${PATH}/check`)).text)
  expect(await text()).not.toContain('Read: all it says')
  await save('site', { foundNote: 'It hums' })
  expect(sheet().decision?.fell).toBeDefined()
  expect(await text()).toContain(`Read: all it says of danger is tapped “It hums” “${reason}”`)
  expect((await go()).status).toBe(422)
  const again = { is: 'go', reason, done: [...(READY.check.done ?? []), readNotes(sheet())] }
  expect((await save('check', again)).status).toBe(303)
  yard.setDay('2026-06-13')
  expect(await text()).toContain(`Read: all it says of danger is tapped “It hums” “${reason}”`)
})

test('once it is open, what else is noted stops nobody by itself', async () => {
  saved(READY)
  expect((await go()).status).toBe(303)
  expect((await save('work', { outdoorC: '75', water: 'yes', now: 'openedAt' })).status).toBe(303)
  await save('site', { foundNote: 'Bigger than we thought' })
  expect(sheet().decision?.fell).toBeUndefined()
})
