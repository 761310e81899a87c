import { Hono } from 'hono'
import { type Deps, type Env, page } from '../../app/index.ts'
import { nothingThere } from '../../app/node.ts'
import { sha256 } from './secret.ts'
import { NothingSignedPage, SignedTextPage } from './signed-page.tsx'

/** Without signing in: the text somebody signed, by its secret address. Trying many addresses is slowed down. */
export function signedText(deps: Deps): Hono<Env> {
  const app = new Hono<Env>()
  const { built } = deps.assets
  app.get('/signed/:token', async (c) => {
    c.header('X-Robots-Tag', 'noindex, nofollow, noarchive')
    const copy = await sha256(c.req.param('token'))
    const found = deps.store.removals.list().find((v) => v.sheet.agreement.signature?.copy === copy)
    const signature = found?.sheet.agreement.signature
    const yard = deps.store.settings.get('yardName')
    if (signature !== undefined)
      return page(c, <SignedTextPage signature={signature} yard={yard} built={built} />)
    return nothingThere(c, deps, () => <NothingSignedPage built={built} />)
  })
  return app
}
