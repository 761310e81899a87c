/** A history as a line of steps: nights, what was seen, what was done. */
import { RIPE_CELL_EMERGES } from '../../biology/index.ts'
import { addDays, type Day, dayNumber } from '../../days.ts'
import type { Given, History, Inspection, QueenCage, StandingEntry } from '../../journal/index.ts'
import { BROOD_GIFTS, type Month, matesIn, wasThereAt } from '../../recovery/index.ts'
import { type Around, type CageKind, GIFT_REACH, NOTHING_AROUND } from './around.ts'

type Act =
  /** A cage with a queen is put in. */
  | { act: 'cage' }
  /** A queen is put in free. */
  | { act: 'free' }
  /** The cage is opened, or found empty. */
  | { act: 'open-cage' }
  /** A ripe cell is put in. */
  | { act: 'cell' }
  /** The queen in the cage is dead or was killed at her release. */
  | { act: 'cage-lost'; found: 'dead' | 'rejected' }
  | { act: 'still-caged' }

export type Step = { kind: 'look'; entry: Inspection } | ({ kind: 'act'; entry: Given | QueenCage } & Act)

/** What happened on one day, and what is known to be in the box on it. */
export interface DayOfStory {
  /** Days since the removal. */
  t: number
  around: Around
  /** The same in the night that led to this day. */
  overnight: Around
  /** The same as it was when the box was looked at: frames given that day come after the look, as is the custom. */
  atTheLook: Around
  steps: Step[]
}

/** Days until a given ripe cell's queen leaves it, with chances; it is given about two days before. Judgement. */
export const GIVEN_CELL_DAYS: readonly (readonly [number, number])[] = [
  [1, 0.3],
  [RIPE_CELL_EMERGES, 0.35],
  [3, 0.15],
  [4, 0.08],
  [6, 0.07],
  [8, 0.05],
]

/** A queen lays two or three days after mating (Trunch BKA). */
const MATED_BEFORE_FIRST_EGG = 3

const YOUNG_GIFTS: Partial<Record<Given['what'], number>> = { 'egg-frame': 1, 'open-brood': 0.5 }

function actOf(e: Given | QueenCage): Act | null {
  if (e.kind === 'queen-cage') {
    if (e.found === 'released') return { act: 'open-cage' }
    return e.found === 'still-caged' ? { act: 'still-caged' } : { act: 'cage-lost', found: e.found }
  }
  if (e.what === 'queen-cell') return { act: 'cell' }
  if (e.what === 'mated-queen') return { act: e.caged === false ? 'free' : 'cage' }
  // A virgin is put in free unless it is said that she was caged.
  if (e.what === 'virgin') return { act: e.caged === true ? 'cage' : 'free' }
  return null
}

const cageKindOf = (e: Given): CageKind | null =>
  e.what === 'mated-queen' ? 'bought' : e.what === 'virgin' ? 'virgin' : null

/** At both ends of the season fewer drones fly and fewer days are fit for it: from nothing to the full in four weeks (judgement). */
const WEEKS_AROUND = [-4, -3, -2, -1, 0, 1, 2, 3, 4]

/** How readily a queen mates on that day, in quarters, 0-1; 1 where nobody said in which months. */
export function matesOnDay(months: readonly Month[], day: Day): Around['mates'] {
  if (months.length === 0) return 1
  if (!matesIn(months, day)) return 0
  const within = WEEKS_AROUND.filter((w) => matesIn(months, addDays(day, 7 * w))).length
  return Math.round(4 * Math.max(0, (2 * within) / WEEKS_AROUND.length - 1)) / 4
}

/** The days of a colony's story from the removal through `last`, with what is known up to `today`. */
export function daysOf(
  history: History,
  today: Day,
  last: Day,
  matingMonths: readonly Month[] = [],
): DayOfStory[] {
  const start = dayNumber(history.removedOn)
  const length = Math.max(0, dayNumber(last) - start)
  const known = history.entries.filter((e) => e.on <= today)
  const byDay = new Map<number, StandingEntry[]>()
  for (const e of known) {
    const t = Math.max(0, dayNumber(e.on) - start)
    byDay.set(t, [...(byDay.get(t) ?? []), e])
  }
  const { open, capped } = history.intake.brood ?? {}
  const cage: CageKind | null = history.intake.queen === 'caged' ? 'own' : null
  let seen: Seen = { gift: -1, worth: 0, capped: -1, cage, cagedOn: 0 }
  const days: DayOfStory[] = []
  for (let t = 0; t <= length; t++) {
    const steps: Step[] = []
    const entries = byDay.get(t) ?? NO_ENTRIES
    const mates = matesOnDay(matingMonths, addDays(history.removedOn, t - MATED_BEFORE_FIRST_EGG))
    const overnight = aroundOn(t, seen, mates, open, capped)
    if (entries.length === 0) {
      days.push({ t, around: overnight, overnight, atTheLook: overnight, steps: NO_STEPS })
      continue
    }
    const atTheLook = aroundOn(t, noted(seen, thereAtALook(entries), t), mates, open, capped)
    seen = noted(seen, entries, t)
    for (const e of entries) {
      if (e.kind === 'inspection') steps.push({ kind: 'look', entry: e })
      if (e.kind !== 'given' && e.kind !== 'queen-cage') continue
      const act = actOf(e)
      if (act !== null) steps.push({ kind: 'act', entry: e, ...act })
    }
    days.push({ t, around: aroundOn(t, seen, mates, open, capped), overnight, atTheLook, steps })
  }
  return days
}

const NO_STEPS: Step[] = []
const NO_ENTRIES: StandingEntry[] = []

interface Seen {
  gift: number
  worth: number
  capped: number
  cage: CageKind | null
  cagedOn: number
}

/** Frames of brood among one day's entries that may have been in the box when it was looked at. */
function thereAtALook(entries: readonly StandingEntry[]): StandingEntry[] {
  const looks = entries.filter((e) => e.kind === 'inspection')
  return entries.filter(
    (e) => e.kind === 'given' && BROOD_GIFTS.includes(e.what) && looks.some((look) => wasThereAt(e, look)),
  )
}

/** What is in the box after those entries of day `t`. */
function noted(before: Seen, entries: readonly StandingEntry[], t: number): Seen {
  const seen = { ...before }
  for (const e of entries) {
    if (e.kind !== 'given') continue
    const worth = YOUNG_GIFTS[e.what]
    if (worth !== undefined) Object.assign(seen, { gift: t, worth })
    if (e.what === 'capped-brood') seen.capped = t
    const cage = cageKindOf(e)
    if (cage !== null) Object.assign(seen, { cage, cagedOn: t })
  }
  return seen
}

function aroundOn(t: number, seen: Seen, mates: Around['mates'], open?: number, capped?: number): Around {
  const since = (day: number): number => (day < 0 || t - day > GIFT_REACH ? -1 : t - day)
  return {
    ...NOTHING_AROUND,
    gift: since(seen.gift),
    giftWorth: since(seen.gift) < 0 ? 0 : seen.worth,
    cappedGift: since(seen.capped),
    cage: seen.cage,
    cagedFor: seen.cage === null ? 0 : t - seen.cagedOn,
    // Brood that was not there at intake can come only from what was younger then.
    oldOpen: open !== 0 || t >= 1,
    oldCapped: capped !== 0 || t >= 3,
    mates,
  }
}
