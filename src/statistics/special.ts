/**
 * The special functions statistics stand on, in the words used here. The arithmetic is stdlib's (ports of Boost and
 * FreeBSD libm); measured against R's grids it is good to 3e-13 relative, far tails included.
 */
import betainc from '@stdlib/math-base-special-betainc'
import betaincinv from '@stdlib/math-base-special-betaincinv'
import digammaOf from '@stdlib/math-base-special-digamma'
import erfc from '@stdlib/math-base-special-erfc'
import erfcinv from '@stdlib/math-base-special-erfcinv'
import gammainc from '@stdlib/math-base-special-gammainc'
import gammaincinv from '@stdlib/math-base-special-gammaincinv'
import gammaln from '@stdlib/math-base-special-gammaln'

/** Chance that a standard normal is below z. Example: normalBelow(-1.959963984540054) = 0.025. */
export const normalBelow = (z: number): number => erfc(-z / Math.SQRT2) / 2

/** Chance that a standard normal is above z; accurate where it is tiny. */
export const normalAbove = (z: number): number => erfc(z / Math.SQRT2) / 2

/** The z below which a standard normal falls with chance p in (0, 1). Example: normalQuantile(0.975) = 1.95996… */
export const normalQuantile = (p: number): number =>
  p < 0.5 ? -Math.SQRT2 * erfcinv(2 * p) : Math.SQRT2 * erfcinv(2 * (1 - p))

/** z of a two-sided confidence level. Example: zFor(0.95) = 1.95996… */
export function zFor(confidence: number): number {
  if (!(confidence > 0 && confidence < 1))
    throw new RangeError(`zFor: the confidence must be between 0 and 1, not ${confidence}`)
  return Math.SQRT2 * erfcinv(1 - confidence)
}

/** Chance that chi-square with df degrees of freedom exceeds x. Example: chiSquareAbove(3.841458820694124, 1) = 0.05. */
export const chiSquareAbove = (x: number, df: number): number => gammainc(x / 2, df / 2, true, true)

/** The x below which chi-square falls with chance p. Example: chiSquareQuantile(0.95, 1) = 3.84146… */
export const chiSquareQuantile = (p: number, df: number): number => 2 * gammaincinv(p, df / 2)

/** Chance that Beta(a, b) is below x (regularised incomplete beta). Example: betaBelow(0.25, 2, 3) = 0.26171875. */
export const betaBelow = (x: number, a: number, b: number): number => betainc(x, a, b, true, false)

/** The x below which Beta(a, b) falls with chance p. Example: betaQuantile(0.5, 1, 1) = 0.5. */
export const betaQuantile = (p: number, a: number, b: number): number => betaincinv(p, a, b, false)

/** The x above which Beta(a, b) falls with chance p; accurate where x is tiny. */
export const betaQuantileAbove = (p: number, a: number, b: number): number => betaincinv(p, a, b, true)

/** log Γ(x), x > 0. */
export const logGamma = (x: number): number => gammaln(x)

/** Derivative of log Γ. */
export const digamma = (x: number): number => digammaOf(x)

/** log B(a, b). */
export const logBeta = (a: number, b: number): number => gammaln(a) + gammaln(b) - gammaln(a + b)
