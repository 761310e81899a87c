/** What came to light after somebody had said why it was begun without a “go”: that answer did not know of it. */
import type { Sheet, WithoutGo } from '../../records/index.ts'
import { notYet, type Reckoning, stops } from './before-cut.ts'
import { lineOf } from './decide.ts'
import { TICK_OF } from './grave.ts'
import type { Item } from './item.ts'
import { WITHOUT_GO_WORDS } from './without-go.ts'

/** Open items that are not on the list of its mark, and that stop it, are written somewhere, or were found since; none where it bears no mark. */
export function sinceMark({ unmet }: Reckoning, { site, work }: Sheet): Item[] {
  const mark = work.withoutGo
  if (mark === undefined) return []
  const found = (site.noted ?? [])
    .filter((n) => n.is === 'found' && `${n.on} ${n.at}` >= `${mark.on} ${mark.at}`)
    .map(({ what }) => TICK_OF[what] ?? `trade-${what}`)
  const isListed = (i: Item): boolean =>
    mark.unmet.some((line) => line.startsWith(i.id === 'notes' ? lineOf(i) : notYet(i)))
  return unmet.filter((i) => (stops(i) || i.id === 'notes' || found.includes(i.id)) && !isListed(i))
}

/** What stands on the list of a mark for another day on which it was gone on with. */
const goneOn = (day: string): string => `Gone on with on ${day}, with no “go” of that day`

/** Whether somebody has answered for that day as well. */
export const isAnswered = (mark: WithoutGo, day: string): boolean =>
  mark.unmet.some((line) => line.startsWith(goneOn(day)))

/** The mark with what came since on its list, and who answered for that, when and how: why it was begun stays as it was said. */
export const withMore = (
  mark: WithoutGo,
  { why, words, by, on, at }: WithoutGo,
  came: readonly Item[],
): WithoutGo => ({
  ...mark,
  unmet: [
    ...mark.unmet,
    ...[...(on === mark.on || isAnswered(mark, on) ? [] : [goneOn(on)]), ...came.map(lineOf)].map((line) => {
      const answer = [WITHOUT_GO_WORDS[why], words].filter(Boolean).join(': ')
      return `${line.slice(0, 160)} (${answer.slice(0, 80)}; ${by}, ${on} ${at})`.slice(0, 300)
    }),
  ].slice(-40),
})
