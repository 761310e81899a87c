/** Rows into the book and out again: in the order in which things happened, all or the good ones, taken back whole. */
import fc from 'fast-check'
import { v7 } from 'uuid'
import { beforeEach, describe, expect, it } from 'vitest'
import { addDays } from '../../../src/days.ts'
import { rowOf } from '../../../src/features/import/colonies-csv.ts'
import { converting } from '../../../src/features/import/convert.ts'
import { lineOf } from '../../../src/features/import/csv-table.ts'
import { mappingOf } from '../../../src/features/import/mapping.ts'
import { type ImportRow, makingEntries, rehearsing, takingIn } from '../../../src/features/import/take-in.ts'
import { importState, withdrawalsOf } from '../../../src/features/import/undo.ts'
import { toTheEnd } from '../../../src/steps.ts'
import type { Store } from '../../../src/store/index.ts'
import {
  add,
  given,
  inspection,
  intake,
  memoryStore,
  newId,
  outcome,
  withdrawal,
} from '../../store/helpers.ts'

const TODAY = '2026-06-01'
const CONTEXT = { today: TODAY, recordedAt: '2026-06-01T17:00:00.000Z', recordedBy: 'Odalys' }

let store: Store
let importId: string
beforeEach(() => {
  store = memoryStore()
  importId = v7()
})

const signing = () => ({ importId, by: 'Odalys', yard: 'Quarry yard' })
let lines = 1
const row = (tag: string, on: string, more: Partial<ImportRow> = {}): ImportRow => ({
  line: ++lines,
  tag,
  removal_type: 'wall',
  intake_on: on,
  queen_at_intake: 'unseen',
  ...more,
})
const left = (what: ImportRow['outcome'], on: string, into?: string): Partial<ImportRow> => ({
  outcome: what,
  outcome_on: on,
  ...(into === undefined ? {} : { into }),
})
const take = (...rows: ImportRow[]) => toTheEnd(takingIn(store, rows, 'old.csv', signing(), CONTEXT))
const tagsIn = () => store.colonies().map((c) => c.tag)

describe('taking in', () => {
  it('makes an intake, and an outcome where there is one; the note, stand, customer and remover come along', () => {
    const one = row('W-1', '2026-05-01', {
      ...left('moved-out', '2026-05-31'),
      note: 'big one',
      stand: '4',
      site: '4 Elm Row',
      removedBy: 'Marla',
      outdoor_c: 27.8,
    })
    expect(take(one)).toEqual({ ok: true, colonies: 1, entries: 2, already: 0 })
    const history = store.colony('W-1')?.history
    expect(history?.intake).toMatchObject({
      by: 'Marla',
      stand: '4',
      note: 'big one',
      removal: { type: 'wall', site: '4 Elm Row', outdoorC: 27.8 },
    })
    expect(history?.outcome).toMatchObject({ what: 'moved-out', on: '2026-05-31', by: 'Odalys' })
    expect(store.entry(history?.intake.id ?? '')?.recordedBy).toBe('Odalys')
    expect(store.verify().problems).toEqual([])
  })

  it('a tag used again, on the very day its colony left', () => {
    const rows = [
      row('7', '2026-05-10', left('died', '2026-05-20')),
      row('7', '2026-04-01', left('moved-out', '2026-05-10')),
      row('7', '2026-05-20'),
    ]
    expect(take(...rows)).toMatchObject({ ok: true, entries: 5 })
    expect(store.colonies().map((c) => [c.intakeOn, c.outcome])).toEqual(
      expect.arrayContaining([
        ['2026-04-01', 'moved-out'],
        ['2026-05-10', 'died'],
        ['2026-05-20', null],
      ]),
    )
  })

  it('a colony united into one that stands further down, and came on the same day', () => {
    const rows = [row('A', '2026-05-01', left('united', '2026-05-15', 'B')), row('B', '2026-05-15')]
    expect(take(...rows)).toMatchObject({ ok: true })
  })

  it('a colony united into one that left later, and one that had its tag before', () => {
    const rows = [
      row('C', '2026-05-02', left('united', '2026-05-20', 'A')),
      row('A', '2026-05-01', left('moved-out', '2026-05-30')),
      row('C', '2026-05-21', left('united', '2026-05-25', 'A')),
    ]
    expect(take(...rows)).toMatchObject({ ok: true, entries: 6 })
    expect(store.verify().problems).toEqual([])
  })

  it('the same import sent twice is one import; changed, it is refused', () => {
    const one = row('W-1', '2026-05-01')
    take(one)
    expect(take(one)).toEqual({ ok: true, colonies: 1, entries: 0, already: 1 })
    expect(store.imports.list()).toHaveLength(1)
    expect(take({ ...one, queen_at_intake: 'caged' })).toMatchObject({ ok: false })
  })

  it('ids are time-ordered UUIDs, the same on every machine, no two alike', () => {
    const rows = Array.from({ length: 50 }, (_, i) => row(`T-${i}`, '2026-05-01', left('died', '2026-05-09')))
    const ids = (): string[] => toTheEnd(makingEntries(rows, signing())).map((e) => String(e.entry.id))
    expect(ids()).toEqual(ids())
    expect(new Set(ids()).size).toBe(100)
    for (const id of ids()) {
      expect(id).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/)
      expect(id.slice(0, 13)).toBe(importId.slice(0, 13))
    }
  })

  it('all or nothing', () => {
    add(store, intake('W-1'))
    expect(take(row('W-2', '2026-05-01'), row('W-1', '2026-05-01'))).toMatchObject({ ok: false })
    expect(tagsIn()).toEqual(['W-1'])
    expect(store.imports.list()).toEqual([])
  })

  it('any rows that are read can be taken in, and written out they are the same', () => {
    const day = fc.integer({ min: 0, max: 300 }).map((n) => addDays('2025-06-01', n))
    const stay = fc.record({ from: day, days: fc.integer({ min: 0, max: 60 }), gone: fc.boolean() })
    fc.assert(
      fc.property(fc.array(stay, { maxLength: 12 }), (stays) => {
        store = memoryStore()
        importId = v7()
        const rows = stays.map((s, i) =>
          row(`T-${i}`, s.from, s.gone ? left('absconded', addDays(s.from, s.days)) : {}),
        )
        expect(take(...rows)).toMatchObject({ ok: true })
        const written = [...store.histories()].map(({ history }) => rowOf(history))
        expect(written.map((r) => [r.tag, r.intake_on, r.outcome, r.outcome_on]).sort()).toEqual(
          rows.map((r) => [r.tag, r.intake_on, r.outcome, r.outcome_on]).sort(),
        )
        store.close()
      }),
      { numRuns: 25 },
    )
  })
})

describe('rehearsing', () => {
  it('writes nothing and tells what the book refuses, by line', () => {
    add(store, intake('W-1'))
    const rows = [row('W-2', '2026-05-01'), row('w-1', '2026-05-20')]
    const { good, problems } = toTheEnd(rehearsing(store.imports, rows, signing(), CONTEXT))
    expect(good.map((r) => r.tag)).toEqual(['W-2'])
    expect(problems.map(lineOf)).toEqual([
      `line ${rows[1]?.line}: tag: "W-1" is already in the yard, since Sun 10 May 2026: give this one another tag, or first record how that one left`,
    ])
    expect(tagsIn()).toEqual(['W-1'])
    expect([...store.journal()]).toHaveLength(1)
    expect(store.verify().problems).toEqual([])
  })

  it('what is good by rehearsal is taken in', () => {
    add(store, intake('W-1'))
    const rows = [row('W-2', '2026-05-01'), row('W-1', '2026-05-20'), row('W-3', '2026-05-01')]
    const { good } = toTheEnd(rehearsing(store.imports, rows, signing(), CONTEXT))
    expect(take(...good)).toMatchObject({ ok: true, colonies: 2 })
  })
})

describe('in pieces, so that others are answered in between', () => {
  /** Entries that may be written, and judged, without letting others in. */
  const MOST_AT_ONCE = 11
  const YARD = Array.from({ length: 60 }, (_, n) =>
    row(`P-${n}`, '2026-05-01', n % 2 === 0 ? left('died', '2026-05-09') : {}),
  )

  it('writes a few entries a piece, after judging them one by one', () => {
    let [pieces, before, judged] = [0, 0, 0]
    for (const _ of takingIn(store, YARD, 'old.csv', signing(), CONTEXT)) {
      const now = store.changes({ limit: 500 }).length
      expect(now - before).toBeLessThanOrEqual(MOST_AT_ONCE)
      if (now === 0) judged++
      before = now
      pieces++
    }
    expect(before).toBe(90)
    // Made one by one, read, held against the book each, then each colony as a whole.
    expect(judged).toBeGreaterThanOrEqual(60 + 90 + 90 + 60)
    expect(pieces - judged).toBe(9)
    expect(store.imports.entries(importId)).toHaveLength(90)
    expect(store.verify().problems).toEqual([])
  })

  it('reads a sheet row by row', () => {
    const text = [
      'tag,removal_type,intake_on,queen_at_intake',
      ...YARD.map((r) => `${r.tag},wall,2026-05-01,unseen`),
    ]
    const usual = { yard: 'N', ownTypes: [], yards: [], people: [], heat: 'C', today: TODAY } as const
    let pieces = 0
    for (const _ of converting(mappingOf(text.join('\n'), {}, usual), TODAY)) pieces++
    expect(pieces).toBe(2 * YARD.length)
  })

  it('takes back what it wrote when the book changes meanwhile and refuses the rest', () => {
    const pieces = takingIn(store, YARD, 'old.csv', signing(), CONTEXT)
    while (store.changes({ limit: 500 }).length === 0) pieces.next()
    add(store, intake('P-59'))
    const result = toTheEnd(pieces)
    expect(result.ok).toBe(false)
    expect(result.ok ? [] : result.problems.map((p) => [p.line, p.field])).toEqual([[YARD[59]?.line, 'tag']])
    expect(tagsIn()).toEqual(['P-59'])
    expect(store.verify().problems).toEqual([])
  })
})

describe('taking back', () => {
  const undo = () => {
    const state = importState(store, importId)
    if (state === null) throw new Error('no such import')
    return { state, withdrawals: withdrawalsOf(state, { by: 'Odalys', today: TODAY }) }
  }

  it('withdraws everything, signed and dated; nothing is deleted', () => {
    add(store, intake('mine'))
    take(row('A', '2026-05-01', left('died', '2026-05-09')), row('B', '2026-05-01'))
    const before = [...store.journal()].length
    const { state, withdrawals } = undo()
    expect(state.onTop).toEqual([])
    expect(withdrawals).toHaveLength(3)
    for (const w of withdrawals)
      expect(w).toMatchObject({
        kind: 'withdrawal',
        by: 'Odalys',
        on: TODAY,
        reason: 'Import of old.csv taken back',
      })
    expect(store.append(withdrawals, CONTEXT)).toMatchObject({ ok: true })
    expect(tagsIn()).toEqual(['mine'])
    expect([...store.journal()]).toHaveLength(before + 3)
    expect(undo().state.standing).toEqual([])
    expect(store.verify().problems).toEqual([])
  })

  it('and the same sheet can be taken in again', () => {
    const one = row('A', '2026-05-01')
    take(one)
    store.append(undo().withdrawals, CONTEXT)
    importId = v7()
    expect(take(one)).toMatchObject({ ok: true, entries: 1 })
    expect(tagsIn()).toEqual(['A'])
  })

  it('says what was entered on top: a visit, a correction, an outcome, brood given from it, one united into it', () => {
    take(row('A', '2026-05-01'), row('B', '2026-05-01'), row('C', '2026-05-01'))
    const a = store.colony('A')?.history.intake
    if (a === undefined) throw new Error('A is missing')
    add(store, intake('mine'))
    add(store, inspection('B', '2026-05-20'))
    add(store, { ...a, id: newId(), replaces: a.id, colony: 'A', queen: 'caged' } as never)
    add(store, outcome('C', '2026-05-25'))
    add(store, given('mine', '2026-05-20', { donor: 'b' }))
    add(store, outcome('mine', '2026-05-28', { what: 'united', into: 'A' }))
    expect(
      undo()
        .state.onTop.map((t) => `${t.tag} ${t.entry.kind}`)
        .sort(),
    ).toEqual(['A intake', 'B inspection', 'C outcome', 'mine given', 'mine outcome'])
  })

  it('what was withdrawn again is no longer on top, and what was withdrawn by hand needs no second time', () => {
    take(row('A', '2026-05-01'), row('B', '2026-05-01'))
    const look = add(store, inspection('A', '2026-05-20'))
    expect(undo().state.onTop).toHaveLength(1)
    add(store, withdrawal('A', look))
    add(store, withdrawal('B', store.colony('B')?.summary.id ?? ''))
    const { state, withdrawals } = undo()
    expect(state.onTop).toEqual([])
    expect(withdrawals).toHaveLength(1)
    expect(store.append(withdrawals, CONTEXT)).toMatchObject({ ok: true })
    expect(tagsIn()).toEqual([])
  })

  it('an earlier colony of the same tag is no tie', () => {
    add(store, intake('A'), outcome('A', '2026-05-12'))
    add(store, intake('mine'))
    add(store, given('mine', '2026-05-11', { donor: 'A' }))
    take(row('A', '2026-05-20'))
    expect(undo().state.onTop).toEqual([])
  })

  it('an import nobody made is none', () => {
    expect(importState(store, v7())).toBeNull()
  })
})
