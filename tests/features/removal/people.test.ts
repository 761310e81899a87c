/** A second person is another one, can be found again, and signs for what it was, that day; some things nobody signs for. */
import { describe, expect, test } from 'vitest'
import { placeOf } from '../../../src/features/removal/place.ts'
import { sameName } from '../../../src/features/removal/same-name.ts'
import { secondProblems, takesAccount } from '../../../src/features/removal/second.ts'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { but, DAY, DRAWN, READY, YARD } from './ready.ts'
import { mayGo, reckon, signedFor, without } from './reckoned.ts'

describe('a second person', () => {
  const ladder = without(READY, 'ladder-person')
  test('is another one than who decides', () => {
    expect(mayGo(signedFor(ladder, 'ladder-person', 'ines'))).toBe(false)
    const wrong = (x: { by: string }): string[] =>
      secondProblems({ item: 'heat', why: 'stays', account: true, ...x }, READY, YARD).map((p) => p.field)
    expect(wrong({ by: 'Bram' })).toEqual([])
    expect(wrong({ by: 'Ines' })).toEqual(['by'])
    expect(secondProblems({ item: 'heat', by: 'Bram', account: true }, READY, YARD)).toMatchObject([
      { field: 'why' },
    ])
  })
  const PHONE = '555 0177'
  test('without an account: first and last name, drawn for this one item, and their own telephone', () => {
    const wrong = (by: string, more: { path?: string; phone?: string } = {}, s = READY): string[] =>
      secondProblems({ item: 'heat', by, why: 'seen', ...more }, s, YARD).map((p) => p.field)
    const both = { path: DRAWN, phone: PHONE }
    expect(wrong('Zed Quill', both)).toEqual([])
    expect(wrong('Zed Quill', { path: DRAWN })).toEqual(['phone'])
    expect(wrong('Zed Quill', { phone: PHONE })).toEqual(['drawing'])
    expect(wrong('Zed Quill', { ...both, path: 'M1 1L2 2' }), 'a slip of the finger').toEqual(['drawing'])
    expect(wrong('Zed Quill', { ...both, path: 'M10 90L110 90' }), 'one stroke').toEqual(['drawing'])
    expect(wrong('Zed Quill', { ...both, path: 'M10 90L590 90' }), 'one line').toEqual(['drawing'])
    const signed = { ...signedFor(READY, 'kit') }
    const drawn = { item: 'kit', by: 'Zed Quill', why: 'seen' as const, on: DAY, of: 'x', ...both }
    const twice = { ...signed, check: { ...signed.check, seconds: [drawn] } }
    expect(wrong('Zed Quill', both, twice), 'one drawing for two items').toEqual(['drawing'])
    const other = { ...both, path: 'M40 120L90 60L140 130L230 50' }
    expect(wrong('Zed Quill', other, twice)).toEqual([])
    expect(wrong('Ada Marsh', other, twice), 'the telephone of another one').toEqual(['phone'])
    const called = { ...READY, job: { ...READY.job, phone: '(01) 555 0177' } }
    expect(wrong('Zed Quill', both, called), 'the customer’s telephone').toEqual(['phone'])
    for (const phone of ['0100', '1111111', '12345678', '2026-06-12'])
      expect(wrong('Zed Quill', { ...both, phone }), phone).toEqual(['phone'])
    for (const by of [
      'Zed Q',
      'nobody',
      'Not Here',
      'Ines Albrecht',
      'Ottoline Fairweather',
      'Jim Fairweather',
    ])
      expect(wrong(by, both), by).toEqual(['by'])
    for (const by of ['Bram', 'bram', 'Bram Oyelaran', 'Casimir'])
      expect(wrong(by, both), `nobody draws under the name of an account: ${by}`).toEqual(['by'])
  })
  test('being alone and having no plan for stings take an account', () => {
    const items = ['not-alone', 'ladder-person', 'sting-plan'] as const
    expect(items.every(takesAccount)).toBe(true)
    for (const item of items) {
      const s = without(READY, item)
      expect(mayGo(signedFor(s, item))).toBe(true)
      const byHand = { item, by: 'Zed Quill', why: 'stays' as const, path: DRAWN, phone: PHONE }
      expect(secondProblems(byHand, s, YARD).map((p) => p.field)).toEqual(['by'])
      const of = reckon(s).items.find((i) => i.id === item)?.why ?? ''
      const second = { ...byHand, on: DAY, of, ...placeOf(s) }
      expect(mayGo({ ...s, check: { ...s.check, seconds: [second] } }), 'from a program').toBe(false)
    }
  })
  test('wires near bees or ladder are asked at every job, and not known is no answer to go on', () => {
    const ground = but({ site: { ...READY.site, access: 'ground', heightM: 1 } })
    const free = but({
      job: { ...READY.job, bees: 'swarm' },
      site: { type: 'swarm', access: 'ground', heightM: 1, bystanders: [], temper: 1, africanized: 'no' },
    })
    for (const s of [READY, ground, free]) {
      const { wires: _, ...check } = s.check
      const said = (more: object): Sheet => ({ ...s, check: { ...check, ...more } })
      const states = [said({}), said({ wires: 'none' }), said({ wires: 'unknown' })].map(
        (x) => reckon(x).items.find((i) => i.id === 'wires')?.state,
      )
      expect(states).toEqual(['unsaid', 'met', 'unmet'])
      expect(mayGo(said({}))).toBe(false)
      expect(mayGo(said({ wires: 'unknown' }))).toBe(false)
      expect(mayGo(signedFor(said({}), 'wires')), 'nobody signs for that').toBe(false)
      expect(reckon(said({ wires: 'none' }), '2026-06-13').items.find((i) => i.id === 'wires')?.state).toBe(
        'unsaid',
      )
    }
  })
  test('signs for what it was: hotter than that is signed for again', () => {
    const at = (hottestC: number): Sheet => but({ check: { ...READY.check, hours: [], hottestC } })
    const signed = signedFor(at(31), 'heat')
    expect(mayGo(signed)).toBe(true)
    expect(mayGo({ ...signed, check: { ...signed.check, hottestC: 39 } })).toBe(false)
  })
  test('signs for the day', () => {
    const signed = signedFor(ladder, 'ladder-person')
    expect(mayGo(signed)).toBe(true)
    expect(mayGo(signed, '2026-06-13')).toBe(false)
  })
  test('cannot stand for a shop vacuum', () => {
    const s = but({ check: { ...READY.check, vacuum: 'shop-vacuum' } })
    expect(mayGo(signedFor(s, 'vacuum'))).toBe(false)
  })
})

describe('the same person under another name', () => {
  test.each([
    ['Ines', 'ines albrecht'],
    ['Ines A.', 'Ines'],
    ['Inès', 'INES'],
    ['Albrecht, Ines', 'Ines Albrecht'],
    ['I. Albrecht', 'Ines Albrecht'],
  ])('%s is %s', (a, b) => {
    expect(sameName(a, b)).toBe(true)
    // By hand, one is not the other's second person.
    const people = { first: [b], yard: [b], accounts: [b], open: [b], fresh: [], elsewhere: new Map() }
    const byHand = { item: 'heat', by: a, why: 'seen' as const, path: DRAWN, phone: '555 0177' }
    if (a !== b) expect(secondProblems(byHand, READY, people)).toMatchObject([{ field: 'by' }])
  })
  test('others are others', () => {
    expect(sameName('Ines Albrecht', 'Ines Brandt')).toBe(false)
    expect(sameName('Ann', 'Anna')).toBe(false)
    expect(sameName('...', 'Ines')).toBe(false)
  })
})

test('whoever stays and watches is at one job', () => {
  const stays = { item: 'not-alone', by: 'Bram', why: 'seen' as const, account: true as const }
  expect(secondProblems(stays, READY, YARD)).toEqual([])
  const busy = { ...YARD, elsewhere: new Map([['Bram', 'Mrs Umber']]) }
  expect(secondProblems(stays, READY, busy)).toMatchObject([
    { field: 'by', message: expect.stringContaining('is at Mrs Umber today') },
  ])
  // Who has looked at something can have done so on the way.
  expect(secondProblems({ ...stays, item: 'heat' }, READY, busy)).toEqual([])
})

test('the customer is no second person', () => {
  const wrong = (customer: string): string[] =>
    secondProblems(
      { item: 'heat', by: 'Mrs Fairweather', why: 'stays', path: DRAWN, phone: '555 0177' },
      { ...READY, job: { ...READY.job, name: customer }, agreement: {} },
      YARD,
    ).map((p) => p.field)
  expect(wrong('Fairweather')).toContain('by')
})
