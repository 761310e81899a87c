/** Ending a job without a removal, and erasing a sheet. */
import { Fields, type FormState, NoteField, ProblemSummary } from '../../forms/index.ts'
import { FormPage, type Frame, Layout } from '../../parts/index.ts'
import { CALL_BACK_FIELDS } from './fields.ts'

interface EndProps {
  frame: Frame
  form: FormState
  path: string
  name: string
}

export const RemovalEndPage = ({ frame, form, path, name }: EndProps) => (
  <Layout frame={frame} title="Ends without a removal" ways={false}>
    <p class="crumb">
      <a href={path}>‹ {name}</a>
    </p>
    <h1>Ends without a removal</h1>
    <ProblemSummary form={form} labels={() => 'Why'} />
    <form method="post" action={`${path}/end`} id="entry-form" novalidate>
      <NoteField
        form={form}
        name="why"
        label="Why"
        hint="Left by themselves, not honey bees, somebody else took them, the customer said no."
        maxlength={500}
      />
      <div class="save">
        <button class="button button-do" type="submit">
          Save
        </button>
      </div>
    </form>
  </Layout>
)

/** The customer called again: an entry on the job, counted in the review by kind of removal. */
export const CallBackPage = ({ frame, form, path, name }: EndProps) => (
  <FormPage
    frame={frame}
    title="They called again"
    form={form}
    action={`${path}/call-back`}
    back={{ href: path, label: name }}
    button="Save"
    labels={(field) => CALL_BACK_FIELDS[field as 'on']?.label ?? ''}
    ids={[]}
  >
    <Fields form={form} frame={frame} of={CALL_BACK_FIELDS} show={['what', 'on', 'note']} />
  </FormPage>
)

export const RemovalErasePage = ({
  frame,
  path,
  name,
  versions,
}: Omit<EndProps, 'form'> & { versions: number }) => (
  <Layout frame={frame} title="Erase a sheet" ways={false}>
    <p class="crumb">
      <a href={path}>‹ {name}</a>
    </p>
    <h1>Erase {name}</h1>
    <p>
      The customer’s name, address and signature, and everything else on this sheet, go: {versions}{' '}
      {versions === 1 ? 'version' : 'versions'}. Colonies that came of it stay in the journal. Backups made
      before keep it until they are rotated out.
    </p>
    <form method="post" action={`${path}/erase`}>
      <div class="save">
        <button class="button button-late" type="submit">
          Erase it
        </button>
        <a class="button" href={path}>
          Keep it
        </a>
      </div>
    </form>
  </Layout>
)
