import { describe, expect, test } from 'vitest'
import { MONTHS, protocolWith } from '../../src/recovery/protocol.ts'
import {
  CLIMATES,
  coldSeason,
  DORMANT_MITES,
  seasonOf,
  suggestedMatingMonths,
} from '../../src/recovery/season.ts'

describe('months in which queens mate', () => {
  /** Judgement, from flights above about 20 °C (sources say 16-21 °C): a temperate north, and the same six months on. */
  test('are suggested by hemisphere and climate', () => {
    expect(suggestedMatingMonths('north', 'temperate')).toEqual(['5', '6', '7', '8'])
    expect(suggestedMatingMonths('south', 'temperate')).toEqual(['1', '2', '11', '12'])
    expect(suggestedMatingMonths('south', 'tropical')).toHaveLength(12)
  })

  test('are as many on either side of the equator, and six months apart', () => {
    for (const climate of CLIMATES) {
      const north = suggestedMatingMonths('north', climate).map(Number)
      const moved = north.map((m) => ((m + 5) % 12) + 1).sort((a, b) => a - b)
      expect(suggestedMatingMonths('south', climate).map(Number)).toEqual(moved)
    }
  })

  test('leave the lid on two months away from them, and rule nothing out where none were said', () => {
    const p = protocolWith({ matingMonths: ['5', '6', '7', '8'] })
    const cold = ['01', '02', '03', '04', '05', '08', '09', '10', '11', '12'].filter((m) =>
      coldSeason(p, `2026-${m}-15`),
    )
    expect(cold).toEqual(['01', '02', '03', '10', '11', '12'])
    expect(coldSeason(protocolWith(), '2026-01-15')).toBe(false)
    const south = protocolWith({ matingMonths: ['11', '12', '1', '2'] })
    expect(coldSeason(south, '2026-07-15')).toBe(true)
    expect(coldSeason(south, '2026-03-15')).toBe(false)
  })

  test('make a yard stricter about mites in the months far from them, and nothing where all or none were said', () => {
    expect(seasonOf([])).toEqual({})
    expect(seasonOf(MONTHS)).toEqual({})
    const { matingMonths, miteThresholdByMonth = {} } = seasonOf(['5', '6', '7', '8'])
    expect(matingMonths).toEqual(['5', '6', '7', '8'])
    expect(Object.keys(miteThresholdByMonth)).toEqual(['1', '2', '3', '10', '11', '12'])
    expect(new Set(Object.values(miteThresholdByMonth))).toEqual(new Set([DORMANT_MITES]))
    // Two months on either side are near enough: of ten months in a row none is far.
    const most = MONTHS.slice(0, 10)
    expect(seasonOf(most)).toEqual({ matingMonths: [...most] })
  })
})
