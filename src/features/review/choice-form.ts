/** The review's choice as it stands in an address, so that a look can be shared. */
import { type Day, dayWords, isDay } from '../../days.ts'
import { type Choice, everything } from './choice.ts'
import { COHORTS, type Cohort } from './cohort.ts'
import { MOST_DRAWN } from './view.ts'

/** As long as a name can be. */
const NAME_LIMIT = 80

export interface Asked {
  choice: Choice
  /** Sentences about what in the address was not understood and left out. */
  problems: string[]
}

/** Reads an address. What is not understood is left out and said. Example: '?by=queen&united=loss'. */
export function choiceIn(query: URLSearchParams, today: Day): Asked {
  const problems: string[] = []
  const day = (name: string, words: string): Day | null => {
    const text = (query.get(name) ?? '').trim()
    if (text === '') return null
    const shown = text.slice(0, 20)
    if (isDay(text)) return text
    problems.push(`${words}: “${shown}” is no date written YYYY-MM-DD, so it was left out.`)
    return null
  }
  const from = day('from', 'Taken in from')
  const to = day('to', 'Taken in until')
  const asOf = day('asOf', 'As it stood on')
  if (asOf !== null && asOf > today)
    problems.push(`As it stood on: ${dayWords(asOf, today)} is in the future, so today was taken instead.`)
  if (from !== null && to !== null && from > to)
    problems.push(
      `Taken in from ${dayWords(from, today)} until ${dayWords(to, today)} is no time at all: the first day is after the last.`,
    )
  return {
    choice: {
      ...everything(asOf === null || asOf > today ? today : asOf),
      from,
      to,
      by: cohortCalled(query.get('by')) ?? 'removalType',
      unitedIsLoss: query.get('united') === 'loss',
      only: onlyIn(query),
      shown: query
        .getAll('show')
        .slice(0, 2 * MOST_DRAWN)
        .map(shortened),
    },
    problems,
  }
}

const shortened = (text: string): string => text.slice(0, NAME_LIMIT)

const cohortCalled = (name: string | null): Cohort | undefined => COHORTS.find((c) => c === name)

function onlyIn(query: URLSearchParams): Choice['only'] {
  const only: Choice['only'] = {}
  for (const cohort of COHORTS) {
    const name = query.get(cohort)
    if (name !== null && name !== '') only[cohort] = shortened(name)
  }
  return only
}

/** The address of a choice, without what goes without saying. '' for everything as of today. */
export function addressOf(choice: Choice, today: Day): string {
  const query = new URLSearchParams()
  if (choice.by !== 'removalType') query.set('by', choice.by)
  if (choice.unitedIsLoss) query.set('united', 'loss')
  if (choice.from !== null) query.set('from', choice.from)
  if (choice.to !== null) query.set('to', choice.to)
  if (choice.asOf !== today) query.set('asOf', choice.asOf)
  for (const cohort of COHORTS) {
    const name = choice.only[cohort]
    if (name !== undefined) query.set(cohort, name)
  }
  for (const name of choice.shown) query.append('show', name)
  const text = query.toString()
  return text === '' ? '' : `?${text}`
}
