/** On a small machine, memory before speed. */
import { totalmem } from 'node:os'
import { setFlagsFromString } from 'node:v8'

/** Bytes of memory under which a machine, or what a container is given of it, is small. */
const SMALL = 2 * 1024 ** 3

/**
 * What V8 is told, and heeds while it runs (of `--max-semi-space-size` it takes no notice by then): the heap grows by so many
 * per cent at a time, where it would double and more; and room for what is young stays at two megabytes, where it would
 * grow to 32. The latter holds until the next thread starts, after which it has to be told again.
 */
const SPARING = ['--heap-growing-percent=30', '--semi-space-growth-factor=1']

/**
 * Keeps the heap small on a small machine, or wherever RESETTLE_MEMORY is 'small': for the whole process, its reading thread
 * too. What it costs is measured in tests/bench/README.md.
 */
export function sparing(env: NodeJS.ProcessEnv): void {
  if (isSmall(env)) for (const flag of SPARING) setFlagsFromString(flag)
}

export function isSmall(env: NodeJS.ProcessEnv): boolean {
  const limit = process.constrainedMemory() || Number.POSITIVE_INFINITY
  return Math.min(totalmem(), limit) < SMALL || env.RESETTLE_MEMORY === 'small'
}

/**
 * What the system's allocator has to be told before Node starts: two places to take memory from, where it would give each
 * thread its own, which is hardly ever given back.
 */
export const SMALL_ALLOCATOR = 'MALLOC_ARENA_MAX=2'
