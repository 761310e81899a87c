/** What the fuzz sends: plausible values, hostile ones, and everything between. */
import fc from 'fast-check'
import { ENTRY_KINDS, entry as entrySchema, GIFTS, SIGNS } from '../../src/journal/entry.ts'
import { ROLES, type Role } from '../../src/people/index.ts'
import type { Forms, Route } from './routes.ts'

/** Must never come back as it is in a page: it would open a tag or leave an attribute. */
export const TAG = '<fuzz7 onload=x>'
export const BREAK = `fuzz7"'onfocus=x`

const HOSTILE = [
  TAG,
  BREAK,
  `"><script>alert(1)</script>${TAG}`,
  `</script>${TAG}`,
  `</textarea>${TAG}`,
  `'-alert(1)-'${BREAK}`,
  'javascript:alert(1)',
  '../../../../etc/passwd',
  '..%2f..%2fetc%2fpasswd',
  '%00',
  '\u0000',
  '\r\nSet-Cookie: a=b',
  "' OR 1=1 --",
  '"; DROP TABLE entry; --',
  '=HYPERLINK("http://x")',
  '__proto__',
  'constructor',
  'toString',
  '\u202eevil',
  '\ud800',
  '💥'.repeat(50),
  'a'.repeat(5000),
  'NaN',
  'Infinity',
  '-1',
  '1e309',
  '9'.repeat(400),
  '0x10',
  '',
  ' ',
  'null',
  '[]',
  '{}',
] as const

const DAYS = [
  '2026-06-01',
  '2026-05-20',
  '2026-05-31',
  '2026-04-01',
  '2026-06-02',
  '2026-13-45',
  '0000-00-00',
  '1066-10-14',
]

export interface Names {
  tags: readonly string[]
  /** Ids differ from yard to yard: '#3#' stands for the fourth one. */
  ids: readonly string[]
}

/** Words that mean something to some field. */
const KNOWN = [
  ...ENTRY_KINDS,
  ...GIFTS,
  ...SIGNS,
  ...ROLES,
  'yes',
  'no',
  'none',
  'single',
  '1',
  '2.5',
  '½',
  '12:30',
  'wall',
]

const text = (names: Names): fc.Arbitrary<string> =>
  fc.oneof(
    { weight: 4, arbitrary: fc.constantFrom(...HOSTILE) },
    { weight: 2, arbitrary: fc.constantFrom(...DAYS) },
    { weight: 2, arbitrary: fc.constantFrom(...KNOWN) },
    { weight: 2, arbitrary: fc.constantFrom(...names.tags, ...names.ids) },
    { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 60 }) },
    { weight: 1, arbitrary: fc.uuid() },
  )

export interface Attempt {
  role: Role | null
  route: Route
  /** Of the route's parameters, in order. */
  params: string[]
  query: [string, string][]
  fields: [string, string][]
  body: 'form' | 'multipart' | 'json' | 'junk' | 'empty'
  json: unknown
  junk: string
  accept: string
}

/** A field of a form with one of the values the form offers, or anything else. */
function field(
  offered: ReadonlyMap<string, ReadonlySet<string>>,
  any: fc.Arbitrary<string>,
): fc.Arbitrary<[string, string]> {
  const known = [...offered].map(([name, values]) =>
    fc.tuple(
      fc.constant(name),
      values.size === 0
        ? any
        : fc.oneof({ weight: 2, arbitrary: fc.constantFrom(...values) }, { weight: 1, arbitrary: any }),
    ),
  )
  const unknown = fc.tuple(fc.constantFrom(...HOSTILE), any)
  return fc.oneof({ weight: 1, arbitrary: unknown }, ...known.map((arbitrary) => ({ weight: 3, arbitrary })))
}

/** The whole form as it would be sent, with a few fields spoilt: most of what is refused is refused for one of them. */
function form(
  offered: ReadonlyMap<string, ReadonlySet<string>>,
  any: fc.Arbitrary<string>,
): fc.Arbitrary<[string, string][]> {
  const filled = [...offered].map(([name, values]) =>
    fc.tuple(fc.constant(name), values.size === 0 ? fc.constant('') : fc.constantFrom(...values)),
  )
  const spoilt = fc.array(field(offered, any), { maxLength: 4 })
  return fc.oneof(
    fc.array(field(offered, any), { maxLength: 12 }),
    fc.tuple(fc.tuple(...filled), spoilt).map(([all, some]) => [...all, ...some]),
  )
}

/** An entry that is nearly right: any kind, some fields of that kind and of others, plausible and hostile values. */
export function nearlyEntry(names: Names): fc.Arbitrary<unknown> {
  const shapes = entrySchema.options.map((o) => Object.keys(o.shape))
  const value: fc.Arbitrary<unknown> = fc.oneof(
    text(names),
    fc.boolean(),
    fc.double(),
    fc.integer({ min: -5, max: 400 }),
    fc.constantFrom(null, [], {}, ['beetles'], { type: 'wall' }, { type: TAG, site: BREAK }),
  )
  const base = fc.record({
    id: fc.oneof(
      { weight: 3, arbitrary: fc.uuid() },
      { weight: 1, arbitrary: fc.constantFrom(...names.ids) },
    ),
    colony: fc.oneof(fc.constantFrom(...names.tags), text(names)),
    on: fc.constantFrom(...DAYS),
    by: fc.constantFrom('Odalys', 'Bram', 'Teuila', TAG),
  })
  const rest = fc.oneof(
    ...shapes.map((keys) =>
      fc.record(
        {
          ...Object.fromEntries(keys.map((k) => [k, value])),
          kind: fc.constantFrom(...ENTRY_KINDS),
          opened: fc.boolean(),
          text: text(names),
          replaces: fc.constantFrom(...names.ids),
          yard: fc.constantFrom('Quarry yard', TAG),
          queen: fc.constantFrom('unseen', 'caged', BREAK),
          removal: fc.constantFrom({ type: 'wall' }, { type: TAG }),
          what: fc.constantFrom('syrup', 'died', TAG),
          reason: text(names),
        },
        { requiredKeys: ['kind', 'opened'] },
      ),
    ),
  )
  return fc.tuple(rest, base).map(([a, b]) => pruned({ ...a, ...b }))
}

/** Fields that the kind does not have are mostly left out, so that some entries are taken. */
function pruned(e: Record<string, unknown>): Record<string, unknown> {
  const shape = entrySchema.options.find((o) => o.shape.kind.value === e.kind)?.shape
  const keep = String(e.id).charCodeAt(0) % 4 === 0
  return keep || shape === undefined ? e : Object.fromEntries(Object.entries(e).filter(([k]) => k in shape))
}

const ASKED = [
  'page',
  'find',
  'yard',
  'show',
  'saved',
  'before',
  'colony',
  'lid',
  'to',
  'token',
  'done',
  'private',
  'since',
  'from',
  'as-of',
]

export function attempt(routes: readonly Route[], forms: Forms, names: Names): fc.Arbitrary<Attempt> {
  const any = text(names)
  const entry = nearlyEntry(names)
  const json = fc.oneof(
    entry,
    fc.array(entry, { maxLength: 3 }),
    fc.json().map((j) => JSON.parse(j) as unknown),
  )
  const parameter = fc.oneof(
    { weight: 5, arbitrary: fc.constantFrom(...names.tags, ...names.ids) },
    { weight: 1, arbitrary: any },
  )
  const none = new Map<string, Set<string>>()
  const to = (route: Route): fc.Arbitrary<Attempt> =>
    fc.record({
      role: fc.constantFrom(null, ...ROLES),
      route: fc.constant(route),
      params: fc.array(parameter, { minLength: 2, maxLength: 2 }),
      query: fc.array(
        fc.oneof(
          field(forms.get(`GET ${route.path}`) ?? none, any),
          fc.tuple(fc.constantFrom(...ASKED), any),
        ),
        { maxLength: 3 },
      ),
      fields: form(forms.get(`${route.method} ${route.path}`) ?? none, any),
      body: fc.constantFrom('form', 'form', 'form', 'form', 'multipart', 'json', 'junk', 'empty'),
      json,
      junk: fc.string({ unit: 'binary', maxLength: 300 }),
      accept: fc.constantFrom('text/html', 'text/html', 'application/json', '*/*', TAG),
    })
  return fc.oneof(...routes.map(to))
}
