/** What things are worth here, and what is at hand: a form of its own on the protocol's page. */
import { COST_NAMES, DEFAULT_COSTS, DEFAULT_SUPPLIES } from '../../decision/index.ts'
import { type FormState, Save, TextField } from '../../forms/index.ts'
import { Fold } from '../../parts/index.ts'
import { COST_LABELS, costField, SUPPLY_FIELDS, SUPPLY_NAMES } from './costs-form.ts'

const SUPPLY_HINTS: Record<(typeof SUPPLY_NAMES)[number], string> = {
  queensInHand: 'Empty: nobody counts them here, and advice says to buy. With 0 it says to order, and when.',
  daysUntilQueens: `Empty: ${DEFAULT_SUPPLIES.daysUntilQueens} days (common practice).`,
  eggFrames: 'Empty: one can be had. With 0 no frame of eggs is advised.',
}

export const Costs = ({ form, currency }: { form: FormState; currency: string }) => (
  <Fold id="costs" title="What things are worth here, and what is at hand" open={form.problems.length > 0}>
    <p class="soft">
      Advice weighs what becomes of a colony against what it costs. The defaults are common prices
      (judgement).
    </p>
    <form method="post" action="/protocol/costs" novalidate>
      <div class="field-row">
        {COST_NAMES.map((name) => (
          <TextField
            form={form}
            name={costField(name)}
            label={COST_LABELS[name]}
            hint={`Empty: ${currency}${DEFAULT_COSTS[name]}.`}
            unit={currency}
            inputmode="decimal"
            maxlength={10}
          />
        ))}
      </div>
      {SUPPLY_NAMES.map((name) => (
        <TextField
          form={form}
          name={name}
          label={SUPPLY_FIELDS[name].label}
          hint={SUPPLY_HINTS[name]}
          inputmode="numeric"
          maxlength={4}
        />
      ))}
      <Save quiet>Save, and weigh all advice anew</Save>
    </form>
  </Fold>
)
