/** On a small machine, memory before speed. */
import { totalmem } from 'node:os'
import { setFlagsFromString } from 'node:v8'

/** Bytes of memory under which a machine, or what a container is given of it, is small. */
const SMALL = 2 * 1024 ** 3

/** The heap grows by so many per cent at a time, where V8 would double it and more. */
const GROWTH = 30

/**
 * Keeps the heap small on a small machine, or wherever RESETTLE_MEMORY is 'small': a quarter less memory for an eighth more
 * of the processor, as measured (tests/bench/README.md).
 */
export function sparing(env: NodeJS.ProcessEnv): void {
  if (isSmall(env)) setFlagsFromString(`--heap-growing-percent=${GROWTH}`)
}

export function isSmall(env: NodeJS.ProcessEnv): boolean {
  const limit = process.constrainedMemory() || Number.POSITIVE_INFINITY
  return Math.min(totalmem(), limit) < SMALL || env.RESETTLE_MEMORY === 'small'
}

/**
 * What Node has to be told before it starts: room for what is young is a megabyte, where it would grow to three times 16. 40 to
 * 80 MB less, as measured; V8 heeds it no more once it runs.
 */
export const SMALL_FLAG = '--max-semi-space-size=1'
