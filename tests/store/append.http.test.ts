/** What the store takes in, what it refuses, and in which words. */
import { expect, test } from 'vitest'
import { openConnection, storeOn } from '../../src/store/node.ts'
import {
  add,
  CONTEXT,
  given,
  inspection,
  intake,
  memoryStore,
  newId,
  outcome,
  projectionBytes,
  refusal,
  TODAY,
  withdrawal,
} from './helpers.ts'

test('an intake makes the colony, and its tag names it from then on', () => {
  const store = memoryStore()
  const id = add(store, intake('A-1'))
  add(store, inspection('a-1', '2026-05-15'), inspection(id, '2026-05-16'))
  const there = store.colony('A-1')
  expect(there?.summary).toMatchObject({
    id,
    tag: 'A-1',
    yard: 'Quarry yard',
    stand: '3',
    asOf: TODAY,
    day: 22,
  })
  expect(there?.history.entries.map((e) => e.colony)).toEqual([id, id, id])
  expect(there?.journal.map((r) => r.written)).toEqual(['A-1', 'a-1', id])
  expect(store.colony(id)?.summary.tag).toBe('A-1')
  expect(store.colony('B-1')).toBeNull()
})

test('the record says who entered it: the person signed in, else the one who signed', () => {
  const store = memoryStore()
  const first = intake('A-1')
  const second = inspection('A-1', '2026-05-15')
  add(store, first)
  store.append([second], { ...CONTEXT, recordedBy: 'Teuila' })
  expect(store.entry(first.id)).toMatchObject({
    recordedBy: 'Odalys',
    recordedAt: CONTEXT.recordedAt,
    tag: 'A-1',
  })
  expect(store.entry(second.id)?.recordedBy).toBe('Teuila')
})

test('the same entry sent again is answered, not written twice', () => {
  const store = memoryStore()
  const batch = [intake('A-1'), inspection('A-1', '2026-05-15', { note: 'Loud.' })]
  const [first, second] = batch.map((e) => e.id)
  expect(store.append(batch, CONTEXT)).toEqual({ ok: true, accepted: [first, second], already: [] })
  expect(store.append(batch, CONTEXT)).toEqual({ ok: true, accepted: [], already: [first, second] })
  // Another helper has signed in on the phone; fields come in another order; the colony is called by its id.
  const { by: _by, ...rest } = batch[1] ?? {}
  expect(store.append([{ by: 'Bram', ...rest, colony: first }], CONTEXT)).toMatchObject({
    ok: true,
    already: [second],
  })
  expect(store.changes()).toHaveLength(2)
})

test('the same entry twice in one batch counts once', () => {
  const store = memoryStore()
  const entry = intake('A-1')
  expect(store.append([entry, entry], CONTEXT)).toEqual({
    ok: true,
    accepted: [entry.id],
    already: [entry.id],
  })
  expect(refusal(store, { ...entry, stand: '4' }, entry)).toBe(
    '1 id: is already that of another entry: the intake of Sun 10 May',
  )
})

test('an id used for something else is refused and nothing is written', () => {
  const store = memoryStore()
  const id = add(store, intake('A-1'), intake('A-2'))
  expect(refusal(store, inspection('A-1', '2026-05-15', { id }))).toBe(
    '1 id: is already that of another entry: the intake of Sun 10 May',
  )
  const visit = add(store, inspection('A-1', '2026-05-15'))
  expect(refusal(store, inspection('A-2', '2026-05-15', { id: visit }))).toContain(
    'is already that of another entry: the visit of Fri 15 May',
  )
  expect(store.changes()).toHaveLength(3)
})

test('an entry resent after its tag went to another colony is still the old one', () => {
  const store = memoryStore()
  const visit = inspection('A-1', '2026-05-15')
  add(store, intake('A-1'), visit, outcome('A-1', '2026-05-20'), intake('A-1', { on: '2026-05-25' }))
  expect(store.append([visit], CONTEXT)).toEqual({ ok: true, accepted: [], already: [visit.id] })
})

test('a batch is taken whole or not at all, and every fault is named with its place', () => {
  const connection = openConnection(':memory:')
  const store = storeOn(connection)
  add(store, intake('A-1'))
  const before = projectionBytes(connection)
  const faults = refusal(
    store,
    inspection('A-1', '2026-05-15'),
    inspection('A-9', '2026-05-15'),
    inspection('A-1', '2026-05-09'),
    inspection('A-1', '2026-06-02'),
    intake('A-2'),
  )
  expect(faults.split('\n')).toEqual([
    '2 colony: "A-9" is no colony of this yard: log its intake first, or check the tag',
    '3 on: 2026-05-09 is before the intake on 2026-05-10',
    '4 on: 2026-06-02 is in the future (today is 2026-06-01)',
  ])
  expect(refusal(store, intake('A-3'), { kind: 'inspection' }, 7)).toMatch(/^2 id: is missing/)
  expect(projectionBytes(connection)).toBe(before)
  expect(store.changes()).toHaveLength(1)
})

test('two colonies in the yard cannot share a tag, whatever its capitals; a tag is free again after its colony left', () => {
  const store = memoryStore()
  const first = add(store, intake('A-1'))
  expect(store.tagTaken('a-1')).toBe(true)
  expect(refusal(store, intake('a-1'))).toBe(
    '1 colony: "A-1" is already in the yard, since Sun 10 May 2026: give this one another tag, or first record how that one left',
  )
  expect(refusal(store, intake('B-1'), intake('B-1'))).toContain('2 colony: "B-1" is already in the yard')
  const left = add(store, outcome('A-1', '2026-05-20'))
  expect(store.tagTaken('A-1')).toBe(false)
  expect(store.colony('A-1')?.summary.id).toBe(first)
  const second = add(store, intake('A-1', { on: '2026-05-25' }))
  expect(store.colony('A-1')?.summary.id).toBe(second)
  // Taking the outcome back would put two of them in the yard.
  expect(refusal(store, withdrawal(first, left))).toBe(
    '1 colony: the tag "A-1" is by now on another colony in the yard, since Mon 25 May 2026',
  )
  // The old one is still there by its id, and a correction of its entries goes to it though the tag moved on.
  add(store, { ...outcome('A-1', '2026-05-21'), replaces: left })
  expect(store.colony(first)?.summary.closedOn).toBe('2026-05-21')
})

test('one batch may close a colony and use its tag again', () => {
  const store = memoryStore()
  const [first, second] = [intake('A-1'), intake('A-1', { on: '2026-05-21' })]
  add(store, first, outcome('A-1', '2026-05-20'), second, inspection('A-1', '2026-05-25'))
  expect(store.colony(first.id)?.journal).toHaveLength(2)
  expect(store.colony(second.id)?.journal).toHaveLength(2)
  expect(store.colony('A-1')?.summary.id).toBe(second.id)
})

test('a mistyped tag can be corrected, but not onto a colony in the yard', () => {
  const store = memoryStore()
  const first = intake('A-1')
  add(store, first, intake('B-1'))
  add(store, { ...intake('A-7'), replaces: first.id })
  expect(store.colony('A-7')?.summary.id).toBe(first.id)
  expect(store.colony('A-1')).toBeNull()
  const standing = store.colony('A-7')?.history.intake.id
  expect(refusal(store, { ...intake('b-1'), replaces: standing })).toContain(
    '"B-1" is by now on another colony',
  )
  // Called by its id, an intake's correction keeps the tag.
  add(store, { ...intake(first.id, { stand: '9' }), replaces: standing })
  expect(store.colony('A-7')?.summary.stand).toBe('9')
})

test('an intake needs a tag that can be painted on a box', () => {
  const store = memoryStore()
  expect(refusal(store, intake('A/1'))).toMatch(
    /^1 colony: must be letters, digits, dashes and single spaces/,
  )
  expect(refusal(store, intake('x'.repeat(41)))).toContain('1 colony: must be at most 40 characters')
  expect(refusal(store, intake(newId()))).toBe('1 colony: must be the tag painted on the box, not an id')
  expect(refusal(store, { ...intake('A-1'), replaces: newId() })).toContain(
    '1 replaces: names no entry of this yard',
  )
})

test('a correction belongs to the colony of what it corrects', () => {
  const store = memoryStore()
  add(store, intake('A-1'), intake('A-2'))
  const visit = add(store, inspection('A-1', '2026-05-15'))
  expect(refusal(store, { ...inspection('A-2', '2026-05-15'), replaces: visit })).toContain(
    `1 replaces: names no entry of this colony: ${visit}`,
  )
})

test('what goes against an entry of long ago is told of the entry that was sent', () => {
  const store = memoryStore()
  const first = add(store, intake('A-1'), inspection('A-1', '2026-05-20'))
  expect(refusal(store, intake('A-2'), outcome('A-1', '2026-05-15'))).toBe(
    '2 on: does not go with the visit of Wed 20 May, which says: 2026-05-20 is after the colony left the yard (moved-out) on 2026-05-15',
  )
  expect(refusal(store, withdrawal('A-1', first))).toBe(
    '1 replaces: does not go with the visit of Wed 20 May, which comes without an intake: log the intake first',
  )
})

test('a colony logged by mistake can be withdrawn, and its tag is free', () => {
  const store = memoryStore()
  const first = add(store, intake('A-1'))
  add(store, withdrawal('A-1', first))
  expect(store.colony('A-1')).toBeNull()
  expect(store.colonies()).toEqual([])
  expect(store.changes().map((r) => r.tag)).toEqual(['A-1', 'A-1'])
  add(store, intake('A-1'))
  expect(store.verify().problems).toEqual([])
})

test('a clock set back does not stop the work', () => {
  const store = memoryStore()
  add(store, intake('A-1'), inspection('A-1', TODAY))
  const visit = inspection('A-1', '2026-05-30')
  expect(store.append([visit], { ...CONTEXT, today: '2026-05-31' })).toMatchObject({ ok: true })
  expect(store.verify().problems).toEqual([])
})

test('united: into a colony that was in the yard, or into one elsewhere, never into itself or one long gone', () => {
  const store = memoryStore()
  add(store, intake('A-1'), intake('A-2'), outcome('A-2', '2026-05-20'), intake('A-3'))
  const united = (into: string, on = TODAY) => outcome('A-1', on, { what: 'united', into })
  expect(refusal(store, united('a-1'))).toBe('1 into: a colony cannot be united into itself')
  expect(refusal(store, united('A-2'))).toBe(
    '1 into: no such colony on Mon 1 Jun: A-2 left the yard on Wed 20 May 2026. Name one that was in the yard',
  )
  for (const fine of [united('A-2', '2026-05-19'), united('a-3'), united('the big hive at home')]) {
    const one = memoryStore()
    add(one, intake('A-1'), intake('A-2'), outcome('A-2', '2026-05-20'), intake('A-3'))
    expect(refusal(one, fine)).toBe('')
  }
})

test('a donor may be anybody', () => {
  const store = memoryStore()
  add(store, intake('A-1'), given('A-1', '2026-05-15', { donor: 'home hive 7' }))
  expect(store.colony('A-1')?.history.entries).toHaveLength(2)
})

test('the place an entry was made and what it cost stay out of the projections', () => {
  const connection = openConnection(':memory:')
  const store = storeOn(connection)
  add(store, intake('A-1'), given('A-1', '2026-05-15', { cost: 4321.79 }))
  expect(store.colony('A-1')?.history.intake.removal.site).toBe('12 Invented Way')
  expect(projectionBytes(connection)).not.toContain('Invented Way')
  expect(projectionBytes(connection)).not.toContain('4321.79')
})
