/** Numbers in the units a yard prefers. Stored values are SI; only what is typed or shown is converted. */
import {
  celsius,
  fahrenheit,
  KM_PER_MILE,
  kilograms,
  LITRES_PER_QUART,
  M_PER_FOOT,
  MM_PER_INCH,
  pounds,
  tenth,
} from '../units.ts'
import { type Words, wordsIn } from './catalogue.ts'

const ENGLISH = wordsIn('en')

/** The yard's choice for each quantity. */
export interface Units {
  temperature: 'C' | 'F'
  weight: 'kg' | 'lb'
}

/** What goes with the weight: inches, feet, US quarts and miles beside pounds. Stored in mm, m, litres and km. */
type WithWeight = 'length' | 'height' | 'volume' | 'distance'
export type Quantity = keyof Units | WithWeight

export interface Unit {
  symbol: string
  /** From what is typed to what is stored. */
  store: (shown: number) => number
  /** From what is stored to what is shown. */
  show: (stored: number) => number
}

const same = (n: number): number => n

/** As it was typed: of the °F that are kept as this tenth of a degree Celsius the roundest. Example: 25.6 was typed as 78, not as 78.1. */
function typedFahrenheit(c: number): number {
  const f = fahrenheit(c)
  return [Math.round(f), Math.round(2 * f) / 2].find((n) => tenth(celsius(n)) === c) ?? f
}

const UNIT: Record<Units[keyof Units], Unit> = {
  F: { symbol: '°F', store: (n) => tenth(celsius(n)), show: typedFahrenheit },
  C: { symbol: '°C', store: same, show: same },
  lb: { symbol: 'lb', store: kilograms, show: pounds },
  kg: { symbol: 'kg', store: same, show: same },
}

const WITH_WEIGHT: Record<Units['weight'], Record<WithWeight, Unit>> = {
  lb: {
    length: { symbol: 'in', store: (n) => n * MM_PER_INCH, show: (n) => n / MM_PER_INCH },
    height: { symbol: 'ft', store: (n) => n * M_PER_FOOT, show: (n) => n / M_PER_FOOT },
    volume: { symbol: 'US quarts', store: (n) => n * LITRES_PER_QUART, show: (n) => n / LITRES_PER_QUART },
    distance: { symbol: 'miles', store: (n) => n * KM_PER_MILE, show: (n) => n / KM_PER_MILE },
  },
  kg: {
    length: { symbol: 'mm', store: same, show: same },
    height: { symbol: 'm', store: same, show: same },
    volume: { symbol: 'litres', store: same, show: same },
    distance: { symbol: 'km', store: same, show: same },
  },
}

/** Symbols that are words differ by language. */
export function unitOf(units: Units, quantity: Quantity, w: Words = ENGLISH): Unit {
  const unit =
    quantity === 'temperature' || quantity === 'weight'
      ? UNIT[units[quantity]]
      : WITH_WEIGHT[units.weight][quantity]
  const symbol = w.units.symbols[unit.symbol]
  return symbol === undefined ? unit : { ...unit, symbol }
}

/** `n` to at most `places` decimals, without trailing zeros. Example: plain(2.50) = '2.5'. */
export const plain = (n: number, places = 2): string => String(Number(n.toFixed(places)))

/** '84 °F' or '29 °C': whole degrees, everywhere. */
export const temperature = (c: number, units: Units): string => {
  const unit = unitOf(units, 'temperature')
  return `${plain(unit.show(c), 0)} ${unit.symbol}`
}

/** Degrees in a sentence of the core, which knows °C alone, put in the yard's unit. Example, °F: 'at 35 °C' = 'at 95 °F'. */
export const inUnits = (sentence: string, units: Units): string =>
  sentence.replaceAll(/(-?\d+(?:\.\d+)?) °C/g, (_, c: string) => temperature(Number(c), units))

/** '3.5 lb' or '1.6 kg'. */
export const weight = (kg: number, units: Units): string => {
  const unit = unitOf(units, 'weight')
  return `${plain(unit.show(kg), 1)} ${unit.symbol}`
}

/** '1.9 miles' or '3 km'. */
export const distance = (km: number, units: Units, w: Words = ENGLISH): string => {
  const unit = unitOf(units, 'distance', w)
  return `${plain(unit.show(km), 1)} ${unit.symbol}`
}

/** '1 litre', '1.5 litres'; '1 US quart', '2.1 US quarts'. `places`: decimals at most. */
export const volume = (litres: number, units: Units, places = 2, w: Words = ENGLISH): string => {
  const unit = unitOf(units, 'volume', w)
  const n = plain(unit.show(litres), places)
  return `${n} ${n === '1' ? (w.units.one[unit.symbol] ?? unit.symbol) : unit.symbol}`
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
export const framesWords = (n: number, { units }: Words = ENGLISH): string =>
  n === 0 ? units.noFrames : `${quarters(n)} ${n <= 1 ? units.frame : units.frames}`

const EIGHTHS: Record<number, string> = {
  1: '1/8',
  2: '1/4',
  3: '3/8',
  4: '1/2',
  5: '5/8',
  6: '3/4',
  7: '7/8',
}

/** Depths as a saw is set: inches to the eighth where they are eighths, else two decimals; whole millimetres. Example: depth(3.175) = '1/8 in'. */
export function depth(mm: number, units: Units): string {
  const unit = unitOf(units, 'length')
  const n = unit.show(mm)
  if (unit.symbol === 'mm') return `${plain(n, 1)} mm`
  const eighths = n * 8
  if (Math.abs(eighths - Math.round(eighths)) > 0.02) return `${plain(n)} in`
  const whole = Math.floor(Math.round(eighths) / 8)
  const part = EIGHTHS[Math.round(eighths) % 8]
  return `${[whole === 0 && part !== undefined ? '' : String(whole), part ?? ''].filter(Boolean).join(' ')} in`
}

/** '12 ft' or '3.7 m' */
export const height = (m: number, units: Units): string => {
  const unit = unitOf(units, 'height')
  return `${plain(unit.show(m), unit.symbol === 'ft' ? 0 : 1)} ${unit.symbol}`
}
