/** What came to light on a sheet since another version of it, in words. */
import { EMPTY_SHEET, heldIn, type Sheet } from '../../records/index.ts'
import { goneFrom } from './grave.ts'
import { GRAVE_WORDS } from './hazard-words.ts'
import { notesOf, placeTexts } from './notes-read.ts'
import { moreOn, saidOn } from './other-sheets.ts'
import { carefulFacts, NOT_KNOWN } from './sheet-facts.ts'
import { decidedWords } from './words.ts'

/**
 * What can kill of a sheet and was not known before, tapped or written, that somebody stopped it, and that there are words which nobody
 * has read; and nothing private. 'gas pipe, a refusal'
 */
export function killing(now: Sheet, before: Sheet): string {
  const had = saidOn(before)
  const held = heldIn(now, before)
  // Of a job that the yard does not know all is new: what nobody knows of it holds no “go” but its own.
  const isNew = before === EMPTY_SHEET
  const read = [held?.reason, ...notesOf(before, ''), ...placeTexts(before)]
  return [
    ...moreOn(now, before)
      .filter((what) => !had.includes(what))
      .map((what) => GRAVE_WORDS[what].toLowerCase()),
    ...(held === undefined ? [] : [held.is === 'refuse' ? 'a refusal' : 'a “Wait” with a reason']),
    ...(isNew ? [] : carefulKinds(now, before)),
    ...([...notesOf(now), ...(isNew ? [] : placeTexts(now))].every((text) => read.includes(text))
      ? []
      : ['a note others have not read']),
  ].join(', ')
}

/** ['temper not known', 'a hotter day'] */
function carefulKinds(now: Sheet, before: Sheet): string[] {
  const facts = carefulFacts(before, now, {
    units: { temperature: 'C', weight: 'kg' },
    today: '',
    currency: '',
  })
  const kinds = facts.map(([label, value]) =>
    NOT_KNOWN.test(value) ? `${label.toLowerCase()} not known` : 'a hotter day',
  )
  return [...new Set(kinds)]
}

/** What of a sheet came to light since another version, and a refusal with its reason. ['gas pipe', 'Bram tapped “Refuse”, …'] */
export function foundWords(now: Sheet, before: Sheet): string[] {
  const held = heldIn(now, before)
  return [
    ...goneFrom(now, before).map((what) => GRAVE_WORDS[what].toLowerCase()),
    ...(held === undefined ? [] : [decidedWords(held)]),
  ]
}
