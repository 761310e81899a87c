import { describe, expect, test } from 'vitest'
import { feedOf, needOf, SUGAR_PER_COMB_KG } from '../../../src/features/health/feed.ts'
import { healthOf, needsWash, urgencyOf } from '../../../src/features/health/health.ts'
import { washesOf } from '../../../src/features/health/mites.ts'
import { unwatched, watchOf } from '../../../src/features/health/watch.ts'
import { standsShort } from '../../../src/features/health/words.ts'
import { leavingWords } from '../../../src/features/protocol/preview-page.tsx'
import { type Entry, entry } from '../../../src/journal/entry.ts'
import { type History, historyOf } from '../../../src/journal/history.ts'
import { planOf } from '../../../src/recovery/plan.ts'
import {
  DEFAULT_PROTOCOL,
  protocolOverrides,
  protocolWith,
  yardProtocol,
} from '../../../src/recovery/protocol.ts'
import { changeFor, totalsOf } from '../../../src/recovery/protocol-preview.ts'
import { suspicionOn } from '../../../src/recovery/suspicion.ts'

let made = 0
const written = (kind: string, on: string, more: object = {}): Entry => {
  made++
  const id = `019707a0-0000-7000-8000-${String(made).padStart(12, '0')}`
  return entry.parse({ id, colony: 'W-1', by: 'O', kind, on, ...more })
}
const intake = (more: object = {}) =>
  written('intake', '2026-05-01', { removal: { type: 'wall' }, yard: 'Q', queen: 'loose', ...more })
const look = (on: string, more: object = {}) => written('inspection', on, { opened: true, ...more })
function history(...entries: Entry[]): History {
  const h = historyOf('W-1', entries)
  if (h === null) throw new Error('no intake')
  return h
}

describe('feed', () => {
  const gift = (more: object) => feedOf(written('given', '2026-05-10', { what: 'syrup', ...more }) as never)
  test('is counted in sugar: a litre of 1:1 holds 0.615 kg, of 2:1 0.886 kg', () => {
    expect(gift({ litres: 2 }).sugarKg).toBeCloseTo(1.23, 6)
    expect(gift({ litres: 2, syrup: '2:1' }).sugarKg).toBeCloseTo(1.772, 6)
    expect(gift({ kg: 1.5 }).sugarKg).toBe(1.5)
    expect(gift({}).sugarKg).toBeNull()
    expect(gift({ what: 'pollen', kg: 0.5 }).sugarKg).toBe(0)
  })
  test('the need of 10,000 adults without brood is 70 g of food a day (Khoury et al. 2013)', () => {
    const need = needOf(history(intake({ bees: { frames: 4.25 } })), '2026-05-10')
    // 4.25 frames of 2,300 are 9,775 bees.
    expect(need?.sugarKgAWeek).toBeCloseTo((7 * 0.8 * 9775 * 0.007) / 1000, 9)
    expect(need?.brood).toBeNull()
  })
  test('open brood eats, capped brood does not: 3 of 7 cells', () => {
    const h = history(intake(), look('2026-05-20', { framesOfBees: 5, framesOfBrood: 2 }))
    const adults = 5 * 2300 * 0.007
    const open = ((2 * 7000 * 0.7 * 3) / 7) * 0.018
    expect(needOf(h, '2026-05-22')?.sugarKgAWeek).toBeCloseTo((7 * 0.8 * (adults + open)) / 1000, 9)
    expect(needOf(h, '2026-05-22')?.stale).toBe(false)
    expect(needOf(h, '2026-06-22')?.stale).toBe(true)
  })
  test('nobody counted: no need is made up', () => {
    expect(needOf(history(intake()), '2026-05-10')).toBeNull()
  })
  test('a deep frame of comb costs about 0.6 kg of sugar', () => {
    expect(SUGAR_PER_COMB_KG).toBeCloseTo(0.61, 2)
  })
})

describe('the watch', () => {
  const seen = (on: string, ...signs: string[]) => look(on, { signs })
  test('never looked, clear, seen, gone', () => {
    const stands = (...entries: Entry[]) =>
      watchOf('beetles', history(intake(), ...entries).entries, '2026-05-30').stands
    expect(stands()).toBe('not-looked')
    expect(stands(look('2026-05-10'))).toBe('not-looked')
    expect(stands(seen('2026-05-10'))).toBe('clear')
    expect(stands(seen('2026-05-10', 'beetles'))).toBe('seen')
    expect(stands(seen('2026-05-10', 'beetles'), seen('2026-05-12', 'moths'))).toBe('gone')
  })
  test('beetles are looked at again within 7 days, robbing the next day', () => {
    const { entries } = history(intake(), seen('2026-05-10', 'beetles', 'robbing'))
    expect(watchOf('beetles', entries, '2026-05-17')).toMatchObject({
      lookAgainBy: '2026-05-17',
      late: false,
    })
    expect(watchOf('beetles', entries, '2026-05-18').late).toBe(true)
    expect(watchOf('robbing', entries, '2026-05-12').late).toBe(true)
    expect(unwatched(watchOf('moths', entries, '2026-05-21'), '2026-05-21')).toBe(true)
  })
})

describe('a suspected disease', () => {
  const sick = look('2026-05-10', { signs: ['brood-disease-suspected'] })
  const clean = look('2026-05-20', { signs: [] })
  const cleared = written('disease-cleared', '2026-05-25', { clearedBy: 'inspector' })

  test('stands over clean looks until it is cleared, and the looks are counted', () => {
    const { entries } = history(intake(), sick, clean, cleared)
    expect(suspicionOn(entries, '2026-05-09')).toBeNull()
    expect(suspicionOn(entries, '2026-05-21')).toEqual({
      since: '2026-05-10',
      lastSeen: '2026-05-10',
      cleanLooks: ['2026-05-20'],
    })
    expect(suspicionOn(entries, '2026-05-25')).toBeNull()
  })
  test('in a yard’s own book the plan says so; a bare history’s clean look ends it', () => {
    const h = history(intake(), sick, clean)
    const own = planOf(h, '2026-05-21', yardProtocol())
    expect(own.advice.action).toBe('call-inspector')
    expect(own.readiness.unmet.map((u) => u.what).join()).toContain('brood disease is suspected')
    expect(own.readiness.expected).toBeNull()
    expect(planOf(h, '2026-05-21').advice.action).not.toBe('call-inspector')
    expect(planOf(history(intake(), sick), '2026-05-21').advice.action).toBe('call-inspector')
  })
  test('a clearance ends it, and the inspector’s counts as a look of that day', () => {
    const h = history(intake(), sick, cleared)
    const plan = planOf(h, '2026-05-26', yardProtocol())
    expect(plan.advice.action).not.toBe('call-inspector')
    expect(plan.readiness.unmet.map((u) => u.what).join()).not.toContain('disease')
    const lab = written('disease-cleared', '2026-05-25', { clearedBy: 'laboratory' })
    expect(
      planOf(history(intake(), sick, lab), '2026-05-26', yardProtocol())
        .readiness.unmet.map((u) => u.what)
        .join(),
    ).toContain('disease look within 7 days')
  })
  test('a clearance of nothing changes no plan', () => {
    const without = planOf(history(intake()), '2026-05-26')
    expect(planOf(history(intake(), cleared), '2026-05-26')).toEqual(without)
  })
})

test('health puts the pressing first', () => {
  const of = (...entries: Entry[]) =>
    urgencyOf(healthOf(history(intake(), ...entries), '2026-05-30', DEFAULT_PROTOCOL, null))
  const wash = (mites: number) => written('mite-wash', '2026-05-25', { bees: 300, mites })
  expect(of(look('2026-05-10', { signs: ['brood-disease-suspected'] }))).toBe(0)
  expect(of(look('2026-05-10', { signs: ['beetles'] }))).toBe(1)
  expect(of(look('2026-05-10', { stores: 'low' }))).toBe(1)
  expect(of(wash(12))).toBe(2)
  expect(of()).toBe(3)
  expect(of(wash(1))).toBe(4)
})

test('a box with an old wash is to be washed, whatever else presses; a held one stays closed', () => {
  const needs = (...entries: Entry[]) =>
    needsWash(healthOf(history(intake(), ...entries), '2026-05-30', DEFAULT_PROTOCOL, null))
  const wash = (on: string) => written('mite-wash', on, { bees: 300, mites: 14 })
  expect(needs()).toBe(true)
  expect(needs(wash('2026-05-25'))).toBe(false)
  expect(needs(wash('2026-05-02'))).toBe(true)
  expect(needs(wash('2026-05-02'), look('2026-05-29', { signs: ['beetles'] }))).toBe(true)
  expect(needs(look('2026-05-10', { signs: ['brood-disease-suspected'] }))).toBe(false)
})

test('a count over the threshold asks for something, whatever its limits', () => {
  const [w] = washesOf(
    history(intake(), written('mite-wash', '2026-05-25', { bees: 300, mites: 14 })).entries,
    '2026-05-30',
    DEFAULT_PROTOCOL,
  )
  if (w === undefined) throw new Error('no wash')
  expect(w.stands).toBe('either')
  expect(standsShort(w)).toBe('over the threshold by the count: wash again, or treat (the label is the law)')
  expect(standsShort({ ...w, rate: 2.9 })).toBe('under the threshold by the count, not for sure: wash again')
})

describe('the preview of a protocol', () => {
  const h = history(intake({ queen: 'unseen' }))
  const change = (overrides: object, today = '2026-05-09') =>
    changeFor(planOf(h, today), planOf(h, today, protocolWith(protocolOverrides.parse(overrides))))

  test('the same rules change nothing', () => {
    expect(change({})).toBeNull()
    expect(change({ windows: { 'telling-visit': { opens: 4, due: 5, closes: 7 } } })).toBeNull()
  })
  test('a window that moves is told with both', () => {
    const c = change({ windows: { 'telling-visit': { opens: 5, due: 6, closes: 9 } } })
    expect(c?.moved).toMatchObject([
      {
        rule: 'telling-visit',
        before: { closes: '2026-05-08' },
        after: { opens: '2026-05-06', closes: '2026-05-10' },
      },
    ])
    expect(c?.noLongerLate).toEqual(['telling-visit'])
    expect(totalsOf(3, c === null ? [] : [c])).toMatchObject({
      colonies: 3,
      changed: 1,
      checksMove: 1,
      becomeLate: 0,
      noLongerLate: 1,
    })
  })
  test('a window that closes earlier makes late', () => {
    expect(
      change({ windows: { 'telling-visit': { opens: 4, due: 4, closes: 4 } } }, '2026-05-06')?.becomesLate,
    ).toEqual(['telling-visit'])
  })
  test('a longer hold moves the wash and the expected leaving', () => {
    const c = change({ holdDays: 45 })
    expect(c?.moved.map((m) => m.rule)).toEqual(['mite-wash'])
    expect(c?.expected).not.toBeNull()
    expect(leavingWords({ before: 'now', after: '2026-05-27' }, '2026-05-09')).toBe(
      'Can go now; by the new rules it leaves about Wed 27 May',
    )
    expect(leavingWords({ before: null, after: null }, '2026-05-09')).not.toMatch(/about/)
  })
})
