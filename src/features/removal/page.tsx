/** One removal on one page that grows: what is unmet, the part that is next as a form, the others as what they say. */

import type { Child } from 'hono/jsx'
import type { FormState } from '../../forms/index.ts'
import { type Frame, Layout } from '../../parts/index.ts'
import type { Sheet } from '../../records/index.ts'
import type { Heard } from './as-known.ts'
import type { Reckoning } from './before-cut.ts'
import { seenOn } from './hazards.ts'
import type { Facts } from './item.ts'
import type { OtherSheet } from './other-sheets.ts'
import { type Clash, Papers, Versions } from './page-foot.tsx'
import { OpenPart } from './page-form.tsx'
import { Head } from './page-head.tsx'
import { SignatureView } from './signature.tsx'
import type { Since } from './since-open.ts'
import { isOnGo, isOver, isShort, type Part, type Stage } from './stage.ts'
import { UnmetList } from './unmet.tsx'
import { PART_WORDS, reckoningTitle } from './words.ts'

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
  /** Whether “go” was decided today, in the last three hours or before it was opened, and nothing has come up since. */
  goes: boolean
  /** Why nothing is begun at this hour: that of its “go” has gone, or it is too hot; null where that is not why. */
  late: string | null
  /** What is asked when work starts. */
  start: Facts
  /** It is open, and this hour was forecast hotter than anybody may cut in. */
  warms: string | null
  /** The part that is open as a form, and what was typed into it; null when an older version is shown. */
  open: { part: Part; form: FormState } | null
  /** A small form of the list that was refused, by its item. */
  refused: { id: string; form: FormState } | null
  /** When this phone last heard of the job; null where the server made this page. */
  heard: Heard | null
  /** What came to light since it was opened: read first by whoever stands there, or goes back to close up. */
  since: Since[]
  /** What was only looked for again for its “go”, and by whom. */
  aside: string[]
  /** The fields that were changed when its “go” fell. */
  changed: string[]
  /** That whoever reads this stays and watches at another job, or leads there. */
  elsewhere: string | undefined
  clash: Clash | null
  /** What is kept of a form that came back; undefined where nothing is. */
  kept: string | undefined
  colonies: { tag: string; path: string }[]
  versions: { version: number; by: string; when: string }[]
  older: { version: number; last: number } | null
  saved: boolean
  /** Who signed as a second person with an account that was new. */
  newSigners: string | null
  /** Other sheets of the same house with more on them that can kill. */
  others: OtherSheet[]
  types: string[]
  currency: string
  callBacks: string[]
  /** What was signed a moment ago, to be handed over; null at any other time. */
  signed: Child | null
}

export const RemovalPage = (p: RemovalProps) => (
  <Layout
    frame={p.frame}
    title={p.name}
    ways={p.open === null}
    scripts={['islands/photos.ts', 'islands/share.ts']}
  >
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
    {p.signed ?? <Head {...p} />}
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
  x.part === p.open?.part ||
  // With a signature in hand only what is next matters.
  (p.signed === null && x.facts.length > 0) ||
  (p.signed === null && x.part === 'agreement' && p.sheet.agreement.signature !== undefined)

/** Before the list is worked through most of it is simply not said yet: folded, unless something said stops the job. */
const Reckoned = (p: RemovalProps & { reckoning: Reckoning }) => {
  const calm = (p.open?.form.problems.length ?? 0) === 0
  const above = p.open?.part === 'check'
  const hot = isOnGo(p.stage, p.sheet) && !p.goes && p.start.state === 'unmet' ? p.start.why : null
  const late = p.late ?? hot ?? p.elsewhere ?? null
  const list = (
    <UnmetList
      frame={p.frame}
      path={p.path}
      reckoning={p.reckoning}
      refused={p.refused}
      calm={calm}
      goes={p.goes}
      above={above}
      late={late}
      short={isShort(p.sheet)}
      seen={seenOn(p.sheet)}
      place={[p.sheet.job.address, p.sheet.site.where].filter((x) => x !== undefined).join(', ')}
    />
  )
  const atIt =
    (p.open?.part === 'check' && p.signed === null) || p.reckoning.says === 'refuse' || p.refused !== null
  if (atIt || (isOnGo(p.stage, p.sheet) && (!p.goes || p.late !== null))) return list
  return (
    <details class="caution">
      <summary>{reckoningTitle(p.reckoning, p.goes, late)}</summary>
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
    <OpenPart {...p.open} page={p} />
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

/** Parts that are not reached yet can be opened all the same. */
const LaterParts = (p: RemovalProps) => {
  const later = p.parts.filter((x) => !isShown(x, p))
  if (later.length === 0 || p.signed !== null || p.older !== null || isOver(p.stage)) return null
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
