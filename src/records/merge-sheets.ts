/**
 * Two people changed one sheet, one of them without signal: field by field, what only one of them changed is kept. Where
 * both said something else of the same field, that is a clash, named and left to a person. What is found at a wall adds up:
 * a hazard that either of them saw is on the sheet.
 */
import { LETTERS } from './letters.ts'
import type { Sheet } from './removal-sheet.ts'

export interface Merged {
  sheet: Sheet
  /** Fields of which both said something else, as 'part.field'. */
  clashes: string[]
  /** Those of them in which the careful answer stays, or the words of both, whoever is to stand. */
  settled: string[]
}

type Tree = Record<string, unknown>

const PARTS = ['job', 'site', 'agreement', 'check', 'work'] as const
/** Said at different times by different people: both are kept. */
const ADDING_UP = new Set(['check.clearances', 'site.noted', 'callBacks', 'boxes', 'work.earlier'])
/** Lists of what is there, or signed for: one's additions and the other's, less what either took off. */
const FOUND = new Set([
  'check.seconds',
  'site.behind',
  'site.hazards',
  'site.bystanders',
  'job.photos',
  'site.photos',
  'work.photos',
])

/** What is so on one day, or at one hour, only: the later one stands whole, and nothing of yesterday gets today's date. */
const OF_A_DAY = [
  { part: 'check', day: 'doneOn', hour: 'tickedAt', goes: ['done', 'doneAt', 'tickedAt', 'wires'] },
  { part: 'check', day: 'on', goes: ['hours', 'hottestC', 'from', 'until'] },
  {
    part: 'work',
    day: 'on',
    goes: ['outdoorC', 'water'],
    hours: ['arrivedAt', 'openedAt', 'leftAt', 'underGo', 'knew'],
  },
] as const

type Choose = (m: unknown, t: unknown) => unknown
const worse =
  (...order: unknown[]): Choose =>
  (m, t) =>
    order.find((x) => x === m || x === t) ?? m
const by =
  (of: (...n: number[]) => number): Choose =>
  (m, t) =>
    typeof m === 'number' && typeof t === 'number' ? of(m, t) : (m ?? t)

/** Theirs first; what stands among the other one’s words is there already. */
function wordsOfBoth(most: number, m: unknown, t: unknown): string | undefined {
  const said = [t, m].filter((x) => typeof x === 'string')
  const [one = '', two = ''] = said
  const whole = said.find((x) => x.includes(one) && x.includes(two))
  const both = said.join('. ')
  return (
    whole ?? ((both.length > most ? said.map((x) => x.slice(0, most / 2 - 1)).join('. ') : both) || undefined)
  )
}

/** Of each hour the hotter forecast, for as many hours as a sheet takes. */
function hottestOfEach(m: unknown, t: unknown): unknown {
  const hours = [...list(m), ...list(t)] as { at: string; c: number }[]
  const hottest = new Map<string, number>()
  for (const { at, c } of hours) hottest.set(at, Math.max(c, hottest.get(at) ?? c))
  return [...hottest]
    .sort()
    .map(([at, c]) => ({ at, c }))
    .slice(0, 24)
}

/** Where both said something else of what a “go” rests on, the careful answer stays, whoever says that theirs is to stand. */
const CAREFUL: Record<string, Choose> = {
  'job.bees': worse('wasps', 'unsure', 'nest'),
  'site.temper': worse('unknown', 5, 4, 3, 2),
  'site.africanized': worse('yes', 'unknown'),
  'site.old': worse('yes', 'unknown'),
  'site.sprayed': worse('yes', 'unknown'),
  'site.access': worse('roof', 'lift', 'ladder', 'step-ladder'),
  'site.heightM': by(Math.max),
  'site.sheathingMm': by(Math.min),
  'site.behindHow': worse('owner'),
  'site.oldHow': worse('untouched'),
  'check.cutMm': by(Math.max),
  'check.hottestC': by(Math.max),
  'check.hours': hottestOfEach,
  'check.vacuum': worse('shop-vacuum'),
  'check.wires': worse('near', 'unknown'),
  'work.outdoorC': by(Math.max),
  'work.temper': worse(5, 4, 3, 2),
}

/** Where they look elsewhere, what only one of them says is of another wall. */
const OF_THE_PLACE = [
  ['job', 'address'],
  ['site', 'where'],
  ['site', 'surface'],
  ['site', 'type'],
] as const

/** Both sides of a part; what one of them says of an earlier day or hour than the other, as if it had said nothing. */
function ofOneDay(part: string, b: Tree, mine: Tree, theirs: Tree): [Tree, Tree] {
  let [m, t] = [mine, theirs]
  for (const { day, goes, ...rest } of OF_A_DAY.filter((x) => x.part === part)) {
    if (typeof m[day] !== 'string' || typeof t[day] !== 'string') continue
    const hour = 'hour' in rest ? rest.hour : day
    const [ofMine, ofTheirs] = [m, t].map((x) => `${x[day]} ${x[hour] ?? ''}`) as [string, string]
    if (ofMine === ofTheirs) continue
    // The hours of a visit that lies under `earlier` on the other side are none of the one that stands.
    const goneOn = (ofMine < ofTheirs ? t : m).earlier !== undefined
    const hours = 'hours' in rest && goneOn ? rest.hours : []
    const before = Object.fromEntries([day, ...goes, ...hours].map((key) => [key, b[key]]))
    if (ofMine < ofTheirs) m = { ...m, ...before }
    else t = { ...t, ...before }
  }
  return [m, t]
}

/** Letters of a field in which what both said stands side by side, whole; a third that crosses is cut. Undefined for any other. */
const lettersOf = (path: string): number | undefined => (LETTERS as Readonly<Record<string, number>>)[path]

export const isWords = (path: string): boolean => lettersOf(path) !== undefined

/** What both mean. The careful answer, or `stands`, stands where it clashes: whether it may is for the caller to say. */
export function mergeSheets(base: Sheet, mine: Sheet, theirs: Sheet, stands = mine): Merged {
  const clashes: string[] = []
  const settled: string[] = []
  const apart = OF_THE_PLACE.some(([part, key]) => {
    const [b, m, t] = [base, mine, theirs].map((s) => (s[part] as Tree)[key])
    return !same(m, b) && !same(t, b) && !same(m, t)
  })
  const field = (path: string, b: unknown, m: unknown, t: unknown): unknown => {
    if (same(m, t)) return m
    if (same(m, b) || same(t, b)) {
      const only = same(m, b) ? t : m
      return apart && m !== undefined && t !== undefined ? (CAREFUL[path]?.(only, b) ?? only) : only
    }
    if (ADDING_UP.has(path)) return union(t, m)
    if (FOUND.has(path)) return found(b, m, t)
    // New is what either of two who began did not know.
    if (path === 'work.knew') return list(m).filter((x) => list(t).includes(x))
    // Where both looked somewhere else, nobody has looked here.
    if (path === 'site.lookedAt') return agreed(b, m, t)
    // One “go” that fell on both sides, each at its own hour, fell.
    if (path === 'decision' && same(unfallen(m), unfallen(t))) return (t as Tree).fell === undefined ? m : t
    // Decided over the other, which was read: that answers it.
    if (path === 'decision' && (isOver(m, t) || isOver(t, m))) return isOver(m, t) ? m : t
    clashes.push(path)
    const most = lettersOf(path)
    const choose = CAREFUL[path]
    const careful = most === undefined ? choose?.(m, t) : wordsOfBoth(most, m, t)
    const isSettled = most !== undefined || (choose !== undefined && same(careful, choose(t, m)))
    if (isSettled) settled.push(path)
    return isSettled ? careful : stands === mine ? m : t
  }
  const merged: Tree = {}
  for (const part of PARTS) {
    const [m, t] = ofOneDay(part, base[part], mine[part], theirs[part])
    merged[part] = fields(base[part], m, t, `${part}.`, field)
  }
  if (tickedApart(base.check, mine.check, theirs.check)) {
    const check = merged.check as Tree
    check.done = []
    delete check.wires
  }
  for (const key of ['decision', 'ended', 'callBacks', 'boxes'] as const) {
    const value = field(key, base[key], mine[key], theirs[key])
    if (value !== undefined) merged[key] = value
  }
  return { sheet: merged as unknown as Sheet, clashes, settled }
}

/** Both ticked, and not at the same place: what is so at the one says nothing of the other. */
function tickedApart(b: Tree, m: Tree, t: Tree): boolean {
  const ticks = ({ done, doneAt, wires }: Tree): unknown => [done, doneAt, wires]
  return !same(m.doneAt, t.doneAt) && !same(ticks(m), ticks(b)) && !same(ticks(t), ticks(b))
}

type FieldOf = (path: string, b: unknown, m: unknown, t: unknown) => unknown

function fields(b: Tree, m: Tree, t: Tree, at: string, field: FieldOf): Tree {
  const made: Tree = {}
  for (const key of new Set([...Object.keys(b), ...Object.keys(m), ...Object.keys(t)])) {
    const value = field(at + key, b[key], m[key], t[key])
    if (value !== undefined) made[key] = value
  }
  return made
}

const list = (x: unknown): unknown[] => (Array.isArray(x) ? x : [])
const key = (x: unknown): string => JSON.stringify(x, (_k, v) => sorted(v)) ?? ''
const sorted = (v: unknown): unknown =>
  v !== null && typeof v === 'object' && !Array.isArray(v)
    ? Object.fromEntries(Object.entries(v).sort(([a], [b]) => (a < b ? -1 : 1)))
    : v
const same = (a: unknown, b: unknown): boolean => key(a) === key(b)

/** Whether one decision went over the other. */
export const isOver = (one: unknown, other: unknown): boolean => {
  const [over, was] = [(one as Tree | undefined)?.over, other] as (Tree | undefined)[]
  return over !== undefined && was !== undefined && ['by', 'on', 'at'].every((k) => over[k] === was[k])
}

/** A decision, whether it stands or fell. */
export const unfallen = (decision: unknown): Tree => ({ ...(decision as Tree | undefined), fell: undefined })

const union = (a: unknown, b: unknown): unknown[] => {
  const seen = new Set(list(a).map(key))
  return [...list(a), ...list(b).filter((x) => !seen.has(key(x)))]
}

function agreed(b: unknown, m: unknown, t: unknown): Tree {
  const [base, mine, theirs] = [b, m, t].map((x) => (x ?? {}) as Tree) as [Tree, Tree, Tree]
  const keys = [...new Set([...Object.keys(mine), ...Object.keys(theirs)])]
  return Object.fromEntries(
    keys.flatMap((k): [string, unknown][] => {
      const at = same(mine[k], base[k]) ? theirs[k] : mine[k]
      const clear = same(mine[k], base[k]) || same(theirs[k], base[k]) || same(mine[k], theirs[k])
      return clear && at !== undefined ? [[k, at]] : []
    }),
  )
}

function found(b: unknown, m: unknown, t: unknown): unknown[] {
  const [ofMine, ofTheirs] = [m, t].map((x) => new Set(list(x).map(key))) as [Set<string>, Set<string>]
  const gone = new Set(
    list(b)
      .map(key)
      .filter((k) => !ofMine.has(k) || !ofTheirs.has(k)),
  )
  return union(t, m).filter((x) => !gone.has(key(x)))
}
