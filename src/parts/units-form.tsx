/** Units, time zone, and how the yard is called. Shown on its own page and on the protocol's. */
import { Choices, type FormState, Save, TextField } from '../forms/index.ts'

interface UnitsFormProps {
  form: FormState
  /** The machine's own zone, which stands until the yard chooses. */
  machineZone: string
  /** Where one is led after saving, when not to the page of its own. */
  back?: '/protocol'
}

export const UNITS_LABELS: Record<string, string> = {
  temperature: 'Temperature',
  weight: 'Weight',
  timeZone: 'Time zone',
  yardName: 'Name of the yard',
  inspector: 'Apiary inspector',
  currency: 'Currency',
}

export const UnitsForm = ({ form, machineZone, back }: UnitsFormProps) => (
  <form method="post" action="/settings" novalidate>
    {back === undefined ? null : <input type="hidden" name="back" value={back} />}
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
      label="Weight, and with it lengths and syrup"
      choices={[
        { value: 'lb', label: 'pounds, inches, feet, US quarts' },
        { value: 'kg', label: 'kilograms, mm, metres, litres' },
      ]}
      across={2}
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
    <TextField
      form={form}
      name="yardName"
      label="Name of the yard"
      hint="On agreements and letters to customers."
      maxlength={80}
      wide
    />
    <TextField
      form={form}
      name="inspector"
      label="Apiary inspector"
      hint="Name and telephone number: shown to everybody where a brood disease is suspected."
      maxlength={200}
      wide
    />
    <TextField
      form={form}
      name="currency"
      label="Currency"
      hint="The sign before prices and costs: $, €, £ …"
      maxlength={5}
    />
    <Save>Save</Save>
  </form>
)
