/** A second person signs for one item on the screen: their account is tapped or their name typed, and they draw it. */
import { Fields, type FormState, ProblemSummary } from '../../forms/index.ts'
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
  /** Accounts that can sign in, but whoever is signed in or decided. */
  others: readonly string[]
}

export const SecondPage = ({ frame, form, path, name, item, what, of, others }: SecondPageProps) => (
  <Layout frame={frame} title="A second person signs" ways={false} scripts={['islands/sign.ts']}>
    <p class="crumb">
      <a href={`${path}#unmet`}>‹ {name}</a>
    </p>
    <h1>A second person signs</h1>
    <p>
      <b>{what}</b>: {of}
    </p>
    <ProblemSummary
      form={form}
      labels={(field) =>
        field === 'drawing' ? 'Drawn name' : field.endsWith('.by') ? 'Second person' : 'What they say'
      }
    />
    <form method="post" action={`${path}/second`} class="sign-form" novalidate>
      <input type="hidden" name="item" value={item} />
      <input type="hidden" name="of" value={of} />
      <Fields
        form={form}
        frame={frame}
        prefix={`${item}.`}
        of={SECOND_FIELDS}
        show={['by', 'why', 'reason']}
        with={{ by: { choices: others.map((value) => ({ value, label: value })) } }}
      />
      <Pad typed={form.typed} />
      <p class="hint" data-no-pad>
        Drawing needs JavaScript.
      </p>
      <div class="save">
        <button class="button button-do" type="submit">
          Sign for it
        </button>
      </div>
    </form>
  </Layout>
)
