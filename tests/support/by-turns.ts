/** In which order the files of tests begin: the longest first, as vitest has it, with and without a browser by turns. */
import type { TestSpecification } from 'vitest/node'
import { BaseSequencer } from 'vitest/node'

/**
 * Merges two lists so that both come to their end together. A journey often waits for its page; with journeys alone, which are the
 * longest and so began first, cores lay idle, and then tests without a browser queued for them.
 */
export function byTurns<T>(some: readonly T[], others: readonly T[]): T[] {
  const placed = [some, others].flatMap((list) => list.map((one, i) => ({ one, at: i / list.length })))
  return placed.sort((a, b) => a.at - b.at).map(({ one }) => one)
}

export class ByTurns extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const longestFirst = await super.sort(files)
    const journey = ({ moduleId }: TestSpecification): boolean => moduleId.endsWith('.journey.ts')
    return byTurns(
      longestFirst.filter(journey),
      longestFirst.filter((file) => !journey(file)),
    )
  }
}
