/** What came to light on a sheet since another version of it, in words. */
import { heldIn, type Sheet } from '../../records/index.ts'
import { goneFrom, isHazard } from './grave.ts'
import { decidedWords, GRAVE_WORDS } from './words.ts'
import { writtenOn } from './written.ts'

/** What can kill of a sheet and was not known before, tapped or written, and nothing private. 'gas pipe, somebody allergic' */
export function killing(now: Sheet, before: Sheet): string {
  const said = (s: Sheet) => writtenOn(s).map((w) => w.what)
  const anew = said(now).filter((what) => !said(before).includes(what))
  return [...new Set([...goneFrom(now, before), ...anew])]
    .filter((what) => isHazard(what) || what === 'allergic')
    .map((what) => GRAVE_WORDS[what].toLowerCase())
    .join(', ')
}

/** What of a sheet came to light since another version, and a refusal with its reason. ['gas pipe', 'Bram tapped “Refuse”, …'] */
export function foundWords(now: Sheet, before: Sheet): string[] {
  const held = heldIn(now, before)
  return [
    ...goneFrom(now, before).map((what) => GRAVE_WORDS[what].toLowerCase()),
    ...(held === undefined ? [] : [decidedWords(held)]),
  ]
}
