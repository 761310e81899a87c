/** What a visit’s live panel says in English; the rest of the catalogue no page runs (web/islands/catalogue.ts). */
import type { LiveWords } from '../catalogue.ts'
import { choicesIn } from '../choices.ts'
import { choices } from './choices.ts'
import { dates } from './dates.ts'
import { fields } from './fields.ts'
import { reasons } from './reasons.ts'
import { record } from './record.ts'
import { trade } from './trade.ts'
import { units } from './units.ts'
import { visit } from './visit.ts'

export const live: LiveWords = {
  choiceWords: choices,
  choices: choicesIn(choices),
  dates,
  fields,
  reasons,
  record,
  trade,
  units,
  visit,
}
