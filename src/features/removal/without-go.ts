/**
 * Work that was begun although no “go” stood. What happened is not refused: it is kept with a name and a reason, and stays
 * unmet for as long as the sheet is there.
 */
import { hasBegun, type Sheet, type WithoutGo } from '../../records/index.ts'
import { type Facts, NOT_NEEDED } from './item.ts'

/** Begun, and no “go” of that day stands behind it. `colonies`: how many came of it; bees come of what was begun. */
export const beganWithoutGo = (s: Sheet, colonies = 0): boolean => {
  const { work: w, decision: d } = s
  if (w.withoutGo !== undefined || w.underGo !== undefined) return w.withoutGo !== undefined
  const stood = d?.is === 'go' && d.fell === undefined && (w.on === undefined || w.on === d.on)
  // Bees that came of it, and nothing that says when it was begun: no “go” has an hour for that.
  return hasBegun(s) ? !stood : colonies > 0
}

export const WITHOUT_GO_WORDS: Record<WithoutGo['why'], string> = {
  'said-aloud': 'Go was said aloud, not tapped',
  'could-not-wait': 'It could not wait',
  'open-already': 'It was open already',
  'sent-later': 'Its “go” came here only afterwards',
  unsaid: 'No “go” stood for it, and nobody has said why it was done all the same',
}

/** 'It could not wait: boards down (Ines, 2026-06-12 09:10)'; null where nobody has said. What the server says of it stands alone. */
export const withoutGoWords = ({ work: { withoutGo: x } }: Sheet): string | null => {
  if (x === undefined) return null
  const said = [...(isSaidHere(x) ? [] : [WITHOUT_GO_WORDS[x.why]]), x.words].filter(Boolean).join(': ')
  return `${said} (${x.by}, ${x.on} ${x.at})`
}

/** What was begun over what had not been heard: these are the server's words, and nobody's note. */
export const isSaidHere = ({ why, words }: WithoutGo): boolean => why === 'sent-later' && words !== undefined

export const begun = (s: Sheet): Facts =>
  beganWithoutGo(s)
    ? { state: 'unmet', why: `Begun without a “go”. ${withoutGoWords(s) ?? 'Nobody has said why.'}` }
    : NOT_NEEDED
