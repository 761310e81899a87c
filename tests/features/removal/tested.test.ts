/** “None: old, but tested” has its paper, wires near have their own, and nobody signs for not having asked. Invented. */
import { beforeEach, describe, expect, test } from 'vitest'
import { beforeCut, holds } from '../../../src/features/removal/before-cut.ts'
import { clearanceProblems } from '../../../src/features/removal/decide.ts'
import { seenOn } from '../../../src/features/removal/hazards.ts'
import { placeOf } from '../../../src/features/removal/place.ts'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import type { Clearance } from '../../../src/records/said-by-others.ts'
import { DEFAULT_PROTOCOL } from '../../../src/recovery/index.ts'
import { wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'
import { but, DAY, PAPER, PHOTO, READY, SHOWS, YARD } from './ready.ts'

const { old: _, ...unsaid } = READY.site
const TESTED: Sheet = but({ site: { ...unsaid, oldHow: 'tested' } })
const reckon = (s: Sheet) => beforeCut(s, DEFAULT_PROTOCOL, SHOWS, DAY)
const holding = (s: Sheet): string[] =>
  reckon(s)
    .unmet.filter(holds)
    .map((i) => i.id)
const paper = (more: Partial<Clearance> = {}): Clearance => ({
  hazard: 'asbestos',
  as: 'surveyor',
  who: 'Quarry Test Laboratory',
  licence: 'report 4711',
  on: DAY,
  says: 'clear',
  knew: [],
  ...placeOf(TESTED),
  ...more,
})
const withPaper = (s: Sheet, more: Partial<Clearance> = {}): Sheet => ({
  ...s,
  check: { ...s.check, clearances: [...(s.check.clearances ?? []), paper(more)] },
})

describe('“old, but tested”', () => {
  test('says by whom, with the number of the report or a photo of it', () => {
    expect(holding(TESTED)).toEqual(['old-building'])
    expect(holding(withPaper(TESTED))).toEqual([])
    const wrong = (more: Partial<Clearance>): string[] =>
      clearanceProblems(paper(more), TESTED, YARD, DAY).map((p) => p.field)
    expect(wrong({})).toEqual([])
    const { licence: _n, ...shown } = paper({ photo: PAPER })
    expect(clearanceProblems(shown, TESTED, YARD, DAY), 'a photo for the number').toEqual([])
    expect(wrong({ licence: 'yes' })).toEqual(['licence'])
    expect(wrong({ who: 'the lab' })).toEqual(['who'])
    expect(wrong({ who: 'Ines' }), 'the yard').toEqual(['who'])
    expect(wrong({ licence: '4711 found' })).toContain('licence')
    expect(wrong({ on: '2015-01-01' })).toEqual(['on'])
    expect(clearanceProblems(paper({ says: undefined }), TESTED, YARD, DAY)).toMatchObject([
      { field: 'says' },
    ])
  })

  test('is of this wall, and clears nothing that is suspected after it', () => {
    expect(holding(withPaper(TESTED, { where: 'the shed' }))).toEqual(['old-building'])
    expect(holding(withPaper(TESTED, { on: '2015-01-01' }))).toEqual(['old-building'])
    const later = withPaper(but({ site: { ...TESTED.site, hazards: ['asbestos'] } }), { photo: PAPER })
    expect(holding(later)).toEqual(['trade-asbestos'])
    expect(holding(but({})), 'built after 1980 asks none').toEqual([])
  })

  describe('at the pages', () => {
    const ID = '019e0000-0000-7000-8000-000000000059'
    let yard: Yard
    beforeEach(async () => {
      yard = await yardOn(DAY)
      await yard.photos.keep(PHOTO)
      yard.store.removals.save(ID, 0, TESTED, { savedAt: `${DAY}T08:00:00.000Z`, savedBy: 'Ines' })
    })
    const clear = (more: Record<string, string>) =>
      yard.post(`/removals/${ID}/clear`, {
        hazard: 'asbestos',
        seen: seenOn(TESTED),
        'trade-asbestos.who': 'Quarry Test Laboratory',
        'trade-asbestos.on': DAY,
        'trade-asbestos.says': 'clear',
        ...more,
      })
    const sheet = () => yard.store.removals.get(ID)?.last.sheet ?? TESTED

    test('it is written down where it is asked', async () => {
      const { text } = await yard.get(`/removals/${ID}`)
      expect(wordsOf(text)).toContain('Write down who tested it')
      const refused = await clear({})
      expect(refused.status).toBe(422)
      expect(refused.text).toContain('must be the number of their licence, ticket or report')
      expect((await clear({ 'trade-asbestos.licence': 'report 4711' })).status).toBe(303)
      expect(holding(sheet())).toEqual([])
      expect(wordsOf((await yard.get(`/removals/${ID}`)).text)).not.toContain('Write down who tested it')
    })
  })
})

test('wires near bees or ladder have a paper of their own', () => {
  const electric = (hazard: 'electric' | 'electric-in-cut' | 'near-wires', more: Partial<Clearance> = {}) =>
    paper({ hazard, as: 'electrician', who: 'Edda Brandt', licence: 'E 4711', photo: PAPER, ...more })
  const s = but({
    site: { ...READY.site, behind: ['electric', 'electric-in-cut'], nearWires: true },
    check: { ...READY.check, clearances: [electric('electric')] },
  })
  const wrong = (c: Clearance, at: Sheet = s): string[] =>
    clearanceProblems(c, at, YARD, DAY).map((p) => p.field)
  expect(wrong(electric('electric-in-cut')), 'one tag for one circuit').toEqual([])
  expect(wrong(electric('near-wires'))).toEqual(['photos'])
  expect(wrong(electric('near-wires', { photo: 'b'.repeat(64) }))).toEqual([])
  const near: Sheet = { ...s, check: { ...s.check, clearances: [electric('near-wires')] } }
  expect(wrong(electric('electric'), near), 'nor the other way round').toEqual(['photos'])
  expect(wrong(electric('near-wires'), near), 'the same again').toEqual([])
})

describe('nobody signs for not having', () => {
  const signed = (s: Sheet, item: string): Sheet => {
    const of = reckon(s).items.find((i) => i.id === item)?.why ?? ''
    const second = { item, by: 'Bram', why: 'seen' as const, account: true as const, on: DAY, of }
    return { ...s, check: { ...s.check, seconds: [{ ...second, ...placeOf(s) }] } }
  }
  test('asked who is about and who is allergic', () => {
    const { bystanders: _b, ...site } = READY.site
    const s = but({ site })
    expect(holding(signed(s, 'bystanders'))).toEqual(['bystanders'])
    expect(reckon(s).items.find((i) => i.id === 'bystanders')?.why).toContain('Not known')
  })
  test('looked for asbestos, however new the building', () => {
    expect(holding(signed(but({ site: unsaid }), 'old-building'))).toEqual(['old-building'])
    const { hazards: _h, ...unlooked } = READY.site
    expect(holding(signed(but({ site: unlooked }), 'old-building'))).toEqual(['old-building'])
  })
})
