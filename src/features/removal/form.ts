/** The fields of each part of a removal sheet, read both ways. A field's name in a form is its path in the part. */

import {
  type FieldProblem,
  type FieldSpec,
  fieldsIn,
  numberTyped,
  one,
  type Typed,
  typedFields,
} from '../../forms/index.ts'
import { problemsOf } from '../../journal/index.ts'
import { agreement, check, decision, type ForecastHour, job, site, work } from '../../records/index.ts'
import { plain, type Units, unitOf } from '../../words/index.ts'
import type { Part } from './stage.ts'

const text = (path: string, label: string): FieldSpec => ({ path, as: 'text', label })
const choice = (path: string, label: string): FieldSpec => ({ path, as: 'choice', label })
const list = (path: string, label: string): FieldSpec => ({ path, as: 'list', label })
const number = (path: string, label: string, more: Partial<FieldSpec> = {}): FieldSpec => ({
  path,
  as: 'number',
  label,
  min: 0,
  ...more,
})
const frames = (path: string, label: string): FieldSpec => number(path, label, { max: 60, orTyped: true })
const TEMPER: FieldSpec = { path: 'temper', as: 'whole', label: 'Temper', min: 1, max: 5 }

export const PART_FIELDS: Record<Part, FieldSpec[]> = {
  job: [
    text('name', 'Name'),
    text('phone', 'Telephone'),
    text('email', 'E-mail'),
    text('address', 'Address'),
    text('wayIn', 'The way in'),
    text('calledOn', 'Day of the call'),
    text('told', 'What they see'),
    text('plannedOn', 'Day planned'),
    text('plannedAt', 'Time planned'),
  ],
  site: [
    { ...text('type', 'Kind of removal'), orTyped: true },
    text('where', 'Where the bees are'),
    list('foundBy', 'How that was found'),
    text('foundNote', 'More about it'),
    choice('access', 'How one gets there'),
    number('heightM', 'Height', { quantity: 'height', max: 100 }),
    text('surface', 'What is cut'),
    number('sheathingMm', 'Thickness of the sheathing', { quantity: 'length', max: 500 }),
    list('behind', 'Behind the surface'),
    list('hazards', 'Hazards'),
    choice('old', 'Built before 1980'),
    text('behindNote', 'More about it'),
    choice('sprayed', 'Sprayed'),
    text('sprayedNote', 'With what, and when'),
    list('bystanders', 'Bystanders'),
    text('bystandersNote', 'More about them'),
    TEMPER,
    choice('africanized', 'Africanized bees established here'),
  ],
  agreement: [
    choice('pricing', 'Price'),
    number('hourly', 'Price of an hour', { max: 1_000_000 }),
    number('hours', 'Hours expected', { max: 1000 }),
    number('fixed', 'Fixed price', { max: 1_000_000 }),
    text('extra', 'Agreed for this job'),
  ],
  check: [
    text('on', 'Day of the forecast'),
    text('from', 'Work from'),
    text('until', 'Work until'),
    number('cutMm', 'Cutting depth', { quantity: 'length', max: 500 }),
    choice('vacuum', 'How the bees come off'),
    list('done', 'Checked'),
    text('clearedBy', 'Cleared by the licensed trade'),
  ],
  work: [
    text('on', 'Day of the removal'),
    text('arrivedAt', 'Arrived'),
    text('openedAt', 'Opened'),
    text('boxedAt', 'Boxed'),
    text('leftAt', 'Left'),
    number('outdoorC', 'Outdoor temperature', { quantity: 'temperature', min: -30, max: 60 }),
    choice('method', 'How the bees came off'),
    choice('queen', 'The queen'),
    text('queenFoundAt', 'Queen found at'),
    frames('brood.eggs', 'Frames with eggs'),
    frames('brood.open', 'Frames with open brood'),
    frames('brood.capped', 'Frames with capped brood'),
    choice('broodCare', 'How the brood travelled'),
    choice('queenCells', 'Queen cells'),
    frames('bees.frames', 'Frames covered with bees'),
    number('bees.kg', 'Weight of bees', { quantity: 'weight', max: 20 }),
    number('deadBeesKg', 'Dead bees in the box', { quantity: 'weight', max: 20 }),
    { path: 'tiedComb', as: 'yes-no', label: 'Comb tied in with bands' },
    TEMPER,
    choice('sealed', 'The entrance'),
    choice('cleaned', 'The comb'),
    text('left', 'Left to the owner'),
    text('note', 'Note about the bees'),
  ],
}

export const DECISION_FIELDS: FieldSpec[] = [
  choice('is', 'Decision'),
  text('by', 'Who decides'),
  text('reason', 'Reason'),
]

const SCHEMAS = { job, site, agreement, check, work, decision }

/** Rows for forecast hours on the form. */
export const FORECAST_ROWS = 8
const USUAL_HOURS = ['06:00', '08:00', '10:00', '12:00', '14:00', '16:00', '18:00', '20:00']

export interface PartDraft {
  raw: Record<string, unknown>
  problems: FieldProblem[]
}

/** One part as read from its form, held against its schema. */
export function partTyped(part: Part, typed: Typed, units: Units): PartDraft {
  const read = fieldsIn(PART_FIELDS[part], typed, units)
  if (part === 'check') {
    const { hours, problems } = hoursTyped(typed, units)
    read.problems.push(...problems)
    if (hours.length > 0) read.raw.hours = hours
  }
  return { raw: read.raw, problems: [...read.problems, ...schemaProblems(part, read)] }
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
        .replace(/^(done|foundBy|behind|hazards|bystanders)\.\d+$/, '$1')

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
export function typedPart(part: Part, from: object, units: Units): Typed {
  const typed = typedFields(PART_FIELDS[part], from, units)
  return part === 'check'
    ? { ...typed, ...typedHours('hours' in from ? (from.hours as ForecastHour[]) : [], units) }
    : typed
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
  const specs = part === 'decision' ? DECISION_FIELDS : PART_FIELDS[part]
  return specs.find((s) => s.path === field)?.label ?? ''
}
