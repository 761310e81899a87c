/**
 * How the odds kept their word in a yard of one's own. What was so in a box nobody knows, but what a look found is in the
 * book: before every look the odds, knowing only what was in the book by then, say how likely eggs were to be found.
 */
import type { History, Inspection } from '../journal/index.ts'
import type { CalibrationBin } from './calibration-data.ts'
import { oddsToday, storyOf } from './queen-odds.ts'
import type { Rates } from './rates.ts'
import { KINDS, type Kind } from './story/kinds.ts'
import { broodSeen, eggsChances } from './story/look.ts'
import { STATE } from './story/state.ts'
import { listModelOf, type Model } from './story/walk.ts'

export interface OwnCalibration {
  /** Looks that noted eggs or none. */
  looks: number
  colonies: number
  /** Looks that found eggs. */
  found: number
  /** Five, by odds given: under 20 %, 20 to 40 %, …; those without a look are left out. */
  bins: CalibrationBin[]
  /** Mean squared error of the odds (0 perfect, 1 the worst), and of giving the overall share every time. */
  brier: number
  brierOfShare: number
  /** The same by the story that was likeliest before the look: pooled, errors of one kind hide those of another. */
  byKind: KindTrust[]
}

/** Looks before which a story was the likeliest: the mean chance of eggs that was given, and the share that found them. */
export interface KindTrust extends CalibrationBin {
  kind: Kind
}

interface Given {
  odds: number
  kind?: Kind
  found: boolean
}

const BINS = 5

const notesEggs = (e: History['entries'][number]): e is Inspection =>
  e.kind === 'inspection' && e.opened && e.eggs !== undefined

/** Chance that a look finds eggs, from what was in the book before it; null for a look before anything can be said. */
export const eggsForeseen = (history: History, look: Inspection, model: Model): number | null =>
  foreseen(history, look, model)?.odds ?? null

/** The same with the story that was likeliest then. */
function foreseen(history: History, look: Inspection, model: Model): { odds: number; kind: Kind } | null {
  const before = history.entries.slice(0, history.entries.indexOf(look))
  if (before.length === 0) return null
  const story = storyOf({ ...history, entries: before, outcome: null }, look.on, model, look.on)
  const [shares, day] = [story.walk.byDay[story.t], story.days[story.t]]
  if (shares === undefined || day === undefined) return null
  let [none, all] = [0, 0]
  shares.states.forEach((n, i) => {
    const s = STATE[n]
    const w = shares.w[i] ?? 0
    if (s === undefined) return
    all += w
    none += w * eggsChances(s, broodSeen(s, day.around, model.seen), model.seen)[0]
  })
  if (all === 0) return null
  const odds = oddsToday(story)
  const kind = KINDS.reduce((a, b) => (odds[b] > odds[a] ? b : a))
  return { odds: 1 - none / all, kind }
}

/** Every look of these colonies. Stops after each colony, so that a server can do other things in between. */
export function* calibrating(
  histories: readonly History[],
  rates: Rates,
): Generator<undefined, OwnCalibration> {
  const model = listModelOf(rates)
  const given: Given[] = []
  let colonies = 0
  for (const history of histories) {
    const looks = history.entries.filter(notesEggs)
    if (looks.length === 0) continue
    colonies++
    for (const look of looks) {
      const said = foreseen(history, look, model)
      if (said !== null) given.push({ ...said, found: look.eggs !== 'none' })
    }
    yield
  }
  return { colonies, ...summed(given), byKind: byKind(given) }
}

const binOf = (here: readonly Given[]): CalibrationBin => ({
  n: here.length,
  given: here.reduce((sum, g) => sum + g.odds, 0) / here.length,
  so: here.filter((g) => g.found).length / here.length,
})

/** By the likeliest story, the most looks first. */
const byKind = (given: readonly Given[]): KindTrust[] =>
  KINDS.map((kind) => ({ kind, here: given.filter((g) => g.kind === kind) }))
    .filter(({ here }) => here.length > 0)
    .map(({ kind, here }) => ({ kind, ...binOf(here) }))
    .sort((a, b) => b.n - a.n)

/** Forecasts held against what came. */
export function summed(given: readonly Given[]): Omit<OwnCalibration, 'colonies' | 'byKind'> {
  const looks = given.length
  const found = given.filter((g) => g.found).length
  const share = looks === 0 ? 0 : found / looks
  const squares = (odds: (g: Given) => number): number =>
    looks === 0 ? 0 : given.reduce((sum, g) => sum + (odds(g) - (g.found ? 1 : 0)) ** 2, 0) / looks
  const bins = Array.from({ length: BINS }, (_, b) =>
    given.filter((g) => Math.min(BINS - 1, Math.floor(g.odds * BINS)) === b),
  )
    .filter((here) => here.length > 0)
    .map(binOf)
  return { looks, found, bins, brier: squares((g) => g.odds), brierOfShare: squares(() => share) }
}
