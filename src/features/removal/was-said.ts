/**
 * What a change takes out of a sheet and nobody has answered for stays a line of it: words that were not read yet, and an address or a
 * telephone, for what was found there is there still.
 */
import { type NotedLine, type Sheet, wordsOf } from '../../records/index.ts'
import { canonical } from '../../store/index.ts'
import { tappedAt } from './hazards.ts'
import { isRead, notesOf, shortTexts, typedNotes } from './notes-read.ts'
import { saidFierce } from './people.ts'

export type Stamp = Pick<NotedLine, 'by' | 'on' | 'at' | 'writtenAt'>

/** At most as many as the schema takes: the last ones. */
export const withLines = (site: Sheet['site'], lines: readonly NotedLine[]): Sheet['site'] => ({
  ...site,
  noted: [...(site.noted ?? []), ...lines].slice(-80),
})

/** Without capitals, blanks and commas, as places are compared. */
export const bare = (text: string): string => wordsOf(text).join(' ')

/** The sheet with a line for each of those words, once. */
function withWas(
  s: Sheet,
  what: 'note' | 'house',
  went: readonly string[],
  { by, on, at, writtenAt }: Stamp,
): Sheet {
  const fresh = went.filter(
    (text) => s.site.noted?.some((n) => n.what === what && n.words?.includes(text)) !== true,
  )
  if (fresh.length === 0) return s
  const lines = fresh.map((words): NotedLine => ({ what, is: 'was', words, by, on, at, writtenAt }))
  return { ...s, site: withLines(s.site, lines) }
}

/** Which of these texts stand in none of those. */
function nowhereIn(those: readonly string[], texts: readonly string[]): string[] {
  const there = those.map(bare)
  return texts.filter((text) => !there.some((words) => words.includes(bare(text))))
}

/** Words that stood for others to read, and that a change takes out before anybody did. `stood`: the sheet as others may have seen it. */
export function withUnread(before: Sheet, after: Sheet, stood: Sheet, stamp: Stamp): Sheet {
  if (isRead(before, stamp.on)) return after
  const seen = typedNotes(stood)
  const stoodThere = typedNotes(before).filter((text) => seen.includes(text))
  const went = nowhereIn([...typedNotes(after), ...shortTexts(after)], stoodThere)
  return withWas(after, 'note', went, stamp)
}

/** Words that a phone's sheet says more than `known` did, and that stand nowhere here: it was refused, or another one's stand there. */
export function withUnkept(now: Sheet, mine: Sheet, known: Sheet, stamp: Stamp): Sheet {
  const had = [...typedNotes(known), ...typedNotes(now), ...shortTexts(now)]
  const lost = nowhereIn(had, typedNotes(mine))
  return withWas(now, 'note', lost, stamp)
}

/** Whether anything stands on it that another sheet of the house asks about. */
const saysSomething = (s: Sheet): boolean => {
  const { where, surface, old, sprayed } = s.site
  const said = [where, surface, s.ended, saidFierce(s), [old, sprayed].includes('yes')]
  return [...tappedAt(s), ...notesOf(s, ''), ...said].some(Boolean)
}

/** How the house was called, or reached, when something stood on its sheet. One that is only completed is no other. */
export function withHouse(before: Sheet, after: Sheet, stamp: Stamp): Sheet {
  if (!saysSomething(before)) return after
  const went = (['address', 'phone', 'email'] as const).flatMap((key) => {
    const [was, is] = [before.job[key], after.job[key]]
    const words = wordsOf(is ?? '')
    return was === undefined || wordsOf(was).every((w) => words.includes(w)) ? [] : [was]
  })
  return withWas(after, 'house', went, stamp)
}

/** What `now` has more than `was` was found by somebody who had another address: it is of that too. `mine`: the sheet as they had it. */
export const withFoundAt = (mine: Sheet, was: Sheet, now: Sheet, stamp: Stamp): Sheet =>
  canonical(was.site.noted ?? []) === canonical(now.site.noted ?? []) ? now : withHouse(mine, now, stamp)
