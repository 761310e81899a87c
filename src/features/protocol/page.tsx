/** The protocol: every rule and threshold with its default, its source and the yard's own value; who changed it when. */

import { type FormState, NoteField, ProblemSummary, Save } from '../../forms/index.ts'
import { Fold, Layout, UnitsForm, Wide } from '../../parts/index.ts'
import { SOURCE_OF_SETTING } from '../../recovery/index.ts'
import { Costs } from './costs.tsx'
import { costLabel } from './costs-form.ts'
import { protocolLabel, WINDOW_KEYS, WINDOW_PARTS, windowField } from './form.ts'
import { MatingMonths, Months, NumberRow, type RowsProps, WindowRow } from './rows.tsx'
import { NUMBERS } from './words.ts'

export interface ProtocolPageProps extends RowsProps {
  changes: { by: string; when: string; lines: string[]; reason: string | null }[]
  costs: { form: FormState; currency: string }
  units: { form: FormState; machineZone: string }
  saved: string | null
  recomputing: { total: number; done: number } | null
}

export const ProtocolPage = (p: ProtocolPageProps) => (
  <Layout frame={p.frame} title="Protocol">
    <h1>Protocol</h1>
    <ProblemSummary form={p.form} labels={(field) => costLabel(field) ?? protocolLabel(field)} />
    {p.saved === null ? null : (
      <div class="notice notice-do" role="status">
        <p>{p.saved}</p>
      </div>
    )}
    {p.recomputing === null ? null : (
      <div class="notice" role="status">
        <p>
          Plans are being made again: {p.recomputing.done} of {p.recomputing.total}.{' '}
          <a href="/protocol/progress">Watch</a>
        </p>
      </div>
    )}
    <p>
      The rules your plans are made by. An empty field goes by the default; what you type is yours. Nothing
      changes before you have seen what it would move. Biology is not here: how long brood takes is no choice.
    </p>
    <form method="post" action="/protocol/preview" id="entry-form" novalidate>
      <Fold id="thresholds" title="Thresholds" says={yoursOf(p, false)} open={refused(p, false)}>
        <ul class="rules">
          {NUMBERS.map((key) => (
            <NumberRow name={key} p={p} />
          ))}
          <Months p={p} />
          <MatingMonths p={p} />
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
      </Fold>
      <Fold id="windows" title="Windows of the checks" says={yoursOf(p, true)} open={refused(p, true)}>
        <p class="soft">Days after what each counts from: when it opens, when it is due, its last day.</p>
        <ul class="rules">
          {WINDOW_KEYS.map((key) => (
            <WindowRow name={key} p={p} />
          ))}
        </ul>
      </Fold>
      <NoteField
        form={p.form}
        name="reason"
        label="Why the change (may stay empty)"
        hint="Kept in the history of the protocol."
        maxlength={500}
        rows={2}
      />
      <Save>See what it would move</Save>
    </form>
    <Costs {...p.costs} />
    <History changes={p.changes} />
    <Fold id="again" title="Make all plans again">
      <p class="soft">
        Not needed in ordinary times: plans follow every entry and every change by themselves. For peace of
        mind, from the journal, under the rules as they stand.
      </p>
      <form method="post" action="/protocol/rebuild">
        <button class="button" type="submit">
          Make all plans again
        </button>
      </form>
    </Fold>
    <Fold id="units" title="Units and time zone" open={p.units.form.problems.length > 0}>
      <UnitsForm form={p.units.form} machineZone={p.units.machineZone} back="/protocol" />
    </Fold>
  </Layout>
)

/** A window has a field for each of its days, and a threshold one, or one a month. */
const isWindow = (field: string): boolean =>
  WINDOW_KEYS.some((key) => WINDOW_PARTS.some((part) => windowField(key, part) === field))

/** Whether a field of this part was refused: then it stands open. */
const refused = ({ form }: RowsProps, windows: boolean): boolean =>
  form.problems.some((x) => isWindow(x.field) === windows)

/** What one finds inside: how many rules are the yard's own. */
function yoursOf({ own }: RowsProps, windows: boolean): string {
  const { windows: days = {}, salvagedQueenRelease, ...numbers } = own
  const n = windows
    ? Object.keys(days).length + (salvagedQueenRelease === undefined ? 0 : 1)
    : Object.keys(numbers).length
  return n === 0 ? 'all by default' : `${n} yours`
}

const History = ({ changes }: Pick<ProtocolPageProps, 'changes'>) => (
  <Fold id="changes" title="Who changed it" says={String(changes.length)}>
    {changes.length === 0 ? (
      <p class="soft">Never changed: the defaults stand.</p>
    ) : (
      <Wide label="Who changed it">
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
      </Wide>
    )}
  </Fold>
)
