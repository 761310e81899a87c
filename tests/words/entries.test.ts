import { describe, expect, it } from 'vitest'
import { entryWords } from '../../src/words/entries.ts'
import { type Units, volume } from '../../src/words/units.ts'
import { look, WALL, written } from '../support/wall-colony.ts'

const US: Units = { temperature: 'F', weight: 'lb' }
const facts = (e: Parameters<typeof written>[0][number], site = false): string => {
  const [entry] = written([e])
  if (entry === undefined) throw new Error('no entry')
  const words = entryWords(entry, US, '2026-05-10', site)
  return [words.title, ...words.facts].join('; ')
}

describe('an entry in words', () => {
  it('says an intake in the units of the yard, brood in quarters', () => {
    const said = facts(WALL)
    expect(said).toContain('Wall')
    expect(said).toContain('outdoors 75 °F')
    expect(said).toContain('eggs ½, open 1, capped 1½ (frames)')
  })

  it('says one of a measure as one', () => {
    const fed = { kind: 'given' as const, on: '2026-05-06', what: 'syrup', litres: 0.946353 }
    expect(facts(fed)).toContain('; 1 US quart')
    const metric: Units = { temperature: 'C', weight: 'kg' }
    expect([volume(1, metric), volume(1.5, metric), volume(2, US)]).toEqual([
      '1 litre',
      '1.5 litres',
      '2.11 US quarts',
    ])
  })

  it('leaves the address out unless asked', () => {
    const e = { ...WALL, removal: { type: 'wall', site: '12 Quarry Lane' } }
    expect(facts(e)).not.toContain('Quarry')
    expect(facts(e, true)).toContain('from 12 Quarry Lane')
  })

  it('leaves out what was not looked at, and says when nothing was found', () => {
    expect(facts(look('2026-05-06', { eggs: 'none' }))).toBe('Opened; eggs none')
    expect(facts(look('2026-05-06', { signs: [] }))).toContain('no signs of trouble')
    expect(facts(look('2026-05-06', { cells: 'capped', cellCount: 3 }))).toContain('queen cells capped (3)')
  })

  it('reckons mites per 100 bees', () => {
    expect(facts({ kind: 'mite-wash', on: '2026-05-20', bees: 300, mites: 9 })).toBe(
      'Mite wash; 9 mites on 300 bees; 3 per 100',
    )
  })
})

it('a cause that was tapped reads as one that was typed', () => {
  const words = (cause: string): string[] =>
    entryWords(
      { id: 'x', colony: 'W-1', kind: 'outcome', on: '2026-05-10', by: 'Bram', what: 'died', cause },
      { temperature: 'C', weight: 'kg' },
      '2026-05-10',
    ).facts
  expect(words('robbed out')).toEqual(['cause robbed out'])
  // Typed before there was anything to tap, or beside it: to the letter.
  expect(words('AFB, says the inspector')).toEqual(['cause AFB, says the inspector'])
})
