/** Problems in data are values: they name the entry and the field and say what would be accepted. */
import type * as z from 'zod/mini'

export interface Problem {
  /** Position in the list given, from 1; undefined when the problem is not in one entry. */
  entry?: number | undefined
  /** Dotted path of the field, '' for the whole entry. */
  field: string
  /** A sentence a beekeeper understands, without the field's name. */
  message: string
}

const VALUE_LIMIT = 60

function shown(value: unknown): string {
  const text = JSON.stringify(value) ?? 'nothing'
  return text.length > VALUE_LIMIT ? `${text.slice(0, VALUE_LIMIT)}…` : text
}

function valueAt(input: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (at, key) =>
      at !== null && typeof at === 'object' ? (at as Record<PropertyKey, unknown>)[key] : undefined,
    input,
  )
}

/** Said by code: zod's own English would be another on a phone, whose worker has none. */
function sentence(issue: z.core.$ZodIssue, input: unknown): string {
  const value = valueAt(input, issue.path)
  switch (issue.code) {
    case 'invalid_type':
      return value === undefined ? 'is missing' : `must be ${article(issue.expected)}, not ${shown(value)}`
    case 'invalid_value':
      return value === undefined
        ? `is missing; it must be one of: ${issue.values.join(', ')}`
        : `must be one of: ${issue.values.join(', ')}; not ${shown(value)}`
    case 'invalid_union':
      return value === undefined ? 'is missing' : `is not a known value: ${shown(value)}`
    case 'invalid_key':
      return 'has a name that is empty or too long'
    case 'unrecognized_keys':
      return `has no field ${namesOf(issue.keys)}`
    case 'too_small':
      return issue.message.startsWith('must')
        ? `${issue.message}, not ${shown(value)}`
        : `must be at least ${issue.minimum}, not ${shown(value)}`
    case 'too_big': {
      const said = issue.message.startsWith('must') ? issue.message : `must be at most ${issue.maximum}`
      // A text that is too long is not repeated.
      return typeof value === 'number' ? `${said}, not ${value}` : said
    }
    case 'invalid_format':
      return issue.format === 'uuid'
        ? `must be a UUID, not ${shown(value)}`
        : `${issue.message}, not ${shown(value)}`
    default:
      return `${issue.message}, not ${shown(value)}`
  }
}

/** Problems of one entry, and names in one sentence, at most: nobody reads more, and a program could send thousands. */
const MOST_TOLD = 50
const MOST_NAMED = 5

const namesOf = (keys: readonly string[]): string => {
  const named = keys.slice(0, MOST_NAMED).map((k) => `"${k.slice(0, VALUE_LIMIT)}"`)
  return named.join(', ') + (keys.length > MOST_NAMED ? ` and ${keys.length - MOST_NAMED} more` : '')
}

const article = (type: string): string => (/^[aeio]/.test(type) ? `an ${type}` : `a ${type}`)

/** The problems zod found, worded; `entry` numbers the entry they are in. */
export function problemsOf(error: z.core.$ZodError, input: unknown, entry?: number): Problem[] {
  return error.issues.slice(0, MOST_TOLD).map((issue) => ({
    ...(entry === undefined ? {} : { entry }),
    field:
      issue.code === 'unrecognized_keys' && issue.path.length === 0
        ? (issue.keys[0] ?? '')
        : issue.path.map(String).join('.'),
    message: sentence(issue, input),
  }))
}

/** One line: 'entry 3: eggs: must be one of: none, single, multiple; not "some"'. */
export const problemLine = (p: Problem): string =>
  [p.entry === undefined ? '' : `entry ${p.entry}`, p.field, p.message].filter(Boolean).join(': ')
