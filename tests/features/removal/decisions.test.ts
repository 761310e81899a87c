/**
 * The decisions table: every hazard, cleared or not, by heat, by people. What "go" asks for is common practice in the
 * trade: live wires, gas and asbestos wait for whoever is licensed; work at heights and with stings is never done alone
 * (general guidance for work at heights and in heat; from memory).
 */
import { describe, expect, test } from 'vitest'
import { beforeCut, holds } from '../../../src/features/removal/before-cut.ts'
import { clearanceProblems, decisionProblems, goStands } from '../../../src/features/removal/decide.ts'
import { goneFrom, stays } from '../../../src/features/removal/grave.ts'
import { CLEARED_BY, ONLY_THE_TRADE } from '../../../src/features/removal/hazards.ts'
import { TICKED, type TickedId } from '../../../src/features/removal/item.ts'
import { placeOf } from '../../../src/features/removal/place.ts'
import { secondProblems, takesAccount } from '../../../src/features/removal/second.ts'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import {
  type Noted,
  TRADE_HAZARDS,
  type Trade,
  type TradeHazard,
} from '../../../src/records/said-by-others.ts'
import { DEFAULT_PROTOCOL } from '../../../src/recovery/protocol.ts'
import { but, DAY, DRAWN, goAt, here, PAPER, READY, SHOWS, YARD } from './ready.ts'

const reckon = (s: Sheet, day = DAY) => beforeCut(s, DEFAULT_PROTOCOL, SHOWS, day)
/** A reason and a decider are always given: only what no reason gets past is left. */
const mayGo = (s: Sheet, day = DAY): boolean =>
  decisionProblems({ is: 'go', by: 'Ines', reason: 'It is late, the customer waits.' }, reckon(s, day), s)
    .length === 0

const withHazard = (s: Sheet, hazard: TradeHazard): Sheet => {
  const behind = (['electric', 'electric-in-cut', 'gas', 'flue'] as const).filter((b) => b === hazard)
  const found = (['asbestos', 'lead-paint', 'weak-structure'] as const).filter((h) => h === hazard)
  return {
    ...s,
    site: {
      ...s.site,
      behind: [...(s.site.behind ?? []), ...behind],
      hazards: [...(s.site.hazards ?? []), ...found],
      ...(hazard === 'near-wires' ? { nearWires: true } : {}),
    },
  }
}
/** By the first of the trades that may. */
const by = (hazard: TradeHazard): { as: Trade } => ({ as: CLEARED_BY[hazard][0] ?? 'builder' })
const cleared = (s: Sheet, hazard: TradeHazard, knew: TradeHazard[] = [hazard]): Sheet => ({
  ...s,
  check: {
    ...s.check,
    clearances: [
      ...(s.check.clearances ?? []),
      {
        hazard,
        ...by(hazard),
        who: 'Edda Brandt',
        licence: 'Brandt & Co, 4711',
        on: DAY,
        photo: PAPER,
        knew,
        ...placeOf(s),
      },
    ],
  },
})
const signedFor = (s: Sheet, item: string, by = 'Bram'): Sheet => {
  const of = reckon(s).items.find((i) => i.id === item)?.why ?? ''
  const account = { account: true as const }
  const second = { item, by, why: 'stays' as const, ...account, on: DAY, of, ...placeOf(s) }
  return { ...s, check: { ...s.check, seconds: [...(s.check.seconds ?? []), second] } }
}
const without = (s: Sheet, ...ids: TickedId[]): Sheet => ({
  ...s,
  check: { ...s.check, done: s.check.done?.filter((d) => !(ids as string[]).includes(d)) ?? [] },
})

/** A line of this morning on the sheet. */
const line = (s: Sheet, n: Pick<Noted, 'what' | 'is'> & { words?: string }): Sheet => ({
  ...s,
  site: {
    ...s.site,
    noted: [
      ...(s.site.noted ?? []),
      { ...n, by: 'Ines', on: DAY, at: '09:00', writtenAt: `${DAY}T09:00:00.000Z` },
    ],
  },
})

type Change = (s: Sheet) => Sheet
/** What a person or the weather is like, and the item it opens; null where nothing is opened. */
const HEAT: [string, string | null, Change][] = [
  ['cool', null, (s) => s],
  ['38 °C', 'heat', (s) => ({ ...s, check: { ...s.check, hours: [], hottestC: 38 } })],
  [
    'no forecast',
    'heat',
    (s) => {
      const { hours: _, ...check } = s.check
      return { ...s, check }
    },
  ],
]
const PEOPLE: [string, string | null, Change][] = [
  ['all in order', null, (s) => s],
  ['alone on a ladder', 'ladder-person', (s) => without(s, 'ladder-person')],
  ['nobody within call', 'not-alone', (s) => without(s, 'not-alone')],
  ['no plan for stings', 'sting-plan', (s) => without(s, 'sting-plan')],
  [
    'somebody allergic',
    'allergy',
    (s) => without({ ...s, site: { ...s.site, bystanders: ['allergic'] } }, 'allergy'),
  ],
  [
    'children',
    'children',
    (s) => without({ ...s, site: { ...s.site, bystanders: ['children'] } }, 'children'),
  ],
  ['fierce bees', 'fierce', (s) => without({ ...s, site: { ...s.site, temper: 5 } }, 'fierce')],
  ['Africanized', 'fierce', (s) => without({ ...s, site: { ...s.site, africanized: 'yes' } }, 'fierce')],
  [
    'Africanized or not: not known',
    'fierce',
    (s) => without({ ...s, site: { ...s.site, africanized: 'unknown' } }, 'fierce'),
  ],
  ['temper not known', 'fierce', (s) => without({ ...s, site: { ...s.site, temper: 'unknown' } }, 'fierce')],
  [
    'nobody asked how they behave',
    'temper',
    (s) => {
      const { temper: _, ...site } = s.site
      return { ...s, site }
    },
  ],
  [
    'nobody asked of Africanized bees',
    'temper',
    (s) => {
      const { africanized: _, ...site } = s.site
      return { ...s, site }
    },
  ],
  [
    'an allergic son was written, and the words deleted',
    'notes',
    (s) => line(s, { what: 'allergic', is: 'written', words: 'my son is allergic' }),
  ],
  [
    'nobody asked who is about',
    'bystanders',
    (s) => {
      const { bystanders: _, ...site } = s.site
      return { ...s, site }
    },
  ],
]
const HAZARD_ROWS: [TradeHazard | null, boolean][] = [
  [null, true],
  ...TRADE_HAZARDS.flatMap((hazard): [TradeHazard, boolean][] => [
    [hazard, true],
    [hazard, false],
  ]),
]

describe.each(HAZARD_ROWS)('hazard %s, cleared: %s', (hazard, isCleared) => {
  const there = hazard === null ? READY : withHazard(READY, hazard)
  const base = hazard !== null && isCleared ? cleared(there, hazard) : there
  describe.each(HEAT)('heat: %s', (_heat, heatItem, heat) => {
    test.each(PEOPLE)('people: %s', (_people, personItem, people) => {
      const s = people(heat(base))
      const open = [hazard !== null && !isCleared ? `trade-${hazard}` : null, heatItem, personItem].filter(
        (i) => i !== null,
      )
      const holding = reckon(s).unmet.filter(holds)
      expect(holding.map((i) => i.id).sort()).toEqual([...open].sort())
      expect(mayGo(s)).toBe(open.length === 0)

      // Every item but what waits for the trade can be signed for by a second person, one at a time.
      const signedAll = open.reduce((made, item) => signedFor(made, item), s)
      // Nobody signs for not asking: “not known” is an answer.
      const barred =
        personItem === 'temper' ||
        personItem === 'bystanders' ||
        personItem === 'notes' ||
        (hazard !== null && !isCleared && ONLY_THE_TRADE.includes(hazard))
      expect(mayGo(signedAll)).toBe(!barred)
      if (open.length > 1) expect(mayGo(signedFor(s, open[0] ?? ''))).toBe(false)
    })
  })
})

describe('what a licensed trade decides', () => {
  test('live wires, gas and asbestos are no second person’s business', () => {
    expect([...ONLY_THE_TRADE].sort()).toEqual([
      'asbestos',
      'electric',
      'electric-in-cut',
      'gas',
      'near-wires',
    ])
  })
  test('one clearance clears one hazard', () => {
    const two = withHazard(withHazard(READY, 'gas'), 'asbestos')
    const one = cleared(two, 'gas', ['gas', 'asbestos'])
    expect(
      reckon(one)
        .unmet.filter(holds)
        .map((i) => i.id),
    ).toEqual(['trade-asbestos'])
    expect(mayGo(cleared(one, 'asbestos', ['gas', 'asbestos']))).toBe(true)
  })
  test('a hazard found later opens a clearance again, and says so', () => {
    const first = cleared(withHazard(READY, 'electric'), 'electric')
    expect(mayGo(first)).toBe(true)
    const later = withHazard(first, 'lead-paint')
    const open = reckon(later).unmet.filter(holds)
    expect(open.map((i) => i.id)).toEqual(['trade-electric', 'trade-lead-paint'])
    expect(open[0]?.why).toContain('cleared before something else was found')
    const again = cleared(cleared(later, 'electric', ['electric', 'lead-paint']), 'lead-paint', [
      'electric',
      'lead-paint',
    ])
    expect(mayGo(again)).toBe(true)
  })
  test.each(TRADE_HAZARDS)('%s: more is written of it after it was cleared', (hazard) => {
    const at = (hour: string, s: Sheet): Sheet => ({
      ...s,
      check: {
        ...s.check,
        clearances: (s.check.clearances ?? []).map((c) => ({ ...c, writtenAt: `${DAY}T${hour}:00.000Z` })),
      },
    })
    const found = line(withHazard(READY, hazard), { what: hazard, is: 'found' })
    const s = at('08:30', cleared(found, hazard))
    const tapped = (...more: string[]): Sheet => ({
      ...s,
      check: { ...s.check, done: [...(s.check.done ?? []), ...more] },
    })
    expect(mayGo(s)).toBe(false)
    expect(mayGo(tapped(`same:${hazard}`))).toBe(true)
    expect(mayGo(tapped(`same:${hazard}`), '2026-06-13'), 'of a day').toBe(false)
    expect(mayGo(tapped(`not-here:${hazard}`))).toBe(false)
    expect(mayGo(at('09:30', s)), 'it was cleared after that').toBe(true)
  })
  test('one line for everything, as sheets had it, clears nothing', () => {
    const s = withHazard(READY, 'gas')
    expect(mayGo({ ...s, check: { ...s.check, clearedBy: 'ok' } })).toBe(false)
  })
  const c = {
    hazard: 'gas' as const,
    as: 'gas-fitter' as const,
    who: 'Edda Brandt',
    licence: 'GF 4711',
    on: DAY,
    photo: PAPER,
    says: 'clear' as const,
  }
  const wrongIn = (more: object, s: Sheet = READY): string[] =>
    clearanceProblems({ ...c, ...more }, s, YARD, DAY).map((p) => p.field)
  test('a trade, a full name, a number, a day and a photo make a clearance', () => {
    expect(wrongIn({})).toEqual([])
    expect(wrongIn({ as: 'supplier', who: 'Quarry Gas Supply', licence: 'ticket 20260612-3' })).toEqual([])
  })
  test.each<[string, object, string]>([
    ['no trade', { as: undefined }, 'as'],
    ['a trade that has nothing to do with it', { as: 'builder' }, 'as'],
    ['somebody of the yard', { who: ' INES ' }, 'who'],
    ['somebody of the yard who has not written on it', { who: 'Teuila Brandt' }, 'who'],
    ['somebody whose account is closed', { who: 'Casimir' }, 'who'],
    ['the customer', { who: 'Ottoline Fairweather' }, 'who'],
    ['theirs', { who: 'Bob Fairweather' }, 'who'],
    ['half a name', { who: 'Edda' }, 'who'],
    ['a search', { who: 'Google' }, 'who'],
    ['no name', { who: 'asked him' }, 'who'],
    ['keys', { who: 'asdf' }, 'who'],
    ['no number', { licence: undefined }, 'licence'],
    ['words for a number', { licence: 'Brandt & Co' }, 'licence'],
    ['digits in a row', { licence: '12345' }, 'licence'],
    ['one digit', { licence: '0000' }, 'licence'],
    ['two, again and again', { licence: '1212' }, 'licence'],
    ['a day', { licence: '2026-06-12' }, 'licence'],
    ['a year', { licence: 'none, 2026' }, 'licence'],
    ['a time', { licence: 'asked at 09:15' }, 'licence'],
    ['the address', { who: '4 Invented Row' }, 'who'],
    ['who only marks the pipe', { as: 'locator' }, 'as'],
    ['a day as people write it', { licence: '12/06/2026' }, 'licence'],
    ['a day in one word', { licence: 'asked 20260612' }, 'licence'],
    ['no photo', { photo: undefined }, 'photos'],
    ['nobody', { who: 'Not Yet' }, 'who'],
    ['nobody asked', { who: 'Nobody Asked' }, 'who'],
    ['me', { who: 'Me Myself' }, 'who'],
    ['whose house it is', { who: 'Owner Says OK' }, 'who'],
    ['a trade, and no name', { who: 'Local Electrician' }, 'who'],
    ['a trade, and no company', { who: 'Electric Company' }, 'who'],
    ['tomorrow', { on: '2026-06-13' }, 'on'],
    ['last year', { on: '2025-06-12' }, 'on'],
  ])('not: %s', (_, more, field) => {
    expect(wrongIn(more)).toEqual([field])
  })
  test('the customer’s telephone is no licence, and what was before the call is not for this job', () => {
    const called = but({ job: { ...READY.job, phone: '555 0100', calledOn: '2026-06-10' } })
    expect(wrongIn({ licence: '5550100' }, called)).toEqual(['licence'])
    expect(wrongIn({ licence: '+1 555 0100' }, called)).toEqual(['licence'])
    expect(wrongIn({ on: '2026-06-09' }, called)).toEqual(['on'])
    expect(wrongIn({ on: '2026-06-10' }, called)).toEqual([])
  })
  test.each(ONLY_THE_TRADE)('%s is not cleared by a name and a number without a photo', (hazard) => {
    const s = cleared(withHazard(READY, hazard), hazard)
    expect(mayGo(s)).toBe(true)
    const bare = s.check.clearances?.map(({ photo: _, ...x }) => x) ?? []
    expect(mayGo({ ...s, check: { ...s.check, clearances: bare } })).toBe(false)
  })
  test('what was cleared before it was found here is not this', () => {
    const stamp = { by: 'Ines', on: DAY, at: '08:00', writtenAt: `${DAY}T08:00:00.000Z` }
    const found = (what: TradeHazard): Sheet =>
      but({ site: { ...READY.site, noted: [{ what, is: 'found', ...stamp }] } })
    for (const hazard of ['gas', 'electric', 'electric-in-cut', 'near-wires'] as const) {
      const more = { hazard, ...by(hazard) }
      expect(wrongIn({ ...more, on: '2026-06-11' }, found(hazard)), hazard).toEqual(['on'])
      expect(wrongIn(more, found(hazard)), hazard).toEqual([])
    }
    // A survey may be older, of this very wall.
    const survey = { hazard: 'asbestos', as: 'surveyor', on: '2024-06-12' }
    expect(wrongIn({ ...survey, says: undefined }, found('asbestos'))).toEqual(['says'])
    expect(wrongIn(survey, found('asbestos'))).toEqual([])
  })
  test('one number and one photo are not the licence of two trades', () => {
    const s = cleared(withHazard(withHazard(READY, 'electric'), 'gas'), 'electric')
    expect(wrongIn({ licence: 'GF 4711' }, s), 'the same photo').toEqual(['licence'])
    expect(wrongIn({ licence: 'Brandt & Co, 4711', photo: 'b'.repeat(64) }, s), 'the same number').toEqual([
      'licence',
    ])
    expect(wrongIn({ photo: 'b'.repeat(64) }, s)).toEqual([])
  })
  test('a survey of 1950 is none; one of five years stands', () => {
    const survey = { hazard: 'asbestos', as: 'surveyor', says: 'clear' }
    expect(wrongIn({ ...survey, on: '1950-01-01' })).toEqual(['on'])
    expect(wrongIn({ ...survey, on: '2021-06-12' })).toEqual([])
    expect(wrongIn({ ...survey, on: '2021-06-11' })).toEqual(['on'])
  })
  test('a builder has no number everywhere: a photo of the paper does', () => {
    const weak = { hazard: 'weak-structure', as: 'builder', licence: undefined, photo: undefined }
    expect(wrongIn(weak)).toEqual(['licence'])
    expect(wrongIn({ ...weak, photo: 'a'.repeat(64) })).toEqual([])
    expect(wrongIn({ licence: undefined, photo: 'a'.repeat(64) })).toEqual(['licence'])
  })
  test('nothing is cleared that nobody knows the place of', () => {
    const { where: _, ...site } = READY.site
    expect(clearanceProblems(c, but({ site }), YARD, DAY).map((p) => p.message)).toEqual([
      expect.stringContaining('where the bees are first'),
    ])
    // Nor does one fit that was written down without a place.
    const s = withHazard(READY, 'gas')
    const bare = { ...c, knew: ['gas' as const] }
    expect(mayGo({ ...s, check: { ...s.check, clearances: [bare] } })).toBe(false)
    expect(mayGo({ ...s, check: { ...s.check, clearances: [{ ...bare, ...placeOf(s) }] } })).toBe(true)
  })
  test('a hazard does not vanish by a tap; once cleared it may be taken off', () => {
    const s = withHazard(READY, 'gas')
    expect(stays(s, READY, DAY)).toEqual(['gas'])
    expect(stays(cleared(s, 'gas'), READY, DAY)).toEqual([])
    expect(goneFrom(cleared(s, 'gas'), READY)).toEqual(['gas'])
    // What was made dead weeks ago may be live again.
    expect(stays(cleared(s, 'gas'), READY, '2026-08-12')).toEqual(['gas'])
    expect(goneFrom(READY, s)).toEqual([])
  })
})

describe('looks that nobody has had', () => {
  const { behind: _behind, hazards: _hazards, old: _old, ...unlooked } = READY.site
  test('services not located: no go, and nobody can sign for it', () => {
    const s = but({ site: { ...unlooked, hazards: [], old: 'no' } })
    expect(mayGo(s)).toBe(false)
    expect(mayGo(signedFor(s, 'services'))).toBe(false)
  })
  test.each(['yes', 'unknown', undefined] as const)(
    'built before 1980: %s; nobody looked for asbestos and lead: no go, and nobody can sign for it',
    (old) => {
      const s = but({ site: { ...unlooked, behind: [], ...(old === undefined ? {} : { old }) } })
      expect(mayGo(s)).toBe(false)
      expect(mayGo(signedFor(s, 'old-building'))).toBe(false)
    },
  )
  test('an empty sheet does not go, whatever the reason', () => {
    expect(mayGo({ job: {}, site: {}, agreement: {}, check: {}, work: {} })).toBe(false)
  })
  test('a nest that was tapped as a swarm is asked like a nest', () => {
    const s = but({ job: { ...READY.job, bees: 'nest' }, site: { ...unlooked, type: 'swarm' } })
    expect(mayGo(s)).toBe(false)
  })
  test('what was found counts for a swarm too: a power line beside it', () => {
    const swarm = but({ job: { ...READY.job, bees: 'swarm' }, site: { ...READY.site, type: 'swarm' } })
    expect(mayGo(swarm)).toBe(true)
    expect(mayGo(withHazard(swarm, 'electric-in-cut'))).toBe(false)
  })
})

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

describe('“go” stands', () => {
  const gone: Sheet = { ...READY, decision: goAt() }
  test('for the wall and the house that were looked at', () => {
    const at = (s: Sheet): boolean => goStands(here(s), reckon(here(s)), DAY)
    expect(at(gone)).toBe(true)
    expect(at({ ...gone, job: { ...gone.job, address: '99 New Road' } })).toBe(false)
    expect(at({ ...gone, site: { ...gone.site, where: 'chimney breast, the other house' } })).toBe(false)
    const { address: _a, where: _w, ...bare } = gone.decision ?? { is: 'go', by: 'Ines', on: DAY, unmet: [] }
    expect(at({ ...gone, decision: bare })).toBe(false)
  })
  test('on its day, until something comes up', () => {
    expect(goStands(gone, reckon(gone), DAY)).toBe(true)
    expect(goStands(gone, reckon(gone), '2026-06-13')).toBe(false)
    for (const hazard of TRADE_HAZARDS) {
      const s = withHazard(gone, hazard)
      expect(goStands(s, reckon(s), DAY)).toBe(false)
    }
    for (const id of TICKED) {
      const s = without(gone, id)
      const open = reckon(s).unmet.some(holds)
      expect(goStands(s, reckon(s), DAY)).toBe(!open)
    }
  })
})
