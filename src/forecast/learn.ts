/**
 * A yard's own rates, learned from its closed colonies and shown beside the defaults.
 *
 * A default counts for as many colonies as its `weight` in the table says; the yard's colonies are added as they come, each
 * with the odds that the thing was so in it (Beta updating with expected counts). Done twice, so that the second
 * reading of the colonies already uses what the first has taught (expectation-maximisation; Dempster, Laird & Rubin 1977).
 */
import { type History, queenTaken } from '../journal/index.ts'
import { toTheEnd } from '../steps.ts'
import { storyOf } from './queen-odds.ts'
import { DEFAULT_RATES, RATE_TABLE, type Rate, type RateName, type Rates, ratesWith } from './rates.ts'
import { hindsight, type LookInHindsight } from './story/back.ts'
import { type BroodSeen, broodSeen, CELL_SHOWS, CELL_SHOWS_LEAST, queenSeen } from './story/look.ts'
import { TALLY } from './story/night.ts'
import { aliveChance } from './story/start.ts'
import { Q, STATE, type State } from './story/state.ts'
import { listModelOf, type Model } from './story/walk.ts'

/** Rates that closed colonies can teach, with the two tallies that teach them (alive: read off the first day). */
const LEARNED = {
  cellEmerges: [TALLY.cellEmerged, TALLY.cellFailed],
  virginLays: [TALLY.virginLaid, TALLY.virginFailed],
  boughtTakes: [TALLY.boughtTook, TALLY.boughtRefused],
} as const
const ALIVE = {
  caged: 'aliveCaged',
  loose: 'aliveLoose',
  unseen: 'aliveUnseen',
  lost: 'aliveLost',
} as const satisfies Record<string, RateName>

export interface LearnedRate {
  name: RateName
  says: string
  /** The default, and how many colonies it counts for. */
  default: number
  weight: number
  /** Expected number of the yard's colonies in which it was so, and was not. */
  so: number
  not: number
  /** The yard's own rate, and its 80 % limits. */
  own: number
  low: number
  high: number
}

export interface Learned {
  /** Closed colonies read. */
  colonies: number
  rates: Rates
  table: LearnedRate[]
}

/** Share `q` of a Beta(a, b) lies below this, by summing its density at 2,000 points. Good to three digits. */
export function betaQuantile(q: number, a: number, b: number): number {
  const n = 2000
  const at = (i: number): number => (i + 0.5) / n
  const log = (x: number): number => (a - 1) * Math.log(x) + (b - 1) * Math.log(1 - x)
  let top = Number.NEGATIVE_INFINITY
  for (let i = 0; i < n; i++) top = Math.max(top, log(at(i)))
  let total = 0
  for (let i = 0; i < n; i++) total += Math.exp(log(at(i)) - top)
  let run = 0
  for (let i = 0; i < n; i++) {
    run += Math.exp(log(at(i)) - top)
    if (run >= q * total) return at(i)
  }
  return 1
}

/** A removal whose way shifts the odds by less than this is an ordinary one. */
const ORDINARY = 0.1

type Counts = Map<RateName, { so: number; not: number }>

/** Only colonies that were opened at least once teach anything; closed means that an outcome stands. */
const teaches = (h: History): boolean =>
  h.outcome !== null && h.entries.some((e) => e.kind === 'inspection' && e.opened)

function* readColonies(closed: readonly History[], rates: Rates): Generator<undefined, Counts> {
  const model = listModelOf(rates)
  const counts: Counts = new Map()
  const add = (name: RateName, so: number, not: number): void => {
    const known = counts.get(name) ?? { so: 0, not: 0 }
    counts.set(name, { so: known.so + so, not: known.not + not })
  }
  for (const h of closed) {
    const end = h.outcome?.on ?? h.intake.on
    const { start, tallies, looks } = hindsight(storyOf(h, end, model, end).walk, true)
    for (const look of looks) lookTeaches(look, model, add)
    const alive = start.states.reduce((sum, n, i) => {
      const s = STATE[n]
      const here = s !== undefined && (s.caged || s.stage === Q.settling || s.stage === Q.virgin)
      return here ? sum + (start.w[i] ?? 0) : sum
    }, 0)
    // The way of removal shifts the odds of an unseen queen; only ordinary removals teach the plain rate.
    const name = ALIVE[queenTaken(h.intake)]
    if (Math.abs(aliveChance(h.intake, rates) - rates[name]) < ORDINARY) add(name, alive, 1 - alive)
    for (const [name, [yes, no]] of Object.entries(LEARNED) as [RateName, readonly [number, number]][])
      add(name, tallies[yes] ?? 0, tallies[no] ?? 0)
    yield
  }
  return counts
}

const SEEING: readonly RateName[] = [
  'seesEggs',
  'seesOpen',
  'seesCapped',
  'seesCells',
  'seesQueen',
  'careless',
]

/** How likely a thing is there to be seen in a state, and the answers that say it was not seen. */
const THERE: Record<
  'eggs' | 'open' | 'capped' | 'cells' | 'queen',
  { rate: RateName; not: readonly string[] }
> = {
  eggs: { rate: 'seesEggs', not: ['none'] },
  open: { rate: 'seesOpen', not: ['none'] },
  capped: { rate: 'seesCapped', not: ['none'] },
  cells: { rate: 'seesCells', not: ['none', 'cups'] },
  queen: { rate: 'seesQueen', not: ['unseen'] },
}

/** Perfect sight: what a state shows to somebody who misses nothing. */
const ALL_SEEING = { seesEggs: 1, seesOpen: 1, seesCapped: 1, seesCells: 1, seesQueen: 1 }

function thereIn(s: State, what: keyof typeof THERE, brood: BroodSeen, rates: Rates): number {
  if (what === 'queen') return s.caged || s.stage === Q.virgin ? 0 : queenSeen(s, rates)
  if (what === 'cells') return s.stage === Q.raising ? (CELL_SHOWS[s.age] ?? CELL_SHOWS_LEAST) : 0
  return brood[what]
}

/**
 * What later looks say of an earlier one: of things that must have been there, how many were seen, and how many such looks
 * were made in haste. This is a yard's own contradictions, counted.
 */
function lookTeaches(
  look: LookInHindsight,
  model: Model,
  add: (n: RateName, so: number, not: number) => void,
): void {
  const sharp = { ...model.rates, ...ALL_SEEING }
  for (const { what, value } of look.sightings) {
    if (what === 'roar') continue
    const { rate, not } = THERE[what]
    const sees = model.seen[rate]
    let [seen, missed] = [0, 0]
    look.states.forEach((n, i) => {
      const s = STATE[n]
      const w = look.w[i] ?? 0
      if (s === undefined || w < 1e-6) return
      const there = thereIn(s, what, broodSeen(s, look.around, sharp), sharp)
      if (not.includes(value)) missed += (w * there * (1 - sees)) / (1 - there * sees)
      else if (there > 0) seen += w
    })
    add(rate, seen, missed)
  }
  if (look.said === undefined) add('careless', look.hasty, 1 - look.hasty)
}

function learnedFrom(counts: Counts): LearnedRate[] {
  const names = [...Object.values(ALIVE), ...(Object.keys(LEARNED) as RateName[]), ...SEEING]
  return names.map((name) => {
    const rate: Rate = RATE_TABLE[name]
    const weight = rate.weight ?? 10
    const { so, not } = counts.get(name) ?? { so: 0, not: 0 }
    const [a, b] = [rate.value * weight + so, (1 - rate.value) * weight + not]
    return {
      name,
      says: rate.says,
      default: rate.value,
      weight,
      so,
      not,
      own: a / (a + b),
      low: betaQuantile(0.1, a, b),
      high: betaQuantile(0.9, a, b),
    }
  })
}

/**
 * The rates of a yard, from its histories; open colonies are left out. Stops after every colony, about 2 ms of work, so
 * that a server can do other things in between.
 */
export function* learning(histories: readonly History[], rounds = 2): Generator<undefined, Learned> {
  const closed = histories.filter(teaches)
  let rates = DEFAULT_RATES
  let table = learnedFrom(new Map())
  for (let r = 0; r < rounds && closed.length > 0; r++) {
    table = learnedFrom(yield* readColonies(closed, rates))
    rates = ratesWith(Object.fromEntries(table.map((l) => [l.name, l.own])))
  }
  return { colonies: closed.length, rates, table }
}

/** The same in one go. */
export const learnRates = (histories: readonly History[], rounds = 2): Learned =>
  toTheEnd(learning(histories, rounds))
