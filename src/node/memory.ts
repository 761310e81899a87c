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
  const limit = process.constrainedMemory() || Number.POSITIVE_INFINITY
  const small = Math.min(totalmem(), limit) < SMALL
  if (small || env.RESETTLE_MEMORY === 'small') setFlagsFromString(`--heap-growing-percent=${GROWTH}`)
}
