/** What a box is known by to whoever looks for it: they may think in any language, whatever the page is in. */
import { folded } from '../folded.ts'
import { LANGUAGES } from '../languages.ts'
import type { Action, Phase } from '../recovery/index.ts'
import { wordsIn } from './catalogue.ts'
import { labelIn, removalTypes } from './choices.ts'
import { leftWords } from './lines.ts'

interface Known {
  tag: string
  yard: string
  stand: string | null
  removalType: string
  /** How it left; null while it is here. */
  outcome: string | null
  phase: Phase
  action: Action
}

const SPOKEN = LANGUAGES.map(wordsIn)

/** 'stand', 'sitio': what people write before the number of one. */
export const STAND_WORDS: readonly string[] = SPOKEN.map((w) => folded(w.parts.stand('')).trim())

/** Asks nothing of anybody, so nobody looks for it. */
const NO_ADVICE: readonly Action[] = ['none', 'leave-alone']

const SAID = new Map<string, string>()

/** Its kind of removal, how it stands or left, and what is to be done; the same for many boxes, so made once. */
function saidOf({ action, outcome, phase, removalType }: Known): string {
  const key = [removalType, outcome, phase, action].join('|')
  const known = SAID.get(key)
  if (known !== undefined) return known
  const said = SPOKEN.map((w) =>
    [
      labelIn(removalTypes([], w.choiceWords), removalType),
      outcome === null ? w.trade.phases[phase] : leftWords(outcome, w),
      outcome !== null || NO_ADVICE.includes(action) ? '' : w.trade.actions[action],
    ].join(' '),
  )
  const text = folded(said.join(' '))
  SAID.set(key, text)
  return text
}

/** All of it as words are compared (folded): tag, yard, stand, kind of removal, how it stands, what is to be done, in every language. */
export function knownAs(box: Known): string {
  const { stand, tag, yard } = box
  const stands = stand === null ? [] : STAND_WORDS.map((word) => `${word} ${stand}`)
  return `${folded([tag, yard, ...stands].join(' '))} ${saidOf(box)}`
}
