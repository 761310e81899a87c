/** The yard: every stand as a row, with where its colony is on its way. */

import { useWords } from '../../forms/index.ts'
import {
  BESIDE,
  type Frame,
  Layout,
  ListAndBox,
  PressingMark,
  type Ribbon,
  RibbonDefs,
  RibbonSmall,
  Select,
} from '../../parts/index.ts'
import type { Phase } from '../../recovery/index.ts'
import type { ToDo } from '../../words/index.ts'

export interface YardRow {
  tag: string
  path: string
  yard: string
  stand: string | null
  day: number
  /** Phase in words, or how it left. */
  standing: string
  next: string
  /** What is to be done there today; null when it can wait. */
  toDo: ToDo | null
  left: string | null
  ribbon: Ribbon
}

export const SORTS = ['walk', 'next', 'day', 'tag'] as const
type Sort = (typeof SORTS)[number]
export const SHOWS = ['in', 'left', 'all'] as const
type Show = (typeof SHOWS)[number]

export interface YardProps {
  frame: Frame
  rows: YardRow[]
  total: number
  yards: { yard: string; open: number }[]
  asked: { yard: string; find: string; sort: Sort; show: Show; phase: Phase | ''; page: number }
  pages: number
  empty: boolean
  pageHref: (page: number) => string
}

export const YardPage = (p: YardProps) => {
  const { parts, yard: said } = p.frame.words
  return (
    <Layout frame={p.frame} title={said.title} scripts={[BESIDE]}>
      <h1>{said.heading}</h1>
      {p.empty ? (
        <div class="sheet">
          <h2>{said.noColony}</h2>
          <p>{said.eachColony}</p>
          {p.frame.may('log-intake') ? (
            <a class="button button-do" href="/intake">
              {said.logFirst}
            </a>
          ) : null}
        </div>
      ) : (
        <ListAndBox>
          <Finder {...p} />
          <p class="soft" role="status">
            {p.total === 0 ? said.noneFits : `${parts.colony(p.total)}, ${said.sorts[p.asked.sort]}`}
          </p>
          <RibbonDefs />
          <Rows {...p} />
          <Pages {...p} />
        </ListAndBox>
      )}
    </Layout>
  )
}

/** In walking order the yards are headings; in any other order each row names its yard. */
const Rows = ({ rows, asked, yards }: YardProps) => {
  const walking = asked.sort === 'walk' && asked.show === 'in'
  if (!walking)
    return (
      <ol class="lines">
        {rows.map((row) => (
          <Row row={row} named={yards.length > 1 && asked.yard === ''} />
        ))}
      </ol>
    )
  return (
    <>
      {[...new Set(rows.map((r) => r.yard))].map((yard) => (
        <section class="round">
          <h2>{yard}</h2>
          <ol class="lines">
            {rows
              .filter((r) => r.yard === yard)
              .map((row) => (
                <Row row={row} named={false} />
              ))}
          </ol>
        </section>
      ))}
    </>
  )
}

const Finder = ({ frame, yards, asked }: YardProps) => {
  const { finding, trade, yard: said } = frame.words
  return (
    <form class="finder" method="get" action="/yard">
      <div class="finder-first">
        <label>
          {said.find}
          <input
            type="search"
            name="find"
            value={asked.find}
            maxlength={60}
            autocomplete="off"
            autocapitalize="off"
          />
        </label>
        <button class="button" type="submit">
          {finding.title}
        </button>
      </div>
      <details
        class="caution"
        open={asked.yard !== '' || asked.phase !== '' || asked.show !== 'in' || asked.sort !== 'walk'}
      >
        <summary>{said.choose}</summary>
        <div class="finder-more">
          <Select
            name="yard"
            label={said.yard}
            value={asked.yard}
            options={[['', said.allYards], ...yards.map((y) => [y.yard, `${y.yard} (${y.open})`] as const)]}
          />
          <Select name="show" label={said.which} value={asked.show} options={Object.entries(said.shows)} />
          <Select
            name="phase"
            label={said.standing}
            value={asked.phase}
            options={[['', said.any], ...Object.entries(trade.phases)]}
          />
          <Select name="sort" label={said.order} value={asked.sort} options={Object.entries(said.sorts)} />
        </div>
      </details>
    </form>
  )
}

const Row = ({ row, named }: { row: YardRow; named: boolean }) => {
  const { dates, parts, yard: said } = useWords()
  return (
    <li class={row.toDo?.late ? 'line line-late' : 'line'} data-box={row.path}>
      <div class="line-margin">
        <a class="tag" href={row.path}>
          {row.tag}
        </a>
        {row.stand === null ? null : <span class="stand">{parts.stand(row.stand)}</span>}
        {named ? <span class="stand">{row.yard}</span> : null}
      </div>
      <div class="yard-row">
        <p class="yard-standing">
          <b class="nowrap">{said.day(row.day)}</b> {row.standing}
        </p>
        <RibbonSmall ribbon={row.ribbon} />
        <p class="yard-next">
          {row.toDo === null ? null : <PressingMark toDo={row.toDo} today={row.ribbon.today} />}{' '}
          {row.left === null ? row.next : dates.day(row.left, row.ribbon.today)}
        </p>
      </div>
    </li>
  )
}

const Pages = ({ asked, frame, pages, pageHref }: YardProps) => {
  const { yard: said } = frame.words
  return pages <= 1 ? null : (
    <nav class="buttons" aria-label={said.more}>
      {asked.page > 1 ? (
        <a class="button" rel="prev" href={pageHref(asked.page - 1)}>
          {said.before}
        </a>
      ) : null}
      <span class="page-count">{said.page(asked.page, pages)}</span>
      {asked.page < pages ? (
        <a class="button" rel="next" href={pageHref(asked.page + 1)}>
          {said.further}
        </a>
      ) : null}
    </nav>
  )
}
