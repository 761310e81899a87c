/** Couldn't get to it: why, and when it is tried again. */

import { thenTo } from '../../app/index.ts'
import { addDays } from '../../days.ts'
import { FIELDS, Fields } from '../../forms/index.ts'
import type { Plan } from '../../recovery/index.ts'
import type { Words } from '../../words/index.ts'
import { type EntryFormView, SmallFormPage } from '../entries/index.ts'
import { closingWindow } from './urgency.ts'

const AHEAD = [1, 2, 3, 7] as const

export interface MissedProps extends EntryFormView {
  /** Where to go once it is saved. */
  then: string | null
  /** Where one came from. */
  back: string
}

export const MissedPage = ({ frame, form, summary, path, then, back }: MissedProps) => {
  const { dates, round } = frame.words
  return (
    <SmallFormPage
      frame={frame}
      form={form}
      kind="missed-visit"
      title={round.missedTitle(summary.tag)}
      action={thenTo(`${path}/missed`, then)}
      back={{ href: back, label: summary.tag }}
      button={round.saveAndWalk}
      intro={<Closing plan={summary.plan} words={frame.words} />}
    >
      <input type="hidden" name="on" value={frame.today} />
      <Fields
        form={form}
        frame={frame}
        of={FIELDS['missed-visit']}
        show={['reason', 'again', 'note']}
        with={{
          again: {
            label: round.tryAgain,
            asks: round.tryAgain,
            hint: undefined,
            choices: AHEAD.map((n) => {
              const day = addDays(frame.today, n)
              return { value: day, label: round.ahead[n], hint: dates.day(day, frame.today) }
            }),
            across: 2,
            standing: addDays(frame.today, 1),
          },
          note: { rows: 2 },
        }}
      />
    </SmallFormPage>
  )
}

/** What does not wait for a better day. */
const Closing = ({ plan, words }: { plan: Plan; words: Words }) => {
  const { dates, round } = words
  const window = closingWindow(plan)
  if (window === null) return null
  const ahead = window.day > plan.asOf
  const day = dates.day(window.day, plan.asOf)
  return (
    <div class="notice notice-late">
      {window.of === 'cells' ? (
        <p>
          <b>{window.day === plan.asOf ? round.closingToday : round.closingUntil(day)}</b>{' '}
          {round.beesDoNotWait}
        </p>
      ) : (
        <p>
          <b>{round.threatenFrom(ahead ? day : null)}</b> {round.staysOn}
        </p>
      )}
    </div>
  )
}
