import { describe, expect, it } from 'vitest'
import { addDays } from '../../src/days.ts'
import { headline, lidShutUntil, toDoOf, waitsUntil } from '../../src/words/lines.ts'
import { afterQuiet, isQuiet } from '../../src/words/rules.ts'
import { look, planFrom, WALL } from '../support/wall-colony.ts'

describe('the line of a colony on the round', () => {
  it('leads with the check that the advice speaks of', () => {
    const toDo = toDoOf(planFrom([WALL, look('2026-05-03', { opened: false, signs: [] })], '2026-05-06'))
    expect(toDo?.title).toBe('The first brood check')
    expect(toDo?.question).toBe('Eggs? Queen cells? Neither?')
    expect(toDo?.late).toBe(false)
    expect(toDo?.lidOn).toBe(false)
  })

  it('is late when anything asked on that visit is', () => {
    expect(toDoOf(planFrom([WALL], '2026-05-06'))?.also.some((c) => c.status === 'overdue')).toBe(true)
    expect(toDoOf(planFrom([WALL], '2026-05-06'))?.late).toBe(true)
  })

  it('is late after the last day of the window', () => {
    const toDo = toDoOf(planFrom([WALL], '2026-05-09'))
    expect(toDo?.late).toBe(true)
    expect(toDo?.check?.status).toBe('overdue')
  })

  it('keeps the lid on for the first look from outside', () => {
    const toDo = toDoOf(planFrom([WALL], '2026-05-03'))
    expect(toDo?.lidOn).toBe(true)
    expect(toDo?.check?.rule).toBe('outside-look')
  })

  it('says what to do, once the plan is to act', () => {
    const none = look('2026-05-06', { eggs: 'none', open: 'none', cells: 'none', queen: 'unseen' })
    const toDo = toDoOf(planFrom([WALL, none], '2026-05-06'))
    expect(toDo?.title).toBe('Give a frame of eggs')
    expect(toDo?.question).toBeNull()
    expect(toDo?.check?.rule).toBe('egg-frame')
  })

  it('lets a colony wait until a day after today, lid on in quiet time', () => {
    const cells = look('2026-05-06', { eggs: 'none', cells: 'open' })
    for (const today of ['2026-05-07', '2026-05-10', '2026-05-14', '2026-05-20', '2026-05-24']) {
      const plan = planFrom([WALL, cells], today)
      const until = waitsUntil(plan)
      if (until !== null) expect(until > today).toBe(true)
      // A frame of eggs as insurance is the one thing that opens a box in quiet time, gently.
      if (isQuiet(plan) && plan.advice.action !== 'give-egg-frame') {
        // One date a box: until when it can wait, which in quiet time may be a look from outside.
        const waits = plan.advice.action === 'leave-alone' ? ', it can wait until ' : ''
        expect(headline(plan, null)).toContain(`; leave the lid on${waits}`)
        expect(toDoOf(plan)?.lidOn ?? true).toBe(true)
      }
    }
  })

  it('puts a mite wash that would fall into quiet time after it, and nothing else', () => {
    const raising = planFrom([WALL, look('2026-05-06', { eggs: 'none', cells: 'open' })], '2026-05-07')
    const after = raising.checks
      .map((c) => [c.rule, afterQuiet(c, raising)])
      .filter(([, day]) => day !== null)
    expect(after).toEqual([['mite-wash', addDays(raising.quiet?.to ?? '', 1)]])
    const plain = planFrom([WALL], '2026-05-07')
    expect(plain.checks.every((c) => afterQuiet(c, plain) === null)).toBe(true)
  })

  it('says how long the lid stays shut, beside the look from outside that comes first', () => {
    const plan = planFrom([WALL], '2026-05-01')
    expect(plan.checks.find((c) => c.rule === 'outside-look')?.opens).toBe('2026-05-02')
    expect(lidShutUntil(plan)).toBe('2026-05-05')
    expect(lidShutUntil(planFrom([WALL], '2026-05-06'))).toBeNull()
    const cells = planFrom([WALL, look('2026-05-06', { eggs: 'none', cells: 'open' })], '2026-05-20')
    expect(isQuiet(cells) && lidShutUntil(cells)).toBe(addDays(cells.quiet?.to ?? '', 1))
  })

  it('says how it left', () =>
    expect(headline(planFrom([WALL], '2026-05-06'), 'united')).toBe('United with another colony'))
})
