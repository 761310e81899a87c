/** Logging an intake from the truck. */

import type { Child } from 'hono/jsx'
import { type FormState, idOf, labelOf, one } from '../../forms/index.ts'
import { FormPage, type Frame, RemovalCautions } from '../../parts/index.ts'
import { dayWords } from '../../words/index.ts'
import { IntakeFields } from './fields/intake.tsx'

/** A removal sheet that is open, and its page. */
export interface OpenJob {
  name: string
  path: string
}

export interface IntakeProps {
  frame: Frame
  form: FormState
  yards: string[]
  types: string[]
  /** The address of its job's intake, where it is of one. */
  draft?: string | undefined
  /** Open jobs that the bees may be of. */
  jobs?: readonly OpenJob[]
  /** Filled from a removal sheet: its name and page, and where the form is posted. */
  sheet?: {
    name: string
    path: string
    action: string
    advice: string[]
    /** The day of the job, where the box came so long after it that another opening is likelier. */
    later?: string | undefined
    /** What is asked first, where no “go” stands behind the box. */
    asked?: Child
  }
}

const intakeLabel = (field: string): string =>
  field === 'by'
    ? 'Your name'
    : field === 'otherJob'
      ? 'From which job'
      : field === 'thatOpening'
        ? 'From which opening'
        : field === 'colony'
          ? 'Tag'
          : labelOf('intake', field)

export const IntakePage = (p: IntakeProps) => (
  <FormPage
    frame={p.frame}
    title="Log an intake"
    form={p.form}
    action={p.sheet?.action ?? '/intake'}
    draft={p.draft}
    back={p.sheet === undefined ? { href: '/', label: 'Today' } : { href: p.sheet.path, label: p.sheet.name }}
    button="Save and make the plan"
    labels={intakeLabel}
    photos
    intro={
      p.sheet === undefined ? (
        <>
          <RemovalCautions />
          {(p.jobs ?? []).length === 0 ? null : (
            <div class="notice">
              <p>
                <b>From one of these jobs?</b> Log it from its sheet, so that nothing is typed twice and the
                job is closed:
              </p>
              <ul>
                {p.jobs?.map((j) => (
                  <li>
                    <a class="tall" href={j.path}>
                      {j.name}
                    </a>
                  </li>
                ))}
              </ul>
            </div>
          )}
        </>
      ) : (
        <>
          <p class="soft">
            Filled from the removal sheet. Still to say: the tag on the box, the yard and the stand.
          </p>
          {p.sheet.advice.length === 0 ? null : (
            <div class="notice">
              {p.sheet.advice.map((sentence) => (
                <p>{sentence}</p>
              ))}
            </div>
          )}
        </>
      )
    }
  >
    {(p.jobs ?? []).length === 0 ? null : (
      <div
        class={p.form.problems.some((x) => x.field === 'otherJob') ? 'field has-problem' : 'field'}
        id={idOf('otherJob')}
      >
        <label class="tap">
          <input type="checkbox" name="otherJob" value="yes" checked={one(p.form.typed, 'otherJob') !== ''} />
          <span>These bees are of none of the jobs above</span>
        </label>
      </div>
    )}
    {p.sheet?.asked ?? null}
    {p.sheet?.later === undefined ? null : (
      <div
        class={p.form.problems.some((x) => x.field === 'thatOpening') ? 'field has-problem' : 'field'}
        id={idOf('thatOpening')}
      >
        <label class="tap">
          <input
            type="checkbox"
            name="thatOpening"
            value="yes"
            checked={one(p.form.typed, 'thatOpening') !== ''}
          />
          <span>
            Taken out {dayWords(p.sheet.later, p.frame.today)}, and nothing was opened since. If it was:{' '}
            <b>begin a new sheet</b> instead
          </span>
        </label>
      </div>
    )}
    <IntakeFields
      form={p.form}
      frame={p.frame}
      yards={p.yards}
      types={p.types}
      told={p.sheet !== undefined}
    />
  </FormPage>
)
