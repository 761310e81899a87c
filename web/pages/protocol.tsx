/** The protocol: every rule and threshold with its default, its source and the yard's own value; who changed it when. */
import {
  DEFAULT_PROTOCOL,
  MONTHS,
  type Protocol,
  type ProtocolOverrides,
} from '../../src/recovery/protocol.ts'
import { SOURCE_OF } from '../../src/recovery/rule-sources.ts'
import { SOURCE_OF_SETTING } from '../../src/recovery/setting-sources.ts'
import {
  defaultWindow,
  monthField,
  protocolLabel,
  QUANTITY,
  WINDOW_KEYS,
  WINDOW_PARTS,
  type WindowKey,
  windowField,
  windowName,
} from '../forms/protocol-fields.ts'
import { one } from '../forms/typed.ts'
import { type FormState, idOf, NoteField, ProblemSummary } from '../parts/field.tsx'
import { type Frame, Layout } from '../parts/layout.tsx'
import { UnitsForm } from '../parts/units-form.tsx'
import {
  ANCHOR,
  MONTH_NAMES,
  NUMBERS,
  type NumberSetting,
  SETTING_WORDS,
  settingValue,
  windowWords,
} from '../words/protocol.ts'
import { unitOf } from '../words/units.ts'

export interface ProtocolPageProps {
  frame: Frame
  form: FormState
  /** What stands now. */
  protocol: Protocol
  own: ProtocolOverrides
  changes: { by: string; when: string; lines: string[]; reason: string | null }[]
  units: { form: FormState; machineZone: string }
  saved: string | null
  remaking: { total: number; done: number } | null
}

export const ProtocolPage = (p: ProtocolPageProps) => (
  <Layout frame={p.frame} title="Protocol">
    <h1>Protocol</h1>
    <ProblemSummary form={p.form} labels={protocolLabel} />
    {p.saved === null ? null : (
      <div class="notice notice-do" role="status">
        <p>{p.saved}</p>
      </div>
    )}
    {p.remaking === null ? null : (
      <div class="notice" role="status">
        <p>
          Plans are being made again: {p.remaking.done} of {p.remaking.total}.{' '}
          <a href="/protocol/progress">Watch</a>
        </p>
      </div>
    )}
    <p>
      The rules your plans are made by. An empty field goes by the default; what you type is yours. Nothing
      changes before you have seen what it would move. Biology is not here: how long brood takes is no choice.
    </p>
    <form method="post" action="/protocol/preview" id="entry-form" novalidate>
      <section class="section">
        <h2>Thresholds</h2>
        <ul class="rules">
          {NUMBERS.map((key) => (
            <NumberRow name={key} p={p} />
          ))}
          <Months p={p} />
          <li class="rule">
            <div>
              <b>A suspected brood disease</b>
              <p>
                holds a colony until somebody records who cleared it: inspector, laboratory, or a later look
                of your own.
              </p>
              <p class="fine">{SOURCE_OF_SETTING.clearance}</p>
            </div>
          </li>
        </ul>
      </section>
      <section class="section">
        <h2>Windows of the checks</h2>
        <p class="soft">Days after what each counts from: when it opens, when it is due, its last day.</p>
        <ul class="rules">
          {WINDOW_KEYS.map((key) => (
            <WindowRow name={key} p={p} />
          ))}
        </ul>
      </section>
      <NoteField
        form={p.form}
        name="reason"
        label="Why the change (may stay empty)"
        hint="Kept in the history of the protocol."
        maxlength={500}
        rows={2}
      />
      <div class="save">
        <button class="button button-do" type="submit">
          See what it would move
        </button>
      </div>
    </form>
    <History changes={p.changes} />
    <section class="section">
      <h2>Make all plans again</h2>
      <p class="soft">
        Not needed in ordinary times: plans follow every entry and every change by themselves. For peace of
        mind, from the journal, under the rules as they stand.
      </p>
      <form method="post" action="/protocol/rebuild">
        <button class="button" type="submit">
          Make all plans again
        </button>
      </form>
    </section>
    <section class="section" id="units">
      <h2>Units and time zone</h2>
      <UnitsForm form={p.units.form} machineZone={p.units.machineZone} back="/protocol" />
    </section>
  </Layout>
)

const problemAt = (form: FormState, field: string): string | undefined =>
  form.problems.find((x) => x.field === field)?.message

const Yours = ({ own }: { own: boolean }) => (own ? <span class="yours">yours</span> : null)

const NumberRow = ({ name, p }: { name: NumberSetting; p: ProtocolPageProps }) => {
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

const Months = ({ p }: { p: ProtocolPageProps }) => (
  <li class="rule rule-months">
    <div>
      <b>Mites, too many from, by month</b>{' '}
      <Yours own={Object.keys(p.own.miteThresholdByMonth ?? {}).length > 0} />
      <p>A month left empty goes by the threshold above. Counts the month of the wash.</p>
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

const PART_NAMES = { opens: 'opens', due: 'due', closes: 'last day' } as const

const WindowRow = ({ name, p }: { name: WindowKey; p: ProtocolPageProps }) => {
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

const History = ({ changes }: Pick<ProtocolPageProps, 'changes'>) => (
  <section class="section">
    <h2>Who changed it</h2>
    {changes.length === 0 ? (
      <p class="soft">Never changed: the defaults stand.</p>
    ) : (
      <div class="table-scroll">
        <table class="history">
          <thead>
            <tr>
              <th scope="col">When</th>
              <th scope="col">Who</th>
              <th scope="col">What</th>
              <th scope="col">Why</th>
            </tr>
          </thead>
          <tbody>
            {changes.map((c) => (
              <tr>
                <td>{c.when}</td>
                <td>{c.by}</td>
                <td>
                  {c.lines.map((line) => (
                    <div>{line}</div>
                  ))}
                </td>
                <td>{c.reason ?? ''}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    )}
  </section>
)
