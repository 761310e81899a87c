import { afterAll, describe, expect, it } from 'vitest'
import { demoEntries } from '../../demo/entries.ts'
import { fill } from '../../demo/fill.ts'
import { liveStories } from '../../demo/live/stories.ts'
import { openStore } from '../../src/store/node.ts'

describe('filling a store with the invented yard', () => {
  const today = '2026-06-10'
  const store = openStore(':memory:')
  afterAll(() => store.close())
  const filled = fill(store, today, `${today}T07:55:00.000Z`)

  it('takes every entry', () => {
    expect(filled.entries).toBe(demoEntries(today).length)
    expect([...store.journal()].length).toBe(filled.entries)
  })

  it('shows every colony, those of past seasons closed', () => {
    const live = new Set(liveStories.map((s) => s.tag))
    const colonies = store.colonies()
    expect(colonies.length).toBeGreaterThanOrEqual(live.size + 140)
    expect(colonies.filter((c) => !live.has(c.tag) && c.closedOn === null)).toEqual([])
    expect(store.today(today).length).toBeGreaterThan(5)
    expect(store.yards().filter((y) => y.open > 0)).toHaveLength(2)
  })

  it('signs and stamps as the phones would have: never before it happened, never after now', () => {
    for (const row of store.journal()) {
      expect(row.recordedAt <= `${today}T07:55:00.000Z`).toBe(true)
      expect(row.recordedAt.slice(0, 10) >= row.entry.on).toBe(true)
      expect(row.recordedBy).toBe(row.entry.by)
    }
  })

  it('leaves projections that equal a rebuild', () => {
    expect(store.verify()).toMatchObject({ ok: true, problems: [] })
  })
})
