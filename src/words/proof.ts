/**
 * What a visit proves, put from two plans: the one before it and the one with it. Pure, so that the phone says it
 * while one taps and the server can say the same.
 */
import type { Inspection } from '../journal/index.ts'
import type { Check, Plan, Rule } from '../recovery/index.ts'
import { type Words, wordsIn } from './catalogue.ts'

type Span = NonNullable<Plan['spans']['emergence']>

/** Sentences, the weightiest first. Empty when the visit adds nothing. */
export function proves(
  look: Inspection | null,
  before: Plan,
  after: Plan,
  w: Words = wordsIn('en'),
): string[] {
  const said = [
    ...(look?.signs?.includes('brood-disease-suspected') === true ? [w.visit.proof.suspected] : []),
    ...after.surprised
      .filter((_, i) => !before.surprises.includes(after.surprises[i] ?? ''))
      .map((r) => w.reasons.all([r])),
    ...(look === null ? [] : ambiguous(look, before, w)),
    ...phaseChange(before, after, w),
    ...spanChanges(before, after, w),
    ...answers(before, after, w),
    ...opened(before, after, w),
  ]
  return [...new Set(said)]
}

const SEEN = {
  eggs: { says: 'eggsUntil', seen: (i: Inspection) => i.eggs === 'single' },
  open: { says: 'openUntil', seen: (i: Inspection) => i.open === 'some' || i.open === 'plenty' },
  capped: { says: 'cappedUntil', seen: (i: Inspection) => i.capped === 'worker' },
} as const

/** Sightings that other brood still explains. */
function ambiguous(look: Inspection, before: Plan, w: Words): string[] {
  if (look.onFreshComb === true) return []
  return (Object.keys(SEEN) as (keyof typeof SEEN)[]).flatMap((k) => {
    const until = before.horizon[k]
    const { says, seen } = SEEN[k]
    if (!seen(look) || until === null || look.on > until) return []
    return [w.visit.proof[says](w.dates.day(until, before.asOf))]
  })
}

const phaseChange = (before: Plan, after: Plan, { trade: { phases }, visit }: Words): string[] =>
  before.phase === after.phase ? [] : [visit.proof.phase(phases[after.phase], lower(phases[before.phase]))]

const lower = (s: string): string => s.charAt(0).toLowerCase() + s.slice(1)

const SPANS = ['emergence', 'firstEgg', 'workerBroodProof'] as const

function spanChanges(before: Plan, after: Plan, w: Words): string[] {
  return SPANS.flatMap((k) => {
    const now = after.spans[k]
    return now === undefined || same(before.spans[k], now)
      ? []
      : [`${w.visit.proof.spans[k]}: ${w.dates.span(now, after.asOf)}.`]
  })
}

const same = (a: Span | undefined, b: Span): boolean =>
  a !== undefined && a.earliest === b.earliest && a.likely === b.likely && a.latest === b.latest

const key = (c: Check): string => `${c.rule} ${c.opens}`

function answers(before: Plan, after: Plan, w: Words): string[] {
  const wasAnswered = new Set(before.checks.filter((c) => c.status === 'answered').map(key))
  const asked = new Set(before.checks.map(key))
  const names = after.checks
    .filter((c) => c.status === 'answered' && asked.has(key(c)) && !wasAnswered.has(key(c)))
    .map((c) => lower(w.trade.rules[c.rule].name))
  return names.length === 0 ? [] : [w.visit.proof.answers(names.join(', '))]
}

/** Welfare looks come round by themselves after every visit. */
const ROUND: Rule[] = ['welfare']

function opened(before: Plan, after: Plan, w: Words): string[] {
  const known = new Set(before.checks.map(key))
  const fresh = after.checks.filter(
    (c) => !known.has(key(c)) && !ROUND.includes(c.rule) && c.status !== 'answered' && c.status !== 'void',
  )
  return fresh.map((c) =>
    w.visit.proof.next(lower(w.trade.rules[c.rule].name), w.dates.fromTo(c.opens, c.closes, after.asOf)),
  )
}
