/** °F as they are typed, kept, compared and shown. °F = °C · 9/5 + 32 by definition (NIST SP 811, B.8); 85 °F: common practice. */
import { expect, it } from 'vitest'
import { DEFAULT_PROTOCOL } from '../../src/recovery/index.ts'
import { hotterThan } from '../../src/units.ts'
import { inUnits, plain, temperature, unitOf } from '../../src/words/units.ts'

const F = { temperature: 'F', weight: 'lb' } as const
const C = { temperature: 'C', weight: 'kg' } as const
const unit = unitOf(F, 'temperature')

it('every degree comes back as it was typed, on pages and in a form that is corrected', () => {
  for (let typed = -40; typed <= 140; typed++) {
    const kept = unit.store(typed)
    expect(temperature(kept, F)).toBe(`${typed} °F`)
    // A form shows it again as it was typed: 78, not 78.1.
    expect(plain(unit.show(kept), 1)).toBe(String(typed))
    expect(plain(unit.show(unit.store(typed + 0.5)), 1)).toBe(String(typed + 0.5))
  }
})

it('known pairs', () => {
  expect([32, 212, -40, 70].map(unit.store)).toEqual([0, 100, -40, 21.1])
  expect(temperature(29.4, F)).toBe('85 °F')
  expect(temperature(29.4, C)).toBe('29 °C')
})

it('85 °F is at the common limit, not over it, however it was kept; 86 °F is over', () => {
  const limit = DEFAULT_PROTOCOL.heatLimitC
  expect(hotterThan(unit.store(85), limit)).toBe(false)
  // As entries were kept before degrees were rounded.
  expect(hotterThan(((85 - 32) * 5) / 9, limit)).toBe(false)
  expect(hotterThan(unit.store(86), limit)).toBe(true)
})

it('a sentence of the core says its degrees in the yard’s unit', () => {
  expect(inUnits('removed at 35 °C; the limit is 29.4 °C.', F)).toBe('removed at 95 °F; the limit is 85 °F.')
  expect(inUnits('at 15.555555555555555 °C the brood chills', C)).toBe('at 16 °C the brood chills')
  expect(inUnits('at -5 °C', F)).toBe('at 23 °F')
})
