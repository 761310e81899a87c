/** The yard: every stand as a row, with where its colony is on its way. */
import type { Phase } from '../../src/recovery/plan-types.ts'
import { type Frame, Layout } from '../parts/layout.tsx'
import { Mark } from '../parts/mark.tsx'
import type { Ribbon } from '../parts/ribbon/model.ts'
import { RibbonDefs, RibbonSmall } from '../parts/ribbon/strip.tsx'
import { dayWords } from '../words/dates.ts'
import { PHASE_WORDS } from '../words/rules.ts'

export interface YardRow {
  tag: string
  path: string
  yard: string
  stand: string | null
  day: number
  /** Phase in words, or how it left. */
  standing: string
  next: string
  status: 'overdue' | 'due' | 'open' | null
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
  <Layout frame={p.frame} title="Yard">
    <h1>The yard</h1>
    {p.empty ? (
      <div class="sheet">
        <h2>No colony yet</h2>
        <p>Each colony you log gets a row here, with its days, its brood and its next check.</p>
        <a class="button button-do" href="/intake">
          Log the first intake
        </a>
      </div>
    ) : (
      <>
        <Finder {...p} />
        <p class="soft" role="status">
          {p.total === 0 ? 'No colony fits. Widen the choice above.' : `${p.total} ${p.total === 1 ? 'colony' : 'colonies'}, ${SORTS[p.asked.sort]}`}
        </p>
        <RibbonDefs />
        <ol class="lines">
          {p.rows.map((row) => (
            <Row row={row} manyYards={p.yards.length > 1 && p.asked.yard === ''} />
          ))}
        </ol>
        <Pages {...p} />
      </>
    )}
  </Layout>
)

const Finder = ({ yards, asked }: YardProps) => (
  <form class="finder" method="get" action="/yard">
    <label>
      Tag or word
      <input type="search" name="find" value={asked.find} maxlength={60} autocomplete="off" autocapitalize="off" />
    </label>
    <label>
      Yard
      <select name="yard">
        <option value="">all yards</option>
        {yards.map((y) => (
          <option value={y.yard} selected={y.yard === asked.yard}>
            {y.yard} ({y.open})
          </option>
        ))}
      </select>
    </label>
    <label>
      Which
      <select name="show">
        {Object.entries(SHOWS).map(([value, label]) => (
          <option value={value} selected={value === asked.show}>
            {label}
          </option>
        ))}
      </select>
    </label>
    <label>
      Standing
      <select name="phase">
        <option value="">any</option>
        {Object.entries(PHASE_WORDS).map(([value, label]) => (
          <option value={value} selected={value === asked.phase}>
            {label}
          </option>
        ))}
      </select>
    </label>
    <label>
      Order
      <select name="sort">
        {Object.entries(SORTS).map(([value, label]) => (
          <option value={value} selected={value === asked.sort}>
            {label}
          </option>
        ))}
      </select>
    </label>
    <button class="button" type="submit">
      Find
    </button>
  </form>
)

const Row = ({ row, manyYards }: { row: YardRow; manyYards: boolean }) => (
  <li class={row.status === 'overdue' ? 'line line-late' : 'line'}>
    <div class="line-margin">
      <a class="tag" href={row.path}>
        {row.tag}
      </a>
      {row.stand === null ? null : <span class="stand">stand {row.stand}</span>}
      {manyYards ? <span class="stand">{row.yard}</span> : null}
    </div>
    <div class="yard-row">
      <p class="yard-standing">
        <b class="nowrap">day {row.day}</b> {row.standing}
      </p>
      <RibbonSmall ribbon={row.ribbon} />
      <p class="yard-next">
        {row.status === null ? null : <Mark shape={row.status} />} {row.left === null ? row.next : dayWords(row.left, row.ribbon.today)}
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
