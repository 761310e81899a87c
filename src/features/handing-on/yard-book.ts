/**
 * The yard book for the apiary inspector: colonies, movements, treatments and findings of health in a period. Pure.
 *
 * Columns are what authorities usually ask for (common practice; local rules decide). No customers: sites, notes, costs,
 * causes and buyers are never read. Of a colony that moved out, the yard it went to and the permits noted are listed.
 */

import { addDays, type Day } from '../../days.ts'
import type { Gift, History, StandingEntry } from '../../journal/index.ts'
import { type MoveRecord, permitWords } from '../../records/index.ts'

export interface Period {
  from: Day
  to: Day
}

/** A colony with what was noted of its move, when it left. */
export interface BookColony {
  id: string
  history: History
  record: MoveRecord | null
}

interface ColonyLine {
  tag: string
  /** Kind of removal: where it came from. */
  origin: string
  cameOn: Day
  /** Yard and stand at the end of the period, or when it left. */
  yard: string
  stand: string
  leftOn: Day | null
  /** How it left; null while it is there. */
  left: string | null
}

export interface MovementLine {
  on: Day
  tag: string
  what: 'came' | 'moved' | 'moved-out' | 'united' | 'died' | 'absconded' | 'other' | 'unknown'
  from: string
  to: string
  permits: string
}

interface TreatmentLine {
  on: Day
  tag: string
  yard: string
  what: Extract<Gift, 'treatment' | 'syrup' | 'pollen'>
  product: string
  litres: number | null
  kg: number | null
  batch: string
  /** First day on which harvesting for eating is allowed again, by the label; null when nobody noted it. */
  withdrawalUntil: Day | null
  by: string
}

interface HealthLine {
  on: Day
  tag: string
  yard: string
  what: 'mite-wash' | 'disease-suspected' | 'disease-cleared' | 'signs'
  /** Mites per 100 bees of a wash; signs seen; who cleared it. */
  per100: number | null
  detail: string
}

export interface YardBook {
  period: Period
  colonies: ColonyLine[]
  movements: MovementLine[]
  treatments: TreatmentLine[]
  health: HealthLine[]
}

/** Everything in the yard at some time of the period, in order of tag and day. */
export function yardBookOf(colonies: Iterable<BookColony>, period: Period): YardBook {
  const book: YardBook = { period, colonies: [], movements: [], treatments: [], health: [] }
  const all = [...colonies]
  const tags = new Map(all.map((c) => [c.id, c.history.tag]))
  for (const colony of all) {
    const { intake, outcome } = colony.history
    if (intake.on > period.to || (outcome !== null && outcome.on < period.from)) continue
    addTo(book, colony, tags)
  }
  book.colonies.sort((a, b) => inTagOrder(a.tag, b.tag) || byText(a.cameOn, b.cameOn))
  for (const lines of [book.movements, book.treatments, book.health])
    lines.sort((a, b) => byText(a.on, b.on) || inTagOrder(a.tag, b.tag))
  return book
}

function addTo(book: YardBook, { history, record }: BookColony, tags: ReadonlyMap<string, string>): void {
  const { period } = book
  const { tag, intake } = history
  let at = { yard: intake.yard, stand: intake.stand ?? '' }
  let left: { on: Day; what: string } | null = null
  for (const e of history.entries) {
    if (e.on > period.to) break
    const inside = e.on >= period.from
    const before = at.yard
    if (e.kind === 'move') at = { yard: e.yard, stand: e.stand ?? '' }
    if (e.kind === 'outcome') left = { on: e.on, what: e.what }
    if (!inside) continue
    const movement = movementOf(e, before, record, tags)
    if (movement !== null) book.movements.push({ on: e.on, tag, ...movement })
    const treatment = treatmentOf(e)
    if (treatment !== null) book.treatments.push({ on: e.on, tag, yard: at.yard, by: e.by, ...treatment })
    for (const found of healthOf(e)) book.health.push({ on: e.on, tag, yard: at.yard, ...found })
  }
  book.colonies.push({
    tag,
    origin: intake.removal.type,
    cameOn: intake.on,
    ...at,
    leftOn: left?.on ?? null,
    left: left?.what ?? null,
  })
}

function movementOf(
  e: StandingEntry,
  before: string,
  record: MoveRecord | null,
  tags: ReadonlyMap<string, string>,
): Omit<MovementLine, 'on' | 'tag'> | null {
  if (e.kind === 'intake') return { what: 'came', from: e.removal.type, to: e.yard, permits: '' }
  // Another stand of the same yard is no movement.
  if (e.kind === 'move')
    return e.yard === before ? null : { what: 'moved', from: before, to: e.yard, permits: '' }
  if (e.kind !== 'outcome') return null
  const moved = e.what === 'moved-out' || e.what === 'other' ? record : null
  const to =
    e.what === 'united'
      ? (tags.get(e.into ?? '') ?? e.into ?? '')
      : [moved?.yard, moved?.registration].filter((s) => s !== undefined).join(', ')
  const permits = (moved?.permits ?? []).map(permitWords).join('; ')
  return { what: e.what, from: before, to, permits }
}

function treatmentOf(e: StandingEntry): Omit<TreatmentLine, 'on' | 'tag' | 'yard' | 'by'> | null {
  if (e.kind !== 'given') return null
  if (e.what !== 'treatment' && e.what !== 'syrup' && e.what !== 'pollen') return null
  const { withdrawalDays } = e
  return {
    what: e.what,
    product: e.product ?? '',
    litres: e.litres ?? null,
    kg: e.kg ?? null,
    batch: e.batch ?? '',
    withdrawalUntil: withdrawalDays === undefined ? null : addDays(e.on, withdrawalDays),
  }
}

function healthOf(e: StandingEntry): Omit<HealthLine, 'on' | 'tag' | 'yard'>[] {
  if (e.kind === 'mite-wash')
    return [
      { what: 'mite-wash', per100: (e.mites / e.bees) * 100, detail: `${e.mites} mites, ${e.bees} bees` },
    ]
  if (e.kind === 'disease-cleared')
    return [
      {
        what: 'disease-cleared',
        per100: null,
        detail: [e.clearedBy, e.reference].filter((s) => s !== undefined).join(', '),
      },
    ]
  if (e.kind !== 'inspection') return []
  const suspected = e.signs?.includes('brood-disease-suspected') === true
  const others = (e.signs ?? []).filter((s) => s !== 'brood-disease-suspected' && s !== 'queenless-roar')
  return [
    ...(suspected ? [{ what: 'disease-suspected' as const, per100: null, detail: '' }] : []),
    ...(others.length > 0 ? [{ what: 'signs' as const, per100: null, detail: others.join(', ') }] : []),
  ]
}

const byText = (a: string, b: string): number => (a === b ? 0 : a < b ? -1 : 1)

const inTagOrder = (a: string, b: string): number => a.localeCompare(b, 'en', { numeric: true })
