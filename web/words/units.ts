/** Numbers in the units a yard prefers. Stored values are SI; only what is typed or shown is converted. */
import { celsius, fahrenheit, kilograms, pounds } from '../../src/units.ts'

/** The yard's choice for each quantity. */
export interface Units {
  temperature: 'C' | 'F'
  weight: 'kg' | 'lb'
}

export type Quantity = keyof Units

export interface Unit {
  symbol: string
  /** From what is typed to what is stored. */
  store: (shown: number) => number
  /** From what is stored to what is shown. */
  show: (stored: number) => number
}

const same = (n: number): number => n

const UNIT: Record<Units[Quantity], Unit> = {
  F: { symbol: '°F', store: celsius, show: fahrenheit },
  C: { symbol: '°C', store: same, show: same },
  lb: { symbol: 'lb', store: kilograms, show: pounds },
  kg: { symbol: 'kg', store: same, show: same },
}

export const unitOf = (units: Units, quantity: Quantity): Unit => UNIT[units[quantity]]

/** `n` to at most `places` decimals, without trailing zeros. Example: plain(2.50) = '2.5'. */
export const plain = (n: number, places = 2): string => String(Number(n.toFixed(places)))

/** '84 °F' or '29 °C'. */
export const temperature = (c: number, units: Units): string => {
  const unit = unitOf(units, 'temperature')
  return `${plain(unit.show(c), 0)} ${unit.symbol}`
}

/** '3.5 lb' or '1.6 kg'. */
export const weight = (kg: number, units: Units): string => {
  const unit = unitOf(units, 'weight')
  return `${plain(unit.show(kg), 1)} ${unit.symbol}`
}

const QUARTERS: Record<string, string> = { '0.25': '¼', '0.5': '½', '0.75': '¾' }

/** Quarter frames as people write them. Example: quarters(1.5) = '1½'. */
export function quarters(n: number): string {
  const whole = Math.floor(n)
  const part = QUARTERS[String(n - whole)]
  if (part === undefined) return plain(n)
  return whole === 0 ? part : `${whole}${part}`
}

/** 'no frames', '½ frame', '1 frame', '2½ frames'. */
export const framesWords = (n: number): string =>
  n === 0 ? 'no frames' : `${quarters(n)} ${n <= 1 ? 'frame' : 'frames'}`
