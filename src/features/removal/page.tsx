/** One removal on one page that grows: what is unmet, the part that is next as a form, the others as what they say. */

import { daysBetween } from '../../days.ts'
import { type FormState, one, ProblemSummary } from '../../forms/index.ts'
import { type Frame, Layout } from '../../parts/index.ts'
import type { Sheet } from '../../records/index.ts'
import { dayAndDistance, dayWords } from '../../words/index.ts'
import type { Reckoning } from './before-cut.ts'
import { FirstCheck } from './cautions.tsx'
import { type ClosingId, leftToClose } from './closing.ts'
import { beganWithoutGo } from './decide.ts'
import { partLabel } from './form.ts'
import type { Facts } from './item.ts'
import { type Clash, ClashNotice, Papers, Versions } from './page-foot.tsx'
import { PartFields } from './part-fields.tsx'
import { SignatureView } from './signature.tsx'
import { isOver, type Part, type Stage } from './stage.ts'
import { SecondForm, UnmetList } from './unmet.tsx'
import { CLOSING_WORDS, DECIDE, PART_WORDS, reckoningTitle, STAGE_WORDS } from './words.ts'

export interface RemovalProps {
  frame: Frame
  path: string
  name: string
  sheet: Sheet
  stage: Stage
  /** Each part's facts in words, in order; a part with none is not filled yet. */
  parts: { part: Part; facts: [label: string, value: string][]; photos: readonly string[] }[]
  /** Null once the bees are out. */
  reckoning: Reckoning | null
  /** Whether “go” was decided today and nothing has come up since. */
  goes: boolean
  /** What is asked when work starts. */
  start: Facts
  /** The part that is open as a form, and what was typed into it; null when an older version is shown. */
  open: { part: Part; form: FormState } | null
  /** A small form of the list that was refused, by its item. */
  refused: { id: string; form: FormState } | null
  clash: Clash | null
  next: Part | 'intake' | null
  colonies: { tag: string; path: string }[]
  versions: { version: number; by: string; when: string }[]
  older: { version: number; last: number } | null
  saved: boolean
  types: string[]
  currency: string
  callBacks: string[]
}

export const RemovalPage = (p: RemovalProps) => (
  <Layout frame={p.frame} title={p.name} ways={p.open === null} scripts={['islands/photos.ts']}>
    <p class="crumb">
      <a href="/removals">‹ Removals</a>
    </p>
    {p.older === null ? null : (
      <div class="notice">
        <p>
          This is version {p.older.version} of {p.older.last}, as it was.{' '}
          <a href={p.path}>Show the last one</a>
        </p>
      </div>
    )}
    <Head {...p} />
    {p.reckoning === null || p.older !== null ? null : <Reckoned {...p} reckoning={p.reckoning} />}
    <div class="removal-parts">
      {p.parts
        .filter((x) => isShown(x, p))
        .map((x) => (
          <PartSection {...x} page={p} />
        ))}
    </div>
    <LaterParts {...p} />
    <Papers {...p} />
    <Versions {...p} />
  </Layout>
)

/** A part is on the page once it says something, or is the one that is open. */
const isShown = (x: RemovalProps['parts'][number], p: RemovalProps): boolean =>
  x.facts.length > 0 ||
  x.part === p.open?.part ||
  (x.part === 'agreement' && p.sheet.agreement.signature !== undefined)

const Head = (p: RemovalProps) => {
  const { job } = p.sheet
  return (
    <header class="removal-head">
      <h1>{p.name}</h1>
      <p class="soft">
        <b>{p.stage === 'go' && !p.goes ? 'Go was decided, and no longer stands' : STAGE_WORDS[p.stage]}</b>
        {job.address === undefined || job.address === p.name ? '' : ` · ${job.address}`}
        {job.plannedOn === undefined
          ? ''
          : ` · ${dayAndDistance(job.plannedOn, p.frame.today)}${job.plannedAt === undefined ? '' : `, ${job.plannedAt}`}`}
        {p.saved ? <span role="status"> · saved</span> : null}
      </p>
      {job.bees === 'wasps' && p.stage === 'called' ? (
        <p>
          <b>Not honey bees</b>: name somebody who takes wasps, and{' '}
          <a href={`${p.path}/end`}>end the sheet</a>.
        </p>
      ) : null}
      <Decided {...p} />
      {beganWithoutGo(p.sheet) ? (
        <p>
          <b>Begun without a “go”</b>: nobody had decided it, or something that holds it was unmet.
        </p>
      ) : null}
      <Came {...p} />
    </header>
  )
}

const Came = ({ colonies, path, sheet, stage, frame }: RemovalProps) => {
  if (colonies.length === 0) return null
  return (
    <>
      <p>
        Came to the yard as{' '}
        {colonies.map((c, i) => (
          <>
            {i === 0 ? '' : ', '}
            <a class="tag tall" href={c.path}>
              {c.tag}
            </a>
          </>
        ))}
        . <a href={`${path}/intake`}>Log another box from this job</a>
      </p>
      <LetterOffer colonies={colonies} sheet={sheet} today={frame.today} />
      {stage === 'boxed' ? <LeftToClose left={leftToClose(sheet)} path={path} /> : null}
    </>
  )
}

/** Days from the removal on which the customer's letter is offered here (src/features/letters/due.ts says to whom it is due). */
const LETTER_DAYS = { from: 30, to: 60 }

const LetterOffer = ({
  colonies,
  sheet,
  today,
}: Pick<RemovalProps, 'colonies' | 'sheet'> & { today: string }) => {
  const on = sheet.work.on ?? sheet.job.plannedOn
  const days = on === undefined ? 0 : daysBetween(on, today)
  if (days < LETTER_DAYS.from || days > LETTER_DAYS.to) return null
  return (
    <p>
      Day {days}: tell the customer how they are.{' '}
      {colonies.map((c) => (
        <a class="tall" href={`${c.path}/letter`}>
          Letter about {c.tag}
        </a>
      ))}
    </p>
  )
}

const LeftToClose = ({ left, path }: { left: ClosingId[]; path: string }) => (
  <p>
    <b>Not finished:</b> {left.map((id) => CLOSING_WORDS[id]).join(', ')}.{' '}
    <a href={`${path}/work#now`}>Close up</a>
  </p>
)

const Decided = ({ sheet, frame }: RemovalProps) => {
  const { decision: d, ended } = sheet
  return (
    <>
      {d === undefined ? null : (
        <p>
          <b>{DECIDE.find((c) => c.value === d.is)?.label}</b>, decided by {d.by},{' '}
          {dayWords(d.on, frame.today)}
          {d.at === undefined ? '' : ` ${d.at}`}
          {d.unmet.length === 0
            ? ', with nothing on the list unmet'
            : `, with ${d.unmet.length} unmet or not filled in`}
          {d.reason === undefined ? '.' : `: ${d.reason}`}
        </p>
      )}
      {ended === undefined ? null : (
        <p>
          <b>Ended without a removal</b>, {dayWords(ended.on, frame.today)}: {ended.why}
        </p>
      )}
    </>
  )
}

/** Before the list is worked through most of it is simply not said yet: folded, unless something said stops the job. */
const Reckoned = (p: RemovalProps & { reckoning: Reckoning }) => {
  const calm = (p.open?.form.problems.length ?? 0) === 0
  const above = p.open?.part === 'check'
  const list = (
    <UnmetList
      frame={p.frame}
      path={p.path}
      reckoning={p.reckoning}
      refused={p.refused}
      calm={calm}
      above={above}
    />
  )
  const atIt = p.open?.part === 'check' || p.reckoning.says === 'refuse' || p.refused !== null
  if (atIt || (p.stage === 'go' && !p.goes)) return list
  return (
    <details class="caution">
      <summary>Before the cut: {reckoningTitle(p.reckoning).toLowerCase()}</summary>
      {list}
    </details>
  )
}

const PartSection = ({
  part,
  facts,
  photos,
  page: p,
}: RemovalProps['parts'][number] & { page: RemovalProps }) =>
  part === p.open?.part ? (
    <section class="section removal-part removal-now" id="now">
      <h2 id={part}>{PART_WORDS[part]}</h2>
      {part === 'check' || (part === 'work' && p.sheet.work.openedAt === undefined) ? (
        <FirstCheck sheet={p.sheet} />
      ) : null}
      {p.clash === null ? null : <ClashNotice clash={p.clash} />}
      <ProblemSummary
        form={p.open.form}
        labels={(field) => partLabel(part, field) || partLabel('decision', field)}
      />
      {part === 'work' ? <Start {...p} /> : null}
      {part === 'work' ? <Boxed {...p} /> : null}
      <PartForm part={part} form={p.open.form} page={p} />
    </section>
  ) : (
    <section class="section removal-part" id={part}>
      <details>
        <summary>
          <h2>{PART_WORDS[part]}</h2>
          <span class="soft">{inShort(part, facts, p.sheet)}</span>
        </summary>
        <dl class="sheet-facts">
          {facts.map(([label, value]) => (
            <>
              <dt>{label}</dt>
              <dd>{value}</dd>
            </>
          ))}
        </dl>
        <Pictures ids={photos} />
        {part === 'agreement' && p.sheet.agreement.signature !== undefined ? (
          <SignatureView signature={p.sheet.agreement.signature} today={p.frame.today} />
        ) : null}
        {p.older !== null ? null : <Ways part={part} {...p} />}
      </details>
    </section>
  )

/** The first facts of a part, and of an agreement that it is signed. */
const inShort = (part: Part, facts: readonly (readonly [string, string])[], sheet: Sheet): string => {
  const signed = part === 'agreement' && sheet.agreement.signature !== undefined
  const said = facts.slice(0, signed ? 1 : 2).map(([, value]) => value)
  return [...(signed ? ['signed'] : []), ...said].join(' · ')
}

const Ways = ({ part, path, sheet }: RemovalProps & { part: Part }) => (
  <p>
    <a class="tall" href={`${path}/${part}#now`}>
      Change<span class="unseen"> {PART_WORDS[part].toLowerCase()}</span>
    </a>
    {part === 'agreement' ? (
      <>
        {' · '}
        <a class="tall" href={`${path}/sign`}>
          {sheet.agreement.signature === undefined ? 'Read and sign' : 'Read what was signed'}
        </a>
      </>
    ) : null}
  </p>
)

const Pictures = ({ ids }: { ids: readonly string[] }) =>
  ids.length === 0 ? null : (
    <p class="photo-strip">
      {ids.map((id, i) => (
        <a href={`/photos/${id}`}>
          <img
            src={`/photos/${id}`}
            alt={`Of this job, ${i + 1} of ${ids.length}`}
            width={96}
            height={96}
            loading="lazy"
          />
        </a>
      ))}
    </p>
  )

/** Over the limit when work starts: a second person, or a cooler hour. */
const Start = ({ start, sheet, frame, path, refused }: RemovalProps) =>
  start.state !== 'unmet' || sheet.work.openedAt !== undefined ? null : (
    <div class="notice notice-late">
      <p>{start.why}</p>
      <SecondForm
        item="heat-at-start"
        of={start.why}
        frame={frame}
        path={path}
        form={refused?.id === 'heat-at-start' ? refused.form : null}
      />
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

const PartForm = ({ part, form, page: p }: { part: Part; form: FormState; page: RemovalProps }) => (
  <form
    method="post"
    action={`${p.path}/${part}`}
    id="entry-form"
    enctype={part === 'job' || part === 'site' || part === 'work' ? 'multipart/form-data' : undefined}
    novalidate
  >
    <input type="hidden" name="version" value={one(form.typed, 'version')} />
    <PartFields
      part={part}
      form={form}
      frame={p.frame}
      sheet={p.sheet}
      types={p.types}
      currency={p.currency}
    />
    <div class="save">
      <Buttons part={part} page={p} />
    </div>
  </form>
)

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
  if (part === 'agreement' && p.sheet.agreement.signature === undefined)
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

/** Parts that are not reached yet can be opened all the same. */
const LaterParts = (p: RemovalProps) => {
  const later = p.parts.filter((x) => !isShown(x, p))
  if (later.length === 0 || p.older !== null || isOver(p.stage)) return null
  return (
    <p class="soft">
      Later:{' '}
      {later.map((x, i) => (
        <>
          {i === 0 ? '' : ' · '}
          <a class="tall" href={`${p.path}/${x.part}#now`}>
            {PART_WORDS[x.part]}
          </a>
        </>
      ))}
    </p>
  )
}
