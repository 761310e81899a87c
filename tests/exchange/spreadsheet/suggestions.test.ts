/** What an old sheet is asked about: names written in several ways, fates left blank, dates that can be read two ways. */
import { describe, expect, it } from 'vitest'
import type { ColonyRow } from '../../../src/features/import/colonies-csv.ts'
import { entriesOf, rowOf } from '../../../src/features/import/colonies-csv.ts'
import { converted } from '../../../src/features/import/convert.ts'
import { mappingOf } from '../../../src/features/import/mapping.ts'
import { closed, longGone, merged, mergesIn } from '../../../src/features/import/suggestions.ts'
import { sameNameReading, sameNames } from '../../../src/features/review/same-names.ts'
import { entry } from '../../../src/journal/entry.ts'
import { historyOf } from '../../../src/journal/history.ts'

const TODAY = '2026-08-01'
const row = (tag: string, more: Partial<ColonyRow> = {}): ColonyRow => ({
  tag,
  removal_type: 'wall',
  intake_on: '2026-05-01',
  queen_at_intake: 'caged',
  ...more,
})

describe('names written in several ways', () => {
  it('are found whatever the case, spaces and dashes, the known spelling kept', () => {
    expect(sameNames(['Wall', 'wall', 'WALL', 'wall ', 'tree'])).toEqual([
      { keep: 'WALL', others: ['Wall', 'wall', 'wall '] },
    ])
    expect(sameNames(['Wall', 'WALL'], ['wall'])).toEqual([{ keep: 'wall', others: ['WALL', 'Wall'] }])
    expect(sameNames(['trap-out', 'Trap out', 'trapout', 'trapout'])).toEqual([
      { keep: 'trapout', others: ['Trap out', 'trap-out'] },
    ])
    expect(sameNames(['wall', 'hall', 'floor'])).toEqual([])
    expect(sameNameReading(sameNames(['Home', 'home', 'home']), 'yards')).toBe(
      'Home and home are counted as different yards; merge them if they are one.',
    )
  })

  it('are merged where that is said, and nothing else is touched', () => {
    const rows = [row('A', { yard: 'Home' }), row('B', { removal_type: 'WALL', yard: 'home' }), row('C')]
    const merges = mergesIn(rows, { types: [], yards: ['home'] })
    expect(merges).toEqual({
      types: [{ keep: 'wall', others: ['WALL'] }],
      yards: [{ keep: 'home', others: ['Home'] }],
    })
    expect(merged(rows, merges)).toEqual([row('A', { yard: 'home' }), row('B', { yard: 'home' }), row('C')])
  })
})

describe('fates left blank', () => {
  const rows = [
    row('A', { intake_on: '2023-05-01' }),
    row('B', { intake_on: '2023-05-01', outcome: 'died' }),
    row('C'),
  ]
  it('of colonies that came long ago are most likely gone: said, and closed when that is wanted', () => {
    expect(longGone(rows, TODAY).map((r) => r.tag)).toEqual(['A'])
    expect(closed(rows, TODAY).map((r) => r.outcome)).toEqual(['unknown', 'died', undefined])
  })

  it('go to the journal and back, with a day that nobody wrote down', () => {
    let n = 0
    const newId = () => `019707a0-0000-7000-8000-${String(++n).padStart(12, '0')}`
    for (const r of closed(rows, TODAY)) {
      const entries = entriesOf(r, { newId, by: 'Rowan', yard: 'Home' }).map((e) => entry.parse(e))
      const history = historyOf(r.tag, entries)
      if (history === null) throw new Error('no history')
      const back = rowOf(history)
      expect([back.outcome, back.outcome_on]).toEqual([r.outcome, r.outcome_on])
    }
  })
})

describe('dates that can be read two ways', () => {
  const map = (text: string, order?: 'day-first' | 'month-first') =>
    converted(mappingOf(text, { order }, { yard: 'Home', ownTypes: [], heat: 'C', today: TODAY }), TODAY)

  it('are named with both days where the sheet does not prove its order', () => {
    const { rows, twoWays } = map(
      'Box,Date,Type\nA,3/4/2026,wall\nB,5/5/2026,wall\nC,2026-05-06,wall',
      'day-first',
    )
    expect(rows.map((r) => r.intake_on)).toEqual(['2026-04-03', '2026-05-05', '2026-05-06'])
    expect(twoWays).toEqual([
      { line: 2, field: 'Date', text: '3/4/2026', taken: '2026-04-03', other: '2026-03-04' },
    ])
  })

  it('are not, where another line proves it', () => {
    expect(map('Box,Date,Type\nA,3/4/2026,wall\nB,25/4/2026,wall').twoWays).toEqual([])
  })

  it('are, where the lines prove both orders: some are wrong whichever is chosen', () => {
    const mixed = map('Box,Date,Type\nA,3/4/2026,wall\nB,25/4/2026,wall\nC,4/26/2026,wall', 'day-first')
    expect(mixed.twoWays.map((t) => t.line)).toEqual([2])
    expect(mixed.problems.map((p) => p.line)).toEqual([4])
  })
})
