/** English. Its type is what every language has to say. */
import { choicesIn } from '../choices.ts'
import { account } from './account.ts'
import { calendar } from './calendar.ts'
import { choices } from './choices.ts'
import { colony } from './colony.ts'
import { corrections } from './corrections.ts'
import { dates } from './dates.ts'
import { signIn } from './door.ts'
import { drawings } from './drawings.ts'
import { entries } from './entries.ts'
import { errors } from './errors.ts'
import { fields } from './fields.ts'
import { find as finding } from './find.ts'
import { forms } from './forms.ts'
import { frame } from './frame.ts'
import { health } from './health.ts'
import { how } from './how.ts'
import { invite } from './invite.ts'
import { islands } from './islands.ts'
import { likely } from './likely.ts'
import { messages } from './messages.ts'
import { outbox } from './outbox.ts'
import { paper } from './paper.ts'
import { parts } from './parts.ts'
import { reasons } from './reasons.ts'
import { record } from './record.ts'
import { ribbon } from './ribbon.ts'
import { round } from './round.ts'
import { steps } from './steps.ts'
import { today } from './today.ts'
import { tokens } from './tokens.ts'
import { trade } from './trade.ts'
import { units } from './units.ts'
import { visit } from './visit.ts'
import { yard } from './yard.ts'

export const english = {
  ...frame,
  choiceWords: choices,
  choices: choicesIn(choices),
  colony,
  corrections,
  dates,
  signIn,
  account,
  invite,
  calendar,
  drawings,
  entries,
  errors,
  fields,
  finding,
  forms,
  health,
  how,
  likely,
  messages,
  outbox,
  reasons,
  steps,
  islands,
  paper,
  parts,
  record,
  ribbon,
  round,
  today,
  tokens,
  trade,
  units,
  visit,
  yard,
}
