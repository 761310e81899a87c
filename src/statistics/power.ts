/**
 * How large a difference so many colonies could show at all. A test that finds nothing says little where only a huge
 * difference could have been found.
 *
 * Two shares are compared on the scale of Cohen J (1988) Statistical Power Analysis for the Behavioral Sciences, 2nd ed.,
 * chapter 6: the difference of 2 asin(sqrt(share)), whose variance is 1/n whatever the share.
 */
import { normalQuantile } from './special.ts'

export interface PowerOptions {
  /** Risk of calling a difference where there is none, both sides together. */
  risk?: number
  /** Chance of finding the difference where it is there. */
  power?: number
}

const angle = (share: number): number => 2 * Math.asin(Math.sqrt(share))

/**
 * The nearest shares, below and above, that a second group of `other` colonies would have to have to be told from `share`
 * seen in `own`; null on a side where not even 0 or 1 would do.
 * Example: with 25 and 25 colonies and 0.7: below 0.31 or above 0.97.
 */
export function smallestDifference(
  share: number,
  own: number,
  other: number,
  { risk = 0.05, power = 0.8 }: PowerOptions = {},
): { below: number | null; above: number | null } {
  if (!(share >= 0 && share <= 1)) throw new RangeError(`smallestDifference: no share: ${share}`)
  if (!(own > 0 && other > 0)) return { below: null, above: null }
  const needed = (normalQuantile(1 - risk / 2) + normalQuantile(power)) * Math.sqrt(1 / own + 1 / other)
  const at = (a: number): number | null => (a < 0 || a > Math.PI ? null : Math.sin(a / 2) ** 2)
  return { below: at(angle(share) - needed), above: at(angle(share) + needed) }
}
