/** Every route of the app and every field of its forms, found by looking: a new page is fuzzed without anybody adding it. */
import type { Hono } from 'hono'
import type { Env } from '../../src/app/context.ts'
import { appFor, createApp } from '../../src/node/app.ts'
import type { TestYard } from '../support/yard-app.ts'

export interface Route {
  method: string
  /** As hono knows it: '/colony/:tag/visit'. */
  path: string
}

const listed = (app: Hono<Env>): Route[] =>
  app.routes.filter((r) => r.method !== 'ALL').map(({ method, path }) => ({ method, path }))

export function everyRoute(yard: TestYard): Route[] {
  const all = [...listed(createApp(yard.deps)), ...listed(appFor('operator', yard.deps))]
  return [...new Map(all.map((r) => [`${r.method} ${r.path}`, r])).values()]
}

/** The path with its parameters filled in. */
export function filled(path: string, params: readonly string[]): string {
  let n = 0
  return path.replaceAll(
    /:[a-z]+(\{[^}]*\})?/g,
    () => encodeURIComponent(wellFormed(params[n++] ?? params[0] ?? 'x')) || '-',
  )
}

/** Lone halves of a character cannot be sent. */
export const wellFormed = (s: string): string => s.replaceAll(/[\ud800-\udfff]/g, '\ufffd')

/** The pattern of a route as an expression on real paths. */
const expression = (path: string): RegExp =>
  new RegExp(`^${path.replaceAll(/:[a-z]+(\{[^}]*\})?/g, '[^/]+').replaceAll('.', '\\.')}$`)

const routeOf = (routes: readonly Route[], method: string, path: string): Route | undefined =>
  routes.find((r) => r.method === method && expression(r.path).test(path))

/** Field names with the values a form offers, by the route the form is sent to. */
export type Forms = Map<string, Map<string, Set<string>>>

/** Reads the forms of a page. */
export function readForms(html: string, page: string, routes: readonly Route[], forms: Forms): void {
  for (const [, attributes = '', body = ''] of html.matchAll(/<form([^>]*)>(.*?)<\/form>/gs)) {
    const action = unescaped(/action="([^"]*)"/.exec(attributes)?.[1] ?? page).replace(/[?#].*/, '')
    const method = (/method="([^"]*)"/.exec(attributes)?.[1] ?? 'get').toUpperCase()
    const route = routeOf(routes, method, action)
    if (route === undefined)
      throw new Error(`a form on ${page} is sent to ${method} ${action}, which is no route`)
    const key = `${route.method} ${route.path}`
    const fields = forms.get(key) ?? new Map<string, Set<string>>()
    forms.set(key, fields)
    for (const [tag] of body.matchAll(/<(?:input|textarea|select|button)\b[^>]*>/g)) {
      const name = / name="([^"]*)"/.exec(tag)?.[1]
      if (name === undefined) continue
      const values = fields.get(unescaped(name)) ?? new Set<string>()
      const value = / value="([^"]*)"/.exec(tag)?.[1]
      if (value !== undefined) values.add(unescaped(value))
      fields.set(unescaped(name), values)
    }
  }
}

const unescaped = (text: string): string =>
  text
    .replaceAll('&quot;', '"')
    .replaceAll('&#39;', "'")
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&amp;', '&')
