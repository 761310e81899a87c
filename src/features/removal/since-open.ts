/**
 * Words that were written since it was opened, or gone on with. They are no reason to stop by themselves, and are shown to whoever stands
 * there, and to whoever goes back to close up.
 */
import type { SheetHistory } from '../../app/index.ts'
import type { Frame } from '../../parts/index.ts'
import { beginsIn, isUnderWay, type Sheet } from '../../records/index.ts'
import { fingerprint } from '../../store/index.ts'
import { dayWords, instantWords } from '../../words/index.ts'
import { notesOf } from './notes-read.ts'
import type { foundToClose } from './since-mark.ts'
import { isOver, type Stage } from './stage.ts'
import { callBackLines } from './view.ts'

/** All words of a sheet; what customers said when they called again is said by itself. */
const wordsOn = ({ callBacks: _, ...s }: Sheet): string[] => notesOf(s, '')

const known = (text: string): string => fingerprint(text).toString(36)

/**
 * The sheet with what stood on it in words before it was begun, or gone on with: a phone keeps no version to compare it with. What is
 * typed in that very press nobody has read; why it had no “go” stands in the head by itself.
 */
export const withKnown = (before: Sheet, after: Sheet): Sheet => {
  if (!beginsIn(before, after)) return after
  const { withoutGo: why } = after.work
  const stood = [
    ...wordsOn(before),
    ...[why?.words, ...(why?.more ?? [])].filter((text) => text !== undefined),
  ]
  return { ...after, work: { ...after.work, knew: stood.map(known) } }
}

/** What is new of them; nothing where nobody knows what stood there then. */
function wordsSince(s: Sheet): string[] {
  const { knew } = s.work
  return knew === undefined ? [] : wordsOn(s).filter((text) => !knew.includes(known(text)))
}

/** Whether these words stand on a sheet. */
export const isSaidOn = (s: Sheet, text: string): boolean => wordsOn(s).includes(text)

/** One thing that came to light: 'This was found', 'Bram, Fri 12 Jun 09:40', what it is. */
export interface Since {
  lead: string
  who?: string | undefined
  words: string
}

/** All that came to light since it was opened: what was found and is to be closed up on, what was written, and what they called about. */
export function sinceOpened(
  s: Sheet,
  stage: Stage,
  { found, boxes }: { found: ReturnType<typeof foundToClose>; boxes: readonly string[] },
  { zone, today }: Pick<Frame, 'zone' | 'today'>,
  history?: SheetHistory,
): Since[] {
  const shows = isOver(stage) ? stage === 'boxed' : s.work.boxedAt !== undefined || isUnderWay(s, today)
  const wrote = (text: string): string | undefined => {
    const by = history?.saidBy(text)
    return by && `${by.by}, ${instantWords(by.at, zone, today)}`
  }
  return [
    ...found.map(({ item, found: n }) => ({
      lead: 'This was found',
      who: n && `${n.by}, ${dayWords(n.on, today)} ${n.at}`,
      words: item.why,
    })),
    // Whoever comes back reads them before “go”, all of them.
    ...(shows ? wordsSince(s) : []).map((text) => ({
      lead: 'Since it was opened',
      who: wrote(text),
      words: `“${text}”`,
    })),
    ...(stage === 'boxed' ? boxes : []).map((words) => ({
      lead: 'Written with the box',
      words: `“${words}”`,
    })),
    ...(stage === 'boxed' ? callBackLines(s, today) : []).map((words) => ({
      lead: 'They called again',
      words,
    })),
  ]
}
