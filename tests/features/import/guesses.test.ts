/** What headings, words and numbers look like. Headings and words are common practice, from memory. */
import { describe, expect, it } from 'vitest'
import { guessTargets, plainHeading } from '../../../src/features/import/fields.ts'
import { framesIn, heatIn, heatUnitIn, hoursIn, numberIn } from '../../../src/features/import/measures.ts'
import { guessMeaning } from '../../../src/features/import/words.ts'

const full = (): boolean => false

describe('headings', () => {
  it('are compared without marks, units and capitals', () => {
    expect(['Hive #', 'Temp. (°F)', 'Température °C', ' Date_IN '].map(plainHeading)).toEqual([
      'hive',
      'temp',
      'temperature',
      'date in',
    ])
  })

  it.each([
    [
      ['Box', 'Where from', 'Date', 'Queen', 'Apiary', 'Result', 'Date out', 'Notes'],
      ['tag', 'removal_type', 'intake_on', 'queen_at_intake', 'yard', 'outcome', 'outcome_on', 'note'],
    ],
    [
      ['ID', 'Removal date', 'Arrived', 'Customer', 'Temp F', 'Hrs', 'Vac', 'Crew'],
      ['tag', 'removed_on', 'intake_on', 'site', 'outdoor_c', 'hours_open_to_boxed', 'method', 'removed_by'],
    ],
  ])('%j', (header, targets) => {
    expect(guessTargets(header, full)).toEqual(targets)
  })

  it('give each field once; what looks like nothing goes into the note, what is empty is left out', () => {
    expect(guessTargets(['Hive', 'Colony', 'Mood', ''], (c) => c === 3)).toEqual([
      'to-note',
      'tag',
      'to-note',
      'leave-out',
    ])
  })
})

describe('words', () => {
  it.each([
    ['queen_at_intake', 'Caught', 'caged'],
    ['queen_at_intake', '', 'unknown'],
    ['queen_at_intake', '?', 'unseen'],
    ['queen_at_intake', 'QL', 'lost'],
    ['outcome', 'Deadout', 'died'],
    ['outcome', 'combined', 'united'],
    ['outcome', 'Zorched', null],
    ['method', 'bee  vac', 'vacuum'],
    ['removal_type', 'Water meter', 'utility-box'],
    ['removal_type', 'Utility Box', 'utility-box'],
    ['removal_type', 'Belfry', 'Belfry'],
    ['removal_type', '', 'unknown'],
    ['outcome', '', 'unknown'],
  ] as const)('%s: "%s"', (column, word, meaning) => {
    expect(guessMeaning(column, word)).toBe(meaning)
  })

  it('a type of the yard itself is known', () => {
    expect(guessMeaning('removal_type', 'BELL TOWER', ['bell tower'])).toBe('bell tower')
  })
})

describe('numbers', () => {
  it('with a point, a comma, in fractions', () => {
    expect(['2.5', '2,5', '1 1/2', '½', '2½', '~3', '-4', 'two', '1/0', ''].map(numberIn)).toEqual([
      2.5,
      2.5,
      1.5,
      0.5,
      2.5,
      3,
      -4,
      null,
      null,
      null,
    ])
  })

  it('degrees: a cell that names its unit has its way', () => {
    expect(heatIn('85', 'F')).toBe(29.4)
    expect(heatIn('85 °F', 'C')).toBe(29.4)
    expect(heatIn('29,5C', 'F')).toBe(29.5)
    expect(heatIn('29.5', 'C')).toBe(29.5)
    expect(heatIn('hot', 'F')).toBeNull()
  })

  it('the unit is told by the heading, or by what nobody works at', () => {
    expect(heatUnitIn('Temp (F)', [])).toBe('F')
    expect(heatUnitIn('temp °c', ['90'])).toBe('C')
    expect(heatUnitIn('Temp', ['82', '75'])).toBe('F')
    expect(heatUnitIn('Temp', ['28', '31'])).toBeNull()
    expect(heatUnitIn('Forecast', ['28'])).toBeNull()
  })

  it('hours and minutes', () => {
    expect(['3', '2.5 h', '2h30', '2:30', '90 min', '2 hrs', 'long'].map(hoursIn)).toEqual([
      3,
      2.5,
      2.5,
      2.5,
      1.5,
      2,
      null,
    ])
  })

  it('frames', () => {
    expect(['1.5', '2 frames', '1 1/2', 'some'].map(framesIn)).toEqual([1.5, 2, 1.5, null])
  })
})
