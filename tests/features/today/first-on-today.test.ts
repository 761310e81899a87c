/** What comes first on Today, and what "late" means: src/features/today/urgent.ts, src/words/lines.ts. */
import { describe, expect, test } from 'vitest'
import { addDays } from '../../../src/days.ts'
import { type Urgency, urgencyOf } from '../../../src/features/round/urgency.ts'
import type { TodayLine } from '../../../src/features/today/line.tsx'
import { dangerOf, urgentFirst } from '../../../src/features/today/urgent.ts'
import type { Check } from '../../../src/recovery/index.ts'
import { howPressing, lateDays, toDoOf } from '../../../src/words/index.ts'
import { box, TODAY } from '../round/yard.ts'

const calm: Urgency = { rank: 'due', window: null, check: null, until: null }
const closing = (of: 'cells' | 'laying-workers' | 'has-laying-workers', inDays: number): Urgency => ({
  ...calm,
  rank: 'closing-window',
  window: { of, day: addDays(TODAY, inDays) },
})

describe('danger', () => {
  test('is the inspector before any window', () => {
    const danger = dangerOf('call-inspector', closing('cells', 0), TODAY)
    expect(danger?.before).toBe('')
    expect(danger?.words).toBe('Nothing in or out of this box')
  })

  // Common practice: weather may put one round off by two days; what closes later is a date like any other.
  test.each([
    [0, 'It can raise a queen only today'],
    [1, 'It can raise a queen only until Thu 11 Jun'],
    [2, 'It can raise a queen only until Fri 12 Jun'],
    [3, undefined],
  ])('a window that closes in %i days: %s', (days, words) => {
    expect(dangerOf('open-and-look', closing('cells', days), TODAY)?.words).toBe(words)
  })

  test('laying workers that threaten are danger; once they are there nothing closes any more', () => {
    expect(dangerOf('open-and-look', closing('laying-workers', 1), TODAY)?.words).toBe(
      'Laying workers threaten',
    )
    expect(dangerOf('unite', closing('has-laying-workers', 0), TODAY)).toBeNull()
  })

  test('work like other work is none', () => {
    expect(dangerOf('move-out', calm, TODAY)).toBeNull()
  })
})

function check(status: Check['status'], closes: string): Check {
  const [any] = box({ tag: 'C-1', age: 10 }).plan.checks
  if (any === undefined) throw new Error('no check')
  return { ...any, rule: 'telling-visit', status, closes }
}

describe('late', () => {
  const ended = (days: number): Check => check('overdue', addDays(TODAY, -days))

  test('counts from the first day after the window that closed first', () => {
    expect(lateDays({ late: true, check: ended(2), also: [ended(5), ended(1)] }, TODAY)).toBe(5)
  })

  test('is nought days where nothing is late, whatever else is asked', () => {
    expect(lateDays({ late: false, check: check('due', TODAY), also: [] }, TODAY)).toBe(0)
  })

  test('is one word for the box, of the window that closed and not of the check that leads', () => {
    expect(howPressing({ late: true, check: check('open', addDays(TODAY, 3)) })).toBe('overdue')
    expect(howPressing({ late: false, check: check('open', addDays(TODAY, 3)) })).toBe('open')
    expect(howPressing({ late: false, check: null })).toBe('due')
  })
})

/** A colony as Today shows it. */
function line(tag: string, age: number): TodayLine {
  const { plan } = box({ tag, age })
  const toDo = toDoOf(plan)
  if (toDo === null) throw new Error(`nothing is to be done at ${tag}`)
  return {
    tag,
    path: `/colony/${tag}`,
    stand: null,
    yard: 'Quarry',
    toDo,
    danger: dangerOf(plan.advice.action, urgencyOf(plan), TODAY),
    half: false,
    missed: null,
    betterDay: null,
    leftOut: null,
    bound: null,
    inspector: null,
    entryId: '',
  }
}

describe('the order', () => {
  const calmly = (l: TodayLine): TodayLine => ({ ...l, danger: null })
  const at = (l: TodayLine, status: Check['status'], days: number): TodayLine => {
    const led = check(status, addDays(TODAY, days))
    return { ...calmly(l), toDo: { ...l.toDo, check: led, also: [], late: status === 'overdue' } }
  }
  const any = line('A-0', 6)

  test('is danger, the inspector before windows and a nearer window before a later one; late; due; open', () => {
    const named = (tag: string, l: TodayLine): TodayLine => ({ ...l, tag })
    const lines = [
      named('open', at(any, 'open', 2)),
      named('due', at(any, 'due', 0)),
      named('late', at(any, 'overdue', -1)),
      named('in two days', { ...any, danger: dangerOf('open-and-look', closing('cells', 2), TODAY) }),
      named('today', { ...any, danger: dangerOf('open-and-look', closing('cells', 0), TODAY) }),
      named('inspector', { ...any, danger: dangerOf('call-inspector', calm, TODAY) }),
    ]
    expect(urgentFirst(lines).map((l) => l.tag)).toEqual([
      'inspector',
      'today',
      'in two days',
      'late',
      'due',
      'open',
    ])
  })

  test('keeps the walk among equals, and leaves the list it was given', () => {
    const lines = ['3', '1', '2'].map((tag) => ({ ...at(any, 'due', 0), tag }))
    expect(urgentFirst(lines).map((l) => l.tag)).toEqual(['3', '1', '2'])
    const mixed = [at(any, 'open', 1), at(any, 'overdue', -3)]
    const before = [...mixed]
    urgentFirst(mixed)
    expect(mixed).toEqual(before)
  })
})
