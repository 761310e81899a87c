/** Logging an intake from the truck. */

import { type FormState, labelOf } from '../../forms/index.ts'
import { FormPage, type Frame, RemovalCautions } from '../../parts/index.ts'
import { IntakeFields } from './fields/intake.tsx'

export interface IntakeProps {
  frame: Frame
  form: FormState
  yards: string[]
  types: string[]
  /** Filled from a removal sheet: its name and page, and where the form is posted. */
  sheet?: { name: string; path: string; action: string; advice: string[] }
}

const intakeLabel = (field: string): string =>
  field === 'by' ? 'Your name' : field === 'colony' ? 'Tag' : labelOf('intake', field)

export const IntakePage = (p: IntakeProps) => (
  <FormPage
    frame={p.frame}
    title="Log an intake"
    form={p.form}
    action={p.sheet?.action ?? '/intake'}
    back={p.sheet === undefined ? { href: '/', label: 'Today' } : { href: p.sheet.path, label: p.sheet.name }}
    button="Save and make the plan"
    labels={intakeLabel}
    photos
    intro={
      p.sheet === undefined ? (
        <RemovalCautions />
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
    <IntakeFields
      form={p.form}
      frame={p.frame}
      yards={p.yards}
      types={p.types}
      told={p.sheet !== undefined}
    />
  </FormPage>
)
