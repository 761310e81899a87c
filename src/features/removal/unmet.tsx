/** The one list of what is unmet: what it is, who decides, and right there how it is met. */

import { Fields, type FormState, ProblemSummary, type Typed } from '../../forms/index.ts'
import type { Frame } from '../../parts/index.ts'
import type { TradeHazard } from '../../records/index.ts'
import { type Reckoning, stops } from './before-cut.ts'
import { CLEARANCE_FIELDS, SECOND_FIELDS } from './fields.ts'
import { CLEARED_BY } from './hazards.ts'
import type { Item, ItemId } from './item.ts'
import type { Part } from './stage.ts'
import { HAZARD_WORDS, ITEM_STATE, RECKONING_NOTE, reckoningTitle, TRADE_WORDS } from './words.ts'

interface UnmetProps {
  frame: Frame
  path: string
  reckoning: Reckoning
  /** What was typed into one of its small forms and refused. */
  refused: { id: string; form: FormState } | null
  /** Nothing was refused: what is only not answered yet before the cut is counted, and not said twice. */
  calm: boolean
  /** The form that asks it stands below. */
  above: boolean
  /** Who could be the second person: accounts that are open, but whoever is signed in. */
  others: readonly string[]
}

/** Which part's form meets it, and which field there. */
const MET_AT: Partial<Record<ItemId, { part: Part; field: string }>> = {
  services: { part: 'site', field: 'behind' },
  'old-building': { part: 'site', field: 'hazards' },
  heat: { part: 'check', field: 'hottestC' },
  vacuum: { part: 'check', field: 'vacuum' },
  'cut-depth': { part: 'check', field: 'cutMm' },
  bystanders: { part: 'job', field: 'bystanders' },
  temper: { part: 'site', field: 'temper' },
  'without-go': { part: 'work', field: 'openedAt' },
  sprayed: { part: 'job', field: 'sprayed' },
  caller: { part: 'agreement', field: 'hourly' },
  agreement: { part: 'agreement', field: 'hourly' },
}

/** Where an item is met; undefined where only its trade meets it. */
const metAt = (i: Item): { part: Part; field: string } | undefined =>
  MET_AT[i.id] ?? (i.id.startsWith('trade-') ? undefined : { part: 'check', field: 'done' })

export const UnmetList = (p: UnmetProps) => {
  const { reckoning: r, refused } = p
  const below = r.unmet.filter((i) => p.calm && i.state === 'unsaid' && metAt(i)?.part === 'check')
  const here = r.unmet.filter((i) => !below.includes(i))
  return (
    <section
      class={r.says === 'nothing-unmet' ? 'notice reckoning' : 'notice notice-late reckoning'}
      id="unmet"
    >
      <h2>{reckoningTitle(r)}</h2>
      <Lines {...p} items={here} />
      {below.length === 0 ? null : (
        <details open={below.some((i) => i.id === refused?.id)}>
          <summary>{askedLater(below.length, here.length, p.above)}</summary>
          <Lines {...p} items={below} />
        </details>
      )}
      <Signed items={r.items.filter((i) => i.state === 'signed')} />
      <p class="small">{RECKONING_NOTE}</p>
    </section>
  )
}

const askedLater = (later: number, here: number, above: boolean): string =>
  `${later === 1 ? 'One' : later}${here === 0 ? '' : ' more'} asked ${above ? 'below' : 'before the cut'}; a second person can sign for what is not so`

const Lines = ({ items, frame, path, refused, others }: UnmetProps & { items: Item[] }) =>
  items.length === 0 ? null : (
    <ul class="unmet">
      {items.map((i) => (
        <li>
          <Line item={i} path={path} />
          <Way
            item={i}
            frame={frame}
            path={path}
            others={others}
            form={refused?.id === i.id ? refused.form : null}
          />
        </li>
      ))}
    </ul>
  )

const Line = ({ item: i, path }: { item: Item; path: string }) => {
  const at = metAt(i)
  return (
    <>
      {at === undefined ? (
        <strong>{i.what}</strong>
      ) : (
        <a class="tall" href={`${path}/${at.part}#f-${at.field}`}>
          <strong>{i.what}</strong>
        </a>
      )}
      {i.state === 'unsaid' && i.moved !== true ? '' : `: ${i.why}`}{' '}
      {stops(i) || i.state === 'unmet' ? (
        <span class="decides">Who decides: {i.decides.charAt(0).toLowerCase() + i.decides.slice(1)}.</span>
      ) : (
        <span class="unseen">({ITEM_STATE[i.state]})</span>
      )}
    </>
  )
}

const Signed = ({ items }: { items: Item[] }) =>
  items.length === 0 ? null : (
    <p>
      <b>Signed for by a second person:</b> {items.map((i) => i.what.toLowerCase()).join('; ')}.
    </p>
  )

const Way = ({
  item: i,
  frame,
  path,
  others,
  form,
}: {
  item: Item
  frame: Frame
  path: string
  others: readonly string[]
  form: FormState | null
}) => {
  const hazard = i.id.startsWith('trade-') ? (i.id.slice('trade-'.length) as TradeHazard) : null
  return (
    <>
      {hazard === null ? null : (
        <Small
          id={`${i.id}-cleared`}
          summary={`The trade has cleared it: ${HAZARD_WORDS[hazard].toLowerCase()}`}
          action={`${path}/clear`}
          hidden={[['hazard', hazard]]}
          form={form}
          blank={{ [`${i.id}.on`]: [frame.today] }}
          photo
        >
          {(at) => (
            <Fields
              form={at}
              frame={frame}
              prefix={`${i.id}.`}
              of={CLEARANCE_FIELDS}
              show={
                CLEARED_BY[hazard].length > 1 ? ['as', ['who', 'licence', 'on']] : [['who', 'licence', 'on']]
              }
              with={{
                as: { choices: CLEARED_BY[hazard].map((value) => ({ value, label: TRADE_WORDS[value] })) },
              }}
            />
          )}
        </Small>
      )}
      {i.weight !== 'second' ? null : (
        <SecondForm
          item={i.id}
          of={i.why}
          frame={frame}
          path={path}
          others={others}
          form={hazard === null ? form : null}
        />
      )}
    </>
  )
}

interface SecondProps {
  item: string
  /** What is unmet, in the words it is shown in. */
  of: string
  frame: Frame
  path: string
  others: readonly string[]
  form: FormState | null
}

/** A second person answers, by name, for exactly this: tapped where they have an account, else signed by hand. */
export const SecondForm = ({ item, of, frame, path, others, form }: SecondProps) =>
  others.length === 0 ? (
    <p>
      <a class="tall" href={`${path}/second?item=${item}`}>
        A second person signs for it
      </a>
    </p>
  ) : (
    <Small
      id={`${item}-second`}
      summary="A second person signs for it"
      action={`${path}/second`}
      hidden={[
        ['item', item],
        ['of', of],
      ]}
      form={form}
    >
      {(at) => (
        <>
          <Fields
            form={at}
            frame={frame}
            prefix={`${item}.`}
            of={SECOND_FIELDS}
            show={['by', 'why', 'reason']}
            with={{ by: { choices: others.map((value) => ({ value, label: value })) } }}
          />
          <p>
            <a class="tall" href={`${path}/second?item=${item}`}>
              Without an account: sign on the screen
            </a>
          </p>
        </>
      )}
    </Small>
  )

interface SmallProps {
  id: string
  summary: string
  action: string
  hidden: [string, string][]
  form: FormState | null
  photo?: boolean
  /** What stands in it before anything is typed. */
  blank?: Typed
  children: (form: FormState) => unknown
}

const Small = ({ id, summary, action, hidden, form, photo = false, blank = {}, children }: SmallProps) => (
  <details class="small-form" id={id} open={form !== null}>
    <summary>{summary}</summary>
    {form === null ? null : <ProblemSummary form={form} labels={labelOfSmall} />}
    <form method="post" action={action} enctype={photo ? 'multipart/form-data' : undefined} novalidate>
      {hidden.map(([name, value]) => (
        <input type="hidden" name={name} value={value} />
      ))}
      {children(form ?? { typed: blank, problems: [] }) as never}
      {photo ? (
        <label class="field">
          Photo of their paper or of the place
          <input type="file" name="photo" accept="image/jpeg,image/png,image/webp" />
        </label>
      ) : null}
      <button class="button" type="submit">
        Write it down
      </button>
    </form>
  </details>
)

const labelOfSmall = (field: string): string => {
  const name = field.split('.').at(-1) ?? ''
  return { ...CLEARANCE_FIELDS, ...SECOND_FIELDS }[name as 'who']?.label ?? ''
}
