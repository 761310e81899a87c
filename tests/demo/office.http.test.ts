import { describe, expect, test } from 'vitest'
import { fill } from '../../demo/fill.ts'
import { fillOffice } from '../../demo/office.ts'
import { STAGES, stageOf } from '../../src/features/removal/stage.ts'
import { intakeFrom } from '../../src/features/removal/to-intake.ts'
import type { Store } from '../../src/store/index.ts'
import { openStore } from '../../src/store/node.ts'
import { someOf } from '../support/long.ts'
import { AWKWARD_DAYS } from './colonies.ts'

function yardOf(today: string): Store {
  const store = openStore(':memory:')
  fill(store, today, `${today}T23:00:00.000Z`)
  fillOffice(store, today, `${today}T23:00:00.000Z`)
  return store
}

describe('the office of the invented yard', () => {
  const store = yardOf('2026-06-10')
  const sheets = store.removals.list()

  test('has removals at several stages, each saved version by version', () => {
    const stages = new Set(sheets.map((s) => stageOf(s.sheet, s.colonies.length)))
    expect(STAGES.filter((s) => stages.has(s))).toEqual([
      'called',
      'looked-at',
      'boxed',
      'finished',
      'refused',
    ])
    expect(Math.max(...sheets.map((s) => s.version))).toBeGreaterThan(4)
  })

  test('one went from the phone call to a colony that moved out, with nothing typed twice', () => {
    const sheet = sheets.find((s) => store.colony(s.id)?.summary.outcome === 'moved-out')
    const intake = store.colony(sheet?.id ?? '')?.history.intake
    expect(sheet?.sheet.agreement.signature?.terms).toContain('What is not included')
    expect(sheet?.sheet.decision?.is).toBe('go')
    const carried = sheet === undefined ? null : intakeFrom(sheet.sheet)
    expect(carried).toMatchObject({
      queen: intake?.queen,
      brood: intake?.brood,
      removal: { type: intake?.removal.type, method: intake?.removal.method },
    })
  })

  test('is found whole', () => {
    expect(store.verify()).toMatchObject({ ok: true, problems: [] })
  })
})

// Filling throws when an entry or a sheet is refused.
test.each(someOf(AWKWARD_DAYS, 2))('yard and office are filled on %s, and refused nothing', (today) => {
  const store = yardOf(today)
  const saved = store.removals.list().map((s) => s.savedAt)
  expect(saved.every((at) => at <= `${today}T23:00:00.000Z`)).toBe(true)
  store.close()
})
