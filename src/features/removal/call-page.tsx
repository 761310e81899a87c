/** Somebody called: a minute on the telephone. */
import type { FormState } from '../../forms/index.ts'
import { FormPage, type Frame } from '../../parts/index.ts'
import { partLabel } from './form.ts'
import { CallFields } from './part-fields.tsx'

/** What one caller said: of a call that nobody saved, none of it is said by whoever calls on another day. */
const OF_CALL =
  'what since access heightM sprayed sprayedNote bystanders bystandersNote caller plannedOn plannedAt told'

export const CallPage = ({ frame, form, types }: { frame: Frame; form: FormState; types: string[] }) => (
  <FormPage
    frame={frame}
    title="Somebody called"
    form={form}
    action="/removals/new"
    back={{ href: '/removals', label: 'Removals' }}
    button="Save"
    labels={(field) => partLabel('job', field)}
    ids={['id', 'version']}
    photos
    ofDay={OF_CALL}
  >
    <input type="hidden" name="shownOn" value={frame.today} />
    <CallFields form={form} frame={frame} types={types} />
  </FormPage>
)
