/** A second person who has no account here signs for one item on the screen. */
import { Fields, type FormState, ProblemSummary, TextField } from '../../forms/index.ts'
import { type Frame, Layout } from '../../parts/index.ts'
import { SECOND_FIELDS } from './fields.ts'
import { Pad } from './pad.tsx'

interface SecondPageProps {
  frame: Frame
  form: FormState
  path: string
  name: string
  item: string
  /** The item, and what of it is unmet. */
  what: string
  of: string
}

export const SecondPage = ({ frame, form, path, name, item, what, of }: SecondPageProps) => (
  <Layout frame={frame} title="A second person signs" ways={false} scripts={['islands/sign.ts']}>
    <p class="crumb">
      <a href={`${path}#unmet`}>‹ {name}</a>
    </p>
    <h1>A second person signs</h1>
    <p>
      <b>{what}</b>: {of}
    </p>
    <ProblemSummary form={form} labels={(field) => (field.endsWith('.by') ? 'Name' : 'What they say')} />
    <form method="post" action={`${path}/second`} class="sign-form" novalidate>
      <input type="hidden" name="item" value={item} />
      <input type="hidden" name="of" value={of} />
      <TextField form={form} name={`${item}.by`} label="First and last name" maxlength={120} required />
      <Fields form={form} frame={frame} prefix={`${item}.`} of={SECOND_FIELDS} show={['why', 'reason']} />
      <Pad typed={form.typed} />
      <p class="hint" data-no-pad>
        Drawing needs JavaScript. Without it only somebody with an account can sign.
      </p>
      <div class="save">
        <button class="button button-do" type="submit">
          Sign for it
        </button>
      </div>
    </form>
  </Layout>
)
