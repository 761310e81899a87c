/** What still has to be asked of the operator before a sheet can be taken in. */
import { FIELDS, type Field } from './fields.ts'
import { columnsOf, isOwnFormat, type Mapping } from './mapping.ts'
import { LONG_BLANK, WORDED, type Worded } from './words.ts'

export interface ColumnProblem {
  /** The column it is about; null: one is missing. */
  column: number | null
  field: Field
  what: 'twice' | 'missing'
}

/** Columns that cannot stand as they are: two for one field, none for the day. */
export function columnProblems({ targets }: Pick<Mapping, 'targets'>): ColumnProblem[] {
  const problems: ColumnProblem[] = []
  for (const field of FIELDS) {
    if (field === 'note') continue
    for (const column of columnsOf(targets, field).slice(1)) problems.push({ column, field, what: 'twice' })
  }
  const hasDay = (['intake_on', 'removed_on'] as const).some((f) => columnsOf(targets, f).length > 0)
  return hasDay ? problems : [...problems, { column: null, field: 'intake_on', what: 'missing' }]
}

export interface Questions {
  order: boolean
  heat: boolean
  words: Worded[]
  /** Names written in several ways. */
  names: boolean
  /** Rows name no yard. */
  yard: boolean
  removalType: boolean
  tagPrefix: boolean
}

/** The questions whose answers are not in the sheet itself; those answered already are among them, to be changed. */
export function questionsOf(mapping: Mapping): Questions {
  const { targets, found, sheet, words } = mapping
  const lacks = (field: Field): boolean => columnsOf(targets, field).length === 0
  const own = isOwnFormat(sheet)
  const [yardColumn] = columnsOf(targets, 'yard')
  return {
    order: found.mixed || (found.order === null && found.ambiguous !== null),
    heat: !lacks('outdoor_c') && !own,
    words: WORDED.filter(
      (w) =>
        (words[w]?.length ?? 0) > 0 &&
        !(own && words[w]?.every((x) => x.meaning !== null && x.key !== LONG_BLANK)),
    ),
    names: mapping.names.length > 0,
    yard: yardColumn === undefined || sheet.rows.some((r) => r.fields[yardColumn] === ''),
    removalType: lacks('removal_type'),
    tagPrefix: lacks('tag'),
  }
}

/** Whether anything keeps the sheet from being converted: dates and degrees that can be read two ways. */
export const isAnswered = (mapping: Mapping): boolean => {
  const asked = questionsOf(mapping)
  return (
    (!asked.order || mapping.order !== null) &&
    (!asked.heat || mapping.heat !== null) &&
    (!asked.removalType || mapping.removalType !== '')
  )
}

/** A sheet that can go straight to its preview: the colonies CSV itself, with nothing to ask but the yard. */
export function needsNoWords(mapping: Mapping): boolean {
  const asked = questionsOf(mapping)
  return (
    isAnswered(mapping) &&
    !asked.order &&
    !asked.heat &&
    asked.words.length === 0 &&
    !asked.names &&
    !asked.tagPrefix
  )
}
