/** What things are worth in the yard and what is at hand decide the advice: on the server, and on a phone without signal. */
import { setTimeout as wait } from 'node:timers/promises'
import { beforeEach, expect, it } from 'vitest'
import { down, good, nextId, type Phone, phoneIn, wordsOf } from '../../support/phone.ts'
import { type TestYard, testYard } from '../../support/yard-app.ts'

const TODAY = '2026-06-08'

let yard: TestYard
let phone: Phone

const entry = (kind: string, on: string, more: object) => ({
  id: nextId(),
  colony: 'W-1',
  kind,
  on,
  by: 'Bram',
  ...more,
})

/** Nothing young on day 19, in a colony of four frames of bees. */
beforeEach(async () => {
  yard = testYard({ day: TODAY })
  const sent = await yard.send('beekeeper', [
    entry('intake', '2026-05-20', {
      removal: { type: 'wall' },
      yard: 'North field',
      queen: 'unseen',
      brood: { eggs: 0.5, open: 1 },
      bees: { frames: 5 },
    }),
    entry('inspection', TODAY, {
      opened: true,
      eggs: 'none',
      open: 'none',
      capped: 'none',
      cells: 'none',
      framesOfBees: 4,
    }),
  ])
  expect(sent.status).toBe(200)
  phone = phoneIn(yard)
  expect(await phone.syncService.send()).toBe('done')
})

const store = () => yard.services.store

const onServer = () => store().colony('W-1')?.summary.plan.advice

/** What the phone's own page says to do, with the signal gone. */
async function onPhone(): Promise<string> {
  phone.network(good)
  await phone.syncService.send()
  phone.network(down)
  return wordsOf(await phone.open('/colony/W-1'))
}

async function settled(): Promise<void> {
  for (let i = 0; i < 200 && store().protocols.recomputing() !== null; i++) await wait(10)
  expect(store().protocols.recomputing()).toBeNull()
}

it('a frame of eggs is advised, but not where no donor can spare one: then a queen is ordered', async () => {
  expect(onServer()?.action).toBe('give-egg-frame')
  expect(await onPhone()).toContain(onServer()?.why)
  const saved = await yard.post('operator', '/protocol/costs', { eggFrames: '0', queensInHand: '0' })
  expect(saved.status).toBe(303)
  await settled()
  expect(onServer()?.action).toBe('order-queen')
  expect(await onPhone()).toContain(onServer()?.why)
  expect(store().verify()).toMatchObject({ ok: true, compared: true })
})

it('what a colony is worth decides whether it is kept at all', async () => {
  await yard.post('operator', '/protocol/costs', { 'cost.worth': '15' })
  await settled()
  expect(onServer()?.action).toBe('unite')
  expect(await onPhone()).toContain(onServer()?.why)
})

it('what cannot be read is named, and nothing is kept; a helper may not', async () => {
  const wrong = await yard.post('operator', '/protocol/costs', { 'cost.queen': 'much', queensInHand: '1.5' })
  expect(wrong.status).toBe(422)
  const words = wordsOf(await wrong.text())
  expect(words).toContain('must be a number from 0 to 100000, not “much”')
  expect(words).toContain('must be a whole number from 0 to 500, not “1.5”')
  expect(store().settings.get('costs')).toEqual({})
  expect((await yard.post('helper', '/protocol/costs', { 'cost.queen': '1' })).status).toBe(403)
  expect(store().settings.get('costs')).toEqual({})
})
