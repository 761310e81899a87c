/**
 * The published colony models, as small functions of their own: yardsticks for our forecast, not the forecast itself. They
 * have no brood that takes 21 days (2011) and no season, so they over-predict the first three weeks of a rescued colony.
 *
 * Khoury DS, Myerscough MR, Barron AB 2011, PLoS ONE 6(4):e18491. Khoury DS, Barron AB, Myerscough MR 2013, PLoS ONE
 * 8(5):e59084.
 */

/** Hive bees and foragers. */
export interface Bees {
  H: number
  F: number
}

export interface Khoury2011 {
  /** Eggs a day at most. */
  L: number
  /** Bees at which half of them are laid. */
  w: number
  /** Greatest recruitment to foraging, per day. */
  alpha: number
  /** How strongly foragers hold others back, per day. */
  sigma: number
  /** Foragers' death rate, per day. */
  m: number
}

/** The paper's parameters but for the death rate, which it varies. */
export const PAPER_2011 = { L: 2000, w: 27000, alpha: 0.25, sigma: 0.75 } as const

/** Change per day. Negative recruitment sends foragers back to the hive. */
function change({ H, F }: Bees, p: Khoury2011): Bees {
  const N = H + F
  if (N <= 0) return { H: 0, F: 0 }
  const recruited = H * (p.alpha - (p.sigma * F) / N)
  return { H: (p.L * N) / (p.w + N) - recruited, F: recruited - p.m * F }
}

const plus = (a: Bees, b: Bees, t: number): Bees => ({ H: a.H + b.H * t, F: a.F + b.F * t })

/** Bees after so many days, by fourth-order Runge-Kutta steps of at most `step` days. */
export function khoury(start: Bees, days: number, p: Khoury2011, step = 0.02): Bees {
  const n = Math.max(1, Math.ceil(days / step))
  const h = days / n
  let at = start
  for (let i = 0; i < n; i++) {
    const a = change(at, p)
    const b = change(plus(at, a, h / 2), p)
    const c = change(plus(at, b, h / 2), p)
    const d = change(plus(at, c, h), p)
    at = {
      H: at.H + (h / 6) * (a.H + 2 * b.H + 2 * c.H + d.H),
      F: at.F + (h / 6) * (a.F + 2 * b.F + 2 * c.F + d.F),
    }
  }
  return at
}

/** Foragers per hive bee once recruitment and deaths balance: m J^2 + (m - alpha + sigma) J - alpha = 0. */
function foragersPerHiveBee(m: number, alpha: number, sigma: number): number {
  const b = alpha - sigma - m
  return (b + Math.sqrt(b * b + 4 * m * alpha)) / (2 * m)
}

/** Where the colony settles; none when it dies out. */
export function settlesAt(p: Khoury2011): Bees {
  const J = foragersPerHiveBee(p.m, p.alpha, p.sigma)
  const H = p.L / (p.m * J) - p.w / (1 + J)
  return H > 0 ? { H, F: J * H } : { H: 0, F: 0 }
}

/** The death rate of foragers above which no colony lasts, in closed form. Example: 0.355 with the paper's figures. */
export const criticalDeathRate = ({ L, w, alpha, sigma }: Omit<Khoury2011, 'm'>): number =>
  ((L / (2 * w)) * (alpha + sigma + Math.sqrt((alpha - sigma) ** 2 + (4 * L * sigma) / w))) / (alpha - L / w)

/** To the nearest whole number, halves to the even one, as most languages of computing round. */
function halfToEven(x: number): number {
  const down = Math.floor(x)
  if (x - down !== 0.5) return Math.round(x)
  return down % 2 === 0 ? down : down + 1
}

/** The model in whole days, every figure rounded to a whole bee, as courses teach it. */
export function dailySteps(start: Bees, days: number, p: Khoury2011): Bees[] {
  const out = [start]
  for (let d = 0; d < days; d++) {
    const next = plus(out[d] ?? start, change(out[d] ?? start, p), 1)
    out.push({ H: halfToEven(next.H), F: halfToEven(next.F) })
  }
  return out
}

/** Parameters of the 2013 model, with brood and stores; bees, grams and days. */
export interface Khoury2013 {
  L: number
  /** Share of brood capped over per day. */
  phi: number
  /** Hive bees at which half of the brood can be reared. */
  v: number
  /** Stores, g, at which half is reared. */
  b: number
  alphaMin: number
  alphaMax: number
  sigma: number
  /** Food of an adult and of a brood cell, g a day. */
  gammaA: number
  gammaB: number
  /** Food a forager brings, g a day. */
  c: number
  m: number
}

/** As restated by A. Fritzler (thesis, TUM 2026); c from memory, confirmed by the thresholds it leads to. */
export const PAPER_2013: Khoury2013 = {
  L: 2000,
  phi: 1 / 9,
  v: 5000,
  b: 500,
  alphaMin: 0.25,
  alphaMax: 0.25,
  sigma: 0.75,
  gammaA: 0.007,
  gammaB: 0.018,
  c: 0.1,
  m: 0.154,
}

/** Foragers per hive bee at those stores, g (Infinity: plenty). */
function foragersAtStores(p: Khoury2013, stores: number): number {
  const hunger = stores === Number.POSITIVE_INFINITY ? 0 : p.b ** 2 / (p.b ** 2 + stores ** 2)
  return foragersPerHiveBee(p.m, p.alphaMin + p.alphaMax * hunger, p.sigma)
}

/** Share of `c` that foragers must bring so that stores neither grow nor shrink with so many foragers per hive bee. */
const shareNeeded = (p: Khoury2013, J: number): number =>
  (p.gammaA * (1 + 1 / J) + (p.gammaB / p.phi) * p.m) / p.c

/** Stores, g, below which the brood reared cannot replace the bees that die: found by bisection. */
export function criticalStores(p: Khoury2013): number {
  const spare = (f: number): number =>
    f ** 2 / (f ** 2 + p.b ** 2) - (p.v * p.m * foragersAtStores(p, f)) / p.L
  return bisect(spare, 1, 1e5)
}

/**
 * Thresholds of foraging, as shares of `c`: a forager pays for herself and the bee that replaces her; the least at which
 * a colony can exist; the least at which a thriving one still gathers stores.
 */
export function thresholds2013(p: Khoury2013): { breakEven: number; exists: number; gathers: number } {
  return {
    breakEven: (p.gammaA + (p.gammaB / p.phi) * p.m) / p.c,
    exists: shareNeeded(p, foragersAtStores(p, criticalStores(p))),
    gathers: shareNeeded(p, foragersAtStores(p, Number.POSITIVE_INFINITY)),
  }
}

/** Where it settles with food in plenty: hive bees, foragers and brood. */
export function plenty2013(p: Khoury2013): Bees & { B: number } {
  const J = foragersAtStores(p, Number.POSITIVE_INFINITY)
  const H = p.L / (p.m * J) - p.v
  return { H, F: J * H, B: (p.m * J * H) / p.phi }
}

/** A zero of f between lo and hi, where its sign must differ. Throws RangeError where it does not. */
export function bisect(f: (x: number) => number, lo: number, hi: number): number {
  let [a, b] = [lo, hi]
  const rising = f(b) > 0
  if (f(a) > 0 === rising) throw new RangeError('bisect: no change of sign')
  for (let i = 0; i < 200; i++) {
    const mid = (a + b) / 2
    if (f(mid) > 0 === rising) b = mid
    else a = mid
  }
  return (a + b) / 2
}
