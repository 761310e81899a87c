/** Couldn't get to it: why, and when it is tried again. */

import { thenTo } from '../../app/index.ts'
import { addDays } from '../../days.ts'
import { FIELDS, Fields } from '../../forms/index.ts'
import type { Plan } from '../../recovery/index.ts'
import { dayWords } from '../../words/index.ts'
import { type EntryFormView, SmallFormPage } from '../entries/index.ts'
import { closingWindow } from './urgency.ts'

const AHEAD = [
  [1, 'Tomorrow'],
  [2, 'In 2 days'],
  [3, 'In 3 days'],
  [7, 'In a week'],
] as const

export interface MissedProps extends EntryFormView {
  /** Where to go once it is saved. */
  then: string | null
  /** Where one came from. */
  back: string
}

export const MissedPage = ({ frame, form, summary, path, then, back }: MissedProps) => (
  <SmallFormPage
    frame={frame}
    form={form}
    kind="missed-visit"
    title={`Couldn’t get to ${summary.tag}`}
    action={thenTo(`${path}/missed`, then)}
    back={{ href: back, label: summary.tag }}
    button="Save, and walk on"
    intro={<Closing plan={summary.plan} />}
  >
    <input type="hidden" name="on" value={frame.today} />
    <Fields
      form={form}
      frame={frame}
      of={FIELDS['missed-visit']}
      show={['reason', 'again', 'note']}
      with={{
        again: {
          label: 'Try again',
          hint: undefined,
          choices: AHEAD.map(([n, label]) => {
            const day = addDays(frame.today, n)
            return { value: day, label, hint: dayWords(day, frame.today) }
          }),
          across: 2,
          standing: addDays(frame.today, 1),
        },
        note: { rows: 2 },
      }}
    />
  </SmallFormPage>
)

/** What does not wait for a better day. */
const Closing = ({ plan }: { plan: Plan }) => {
  const window = closingWindow(plan)
  if (window === null) return null
  return (
    <div class="notice notice-late">
      <p>
        {window.of === 'cells' ? (
          <>
            <b>
              {window.day === plan.asOf
                ? 'Today is the last day on which its young brood can become a queen.'
                : `Its young brood can become a queen only until ${dayWords(window.day, plan.asOf)}.`}
            </b>{' '}
            The bees do not wait: this stays on every round until somebody has looked.
          </>
        ) : (
          <>
            <b>
              Laying workers threaten
              {window.day > plan.asOf ? ` from ${dayWords(window.day, plan.asOf)}` : ''}.
            </b>{' '}
            It stays on every round until somebody has looked.
          </>
        )}
      </p>
    </div>
  )
}
