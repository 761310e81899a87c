import { describe, expect, it } from 'vitest'
import { demoEntries } from '../../demo/entries.ts'
import { dayMade } from '../../demo/ids.ts'
import { liveStories } from '../../demo/live/stories.ts'
import { daysBetween } from '../../src/days.ts'
import { ENTRY_KINDS, entry, OUTCOMES, REMOVAL_TYPES } from '../../src/journal/entry.ts'
import { contradictions, historyOf, replacements } from '../../src/journal/history.ts'
import { problemLine, problemsOf } from '../../src/journal/problem.ts'
import { AWKWARD_DAYS, byColony } from './colonies.ts'

const liveTags = new Set(liveStories.map((s) => s.tag))

describe.each(AWKWARD_DAYS)('the invented yard on %s', (today) => {
  const entries = demoEntries(today)
  const colonies = byColony(entries)

  it('holds nothing but valid entries', () => {
    const problems = entries.flatMap((e, i) => {
      const parsed = entry.safeParse(e)
      return parsed.success
        ? []
        : problemsOf(parsed.error, e, i + 1).map((p) => `${e.colony}: ${problemLine(p)}`)
    })
    expect(problems).toEqual([])
  })

  it('contradicts itself nowhere, on no day of its telling', () => {
    for (const own of colonies.values())
      for (const made of new Set(own.map((e) => dayMade(e.id)))) {
        const soFar = own.filter((e) => dayMade(e.id) <= made)
        expect(contradictions(soFar, made), `${own[0]?.colony} on ${made}`).toEqual([])
      }
  })

  it('has an id of its own for every entry, in the order of typing', () => {
    const ids = entries.map((e) => e.id)
    expect(new Set(ids).size).toBe(ids.length)
    expect([...ids].sort()).toEqual(ids)
  })

  it('types nothing in before it happened or after today', () => {
    for (const e of entries) {
      expect(dayMade(e.id) >= e.on, `${e.colony} ${e.kind} ${e.on}`).toBe(true)
      expect(dayMade(e.id) <= today).toBe(true)
    }
  })

  it('has 26 colonies or more in two yards, and three past seasons of some 150 that all ended', () => {
    const histories = [...colonies].map(([tag, own]) => historyOf(tag, own))
    const open = histories.filter((h) => h !== null && h.outcome === null)
    expect(open.length).toBeGreaterThanOrEqual(26)
    expect(new Set(open.map((h) => h?.intake.yard)).size).toBe(2)
    const past = histories.filter((h) => h !== null && !liveTags.has(h.tag))
    expect(past.length).toBeGreaterThanOrEqual(140)
    expect(past.filter((h) => h?.outcome === null)).toEqual([])
    const years = new Set(past.map((h) => h?.intake.on.slice(0, 4)))
    const year = Number(today.slice(0, 4))
    expect(years).toEqual(new Set([year - 3, year - 2, year - 1].map(String)))
  })
})

describe('the invented yard', () => {
  const today = '2026-06-10'
  const entries = demoEntries(today)
  const colonies = byColony(entries)
  const live = [...colonies].filter(([tag]) => liveTags.has(tag)).map(([tag, own]) => historyOf(tag, own))

  it('is the same each time it is told', () => {
    expect(demoEntries(today)).toEqual(entries)
  })

  it('moves with today', () => {
    const tomorrow = byColony(demoEntries('2026-06-11'))
    for (const tag of liveTags)
      expect(daysBetween(colonies.get(tag)?.[0]?.on ?? '', tomorrow.get(tag)?.[0]?.on ?? '')).toBe(1)
  })

  it('shows every removal type', () => {
    const types = new Set(live.map((h) => h?.intake.removal.type))
    expect([...types].sort()).toEqual([...REMOVAL_TYPES].sort())
  })

  // 'unknown' is for old books: this yard has written down how each of its colonies left.
  it('shows every way of leaving', () => {
    const ways = new Set(live.map((h) => h?.outcome?.what).filter((w) => w !== undefined))
    expect([...ways].sort()).toEqual(OUTCOMES.filter((what) => what !== 'unknown').sort())
  })

  it('shows every kind of entry', () => {
    const kinds = new Set(entries.map((e) => e.kind))
    expect(ENTRY_KINDS.filter((kind) => !kinds.has(kind))).toEqual([])
  })

  it('has an intake of today, a correction and a withdrawal', () => {
    expect(live.some((h) => h?.intake.on === today)).toBe(true)
    const replaced = [...replacements(entries).values()]
    expect(replaced.some((e) => e.kind === 'withdrawal')).toBe(true)
    expect(replaced.some((e) => e.kind !== 'withdrawal')).toBe(true)
  })

  it('names as donors and as united-into only colonies that stood in the yard that day', () => {
    for (const e of entries) {
      const other = e.kind === 'given' ? e.donor : e.kind === 'outcome' ? e.into : undefined
      if (other === undefined) continue
      const h = historyOf(other, colonies.get(other) ?? [])
      expect(h, `${e.colony}: ${other}`).not.toBeNull()
      expect(h !== null && h.intake.on <= e.on && (h.outcome === null || h.outcome.on >= e.on)).toBe(true)
    }
  })
})
