/** What meets an item of the list: its trade has cleared a hazard, a second person answers for it. */

import {
  Fields,
  type FormState,
  idOf,
  JpegOnly,
  many,
  ProblemSummary,
  type Typed,
} from '../../forms/index.ts'
import type { Frame } from '../../parts/index.ts'
import type { TradeHazard } from '../../records/index.ts'
import { CLEARANCE_FIELDS } from './fields.ts'
import { HAZARD_WORDS, paperSays, TRADE_WORDS } from './hazard-words.ts'
import { CLEARED_BY, ONLY_THE_TRADE } from './hazards.ts'

interface ClearProps {
  hazard: TradeHazard
  /** It is not here, and somebody has tested that. */
  tested: boolean
  frame: Frame
  path: string
  form: FormState | null
  /** The wall it is about, in words. */
  place: string
  /** The wall and what was found, as the page shows them: it is cleared for that and no other. */
  seen: string
}

/** Its trade has cleared this hazard, here: which trade is tapped where several may. */
export const ClearForm = ({ hazard, tested, frame, path, form, place, seen }: ClearProps) => {
  const trades = CLEARED_BY[hazard]
  const id = `trade-${hazard}`
  const typed = ['who', 'licence', 'on'] as const
  return (
    <Small
      id={`${id}-cleared`}
      summary={
        tested
          ? 'Write down who tested it'
          : `Write down who cleared it: ${HAZARD_WORDS[hazard].toLowerCase()}`
      }
      action={`${path}/clear`}
      hidden={[
        ['hazard', hazard],
        ['seen', seen],
      ]}
      form={form}
      blank={{ [`${id}.on`]: [frame.today] }}
      photo={
        tested
          ? 'Photo of their report, or its number above'
          : ONLY_THE_TRADE.includes(hazard)
            ? 'Photo of their paper, the tag on the line or the test result: without it nothing is cleared'
            : 'Photo of their paper or of the place'
      }
    >
      {(at) => (
        <Fields
          form={at}
          frame={frame}
          prefix={`${id}.`}
          of={CLEARANCE_FIELDS}
          show={[...(trades.length > 1 ? (['as'] as const) : []), typed, 'says']}
          with={{
            as: { choices: trades.map((value) => ({ value, label: TRADE_WORDS[value] })) },
            says: {
              asks: `What their paper says of ${place || 'this wall'}`,
              choices: paperSays(hazard),
              across: paperSays(hazard).length === 2 ? 2 : 3,
            },
          }}
        />
      )}
    </Small>
  )
}

/** A second person takes the telephone and signs for exactly this. */
export const SecondLink = ({ item, path }: { item: string; path: string }) => (
  <p>
    <a class="tall" href={`${path}/second?item=${item}`}>
      Have a second person sign for it
    </a>
  </p>
)

interface SmallProps {
  id: string
  summary: string
  action: string
  hidden: [string, string][]
  form: FormState | null
  /** What is photographed. */
  photo: string
  /** What stands in it before anything is typed. */
  blank?: Typed
  children: (form: FormState) => unknown
}

const Small = ({ id, summary, action, hidden, form, photo, blank = {}, children }: SmallProps) => (
  <details class="small-form" id={id} open={form !== null}>
    <summary>{summary}</summary>
    {form === null ? null : <ProblemSummary form={form} labels={labelOfSmall} />}
    <form method="post" action={action} enctype="multipart/form-data" novalidate>
      {hidden.map(([name, value]) => (
        <input type="hidden" name={name} value={value} />
      ))}
      {children(form ?? { typed: blank, problems: [] }) as never}
      {many(form?.typed ?? {}, 'photos')
        .slice(-1)
        .map((kept) => (
          <p class="photo-strip">
            <input type="hidden" name="photos" value={kept} />
            <img
              src={`/photos/${kept}`}
              alt="Kept so far; another one takes its place"
              width={96}
              height={96}
            />
          </p>
        ))}
      <label class="field" id={idOf(`${id.replace('-cleared', '')}.photos`)}>
        {photo}
        <input type="file" name="photo" accept="image/jpeg,image/png,image/webp" capture="environment" />
        <JpegOnly />
      </label>
      <button class="button" type="submit">
        Write it down
      </button>
    </form>
  </details>
)

const labelOfSmall = (field: string): string => {
  const name = field.split('.').at(-1) ?? ''
  return name === 'photos' ? 'Photo' : (CLEARANCE_FIELDS[name as 'who']?.label ?? '')
}
