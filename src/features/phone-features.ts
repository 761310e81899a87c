/**
 * The pages of the round: what is needed at the boxes. The server answers them; a phone without signal answers them
 * itself, with this same code, out of what it keeps (web/phone). So nothing they import may need node: or the database.
 */
import type { Hono } from 'hono'
import type { Env, PageDeps } from '../app/context.ts'
import { photo } from './colony/photo-route.tsx'
import { colony } from './colony/route.tsx'
import { corrections } from './entries/corrections-route.tsx'
import { intake } from './entries/intake-route.tsx'
import { move } from './entries/move-route.tsx'
import { note } from './entries/note-route.tsx'
import { outcome } from './entries/outcome-route.tsx'
import { outsideLook } from './entries/outside-look-route.tsx'
import { visit } from './entries/visit-route.tsx'
import { round } from './round/route.tsx'
import { today } from './today/route.tsx'
import { yard } from './yard/route.tsx'

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
