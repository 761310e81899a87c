/** The first start: whoever can read the terminal becomes the first operator. */
import { Choices, type FormState, Save, TextField, Ticks } from '../../forms/index.ts'
import { type Frame, Layout, Refusal } from '../../parts/index.ts'
import { CLIMATES, suggestedMatingMonths } from '../../recovery/index.ts'
import { CLIMATE_WORDS, hemisphereOf, MONTH_CHOICES, stretchWords } from '../../words/index.ts'
import { NewPassphrase } from './passphrase.tsx'

const LABELS: Record<string, string> = {
  token: 'Set-up word',
  name: 'Your name',
  passphrase: 'Passphrase',
  again: 'Passphrase again',
  climate: 'Climate',
  matingMonths: 'Months in which queens mate',
  inspector: 'Apiary inspector',
  timeZone: 'Time zone of the yard',
}

/** A climate is one tap; the months themselves may be tapped instead. */
const Season = ({ form, frame }: { form: FormState; frame: Frame }) => (
  <>
    <Choices
      form={form}
      name="climate"
      label="In which months do queens mate where you are?"
      hint="Warm, calm days with drones about. Outside of them no queen is raised, and in the months far from them 2 mites per 100 bees are too many. The protocol page changes both."
      choices={[
        { value: '', label: 'Say it later' },
        ...CLIMATES.map((climate) => ({
          value: climate,
          label: CLIMATE_WORDS[climate],
          hint: stretchWords(suggestedMatingMonths(hemisphereOf(frame.zone), climate)),
        })),
      ]}
      across={2}
    />
    <details class="also" open={(form.typed.matingMonths ?? []).length > 0}>
      <summary>Other months</summary>
      <Ticks form={form} name="matingMonths" label="Queens mate in" choices={MONTH_CHOICES} across={4} />
    </details>
  </>
)

export const SetUpPage = ({ frame, form }: { frame: Frame; form: FormState }) => (
  <Layout frame={frame} title="Set up" ways={false}>
    <h1>Set up this yard’s book</h1>
    <Refusal form={form} labels={LABELS} heading="Not set up yet" />
    <p>
      Make the first account, an operator’s. Operators invite everybody else, and look after rules and
      backups. This page is gone once the account is made.
    </p>
    <form method="post" action="/set-up" novalidate class="form-alone">
      <TextField
        form={form}
        name="token"
        label="Set-up word"
        hint="Printed in the terminal where the server was started. Filled in already if you came by the link there."
        maxlength={100}
        required
        wide
      />
      <TextField
        form={form}
        name="name"
        label="Your name"
        hint="Signs what you write down, so it stays yours for good."
        maxlength={60}
        autocomplete="username"
        required
        wide
      />
      <NewPassphrase form={form} label="Passphrase" again="Passphrase again" />
      <Season form={form} frame={frame} />
      <TextField
        form={form}
        name="timeZone"
        label="Time zone of the yard"
        hint={`Decides which day it is there, and so what is due. Empty: ${frame.zone}, as this server has it.`}
        maxlength={60}
        wide
      />
      <TextField
        form={form}
        name="inspector"
        label="Apiary inspector (may stay empty)"
        hint="Name and telephone number: shown where a brood disease is suspected."
        maxlength={200}
        wide
      />
      <Save>Make the account</Save>
    </form>
  </Layout>
)
