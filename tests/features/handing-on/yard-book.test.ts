/** The yard book: what an inspector asks for in a period, and no customer in it. */
import { parse } from 'csv-parse/sync'
import { describe, expect, test } from 'vitest'
import { type BookColony, yardBookOf } from '../../../src/features/handing-on/yard-book.ts'
import { BOOK_TABLES, bookCsv } from '../../../src/features/handing-on/yard-book-csv.ts'
import { type Entry, entry as schema } from '../../../src/journal/entry.ts'
import { historyOf } from '../../../src/journal/history.ts'

const SECRET = 'Zebulon'
let made = 0
const make = (kind: Entry['kind'], on: string, more: Record<string, unknown>): Entry => {
  made++
  const id = `0190a000-0000-7000-8000-${String(made).padStart(12, '0')}`
  return schema.parse({ id, colony: 'x', kind, on, by: 'Bram', ...more })
}

function colony(tag: string, ...entries: Entry[]): BookColony {
  const history = historyOf(tag, entries)
  if (history === null) throw new Error('no intake stands')
  return { id: history.intake.id, history, record: null }
}

const intake = (on: string): Entry =>
  make('intake', on, {
    removal: { type: 'wall', site: SECRET },
    yard: 'Quarry yard',
    stand: '3',
    queen: 'caged',
    note: SECRET,
  })

const stayed = colony('A-10', intake('2026-05-01'))
const moved: BookColony = {
  ...colony(
    'A-2',
    intake('2026-05-03'),
    make('given', '2026-05-20', {
      what: 'treatment',
      product: '=HYPERLINK("x")',
      batch: 'L-88',
      withdrawalDays: 14,
      cost: 3,
      note: SECRET,
    }),
    make('given', '2026-05-21', { what: 'egg-frame', donor: 'A-10' }),
    make('given', '2026-05-22', { what: 'syrup', litres: 2 }),
    make('move', '2026-05-25', { yard: 'Quarry yard', stand: '4' }),
    make('move', '2026-05-28', { yard: 'Mill yard' }),
    make('mite-wash', '2026-05-30', { bees: 300, mites: 7 }),
    make('inspection', '2026-06-01', {
      opened: true,
      signs: ['brood-disease-suspected', 'chalkbrood', 'queenless-roar'],
      note: SECRET,
    }),
    make('disease-cleared', '2026-06-04', { clearedBy: 'inspector', reference: 'R-7' }),
    make('outcome', '2026-06-10', { what: 'moved-out', destination: SECRET, note: SECRET }),
  ),
  record: {
    buyer: { name: SECRET, phone: SECRET },
    yard: 'Alder farm, Tay county',
    registration: 'TC-881',
    permits: [{ what: 'transport permit', number: '47-B' }, { what: 'certificate of health' }],
    note: SECRET,
    price: 213.79,
  },
}
const united = colony(
  'A-3',
  intake('2026-05-05'),
  make('outcome', '2026-05-19', { what: 'united', into: stayed.id, cause: SECRET }),
)
const gone = colony('A-4', intake('2026-03-01'), make('outcome', '2026-04-01', { what: 'died' }))
const later = colony('A-5', intake('2026-08-01'))

const book = yardBookOf([stayed, moved, united, gone, later], { from: '2026-05-02', to: '2026-06-30' })

describe('the yard book', () => {
  test('holds every colony that was there in the period, in order of tag', () => {
    expect(book.colonies.map((l) => [l.tag, l.cameOn, l.yard, l.stand, l.leftOn, l.left])).toEqual([
      ['A-2', '2026-05-03', 'Mill yard', '', '2026-06-10', 'moved-out'],
      ['A-3', '2026-05-05', 'Quarry yard', '3', '2026-05-19', 'united'],
      ['A-10', '2026-05-01', 'Quarry yard', '3', null, null],
    ])
  })

  test('holds every movement: another stand of the same yard is none; a move out says where to and by which permits', () => {
    expect(book.movements.map((l) => [l.on, l.tag, l.what, l.from, l.to, l.permits])).toEqual([
      ['2026-05-03', 'A-2', 'came', 'wall', 'Quarry yard', ''],
      ['2026-05-05', 'A-3', 'came', 'wall', 'Quarry yard', ''],
      ['2026-05-19', 'A-3', 'united', 'Quarry yard', 'A-10', ''],
      ['2026-05-28', 'A-2', 'moved', 'Quarry yard', 'Mill yard', ''],
      [
        '2026-06-10',
        'A-2',
        'moved-out',
        'Mill yard',
        'Alder farm, Tay county, TC-881',
        'transport permit 47-B; certificate of health',
      ],
    ])
  })

  test('holds treatments and feed, but not brood, and findings of health', () => {
    expect(
      book.treatments.map((l) => [l.on, l.what, l.product, l.batch, l.litres, l.withdrawalUntil, l.by]),
    ).toEqual([
      ['2026-05-20', 'treatment', '=HYPERLINK("x")', 'L-88', null, '2026-06-03', 'Bram'],
      ['2026-05-22', 'syrup', '', '', 2, null, 'Bram'],
    ])
    expect(book.health.map((l) => [l.on, l.what, l.per100?.toFixed(2) ?? '', l.detail])).toEqual([
      ['2026-05-30', 'mite-wash', '2.33', '7 mites, 300 bees'],
      ['2026-06-01', 'disease-suspected', '', ''],
      ['2026-06-01', 'signs', '', 'chalkbrood'],
      ['2026-06-04', 'disease-cleared', '', 'inspector, R-7'],
    ])
  })

  test('knows nothing after the period', () => {
    const may = yardBookOf([moved], { from: '2026-05-02', to: '2026-05-26' })
    expect(may.colonies[0]).toMatchObject({ yard: 'Quarry yard', stand: '4', leftOn: null, left: null })
    expect(may.movements).toHaveLength(1)
  })

  test('names no customer, no buyer, no price', () => {
    expect(JSON.stringify(book)).not.toContain(SECRET)
    expect(JSON.stringify(book)).not.toContain('213.79')
  })

  test.each(BOOK_TABLES)('%s as CSV reads back, and cannot be taken for a formula', (table) => {
    const rows = parse(bookCsv(book, table), { columns: true }) as Record<string, string>[]
    expect(rows).toHaveLength(book[table].length)
    expect(rows[0]?.tag).toBe(book[table][0]?.tag)
    for (const row of rows) for (const cell of Object.values(row)) expect(cell).not.toMatch(/^[=+@]/)
  })
})
