/** One part of a removal sheet as a form. */

import type { FormState } from '../../forms/index.ts'
import { FormPage, type Frame } from '../../parts/index.ts'
import type { Sheet } from '../../records/index.ts'
import { FirstCheck } from './cautions.tsx'
import { partLabel } from './form.ts'
import { PartFields } from './part-fields.tsx'
import type { Part } from './stage.ts'
import { PART_WORDS } from './words.ts'

/** Somebody else saved the same part since this form was opened. */
export interface Clash {
  by: string
  when: string
  /** Fields in which theirs differs, with what they say. */
  theirs: { label: string; value: string }[]
}

export interface RemovalPartProps {
  frame: Frame
  form: FormState
  part: Part
  sheet: Sheet
  /** '/removals/…'; null for a sheet that is not saved yet. */
  path: string | null
  name: string
  types: string[]
  currency: string
  clash: Clash | null
}

const INTRO: Partial<Record<Part, string>> = {
  site: 'What is known of the place, and how. What nobody has looked at stays open.',
  agreement: 'The price goes into the agreement; the customer signs the whole text on the next page.',
  work: 'Asked once: the intake is filled from here.',
}

export const RemovalPartPage = (p: RemovalPartProps) => (
  <FormPage
    frame={p.frame}
    title={p.path === null ? 'Somebody called' : PART_WORDS[p.part]}
    form={p.form}
    action={p.path === null ? '/removals/new' : `${p.path}/${p.part}`}
    back={p.path === null ? { href: '/removals', label: 'Removals' } : { href: p.path, label: p.name }}
    button={p.clash === null ? 'Save' : 'Save mine over theirs'}
    labels={(field) => partLabel(p.part, field)}
    ids={['id', 'version']}
    intro={<Intro {...p} />}
  >
    <PartFields part={p.part} form={p.form} frame={p.frame} types={p.types} currency={p.currency} />
  </FormPage>
)

const Intro = ({ part, sheet, clash }: RemovalPartProps) => (
  <>
    {clash === null ? null : <ClashNotice clash={clash} />}
    {INTRO[part] === undefined ? null : <p class="soft">{INTRO[part]}</p>}
    {part === 'site' || part === 'work' ? <FirstCheck sheet={sheet} /> : null}
  </>
)

export const ClashNotice = ({ clash }: { clash: Clash }) => (
  <div class="notice notice-late" role="alert">
    <h2>{clash.by} saved this page meanwhile</h2>
    <p>
      At {clash.when}, after you had opened it. What you typed is still here. Saving again puts yours on top;
      theirs stays in the history of the sheet.
    </p>
    {clash.theirs.length === 0 ? null : (
      <dl class="sheet-facts">
        {clash.theirs.map((t) => (
          <>
            <dt>{t.label}</dt>
            <dd>{t.value === '' ? 'empty' : t.value}</dd>
          </>
        ))}
      </dl>
    )}
  </div>
)
