/** A sheet and what was said of it, to rows of the colonies CSV: nothing lost, nothing invented, all told by line. */

import { describe, expect, it } from 'vitest'
import { columnProblems, isAnswered, needsNoWords, questionsOf } from '../../../src/features/import/ask.ts'
import { writeColonies } from '../../../src/features/import/colonies-csv.ts'
import { cleanTag, converting } from '../../../src/features/import/convert.ts'
import { lineOf } from '../../../src/features/import/csv-table.ts'
import { type Mapping, mappingOf, type Said } from '../../../src/features/import/mapping.ts'
import { APART } from '../../../src/features/import/names-found.ts'
import { LONG_BLANK, STILL_HERE } from '../../../src/features/import/words.ts'
import { toTheEnd } from '../../../src/steps.ts'

const TODAY = '2026-08-01'
const USUAL = {
  yard: 'Orchard',
  ownTypes: [],
  heat: 'F' as const,
  today: TODAY,
  yards: ['Orchard'],
  people: ['Marla'],
}
const map = (text: string, said: Said = {}): Mapping => mappingOf(text, said, USUAL)
const read = (text: string, said: Said = {}) => toTheEnd(converting(map(text, said), TODAY))

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
        outdoor_c: 27.8,
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
        queen_at_intake: 'unseen',
        method: 'brushed',
        // It came two years ago and nobody wrote what became of it: an old book's gap, no colony in the yard.
        outcome: 'unknown',
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
      'line 7: Result: "zorched" has no meaning yet: say what it stands for',
      'line 9: Box: "G" was still the tag of the colony in line 8 on 2026-05-02',
    ])
    // A loss without its day, a type that was not written down, a day without how it left: taken, and said to be not known.
    expect(rows).toMatchObject([
      { line: 3, outcome: 'absconded' },
      { line: 6, removal_type: 'unknown' },
      { line: 8, outcome: 'unknown', outcome_on: '2026-06-01' },
    ])
    expect(rows[0]?.outcome_on).toBeUndefined()
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
    expect(map(text).words.outcome).toMatchObject([
      { key: '', meaning: 'unknown', rows: 1 },
      { key: LONG_BLANK, meaning: 'unknown', rows: 1 },
    ])
    const { rows } = read(text, { meanings: { outcome: { '': 'moved-out', [LONG_BLANK]: STILL_HERE } } })
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

  it('an empty outcome is not known for a colony that came more than 90 days ago; lately it is still here', () => {
    const text = 'Box,Date,Type,Queen\nA,2023-05-01,wall,\nB,2026-05-03,wall,\nC,2026-05-02,wall,'
    expect(map(text).words.outcome).toMatchObject([{ key: LONG_BLANK, rows: 2, meaning: 'unknown' }])
    expect(questionsOf(map(text)).words).toContain('outcome')
    expect(read(text).rows.map((r) => [r.tag, r.outcome, r.outcome_on, r.queen_at_intake])).toEqual([
      ['A', 'unknown', undefined, 'unknown'],
      ['B', undefined, undefined, 'unknown'],
      ['C', 'unknown', undefined, 'unknown'],
    ])
    const stays = read(text, { meanings: { outcome: { [LONG_BLANK]: STILL_HERE } } })
    expect(stays.rows.map((r) => r.outcome)).toEqual([undefined, undefined, undefined])
    // The colonies CSV says that empty is still in the yard; three years later it is asked all the same.
    const own = 'tag,removal_type,intake_on,queen_at_intake,outcome\nA,wall,2023-05-01,caged,'
    expect(needsNoWords(map(own))).toBe(false)
  })

  it('yards, people and types written in several ways are offered as one, the book’s spelling first, or kept apart', () => {
    const text = [
      'Box,Date,Type,Yard,By',
      'A,2026-07-01,Wall,orchard,Marla',
      'B,2026-07-02,wall,ORCHARD,marla',
      'C,2026-07-03,WALL,Home,Ines',
      'D,2026-07-04,Hay-barn,home,Ines',
      'E,2026-07-05,hay barn,home,Ines',
    ].join('\n')
    expect(map(text).names).toMatchObject([
      { column: 'yard', keep: 'Orchard', others: ['ORCHARD', 'orchard'], taken: 'Orchard' },
      { column: 'yard', keep: 'home', others: ['Home'], taken: 'home' },
      { column: 'removed_by', keep: 'Marla', others: ['marla'], taken: 'Marla' },
    ])
    expect(questionsOf(map(text)).names).toBe(true)
    expect(read(text).rows.map((r) => [r.removal_type, r.yard, r.removedBy])).toEqual([
      ['wall', 'Orchard', 'Marla'],
      ['wall', 'Orchard', 'Marla'],
      ['wall', 'home', 'Ines'],
      ['Hay-barn', 'home', 'Ines'],
      ['Hay-barn', 'home', 'Ines'],
    ])
    const apart = read(text, { same: { yard: { home: APART, orchard: 'ORCHARD' } } })
    expect(apart.rows.map((r) => r.yard)).toEqual(['ORCHARD', 'ORCHARD', 'Home', 'home', 'home'])
  })

  it('a date that could be read two ways is named with both readings, unless another date proves the order', () => {
    const text = 'Box,Date,Type,Result,Out\nA,3/4/2026,wall,died,6/5/2026\nB,7/7/2026,wall,,'
    expect(read(text, { order: 'day-first' }).twoWays).toEqual([
      { line: 2, field: 'Date', text: '3/4/2026', taken: '2026-04-03', other: '2026-03-04' },
      { line: 2, field: 'Out', text: '6/5/2026', taken: '2026-05-06', other: '2026-06-05' },
    ])
    const proven = `${text}\nC,6/20/2026,wall,,`
    expect(map(proven).found).toMatchObject({ order: 'month-first', twoWays: 2 })
    expect(read(proven)).toMatchObject({ twoWays: [], rows: [{ intake_on: '2026-03-04' }, {}, {}] })
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
