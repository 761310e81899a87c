/** Moving what was written down at the wrong box: all of a visit, by whoever may correct it, once. */
import { v7 } from 'uuid'
import { expect, it } from 'vitest'
import { intakes } from '../../support/field.ts'
import { type Yard, yardOn } from '../../support/yard-on.ts'

const DAY = '2026-06-10'

async function yardWithVisit(role: 'helper' | 'operator', by: string): Promise<{ yard: Yard; look: string }> {
  const yard = await yardOn(DAY, role)
  const look = v7()
  const visit = { colony: 'W-01', on: DAY, by }
  yard.store.append(
    [
      ...intakes(['W-01', 'W-02'], '2026-06-04'),
      { ...visit, id: look, kind: 'inspection', opened: true, eggs: 'single' },
      { ...visit, id: v7(), kind: 'ties-removed' },
    ],
    { today: DAY, recordedAt: `${DAY}T08:00:00.000Z`, recordedBy: by },
  )
  return { yard, look }
}

const kindsAt = (yard: Yard, tag: string): string[] =>
  yard.store.colony(tag)?.history.entries.map((e) => e.kind) ?? []

const idsIn = (page: string): string[] =>
  [...page.matchAll(/name="along" value="([^"]+)"/g)].map(([, id]) => id ?? '')

it('moves a visit with what was done there, signed as it was', async () => {
  const { yard, look } = await yardWithVisit('operator', 'Bram')
  const form = await yard.get(`/entry/${look}/other-box`)
  const saved = await yard.post(`/entry/${look}/other-box`, { to: 'w-02', along: idsIn(form.text) })
  expect(saved.status).toBe(303)
  expect(saved.to).toContain('/colony/W-02?saved=')
  expect(kindsAt(yard, 'W-01')).toEqual(['intake'])
  expect(kindsAt(yard, 'W-02')).toEqual(['intake', 'inspection', 'ties-removed'])
  expect(yard.store.colony('W-02')?.history.entries.at(-1)?.by).toBe('Bram')
})

it('leaves at the box what is not ticked', async () => {
  const { yard, look } = await yardWithVisit('operator', 'Bram')
  await yard.post(`/entry/${look}/other-box`, { to: 'W-02', along: look })
  expect(kindsAt(yard, 'W-01')).toEqual(['intake', 'ties-removed'])
  expect(kindsAt(yard, 'W-02')).toEqual(['intake', 'inspection'])
})

it.each([
  ['', 'type the tag'],
  ['W-9', 'no box of this yard'],
  ['W-01', 'W-01 itself'],
])('to “%s”, it says: %s', async (to, words) => {
  const { yard, look } = await yardWithVisit('operator', 'Bram')
  const answer = await yard.post(`/entry/${look}/other-box`, { to, along: look })
  expect(answer.status).toBe(422)
  expect(answer.text).toContain(words)
  expect(kindsAt(yard, 'W-01')).toEqual(['intake', 'inspection', 'ties-removed'])
})

it('a box that was not there on that day takes nothing, and nothing is taken back', async () => {
  const { yard, look } = await yardWithVisit('operator', 'Bram')
  yard.setDay('2026-06-12')
  yard.store.append(intakes(['W-03'], '2026-06-12'), {
    today: '2026-06-12',
    recordedAt: `${DAY}T09:00:00.000Z`,
  })
  const answer = await yard.post(`/entry/${look}/other-box`, { to: 'W-03', along: look })
  expect(answer.status).toBe(422)
  expect(kindsAt(yard, 'W-01')).toEqual(['intake', 'inspection', 'ties-removed'])
})

it('a helper moves their own visit, and nobody else’s', async () => {
  const own = await yardWithVisit('helper', 'Ines')
  expect((await own.yard.post(`/entry/${own.look}/other-box`, { to: 'W-02', along: own.look })).status).toBe(
    303,
  )
  const others = await yardWithVisit('helper', 'Bram')
  const answer = await others.yard.post(`/entry/${others.look}/other-box`, { to: 'W-02', along: others.look })
  expect(answer.status).toBe(422)
  expect(kindsAt(others.yard, 'W-02')).toEqual(['intake'])
})
