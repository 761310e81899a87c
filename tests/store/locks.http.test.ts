/** A suspected brood disease holds a colony: moving, uniting and giving brood away are refused until it is cleared. */
import { expect, test } from 'vitest'
import { add, CONTEXT, given, inspection, intake, memoryStore, newId, outcome, refusal } from './helpers.ts'

const move = (colony: string, on: string, more: Record<string, unknown> = {}) => ({
  id: newId(),
  colony,
  kind: 'move' as const,
  yard: 'Orchard lane',
  on,
  by: 'Odalys',
  ...more,
})
const cleared = (colony: string, on: string, more: Record<string, unknown> = {}) => ({
  id: newId(),
  colony,
  kind: 'disease-cleared' as const,
  clearedBy: 'inspector',
  on,
  by: 'Odalys',
  ...more,
})
const suspect = (colony: string, on: string, more: Record<string, unknown> = {}) =>
  inspection(colony, on, { signs: ['brood-disease-suspected'], ...more })
const clean = (colony: string, on: string) => inspection(colony, on, { signs: [] })

/** W-7 is suspected on 20 May; W-8 is well. */
function yard() {
  const store = memoryStore()
  const look = suspect('W-7', '2026-05-20')
  add(store, intake('W-7'), intake('W-8'), look)
  return { store, look }
}

test('a held colony may not be moved, moved out, united, united into, or used as a donor', () => {
  const { store } = yard()
  const held =
    /brood disease was suspected in W-7 on Wed 20 May and is not cleared.*call the apiary inspector.*local codes decide/
  for (const [field, entry] of [
    ['yard', move('W-7', '2026-05-21')],
    ['what', outcome('W-7', '2026-05-21')],
    ['what', outcome('W-7', '2026-05-21', { what: 'united', into: 'W-8' })],
    ['into', outcome('W-8', '2026-05-21', { what: 'united', into: 'w-7' })],
    ['donor', given('W-8', '2026-05-21', { donor: 'W-7' })],
    ['donor', given('W-8', '2026-05-21', { what: 'combs', donor: 'W-7' })],
  ] as const) {
    const said = refusal(store, entry)
    expect(said).toMatch(held)
    expect(said).toMatch(new RegExp(`^1 ${field}: `))
  }
})

test('what does not carry the disease away is let in', () => {
  const { store } = yard()
  for (const entry of [
    clean('W-7', '2026-05-21'),
    given('W-7', '2026-05-21', { what: 'syrup', litres: 1 }),
    given('W-8', '2026-05-21', { donor: 'a friend’s hive' }),
    move('W-8', '2026-05-21'),
    move('W-7', '2026-05-19'),
    outcome('W-7', '2026-05-25', { what: 'died', cause: 'Burnt by order of the inspector.' }),
  ])
    expect(refusal(store, entry)).toBe('')
})

test('on the day itself the clock decides, where both times are known', () => {
  const store = memoryStore()
  add(store, intake('W-7'), suspect('W-7', '2026-05-20', { at: '12:00' }))
  expect(refusal(store, move('W-7', '2026-05-20', { at: '13:00' }))).not.toBe('')
  expect(refusal(store, move('W-7', '2026-05-20'))).not.toBe('')
  expect(refusal(store, move('W-7', '2026-05-20', { at: '11:00' }))).toBe('')
})

test('a clean look alone does not clear it, and the refusal says so', () => {
  const { store } = yard()
  add(store, clean('W-7', '2026-05-27'))
  expect(refusal(store, move('W-7', '2026-05-28'))).toContain(
    'The clean look on Wed 27 May does not clear it by itself.',
  )
  expect(store.colony('W-7')?.summary).toMatchObject({ action: 'call-inspector' })
  expect(store.colony('W-7')?.summary.actionWhy).toContain('a clean look since does not clear it')
  expect(store.colony('W-7')?.summary.actionWhy).toContain('suspected on Wed 20 May')
})

test('a recorded clearance lets it go from that day on, and not before', () => {
  const { store } = yard()
  add(store, cleared('W-7', '2026-05-25', { reference: 'R-112' }))
  expect(store.colony('W-7')?.summary.action).not.toBe('call-inspector')
  expect(refusal(store, move('W-7', '2026-05-24'))).not.toBe('')
  expect(refusal(store, given('W-8', '2026-05-25', { donor: 'W-7' }))).toBe('')
  expect(refusal(store, move('W-7', '2026-05-25'))).toBe('')
  add(store, suspect('W-7', '2026-05-30'))
  expect(refusal(store, move('W-7', '2026-05-31'))).toContain('suspected in W-7 on Sat 30 May')
})

test('an own look clears it only after a later look with the lid off that found nothing', () => {
  const { store } = yard()
  const own = (on: string) => cleared('W-7', on, { clearedBy: 'own-look' })
  expect(refusal(store, own('2026-05-26'))).toMatch(/^1 clearedBy: needs a later look with the lid off/)
  add(store, inspection('W-7', '2026-05-26', { opened: false, signs: [] }))
  expect(refusal(store, own('2026-05-26'))).toMatch(/^1 clearedBy: /)
  expect(refusal(store, clean('W-7', '2026-05-27'), own('2026-05-27'))).toBe('')
})

test('there must be something to clear', () => {
  const { store } = yard()
  expect(refusal(store, cleared('W-8', '2026-05-25'))).toContain('there is nothing to clear')
  expect(refusal(store, cleared('W-7', '2026-05-19'))).toContain('is before the look that suspected it')
})

test('a suspicion that arrives late refuses nothing that is in the journal, and its moves can be corrected', () => {
  const store = memoryStore()
  const moved = move('W-7', '2026-05-22')
  add(store, intake('W-7'), moved)
  add(store, suspect('W-7', '2026-05-20'))
  const mended = move('W-7', '2026-05-22', { replaces: moved.id, note: 'Two people carried it.' })
  expect(refusal(store, mended)).toBe('')
  expect(refusal(store, move('W-7', '2026-05-22', { replaces: mended.id, yard: 'Third yard' }))).not.toBe('')
})

test('taking back the look that suspected it frees the colony, cleared or not', () => {
  const { store, look } = yard()
  add(store, cleared('W-7', '2026-05-25'))
  const taken = {
    id: newId(),
    colony: 'W-7',
    kind: 'withdrawal',
    replaces: look.id,
    reason: 'Wrong box.',
    on: '2026-05-26',
    by: 'Odalys',
  }
  expect(refusal(store, taken)).toBe('')
  expect(refusal(store, move('W-7', '2026-05-24'))).toBe('')
})

test('a visit that suspects disease and takes a frame to another colony in one batch is refused whole', () => {
  const { store } = yard()
  const said = refusal(store, suspect('W-8', '2026-05-28'), given('W-7', '2026-05-28', { donor: 'W-8' }))
  expect(said).toMatch(/^2 donor: brood disease was suspected in W-8/)
  expect(store.colony('W-8')?.journal).toHaveLength(1)
})

test('a journal loaded whole is not judged again, and is the same yard', () => {
  const { store } = yard()
  const late = memoryStore()
  const lines = [...store.journal()].map(({ entry, written, recordedAt, recordedBy }) => ({
    raw: { ...entry, colony: written },
    recordedAt,
    recordedBy,
  }))
  const moved = { raw: move('W-7', '2026-05-22'), recordedAt: CONTEXT.recordedAt, recordedBy: 'Odalys' }
  expect(late.load([...lines, moved], CONTEXT.today)).toMatchObject({ ok: true })
  expect(late.verify()).toMatchObject({ ok: true })
})
