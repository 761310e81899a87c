/** Asks the table of permissions before any page behind the sign-in. */

import { createMiddleware } from 'hono/factory'
import { actionAt, forWhom } from '../people/index.ts'
import type { Env } from './context.ts'
import { NotYoursPage } from './error-pages.tsx'
import { unknownPage } from './errors.tsx'
import { page } from './respond.tsx'

export const allowed = createMiddleware<Env>(async (c, next) => {
  const { frame } = c.var
  if (frame.mayOpen(c.req.path)) return next()
  const action = actionAt(c.req.path)
  // No line in the table: for them there is no such page.
  if (action === null) return unknownPage(c)
  return page(c, <NotYoursPage frame={frame} whose={forWhom(action)} />, 403)
})
