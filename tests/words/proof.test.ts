import { describe, expect, it } from 'vitest'
import type { Inspection } from '../../src/journal/entry.ts'
import { proves } from '../../src/words/proof.ts'
import { look, planFrom, WALL, written } from '../support/wall-colony.ts'

/** What a visit to the wall colony proves on that day. */
function said(on: string, seen: Record<string, unknown>): string {
  const visit = look(on, seen)
  const inspection = written([visit])[0] as Inspection
  return proves(inspection, planFrom([WALL], on), planFrom([WALL, visit], on)).join(' ')
}

describe('what a visit proves', () => {
  it('says that eggs within three days of the removal prove nothing', () => {
    expect(said('2026-05-04', { eggs: 'single' })).toContain('Eggs prove nothing new until after Mon 4 May')
  })

  it('says that eggs after that are a new layer', () => {
    const words = said('2026-05-06', { eggs: 'single', cells: 'none' })
    expect(words).not.toContain('prove nothing')
    expect(words).toMatch(/Answers: .*the first brood check/)
    expect(words).toContain('look for capped worker brood')
  })

  it('lets fresh comb speak for itself', () => {
    expect(said('2026-05-04', { eggs: 'single', onFreshComb: true })).not.toContain('prove nothing')
  })

  it('says when a queen is being raised, and when she is expected', () => {
    const words = said('2026-05-06', { eggs: 'none', cells: 'open' })
    expect(words).toContain('Raising a queen')
    expect(words).toContain('The queen leaves her cell: likely')
  })

  it('says what comes next when there is neither', () => {
    expect(said('2026-05-06', { eggs: 'none', open: 'none', cells: 'none' })).toContain(
      'Next: give a frame of eggs',
    )
  })

  it('says of a suspected brood disease that it holds the colony, before all else', () => {
    const words = said('2026-05-06', { signs: ['brood-disease-suspected'] })
    expect(words).toMatch(/^Brood disease suspected\. .*until somebody records who cleared it\./)
  })

  it('says nothing of a look that shows nothing', () => {
    const before = planFrom([WALL], '2026-05-05')
    expect(proves(null, before, before)).toEqual([])
  })
})
