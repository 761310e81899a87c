/** What came to light after somebody had said why it was begun without a “go”: that answer did not know of it. */
import type { NotedLine, Sheet, WithoutGo } from '../../records/index.ts'
import { notYet, type Reckoning, stops } from './before-cut.ts'
import { leftToClose } from './closing.ts'
import { lineOf } from './decide.ts'
import { TICK_OF } from './grave.ts'
import type { Item } from './item.ts'
import { WITHOUT_GO_WORDS } from './without-go.ts'

/** Open items that are not on the list of its mark, and that stop it, are written somewhere, or were found since; none where it bears no mark. */
export function sinceMark({ unmet }: Reckoning, { site, work }: Sheet): Item[] {
  const mark = work.withoutGo
  if (mark === undefined) return []
  const isListed = (i: Item): boolean =>
    mark.unmet.some((line) => line.startsWith(i.id === 'notes' ? lineOf(i) : notYet(i)))
  return unmet.filter(
    (i) => (stops(i) || i.id === 'notes' || isSince(foundAs(i, site), mark)) && !isListed(i),
  )
}

/** When what an item asks about was last found here. */
const foundAs = ({ id }: Item, { noted }: Sheet['site']): NotedLine | undefined =>
  noted?.findLast((n) => n.is === 'found' && (TICK_OF[n.what] ?? `trade-${n.what}`) === id)

const isSince = (n: NotedLine | undefined, { on, at }: { on: string; at?: string | undefined }): boolean =>
  n !== undefined && `${n.on} ${n.at}` >= `${on} ${at ?? ''}`

/**
 * Boxed, and still to be closed up: what no trade has cleared, or was found since the “go”, and when. Whoever goes back was not there.
 */
export const foundToClose = (
  { unmet }: Reckoning,
  s: Sheet,
): { item: Item; found: NotedLine | undefined }[] =>
  leftToClose(s).length === 0
    ? []
    : unmet
        .map((item) => ({ item, found: foundAs(item, s.site) }))
        .filter(({ item, found }) => item.paper !== undefined || isSince(found, s.decision ?? { on: '' }))

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
  ...(words === undefined ? {} : { more: [...(mark.more ?? []), words].slice(-40) }),
  unmet: [
    ...mark.unmet,
    ...[...(on === mark.on || isAnswered(mark, on) ? [] : [goneOn(on)]), ...came.map(lineOf)].map((line) => {
      const answer = [WITHOUT_GO_WORDS[why], words].filter(Boolean).join(': ')
      return `${line.slice(0, 160)} (${answer.slice(0, 80)}; ${by}, ${on} ${at})`.slice(0, 300)
    }),
  ].slice(-40),
})
