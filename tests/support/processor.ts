/** What work costs, on a machine that does other work too: a clock would tell of that as well. */

/** Milliseconds of the processor that this process, all its threads together, has had meanwhile. */
export async function processorOf<T>(work: () => T | Promise<T>): Promise<{ made: T; ms: number }> {
  const before = process.cpuUsage()
  const made = await work()
  const { user, system } = process.cpuUsage(before)
  return { made, ms: (user + system) / 1000 }
}
