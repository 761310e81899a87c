/** What the morning digest says, and what it never says. */
import { describe, expect, test } from 'vitest'
import { planOf } from '../../../src/decision/index.ts'
import { digestOf } from '../../../src/features/messages/digest.ts'
import { digestText } from '../../../src/features/messages/digest-text.ts'
import { type Entry, entry as schema } from '../../../src/journal/entry.ts'
import { historyOf } from '../../../src/journal/history.ts'
import type { Plan } from '../../../src/recovery/plan-types.ts'
import { wordsIn } from '../../../src/words/index.ts'

const SECRET = 'Zebulon'
let made = 0
const make = (kind: Entry['kind'], on: string, more: Record<string, unknown>): Entry => {
  made++
  const id = `0190a000-0000-7000-8000-${String(made).padStart(12, '0')}`
  return schema.parse({ id, colony: 'x', kind, on, by: SECRET, note: SECRET, ...more })
}
const intake = (on: string, queen = 'unseen'): Entry =>
  make('intake', on, { removal: { type: SECRET, site: SECRET }, yard: SECRET, stand: SECRET, queen })

function planned(tag: string, day: string, ...entries: Entry[]): { tag: string; plan: Plan } {
  const history = historyOf(tag, entries)
  if (history === null) throw new Error('no intake stands')
  return { tag, plan: planOf(history, day) }
}

const DAY = '2026-05-12'
/** Its first brood check was due by day 7 (src/recovery/protocol.ts). */
const late = planned('M-1', DAY, intake('2026-05-04'), make('inspection', '2026-05-06', { opened: false }))
/** Day 2: the first look from outside. */
const first = planned('M-2', DAY, intake('2026-05-10'))
/** Nothing asks on the day of the intake. */
const fresh = planned('M-3', DAY, intake(DAY))

describe('the digest', () => {
  test('has the late ones first, each with its action and its window', () => {
    const { items, next } = digestOf([first, late], [first, late, fresh], DAY)
    expect(items.map((i) => [i.tag, i.rule, i.late, i.closes])).toEqual([
      ['M-1', 'telling-visit', true, '2026-05-11'],
      ['M-2', 'outside-look', false, '2026-05-13'],
    ])
    expect(next).toBeNull()
  })

  test('on a day when nothing asks says what comes next', () => {
    const digest = digestOf([], [fresh], DAY)
    expect(digest.next).toEqual({ tag: 'M-3', rule: 'outside-look', on: '2026-05-13' })
    const { subject, text } = digestText(digest, null, wordsIn('en'))
    expect(subject).toBe('Tue 12 May: no box asks')
    expect(text).toContain('The next one: M-3, first look from outside, Wed 13 May.')
  })

  test('as an e-mail: one line a box', () => {
    const { subject, text } = digestText(
      digestOf([first, late], [], DAY),
      'https://yard.example',
      wordsIn('en'),
    )
    expect(subject).toBe('Tue 12 May: 2 boxes ask, 1 late')
    expect(text).toBe(
      [
        'Tue 12 May 2026',
        '',
        'Late:',
        '  M-1: the first brood check; should have been done by Mon 11 May',
        '',
        'Today:',
        '  M-2: first look from outside (lid on); last day Wed 13 May',
        '',
        'The round: https://yard.example/round',
        'Change or stop these messages: https://yard.example/account/messages',
        '',
      ].join('\n'),
    )
  })

  test('holds tags, actions and windows, and nothing else', () => {
    const digest = digestOf([first, late], [first, late, fresh], DAY)
    expect(JSON.stringify(digest) + digestText(digest, null, wordsIn('en')).text).not.toContain(SECRET)
    for (const item of digest.items)
      expect(Object.keys(item).sort()).toEqual(
        ['action', 'closes', 'due', 'late', 'lidOn', 'opens', 'rule', 'tag'].sort(),
      )
  })
})
