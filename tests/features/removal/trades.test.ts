/** What a licensed trade decides: who clears a hazard, with which paper, for how long, and what opens it again. */
import { describe, expect, test } from 'vitest'
import { beforeCut, holds } from '../../../src/features/removal/before-cut.ts'
import { clearanceProblems } from '../../../src/features/removal/decide.ts'
import { goneFrom, stays, withNoted } from '../../../src/features/removal/grave.ts'
import { ONLY_THE_TRADE } from '../../../src/features/removal/hazards.ts'
import { TICKED } from '../../../src/features/removal/item.ts'
import { placeOf } from '../../../src/features/removal/place.ts'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import {
  type Grave,
  type Noted,
  TRADE_HAZARDS,
  type TradeHazard,
} from '../../../src/records/said-by-others.ts'
import { DEFAULT_PROTOCOL } from '../../../src/recovery/protocol.ts'
import { but, DAY, GAS_CLEARED, PAPER, READY, SHOWS, YARD } from './ready.ts'
import { cleared, holding, line, mayGo, reckon, tradeOf, withHazard } from './reckoned.ts'

const clearedAt = (s: Sheet, hour: string) =>
  (s.check.clearances ?? []).map((c) => ({ ...c, writtenAt: `${DAY}T${hour}:00.000Z` }))

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
    expect(holding(one)).toEqual(['trade-asbestos'])
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
      check: { ...s.check, clearances: clearedAt(s, hour) },
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
      const more = { hazard, ...tradeOf(hazard) }
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

describe('an old paper', () => {
  const cleared = (hazard: 'gas' | 'asbestos', on: string): Sheet =>
    but({
      site: {
        ...READY.site,
        behind: hazard === 'gas' ? ['gas'] : [],
        behindHow: 'detector',
        hazards: hazard === 'asbestos' ? ['asbestos'] : [],
      },
      check: {
        ...READY.check,
        clearances: [
          {
            hazard,
            as: hazard === 'gas' ? 'gas-fitter' : 'surveyor',
            who: 'Edda Brandt',
            licence: '4711',
            on,
            photo: PAPER,
            knew: [hazard],
            ...placeOf(READY),
          },
        ],
      },
    })
  test('gas that was shut off two years ago may be on again; asbestos that was tested stays tested for five years', () => {
    expect(holding(cleared('gas', '2024-06-12'))).toEqual(['trade-gas'])
    expect(holding(cleared('gas', '2026-05-13'))).toEqual([])
    expect(holding(cleared('gas', '2026-05-12'))).toEqual(['trade-gas'])
    expect(holding(cleared('asbestos', '2024-06-12'))).toEqual([])
    expect(holding(cleared('asbestos', '1950-01-01'))).toEqual(['trade-asbestos'])
  })
})

describe('what was taken off and comes back', () => {
  const at = (writtenAt: string, what: Grave, is: 'found' | 'gone'): Noted => ({
    what,
    is,
    by: 'Ines',
    on: DAY,
    at: writtenAt.slice(11, 16),
    writtenAt,
  })
  const gas: Sheet = {
    ...GAS_CLEARED,
    check: {
      ...GAS_CLEARED.check,
      clearances: clearedAt(GAS_CLEARED, '09:00'),
    },
  }
  test('is cleared anew', () => {
    expect(holding(gas)).toEqual([])
    const noted = [at(`${DAY}T10:00:00.000Z`, 'gas', 'gone'), at(`${DAY}T10:05:00.000Z`, 'gas', 'found')]
    const back: Sheet = { ...gas, site: { ...gas.site, noted } }
    expect(holding(back)).toEqual(['trade-gas'])
    const again = { ...back.check, clearances: clearedAt(gas, '10:10') }
    expect(holding({ ...back, check: again })).toEqual([])
  })
  test('the allergic person is cared for anew', () => {
    const allergic: Sheet = { ...READY, site: { ...READY.site, bystanders: ['allergic'] } }
    expect(goneFrom(allergic, READY)).toEqual(['allergic'])
    const { writtenAt, by, on, at: time } = at(`${DAY}T10:00:00.000Z`, 'allergic', 'gone')
    const stamp = { writtenAt, by, on, at: time }
    const gone = withNoted(allergic, READY, { allergic: 'left' }, stamp)
    expect(gone.site.noted).toMatchObject([{ what: 'allergic', is: 'gone', why: 'left', by: 'Ines' }])
    const back = withNoted(gone, { ...gone, site: { ...gone.site, bystanders: ['allergic'] } }, {}, stamp)
    expect(holding(back)).toEqual(['allergy'])
  })
})

test('“none” on a building says how it is known, and nobody signs for not knowing', () => {
  const { old: _, ...site } = READY.site
  for (const old of [undefined, 'yes', 'unknown'] as const) {
    const s = but({ site: { ...site, ...(old === undefined ? {} : { old }) } })
    expect(holding(s)).toEqual(['old-building'])
    const item = beforeCut(s, DEFAULT_PROTOCOL, SHOWS, DAY).items.find((i) => i.id === 'old-building')
    expect(item?.weight).toBe('trade')
  }
  expect(holding(but({ site: { ...site, old: 'no' } }))).toEqual([])
  // “Not cut into” of a wall for which a blade is set is a slip.
  expect(holding(but({ site: { ...site, oldHow: 'untouched' } }))).toEqual(['old-building'])
  const { sheathingMm: _mm, ...uncut } = site
  const { cutMm: _cut, ...check } = READY.check
  const open = holding(but({ site: { ...uncut, oldHow: 'untouched' }, check }))
  expect(open).not.toContain('old-building')
})

test('a water pipe has its stopcock found, or a second person’s name', () => {
  const s = but({
    site: { ...READY.site, behind: ['insulation', 'water'] },
    check: { ...READY.check, done: TICKED.filter((t) => t !== 'stopcock') },
  })
  expect(holding(s)).toEqual(['stopcock'])
  expect(goneFrom(s, READY)).toEqual(['water'])
})
