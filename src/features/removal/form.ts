/** Each part of a removal sheet, read from its form and filled in again. */

import { type FieldProblem, fieldsIn, numberTyped, one, type Typed, typedFields } from '../../forms/index.ts'
import { problemsOf } from '../../journal/index.ts'
import {
  agreement,
  check,
  decision,
  EMPTY_SHEET,
  type ForecastHour,
  job,
  type Sheet,
  site,
  work,
} from '../../records/index.ts'
import { plain, type Units, unitOf } from '../../words/index.ts'
import { callOf, withCall, withSite } from './call.ts'
import { fieldsOfPart, HANGS, PART_FIELDS, TEMPERED } from './fields.ts'
import { withHow, withoutHow } from './none-found.ts'
import type { Part } from './stage.ts'

const SCHEMAS = { job, site, agreement, check, work, decision }

/** Rows for forecast hours on the form. */
export const FORECAST_ROWS = 8
const USUAL_HOURS = ['06:00', '08:00', '10:00', '12:00', '14:00', '16:00', '18:00', '20:00']

export interface PartDraft {
  raw: Record<string, unknown>
  problems: FieldProblem[]
}

/** What of the sheet a part's form leaves as it is: written on other pages, or by others. */
const KEPT: Partial<Record<Part, readonly string[]>> = {
  agreement: ['signature'],
  check: ['clearances', 'seconds', 'clearedBy'],
  site: ['lookedAt', 'noted', 'nearWires'],
  work: ['withoutGo', 'underGo', 'earlier', 'knew'],
}

/** The sheet with one part as it was typed, and what is wrong with it. */
export function sheetTyped(
  part: Part,
  typed: Typed,
  units: Units,
  before: Sheet = EMPTY_SHEET,
): { sheet: Sheet; problems: FieldProblem[] } {
  const { raw, problems } = partRead(part, typed, units)
  const kept = Object.fromEntries(
    (KEPT[part] ?? []).flatMap((key) => {
      const value = (before[part] as Record<string, unknown>)[key]
      return value === undefined ? [] : [[key, value]]
    }),
  )
  const made: Partial<Record<Part, object>> =
    part === 'job'
      ? withCall(before, raw)
      : { [part]: { ...(part === 'site' ? withSite(before, raw) : raw), ...kept } }
  const said = [...problems]
  for (const [name, content] of Object.entries(made))
    said.push(...schemaProblems(name as Part, { raw: content as Record<string, unknown>, problems: said }))
  return { sheet: { ...before, ...made } as Sheet, problems: said.map(atWhat) }
}

/** The kind of removal is asked as what they see. */
const atWhat = (p: FieldProblem): FieldProblem => (p.field === 'type' ? { ...p, field: 'what' } : p)

function partRead(part: Part, typed: Typed, units: Units): PartDraft {
  const { typed: plainly, how } = part === 'site' ? withoutHow(typed) : { typed, how: {} }
  const read = fieldsIn(fieldsOfPart(part), plainly, units)
  if (part === 'check') {
    const { hours, problems } = hoursTyped(typed, units)
    read.problems.push(...problems)
    if (hours.length > 0) read.raw.hours = hours
  }
  if (part === 'agreement') read.raw = priced(read.raw)
  if (part === 'site') read.raw = { ...scored(read.raw), ...how }
  return read
}

/** Temper is a number, or not known. */
const scored = (raw: Record<string, unknown>): Record<string, unknown> =>
  /^\d$/.test(String(raw.temper)) ? { ...raw, temper: Number(raw.temper) } : raw

/** The sheet with where a swarm hangs and how fierce they are, as it was asked beside the box. */
export function withSwarm(s: Sheet, typed: Typed, units: Units): { sheet: Sheet; problems: FieldProblem[] } {
  const { temper: _t, africanized: _a, ...site } = s.site
  const { raw, problems } = fieldsIn({ ...TEMPERED, ...HANGS }, typed, units)
  const content = { ...site, ...scored(raw) }
  problems.push(...schemaProblems('site', { raw: content, problems }))
  return { sheet: { ...s, site: content as Sheet['site'] }, problems }
}

const { hourly, hours, fixed } = PART_FIELDS.agreement
const PRICE = { hourly, hours, fixed }

/** Whoever has looked at the place can name the price: it is asked with it, once, and the agreement read at once. */
export const asksPrice = (part: Part, s: Sheet): boolean =>
  part === 'site' && s.agreement.pricing === undefined && s.agreement.signature === undefined

/** The sheet with the price that was typed with the site, where one was. */
export function withPrice(s: Sheet, typed: Typed, units: Units): { sheet: Sheet; problems: FieldProblem[] } {
  const { raw, problems } = fieldsIn(PRICE, typed, units)
  const content = priced({ ...s.agreement, ...raw })
  if (Object.keys(raw).length === 0) return { sheet: s, problems }
  problems.push(...schemaProblems('agreement', { raw: content, problems }))
  return { sheet: { ...s, agreement: content as Sheet['agreement'] }, problems }
}

/** Which price it is follows from the one that was typed: a fixed one beside the yard's usual rate, and no hours, is fixed. */
function priced(raw: Record<string, unknown>): Record<string, unknown> {
  if (raw.pricing !== undefined) return raw
  if (raw.hourly !== undefined && raw.fixed === undefined) return { ...raw, pricing: 'hourly' }
  if (raw.fixed !== undefined && (raw.hourly === undefined || raw.hours === undefined))
    return { ...raw, pricing: 'fixed' }
  return raw
}

/** What the schema says of a part, less what reading it has said of the same field. */
export function schemaProblems(part: Part | 'decision', { raw, problems }: PartDraft): FieldProblem[] {
  const parsed = SCHEMAS[part].safeParse(raw)
  if (parsed.success) return []
  const said = new Set(problems.map((p) => p.field))
  return problemsOf(parsed.error, raw)
    .map((p) => ({ field: fieldOf(p.field), message: p.message }))
    .filter((p) => !said.has(p.field))
}

const fieldOf = (path: string): string =>
  path === 'bees'
    ? 'bees.frames'
    : path
        .replace(/^hours\.(\d+)\.(at|c)$/, 'hours.$1.$2')
        .replace(/^(done|foundBy|behind|hazards|bystanders|closedUp|onTheWay|photos)\.\d+$/, '$1')

/** '7', '7:30', '0730' or '07:30' as '07:30'; null when it is no time of day. */
function hourTyped(text: string): string | null {
  const parts = text.match(/^(\d{1,2})(?:[:.]?([0-5]\d))?$/)
  if (parts === null || Number(parts[1]) > 23) return null
  return `${(parts[1] ?? '').padStart(2, '0')}:${parts[2] ?? '00'}`
}

/** Forecast hours: a row counts when its temperature is typed. */
function hoursTyped(typed: Typed, units: Units): { hours: ForecastHour[]; problems: FieldProblem[] } {
  const hours: ForecastHour[] = []
  const problems: FieldProblem[] = []
  const unit = unitOf(units, 'temperature')
  for (let i = 0; i < FORECAST_ROWS; i++) {
    const [at, shown] = [hourTyped(one(typed, `hours.${i}.at`)), one(typed, `hours.${i}.c`)]
    if (shown === '') continue
    const n = numberTyped(shown)
    if (n === null)
      problems.push({ field: `hours.${i}.c`, message: `must be a number, not “${shown.slice(0, 40)}”` })
    else if (unit.store(n) < -30 || unit.store(n) > 60)
      problems.push({
        field: `hours.${i}.c`,
        message: `cannot be ${shown} ${unit.symbol}: is it the right unit?`,
      })
    else if (at === null) problems.push({ field: `hours.${i}.at`, message: 'must be a time written HH:MM' })
    else hours.push({ at, c: unit.store(n) })
  }
  return { hours, problems }
}

/** A part as it would have been typed. */
export function typedPart(part: Part, s: Sheet, units: Units): Typed {
  if (part === 'job') return typedFields(PART_FIELDS.job, callOf(s), units)
  const typed = typedFields(fieldsOfPart(part), s[part], units)
  if (part === 'site') return withHow(typed, s.site)
  return part === 'check' ? { ...typed, ...typedHours(s.check.hours ?? [], units) } : typed
}

/** The forecast of a day that is gone is asked anew, hours and all; and of a clock that was ahead, by which it was ticked tomorrow. */
export function withoutOldForecast(s: Sheet, today: string): Sheet {
  const { on, hottestC: _c, hours: _h, from: _f, until: _u, ...check } = s.check
  return (on !== undefined && on < today) || (check.doneOn ?? today) > today ? { ...s, check } : s
}

/**
 * Whether the forecast of a form is the one that it was made from: its hours came back as they stood. One hottest hour alone may well be
 * the same on another day, and counts so only in a form of another day (`lay`).
 */
export function sameForecast(
  { check: is }: Sheet,
  { check: was }: Sheet,
  units: Units,
  lay: boolean,
): boolean {
  const { show } = unitOf(units, 'temperature')
  const as = (c: Sheet['check']): string =>
    (c.hours ?? []).map((h) => `${h.at} ${plain(show(h.c), 1)}`).join()
  const hottest = (c: Sheet['check']): string => (c.hottestC === undefined ? '' : plain(show(c.hottestC), 1))
  return as(is) === '' ? lay && hottest(is) === hottest(was) : as(is) === as(was)
}

function typedHours(hours: readonly ForecastHour[], units: Units): Typed {
  const { show } = unitOf(units, 'temperature')
  const rows = hours.map((h) => ({ at: h.at, c: plain(show(h.c), 1) }))
  const others = USUAL_HOURS.filter((at) => !rows.some((r) => r.at === at)).map((at) => ({ at, c: '' }))
  const all = [...rows, ...others]
    .slice(0, Math.max(FORECAST_ROWS, rows.length))
    .sort((a, b) => (a.at < b.at ? -1 : 1))
  return Object.fromEntries(
    all.flatMap((r, i) => [
      [`hours.${i}.at`, [r.at]],
      [`hours.${i}.c`, [r.c]],
    ]),
  )
}

/** The label of a field of a part, for the summary of problems. */
export function partLabel(part: Part | 'decision', field: string): string {
  const hour = field.match(/^hours\.(\d+)\.(at|c)$/)
  if (hour !== null) return `Forecast, row ${Number(hour[1]) + 1}`
  return fieldsOfPart(part)[field]?.label ?? ''
}
