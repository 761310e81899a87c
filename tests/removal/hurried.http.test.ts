/** A hurried beekeeper at the pages: tapping “Go” again the day after, opening by hand, a form left open. Invented. */
import { beforeEach, expect, test } from 'vitest'
import { type Yard, yardOn } from '../server/yard.ts'
import { but, DAY, READY } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000009'
const PATH = `/removals/${ID}`
let yard: Yard
beforeEach(async () => {
  yard = await yardOn(DAY)
  const decision = { is: 'go' as const, by: 'Ines', on: DAY, unmet: [] }
  yard.store.removals.save(
    ID,
    0,
    { ...READY, decision },
    { savedAt: `${DAY}T08:00:00.000Z`, savedBy: 'Ines' },
  )
})
const sheet = () => yard.store.removals.get(ID)?.last.sheet

/** The fields of the page's big form as they stand, every ticked box with them. */
async function standing(path: string): Promise<Record<string, string | string[]>> {
  const { text } = await yard.get(path)
  const form = text.slice(text.indexOf('id="entry-form"'))
  const typed: Record<string, string[]> = {}
  for (const [tag] of form.slice(0, form.indexOf('</form>')).matchAll(/<input [^>]*>/g)) {
    const at = (name: string): string | undefined => new RegExp(`\\b${name}="([^"]*)"`).exec(tag)?.[1]
    const [name, type] = [at('name'), at('type')]
    if (name === undefined || ((type === 'radio' || type === 'checkbox') && !/ checked/.test(tag))) continue
    typed[name] = [...(typed[name] ?? []), at('value') ?? '']
  }
  return typed
}

test('today “Go” stands, and it is opened', async () => {
  const answer = await yard.post(`${PATH}/work`, { version: '1', outdoorC: '75', now: 'openedAt' })
  expect(answer.status).toBe(303)
  expect(sheet()?.work.openedAt).toBe('12:00')
})

test('the day after, nothing is opened on yesterday’s “Go”, and “Go” is not tapped again over yesterday’s ticks', async () => {
  yard.setDay('2026-06-13')
  const opening = await yard.post(`${PATH}/work`, { version: '1', outdoorC: '75', now: 'openedAt' })
  expect(opening.status).toBe(422)
  expect(sheet()?.work.openedAt).toBeUndefined()

  const again = await yard.post(`${PATH}/check`, { ...(await standing(`${PATH}/check`)), is: 'go' })
  expect(again.status).toBe(422)
  expect(sheet()?.decision?.on).toBe(DAY)
  expect(again.text).toContain('cannot be “go”')
})

test('a form that was open since yesterday does not bring its ticks into today', async () => {
  const stale = await standing(`${PATH}/check`)
  expect(stale.done).toContain('sting-plan')
  yard.setDay('2026-06-13')
  const answer = await yard.post(`${PATH}/check`, { ...stale, on: '', hottestC: '75', is: 'go' })
  expect(answer.status).toBe(422)
  expect(sheet()?.check.done).toEqual([])
  expect(sheet()?.decision?.on).toBe(DAY)
})

test('gas that comes to light after “Go” holds the opening until its trade has cleared it', async () => {
  const site = await standing(`${PATH}/site`)
  expect((await yard.post(`${PATH}/site`, { ...site, behind: ['gas', 'insulation'] })).status).toBe(303)
  const version = (): string => String(yard.store.removals.get(ID)?.last.version)
  const open = () => yard.post(`${PATH}/work`, { version: version(), outdoorC: '75', now: 'openedAt' })
  expect((await open()).status).toBe(422)
  // Neither a tap takes it off …
  expect((await yard.post(`${PATH}/site`, { ...site, version: version(), behind: 'none' })).status).toBe(422)
  // … nor the kind of bees, nor the customer's word.
  await yard.post(`${PATH}/job`, { version: version(), name: 'Ottoline Fairweather', what: 'swarm' })
  const clear = { hazard: 'gas', 'trade-gas.licence': 'Owner', 'trade-gas.on': DAY }
  const own = await yard.post(`${PATH}/clear`, { ...clear, 'trade-gas.who': 'Ottoline Fairweather' })
  expect(own.status).toBe(422)
  expect((await open()).status).toBe(422)
  expect(sheet()?.work.openedAt).toBeUndefined()
  expect(sheet()?.site.behind).toContain('gas')
})

test('times typed by hand without a “Go” are kept, and said', async () => {
  const { decision: _, ...undecided } = but({})
  const other = ID.replace(/9$/, '8')
  yard.store.removals.save(other, 0, undecided, { savedAt: `${DAY}T08:00:00.000Z`, savedBy: 'Ines' })
  await yard.post(`/removals/${other}/work`, { version: '1', on: DAY, openedAt: '09:00', boxedAt: '11:00' })
  expect((await yard.get(`/removals/${other}`)).text).toContain('Begun without a “go”')
})
