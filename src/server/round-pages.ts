/**
 * The pages of the round: what is needed at the boxes. The server answers them; a phone without signal answers them
 * itself, with this same code, out of what it keeps (web/phone). So nothing they import may need node: or the database.
 */
import type { Hono } from 'hono'
import type { Env, PageDeps } from '../app/context.ts'
import { photo } from '../features/colony/photo-route.tsx'
import { colony } from '../features/colony/route.tsx'
import { corrections } from '../features/entries/corrections-route.tsx'
import { intake } from '../features/entries/intake-route.tsx'
import { move } from '../features/entries/move-route.tsx'
import { note } from '../features/entries/note-route.tsx'
import { outcome } from '../features/entries/outcome-route.tsx'
import { outsideLook } from '../features/entries/outside-look-route.tsx'
import { visit } from '../features/entries/visit-route.tsx'
import { round } from '../features/round/route.tsx'
import { today } from '../features/today/route.tsx'
import { yard } from '../features/yard/route.tsx'

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
