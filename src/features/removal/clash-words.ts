/** A clash in words: whose the other word is, what it says, and what one's own says. */
import { type FieldSpec, typedFields } from '../../forms/index.ts'
import { heldIn, type Sheet } from '../../records/index.ts'
import { type Units, unitOf } from '../../words/index.ts'
import { fieldsOfPart } from './fields.ts'
import { goneFrom, isHazard } from './grave.ts'
import { PARTS, type Part } from './stage.ts'
import { decidedWords, GRAVE_WORDS } from './words.ts'
import { writtenOn } from './written.ts'

const OF_THE_TICKS = ['check.done', 'check.doneOn', 'check.doneAt', 'check.tickedAt']

/** The part and name of a field, and how it is asked; what the call asks of the site is asked there. */
function specOf(path: string): { part: Part; field: string; spec: FieldSpec } | null {
  const [part, field = ''] = path.split('.')
  const known = PARTS.find((p) => p === part)
  const spec = known === undefined ? undefined : (fieldsOfPart(known)[field] ?? fieldsOfPart('job')[field])
  return known === undefined || spec === undefined ? null : { part: known, field, spec }
}

/** 'site.temper' as its label. */
export function pathWords(path: string): string {
  if (path === 'decision') return '“Go”, “Wait” or “Refuse”'
  if (OF_THE_TICKS.includes(path)) return 'what is tapped before the cut'
  return (specOf(path)?.spec.label ?? path.split('.').at(-1) ?? '').toLowerCase()
}

/** What a sheet says there, as it would have been typed; of lists only what `other` has not. Undefined where it is not said in words. */
function saidAt(path: string, s: Sheet, other: Sheet, units: Units): string | undefined {
  if (path === 'decision') return s.decision === undefined ? 'nothing' : decidedWords(s.decision)
  const at = specOf(path)
  if (at === null || at.spec.as === 'photos') return undefined
  const { part, field, spec } = at
  const typed = (x: Sheet): string[] => typedFields({ [field]: spec }, x[part], units)[field] ?? []
  const symbol = spec.quantity === undefined ? '' : ` ${unitOf(units, spec.quantity).symbol}`
  const said = typed(s)
    .filter((v) => v !== '' && (spec.as !== 'list' || !typed(other).includes(v)))
    .map((v) => spec.choices?.find((c) => c.value === v)?.label ?? `${v}${symbol}`)
    .join(', ')
  return said === '' ? 'nothing' : `“${said}”`
}

/** 'Odalys saved something else meanwhile', 'The way in: theirs “Front”, yours “Back”'. `by`: who said the other words. */
export function clashWords(
  by: readonly (string | undefined)[],
  last: Sheet,
  mine: Sheet,
  clashes: readonly string[],
  units: Units,
): string[] {
  // Day and hour of the ticks are those of the ticks.
  const paths = [...new Set(clashes.map((path) => (OF_THE_TICKS.includes(path) ? 'check.done' : path)))]
  const lines = paths.map((path) => {
    const theirs = saidAt(path, last, mine, units)
    const label = pathWords(path)
    const words =
      theirs === undefined ? label : `${label}: theirs ${theirs}, yours ${saidAt(path, mine, last, units)}`
    return capital(words)
  })
  const names = [...new Set(by.filter((name) => name !== undefined))]
  return [`${names.join(' and ')} saved something else meanwhile`, ...lines]
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

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
