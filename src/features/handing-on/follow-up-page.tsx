/** How a colony that moved out fares: asked once, written down by the yard. */

import { Fields, type FormState, Group } from '../../forms/index.ts'
import { FormPage, type Frame, Reach } from '../../parts/index.ts'
import { FOLLOW_UP } from './follow-up-form.ts'

interface FollowUpProps {
  frame: Frame
  form: FormState
  tag: string
  path: string
  /** 'Moved out 3 months ago.' */
  left: string
  /** What was told so far, a sentence each. */
  told: string[]
  /** How to reach the new keeper, as it was written down. */
  buyer: { phone?: string | undefined; email?: string | undefined }
  /** Nobody was asked yet, and it is time: a tap says that they were. */
  mayAsk: boolean
}

export const FollowUpPage = (p: FollowUpProps) => (
  <FormPage
    frame={p.frame}
    title={`How is ${p.tag}?`}
    form={p.form}
    action={`${p.path}/follow-up`}
    back={{ href: p.path, label: p.tag }}
    button="Save what was told"
    labels={(field) => (FOLLOW_UP as Record<string, { label: string }>)[field]?.label ?? ''}
    intro={
      <>
        <p>{p.left}</p>
        {p.told.map((t) => (
          <p>{t}</p>
        ))}
        <Reach phone={p.buyer.phone} email={p.buyer.email} />
      </>
    }
    beside={
      p.mayAsk ? (
        <form method="post" action={`${p.path}/follow-up/asked`}>
          <p class="soft">One question a colony, about a season after it left: nobody is asked twice.</p>
          <button class="button" type="submit">
            Asked, no answer
          </button>
        </form>
      ) : null
    }
  >
    <Group legend="What was told">
      <Fields
        form={p.form}
        frame={p.frame}
        of={FOLLOW_UP}
        show={['found', 'queenright', ['on', 'deadSince']]}
      />
    </Group>
  </FormPage>
)
