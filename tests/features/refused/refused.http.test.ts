/** What phones could not hand in reaches a beekeeper's list, with whom to ask, and leaves it when it is in the book. */
import { v7 } from 'uuid'
import { expect, it } from 'vitest'
import { intakes } from '../../support/field.ts'
import { type Yard, yardOn } from '../../support/yard-on.ts'

const DAY = '2026-06-10'
const WORDS = 'three capped cells'

async function yardWith(role: 'helper' | 'operator' = 'operator'): Promise<Yard> {
  const yard = await yardOn(DAY, role)
  yard.store.append(intakes(['W-01', 'W-02'], '2026-06-04'), {
    today: DAY,
    recordedAt: `${DAY}T07:00:00.000Z`,
  })
  return yard
}
const died = (yard: Yard) =>
  yard.store.append(
    [{ id: v7(), colony: 'W-01', kind: 'outcome', on: '2026-06-09', by: 'Maren', what: 'died' }],
    { today: DAY, recordedAt: `${DAY}T08:00:00.000Z` },
  )
const colonyId = (yard: Yard): string => yard.store.colony('W-01')?.summary.id ?? ''
const look = (yard: Yard, id = v7()) => ({
  id,
  colony: colonyId(yard),
  kind: 'inspection',
  on: DAY,
  by: 'Teuila',
  opened: true,
  note: WORDS,
})
/** As a phone of another helper handed it over. */
const left = (yard: Yard, entry: unknown) =>
  yard.send('/entries/left', { person: 'Teuila', entries: [entry] })

it('a visit to a box that was closed meanwhile: listed with the person, the words and why; taken in once it fits', async () => {
  const yard = await yardWith()
  const entry = look(yard)
  died(yard)
  expect((await left(yard, entry)).status).toBe(200)
  expect((await yard.get('/')).text).toContain('1 entry is')
  const list = await yard.get('/refused')
  expect(list.text).toContain(WORDS)
  expect(list.text).toContain('Ask Teuila.')
  expect(list.text).toContain('has left the yard')

  expect((await yard.post(`/refused/${entry.id}/take`, {})).to).toContain('again=')
  expect((await yard.get('/refused')).text).toContain(WORDS)
  const outcome = [...yard.store.journal()].at(-1)?.entry.id ?? ''
  await yard.post(`/entry/${outcome}/withdraw`, { reason: 'It was another box' })
  expect((await yard.post(`/refused/${entry.id}/take`, {})).to).toBe('/refused?done=taken')
  expect([...yard.store.journal()].at(-1)).toMatchObject({
    recordedBy: 'Ines',
    entry: { by: 'Teuila', note: WORDS },
  })
  expect((await yard.get('/refused')).text).toContain('is in the book')
  expect((await yard.get('/')).text).not.toContain('/refused')
})

it('what its owner sends later leaves the list by itself; what was in the book never came onto it', async () => {
  const yard = await yardWith()
  const entry = look(yard)
  await left(yard, entry)
  expect(yard.store.refused.count()).toBe(1)
  expect((await yard.send('/entries', entry)).status).toBe(200)
  expect(yard.store.refused.count()).toBe(0)
  await left(yard, entry)
  expect(yard.store.refused.count()).toBe(0)
})

it('settling takes it off the list and writes nothing', async () => {
  const yard = await yardWith()
  const entry = look(yard)
  await left(yard, entry)
  const before = [...yard.store.journal()].length
  await yard.post(`/refused/${entry.id}/settle`, {})
  expect(yard.store.refused.count()).toBe(0)
  expect([...yard.store.journal()]).toHaveLength(before)
})

it('a helper hands over, and is shown nothing of it', async () => {
  const yard = await yardWith('helper')
  expect((await left(yard, look(yard))).status).toBe(200)
  expect(yard.store.refused.count()).toBe(1)
  expect((await yard.get('/refused')).status).toBe(403)
  expect((await yard.get('/')).text).not.toContain('/refused')
})

it.each([{}, { person: 'T' }, { person: '', entries: [] }, [], 'x'])('%j is refused', async (body) => {
  const yard = await yardWith()
  expect((await yard.send('/entries/left', body)).status).toBe(400)
})

it('what no schema fits is shown as it came, and can be settled', async () => {
  const yard = await yardWith()
  const id = v7()
  await left(yard, { id, colony: 'W-09', kind: 'sighting', note: '<b>odd</b>' })
  const list = await yard.get('/refused')
  expect(list.text).toContain('&lt;b&gt;odd')
  expect((await yard.post(`/refused/${id}/take`, {})).to).toContain('again=')
  expect(yard.errors).toEqual([])
})
