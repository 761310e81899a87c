/** The review's address: read, written, shared; and the words for what is chosen. */

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { dayOf } from '../../../src/days.ts'
import { type Choice, everything } from '../../../src/features/review/choice.ts'
import { addressOf, choiceIn } from '../../../src/features/review/choice-form.ts'
import { COHORTS } from '../../../src/features/review/cohort.ts'
import type { Finding } from '../../../src/features/review/factors.ts'
import { aboutGroup, choiceWords, groupName, named } from '../../../src/features/review/words.ts'
import { shortRange } from '../../../src/words/shares.ts'

const TODAY = '2026-08-01'
const read = (text: string) => choiceIn(new URLSearchParams(text), TODAY)
const F = { units: { temperature: 'F', weight: 'lb' }, heatLimitC: 29.444 } as const
const C = { units: { temperature: 'C', weight: 'kg' }, heatLimitC: 29.444 } as const

describe('the address', () => {
  it('of everything as of today is empty, and an empty one means that', () => {
    expect(addressOf(everything(TODAY), TODAY)).toBe('')
    expect(read('')).toEqual({ choice: everything(TODAY), problems: [] })
  })

  it('any choice comes back as it was', () => {
    const day = fc.integer({ min: 10_000, max: 20_600 }).map(dayOf)
    const name = fc.string({ minLength: 1, maxLength: 40 })
    const choice: fc.Arbitrary<Choice> = fc
      .tuple(
        day,
        day,
        day,
        fc.constantFrom(...COHORTS),
        fc.boolean(),
        fc.dictionary(fc.constantFrom(...COHORTS), name),
        fc.array(name, { maxLength: 5 }),
      )
      .map(([a, b, asOf, by, unitedIsLoss, only, shown]) => ({
        asOf,
        from: a < b ? a : b,
        to: a < b ? b : a,
        by,
        unitedIsLoss,
        only,
        shown,
      }))
    fc.assert(
      fc.property(choice, (c) => {
        const back = read(addressOf(c, TODAY).slice(1))
        expect(back).toEqual({ choice: { ...c, only: { ...c.only } }, problems: [] })
      }),
    )
  })

  it('says what it did not understand, and goes on without', () => {
    const { choice, problems } = read('from=2026-02-30&to=soon&asOf=2027-01-01&by=luck&united=perhaps')
    expect(choice).toEqual(everything(TODAY))
    expect(problems).toEqual([
      'Taken in from: “2026-02-30” is no date written YYYY-MM-DD, so it was left out.',
      'Taken in until: “soon” is no date written YYYY-MM-DD, so it was left out.',
      'As it stood on: Fri 1 Jan 2027 is in the future, so today was taken instead.',
    ])
    expect(read('from=2026-05-02&to=2026-05-01').problems).toHaveLength(1)
  })
})

describe('words', () => {
  it('groups are named in the yard’s units and in plain words', () => {
    expect(groupName('heat', 'above the heat limit', F)).toBe('above 85 °F')
    expect(groupName('heat', 'up to the heat limit', C)).toBe('up to 29 °C')
    expect(groupName('removalType', 'utility-box', F)).toBe('utility box')
    expect(groupName('season', '2026 spring', F)).toBe('spring 2026')
    expect(groupName('hours', 'not recorded', F)).toBe('not recorded')
    expect(groupName('yard', 'North field', F)).toBe('North field')
  })

  it('a removal type goes into the sentence, another group before it', () => {
    const sentence = (name: string): string => `Of 3 ${name === '' ? '' : `${name} `}colonies, …`
    expect(aboutGroup('removalType', 'wall', F, sentence)).toBe('Of 3 wall colonies, …')
    expect(aboutGroup('queen', 'caged', F, sentence)).toBe('Queen caged: of 3 colonies, …')
  })

  it('what is chosen', () => {
    const choice = { ...everything(TODAY), from: '2026-04-01', only: { removalType: 'wall' } }
    expect(choiceWords(choice, F)).toEqual(['taken in since Wed 1 Apr', 'removal type: wall'])
    expect(choiceWords({ ...choice, to: '2026-05-01' }, F)[0]).toBe('taken in from Wed 1 Apr to Fri 1 May')
    expect(choiceWords(everything(TODAY), F)).toEqual([])
  })

  it('a step of heat is told in the yard’s degrees: 5 °C are 9 °F', () => {
    const finding = { factor: 'heat', label: '5 °C warmer', against: '5 °C cooler' } as Finding
    expect(named(finding, F.units)).toMatchObject({ label: '9 °F warmer', against: '9 °F cooler' })
    expect(named(finding, C.units)).toBe(finding)
  })

  it('limits in a narrow column', () => {
    expect([
      shortRange(0.54, 0.812),
      shortRange(0.002, 0.998),
      shortRange(0, 1),
      shortRange(0.5, 0.502),
    ]).toEqual(['54–81', '<1–>99', '0–100', '50'])
  })
})
