/** The part that is open as a form, with what goes before it and the buttons under it. */

import {
  Choices,
  type DrawnIn,
  type FieldSpecs,
  Fields,
  type FormState,
  one,
  ProblemSummary,
} from '../../forms/index.ts'
import { comesBack, GRAVE, hasBegun, hasLostGo, isUnderWay, lostAt, type Sheet } from '../../records/index.ts'
import { stops } from './before-cut.ts'
import { FirstCheck } from './cautions.tsx'
import { HOURS } from './check-fields.tsx'
import { BEGUN, DECIDE } from './choices.ts'
import { HEARD_FIELDS, NOT_OPENED, THAT_DAY, WITHOUT_GO_FIELDS } from './fields.ts'
import { asksPrice, partLabel } from './form.ts'
import { goneField } from './grave.ts'
import { GRAVE_WORDS, goneChoices } from './hazard-words.ts'
import type { RemovalProps } from './page.tsx'
import { ClashNotice } from './page-foot.tsx'
import { PartFields } from './part-fields.tsx'
import { SecondLink } from './small-form.tsx'
import type { Part } from './stage.ts'
import { PART_WORDS } from './words.ts'

/** See the file's comment. */
export const OpenPart = ({
  part,
  form,
  page: p,
}: NonNullable<RemovalProps['open']> & { page: RemovalProps }) => (
  <section class="section removal-part removal-now" id="now">
    <h2 id={part}>{PART_WORDS[part]}</h2>
    <ProblemSummary
      form={form}
      labels={(field) => labelOf(part, field)}
      {...(p.kept && { heading: p.kept })}
    />
    {part === 'check' ? <FirstCheck sheet={p.sheet} ticked /> : null}
    {part === 'work' && (p.sheet.work.openedAt === undefined || isBack(p)) ? (
      <FirstCheck sheet={p.sheet} />
    ) : null}
    {p.clash === null ? null : <ClashNotice clash={p.clash} kept={p.kept} />}
    {part === 'work' ? <Start {...p} /> : null}
    {part === 'work' ? <Boxed {...p} /> : null}
    <PartForm part={part} form={form} page={p} />
  </section>
)

/** 'Before 10:00': done before its “go” fell today. */
const fellAt = (s: Sheet, today: string): string | undefined =>
  hasBegun(s) && hasLostGo(s) && lostAt(s)?.on === today ? `Before ${lostAt(s)?.at}` : undefined

/** What a save is asked for when it takes something off that can kill, or writes down work that had no “go”. */
const Asked = ({ form, frame, sheet, goes }: DrawnIn & Pick<RemovalProps, 'sheet' | 'goes'>) => {
  const day = [one(form.typed, 'on'), sheet.work.on].find((d) => d && d < frame.today)
  const then = day === undefined ? fellAt(sheet, frame.today) : `On ${day}`
  const named = [...form.problems.map((x) => x.field), ...Object.keys(form.typed)]
  const gone = GRAVE.filter((what) => named.includes(goneField(what)))
  const told = named.includes(NOT_OPENED)
  return (
    <>
      {gone.map((what) => (
        <Choices
          form={form}
          name={goneField(what)}
          label={`Why is it off the sheet: ${GRAVE_WORDS[what].toLowerCase()}?`}
          choices={goneChoices(what)}
          across={3}
        />
      ))}
      {named.includes('withoutGo.why') ? (
        <Fields
          form={form}
          frame={frame}
          prefix="withoutGo."
          of={WITHOUT_GO_FIELDS}
          show={['why', 'words']}
          with={{
            why: {
              ...(told
                ? { asks: 'Was it opened?' }
                : goes
                  ? { asks: 'Begun before that was met: why?' }
                  : {}),
              choices: [
                ...(told ? [{ value: NOT_OPENED, label: 'Not opened' }] : []),
                ...BEGUN,
                ...(!told && then !== undefined
                  ? [{ value: THAT_DAY, label: `${then}, written down now` }]
                  : []),
              ],
            },
          }}
        />
      ) : null}
    </>
  )
}

const labelOf = (part: Part, field: string): string =>
  partLabel(part, field) ||
  partLabel('decision', field) ||
  partLabel('agreement', field) ||
  GRAVE.filter((what) => goneField(what) === field).map((what) => GRAVE_WORDS[what])[0] ||
  (HEARD_FIELDS as FieldSpecs)[field.slice('heard.'.length)]?.label ||
  (field === 'withoutGo.why' ? 'Why it was begun' : '')

/** Over the limit when work starts, or while it is open: a second person, or a cooler hour. */
const Start = ({ start, late, sheet, path }: RemovalProps) =>
  start.state !== 'unmet' || sheet.work.boxedAt !== undefined ? null : (
    <div class="notice notice-late">
      {late === start.why ? null : <p>{start.why}</p>}
      <SecondLink item="heat-at-start" path={path} />
    </div>
  )

/** The box is shut: the intake can be logged at once, and the place closed up before or after it. */
const Boxed = ({ sheet, colonies, path }: RemovalProps) =>
  sheet.work.boxedAt === undefined || colonies.length > 0 ? null : (
    <p>
      Boxed at {sheet.work.boxedAt}.{' '}
      <a class="button button-do" href={`${path}/intake`}>
        Log the intake
      </a>
    </p>
  )

/** What is so on one day only: no draft of another day brings it back. */
const OF_DAY = `bystanders sprayed done wires hottestC on from until ${HOURS.join(' ')} water outdoorC openedAt boxedAt arrivedAt`

/** What is so for three hours (ticked-when.ts): a draft that was begun before that does not bring it back. */
const OF_HOUR = 'done wires outdoorC water'

const PartForm = ({ part, form, page: p }: { part: Part; form: FormState; page: RemovalProps }) => (
  <form
    method="post"
    // What is wrong stands over the form, a screen or two below the head: one that comes back is shown there.
    action={`${p.path}/${part}#now`}
    id="entry-form"
    enctype={part === 'job' || part === 'site' || part === 'work' ? 'multipart/form-data' : undefined}
    novalidate
    data-of-day={OF_DAY}
    data-of-hour={OF_HOUR}
  >
    {/* Enter in a field saves, and never says “Go”. */}
    <button class="first-submit" type="submit" tabindex={-1}>
      Save what is typed
    </button>
    <input type="hidden" name="version" value={one(form.typed, 'version')} />
    {part === 'job' ? <input type="hidden" name="shownOn" value={p.frame.today} /> : null}
    <input type="hidden" name="shownTo" value={p.frame.viewer?.name} />
    <Asked form={form} frame={p.frame} sheet={p.sheet} goes={p.goes} />
    <PartFields
      part={part}
      form={form}
      frame={p.frame}
      sheet={p.sheet}
      others={p.others}
      heard={p.heard}
      types={p.types}
      currency={p.currency}
    />
    {/* To decide is at the end of all that is to be seen first; to save is always at the thumb. */}
    <div class={part === 'check' ? 'save' : 'act-bar act-row'}>
      <Buttons part={part} page={p} />
    </div>
  </form>
)

/** What is done next at the wall, at the thumb: it sets its time, and says what it takes. */
function actOf(p: RemovalProps, stopped: boolean): { value: string; words: string } | null {
  const { openedAt, boxedAt, leftAt } = p.sheet.work
  const cooler = p.start.state === 'unmet' ? 'Wait for a cooler hour, then ' : undefined
  if (isBack(p)) return { value: 'openedAt', words: cooler ? `${cooler}go on` : 'Go on, now' }
  if (openedAt === undefined)
    return { value: 'openedAt', words: cooler ? `${cooler}open it` : 'Open it, now' }
  if (stopped) return leftAt === undefined ? { value: 'leftAt', words: 'Stopped, left now' } : null
  return boxedAt === undefined ? { value: 'boxedAt intake', words: 'Boxed, now: log the intake' } : null
}

/** Left open, on another day or before “Left”: whoever goes on is asked what is asked when it is opened. */
const isBack = ({ sheet, frame }: RemovalProps): boolean => comesBack(sheet, frame.today)

/** Something that stops it came to light at work, and nobody has said why it was gone on with: nothing here leads on. */
const isStopped = ({ sheet, reckoning }: RemovalProps): boolean =>
  sheet.work.boxedAt === undefined && hasLostGo(sheet) && reckoning?.unmet.some(stops) === true

/** Save, and what comes next with it: one tap does both. */
const Buttons = ({ part, page: p }: { part: Part; page: RemovalProps }) => {
  if (p.clash !== null)
    return (
      <button class="button button-do" type="submit">
        Save mine over theirs
      </button>
    )
  if (part === 'check')
    return (
      <>
        {DECIDE.map((d) => (
          <button
            class={d.value === 'go' ? 'button button-do' : 'button'}
            type="submit"
            name="is"
            value={d.value}
          >
            {d.label}
          </button>
        ))}
        <button class="button button-plain" type="submit">
          Save only
        </button>
      </>
    )
  if (part === 'agreement' ? p.sheet.agreement.signature === undefined : asksPrice(part, p.sheet))
    return (
      <>
        <button class="button button-do" type="submit" name="next" value="sign">
          Save, read and sign
        </button>
        <button class="button button-plain" type="submit">
          Save only
        </button>
      </>
    )
  const open = isUnderWay(p.sheet, p.frame.today) && (!hasLostGo(p.sheet) || isStopped(p))
  if (part === 'work' && !p.goes && p.sheet.work.boxedAt === undefined && !open)
    return (
      <>
        <a class="button button-do" href={`${p.path}/check#now`}>
          Decide first
        </a>
        <button class="button button-plain" type="submit">
          Save
        </button>
      </>
    )
  const act = part === 'work' ? actOf(p, isStopped(p)) : null
  if (act !== null)
    return (
      <>
        <button class="button button-do" type="submit" name="now" value={act.value}>
          {act.words}
        </button>
        <button class="button button-plain" type="submit">
          Save
        </button>
      </>
    )
  const toIntake = part === 'work' && p.sheet.work.boxedAt !== undefined && p.colonies.length === 0
  return (
    <>
      <button class={toIntake ? 'button' : 'button button-do'} type="submit">
        Save
      </button>
      {toIntake ? (
        <button class="button button-do" type="submit" name="next" value="intake">
          Save and log the intake
        </button>
      ) : null}
    </>
  )
}
