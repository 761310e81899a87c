/**
 * The pages of the round: what is needed at the boxes. The server answers them; a phone without signal answers them
 * itself, with this same code, out of what it keeps (src/phone). So nothing they import may need node: or the database.
 */

import type { Hono } from 'hono'
import type { Env, PageDeps } from '../app/index.ts'
import { colony, photo } from './colony/index.ts'
import {
  corrections,
  intake,
  lostBox,
  move,
  note,
  otherBox,
  outcome,
  outsideLook,
  visit,
} from './entries/index.ts'
import { find } from './find/index.ts'
import { how } from './how/index.ts'
import { removalActs, removalIntake, removalSign, removals, unmetOf } from './removal/index.ts'
import { round } from './round/index.ts'
import { today } from './today/index.ts'
import { yard } from './yard/index.ts'

export const ROUND_PAGES: readonly ((deps: PageDeps) => Hono<Env>)[] = [
  today,
  round,
  yard,
  find,
  how,
  (deps) => intake(deps, unmetOf),
  colony,
  visit,
  outsideLook,
  lostBox,
  outcome,
  move,
  note,
  photo,
  corrections,
  removalIntake,
  removalSign,
  removalActs,
  removals,
  otherBox,
]
