/** The OpenAPI 3.1 description of the HTTP API, made from its schemas and its table of operations. */

import { z } from 'zod'
import { day } from '../../journal/index.ts'
import { API, OPERATIONS, type Operation, QUERIES } from './operations.ts'
import { COMPONENTS, type ComponentName } from './schemas.ts'

type Json = Record<string, unknown>

/** Errors every operation may answer with, beside its own. */
const ERRORS: Record<number, string> = {
  400: 'A query that is not understood.',
  401: 'No token, or one that does not work.',
  403: 'The token’s scopes or its owner’s role do not allow it.',
  404: 'There is no such thing.',
  413: 'More than 1 MiB was sent.',
  415: 'The body is not JSON.',
  422: 'What was sent cannot be so: `errors` says what, by entry and field.',
  429: 'Too often: wait as many seconds as Retry-After says.',
  503: 'The book cannot be read or written just now.',
}

const ref = (name: ComponentName): Json => ({ $ref: `#/components/schemas/${name}` })

/** A real day cannot be said in JSON Schema beyond its format. */
const asDate = ({ zodSchema, jsonSchema }: { zodSchema: unknown; jsonSchema: Json }): void => {
  if (zodSchema === day) jsonSchema.format = 'date'
}

function components(): Json {
  const registry = z.registry<{ id: string }>()
  for (const [id, schema] of Object.entries(COMPONENTS)) registry.add(schema, { id })
  const { schemas } = z.toJSONSchema(registry, {
    target: 'draft-2020-12',
    // Answers may gain fields, so only what is sent is closed to others.
    io: 'input',
    uri: (id) => `#/components/schemas/${id}`,
    override: asDate,
  })
  return Object.fromEntries(
    Object.entries(schemas).map(([name, { $schema: _schema, $id: _id, ...rest }]) => [name, rest]),
  )
}

function queryParameters(name: keyof typeof QUERIES): Json[] {
  const { properties = {}, required = [] } = z.toJSONSchema(QUERIES[name], {
    target: 'draft-2020-12',
    override: asDate,
  })
  return Object.entries(properties).map(([parameter, schema]) => {
    const { description, ...rest } = schema as Json
    return { name: parameter, in: 'query', required: required.includes(parameter), description, schema: rest }
  })
}

const pathParameters = (path: string): Json[] =>
  [...path.matchAll(/\{(\w+)\}/g)].map(([, name]) => ({
    name,
    in: 'path',
    required: true,
    schema: { type: 'string' },
    description: name === 'colony' ? 'Tag or id of the colony.' : 'Id of the entry.',
  }))

/** Which errors an operation can answer with. */
function errorsOf(o: Operation): number[] {
  const has = (status: number): boolean =>
    status === 404
      ? o.path.includes('{')
      : status === 413 || status === 415
        ? o.body !== undefined
        : status === 422
          ? o.body !== undefined || o.query === 'plan'
          : true
  return Object.keys(ERRORS).map(Number).filter(has)
}

function operationOf(operationId: string, o: Operation): Json {
  const answers = Object.entries(o.answers).map(([status, answer]) => [
    status,
    {
      description: answer?.description,
      content: { 'application/json': { schema: ref(answer?.schema ?? 'Problem') } },
      ...(o.paged === true ? { headers: { Link: LINK } } : {}),
    },
  ])
  const errors = errorsOf(o).map((status) => [
    String(status),
    { description: ERRORS[status], content: { 'application/problem+json': { schema: ref('Problem') } } },
  ])
  return {
    operationId,
    summary: o.summary,
    description: [o.description, scopeWords(o)].filter(Boolean).join(' '),
    parameters: [...pathParameters(o.path), ...queryParameters(o.query)],
    ...(o.body === undefined
      ? {}
      : { requestBody: { required: true, content: { 'application/json': { schema: ref(o.body) } } } }),
    responses: Object.fromEntries([...answers, ...errors]),
  }
}

const LINK: Json = {
  description: 'RFC 8288: rel="next" leads to the following page, rel="first" to the first one.',
  schema: { type: 'string' },
}

const scopeWords = (o: Operation): string =>
  o.scope === null ? 'Any token may ask.' : `Needs the scope \`${o.scope}\`.`

/** The whole document. `server`: the yard's address. */
export function openApi(server: string): Json {
  const paths: Record<string, Json> = {}
  for (const [id, operation] of Object.entries<Operation>(OPERATIONS)) {
    const at = paths[operation.path] ?? {}
    at[operation.method] = operationOf(id, operation)
    paths[operation.path] = at
  }
  return {
    openapi: '3.1.0',
    info: {
      title: 'Resettle',
      version: '1',
      summary: 'A yard of rescued colonies: entries, colonies, plans, review.',
      description:
        'Days are written YYYY-MM-DD, instants in UTC, quantities in SI units. Errors are problem documents (RFC 9457). Fields may be added to answers; programs pass over those they do not know.',
      license: { name: 'MIT', identifier: 'MIT' },
    },
    servers: [{ url: `${server}${API}` }],
    security: [{ token: [] }],
    paths,
    components: {
      schemas: components(),
      securitySchemes: {
        token: {
          type: 'http',
          scheme: 'bearer',
          description:
            'A personal token, made on one’s account’s page, with the scopes read, write or review.',
        },
      },
    },
  }
}
