/**
 * "Your bees, day 30": a letter to the customer, made from the journal. Pure.
 *
 * Only what the schema lets nobody write a name into gets in: kinds, counts, days. Notes, sites, donors, products, costs,
 * causes, destinations, yards and who saw it are never read here, so they cannot get out.
 */
import { BEES_PER_FRAME, BEES_PER_LB } from '../../biology/index.ts'
import { type Day, daysBetween, dayWords, inWordsWithYear, type Span } from '../../days.ts'
import type { History, Inspection, Intake, StandingEntry } from '../../journal/index.ts'
import type { Plan } from '../../recovery/index.ts'
import { KG_PER_LB } from '../../units.ts'
import { CLOSE_IT, ENDED, GIVEN, NOW, OUT_OF, QUEEN_CAME, THE_PLACE } from './letter-words.ts'

export interface Letter {
  /** 'Your bees, day 30'; 'Your bees, the day they came' */
  title: string
  asOf: Day
  /** Sentences, as are `now`, `next` and `place`. */
  came: string[]
  /** What happened, in order. */
  steps: { on: Day; text: string }[]
  now: string[]
  /** Empty when the colony is no longer with us. */
  next: string[]
  place: string[]
}

/** The history as it stood on a day; null before the intake. */
export function historyUntil(history: History, day: Day): History | null {
  if (history.intake.on > day) return null
  const { outcome } = history
  return {
    ...history,
    entries: history.entries.filter((e) => e.on <= day),
    outcome: outcome !== null && outcome.on <= day ? outcome : null,
  }
}

/**
 * The letter of a day.
 *
 * @param history up to that day (see {@link historyUntil})
 * @param plan of that history, as of that day or of the day the colony left
 */
export function letterOf(history: History, plan: Plan, asOf: Day): Letter {
  const day = daysBetween(history.intake.on, history.outcome?.on ?? asOf)
  return {
    title: `Your bees, ${day === 0 ? 'the day they came' : `day ${day}`}`,
    asOf,
    came: cameWords(history.intake, history.removedOn),
    steps: history.entries.flatMap((e) => stepOf(e) ?? []),
    now: nowWords(history, plan, asOf),
    next: history.outcome === null ? nextWords(plan) : [],
    place: placeWords(history.intake),
  }
}

/** A swarm and a hive leave no opening behind. */
const NO_OPENING: readonly string[] = ['swarm', 'abandoned-hive']

const placeWords = ({ removal }: Intake): string[] => [
  ...(NO_OPENING.includes(removal.type) ? [] : [CLOSE_IT]),
  ...THE_PLACE,
]

function cameWords(intake: Intake, removedOn: Day): string[] {
  const from = Object.hasOwn(OUT_OF, intake.removal.type) ? ` ${OUT_OF[intake.removal.type]}` : ''
  return [
    `On ${inWordsWithYear(removedOn)} your bees came${from === '' ? ' to us' : from}, and into a box of their own.`,
    ...beesWords(intake),
    QUEEN_CAME[intake.queen],
    ...broodWords(intake),
  ]
}

/** A count of bees is a guess: it is given in thousands. */
function beesWords({ bees }: Intake): string[] {
  const count =
    bees?.frames !== undefined
      ? bees.frames * BEES_PER_FRAME
      : bees?.kg !== undefined
        ? (bees.kg / KG_PER_LB) * BEES_PER_LB
        : 0
  const thousands = Math.round(count / 1000)
  return thousands < 1 ? [] : [`There were very roughly ${thousands} thousand of them.`]
}

function broodWords({ brood, tiedComb }: Intake): string[] {
  if (brood === undefined) return []
  const frames = (brood.eggs ?? 0) + (brood.open ?? 0) + (brood.capped ?? 0)
  if (frames === 0) return ['No brood could be brought along.']
  const comb = tiedComb === true ? ', their own comb tied into wooden frames' : ''
  return [`Some of their brood, the young still in the comb, came along with them${comb}.`]
}

/** What an entry tells a customer, or nothing. */
function stepOf(e: StandingEntry): { on: Day; text: string } | null {
  const text = textOf(e)
  return text === null ? null : { on: e.on, text }
}

function textOf(e: StandingEntry): string | null {
  switch (e.kind) {
    case 'inspection':
      return e.opened ? seenWords(e) : null
    case 'given':
      return GIVEN[e.what]
    case 'queen-cage':
      return {
        released: 'Their queen was out of her cage, and they had taken to her.',
        'still-caged': null,
        rejected: 'They would not have the queen we had caged.',
        dead: 'The queen in the cage had died.',
      }[e.found]
    case 'mite-wash':
      return `We looked for mites: about ${Number(((e.mites / e.bees) * 100).toFixed(1))} on every 100 bees.`
    case 'ties-removed':
      return 'They had built their old comb firmly into its frames, so we took off the bands that held it.'
    case 'disease-cleared':
      return 'The worry about their brood was cleared up.'
    case 'move':
    case 'outcome':
    case 'note':
    case 'missed-visit':
    case 'intake':
      return null
  }
}

/** What was seen with the lid off. A thing not looked for is left out. */
function seenWords(e: Inspection): string {
  if (e.signs?.includes('brood-disease-suspected') === true)
    return 'We looked inside, and something about their brood wants an expert’s look.'
  const seen = [
    e.queen === 'seen' ? 'their queen' : '',
    e.eggs === 'single' ? 'eggs' : '',
    e.open === 'some' || e.open === 'plenty' ? 'young brood' : '',
    e.capped === 'worker' ? 'capped brood' : '',
    e.cells === 'open' || e.cells === 'capped' ? 'a queen cell, in which they raise a new queen' : '',
    e.cells === 'emerged' ? 'a queen cell that a young queen had left' : '',
  ].filter((s) => s !== '')
  if (seen.length > 0) return `We looked inside and saw ${listed(seen)}.`
  return e.eggs === 'none' ? 'We looked inside and saw no eggs.' : 'We looked inside.'
}

/** 'a', 'a and b', 'a, b and c' */
const listed = (parts: readonly string[]): string =>
  parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`

function nowWords(history: History, plan: Plan, asOf: Day): string[] {
  const { outcome } = history
  const care = careWords(history)
  if (outcome !== null) return [`On ${dayWords(outcome.on, asOf)} ${ENDED[outcome.what]}`, ...care]
  const phase = plan.phase === 'closed' ? [] : [NOW[plan.phase]]
  const held =
    plan.advice.action === 'call-inspector'
      ? [
          'Something about their brood wants an expert’s look first; until that is cleared up they stay where they are.',
        ]
      : []
  return [...phase, ...held, ...care]
}

const times = (n: number): string => (n === 1 ? 'once' : n === 2 ? 'twice' : `${n} times`)

/** Counted in days, as the steps are listed: two looks of one day are one. */
function careWords({ entries }: History): string[] {
  const days = (counts: (e: StandingEntry) => boolean): number =>
    new Set(entries.filter(counts).map((e) => e.on)).size
  const inside = days((e) => e.kind === 'inspection' && e.opened)
  const outside = days((e) => e.kind === 'inspection' && !e.opened)
  const fed = days((e) => e.kind === 'given' && (e.what === 'syrup' || e.what === 'pollen'))
  const parts = [
    inside === 0 ? '' : `looked inside ${times(inside)}`,
    outside === 0 ? '' : `looked at them from outside ${times(outside)}`,
    fed === 0 ? '' : `fed them ${times(fed)}`,
  ].filter((s) => s !== '')
  return parts.length === 0 ? [] : [`We have ${listed(parts)}.`]
}

/** Before this day nobody expects to know (a queen raised at the removal lays about day 23 at the earliest). */
const EARLY_DAYS = 21

function nextWords(plan: Plan): string[] {
  const { spans, readiness, phase, asOf } = plan
  const on = (day: Day): string => dayWords(day, asOf)
  const around = (s: Span): string =>
    s.earliest === s.latest
      ? `on ${on(s.likely)}`
      : `around ${on(s.likely)}, somewhere between ${on(s.earliest)} and ${on(s.latest)}`
  const waiting = phase === 'rearing' || phase === 'awaiting-new-queen'
  const ahead = (s: Span | undefined): s is Span => s !== undefined && s.latest >= asOf
  return [
    ...(waiting && ahead(spans.firstEgg)
      ? [`The new queen’s first eggs are likely ${around(spans.firstEgg)}.`]
      : []),
    ...(phase !== 'queenright' && ahead(spans.workerBroodProof)
      ? [
          `Capped worker brood is what proves a well-mated queen. We can expect it ${around(spans.workerBroodProof)}.`,
        ]
      : []),
    ...(readiness.ready
      ? ['They are ready to move on to the place where they are to stay.']
      : readiness.expected !== null && ahead(readiness.expected)
        ? [`If all goes well they can move on ${around(readiness.expected)}.`]
        : []),
    ...(phase === 'queenright'
      ? []
      : [
          plan.day < EARLY_DAYS
            ? 'It is too early to be sure of anything, and not every rescued colony comes through.'
            : `Day ${plan.day} is often too early to be sure, and not every rescued colony comes through.`,
        ]),
  ]
}
