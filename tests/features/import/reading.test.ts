/** From bytes to cells: encodings, delimiters, headings below a title. */
import { describe, expect, it } from 'vitest'
import { looksLikeHeading } from '../../../src/features/import/fields.ts'
import { guessDelimiter, sheetOf } from '../../../src/features/import/sheet.ts'
import { decoded } from '../../../src/features/import/text.ts'

const bytes = (...numbers: number[]): Uint8Array => Uint8Array.from(numbers)
const sheet = (text: string) => sheetOf(text, {}, looksLikeHeading)

describe('bytes', () => {
  it('UTF-8, with and without its mark', () => {
    expect(decoded(new TextEncoder().encode('Größe'))).toEqual({ ok: true, text: 'Größe', encoding: 'UTF-8' })
    // TextDecoder takes the mark off.
    expect(decoded(bytes(0xef, 0xbb, 0xbf, 0x61))).toEqual({ ok: true, text: 'a', encoding: 'UTF-8' })
  })

  it('UTF-16 of either end, as spreadsheet programs save "Unicode text"', () => {
    expect(decoded(bytes(0xff, 0xfe, 0x61, 0, 0xfc, 0))).toEqual({ ok: true, text: 'aü', encoding: 'UTF-16' })
    expect(decoded(bytes(0xfe, 0xff, 0, 0x61, 0, 0xfc))).toEqual({ ok: true, text: 'aü', encoding: 'UTF-16' })
  })

  it('Windows-1252 where it is no UTF-8: 0xFC is ü, 0x96 a dash (the code page’s own table)', () => {
    expect(decoded(bytes(0x61, 0xfc, 0x96))).toEqual({ ok: true, text: 'aü–', encoding: 'Windows-1252' })
  })

  it('refuses workbooks, pictures and nothing, in words', () => {
    expect(decoded(bytes(0x50, 0x4b, 3, 4))).toMatchObject({
      problems: [expect.stringContaining('workbook')],
    })
    expect(decoded(bytes(0xd0, 0xcf, 0x11, 0xe0))).toMatchObject({
      problems: [expect.stringContaining('workbook')],
    })
    expect(decoded(bytes(0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10, 0))).toMatchObject({
      problems: [expect.stringContaining('no text')],
    })
    expect(decoded(bytes())).toMatchObject({ problems: [expect.stringContaining('empty')] })
  })
})

describe('cells', () => {
  it.each([
    ['comma', 'tag,type\nA,wall\nB,"tree, hollow"'],
    ['semicolon', 'tag;type;hours\nA;wall;1,5\nB;tree;2,5'],
    ['tab', 'tag\ttype\nA\twall, big\nB\ttree'],
    ['bar', 'tag|type\nA|wall\nB|tree'],
  ] as const)('parted by a %s', (delimiter, text) => {
    expect(guessDelimiter(text)).toBe(delimiter)
    expect(sheet(text).rows.map((r) => r.fields[0])).toEqual(['A', 'B'])
  })

  it('headings may stand below a title and empty lines; lines keep their numbers', () => {
    const s = sheet('Removals 2024;;\n;;\nHive #;Date;Notes\n7;1.5.2024;"two\nlines"\n\n8;2.5.2024;')
    expect(s.headerLine).toBe(3)
    expect(s.header).toEqual(['Hive #', 'Date', 'Notes'])
    expect(s.rows.map((r) => [r.line, r.fields[0]])).toEqual([
      [4, '7'],
      [7, '8'],
    ])
  })

  it('rows of other widths are made alike, nothing is cut', () => {
    const s = sheet('tag,type\nA\nB,wall,and more')
    expect(s.columns).toBe(3)
    expect(s.rows.map((r) => r.fields)).toEqual([
      ['A', '', ''],
      ['B', 'wall', 'and more'],
    ])
  })

  it('a quote that never closes is told by its line', () => {
    expect(sheet('tag,type\nA,wall\nB,"tree\nC,roof').problems).toEqual([
      { line: 3, field: '', message: expect.stringContaining('never closes') },
    ])
  })

  it('an operator may say otherwise', () => {
    const text = 'x,y\nHive;Type\nA;wall'
    const s = sheetOf(text, { delimiter: 'semicolon', headerLine: 2 }, looksLikeHeading)
    expect(s.header).toEqual(['Hive', 'Type'])
    expect(s.rows).toHaveLength(1)
  })

  it('nothing at all has no rows', () => {
    expect(sheet('')).toMatchObject({ rows: [], header: [], columns: 0 })
  })
})
