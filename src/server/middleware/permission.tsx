/** Asks the table of permissions before any page behind the door. */
import { createMiddleware } from 'hono/factory'
import { NotYoursPage } from '../../../web/pages/errors.tsx'
import { actionAt, forWhom } from '../../people/index.ts'
import type { Env } from '../deps.ts'
import { page } from '../respond.tsx'

export const allowed = createMiddleware<Env>(async (c, next) => {
  const { frame } = c.var
  if (frame.mayOpen(c.req.path)) return next()
  const action = actionAt(c.req.path)
  return page(
    c,
    <NotYoursPage frame={frame} whose={action === null ? 'for operators' : forWhom(action)} />,
    403,
  )
})
