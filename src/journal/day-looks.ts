/**
 * Looks of one day add up, whoever made them: one saw eggs, another counted the bees. What was seen outweighs what was not,
 * for a thing is missed more easily than imagined; where two looks disagree, that is said.
 */
import type { Inspection } from './entry.ts'
import type { StandingEntry } from './history.ts'

/** One day on which two looks disagree, and what about. */
export interface Disagreement {
  on: string
  about: ('eggs' | 'open brood' | 'capped brood' | 'queen cells')[]
}

const LEVELS = {
  eggs: ['none', 'single', 'multiple'],
  open: ['none', 'some', 'plenty'],
  capped: ['none', 'worker', 'drone-in-worker'],
  queen: ['unseen', 'seen'],
  cells: ['none', 'cups', 'torn-down', 'open', 'emerged', 'capped'],
  stores: ['heavy', 'enough', 'low'],
} as const

function most<T extends string>(levels: readonly T[], a: T | undefined, b: T | undefined): T | undefined {
  if (a === undefined || b === undefined) return a ?? b
  return levels.indexOf(a) >= levels.indexOf(b) ? a : b
}

/** Whether a look says nothing at all: a lid lifted and nothing noted answers nothing, and no plan can read a photo. */
export function saysNothing(look: Inspection): boolean {
  const { id, colony, kind, on, at, by, replaces, opened, photos, ...noted } = look
  return Object.values(noted).every((v) => v === undefined)
}

const holds = (cells: Inspection['cells']): boolean => cells === 'open' || cells === 'capped'
const empty = (cells: Inspection['cells']): boolean => cells === 'none' || cells === 'cups'

function disagreements(a: Inspection, b: Inspection): Disagreement['about'] {
  const apart = (x: string | undefined, y: string | undefined): boolean =>
    x !== undefined && y !== undefined && (x === 'none') !== (y === 'none')
  return [
    ...(apart(a.eggs, b.eggs) ? (['eggs'] as const) : []),
    ...(apart(a.open, b.open) ? (['open brood'] as const) : []),
    ...(apart(a.capped, b.capped) ? (['capped brood'] as const) : []),
    ...((holds(a.cells) && empty(b.cells)) || (empty(a.cells) && holds(b.cells))
      ? (['queen cells'] as const)
      : []),
  ]
}

const defined = <T extends object>(o: T): T =>
  Object.fromEntries(Object.entries(o).filter(([, v]) => v !== undefined)) as T

/** Two looks of a day as one. */
function together(a: Inspection, b: Inspection): Inspection {
  const fresh = a.onFreshComb === b.onFreshComb ? a.onFreshComb : (a.onFreshComb ?? b.onFreshComb)
  return defined({
    ...a,
    ...b,
    // The later time: what went in between them may be what the later one saw.
    at: a.at === undefined || b.at === undefined ? undefined : b.at,
    eggs: most(LEVELS.eggs, a.eggs, b.eggs),
    open: most(LEVELS.open, a.open, b.open),
    capped: most(LEVELS.capped, a.capped, b.capped),
    queen: most(LEVELS.queen, a.queen, b.queen),
    cells: most(LEVELS.cells, a.cells, b.cells),
    stores: most(LEVELS.stores, a.stores, b.stores),
    onFreshComb:
      a.onFreshComb !== undefined && b.onFreshComb !== undefined && a.onFreshComb !== b.onFreshComb
        ? false
        : fresh,
    cellCount: a.cellCount === undefined ? b.cellCount : Math.max(a.cellCount, b.cellCount ?? 0),
    signs: a.signs === undefined ? b.signs : [...new Set([...a.signs, ...(b.signs ?? [])])].sort(),
    temper: a.temper === undefined ? b.temper : Math.max(a.temper, b.temper ?? 0),
    searched: a.searched === 'thoroughly' ? a.searched : (b.searched ?? a.searched),
  })
}

/** Between two looks, this makes them looks at different boxes. */
const parts = (e: StandingEntry): boolean =>
  e.kind === 'given' || e.kind === 'queen-cage' || e.kind === 'outcome'

/** The entries, in order, with the looks of each day put together; and the days on which they disagree. */
export function withDayLooks(entries: readonly StandingEntry[]): {
  entries: StandingEntry[]
  disagree: Disagreement[]
} {
  const out: StandingEntry[] = []
  const disagree: Disagreement[] = []
  for (const e of entries) {
    const i = e.kind === 'inspection' && e.opened ? lookBefore(out, e) : -1
    const before = out[i]
    if (e.kind !== 'inspection' || before?.kind !== 'inspection') {
      out.push(e)
      continue
    }
    const about = disagreements(before, e)
    if (about.length > 0) disagree.push({ on: e.on, about })
    out[i] = together(before, e)
  }
  return { entries: out, disagree }
}

/** Where an open look of the same day stands, with nothing between that parts them; -1 when there is none. */
function lookBefore(out: readonly StandingEntry[], look: Inspection): number {
  for (let i = out.length - 1; i >= 0; i--) {
    const e = out[i]
    if (e === undefined || e.on !== look.on || parts(e)) return -1
    if (e.kind === 'inspection' && e.opened) return i
  }
  return -1
}
