import { Hono } from 'hono'
import { type AppContext, type Deps, type Env, page, typedIn, viewerOf } from '../../app/index.ts'
import { originOf } from '../../app/node.ts'
import { type FieldProblem, many, one, type Typed } from '../../forms/index.ts'
import type { ApiToken } from '../../people/index.ts'
import { scopesFor } from '../../people/node.ts'
import { openApi } from './openapi.ts'
import { type TokenLine, TokenMadePage, TokensPage } from './tokens-page.tsx'

/** One's own tokens for the HTTP API: made, shown once, taken back. */
export function apiTokens(deps: Deps): Hono<Env> {
  const app = new Hono<Env>()
  const { tokens } = deps

  const line = (c: AppContext, t: ApiToken): TokenLine => {
    const { words: said, zone, today } = c.var.frame
    const good = t.revokedAt === null && t.expiresAt > deps.clock().toISOString()
    const words = (iso: string): string => said.dates.instant(iso, zone, today)
    return {
      id: t.id,
      name: t.name,
      scopes: t.scopes,
      made: words(t.createdAt),
      used: t.usedAt === null ? null : words(t.usedAt),
      until: good ? words(t.expiresAt) : null,
    }
  }
  const show = (c: AppContext, typed: Typed, problems: FieldProblem[] = []) =>
    page(
      c,
      <TokensPage
        frame={c.var.frame}
        form={{ typed, problems }}
        scopes={scopesFor(viewerOf(c).role)}
        tokens={tokens.of(viewerOf(c).id).map((t) => line(c, t))}
        revoked={c.req.query('done') === 'revoked'}
      />,
      problems.length === 0 ? 200 : 422,
    )

  // The same as programs get with a token, for whoever writes one.
  app.get('/account/tokens/openapi.json', (c) => c.json(openApi(originOf(c, deps.outside))))

  app.get('/account/tokens', (c) => show(c, { scopes: ['read'] }))

  app.post('/account/tokens', async (c) => {
    const typed = await typedIn(c)
    const made = tokens.make({
      person: viewerOf(c),
      name: one(typed, 'name'),
      scopes: many(typed, 'scopes'),
      days: Number(one(typed, 'days')),
    })
    if (!made.ok) return show(c, typed, made.problems)
    const { words, zone, today } = c.var.frame
    return page(
      c,
      <TokenMadePage
        frame={c.var.frame}
        name={made.value.made.name}
        token={made.value.token}
        until={words.dates.instant(made.value.made.expiresAt, zone, today)}
      />,
    )
  })

  app.post('/account/tokens/:id/revoke', (c) => {
    const gone = tokens.revoke(viewerOf(c).id, c.req.param('id'))
    return c.redirect(gone ? '/account/tokens?done=revoked' : '/account/tokens', 303)
  })
  return app
}
