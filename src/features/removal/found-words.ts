/** What came to light on a sheet since another version of it, in words. */
import { heldIn, type Sheet } from '../../records/index.ts'
import { goneFrom } from './grave.ts'
import { notesOf } from './notes-read.ts'
import { moreOn, saidOn } from './other-sheets.ts'
import { decidedWords, GRAVE_WORDS } from './words.ts'

/**
 * What can kill of a sheet and was not known before, tapped or written, that somebody stopped it, and that there are words which nobody
 * has read; and nothing private. 'gas pipe, a refusal'
 */
export function killing(now: Sheet, before: Sheet): string {
  const had = saidOn(before)
  const held = heldIn(now, before)
  const read = [held?.reason, ...notesOf(before, '')]
  return [
    ...moreOn(now, before)
      .filter((what) => !had.includes(what))
      .map((what) => GRAVE_WORDS[what].toLowerCase()),
    ...(held === undefined ? [] : [held.is === 'refuse' ? 'a refusal' : 'a “Wait” with a reason']),
    ...(notesOf(now).every((text) => read.includes(text)) ? [] : ['a note others have not read']),
  ].join(', ')
}

/** What of a sheet came to light since another version, and a refusal with its reason. ['gas pipe', 'Bram tapped “Refuse”, …'] */
export function foundWords(now: Sheet, before: Sheet): string[] {
  const held = heldIn(now, before)
  return [
    ...goneFrom(now, before).map((what) => GRAVE_WORDS[what].toLowerCase()),
    ...(held === undefined ? [] : [decidedWords(held)]),
  ]
}
