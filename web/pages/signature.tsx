/** Who signs what is written down in this browser. */
import { type FormState, ProblemSummary, TextField } from '../parts/field.tsx'
import { type Frame, Layout } from '../parts/layout.tsx'

export const SignaturePage = ({ frame, form, saved }: { frame: Frame; form: FormState; saved: boolean }) => (
  <Layout frame={frame} title="Who signs">
    <h1>Who signs</h1>
    <ProblemSummary form={form} labels={() => 'Your name'} />
    {saved && frame.signer !== null ? (
      <div class="notice notice-do" role="status">
        <p>
          Entries made here are signed <b>{frame.signer}</b> from now on. What was signed before stays as it
          is.
        </p>
      </div>
    ) : null}
    <p>Every entry in the journal carries the name of the person who made it.</p>
    <form method="post" action="/name" novalidate>
      <TextField form={form} name="by" label="Your name" maxlength={60} autocomplete="name" required wide />
      <div class="save">
        <button class="button button-do" type="submit">
          Sign with this name
        </button>
      </div>
    </form>
  </Layout>
)
