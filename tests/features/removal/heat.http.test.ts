/** How hot it is, is of the moment, and asked when the surface is opened; over the limit a second person signs. Limits are the protocol’s. Invented. */
import { beforeEach, expect, test } from 'vitest'
import { PASSPHRASE } from '../../support/people.ts'
import { wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'
import { oneSheet } from './one-sheet.ts'
import { DAY, goAt, READY } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000009'
const PATH = `/removals/${ID}`
const NEXT = '2026-06-13'
let yard: Yard
const { sheet, saved, formOf, post, words, go, open, version } = oneSheet(() => yard, ID, '08:00')
beforeEach(async () => {
  yard = await yardOn(DAY)
  saved({ ...READY, decision: goAt() })
})

test('a form that lay open over night does not open it on yesterday’s temperature', async () => {
  const stale = await formOf('work')
  expect(stale.shownOn).toContain(DAY)
  yard.setDay(NEXT)
  saved({
    ...READY,
    job: { ...READY.job, plannedOn: NEXT },
    check: { ...READY.check, on: NEXT, doneOn: NEXT },
    decision: { ...goAt(), on: NEXT },
  })
  const late = (more: object) => open({ ...stale, outdoorC: '75', water: 'yes', ...more })
  const answer = await late({ version: '2' })
  expect(answer.status).toBe(422)
  expect(answer.text).toContain('How hot is it now?')
  expect(sheet().work.openedAt).toBeUndefined()
  expect((await late({ version: version(), shownOn: NEXT })).status).toBe(303)
  expect(sheet().work).toMatchObject({ on: NEXT, openedAt: '12:00' })
})

test('a temperature that passed once is asked again, one over the limit stands until a second person has signed', async () => {
  const at = async (outdoorC: number): Promise<string> => {
    const other = oneSheet(() => yard, ID.replace(/9$/, outdoorC > 30 ? '7' : '6'), '11:30')
    other.saved({ ...READY, work: { on: DAY, outdoorC, water: true } })
    return String((await other.formOf('work')).outdoorC)
  }
  expect(await at(20)).toBe('')
  expect(await at(36)).not.toBe('')
})

test('water that is said to be missing is not there because it is opened', async () => {
  expect((await open({ water: 'no' })).status).toBe(422)
  expect(sheet().work.openedAt).toBeUndefined()
})

test('when work starts the heat is asked again, and “go” has to stand', async () => {
  await yard.account('Bram')
  const { signature: _, ...agreement } = READY.agreement
  saved({ ...READY, agreement })
  const at = (outdoorC: string) => open({ outdoorC })
  const early = await at('70')
  expect(early.status).toBe(422)
  expect(wordsOf(early.text)).toContain('waits for “go”')
  expect((await go({ reason: 'Signs tonight.' })).status).toBe(303)
  expect((await at('')).status).toBe(422)
  const hot = await at('100')
  expect(hot.status).toBe(422)
  expect(wordsOf(hot.text)).toContain('100 °F now, over the limit of 85 °F')
  expect(sheet().work.openedAt).toBeUndefined()
  expect(hot.text).toContain('/second?item=heat-at-start')
  const { text } = await yard.get(`${PATH}/second?item=heat-at-start`)
  const signed = await post('second', {
    item: 'heat-at-start',
    of: /name="of" value="([^"]*)"/.exec(text)?.[1] ?? '',
    'heat-at-start.by': 'Bram',
    'heat-at-start.why': 'stays',
    passphrase: PASSPHRASE,
    'heat-at-start.reason': 'One comb left, in the shade.',
  })
  expect(signed.status, wordsOf(signed.text)).toBe(303)
  expect((await at('104')).status, 'hotter than what was signed for').toBe(422)
  expect((await at('100')).status).toBe(303)
  expect(sheet().work).toMatchObject({ water: true, openedAt: expect.stringMatching(/^\d\d:\d\d$/) })
  expect(await words(`${PATH}/intake`)).toContain('Taken out at 100 °F, over the limit of 85 °F')
})

test('the heat limit is the protocol’s', async () => {
  saved({ ...READY, check: { ...READY.check, until: '12:00', hours: READY.check.hours?.slice(0, 3) ?? [] } })
  expect(await words(`${PATH}/check`)).not.toContain('Outdoor heat under the limit')
  yard.store.settings.set('protocol', { heatLimitC: 25 })
  expect(await words(`${PATH}/check`)).toContain(
    '85 °F at 12:00, over the limit of 77 °F. At or under it: 06:00 to 09:00.',
  )
})
