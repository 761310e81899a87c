/** The yard's units and time zone. */
import { Choices, type FormState, ProblemSummary, TextField } from '../parts/field.tsx'
import { type Frame, Layout } from '../parts/layout.tsx'

interface SettingsProps {
  frame: Frame
  form: FormState
  /** The machine's own zone, which stands until the yard chooses. */
  machineZone: string
  saved: boolean
}

const LABELS: Record<string, string> = { temperature: 'Temperature', weight: 'Weight', timeZone: 'Time zone' }

export const SettingsPage = ({ frame, form, machineZone, saved }: SettingsProps) => (
  <Layout frame={frame} title="Units and time zone">
    <h1>Units and time zone</h1>
    <ProblemSummary form={form} labels={(field) => LABELS[field] ?? ''} />
    {saved ? (
      <div class="notice notice-do" role="status">
        <p>Saved, for everyone in this book.</p>
      </div>
    ) : null}
    <form method="post" action="/settings" novalidate>
      <Choices
        form={form}
        name="temperature"
        label="Temperature"
        choices={[
          { value: 'F', label: '°F' },
          { value: 'C', label: '°C' },
        ]}
        across={3}
      />
      <Choices
        form={form}
        name="weight"
        label="Weight"
        choices={[
          { value: 'lb', label: 'pounds' },
          { value: 'kg', label: 'kilograms' },
        ]}
        across={3}
      />
      <TextField
        form={form}
        name="timeZone"
        label="Time zone"
        hint={`Decides which day is today in the yard. Empty: ${machineZone}, as this machine has it. For example America/Phoenix.`}
        maxlength={60}
        list={Intl.supportedValuesOf('timeZone')}
        wide
      />
      <div class="save">
        <button class="button button-do" type="submit">
          Save
        </button>
      </div>
    </form>
  </Layout>
)
