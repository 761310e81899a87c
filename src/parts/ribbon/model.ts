/**
 * The brood ribbon as data: what brood of which origin can be in the box on which day, when a queen is expected, when
 * the lid stays on, who looked when, and which windows are coming. Drawn by strip.tsx, said in words by words.ts.
 */
import { WORKER } from '../../biology/index.ts'
import { addDays, type Day, earlier, later, type Span } from '../../days.ts'
import type { Given, History, Inspection } from '../../journal/index.ts'
import {
  BROOD_GIFTS,
  broodAlong,
  type Check,
  type DayRange,
  type Plan,
  rulesWhere,
} from '../../recovery/index.ts'
import type { Words } from '../../words/index.ts'

/** `maybe` bands are expected or possible, the others are seen or follow from what was seen. */
export interface Band {
  kind: 'eggs' | 'open' | 'capped' | 'cell' | 'emergence' | 'mating' | 'caged' | 'first-egg' | 'broodless'
  from: Day
  to: Day
  maybe?: true
  /** The likeliest day within it. */
  likely?: Day
}

export interface Lane {
  of: 'along' | 'donor' | 'queen' | 'new-layer' | 'treatment'
  /** Its name in the catalogue. */
  name: keyof Words['ribbon']['lanes']
  bands: Band[]
}

export interface Tick {
  on: Day
  kind: 'opened' | 'lid-on' | 'given' | 'cage'
}

export interface Ribbon {
  /** First and last day of the strip, both included. */
  from: Day
  to: Day
  today: Day
  lanes: Lane[]
  quiet: DayRange | null
  ticks: Tick[]
  windows: Check[]
  /** The day the colony left, if it did. */
  left: Day | null
}

const LEAST_DAYS = 34
const MOST_AHEAD = 30

/** The ribbon of a colony as of the plan's day. */
export function ribbonOf(history: History, plan: Plan): Ribbon {
  const left = history.outcome?.on ?? null
  const lanes = [
    along(history),
    ...donors(history),
    queen(history, plan),
    newLayer(history, plan, left ?? plan.asOf),
    treatment(plan),
  ].filter((lane): lane is Lane => lane !== null && lane.bands.length > 0)
  const windows = left === null ? plan.checks.filter((c) => ASKED.includes(c.status)) : []
  const from = earlier(history.removedOn, history.intake.on)
  const to = left === null ? lastDay(from, plan, windows) : later(addDays(left, 2), addDays(from, 10))
  return {
    from,
    to,
    today: plan.asOf,
    lanes: lanes.flatMap((lane) => cut(lane, from, left === null ? to : earlier(to, left))),
    quiet: left === null ? plan.quiet : null,
    ticks: history.entries.flatMap(tickOf),
    windows,
    left,
  }
}

const ASKED: Check['status'][] = ['waiting', 'open', 'due', 'overdue']

function lastDay(from: Day, plan: Plan, windows: readonly Check[]): Day {
  const ends = [
    ...windows.map((w) => w.closes),
    ...[plan.spans.emergence, plan.spans.firstEgg, plan.spans.workerBroodProof].flatMap((s) =>
      s === undefined ? [] : [s.latest],
    ),
  ]
  const wanted = ends.reduce((a, b) => later(a, b), addDays(from, LEAST_DAYS))
  return later(
    addDays(plan.asOf, 3),
    earlier(wanted, later(addDays(from, LEAST_DAYS), addDays(plan.asOf, MOST_AHEAD))),
  )
}

/** The lane within the strip's days; bands wholly outside are dropped. */
function cut(lane: Lane, from: Day, to: Day): Lane[] {
  const bands = lane.bands
    .filter((b) => b.to >= from && b.from <= to)
    .map((b) => ({ ...b, from: later(b.from, from), to: earlier(b.to, to) }))
  return bands.length === 0 ? [] : [{ ...lane, bands }]
}

const STAGES = ['eggs', 'open', 'capped'] as const
const LASTS = { eggs: WORKER.hatch, open: WORKER.cap, capped: WORKER.emerge }

/** Youngest brood that a source with that last-egg day can still show, stage after stage, from the youngest it brought. */
function fading(lastEgg: Day, shownFrom: Day, youngest: (typeof STAGES)[number]): Band[] {
  const bands: Band[] = []
  let from = shownFrom
  for (const kind of STAGES.slice(STAGES.indexOf(youngest))) {
    const to = addDays(lastEgg, LASTS[kind])
    if (to >= from) bands.push({ kind, from, to })
    from = later(from, addDays(to, 1))
  }
  return bands
}

function along(history: History): Lane | null {
  const brood = broodAlong(history.intake)
  if (!brood.any) return null
  const b = history.intake.brood
  const youngest = b === undefined || (b.eggs ?? 0) > 0 ? 'eggs' : (b.open ?? 0) > 0 ? 'open' : 'capped'
  return {
    of: 'along',
    name: b === undefined ? 'perhapsAlong' : 'along',
    bands: fading(history.removedOn, history.removedOn, youngest),
  }
}

const GIFT_STAGE: Partial<Record<Given['what'], (typeof STAGES)[number]>> = {
  'egg-frame': 'eggs',
  'open-brood': 'open',
  'capped-brood': 'capped',
}
const donors = (history: History): Lane[] =>
  history.entries
    .filter((e): e is Given => e.kind === 'given' && BROOD_GIFTS.includes(e.what))
    .map((g) => ({
      of: 'donor' as const,
      name: g.what === 'egg-frame' || g.what === 'open-brood' || g.what === 'capped-brood' ? g.what : 'brood',
      bands: fading(g.on, g.on, GIFT_STAGE[g.what] ?? 'eggs'),
    }))

/** Cages, the queen being raised, her emergence and her mating. */
function queen(history: History, plan: Plan): Lane | null {
  const bands = cages(history, plan.asOf)
  const { emergence, firstEgg } = plan.spans
  if (emergence !== undefined) bands.push(...raised(history, emergence, firstEgg))
  return { of: 'queen', name: queenName(plan, emergence), bands }
}

/** While nobody has seen a cell, a queen being raised is only a hope. */
function queenName(plan: Plan, emergence: Span | undefined): Lane['name'] {
  if (emergence === undefined) return 'caged'
  return plan.phase === 'queenless' || plan.phase === 'queen-unknown' ? 'ifRaised' : 'raised'
}

function raised(history: History, emergence: Span, firstEgg: Span | undefined): Band[] {
  const seen = history.entries.find(
    (e) =>
      e.kind === 'inspection' && (e.cells === 'open' || e.cells === 'capped') && e.on <= emergence.latest,
  )
  // A queen is in her cell 13 days from hatching; what was seen says that it had begun.
  const begun = seen?.on ?? later(history.removedOn, addDays(emergence.earliest, -10))
  const bands: Band[] = []
  if (begun < emergence.earliest)
    bands.push({
      kind: 'cell',
      from: begun,
      to: addDays(emergence.earliest, -1),
      ...(seen ? {} : { maybe: true }),
    })
  bands.push({ kind: 'emergence', from: emergence.earliest, to: emergence.latest, likely: emergence.likely })
  if (firstEgg !== undefined && firstEgg.likely > emergence.latest)
    bands.push({
      kind: 'mating',
      from: addDays(emergence.latest, 1),
      to: addDays(firstEgg.likely, -1),
      maybe: true,
    })
  return bands
}

/** Days in a cage: from intake or introduction until she was found out of it, or until today. */
function cages(history: History, today: Day): Band[] {
  const bands: Band[] = []
  let since: Day | null = history.intake.queen === 'caged' ? history.intake.on : null
  for (const e of history.entries) {
    if (e.kind === 'given' && e.what === 'mated-queen' && e.caged !== false) since = e.on
    if (e.kind !== 'queen-cage' || since === null || e.found === 'still-caged') continue
    bands.push({ kind: 'caged', from: since, to: e.on })
    since = null
  }
  if (since !== null) bands.push({ kind: 'caged', from: since, to: later(since, today) })
  return bands
}

/** When no cell is capped: mites are on the bees, within reach of what works on bees alone. */
function treatment(plan: Plan): Lane | null {
  const window = plan.spans.broodless
  if (window === undefined) return null
  const bands: Band[] = [{ kind: 'broodless', ...window, maybe: true }]
  return { of: 'treatment', name: 'treatment', bands }
}

const EGG_RULES = rulesWhere((f) => f.finds === 'eggs')

/** The look at which eggs of a new layer were first proven, as far as the plan's answers tell. */
function firstEggs(history: History, plan: Plan): Inspection | undefined {
  if (plan.phase !== 'laying' && plan.phase !== 'queenright' && plan.phase !== 'closed') return undefined
  const answered = plan.checks.filter((c) => EGG_RULES.includes(c.rule)).map((c) => c.answeredOn)
  return history.entries.find(
    (e): e is Inspection =>
      e.kind === 'inspection' &&
      answered.includes(e.on) &&
      (e.eggs === 'single' || e.eggs === 'multiple' || e.open === 'some' || e.open === 'plenty'),
  )
}

/** The new queen's eggs: expected, or seen, with what they become. */
function newLayer(history: History, plan: Plan, until: Day): Lane | null {
  const seen = firstEggs(history, plan)
  const { firstEgg, workerBroodProof } = plan.spans
  if (seen === undefined) {
    if (firstEgg === undefined || plan.phase === 'closed') return null
    const bands: Band[] = [
      {
        kind: 'first-egg',
        from: firstEgg.earliest,
        to: firstEgg.latest,
        likely: firstEgg.likely,
        maybe: true,
      },
    ]
    return { of: 'new-layer', name: 'firstEggs', bands }
  }
  const capped = plan.checks.find((c) => c.rule === 'worker-brood')?.answeredOn
  const hatched = addDays(seen.on, WORKER.hatch)
  const sealed = capped ?? workerBroodProof?.likely ?? addDays(seen.on, WORKER.cap)
  const end = later(until, addDays(sealed, 3))
  const bands: Band[] = [{ kind: 'eggs', from: seen.on, to: earlier(hatched, addDays(sealed, -1)) }]
  if (addDays(hatched, 1) < sealed)
    bands.push({ kind: 'open', from: addDays(hatched, 1), to: addDays(sealed, -1) })
  bands.push({
    kind: 'capped',
    from: sealed,
    to: end,
    ...(capped === undefined ? { maybe: true as const } : {}),
  })
  return { of: 'new-layer', name: 'newBrood', bands: bands.filter((b) => b.from <= b.to) }
}

/** What was done at the box on a day, of which the strip has a mark of its own. */
function tickOf(e: History['entries'][number]): Tick[] {
  if (e.kind === 'inspection') return [{ on: e.on, kind: e.opened ? 'opened' : 'lid-on' }]
  if (e.kind === 'given') return [{ on: e.on, kind: 'given' }]
  return e.kind === 'queen-cage' ? [{ on: e.on, kind: 'cage' }] : []
}
