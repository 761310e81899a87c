/** Numbers as people write them in cells: '85F', '29,5 °C', '2h 30', '2:30', '1 1/2', '~3'. */
import { celsius, tenth } from '../../units.ts'

export type HeatUnit = 'F' | 'C'

const GLYPHS: Record<string, number> = { '¼': 0.25, '½': 0.5, '¾': 0.75 }

/** A plain number with a point or a comma, a fraction, or quarter signs; null when it is none. */
export function numberIn(text: string): number | null {
  const t = text
    .trim()
    .replace(/^(~|ca\.?|about|approx\.?)\s*/i, '')
    .replace('−', '-')
  if (/^-?(\d+([.,]\d+)?|[.,]\d+)$/.test(t)) return Number(t.replace(',', '.'))
  const glyph = /^(\d*)\s*([¼½¾])$/.exec(t)
  if (glyph !== null) return Number(glyph[1] || 0) + (GLYPHS[glyph[2] ?? ''] ?? 0)
  const fraction = /^(?:(\d+)\s+)?(\d+)\/(\d+)$/.exec(t)
  if (fraction === null || Number(fraction[3]) === 0) return null
  return Number(fraction[1] ?? 0) + Number(fraction[2]) / Number(fraction[3])
}

const HEAT = /^(.*?)\s*(?:°|º|deg(?:rees)?\.?)?\s*(f|c|fahrenheit|celsius)?\.?$/i

/** °C, to a tenth; a cell that names its unit has its way. Example: heatIn('85', 'F') = 29.4. */
export function heatIn(text: string, unit: HeatUnit): number | null {
  const parts = HEAT.exec(text.trim())
  const n = numberIn(parts?.[1] ?? '')
  if (n === null) return null
  const named = parts?.[2]?.charAt(0).toUpperCase()
  return tenth((named ?? unit) === 'F' ? celsius(n) : n)
}

/** Which unit a heading or its cells name; else what the numbers can be: nobody works at 60 °C. Null: cannot tell. */
export function heatUnitIn(heading: string, cells: readonly string[]): HeatUnit | null {
  const said = /(?:°|º|\bdeg\.?\s*|[\s_([])(f|c)\b|\b(fahrenheit|celsius)\b/i.exec(` ${heading}`)
  if (said !== null) return (said[1] ?? said[2] ?? '').charAt(0).toUpperCase() === 'F' ? 'F' : 'C'
  const numbers = cells.map((c) => numberIn(c)).filter((n): n is number => n !== null)
  if (numbers.some((n) => n > 50)) return 'F'
  return null
}

/** Hours: '3', '2.5 h', '2h30', '2:30', '90 min'. */
export function hoursIn(text: string): number | null {
  const t = text.trim()
  const clock = /^(\d{1,3})\s*(?::|h(?:rs?|ours?)?\.?)\s*(\d{1,2})\s*(?:m(?:in(?:utes?)?)?\.?)?$/i.exec(t)
  if (clock !== null) return rounded(Number(clock[1]) + Number(clock[2]) / 60)
  const minutes = /^(.+?)\s*m(?:in(?:utes?|s)?)?\.?$/i.exec(t)
  if (minutes !== null) {
    const n = numberIn(minutes[1] ?? '')
    return n === null ? null : rounded(n / 60)
  }
  return numberIn(t.replace(/\s*(hours?|hrs?|h)\.?$/i, ''))
}

const rounded = (n: number): number => Math.round(n * 100) / 100

/** Frames: '1 1/2', '2 frames', '0,5'. */
export const framesIn = (text: string): number | null =>
  numberIn(text.trim().replace(/\s*(frames?|combs?|fr)\.?$/i, ''))
