/**
 * “Is it here?”, of what was only written, or stands on another sheet of the house: two answers, so that a thumb that ticks a whole list
 * does not say of a gas pipe that it is not there. “It is here” puts it onto the sheet, as a tap in its own field does.
 */
import { many, one, type Typed } from '../../forms/index.ts'
import { BEHIND, BYSTANDERS, HAZARDS, type Sheet } from '../../records/index.ts'
import type { OtherSheet } from './other-sheets.ts'
import { FIERCE, saidFierce } from './people.ts'

const AGAIN = 'again.'

/** The field of one such question; `id` is what is ticked where the answer is “not”. */
export const againField = (id: string): string => `${AGAIN}${id}`

/** The answers of a form that are this one, by what is ticked for them. */
const answers = (typed: Typed, is: 'not' | 'here'): string[] =>
  Object.keys(typed)
    .filter((name) => name.startsWith(AGAIN) && one(typed, name) === is)
    .map((name) => name.slice(AGAIN.length))

/** A form with what was answered “not” among its ticks: they run out, and what is here does not. */
export function withAgain(typed: Typed): Typed {
  const not = answers(typed, 'not')
  if (not.length === 0) return typed
  const rest = Object.entries(typed).filter(([name]) => !not.some((id) => name === againField(id)))
  return { ...Object.fromEntries(rest), done: [...new Set([...many(typed, 'done'), ...not])] }
}

/** As “It is here” is kept where it puts nothing onto the sheet: another pipe than the one that was cleared. */
export const isHere = (id: string): string => `here:${id}`

/** Letters that the form of that note takes: more, and nobody could put it right there. */
export const MOST = 500

const LISTS = [
  ['behind', BEHIND],
  ['hazards', HAZARDS],
  ['bystanders', BYSTANDERS],
] as const

/** The sheet with what is here in its own field; undefined where it has none, or there is no room. */
function putOn(s: Sheet, id: string, others: readonly OtherSheet[]): Sheet | undefined {
  const { site } = s
  const at = (more: Sheet['site']): Sheet => ({ ...s, site: { ...site, ...more } })
  const [kind, what] = id.split(':')
  if (kind === 'same') return undefined
  for (const [field, all] of LISTS)
    if (all.some((x) => x === what)) return at({ [field]: [...new Set([...(site[field] ?? []), what])] })
  switch (what) {
    case 'near-wires':
      return { ...at({ nearWires: true }), check: { ...s.check, wires: 'near' } }
    case 'fierce':
      return saidFierce(s) ? s : at({ temper: FIERCE })
    case 'old':
    case 'sprayed':
      return at({ [what]: 'yes' })
    case 'stopped': {
      const words = others.find((o) => id.startsWith(`not-there:stopped:${o.id}`))?.asks
      const foundNote = [site.foundNote, words].filter(Boolean).join('. ')
      return words === undefined || foundNote.length > MOST ? undefined : at({ foundNote })
    }
    default:
      return undefined
  }
}

/** The sheet of a form with all that was answered “It is here” in it. */
export function withHere(s: Sheet, typed: Typed, others: readonly OtherSheet[]): Sheet {
  let now = s
  for (const id of answers(typed, 'here')) {
    const { done = [], ...check } = now.check
    now = putOn(now, id, others) ?? { ...now, check: { ...check, done: [...done, isHere(id)] } }
  }
  return now
}
