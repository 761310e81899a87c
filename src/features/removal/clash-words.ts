/** A clash in words: whose the other word is, what it says, and what one's own says. The server alone says it. */
import { type FieldSpec, spec, typedFields } from '../../forms/index.ts'
import { isWords, type Sheet } from '../../records/index.ts'
import { removalTypes, temperature, type Units, unitOf } from '../../words/index.ts'
import { BEHIND_IT, HAZARD, NOT_A_TYPE, YES_NO } from './choices.ts'
import { fieldsOfPart } from './fields.ts'
import { factsOf } from './sheet-facts.ts'
import { PARTS } from './stage.ts'
import { withoutGoWords } from './without-go.ts'
import { decidedWords } from './words.ts'

const OF_THE_TICKS = ['check.done', 'check.doneOn', 'check.doneAt', 'check.tickedAt']

const { choice, list, text, yesNo } = spec

/** What no form has a field of that name for: it is tapped with another one, or written down by the server. */
const TAPPED_WITH: Record<string, FieldSpec> = {
  'job.bees': choice(
    'What hangs or flies there',
    [{ value: 'swarm', label: 'A swarm' }, { value: 'nest', label: 'Bees in something' }, ...NOT_A_TYPE],
    2,
  ),
  'site.type': choice('What the bees are in', removalTypes(), 3),
  'site.old': choice('Built before 1980', YES_NO, 4),
  'site.nearWires': yesNo('Wires seen near', YES_NO, 3),
  'site.behindHow': choice('How it is known that nothing runs behind it', knownBy(BEHIND_IT), 3),
  'site.oldHow': choice('How it is known that there is no asbestos and no lead', knownBy(HAZARD), 3),
  'check.clearedBy': text('Cleared by'),
  boxes: list('Boxes', [], 3),
}

/** 'none-owner': ['None', 'the owner says'] as 'owner': 'the owner says' */
function knownBy(choices: typeof HAZARD): typeof HAZARD {
  return choices.flatMap(({ value, hint }) =>
    value.startsWith('none-') && hint !== undefined ? [{ value: value.slice(5), label: hint }] : [],
  )
}

/** A row of the facts of the work, made of that field alone. */
function rowSaid(label: string, of: (work: Sheet['work']) => Sheet['work']): Say {
  return (s, units) =>
    factsOf('work', { ...s, work: of(s.work) }, { units, today: '', currency: '' }).find(
      ([l]) => l === label,
    )?.[1]
}

type Say = (s: Sheet, units: Units) => string | undefined
/** What is no answer to one question. */
const WHOLE: Record<string, [label: string, says?: Say]> = {
  decision: ['“Go”, “Wait” or “Refuse”', (s) => s.decision && decidedWords(s.decision)],
  ended: ['The end of the job', (s) => s.ended && `“${s.ended.why}”, ${s.ended.on}`],
  callBacks: ['Calls after the job'],
  'site.lookedAt': ['Where it was looked'],
  'site.noted': ['What came onto the sheet and went off it'],
  'agreement.signature': [
    'The signature',
    ({ agreement: { signature: x } }) => x && `${x.name}, ${x.on}${x.how === 'paper' ? ', on paper' : ''}`,
  ],
  'check.hours': [
    'Heat by the hour',
    ({ check }, units) => check.hours?.map((h) => `${h.at} ${temperature(h.c, units)}`).join(', '),
  ],
  'check.clearances': ['What a trade has cleared'],
  'check.seconds': ['Second people'],
  // Of a box what the page says of it, and no more.
  'work.brood': ['Brood that came along', rowSaid('Brood', ({ brood }) => ({ brood }))],
  'work.bees': ['Bees in the box', rowSaid('Bees', ({ bees }) => ({ bees }))],
  'work.withoutGo': ['Why it was begun without a “go”', (s) => withoutGoWords(s) ?? undefined],
  'work.earlier': ['Visits'],
  'work.knew': ['What was written'],
  'work.underGo': [
    'The “go” it was begun on',
    ({ work: { underGo: x } }) => x && `written down by ${x.by}, ${x.on} ${x.at}`,
  ],
}

/** How a field is asked; what the call asks of the site is asked there. */
function specOf(path: string): FieldSpec | undefined {
  const [part, field = ''] = path.split('.')
  const known = PARTS.find((p) => p === part)
  const asked = known === undefined ? undefined : (fieldsOfPart(known)[field] ?? fieldsOfPart('job')[field])
  return TAPPED_WITH[path] ?? asked
}

/** 'site.temper' as its label: 'Temper' */
export function pathWords(path: string): string {
  if (OF_THE_TICKS.includes(path)) return 'What is tapped before the cut'
  return WHOLE[path]?.[0] ?? specOf(path)?.label ?? path
}

/** What a sheet says there, as it would have been typed; of lists only what `other` has not. Undefined where it is not said in words. */
function saidAt(path: string, s: Sheet, other: Sheet, units: Units): string | undefined {
  const whole = WHOLE[path]
  if (whole !== undefined) return whole[1]?.(s, units) ?? 'nothing'
  const asked = specOf(path)
  if (asked === undefined || asked.as === 'photos') return undefined
  const typed = (x: Sheet): string[] => typedFields({ [path]: asked }, x, units)[path] ?? []
  const symbol = asked.quantity === undefined ? '' : ` ${unitOf(units, asked.quantity).symbol}`
  const said = typed(s)
    .filter((v) => v !== '' && (asked.as !== 'list' || !typed(other).includes(v)))
    .map((v) => asked.choices?.find((c) => c.value === v)?.label ?? `${v}${symbol}`)
    .join(', ')
  return said === '' ? 'nothing' : `“${said}”`
}

/** Whoever sends it, as the one who said the other word too. */
export const YOU = 'You'

/**
 * 'Odalys saved something else meanwhile', 'The way in: theirs “Front”, yours “Back”. The words of both stay', each with its field.
 * `by`: who said the other words; `settled`: where the careful answer stays whoever is to stand, and `stands`: the sheet with it.
 */
export function clashWords(
  by: readonly (string | undefined)[],
  [theirs, mine, stands]: readonly [Sheet, Sheet, Sheet],
  clashes: readonly string[],
  settled: readonly string[],
  units: Units,
): { field: string; message: string }[] {
  // Day and hour of the ticks are those of the ticks.
  const paths = [...new Set(clashes.map((path) => (OF_THE_TICKS.includes(path) ? 'check.done' : path)))]
  const names = [...new Set(by.filter((name) => name !== undefined))]
  // One's own word from one's other phone is nobody else's.
  const [there, here] =
    names.join() === YOU ? ['from your other phone', 'from this one'] : ['theirs', 'yours']
  const lines = paths.map((path) => {
    const said = saidAt(path, theirs, mine, units)
    const both = said === undefined ? '' : `: ${there} ${said}, ${here} ${saidAt(path, mine, theirs, units)}`
    const stays = !settled.includes(path)
      ? ''
      : isWords(path)
        ? '. The words of both stay'
        : `. The more careful answer stays: ${saidAt(path, stands, stands, units)}`
    return { field: path, message: `${pathWords(path)}${both}${stays}` }
  })
  return [{ field: '', message: `${names.join(' and ')} saved something else meanwhile` }, ...lines]
}
