import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { visitDrafts, visitLabel } from '../../src/features/entries/visit.ts'
import { FIELDS } from '../../src/forms/fields.ts'
import { correctionOf, draftOf, typedOf } from '../../src/forms/read.ts'
import { typedTwin } from '../../src/forms/spec.ts'
import type { Typed } from '../../src/forms/typed.ts'
import { entry, GIFTS, OUTCOMES, QUEEN_AT_INTAKE, SIGNS } from '../../src/journal/entry.ts'
import type { Units } from '../../src/words/units.ts'
import { written } from '../support/wall-colony.ts'

const US: Units = { temperature: 'F', weight: 'lb' }
const METRIC: Units = { temperature: 'C', weight: 'kg' }

const quarter = fc.integer({ min: 0, max: 40 }).map((n) => n / 4)
const maybe = <T>(arb: fc.Arbitrary<T>) => fc.option(arb, { nil: undefined })
const defined = (o: Record<string, unknown>): Record<string, unknown> =>
  Object.fromEntries(Object.entries(o).filter(([, v]) => v !== undefined))
const text = fc.stringMatching(/^[A-Za-z][A-Za-z ,.'<>&"]{0,20}[a-z]$/)

const inspection = fc
  .record({
    opened: fc.boolean(),
    eggs: maybe(fc.constantFrom('none', 'single', 'multiple')),
    onFreshComb: maybe(fc.boolean()),
    cells: maybe(fc.constantFrom('none', 'cups', 'open')),
    cellCount: maybe(fc.integer({ min: 0, max: 200 })),
    framesOfBees: maybe(quarter),
    signs: maybe(fc.uniqueArray(fc.constantFrom(...SIGNS))),
    temper: maybe(fc.integer({ min: 1, max: 5 })),
    note: maybe(text),
  })
  .map((fields) => ({ kind: 'inspection' as const, on: '2026-05-06', at: '09:30', ...defined(fields) }))
const given = fc
  .record({
    what: fc.constantFrom(...GIFTS),
    donor: maybe(text),
    frames: maybe(quarter),
    caged: maybe(fc.boolean()),
    litres: maybe(quarter),
    cost: maybe(quarter),
  })
  .map((fields) => ({ kind: 'given' as const, on: '2026-05-06', ...defined(fields) }))
const outcome = fc
  .record({ what: fc.constantFrom(...OUTCOMES), cause: maybe(text), destination: maybe(text) })
  .map((fields) => ({ kind: 'outcome' as const, on: '2026-05-06', ...defined(fields) }))
const intake = fc
  .record({ queen: fc.constantFrom(...QUEEN_AT_INTAKE), eggs: quarter, bees: quarter, site: maybe(text) })
  .map(({ queen, eggs, bees, site }) => ({
    kind: 'intake' as const,
    on: '2026-05-06',
    removal: defined({ type: 'wall', outdoorC: 25, site }),
    yard: 'North field',
    queen,
    brood: { eggs, open: 1 },
    bees: { frames: bees },
    tiedComb: true,
  }))

describe('reading a form', () => {
  it('gives back the entry that filled it, for every kind', () => {
    fc.assert(
      fc.property(fc.oneof(inspection, given, outcome, intake), (fields) => {
        const [e] = written([fields])
        if (e === undefined) return
        const { raw, problems } = draftOf(e.kind, typedOf(e, METRIC), METRIC)
        expect(problems).toEqual([])
        expect({ ...raw, id: e.id, colony: e.colony, by: e.by }).toEqual(e)
        expect(entry.safeParse({ ...raw, id: e.id, colony: e.colony, by: e.by }).success).toBe(true)
      }),
    )
  })

  it('keeps in a correction what no form asks, and nothing that was emptied', () => {
    const [e] = written([
      {
        kind: 'inspection',
        on: '2026-05-06',
        opened: true,
        searched: 'thoroughly',
        eggs: 'none',
        note: 'Late',
      },
    ])
    if (e === undefined) throw new Error('no entry')
    const typed = { ...typedOf(e, METRIC), note: [''] }
    const { note: _note, ...kept } = e as typeof e & { note: string }
    const { raw } = correctionOf(e, typed, METRIC)
    expect({ ...raw, id: e.id, colony: e.colony, by: e.by }).toEqual(kept)
  })

  it('knows the day an old colony left once a correction says it', () => {
    const [e] = written([{ kind: 'outcome', on: '2026-05-01', what: 'died', dayUnknown: true }])
    if (e === undefined) throw new Error('no entry')
    const typed = typedOf(e, METRIC)
    expect(correctionOf(e, { ...typed, cause: ['cold'] }, METRIC).raw.dayUnknown).toBe(true)
    expect(correctionOf(e, { ...typed, on: ['2026-06-02'] }, METRIC).raw).not.toHaveProperty('dayUnknown')
  })

  it('stores SI whatever the yard prefers to type', () => {
    const typed: Typed = { 'removal.outdoorC': ['85'], 'bees.kg': ['2'] }
    const { raw } = draftOf('intake', typed, US)
    // To a tenth (src/units.ts): 85 °F is the common limit, and must not be kept as over it.
    expect((raw.removal as { outdoorC: number }).outdoorC).toBe(29.4)
    expect((raw.bees as { kg: number }).kg).toBeCloseTo(0.907, 3)
    expect(draftOf('intake', { 'removal.outdoorC': ['25'] }, METRIC).raw.removal).toEqual({ outdoorC: 25 })
    // A US quart is 0.946353 litres.
    expect(draftOf('given', { litres: ['1'] }, US).raw.litres).toBeCloseTo(0.946353, 6)
    expect(draftOf('given', { litres: ['107'] }, US).problems).toEqual([
      { field: 'litres', message: 'must be at most 106 US quarts, not 107' },
    ])
    // Beyond what any removal sees, and the yard is told so in its own unit.
    expect(draftOf('intake', { 'removal.outdoorC': ['185'] }, METRIC).problems).toEqual([
      { field: 'removal.outdoorC', message: 'must be at most 60 °C, not 185' },
    ])
    expect(draftOf('intake', { 'removal.outdoorC': ['400'] }, US).problems).toEqual([
      { field: 'removal.outdoorC', message: 'must be at most 140 °F, not 400' },
    ])
  })

  it('tells "looked, none seen" from "not looked"', () => {
    expect(draftOf('inspection', { signs: ['none'] }, US).raw.signs).toEqual([])
    expect(draftOf('inspection', { signs: [''] }, US).raw).not.toHaveProperty('signs')
    expect(draftOf('inspection', { eggs: [''] }, US).raw).not.toHaveProperty('eggs')
  })

  it('takes a typed number before none, and asks when two answers differ', () => {
    const name = 'framesOfBees'
    expect(draftOf('inspection', { [name]: [''], [typedTwin(name)]: ['7½'] }, US).raw.framesOfBees).toBe(7.5)
    const both = draftOf('inspection', { [name]: ['4'], [typedTwin(name)]: ['7'] }, US)
    expect(both.problems[0]?.message).toContain('two answers')
  })

  it('never throws, and never makes a number of what is none', () => {
    const names = Object.values(FIELDS).flatMap((specs) => Object.keys(specs))
    fc.assert(
      fc.property(
        fc.dictionary(fc.constantFrom(...names), fc.array(fc.string(), { maxLength: 3 })),
        (typed) => {
          const { problems, raw } = draftOf('inspection', typed, US)
          for (const p of problems) expect(p.message).not.toBe('')
          expect(raw.cellCount === undefined || Number.isInteger(raw.cellCount)).toBe(true)
        },
      ),
    )
  })
})

describe('a visit', () => {
  it('is always an inspection, and as much else as was filled', () => {
    const kinds = (typed: Typed): string[] => visitDrafts(typed, US).map((d) => d.kind)
    expect(kinds({ opened: ['no'] })).toEqual(['inspection'])
    expect(
      kinds({
        opened: ['yes'],
        'cage.found': ['released'],
        'ties.done': ['yes'],
        'wash.bees': ['300'],
        'wash.mites': ['4'],
        'given1.what': ['egg-frame'],
        'given3.what': ['syrup'],
      }),
    ).toEqual(['inspection', 'queen-cage', 'ties-removed', 'mite-wash', 'given', 'given'])
  })

  it('names its fields by the words beside them', () => {
    expect(visitLabel('eggs')).toBe('Eggs')
    expect(visitLabel('wash.mites')).toBe('Mites counted')
    expect(visitLabel('given2.donor')).toBe('From colony')
    expect(visitLabel('on')).toBe('Day of the visit')
  })
})
