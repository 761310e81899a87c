import { validate, version } from 'uuid'
import { describe, expect, it } from 'vitest'
import { MAREN, MARL } from '../../demo/cast.ts'
import { dayMade, idMadeAt, momentOf } from '../../demo/ids.ts'
import { between, chance, normal, pick, seeded } from '../../demo/seeded.ts'
import { colony } from '../../demo/story.ts'
import { standing } from '../../src/journal/history.ts'

const arriving = {
  daysAgo: 10,
  yard: MARL,
  stand: '3',
  by: MAREN,
  at: '18:00',
  removal: { type: 'wall' },
  queen: 'unseen' as const,
}

describe('telling a story', () => {
  it('dates every entry from the intake', () => {
    const entries = colony('M-90', arriving).outside(2).open(5, { eggs: 'single' }).entries('2026-05-20')
    expect(entries.map((e) => [e.kind, e.on, e.by])).toEqual([
      ['intake', '2026-05-10', 'Maren'],
      ['inspection', '2026-05-12', 'Isolde'],
      ['inspection', '2026-05-15', 'Isolde'],
    ])
  })

  it('corrects in place: the new version keeps the day and says what it replaces', () => {
    const entries = colony('M-90', arriving)
      .open(5, { eggs: 'single', framesOfBees: 4 })
      .corrected(7, { eggs: 'none' })
      .entries('2026-05-20')
    const [, first, second] = entries
    expect(second).toMatchObject({ replaces: first?.id, on: '2026-05-15', eggs: 'none', framesOfBees: 4 })
    expect(dayMade(second?.id ?? '')).toBe('2026-05-17')
    expect(standing(entries)).toHaveLength(2)
  })

  it('withdraws: what was told last no longer stands', () => {
    const entries = colony('M-90', arriving).tiesOff(5).withdrawn(6, 'The wrong box.').entries('2026-05-20')
    expect(standing(entries).map((e) => e.kind)).toEqual(['intake'])
    expect(entries.at(-1)).toMatchObject({ kind: 'withdrawal', on: '2026-05-16', by: 'Isolde' })
  })

  it('counts the removal back from the intake', () => {
    const [intake] = colony('M-90', { ...arriving, removedBefore: 2 }).entries('2026-05-20')
    expect(intake).toMatchObject({ on: '2026-05-10', removal: { type: 'wall', removedOn: '2026-05-08' } })
  })

  it('changes hands with the yard', () => {
    const entries = colony('M-90', arriving).move(3, 'Tannery Field', '4').outside(5).entries('2026-05-20')
    expect(entries.map((e) => e.by)).toEqual(['Maren', 'Isolde', 'Juno'])
  })

  it('refuses to tell what has not happened yet', () => {
    expect(() => colony('M-90', arriving).outside(11).entries('2026-05-20')).toThrow(/M-90: day 11/)
  })
})

describe('ids', () => {
  it('are UUIDs of version 7 that carry the moment (RFC 9562, section 5.7)', () => {
    const id = idMadeAt('2026-05-10', '18:30', 'M-90')
    expect(validate(id) && version(id) === 7).toBe(true)
    expect(new Date(momentOf(id)).toISOString()).toBe('2026-05-10T18:30:00.000Z')
  })

  it('are the same each time and differ by what they are about', () => {
    expect(idMadeAt('2026-05-10', '18:30', 'a')).toBe(idMadeAt('2026-05-10', '18:30', 'a'))
    expect(idMadeAt('2026-05-10', '18:30', 'a')).not.toBe(idMadeAt('2026-05-10', '18:30', 'b'))
  })
})

describe('chance with a seed', () => {
  const many = <T>(make: () => T): T[] => Array.from({ length: 4000 }, make)

  it('draws evenly, and the same again', () => {
    const draw = seeded('even')
    const drawn = many(draw)
    const again = seeded('even')
    expect(many(again)).toEqual(drawn)
    expect(drawn.every((x) => x >= 0 && x < 1)).toBe(true)
    // The mean of 4,000 uniform draws has a standard error of 0.0046.
    expect(drawn.reduce((a, b) => a + b) / drawn.length).toBeCloseTo(0.5, 1)
  })

  it('keeps to the chances it was given', () => {
    const draw = seeded('chances')
    expect(many(() => chance(draw, 0.3)).filter(Boolean).length / 4000).toBeCloseTo(0.3, 1)
    expect(new Set(many(() => between(draw, 2, 5)))).toEqual(new Set([2, 3, 4, 5]))
    const picked = many(() =>
      pick(draw, [
        ['a', 3],
        ['b', 1],
        ['c', 0],
      ] as const),
    )
    expect(picked.filter((x) => x === 'a').length / 4000).toBeCloseTo(0.75, 1)
    expect(picked).not.toContain('c')
  })

  it('spreads normally', () => {
    const draw = seeded('normal')
    const x = many(() => normal(draw, 20, 4))
    const mean = x.reduce((a, b) => a + b) / x.length
    const sd = Math.sqrt(x.reduce((a, b) => a + (b - mean) ** 2, 0) / (x.length - 1))
    expect(mean).toBeCloseTo(20, 0)
    expect(sd).toBeCloseTo(4, 0)
  })
})
