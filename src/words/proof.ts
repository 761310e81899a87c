/**
 * What a visit proves, put from two plans: the one before it and the one with it. Pure, so that the phone says it
 * while one taps and the server can say the same.
 */
import type { Inspection } from '../journal/index.ts'
import type { Check, Plan, Rule } from '../recovery/index.ts'
import { dayWords, fromTo, spanWords } from './dates.ts'
import { PHASE_WORDS, RULE_WORDS } from './rules.ts'

type Span = NonNullable<Plan['spans']['emergence']>

/** Sentences, the weightiest first. Empty when the visit adds nothing. */
export function proves(look: Inspection | null, before: Plan, after: Plan): string[] {
  const said = [
    ...(look?.signs?.includes('brood-disease-suspected') === true ? [SUSPECTED] : []),
    ...after.surprises.filter((s) => !before.surprises.includes(s)),
    ...(look === null ? [] : ambiguous(look, before)),
    ...phaseChange(before, after),
    ...spanChanges(before, after),
    ...answers(before, after),
    ...opened(before, after),
  ]
  return [...new Set(said)]
}

/** A suspicion proves nothing of the queen, but nothing weighs more. */
const SUSPECTED =
  'Brood disease suspected. Nothing is proven, but the colony is held: nothing is moved, united or given from it until somebody records who cleared it.'

const SEEN = {
  eggs: { word: 'Eggs', seen: (i: Inspection) => i.eggs === 'single' },
  open: { word: 'Open brood', seen: (i: Inspection) => i.open === 'some' || i.open === 'plenty' },
  capped: { word: 'Capped worker brood', seen: (i: Inspection) => i.capped === 'worker' },
} as const

/** Sightings that other brood still explains. */
function ambiguous(look: Inspection, before: Plan): string[] {
  if (look.onFreshComb === true) return []
  return (Object.keys(SEEN) as (keyof typeof SEEN)[]).flatMap((k) => {
    const until = before.horizon[k]
    const { word, seen } = SEEN[k]
    if (!seen(look) || until === null || look.on > until) return []
    return [
      `${word} prove nothing new until after ${dayWords(until, before.asOf)}: they may be from brood that came along or was given.`.replace(
        /^(Open brood|Capped worker brood) prove /,
        '$1 proves ',
      ),
    ]
  })
}

const phaseChange = (before: Plan, after: Plan): string[] =>
  before.phase === after.phase
    ? []
    : [`${PHASE_WORDS[after.phase]}. Before this visit: ${lower(PHASE_WORDS[before.phase])}.`]

const lower = (s: string): string => s.charAt(0).toLowerCase() + s.slice(1)

const SPANS = {
  emergence: 'The queen leaves her cell',
  firstEgg: 'First egg',
  workerBroodProof: 'Proof by capped worker brood',
} as const

function spanChanges(before: Plan, after: Plan): string[] {
  return (Object.keys(SPANS) as (keyof typeof SPANS)[]).flatMap((k) => {
    const now = after.spans[k]
    return now === undefined || same(before.spans[k], now)
      ? []
      : [`${SPANS[k]}: ${spanWords(now, after.asOf)}.`]
  })
}

const same = (a: Span | undefined, b: Span): boolean =>
  a !== undefined && a.earliest === b.earliest && a.likely === b.likely && a.latest === b.latest

const key = (c: Check): string => `${c.rule} ${c.opens}`

function answers(before: Plan, after: Plan): string[] {
  const wasAnswered = new Set(before.checks.filter((c) => c.status === 'answered').map(key))
  const asked = new Set(before.checks.map(key))
  const names = after.checks
    .filter((c) => c.status === 'answered' && asked.has(key(c)) && !wasAnswered.has(key(c)))
    .map((c) => lower(RULE_WORDS[c.rule].name))
  return names.length === 0 ? [] : [`Answers: ${names.join(', ')}.`]
}

/** Welfare looks come round by themselves after every visit. */
const ROUND: Rule[] = ['welfare']

function opened(before: Plan, after: Plan): string[] {
  const known = new Set(before.checks.map(key))
  const fresh = after.checks.filter(
    (c) => !known.has(key(c)) && !ROUND.includes(c.rule) && c.status !== 'answered' && c.status !== 'void',
  )
  return fresh.map(
    (c) => `Next: ${lower(RULE_WORDS[c.rule].name)}, ${fromTo(c.opens, c.closes, after.asOf)}.`,
  )
}
