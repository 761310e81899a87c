import { Hono } from 'hono'
import { one } from '../../../web/forms/typed.ts'
import { SignaturePage } from '../../../web/pages/signature.tsx'
import type { Deps, Env } from '../deps.ts'
import { rememberName, typedIn } from '../form.ts'
import { NAME_LIMIT } from '../frame.tsx'
import { page } from '../respond.tsx'

/** Who signs entries made in this browser. */
export function signature(_deps: Deps): Hono<Env> {
  const app = new Hono<Env>()
  app.get('/name', (c) => {
    const typed = { by: [c.var.frame.signer ?? ''] }
    return page(
      c,
      <SignaturePage
        frame={c.var.frame}
        form={{ typed, problems: [] }}
        saved={c.req.query('saved') === '1'}
      />,
    )
  })
  app.post('/name', async (c) => {
    const typed = await typedIn(c)
    const name = one(typed, 'by')
    if (name === '' || name.length > NAME_LIMIT) {
      const message = name === '' ? 'must not be empty' : `must be at most ${NAME_LIMIT} characters`
      return page(
        c,
        <SignaturePage
          frame={c.var.frame}
          form={{ typed, problems: [{ field: 'by', message }] }}
          saved={false}
        />,
        422,
      )
    }
    rememberName(c, name)
    return c.redirect('/name?saved=1', 303)
  })
  return app
}
