/** “Please look at this”: on a beekeeper’s Today until somebody else has been there, or has answered. */
import { v7 } from 'uuid'
import { expect, it } from 'vitest'
import { intakes } from '../../support/field.ts'
import { type Yard, yardOn } from '../../support/yard-on.ts'

const DAY = '2026-06-10'
const ASKED = 'Is this chalkbrood?'

async function asking(
  role: 'helper' | 'beekeeper',
): Promise<{ yard: Yard; add: (e: Record<string, unknown>) => void }> {
  const yard = await yardOn(DAY, role)
  let minute = 0
  const add = (e: Record<string, unknown>): void => {
    const recordedAt = `${DAY}T08:${String(minute++).padStart(2, '0')}:00.000Z`
    const result = yard.store.append([{ id: v7(), colony: 'W-01', on: DAY, ...e }], {
      today: DAY,
      recordedAt,
    })
    expect(result).toMatchObject({ ok: true })
  }
  yard.store.append(intakes(['W-01', 'W-02'], '2026-06-04'), {
    today: DAY,
    recordedAt: `${DAY}T07:00:00.000Z`,
  })
  return { yard, add }
}

const look = (by: string) => ({ kind: 'inspection', opened: true, eggs: 'single', by })

it('stands on a beekeeper’s Today with the words and the name, and on no helper’s', async () => {
  for (const role of ['beekeeper', 'helper'] as const) {
    const { yard, add } = await asking(role)
    add({ kind: 'note', by: 'Teuila', text: ASKED, asks: 'look' })
    const { text } = await yard.get('/')
    expect(text.includes(ASKED), role).toBe(role === 'beekeeper')
    if (role === 'beekeeper') expect(text).toMatch(/signed\s+Teuila/)
  }
})

it.each([
  ['a look by who asked', look('Teuila'), true],
  ['a look by another, the same day', look('Maren'), false],
  ['an answer by another', { kind: 'note', by: 'Maren', text: 'It is; leave it be.' }, false],
  ['another box’s look', { ...look('Maren'), colony: 'W-02' }, true],
])('after %s', async (_, entry, stands) => {
  const { yard, add } = await asking('beekeeper')
  add(look('Maren'))
  add({ kind: 'note', by: 'Teuila', text: ASKED, asks: 'look' })
  expect((await yard.get('/')).text).toContain(ASKED)
  add(entry)
  expect((await yard.get('/')).text.includes(ASKED)).toBe(stands)
})

it('a note taken back asks nothing; a plain note never did', async () => {
  const { yard, add } = await asking('beekeeper')
  const id = v7()
  add({ id, kind: 'note', by: 'Ines', text: ASKED, asks: 'look' })
  add({ kind: 'note', by: 'Teuila', text: 'only so', colony: 'W-02' })
  await yard.post(`/entry/${id}/withdraw`, { reason: 'Tapped by mistake' })
  const { text } = await yard.get('/')
  expect(text).not.toContain(ASKED)
  expect(text).not.toContain('only so')
})

it('is asked on the form of a note, or by a link', async () => {
  const { yard } = await asking('helper')
  expect((await yard.get('/colony/W-01/note')).text).toContain('Please look at this')
  expect((await yard.get('/colony/W-01/note?asks=look')).text).toMatch(/value="look"[^>]*checked/)
  await yard.post('/colony/W-01/note', { text: ASKED, asks: 'look', on: DAY })
  expect([...yard.store.journal()].at(-1)?.entry).toMatchObject({ kind: 'note', asks: 'look' })
})
