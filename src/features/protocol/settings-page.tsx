/** The yard's units and time zone. */
import { type FormState, ProblemSummary } from '../../forms/index.ts'
import { type Frame, Layout, UNITS_LABELS, UnitsForm } from '../../parts/index.ts'

interface SettingsProps {
  frame: Frame
  form: FormState
  /** The machine's own zone, which stands until the yard chooses. */
  machineZone: string
  saved: boolean
}

export const SettingsPage = ({ frame, form, machineZone, saved }: SettingsProps) => (
  <Layout frame={frame} title="Units and time zone">
    <h1>Units and time zone</h1>
    <ProblemSummary form={form} labels={(field) => UNITS_LABELS[field] ?? ''} />
    {saved ? (
      <div class="notice notice-do" role="status">
        <p>Saved, for everyone in this book.</p>
      </div>
    ) : null}
    <UnitsForm form={form} machineZone={machineZone} />
  </Layout>
)
