/** Whether the long proofs run at their full length: `npm run test:long`, or TEST_LONG=1 npm test. */
export const LONG = process.env.TEST_LONG === '1'

/** A count for the long run, and a shorter one for every day; the proof is the same, its sharpness is not. */
export const often = (long: number, everyDay: number): number => (LONG ? long : everyDay)

/** So many of these every day, from another one on each time, and all of them in the long run: a test is named by which it was. */
export function someOf<T>(all: readonly T[], everyDay: number): T[] {
  const first = Date.now() % all.length
  return [...all.slice(first), ...all].slice(0, often(all.length, everyDay))
}

/** So many times as long may every test take beside the long proofs, which have the machine for minutes. */
export const PATIENCE = LONG ? 10 : 1

/** Milliseconds for one of them: minutes by itself, and several times as many on a machine that does other work. */
export const LONG_ENOUGH = LONG ? 3_600_000 : 280_000
