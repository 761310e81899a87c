/**
 * The lines of the review can be told apart: on paper and in the dark, and by people who see colours otherwise.
 * Contrast: WCAG 2.2, 1.4.11 (3:1 for graphics) and its relative luminance. Colour vision: Machado GM, Oliveira MM,
 * Fernandes LAF (2009) IEEE TVCG 15:1291-1298, matrices at full severity, on linear sRGB. Difference: CIE 1976 L*a*b*.
 */
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'

const css = (path: string): string => readFileSync(new URL(`../../../${path}`, import.meta.url), 'utf8')

type Rgb = [number, number, number]

/** The value of a custom property, light or dark. */
function colour(sheet: string, name: string, dark: boolean): Rgb {
  const parts = sheet.split('@media (prefers-color-scheme: dark)')
  const hex = new RegExp(`--${name}: #([0-9a-f]{6});`).exec(parts[dark ? 1 : 0] ?? '')?.[1]
  if (hex === undefined) throw new Error(`no colour --${name}`)
  return [0, 2, 4].map((i) => Number.parseInt(hex.slice(i, i + 2), 16) / 255) as Rgb
}

const linear = (c: Rgb): Rgb => c.map((v) => (v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4)) as Rgb

const luminance = (c: Rgb): number => {
  const [r, g, b] = linear(c)
  return 0.2126 * r + 0.7152 * g + 0.0722 * b
}

const contrast = (a: Rgb, b: Rgb): number => {
  const [x, y] = [luminance(a), luminance(b)]
  return (Math.max(x, y) + 0.05) / (Math.min(x, y) + 0.05)
}

type Matrix = [Rgb, Rgb, Rgb]
const SEEN_BY: Record<string, Matrix> = {
  everybody: [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  protanopes: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deuteranopes: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritanopes: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
}

const seen = (c: Rgb, m: Matrix): Rgb =>
  m.map((row) => Math.min(1, Math.max(0, row[0] * c[0] + row[1] * c[1] + row[2] * c[2]))) as Rgb

/** L*a*b* of linear sRGB, D65. */
function lab([r, g, b]: Rgb): Rgb {
  const f = (t: number): number => (t > (6 / 29) ** 3 ? Math.cbrt(t) : t / (3 * (6 / 29) ** 2) + 4 / 29)
  const x = f((0.4124564 * r + 0.3575761 * g + 0.1804375 * b) / 0.95047)
  const y = f(0.2126729 * r + 0.7151522 * g + 0.072175 * b)
  const z = f((0.0193339 * r + 0.119192 * g + 0.9503041 * b) / 1.08883)
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)]
}

const difference = (a: Rgb, b: Rgb): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2])

const SERIES = [0, 1, 2, 3, 4, 5].map((i) => `series-${i}`)
const REVIEW = css('src/parts/charts.css')
const TOKENS = css('web/styles/tokens.css')

describe.each([false, true])('dark: %s', (dark) => {
  const sheet = colour(TOKENS, 'sheet', dark)

  it('every line stands out from the paper; their names are text', () => {
    for (const name of SERIES)
      expect(contrast(colour(REVIEW, name, dark), sheet), name).toBeGreaterThanOrEqual(4.5)
  })

  it.each(Object.entries(SEEN_BY))('no two of the lines drawn at first are alike to %s', (_, matrix) => {
    const labs = SERIES.slice(0, 4).map((name) => lab(seen(linear(colour(REVIEW, name, dark)), matrix)))
    for (const [i, a] of labs.entries())
      for (const b of labs.slice(i + 1)) expect(difference(a, b)).toBeGreaterThan(15)
  })

  it('ways of loss that lie on each other differ in lightness', () => {
    const [died, absconded, united] = ['way-died', 'way-absconded', 'way-united'].map((name) =>
      lab(linear(colour(REVIEW, name, dark))),
    )
    if (died === undefined || absconded === undefined || united === undefined) throw new Error('no colours')
    expect(Math.abs(died[0] - absconded[0])).toBeGreaterThan(12)
    expect(Math.abs(absconded[0] - united[0])).toBeGreaterThan(12)
  })
})

it('every line but the first two has dashes of its own', () => {
  const dashes = [...REVIEW.matchAll(/\.series-(\d) \{\s*--c: [^;]+;\s*--dash: ([^;]+);/g)].map((m) => m[2])
  expect(dashes).toHaveLength(6)
  expect(new Set(dashes.slice(2)).size).toBe(4)
  expect(dashes.slice(2)).not.toContain('none')
})
