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
  expect((await yard.get(`${PATH}/work`)).text).toContain('value="openedAt"')
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
  // Nothing offers to open it.
  expect((await yard.get(`${PATH}/work`)).text).not.toContain('value="openedAt"')
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

test('a form that lay open over night does not open it on yesterday’s temperature', async () => {
  const stale = await standing(`${PATH}/work`)
  expect(stale.shownOn).toContain(DAY)
  yard.setDay('2026-06-13')
  yard.store.removals.save(
    ID,
    1,
    {
      ...READY,
      job: { ...READY.job, plannedOn: '2026-06-13' },
      check: { ...READY.check, on: '2026-06-13', doneOn: '2026-06-13' },
      decision: { is: 'go', by: 'Ines', on: '2026-06-13', unmet: [] },
    },
    { savedAt: '2026-06-13T08:00:00.000Z', savedBy: 'Ines' },
  )
  const open = (more: object) =>
    yard.post(`${PATH}/work`, { ...stale, version: '2', outdoorC: '75', now: 'openedAt', ...more })
  const answer = await open({})
  expect(answer.status).toBe(422)
  expect(answer.text).toContain('How hot is it now?')
  expect(sheet()?.work.openedAt).toBeUndefined()
  expect(
    (await open({ version: String(yard.store.removals.get(ID)?.last.version), shownOn: '2026-06-13' }))
      .status,
  ).toBe(303)
  expect(sheet()?.work).toMatchObject({ on: '2026-06-13', openedAt: '12:00' })
})

test('a temperature that passed once is asked again, one over the limit stands until a second person has signed', async () => {
  const at = async (outdoorC: number): Promise<string> => {
    const id = ID.replace(/9$/, outdoorC > 30 ? '7' : '6')
    const work = { on: DAY, outdoorC, water: true }
    yard.store.removals.save(id, 0, { ...READY, work }, { savedAt: `${DAY}T08:00:00.000Z`, savedBy: 'Ines' })
    return String((await standing(`/removals/${id}/work`)).outdoorC)
  }
  expect(await at(20)).toBe('')
  expect(await at(36)).not.toBe('')
})

test('what comes to light once it is open is said on top: stop', async () => {
  await yard.post(`${PATH}/work`, { version: '1', outdoorC: '75', now: 'openedAt' })
  const before = (await yard.get(PATH)).text
  expect(before).not.toContain('id="unmet"')
  const site = await standing(`${PATH}/site`)
  await yard.post(`${PATH}/site`, { ...site, behind: ['gas', 'insulation'] })
  const { text } = await yard.get(PATH)
  expect(text).toContain('id="unmet"')
  expect(text).toContain('1 thing stops it')
  // The work is written down all the same: what happened cannot be refused.
  const version = String(yard.store.removals.get(ID)?.last.version)
  expect(
    (await yard.post(`${PATH}/work`, { version, now: 'boxedAt', on: DAY, openedAt: '12:00' })).status,
  ).toBe(303)
})

test('nobody who has written on the sheet clears its gas', async () => {
  const site = await standing(`${PATH}/site`)
  await yard.post(`${PATH}/site`, { ...site, behind: ['gas', 'insulation'] })
  const clear = (who: string) =>
    yard.post(`${PATH}/clear`, {
      hazard: 'gas',
      'trade-gas.who': who,
      'trade-gas.licence': 'GF 12',
      'trade-gas.on': DAY,
    })
  // Bram wrote a version of it once, and is at home today.
  const last = yard.store.removals.get(ID)?.last
  const stamp = { savedAt: `${DAY}T09:00:00.000Z`, savedBy: 'Bram' }
  const told = { ...last?.sheet, job: { ...last?.sheet.job, told: 'Bees.' } }
  expect(yard.store.removals.save(ID, last?.version ?? 0, told, stamp).ok).toBe(true)
  expect((await clear('Bram Oyelaran')).status).toBe(422)
  expect((await clear('Edda Brandt')).status).toBe(303)
  expect(sheet()?.check.clearances).toMatchObject([{ address: '4 Invented Row', where: 'left of the porch' }])
})

test('“Looked: none” together with a gas pipe is a gas pipe', async () => {
  const site = await standing(`${PATH}/site`)
  await yard.post(`${PATH}/site`, { ...site, behind: ['none', 'gas', 'insulation'] })
  expect(sheet()?.site.behind).toEqual(['gas', 'insulation'])
})

test('the same “Go” sent twice is one, and never gets past what came to light between', async () => {
  const check = await standing(`${PATH}/check`)
  const { decision: _, ...undecided } = but({ check: { ...READY.check } })
  const id = ID.replace(/9$/, '5')
  yard.store.removals.save(id, 0, undecided, { savedAt: `${DAY}T08:00:00.000Z`, savedBy: 'Ines' })
  const go = () => yard.post(`/removals/${id}/check`, { ...check, version: '1', is: 'go' })
  expect((await go()).status).toBe(303)
  expect((await go()).status).toBe(303)
  const { last } = yard.store.removals.get(id) ?? {}
  yard.store.removals.save(
    id,
    last?.version ?? 0,
    { ...last?.sheet, site: { ...last?.sheet.site, behind: ['electric-in-cut', 'insulation'] } },
    { savedAt: `${DAY}T09:00:00.000Z`, savedBy: 'Bram' },
  )
  expect((await go()).status).toBe(422)
  const opening = { version: String((last?.version ?? 0) + 1), outdoorC: '75', now: 'openedAt' }
  expect((await yard.post(`/removals/${id}/work`, opening)).status).toBe(422)
})
