/**
 * The sheet for the new keeper: what the book knows of a colony, for whoever takes it over. Pure.
 *
 * No customer: where it came from is a kind of place. Sites, notes, costs, causes and who saw it are never read. Products and
 * batches are (the new keeper has to know them), and of the move-out record only papers and what goes along.
 */
import { addDays, type Day, daysBetween, dayWords, inWordsWithYear } from '../../days.ts'
import type { Entry, History, Inspection, StandingEntry } from '../../journal/index.ts'
import { type MoveRecord, papersEnded, permitWords } from '../../records/index.ts'
import { fold, type Plan, type Protocol } from '../../recovery/index.ts'
import { FIRST_WEEKS, FOULBROOD, ORIGIN, QUEEN, SIGN_SEEN, TEMPER_SAID } from './keeper-words.ts'

export interface KeeperSheet {
  /** 'Colony A-1' */
  title: string
  asOf: Day
  /** A part without sentences is left out. */
  parts: { title: string; sentences: string[]; list?: true }[]
}

/** @param history up to that day; `plan` and `protocol` as they were used for it */
export function keeperSheetOf(
  history: History,
  plan: Plan,
  protocol: Protocol,
  record: MoveRecord | null,
): KeeperSheet {
  const { asOf } = plan
  const on = (day: Day): string => dayWords(day, asOf)
  const parts: KeeperSheet['parts'] = [
    { title: 'Where they come from', sentences: origin(history) },
    { title: 'The queen', sentences: queen(history, protocol, on) },
    { title: 'Brood and strength, at the last look', sentences: broodSeen(history.entries, on) },
    { title: 'Mites', sentences: mites(history.entries, on) },
    { title: 'Brood disease', sentences: [...diseaseLook(history.entries, plan, on), FOULBROOD] },
    { title: 'Treatments', sentences: treatments(history.entries, asOf, on) },
    { title: 'Temper', sentences: temper(history.entries, on) },
    { title: 'What goes along', sentences: record?.wentAlong === undefined ? [] : [record.wentAlong] },
    { title: 'Papers', sentences: papers(record, asOf, on) },
    { title: 'The first weeks', sentences: firstWeeks(history, asOf, on), list: true },
  ]
  return { title: `Colony ${history.tag}`, asOf, parts: parts.filter((p) => p.sentences.length > 0) }
}

function origin({ intake, removedOn, entries }: History): string[] {
  const { type, sprayed } = intake.removal
  const from = Object.hasOwn(ORIGIN, type) ? ` ${ORIGIN[type]}` : ''
  const settled = entries.some((e) => e.kind === 'note' && e.settles === 'sprayed-comb-out')
  return [
    `Rescued${from} on ${inWordsWithYear(removedOn)}, and in a holding yard since ${inWordsWithYear(intake.on)}.`,
    ...(sprayed === 'yes'
      ? [
          settled
            ? 'They had been sprayed there; the comb of then has been taken out.'
            : 'They had been sprayed there: comb of then may still be in it. Eat nothing from it.',
        ]
      : []),
  ]
}

function queen(history: History, protocol: Protocol, on: (d: Day) => string): string[] {
  const state = fold(history, protocol).queen
  const { intake } = history
  const marked = [intake.queenMarked ? 'marked' : '', intake.queenClipped ? 'clipped' : ''].filter(Boolean)
  const known = marked.length === 0 ? '' : ` She is ${marked.join(' and ')}.`
  if (state.is === 'queenright' || state.is === 'laying') {
    const own = state.layer === 'own' ? known : ''
    const since =
      state.firstEgg === null
        ? ''
        : ` Her first eggs here were laid about ${on(state.firstEgg.likely)} (${on(state.firstEgg.earliest)} to ${on(state.firstEgg.latest)}).`
    const proof =
      state.is === 'queenright'
        ? `Proven on ${on(state.provenOn)}: worker brood in flat caps that only she can have laid, so she is mated.`
        : 'New eggs or young brood prove that she lays; that she is mated is not proven yet: it takes capped worker brood.'
    return [`${QUEEN[state.layer](givenOn(history.entries, on))}${own}${since}`, proof]
  }
  return [
    'No laying queen is proven. Take them over only if you know that, and look for eggs before anything else.',
  ]
}

/** The day the last queen was put in, in words; null where none was. */
function givenOn(entries: readonly StandingEntry[], on: (d: Day) => string): string | null {
  const gift = entries.findLast((e) => e.kind === 'given' && QUEENS_GIVEN.includes(e.what))
  return gift === undefined ? null : on(gift.on)
}
const QUEENS_GIVEN: readonly string[] = ['mated-queen', 'virgin', 'queen-cell']

const isLook = (e: Entry): e is Inspection => e.kind === 'inspection' && e.opened

const BROOD: [field: 'eggs' | 'open' | 'capped', said: Record<string, string>][] = [
  ['eggs', { none: 'no eggs', single: 'eggs', multiple: 'several eggs in a cell' }],
  ['open', { none: 'no open brood', some: 'open brood', plenty: 'plenty of open brood' }],
  ['capped', { none: 'no capped brood', worker: 'capped worker brood', 'drone-in-worker': 'raised caps' }],
]

function broodSeen(entries: readonly StandingEntry[], on: (d: Day) => string): string[] {
  const look = entries.filter(isLook).findLast((e) => BROOD.some(([field]) => e[field] !== undefined))
  if (look === undefined) return ['Nobody has noted brood yet.']
  const seen = BROOD.flatMap(([field, said]) => said[look[field] ?? ''] ?? [])
  const counted = entries.filter(isLook).findLast((e) => e.framesOfBees !== undefined)
  const stores = entries.findLast((e) => e.kind === 'inspection' && e.stores !== undefined)
  return [
    `${on(look.on)}: ${seen.join(', ')}.`,
    ...(counted === undefined
      ? []
      : [`${counted.framesOfBees} frames covered with bees on ${on(counted.on)}.`]),
    ...(stores?.kind === 'inspection'
      ? [
          `Stores on ${on(stores.on)}: ${stores.stores}.${stores.stores === 'low' ? ' Feed them at dusk, inside.' : ''}`,
        ]
      : []),
  ]
}

function mites(entries: readonly StandingEntry[], on: (d: Day) => string): string[] {
  const wash = entries.findLast((e) => e.kind === 'mite-wash')
  if (wash?.kind !== 'mite-wash') return ['No mite wash was made: make one in the first week.']
  const per100 = Number(((wash.mites / wash.bees) * 100).toFixed(1))
  return [
    `${per100} ${per100 === 1 ? 'mite' : 'mites'} on 100 bees (${wash.mites} on ${wash.bees}), washed ${on(wash.on)}.`,
  ]
}

function diseaseLook(entries: readonly StandingEntry[], plan: Plan, on: (d: Day) => string): string[] {
  if (plan.advice.action === 'call-inspector')
    return ['Brood disease is suspected: they may not leave before the apiary inspector has said so.']
  const look = entries.filter(isLook).findLast((e) => e.signs !== undefined)
  if (look?.signs === undefined) return ['No look for signs of brood disease is noted.']
  const others = look.signs.filter((s) => s !== 'brood-disease-suspected')
  const cleared = entries.findLast((e) => e.kind === 'disease-cleared')
  return [
    `Looked for on ${on(look.on)}: no sign of foulbrood.${others.length === 0 ? '' : ` Seen: ${others.map((s) => SIGN_SEEN[s]).join(', ')}.`}`,
    ...(cleared === undefined ? [] : [`It had been suspected before, and was cleared on ${on(cleared.on)}.`]),
  ]
}

function treatments(entries: readonly StandingEntry[], asOf: Day, on: (d: Day) => string): string[] {
  const given = entries.flatMap((e) => (e.kind === 'given' && e.what === 'treatment' ? [e] : []))
  if (given.length === 0) return ['None is noted.']
  return given.map((e) => {
    const until = e.withdrawalDays === undefined ? null : addDays(e.on, e.withdrawalDays)
    const what = [e.product ?? 'against mites', e.batch === undefined ? '' : `batch ${e.batch}`]
    const withdrawal =
      until === null
        ? 'No withdrawal is noted: the label says it.'
        : until < asOf
          ? `Withdrawal ended ${on(until)}.`
          : `Nothing may be harvested for eating until ${on(until)}.`
    return `${on(e.on)}: ${what.filter(Boolean).join(', ')}. ${withdrawal}`
  })
}

function temper(entries: readonly StandingEntry[], on: (d: Day) => string): string[] {
  const said = entries.findLast((e) => e.kind === 'inspection' && e.temper !== undefined)
  if (said?.kind !== 'inspection' || said.temper === undefined) return []
  return [`${TEMPER_SAID[said.temper - 1]} on ${on(said.on)} (${said.temper} of 5, 5 is fierce).`]
}

const papers = (record: MoveRecord | null, asOf: Day, on: (d: Day) => string): string[] => {
  const permits = record?.permits ?? []
  const ended = papersEnded(permits, asOf)
  return permits.map((p) => {
    const until =
      p.until === undefined ? '' : ended.includes(p) ? `, ended ${on(p.until)}` : `, until ${on(p.until)}`
    return `${permitWords(p)}${p.issuedBy === undefined ? '' : `, ${p.issuedBy}`}${until}.`
  })
}

/** Days after coming in which a wash is made again, at the latest (common practice: monthly in the season). */
const WASH_EVERY = 30

function firstWeeks({ entries, intake }: History, asOf: Day, on: (d: Day) => string): string[] {
  const wash = entries.findLast((e) => e.kind === 'mite-wash')
  const next = wash === undefined ? null : addDays(wash.on, WASH_EVERY)
  const when = next === null || daysBetween(asOf, next) < 7 ? 'within the first week' : `about ${on(next)}`
  const tied = intake.tiedComb === true ? ['Old comb was tied into frames: hold it upright.'] : []
  return [
    ...FIRST_WEEKS,
    ...tied,
    `Mite wash ${when}, then monthly while they fly; treat by the label where you are.`,
  ]
}

/** The sheet as plain text, to be shared. */
export const keeperText = (sheet: KeeperSheet, yard: string): string =>
  [
    `${sheet.title}${yard === '' ? '' : `, from ${yard}`}, ${inWordsWithYear(sheet.asOf)}`,
    ...sheet.parts.map((p) => `${p.title}\n${p.sentences.map((s) => (p.list ? `- ${s}` : s)).join('\n')}`),
  ].join('\n\n')
