/** A sheet and what was said of it, to rows of the colonies CSV: nothing lost, nothing invented, all told by line. */
import { describe, expect, it } from 'vitest'
import { columnProblems, isAnswered, needsNoWords, questionsOf } from '../../../src/features/import/ask.ts'
import { writeColonies } from '../../../src/features/import/colonies-csv.ts'
import { cleanTag, converted } from '../../../src/features/import/convert.ts'
import { lineOf } from '../../../src/features/import/csv-table.ts'
import { type Mapping, mappingOf, type Said } from '../../../src/features/import/mapping.ts'

const TODAY = '2026-08-01'
const USUAL = { yard: 'Orchard', ownTypes: [], heat: 'F' as const, today: TODAY }
const map = (text: string, said: Said = {}): Mapping => mappingOf(text, said, USUAL)
const read = (text: string, said: Said = {}) => converted(map(text, said), TODAY)

const OLD = [
  'Removals 2024',
  'Hive #;Date;Job type;Customer;Temp (F);Queen;Vac?;Result;Date out;Who;Mood;Comments',
  '#12;13/04/2024;House wall;J. Quill, 4 Elm Row;82;caught;yes;sold;05/05/2024;Marla;calm;big one',
  '14/A;11/04/2024;Belfry;;;?;no;;;Ines;;',
].join('\n')

describe('an old sheet', () => {
  it('becomes rows; customers, who removed it and odd columns come along', () => {
    const { rows, problems, retagged } = read(OLD)
    expect(problems).toEqual([])
    expect(rows).toEqual([
      {
        line: 3,
        tag: '12',
        removal_type: 'wall',
        intake_on: '2024-04-13',
        yard: 'Orchard',
        queen_at_intake: 'caged',
        // (82 - 32) * 5 / 9
        outdoor_c: 27.78,
        method: 'vacuum',
        outcome: 'moved-out',
        outcome_on: '2024-05-05',
        note: 'Mood: calm; big one',
        site: 'J. Quill, 4 Elm Row',
        removedBy: 'Marla',
      },
      {
        line: 4,
        tag: '14-A',
        removal_type: 'Belfry',
        intake_on: '2024-04-11',
        yard: 'Orchard',
        queen_at_intake: 'unknown',
        method: 'brushed',
        removedBy: 'Ines',
      },
    ])
    expect(retagged).toEqual([
      { line: 3, from: '#12', to: '12' },
      { line: 4, from: '14/A', to: '14-A' },
    ])
  })

  it('tells every fault by line and by the sheet’s own heading', () => {
    const text = [
      'Box,Came,Type,Queen,Temp,Result,Out',
      'A,2026-05-01,wall,caged,hot,,',
      'B,2026-05-01,wall,caged,80,absconded,',
      'C,31/31/2026,wall,caged,80,,',
      'D,2026-09-01,wall,caged,80,,',
      'E,2026-05-01,,caged,80,,',
      'F,2026-05-01,wall,caged,80,zorched,2026-06-01',
      'G,2026-05-01,wall,caged,80,,2026-06-01',
      'G,2026-05-02,wall,caged,80,,',
    ].join('\n')
    const said = {
      targets: [
        'tag',
        'intake_on',
        'removal_type',
        'queen_at_intake',
        'outdoor_c',
        'outcome',
        'outcome_on',
      ] as const,
    }
    const { rows, problems } = read(text, said)
    expect(problems.map(lineOf)).toEqual([
      'line 2: Temp: "hot" is not a temperature: write it like 85',
      'line 4: Came: "31/31/2026" is no date that can be read; write it like 2024-05-31',
      'line 5: Came: 2026-09-01 is after 2026-08-01, today',
      'line 6: Type: is empty',
      'line 7: Result: "zorched" has no meaning yet: say what it stands for',
      'line 8: Result: is empty',
    ])
    expect(rows.map((r) => r.line)).toEqual([3, 9])
  })

  it('takes what was said over what was guessed', () => {
    const text = 'Box,Date,Type,Queen,Result,Date out\nA,3/4/2026,wall,yes,gone,5/6/2026'
    const said: Said = {
      order: 'month-first',
      meanings: { queen_at_intake: { yes: 'caged' }, outcome: { gone: 'moved-out' } },
    }
    expect(read(text, said).rows).toMatchObject([
      { intake_on: '2026-03-04', outcome_on: '2026-05-06', queen_at_intake: 'caged', outcome: 'moved-out' },
    ])
  })

  it('a leaving day without a word can be given one for all', () => {
    const text = 'Box,Date,Type,Result,Date out\nA,2026-04-03,wall,,2026-06-05\nB,2026-04-03,wall,,'
    expect(map(text).words.outcome).toMatchObject([{ word: '', meaning: null, rows: 1 }])
    const { rows } = read(text, { meanings: { outcome: { '': 'moved-out' } } })
    expect(rows.map((r) => [r.tag, r.outcome, r.outcome_on])).toEqual([
      ['A', 'moved-out', '2026-06-05'],
      ['B', undefined, undefined],
    ])
  })

  it('without tags, types or a queen: made, said once for all, not written down', () => {
    const { rows } = read('Removal date,Notes\n2026-05-01,first\n2026-05-02,second', {
      removalType: 'swarm',
      tagPrefix: 'y24-',
    })
    expect(rows).toMatchObject([
      {
        tag: 'y24-2',
        removal_type: 'swarm',
        intake_on: '2026-05-01',
        removed_on: '2026-05-01',
        queen_at_intake: 'unknown',
      },
      { tag: 'y24-3', note: 'second' },
    ])
  })

  it('what the colonies CSV writes is read back without a question', () => {
    const row = {
      tag: 'W-1',
      removal_type: 'bell tower',
      intake_on: '2026-05-01',
      yard: 'Orchard',
      queen_at_intake: 'caged' as const,
      outdoor_c: 27.5,
      egg_frames: 0.5,
      outcome: 'united' as const,
      outcome_on: '2026-06-10',
      into: 'W-2',
      note: '=1+1, really',
    }
    const text = writeColonies([row])
    expect(needsNoWords(map(text))).toBe(true)
    expect(read(text).rows).toEqual([{ ...row, line: 2 }])
  })
})

describe('what is asked', () => {
  it('which comes first in dates, only where they do not tell', () => {
    const head = 'Box,Date,Type'
    expect(questionsOf(map(`${head}\nA,3/4/2026,wall`)).order).toBe(true)
    expect(isAnswered(map(`${head}\nA,3/4/2026,wall`))).toBe(false)
    expect(isAnswered(map(`${head}\nA,3/4/2026,wall`, { order: 'day-first' }))).toBe(true)
    expect(questionsOf(map(`${head}\nA,25/4/2026,wall`)).order).toBe(false)
    // Dots are written with the day first: set, and still asked.
    expect(map(`${head}\nA,3.4.2026,wall`)).toMatchObject({ order: 'day-first' })
    expect(questionsOf(map(`${head}\nA,3.4.2026,wall`)).order).toBe(true)
  })

  it('degrees, where neither heading nor numbers tell them', () => {
    const text = 'Box,Date,Type,Temp\nA,2026-05-01,wall,30'
    expect(isAnswered(map(text))).toBe(false)
    expect(isAnswered(map(text, { heat: 'C' }))).toBe(true)
    expect(map(text.replace('30', '88'))).toMatchObject({ heat: 'F' })
  })

  it('columns: one for each field, and a day', () => {
    const text = 'Box,Mood\nA,calm'
    expect(columnProblems(map(text))).toEqual([{ column: null, field: 'intake_on', what: 'missing' }])
    const twice = map('Box,Date,Mood\nA,2026-05-01,calm', { targets: ['tag', 'intake_on', 'tag'] })
    expect(columnProblems(twice)).toEqual([{ column: 2, field: 'tag', what: 'twice' }])
  })

  it('words are asked once, whatever their capitals and spaces', () => {
    const text =
      'Box,Date,Type,Queen\nA,2026-05-01,Wall,Caught\nB,2026-05-01,wall,caught \nC,2026-05-01,WALL, CAUGHT'
    expect(map(text).words.queen_at_intake).toMatchObject([{ rows: 3, meaning: 'caged', guessed: true }])
    expect(map(text).words.removal_type).toHaveLength(1)
  })
})

it('tags keep what can be painted and typed', () => {
  expect(['#12', " '7", '14/A', 'a  b', '50%', 'W-1'].map(cleanTag)).toEqual([
    '12',
    '7',
    '14-A',
    'a b',
    '50',
    'W-1',
  ])
})
