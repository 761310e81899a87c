/** A row of the sheet as entries: what was ticked, and nothing that was not. */
import { describe, expect, it } from 'vitest'
import { isRowFilled, rowDrafts, rowOf, SHEET } from '../../../src/features/paper/sheet.ts'
import type { Typed } from '../../../src/forms/typed.ts'

const UNITS = { temperature: 'F', weight: 'lb' } as const
const DAY = '2026-06-10'
const row = (fields: Record<string, string | string[]>): Typed =>
  Object.fromEntries(Object.entries(fields).map(([k, v]) => [k, Array.isArray(v) ? v : [v]]))
const drafts = (fields: Record<string, string | string[]>) => rowDrafts(row(fields), DAY, UNITS)
const raws = (fields: Record<string, string | string[]>) => drafts(fields).map((d) => d.raw)

describe('a row of the sheet', () => {
  it('is what a visit is', () =>
    expect(raws({ opened: 'yes', eggs: 'single', framesOfBees: '4½', signs: ['none'], at: '09:20' })).toEqual(
      [
        {
          kind: 'inspection',
          on: DAY,
          at: '09:20',
          opened: true,
          eggs: 'single',
          framesOfBees: 4.5,
          signs: [],
        },
      ],
    ))

  it('says that the box was opened where something inside is ticked and the lid was forgotten', () =>
    expect(raws({ cells: 'open', cellCount: '3' })).toEqual([
      { kind: 'inspection', on: DAY, opened: true, cells: 'open', cellCount: 3 },
    ]))

  it('asks about the lid where only what can be seen from outside is ticked', () =>
    expect(drafts({ stores: 'low' })[0]?.problems).toEqual([
      { field: 'opened', message: 'is missing: opened, or lid on?' },
    ]))

  it('does not make up a look where only something was done', () =>
    expect(raws({ 'given1.what': 'syrup', 'given1.litres': '2', note: 'In the rain.' })).toEqual([
      { kind: 'given', on: DAY, what: 'syrup', litres: expect.closeTo(1.892706, 6), note: 'In the rain.' },
    ]))

  it('is a note where only a note was written', () =>
    expect(raws({ note: 'Strap is missing.' })).toEqual([
      { kind: 'note', on: DAY, text: 'Strap is missing.' },
    ]))

  it('keeps look, cage, ties, wash and gift apart', () =>
    expect(
      raws({
        opened: 'yes',
        'cage.found': 'released',
        'ties.done': 'yes',
        'wash.bees': '300',
        'wash.mites': '4',
        'given1.what': 'egg-frame',
        'given1.frames': '1',
        'given1.donor': 'W-1',
      }).map((r) => r.kind),
    ).toEqual(['inspection', 'queen-cage', 'ties-removed', 'mite-wash', 'given']))

  it('is a box not reached, with its note', () =>
    expect(raws({ 'missed.reason': 'rain', note: 'Track under water.' })).toEqual([
      { kind: 'missed-visit', on: DAY, reason: 'rain', note: 'Track under water.' },
    ]))

  it('cannot be both: seen and not reached', () =>
    expect(drafts({ 'missed.reason': 'rain', eggs: 'none' })[0]?.problems).toEqual([
      { field: 'missed.reason', message: 'is ticked, but eggs is filled in too: keep one of them' },
    ]))

  it('left empty is left alone, whatever its ids and time', () => {
    expect(isRowFilled(row({ colony: 'x', 'id.': 'y', at: '09:00' }))).toBe(false)
    for (const field of SHEET) expect(isRowFilled(row({ [field.name]: '1' })), field.name).toBe(true)
  })

  it('is told from other rows by its number', () =>
    expect(rowOf(row({ 'r1.eggs': 'none', 'r11.eggs': 'single', 'r1.note': 'x', day: DAY }), 1)).toEqual({
      eggs: ['none'],
      note: ['x'],
    }))
})
