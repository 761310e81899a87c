import { describe, expect, it } from 'vitest'
import { nearestTags } from '../../src/app/nearest.ts'

const KNOWN = ['W-07', 'W-12', 'W-17', 'T-7', 'Long Barn 3'].map((tag) => ({ tag }))
const near = (asked: string): string[] => nearestTags(asked, KNOWN).map((n) => n.tag)

describe('the nearest tags', () => {
  it('sees past capitals, dashes and leading zeros', () => {
    expect(near('w7')[0]).toBe('W-07')
    expect(near('W 012')[0]).toBe('W-12')
    expect(near('longbarn3')[0]).toBe('Long Barn 3')
  })
  it('offers what begins alike', () => expect(near('long')).toContain('Long Barn 3'))
  it('offers nothing for what looks like none of them', () => {
    expect(near('zzzzzzzz')).toEqual([])
    expect(near('???')).toEqual([])
  })
  it('offers at most five', () => expect(near('W').length).toBeLessThanOrEqual(5))
})
