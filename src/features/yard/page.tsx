/** The yard: every stand as a row, with where its colony is on its way. */

import {
  BESIDE,
  type Frame,
  Layout,
  ListAndBox,
  PressingMark,
  type Ribbon,
  RibbonDefs,
  RibbonSmall,
} from '../../parts/index.ts'
import type { Phase } from '../../recovery/index.ts'
import { dayWords, PHASE_WORDS, type ToDo } from '../../words/index.ts'

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

export const SORTS = { walk: 'as you walk', next: 'most pressing', day: 'days here', tag: 'tag' } as const
export type Sort = keyof typeof SORTS
export const SHOWS = { in: 'in the yard', left: 'left the yard', all: 'all' } as const
export type Show = keyof typeof SHOWS

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

export const YardPage = (p: YardProps) => (
  <Layout frame={p.frame} title="Yard" scripts={[BESIDE]}>
    <h1>The yard</h1>
    {p.empty ? (
      <div class="sheet">
        <h2>No colony yet</h2>
        <p>Each colony you log gets a row here, with its days, its brood and its next check.</p>
        {p.frame.may('log-intake') ? (
          <a class="button button-do" href="/intake">
            Log the first intake
          </a>
        ) : null}
      </div>
    ) : (
      <ListAndBox>
        <Finder {...p} />
        <p class="soft" role="status">
          {p.total === 0
            ? 'No colony fits. Widen the choice above.'
            : `${p.total} ${p.total === 1 ? 'colony' : 'colonies'}, ${SORTS[p.asked.sort]}`}
        </p>
        <RibbonDefs />
        <Rows {...p} />
        <Pages {...p} />
      </ListAndBox>
    )}
  </Layout>
)

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

const Finder = ({ yards, asked }: YardProps) => (
  <form class="finder" method="get" action="/yard">
    <div class="finder-first">
      <label>
        Tag or word
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
        Find
      </button>
    </div>
    <details
      class="caution"
      open={asked.yard !== '' || asked.phase !== '' || asked.show !== 'in' || asked.sort !== 'walk'}
    >
      <summary>Choose and order</summary>
      <div class="finder-more">
        <Select
          name="yard"
          label="Yard"
          value={asked.yard}
          options={[
            ['', 'all yards'],
            ...yards.map((y): [string, string] => [y.yard, `${y.yard} (${y.open})`]),
          ]}
        />
        <Select name="show" label="Which" value={asked.show} options={Object.entries(SHOWS)} />
        <Select
          name="phase"
          label="Standing"
          value={asked.phase}
          options={[['', 'any'], ...Object.entries(PHASE_WORDS)]}
        />
        <Select name="sort" label="Order" value={asked.sort} options={Object.entries(SORTS)} />
      </div>
    </details>
  </form>
)

const Select = (p: { name: string; label: string; value: string; options: [string, string][] }) => (
  <label>
    {p.label}
    <select name={p.name}>
      {p.options.map(([value, label]) => (
        <option value={value} selected={value === p.value}>
          {label}
        </option>
      ))}
    </select>
  </label>
)

const Row = ({ row, named }: { row: YardRow; named: boolean }) => (
  <li class={row.toDo?.late ? 'line line-late' : 'line'} data-box={row.path}>
    <div class="line-margin">
      <a class="tag" href={row.path}>
        {row.tag}
      </a>
      {row.stand === null ? null : <span class="stand">stand {row.stand}</span>}
      {named ? <span class="stand">{row.yard}</span> : null}
    </div>
    <div class="yard-row">
      <p class="yard-standing">
        <b class="nowrap">day {row.day}</b> {row.standing}
      </p>
      <RibbonSmall ribbon={row.ribbon} />
      <p class="yard-next">
        {row.toDo === null ? null : <PressingMark toDo={row.toDo} today={row.ribbon.today} />}{' '}
        {row.left === null ? row.next : dayWords(row.left, row.ribbon.today)}
      </p>
    </div>
  </li>
)

const Pages = ({ asked, pages, pageHref }: YardProps) =>
  pages <= 1 ? null : (
    <nav class="buttons" aria-label="More colonies">
      {asked.page > 1 ? (
        <a class="button" rel="prev" href={pageHref(asked.page - 1)}>
          Before
        </a>
      ) : null}
      <span class="page-count">
        page {asked.page} of {pages}
      </span>
      {asked.page < pages ? (
        <a class="button" rel="next" href={pageHref(asked.page + 1)}>
          Further
        </a>
      ) : null}
    </nav>
  )
