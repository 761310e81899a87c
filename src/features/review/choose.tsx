/** Which colonies, compared by what: a form whose answers stand in the address. */

import { Select } from '../../parts/index.ts'
import { narrows } from './choice.ts'
import { COHORTS, type Cohort } from './cohort.ts'
import type { ReviewProps } from './part-props.ts'
import { COHORT_WORDS, groupName } from './words.ts'

/** Boxes elsewhere on the page belong to it by this id. */
export const CHOICE_FORM = 'review-choice'

export const Choose = (p: ReviewProps) => {
  const { choice } = p.look
  const { today } = p.frame
  const open = narrows(choice) || choice.asOf !== today
  return (
    <form class="finder review-choose" id={CHOICE_FORM} method="get" action="/review">
      <div class="review-first">
        <Select
          name="by"
          label="Compare by"
          value={choice.by}
          options={COHORTS.map((c) => [c, COHORT_WORDS[c]] as const)}
        />
        <Select
          name="united"
          label="Count united as"
          value={choice.unitedIsLoss ? 'loss' : ''}
          options={[
            ['', 'its own way'],
            ['loss', 'a loss'],
          ]}
        />
        <button class="button" type="submit">
          Show
        </button>
      </div>
      <details class="caution" open={open}>
        <summary>Only some colonies</summary>
        <div class="finder-more review-more">
          <DayOf name="from" label="Taken in from" value={choice.from ?? ''} max={today} />
          <DayOf name="to" label="until" value={choice.to ?? ''} max={today} />
          {COHORTS.map((cohort) => (
            <Only cohort={cohort} of={p} />
          ))}
          <DayOf
            name="asOf"
            label="As it stood on"
            value={choice.asOf === today ? '' : choice.asOf}
            max={today}
          />
        </div>
        <p class="buttons">
          <button class="button" type="submit">
            Show
          </button>
          <a class="button button-plain" href="/review">
            All colonies
          </a>
        </p>
      </details>
    </form>
  )
}

const Only = ({ cohort, of }: { cohort: Cohort; of: ReviewProps }) => {
  const chosen = of.look.choice.only[cohort] ?? ''
  const names = of.names[cohort]
  // One name to choose from is no choice, unless it was made in the address.
  if (names.length < 2 && chosen === '') return null
  const all = names.includes(chosen) || chosen === '' ? names : [...names, chosen]
  const word = COHORT_WORDS[cohort]
  return (
    <Select
      name={cohort}
      label={`${word.charAt(0).toUpperCase()}${word.slice(1)}`}
      value={chosen}
      options={[['', 'all'], ...all.map((name) => [name, groupName(cohort, name, of.naming)] as const)]}
    />
  )
}

const DayOf = (p: { name: string; label: string; value: string; max: string }) => (
  <label>
    {p.label}
    <input type="date" name={p.name} value={p.value} max={p.max} />
  </label>
)
