/** The colonies CSV: what is read, what is refused and how that is said, and that writing loses nothing. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { addDays } from '../../../src/days.ts'
import {
  COLUMNS,
  type ColonyRow,
  entriesOf,
  readColonies,
  rowOf,
  writeColonies,
} from '../../../src/features/import/colonies-csv.ts'
import { lineOf } from '../../../src/features/import/csv-table.ts'
import { entry, METHODS, OUTCOMES, QUEEN_AT_INTAKE } from '../../../src/journal/entry.ts'
import { historyOf } from '../../../src/journal/history.ts'

const TODAY = '2026-08-01'
const HEADER = COLUMNS.join(',')
const read = (...lines: string[]) => readColonies([HEADER, ...lines].join('\n'), TODAY)
const said = (...lines: string[]) => read(...lines).problems.map(lineOf)

describe('reading', () => {
  it('takes a full row', () => {
    const { rows, problems } = read(
      'W-1,wall,2026-04-30,2026-05-01,Orchard,caged,0.5,1,1.25,27.5,3.5,vacuum,united,2026-06-10,W-2,"a note, with a comma"',
    )
    expect(problems).toEqual([])
    expect(rows).toEqual([
      {
        line: 2,
        tag: 'W-1',
        removal_type: 'wall',
        removed_on: '2026-04-30',
        intake_on: '2026-05-01',
        yard: 'Orchard',
        queen_at_intake: 'caged',
        egg_frames: 0.5,
        open_frames: 1,
        capped_frames: 1.25,
        outdoor_c: 27.5,
        hours_open_to_boxed: 3.5,
        method: 'vacuum',
        outcome: 'united',
        outcome_on: '2026-06-10',
        into: 'W-2',
        note: 'a note, with a comma',
      },
    ])
  })

  it('needs four columns only, in any order, and takes a byte order mark, CR LF and empty lines', () => {
    const text =
      '\uFEFFQueen_at_intake,tag,removal_type,intake_on\r\n\r\nLoose,B 7,bell tower,2026-05-02\r\n\r\n'
    const { rows, problems } = readColonies(text, TODAY)
    expect(problems).toEqual([])
    expect(rows).toEqual([
      { line: 3, tag: 'B 7', removal_type: 'bell tower', intake_on: '2026-05-02', queen_at_intake: 'loose' },
    ])
  })

  it('keeps line numbers after a note of several lines', () => {
    const { rows, problems } = read(
      'A,wall,,2026-05-01,,caged,,,,,,,,,,"one\r\ntwo\nthree"',
      'B,wall,,2026-13-01,,caged,,,,,,,,,,',
      'C,wall,,2026-05-01,,caged,,,,,,,,,,',
    )
    expect(rows.map((r) => [r.tag, r.line, r.note])).toEqual([
      ['A', 2, 'one\ntwo\nthree'],
      ['C', 6, undefined],
    ])
    expect(problems.map((p) => p.line)).toEqual([5])
  })

  it('takes semicolons and tabs between the columns, with a decimal comma in numbers', () => {
    const text = [
      'tag;removal_type;intake_on;queen_at_intake;outdoor_c;note',
      'A;wall;2026-05-01;caged;29,4;"hot, dry"',
    ].join('\n')
    const row = { tag: 'A', removal_type: 'wall', outdoor_c: 29.4, note: 'hot, dry', line: 2 }
    expect(readColonies(text, TODAY)).toMatchObject({ rows: [row], problems: [] })
    const tabs = text.replaceAll(';', '\t')
    expect(readColonies(tabs, TODAY)).toMatchObject({ rows: [row], problems: [] })
    // Between commas a decimal comma would be two cells, so it stays a mistake.
    const commas = 'tag,removal_type,intake_on,queen_at_intake,outdoor_c\nA,wall,2026-05-01,caged,"29,4"'
    expect(readColonies(commas, TODAY).problems).toHaveLength(1)
  })

  it('takes what nobody knows: how it left, on which day, the queen, the kind of job', () => {
    const rows = [
      'A,unknown,,2026-05-01,,unknown,,,,,,,unknown,2026-06-01,,',
      'B,wall,,2026-05-01,,caged,,,,,,,died,,,',
    ]
    const read = readColonies(`${HEADER}\n${rows.join('\n')}\n`, TODAY)
    expect(read.problems).toEqual([])
    expect(read.rows).toMatchObject([
      { removal_type: 'unknown', queen_at_intake: 'unknown', outcome: 'unknown', outcome_on: '2026-06-01' },
      { outcome: 'died' },
    ])
    expect(read.rows[1]?.outcome_on).toBeUndefined()
  })

  it('a box used again after a colony that left on a day nobody wrote down', () => {
    const first = 'A,wall,,2026-05-01,,caged,,,,,,,died,,,'
    expect(readColonies(`${HEADER}\n${first}\nA,wall,,2026-07-01,,caged,,,,,,,,,,`, TODAY).problems).toEqual(
      [],
    )
  })

  it('the header alone: no colonies, no problem', () => {
    expect(read()).toEqual({ rows: [], problems: [] })
  })
})

describe('what is wrong is said with its line and column', () => {
  it.each([
    ['A,,,2026-05-01,,caged,,,,,,,,,,', 'line 2: removal_type: is missing'],
    [
      'A,wall,,2026-02-30,,caged,,,,,,,,,,',
      'line 2: intake_on: must be a real date written YYYY-MM-DD, not "2026-02-30"',
    ],
    [
      'A,wall,,1.5.2026,,caged,,,,,,,,,,',
      'line 2: intake_on: "1.5.2026" can be read two ways, 2026-05-01 or 2026-01-05; write the one that is meant',
    ],
    [
      'A,wall,,2026-05-01,,fine,,,,,,,,,,',
      'line 2: queen_at_intake: must be one of: caged, loose, unseen, lost, unknown; not "fine"',
    ],
    [
      'A,wall,,2026-05-01,,caged,0.3,,,,,,,,,',
      'line 2: egg_frames: must be in quarter frames (0.25, 0.5, …), not 0.3',
    ],
    ['A,wall,,2026-05-01,,caged,,,,warm,,,,,,', 'line 2: outdoor_c: must be a number, not "warm"'],
    ['A,wall,,2026-05-01,,caged,,,,99,,,,,,', 'line 2: outdoor_c: must be at most 60, not 99'],
    [
      'A,wall,2026-05-02,2026-05-01,,caged,,,,,,,,,,',
      'line 2: removed_on: 2026-05-02 is after the intake on 2026-05-01',
    ],
    ['A,wall,,2026-08-02,,caged,,,,,,,,,,', 'line 2: intake_on: 2026-08-02 is after 2026-08-01, today'],
    [
      'A,wall,,2026-05-01,,caged,,,,,,,,2026-06-01,,',
      'line 2: outcome: is missing, but outcome_on says 2026-06-01',
    ],
    [
      'A,wall,,2026-05-01,,caged,,,,,,,died,2026-04-30,,',
      'line 2: outcome_on: 2026-04-30 is before the intake on 2026-05-01',
    ],
    [
      'A,wall,,2026-05-01,,caged,,,,,,,died,2026-08-02,,',
      'line 2: outcome_on: 2026-08-02 is after 2026-08-01, today',
    ],
    [
      'A,wall,,2026-05-01,,caged,,,,,,,died,2026-06-01,B,',
      'line 2: into: names "B", but only a united colony went into another',
    ],
    [
      'A,wall,,2026-05-01,,caged',
      'line 2: has 6 cells where the header has 16; a text with a comma needs quotes around it',
    ],
    [
      'A,"wall,,2026-05-01',
      'line 2: opens a quote (") that never closes; this line and those after it cannot be read',
    ],
  ])('%s', (line, message) => {
    expect(said(line)).toEqual([message])
  })

  it('every bad row, and all that is wrong in it, while good rows are kept apart', () => {
    const { rows, problems } = read(
      'A,,,2026-05-01,,x,,,,,,,,,,',
      'B,wall,,2026-05-01,,caged,,,,,,,,,,',
      'C,wall,,,,caged,,,,,,,,,,',
    )
    expect(problems.map((p) => [p.line, p.field])).toEqual([
      [2, 'removal_type'],
      [2, 'queen_at_intake'],
      [4, 'intake_on'],
    ])
    expect(rows.map((r) => r.tag)).toEqual(['B'])
  })

  it('two colonies in one box at once; one after the other is well', () => {
    const first = 'A,wall,,2026-05-01,,caged,,,,,,,died,2026-06-01,,'
    expect(said(first, 'A,tree,,2026-06-01,,caged,,,,,,,,,,')).toEqual([])
    expect(said('A,tree,,2026-05-20,,caged,,,,,,,,,,', first)).toEqual([
      'line 2: tag: "A" was still the tag of the colony in line 3 on 2026-05-20',
    ])
  })

  it.each([
    ['', `line 1: is empty; the header must be ${HEADER}`],
    ['tag,removal_type,intake_on', 'line 1: has no column "queen_at_intake"; it is needed'],
    ['tag,tag,removal_type,intake_on,queen_at_intake', 'line 1: has the column "tag" twice'],
  ])('a header that does not fit: %j', (text, message) => {
    expect(readColonies(text, TODAY)).toEqual({ rows: [], problems: [expect.anything()] })
    expect(readColonies(text, TODAY).problems.map(lineOf)).toEqual([message])
  })

  it('a column that is not known is not passed over', () => {
    const [line] = readColonies('tag,removal_type,intake_on,queen_at_intake,colour\n', TODAY).problems.map(
      lineOf,
    )
    expect(line).toMatch(/^line 1: has a column "colour" that is not known; known are: tag, /)
  })
})

const word = fc.stringMatching(/^[A-Za-z][A-Za-z0-9-]{0,11}$/)
const anyText = fc
  .string({
    minLength: 1,
    maxLength: 60,
    unit: fc.constantFrom('a', 'ü', ' ', ',', '"', '\n', ';', "'", '=', '-', '+', '@', '1'),
  })
  .map((t) => t.trim())
  .filter((t) => t.length > 0)
const day = fc.integer({ min: 0, max: 40 }).map((n) => addDays('2026-05-01', n))
const frames = fc.option(
  fc.integer({ min: 0, max: 40 }).map((n) => n / 4),
  { nil: undefined },
)
const colonyRow: fc.Arbitrary<ColonyRow> = fc
  .record({
    tag: word,
    removal_type: anyText.map((t) => t.slice(0, 40).trim()),
    intake_on: day,
    yard: fc.option(anyText, { nil: undefined }),
    queen_at_intake: fc.constantFrom(...QUEEN_AT_INTAKE),
    egg_frames: frames,
    open_frames: frames,
    capped_frames: frames,
    outdoor_c: fc.option(
      fc.integer({ min: -200, max: 400 }).map((n) => n / 10),
      { nil: undefined },
    ),
    hours_open_to_boxed: fc.option(
      fc.integer({ min: 0, max: 100 }).map((n) => n / 4),
      { nil: undefined },
    ),
    method: fc.option(fc.constantFrom(...METHODS), { nil: undefined }),
    outcome: fc.option(fc.constantFrom(...OUTCOMES), { nil: undefined }),
    into: word,
    note: fc.option(anyText, { nil: undefined }),
    stay: fc.integer({ min: 0, max: 45 }),
  })
  .map(({ stay, into, ...r }) => ({
    ...r,
    removed_on: addDays(r.intake_on, -(stay % 2)),
    outcome_on: r.outcome === undefined ? undefined : addDays(r.intake_on, stay),
    into: r.outcome === 'united' ? into : undefined,
  }))
const given = (row: object) => Object.fromEntries(Object.entries(row).filter(([, v]) => v !== undefined))

describe('writing', () => {
  it('reads back as it was, whatever the text, formulas too', () => {
    fc.assert(
      fc.property(fc.uniqueArray(colonyRow, { selector: (r) => r.tag, maxLength: 12 }), (rows) => {
        const back = readColonies(writeColonies(rows), '2026-12-31')
        expect(back.problems).toEqual([])
        expect(back.rows.map(({ line: _line, ...r }) => given(r))).toEqual(rows.map(given))
      }),
    )
  })

  it('no text of ours is taken for a formula by a spreadsheet', () => {
    const text = writeColonies([
      {
        tag: 'A',
        removal_type: '=1+1',
        intake_on: '2026-05-01',
        queen_at_intake: 'caged',
        outdoor_c: -5,
        note: '@x',
      },
    ])
    expect(text.split('\r\n')[1]).toBe("A,'=1+1,,2026-05-01,,caged,,,,-5,,,,,,'@x")
  })

  it('to the journal and back', () => {
    fc.assert(
      fc.property(colonyRow, (row) => {
        let n = 0
        const newId = () => `00000000-0000-7000-8000-${String(++n).padStart(12, '0')}`
        const entries = entriesOf(row, { newId, by: 'Rowan', yard: 'Home' }).map((e) => entry.parse(e))
        const history = historyOf(row.tag, entries)
        if (history === null) throw new Error('no history')
        expect(given(rowOf(history))).toEqual(given({ ...row, yard: row.yard ?? 'Home' }))
      }),
    )
  })
})
