/** A second person signs for one item on the screen: with the passphrase of their account, or drawn and with their own telephone. */
import { Fields, type FormState, idOf, ProblemSummary } from '../../forms/index.ts'
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
  /** Only an account will do: it can kill. */
  account: boolean
  /** A passphrase can be looked up here. */
  signal: boolean
}

export const SecondPage = ({ frame, form, path, name, item, what, of, others, ...p }: SecondPageProps) => (
  <Layout frame={frame} title="A second person signs" ways={false} scripts={['islands/sign.ts']}>
    <p class="crumb">
      <a href={`${path}#unmet`}>‹ {name}</a>
    </p>
    <h1>A second person signs</h1>
    <p>
      <b>{what}</b>: {of}
    </p>
    <ProblemSummary form={form} labels={labelOf} />
    <form method="post" action={`${path}/second`} class="sign-form" novalidate>
      <input type="hidden" name="item" value={item} />
      <input type="hidden" name="of" value={of} />
      <Fields
        form={form}
        frame={frame}
        prefix={`${item}.`}
        of={SECOND_FIELDS}
        show={['by', 'why']}
        with={{ by: { choices: others.map((value) => ({ value, label: value })) } }}
      />
      {p.signal ? (
        <Passphrase form={form} />
      ) : (
        <p class="hint">
          There is no signal here: who has an account can sign once there is. Better: have it met.
        </p>
      )}
      {p.account ? null : (
        <fieldset class="field">
          <legend>Somebody without an account here</legend>
          <Fields form={form} frame={frame} prefix={`${item}.`} of={SECOND_FIELDS} show={['phone']} />
          <Pad typed={form.typed} />
          <p class="hint" data-no-pad>
            Drawing needs JavaScript.
          </p>
        </fieldset>
      )}
      <Fields form={form} frame={frame} prefix={`${item}.`} of={SECOND_FIELDS} show={['reason']} />
      <div class="save">
        <button class="button button-do" type="submit">
          Sign for it
        </button>
      </div>
    </form>
  </Layout>
)

const labelOf = (field: string): string => {
  if (field === 'drawing') return 'Drawn name'
  if (field === 'passphrase') return 'Passphrase'
  return SECOND_FIELDS[field.split('.').at(-1) as 'by']?.label ?? ''
}

/** Never shown again once sent. */
const Passphrase = ({ form }: { form: FormState }) => {
  const id = idOf('passphrase')
  const problem = form.problems.find((p) => p.field === 'passphrase')?.message
  return (
    <div class={problem === undefined ? 'field' : 'field has-problem'}>
      <label for={id}>Your own passphrase here</label>
      <p class="hint" id={`${id}-hint`}>
        Who has an account types it themselves; nobody is signed in by it.
      </p>
      {problem === undefined ? null : (
        <p class="problem" id={`${id}-problem`}>
          {problem}
        </p>
      )}
      <span class="control">
        <input
          id={id}
          name="passphrase"
          type="password"
          class="wide"
          autocomplete="off"
          maxlength={200}
          aria-describedby={`${id}-hint`}
        />
      </span>
    </div>
  )
}
