/** The one list of what is unmet: what it is, who decides, and right there how it is met. */

import type { FormState } from '../../forms/index.ts'
import type { Frame } from '../../parts/index.ts'
import { notYet, type Reckoning, stops } from './before-cut.ts'
import type { Item, ItemId } from './item.ts'
import { ClearForm } from './small-form.tsx'
import type { Part } from './stage.ts'
import { ITEM_STATE, RECKONING_NOTE, reckoningTitle } from './words.ts'

interface UnmetProps {
  frame: Frame
  path: string
  reckoning: Reckoning
  /** What was typed into one of its small forms and refused. */
  refused: { id: string; form: FormState } | null
  /** Nothing was refused: what is only not answered yet before the cut is counted, and not said twice. */
  calm: boolean
  /** Why nothing is begun now: its hour has gone, it is too hot, whoever reads this is at another job. */
  late: string | null
  /** A “go” stands. */
  goes: boolean
  /** The form that asks it stands below. */
  above: boolean
  /** A swarm that hangs free. */
  short: boolean
  /** The wall in words: '4 Invented Row, left of the porch'. */
  place: string
  /** The wall and what was found, as this page shows them. */
  seen: string
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
  wires: { part: 'check', field: 'wires' },
  'other-sheet': { part: 'check', field: 'done' },
  'without-go': { part: 'work', field: 'openedAt' },
  sprayed: { part: 'job', field: 'sprayed' },
  caller: { part: 'agreement', field: 'hourly' },
  agreement: { part: 'agreement', field: 'hourly' },
}

/** Where an item is met; undefined where only its trade meets it. Of a swarm temper is asked beside the box. */
const metAt = (i: Item, short = false): { part: Part; field: string } | undefined =>
  i.at ??
  (i.id === 'temper' && short ? { part: 'check', field: 'temper' } : MET_AT[i.id]) ??
  (i.id.startsWith('trade-') ? undefined : { part: 'check', field: 'done' })

export const UnmetList = (p: UnmetProps) => {
  const { reckoning: r, refused } = p
  const below = r.unmet.filter((i) => p.calm && i.state === 'unsaid' && metAt(i, p.short)?.part === 'check')
  const here = r.unmet.filter((i) => !below.includes(i))
  return (
    <section
      class={
        r.says === 'nothing-unmet' && p.late === null ? 'notice reckoning' : 'notice notice-late reckoning'
      }
      id="unmet"
    >
      <h2>{reckoningTitle(r, p.goes, p.late)}</h2>
      <Lines {...p} items={here} />
      {below.length === 0 ? null : (
        <details open={below.some((i) => i.id === refused?.id)}>
          <summary>{askedLater(below.length, here.length, p.above)}</summary>
          <Lines {...p} items={below} />
        </details>
      )}
      <Seconds items={r.unmet} path={p.path} />
      <Signed items={r.items.filter((i) => i.state === 'signed')} />
      <p class="small">{RECKONING_NOTE}</p>
    </section>
  )
}

const askedLater = (later: number, here: number, above: boolean): string =>
  `${later === 1 ? 'One' : later}${here === 0 ? '' : ' more'} asked ${above ? 'below: tap each when it is so' : 'before the cut'}`

const Lines = ({ items, ...p }: UnmetProps & { items: Item[] }) =>
  items.length === 0 ? null : (
    <ul class="unmet">
      {items.map((i) => (
        <li class={stops(i) ? 'stops' : undefined}>
          <Line item={i} path={p.path} short={p.short} />
          <Way {...p} item={i} />
        </li>
      ))}
    </ul>
  )

const Line = ({ item: i, path, short }: { item: Item; path: string; short: boolean }) => {
  const at = metAt(i, short)
  const says = i.state !== 'unsaid' || i.moved === true
  // Within the link, which is as tall as a thumb: beside it the colon would begin a line.
  const title = `${notYet(i)}${says ? ':' : ''}`
  return (
    <>
      {stops(i) ? <span class="stop-mark">Stop</span> : null}{' '}
      {at === undefined ? (
        <strong>{title}</strong>
      ) : (
        <a class="tall" href={`${path}/${at.part}#f-${at.field}`}>
          <strong>{title}</strong>
        </a>
      )}
      {says ? ` ${i.why}` : ''}{' '}
      {stops(i) || i.state === 'unmet' ? (
        <span class="decides">Who decides: {i.decides.charAt(0).toLowerCase() + i.decides.slice(1)}.</span>
      ) : (
        <span class="unseen">({ITEM_STATE[i.state]})</span>
      )}
    </>
  )
}

/** One way for all that is not so, and not beside each: to have it so is what is meant first. */
const Seconds = ({ items, path }: { items: readonly Item[]; path: string }) => {
  const able = items.filter((i) => i.weight === 'second')
  return able.length === 0 ? null : (
    <details>
      <summary>Something cannot be met: have a second person sign for it</summary>
      <ul class="unmet">
        {able.map((i) => (
          <li>
            <a class="tall" href={`${path}/second?item=${i.id}`}>
              {i.what}
            </a>
          </li>
        ))}
      </ul>
    </details>
  )
}

const Signed = ({ items }: { items: Item[] }) =>
  items.length === 0 ? null : (
    <p>
      <b>Signed for by a second person:</b> {items.map((i) => i.what.toLowerCase()).join('; ')}.
    </p>
  )

const Way = ({ item: i, refused, frame, path, place, seen }: UnmetProps & { item: Item }) => {
  const { paper: hazard } = i
  if (hazard === undefined) return null
  const form = refused?.id === `trade-${hazard}` ? refused.form : null
  const tested = i.id === 'old-building'
  return <ClearForm {...{ hazard, tested, frame, path, form, place, seen }} />
}
