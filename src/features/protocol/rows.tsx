/** The rows of the protocol: a threshold, the months, a window; each with its default, its source, and the yard's own value. */

import { type FormState, idOf, one, Ticks } from '../../forms/index.ts'
import type { Frame } from '../../parts/index.ts'
import {
  CLIMATES,
  DEFAULT_PROTOCOL,
  DORMANT_MITES,
  MONTHS,
  type Protocol,
  type ProtocolOverrides,
  SOURCE_OF,
  SOURCE_OF_SETTING,
  suggestedMatingMonths,
} from '../../recovery/index.ts'
import {
  CLIMATE_WORDS,
  hemisphereOf,
  MONTH_CHOICES,
  MONTH_NAMES,
  stretchWords,
  unitOf,
} from '../../words/index.ts'
import {
  defaultWindow,
  MATING_FIELD,
  monthField,
  protocolLabel,
  QUANTITY,
  WINDOW_PARTS,
  type WindowKey,
  windowField,
  windowName,
} from './form.ts'
import { ANCHOR, type NumberSetting, SETTING_WORDS, settingValue, windowWords } from './words.ts'

/** What every row is held against. */
export interface RowsProps {
  frame: Frame
  form: FormState
  /** What stands now. */
  protocol: Protocol
  own: ProtocolOverrides
}

const problemAt = (form: FormState, field: string): string | undefined =>
  form.problems.find((x) => x.field === field)?.message

const Yours = ({ own }: { own: boolean }) => (own ? <span class="yours">yours</span> : null)

export const NumberRow = ({ name, p }: { name: NumberSetting; p: RowsProps }) => {
  const { label, says, unit } = SETTING_WORDS[name]
  const { units } = p.frame
  const quantity = QUANTITY[name]
  const problem = problemAt(p.form, name)
  return (
    <li class={problem === undefined ? 'rule' : 'rule has-problem'}>
      <div>
        <label for={idOf(name)}>
          <b>{label}</b>
        </label>{' '}
        <Yours own={p.own[name] !== undefined} />
        <p>
          {says} Default: {settingValue(name, DEFAULT_PROTOCOL, units)}.
        </p>
        {problem === undefined ? null : <p class="problem">{problem}</p>}
        <p class="fine">{SOURCE_OF_SETTING[name]}</p>
      </div>
      <span class="control">
        <input
          id={idOf(name)}
          name={name}
          type="text"
          inputmode="decimal"
          maxlength={8}
          autocomplete="off"
          placeholder={settingValue(name, DEFAULT_PROTOCOL, units).split(' ')[0]}
          value={one(p.form.typed, name)}
        />
        <span class="unit">{quantity === undefined ? unit : unitOf(units, quantity).symbol}</span>
      </span>
    </li>
  )
}

export const Months = ({ p }: { p: RowsProps }) => (
  <li class="rule rule-months">
    <div>
      <b>Mites, too many from, by month</b>{' '}
      <Yours own={Object.keys(p.own.miteThresholdByMonth ?? {}).length > 0} />
      <p>
        A month left empty goes by the threshold above. Counts the month of the wash. Far from the months in
        which queens mate, {DORMANT_MITES} is usual.
      </p>
      <p class="fine">{SOURCE_OF_SETTING.miteThresholdByMonth}</p>
    </div>
    <ul class="months">
      {MONTHS.map((m) => {
        const field = monthField(m)
        const problem = problemAt(p.form, field)
        return (
          <li class={problem === undefined ? undefined : 'has-problem'}>
            <label for={idOf(field)}>{MONTH_NAMES[m].slice(0, 3)}</label>
            <input
              id={idOf(field)}
              name={field}
              type="text"
              inputmode="decimal"
              maxlength={5}
              autocomplete="off"
              placeholder={String(p.protocol.miteThreshold)}
              value={one(p.form.typed, field)}
            />
            {problem === undefined ? null : <span class="problem">{problem}</span>}
          </li>
        )
      })}
    </ul>
  </li>
)

const suggestions = (zone: string): string =>
  CLIMATES.map(
    (c) => `${CLIMATE_WORDS[c].toLowerCase()} ${stretchWords(suggestedMatingMonths(hemisphereOf(zone), c))}`,
  ).join('; ')

export const MatingMonths = ({ p }: { p: RowsProps }) => {
  const problem = problemAt(p.form, MATING_FIELD)
  return (
    <li class={problem === undefined ? 'rule rule-months' : 'rule rule-months has-problem'}>
      <div>
        <b>{protocolLabel(MATING_FIELD)}</b> <Yours own={p.own.matingMonths !== undefined} />
        <p>
          Tap those in which virgins can mate where your yards are. A queen that would fly in another month is
          not raised: the plan asks for a mated one, or to unite. None tapped: no month rules anything out.
        </p>
        <p class="soft">Suggested for your time zone: {suggestions(p.frame.zone)}.</p>
        {problem === undefined ? null : <p class="problem">{problem}</p>}
        <p class="fine">{SOURCE_OF_SETTING.matingMonths}</p>
      </div>
      <Ticks form={p.form} name={MATING_FIELD} label="Months" across={4} choices={MONTH_CHOICES} />
    </li>
  )
}

const PART_NAMES = { opens: 'opens', due: 'due', closes: 'last day' } as const

export const WindowRow = ({ name, p }: { name: WindowKey; p: RowsProps }) => {
  const usual = defaultWindow(name, p.own.holdDays)
  const own = name === 'salvagedQueenRelease' ? p.own.salvagedQueenRelease : p.own.windows?.[name]
  const problem = WINDOW_PARTS.map((part) => problemAt(p.form, windowField(name, part))).find(Boolean)
  return (
    <li class={problem === undefined ? 'rule' : 'rule has-problem'}>
      <div>
        <b>{windowName(name)}</b> <Yours own={own !== undefined} />
        <p>
          Counts from {ANCHOR[name]}. Default: {windowWords(usual)}.
        </p>
        {problem === undefined ? null : <p class="problem">{problem}</p>}
        <p class="fine">
          {name === 'salvagedQueenRelease' ? SOURCE_OF_SETTING.salvagedQueenRelease : SOURCE_OF[name]}
        </p>
      </div>
      <span class="window-fields">
        {WINDOW_PARTS.map((part) => {
          const field = windowField(name, part)
          return (
            <label for={idOf(field)}>
              <span>{PART_NAMES[part]}</span>
              <input
                id={idOf(field)}
                name={field}
                type="text"
                inputmode="numeric"
                maxlength={3}
                autocomplete="off"
                aria-label={`${windowName(name)}: ${PART_NAMES[part]}`}
                placeholder={String(usual[part])}
                value={one(p.form.typed, field)}
              />
            </label>
          )
        })}
      </span>
    </li>
  )
}
