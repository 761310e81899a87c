/**
 * The pages of the round: what is needed at the boxes. The server answers them; a phone without signal answers them
 * itself, with this same code, out of what it keeps (web/phone). So nothing they import may need node: or the database.
 */
import type { Hono } from 'hono'
import type { Env, PageDeps } from '../app/context.ts'
import { colony } from './routes/colony.tsx'
import { corrections } from './routes/corrections.tsx'
import { intake } from './routes/intake.tsx'
import { move } from './routes/move.tsx'
import { note } from './routes/note.tsx'
import { outcome } from './routes/outcome.tsx'
import { outsideLook } from './routes/outside-look.tsx'
import { photo } from './routes/photo.tsx'
import { round } from './routes/round.tsx'
import { today } from './routes/today.tsx'
import { visit } from './routes/visit.tsx'
import { yard } from './routes/yard.tsx'

export const ROUND_PAGES: readonly ((deps: PageDeps) => Hono<Env>)[] = [
  today,
  round,
  yard,
  intake,
  colony,
  visit,
  outsideLook,
  outcome,
  move,
  note,
  photo,
  corrections,
]
