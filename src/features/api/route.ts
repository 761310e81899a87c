import { Hono } from 'hono'
import { bodyLimit } from 'hono/body-limit'
import type { z } from 'zod'
import {
  type AppContext,
  type Deps,
  type Env,
  grouped,
  jsonIn,
  problemResponse,
  sendsJson,
  todayOf,
  tooLarge,
  zoneOf,
} from '../../app/index.ts'
import { inSlices, originOf } from '../../app/node.ts'
import type { Day } from '../../days.ts'
import { type Problem, problemsOf } from '../../journal/index.ts'
import { ROLES, type Role, storeFor, type TokenHolder } from '../../people/index.ts'
import type { Store } from '../../store/index.ts'
import {
  coloniesPage,
  colonyJournal,
  oneEntry,
  planAsOf,
  plansPage,
  reviewingAsOf,
  yardJournal,
} from './answers.ts'
import { bearer, refusalOf } from './bearer.ts'
import { openApi } from './openapi.ts'
import { API, OPERATIONS, type Operation, type OperationId, QUERIES } from './operations.ts'
import { keyIn, linkHeader, type Page } from './paging.ts'
import { colonyOf } from './schemas.ts'

type Query<Id extends OperationId> = z.output<(typeof QUERIES)[(typeof OPERATIONS)[Id]['query']]>

/** What a handler is given: the query as read, and the store as the token's owner sees it. */
interface Asked<Id extends OperationId> {
  c: AppContext
  query: Query<Id>
  store: Store
  holder: TokenHolder
  today: Day
}

type Handlers = { [Id in OperationId]: (asked: Asked<Id>) => Response | Promise<Response> }

const MOST_AT_ONCE = 500
const MOST_BYTES = 1024 * 1024

/** The HTTP API: /api/v1. Before the sign-in: it asks for a token instead of a session. */
export function api(deps: Deps): Hono<Env> {
  const app = new Hono<Env>()
  const stores = Object.fromEntries(ROLES.map((role) => [role, storeFor(role, deps.store)])) as Record<
    Role,
    Store
  >
  const handlers = handlersOf(deps)
  let planned: Day | null = null
  /** Recomputes plans when the day has changed since the last request. */
  const todayPlanned = async (): Promise<Day> => {
    const today = todayOf(deps)
    if (deps.daily !== undefined) await deps.daily(today)
    else if (planned !== today) deps.store.refresh(today)
    planned = today
    return today
  }

  app.use(`${API}/*`, bodyLimit({ maxSize: MOST_BYTES, onError: tooLarge }))
  // Before any path is looked at: a stranger must not learn which there are.
  app.use(`${API}/*`, bearer(deps))
  app.get(`${API}/openapi.json`, (c) => {
    c.header('Cache-Control', 'no-store')
    return c.json(openApi(originOf(c, deps.outside)))
  })

  const register = <Id extends OperationId>(id: Id): void => {
    const operation: Operation = OPERATIONS[id]
    const path = API + operation.path.replaceAll(/\{(\w+)\}/g, ':$1')
    app.on(operation.method.toUpperCase(), path, async (c) => {
      const { holder } = c.var
      if (holder === undefined) throw new Error('an operation without a token')
      const refused = refusalOf(holder, operation)
      if (refused !== null) return refused
      const query = queryOf(c, operation)
      if (query instanceof Response) return query
      const today = await todayPlanned()
      c.header('Cache-Control', 'no-store')
      return handlers[id]({ c, query: query as Query<Id>, store: stores[holder.person.role], holder, today })
    })
  }
  for (const id of Object.keys(OPERATIONS) as OperationId[]) register(id)

  app.all(`${API}/*`, (c) => {
    const methods = methodsAt(c.req.path)
    return methods.length === 0
      ? problemResponse(404, 'There is no such resource.')
      : problemResponse(405, `Only ${methods.join(', ')} here.`, { headers: { Allow: methods.join(', ') } })
  })
  return app
}

/** Methods of the operations at a path. */
function methodsAt(path: string): string[] {
  return Object.values<Operation>(OPERATIONS)
    .filter((o) => new RegExp(`^${API}${o.path.replaceAll(/\{\w+\}/g, '[^/]+')}$`).test(path))
    .flatMap((o) => (o.method === 'get' ? ['GET', 'HEAD'] : ['POST']))
}

/** The query as its schema reads it, or what is wrong with it. */
function queryOf(c: AppContext, operation: Operation): unknown {
  const given = c.req.queries()
  const twice = Object.keys(given).filter((name) => (given[name]?.length ?? 0) > 1)
  const single = Object.fromEntries(Object.entries(given).map(([name, values]) => [name, values[0]]))
  const parsed = QUERIES[operation.query].safeParse(single)
  if (twice.length > 0 || !parsed.success) {
    const errors: Problem[] = parsed.success ? [] : problemsOf(parsed.error, single)
    return problemResponse(400, 'The query is not understood.', {
      errors: [...errors, ...twice.map((field) => ({ field, message: 'is there twice' }))],
    })
  }
  const { cursor } = parsed.data as { cursor?: string }
  if (cursor !== undefined && keyIn(cursor) === null)
    return problemResponse(400, 'The cursor is not one this server gave.')
  return parsed.data
}

/** Every operation. Tags and ids that name nothing are 404. */
function handlersOf(deps: Deps): Handlers {
  const paged = (c: AppContext, page: Page<unknown>): Response => {
    const url = new URL(c.req.url)
    c.header('Link', linkHeader(new URL(url.pathname + url.search, originOf(c, deps.outside)), page.next))
    return c.json(page)
  }
  const noColony = (c: AppContext): Response =>
    problemResponse(404, `There is no colony "${(c.req.param('colony') ?? '').slice(0, 60)}".`)
  return {
    whoAmI: ({ c, holder, today }) =>
      c.json({
        name: holder.person.name,
        role: holder.person.role,
        scopes: holder.scopes,
        today,
        timeZone: zoneOf(deps),
      }),
    listColonies: ({ c, query, store }) => paged(c, coloniesPage(store, query)),
    readColony({ c, store }) {
      const found = store.colony(c.req.param('colony') ?? '')
      return found === null ? noColony(c) : c.json(colonyOf(found.summary))
    },
    readPlan({ c, query, store, today }) {
      const plan = planAsOf(store, c.req.param('colony') ?? '', today, query.asOf)
      if (plan === null) return noColony(c)
      return plan.ok
        ? c.json(plan.plan)
        : problemResponse(422, 'There is no plan as of that day.', { errors: plan.problems })
    },
    listColonyEntries({ c, query, store }) {
      const found = store.colony(c.req.param('colony') ?? '')
      return found === null ? noColony(c) : paged(c, colonyJournal(found.journal, query))
    },
    listPlans: ({ c, query, store }) => paged(c, plansPage(store, query)),
    listEntries: ({ c, query, store }) => paged(c, yardJournal(store, query)),
    readEntry({ c, store }) {
      const found = oneEntry(store, c.req.param('id') ?? '')
      return found === null ? problemResponse(404, 'There is no entry with this id.') : c.json(found)
    },
    sendEntries: (asked) => sendEntries(deps, asked),
    async readReview({ c, query, store, today }) {
      const united = query.unitedIsLoss === 'true'
      return c.json(await inSlices(reviewingAsOf(store, zoneOf(deps), query.asOf ?? today, united)))
    },
  }
}

async function sendEntries(deps: Deps, { c, store, holder, today }: Asked<'sendEntries'>): Promise<Response> {
  if (!sendsJson(c)) return problemResponse(415, 'Send application/json.')
  const body = await jsonIn(c)
  if (!body.ok) return problemResponse(400, body.problems[0])
  const list = (Array.isArray(body.value) ? body.value : [body.value]).map((e) =>
    signed(e, holder.person.name),
  )
  if (list.length === 0 || list.length > MOST_AT_ONCE)
    return problemResponse(422, `Send 1 to ${MOST_AT_ONCE} entries, not ${list.length}.`)
  const stamp = { today, recordedAt: deps.clock().toISOString(), recordedBy: holder.person.name }
  const result = await grouped(deps)(() => store.append(list, stamp))
  if (!result.ok) return problemResponse(422, 'Nothing was written.', { errors: result.problems })
  return c.json(
    { accepted: result.accepted, already: result.already },
    result.accepted.length > 0 ? 201 : 200,
  )
}

/** Signed by the token's owner where the entry names nobody. */
const signed = (entry: unknown, name: string): unknown =>
  typeof entry === 'object' && entry !== null && !Array.isArray(entry) && !('by' in entry)
    ? { ...entry, by: name }
    : entry
