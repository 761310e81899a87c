/** Reads reference values written by R, and compares with them. Provenance: the `meta` and `citation` of each file. */
import { readFileSync } from 'node:fs'
import { expect } from 'vitest'

export type Numbers = (number | null)[]

/** The file in tests/reference/data; its shape is stated by the caller. */
export const reference = <T>(name: string): T =>
  JSON.parse(readFileSync(new URL(`./data/${name}.json`, import.meta.url), 'utf8')) as T

/** Relative difference, absolute where the wanted value is 0; 0 when both are null. */
export function difference(got: number | null | undefined, want: number | null): number {
  if (want === null) return got === null || got === undefined ? 0 : Number.POSITIVE_INFINITY
  if (got === null || got === undefined || Number.isNaN(got)) return Number.POSITIVE_INFINITY
  return got === want ? 0 : Math.abs(got - want) / (want === 0 ? 1 : Math.abs(want))
}

/** Expects every value within `tolerance` (relative), and names the first that is not. */
export function expectNear(
  got: ArrayLike<number | null | undefined>,
  want: Numbers,
  tolerance: number,
  what: string,
): void {
  expect(got.length, `${what}: length`).toBe(want.length)
  for (const [i, w] of want.entries()) {
    const d = difference(got[i], w)
    if (!(d <= tolerance)) expect.fail(`${what}[${i}]: got ${got[i]}, R has ${w} (relative difference ${d})`)
  }
  expect(want.length, `${what}: compared nothing`).toBeGreaterThan(0)
}
