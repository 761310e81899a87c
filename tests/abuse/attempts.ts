/** What the fuzz sends: whole forms and whole entries with a few fields spoilt, and everything between. */
import fc from 'fast-check'
import { API } from '../../src/features/api/operations.ts'
import { ROLES, type Role } from '../../src/people/index.ts'
import { entryBodies } from './entries.ts'
import type { Forms, Route } from './routes.ts'
import { anyCharacters, HOSTILE, type Names, TAG, text } from './values.ts'

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
  const json = entryBodies(names)
  const parameter = fc.oneof(
    { weight: 5, arbitrary: fc.constantFrom(...names.tags, ...names.ids) },
    { weight: 1, arbitrary: any },
  )
  const none = new Map<string, Set<string>>()
  const queryOf = (route: Route): fc.Arbitrary<[string, string][]> => {
    const asked = fc.array(
      fc.oneof(field(forms.get(`GET ${route.path}`) ?? none, any), fc.tuple(fc.constantFrom(...ASKED), any)),
      { maxLength: 3 },
    )
    // The API refuses what it does not know, so most of what is to reach further asks for nothing.
    return route.path.startsWith(API)
      ? fc.oneof(
          { weight: 2, arbitrary: fc.constant<[string, string][]>([]) },
          { weight: 1, arbitrary: asked },
        )
      : asked
  }
  const to = (route: Route): fc.Arbitrary<Attempt> =>
    fc.record({
      role: fc.constantFrom(null, ...ROLES),
      route: fc.constant(route),
      params: fc.array(parameter, { minLength: 2, maxLength: 2 }),
      query: queryOf(route),
      fields: form(forms.get(`${route.method} ${route.path}`) ?? none, any),
      body: fc.constantFrom('form', 'form', 'form', 'form', 'multipart', 'json', 'junk', 'empty'),
      json,
      junk: anyCharacters(300),
      accept: fc.constantFrom('text/html', 'text/html', 'application/json', '*/*', TAG),
    })
  // What programs write is asked more often: it is refused for the most reasons.
  return fc.oneof(
    ...routes.map((route) => ({
      weight: route.method === 'POST' && route.path === `${API}/entries` ? 12 : 1,
      arbitrary: to(route),
    })),
  )
}
