/** Asks the table of permissions before any page behind the sign-in. */

import { createMiddleware } from 'hono/factory'
import { ACTIONS, actionAt } from '../people/index.ts'
import { wordsIn } from '../words/index.ts'
import type { Env } from './context.ts'
import { NotYoursPage } from './error-pages.tsx'
import { unknownPage } from './errors.tsx'
import { page } from './respond.tsx'
import { languageFor } from './spoken.ts'

export const allowed = createMiddleware<Env>(async (c, next) => {
  const { frame } = c.var
  if (frame.mayOpen(c.req.path)) return next()
  const action = actionAt(c.req.path)
  // No line in the table: for them there is no such page.
  if (action === null) return unknownPage(c)
  const words = wordsIn(languageFor(c))
  const { beekeepers, operators } = words.trouble.notYours
  const whose = ACTIONS[action].roles.length === 1 ? operators : beekeepers
  return page(c, <NotYoursPage frame={{ ...frame, words }} whose={whose} />, 403)
})
