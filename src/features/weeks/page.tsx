/** The weeks ahead: boxes as rows, days as columns, the work of each day on top. */
import { type Day, inWords } from '../../days.ts'
import { type Frame, Layout, Wide, YardChoice } from '../../parts/index.ts'
import { dayWords } from '../../words/index.ts'
import { type Cell, together, type Work } from './weeks.ts'

export interface WeeksRow {
  tag: string
  path: string
  yard: string
  stand: string | null
  cells: Cell[]
  /** The row in words, for whoever does not see the marks. */
  said: string
}

export interface WeeksProps {
  frame: Frame
  days: Day[]
  /** All boxes; where the yards are summed, those that are late. */
  rows: WeeksRow[]
  /** A row a yard, where there are too many boxes to draw them all. */
  sums: { yard: string; path: string; work: Work[] }[]
  /** How many boxes those are, and where they are all drawn. */
  all: { boxes: number; path: string } | null
  /** Of each day, in the order of `days`. */
  work: Work[]
  /** Seven days each, from today or the first day shown. */
  weeks: { from: Day; to: Day; work: Work }[]
  yard: string | null
  yards: string[]
  /** Addresses of earlier and later days; null where there are none. */
  earlier: string | null
  later: string | null
  /** How many queens to order, for whoever plans supplies. */
  order: string | null
}

export const WeeksPage = (p: WeeksProps) => (
  <Layout frame={p.frame} title="The weeks ahead" scripts={['islands/print.ts']}>
    <h1>The weeks ahead</h1>
    {p.rows.length + p.sums.length === 0 ? (
      <p class="sheet">No box stands here. Each one that comes gets a row, with its work on its days.</p>
    ) : (
      <>
        <ul class="week-sums">
          {p.weeks.map((w) => (
            <li>
              <b>
                {dayWords(w.from, p.frame.today)} to {dayWords(w.to, p.frame.today)}:
              </b>{' '}
              {weekWords(w.work)}.
            </li>
          ))}
        </ul>
        {p.order === null ? null : (
          <p>
            {p.order} <a href="/supplies">Supplies</a>
          </p>
        )}
        <Choose {...p} />
        <Wide label="Boxes and days">
          <table class="weeks">
            <caption class="unseen">Each box a row, each day a column; the work of each day on top</caption>
            <Head {...p} />
            <Body {...p} />
            <Sums {...p} />
          </table>
        </Wide>
        <Key />
      </>
    )}
  </Layout>
)

const many = (n: number, one: string, more: string): string => `${n} ${n === 1 ? one : more}`

/** '12 visits (8 opened), 2 late; 1 frame of eggs; 3 may leave' */
function weekWords(w: Work): string {
  const parts = [
    `${many(w.visits, 'visit', 'visits')} (${w.opened} opened)${w.late === 0 ? '' : `, ${w.late} late now`}`,
    w.eggFrames === 0 ? '' : many(w.eggFrames, 'frame of eggs', 'frames of eggs'),
    w.queens === 0 ? '' : many(w.queens, 'queen', 'queens'),
    w.leave === 0 ? '' : `${w.leave} may leave`,
  ]
  return parts.filter((x) => x !== '').join('; ')
}

const Choose = ({ yard, yards, earlier, later, all }: WeeksProps) => (
  <form class="sheet-choose no-print" method="get" action="/weeks">
    {yards.length < 2 ? null : (
      <>
        <YardChoice yard={yard} yards={yards} />
        <button class="button" type="submit">
          Show
        </button>
      </>
    )}
    {earlier === null ? null : (
      <a class="button button-plain" href={earlier}>
        Earlier
      </a>
    )}
    {later === null ? null : (
      <a class="button button-plain" href={later}>
        Later
      </a>
    )}
    {all === null ? null : (
      <a class="button button-plain" href={all.path}>
        All {all.boxes} boxes
      </a>
    )}
    <button class="button" type="button" id="print" hidden>
      Print
    </button>
  </form>
)

/** So many days a phone shows. */
const NARROW_DAYS = 14

/** Columns that a phone has no room for. */
const columnClass = (i: number, day: Day, { days, frame }: WeeksProps): string => {
  const now = days.indexOf(frame.today)
  const first = now < 0 ? 0 : now - 1
  return [
    i < first || i >= first + NARROW_DAYS ? 'far' : '',
    day === frame.today ? 'now' : '',
    inWords(day).startsWith('Mon') ? 'mon' : '',
  ]
    .filter((x) => x !== '')
    .join(' ')
}

const Head = (p: WeeksProps) => (
  <thead>
    <tr>
      <th scope="col">Box</th>
      {p.days.map((day, i) => {
        const [week = '', number = '', month = ''] = inWords(day).split(' ')
        return (
          <th scope="col" class={columnClass(i, day, p) || undefined}>
            <time datetime={day}>
              <small>{week.slice(0, 2)}</small>
              {number}
              <span class="unseen"> {month}</span>
            </time>
          </th>
        )
      })}
    </tr>
    <Sum {...p} label="Visits" of="visits" />
    <Sum {...p} label="Opened" of="opened" />
    <Sum {...p} label="Egg frames" of="eggFrames" />
    <Sum {...p} label="Queens" of="queens" />
    <Sum {...p} label="May leave" of="leave" />
  </thead>
)

const number = (n: number) => (n === 0 ? '' : n < 100 ? n : <span class="w-many">{n}</span>)

/** A row a yard: the visits of each day, and the way to its boxes. */
const Sums = (p: WeeksProps) =>
  p.sums.length === 0 ? null : (
    <tbody>
      <GroupRow name="Visits by yard" />
      {p.sums.map(({ yard, path, work }) => (
        <tr class="weeks-of-yard">
          <th scope="row">
            <a href={path}>{yard}</a>
          </th>
          {p.days.map((day, i) => (
            <td class={[columnClass(i, day, p), work[i]?.late ? 'w-late' : ''].filter(Boolean).join(' ')}>
              {number(work[i]?.visits ?? 0)}
              {work[i]?.late ? <span class="unseen">, {work[i]?.late} late</span> : null}
            </td>
          ))}
        </tr>
      ))}
    </tbody>
  )

const Sum = (p: WeeksProps & { label: string; of: keyof Work }) =>
  together(p.work)[p.of] === 0 ? null : (
    <tr class="weeks-sum">
      <th scope="row">{p.label}</th>
      {p.days.map((day, i) => (
        <td class={columnClass(i, day, p) || undefined}>{number(p.work[i]?.[p.of] ?? 0)}</td>
      ))}
    </tr>
  )

/** The boxes yard by yard; where the yards are summed, the late ones in one list. */
const Body = (p: WeeksProps) => (
  <>
    {groups(p).map(({ name, rows }) => (
      <tbody>
        {name === null ? null : <GroupRow name={name} />}
        {rows.map((row) => (
          <tr>
            <th scope="row">
              <a class="tag" href={row.path}>
                {row.tag}
              </a>
              <span class="unseen">: {row.said}</span>
            </th>
            {row.cells.map((cell, i) => (
              <td class={[columnClass(i, cell.day, p), cellClass(cell)].filter((x) => x !== '').join(' ')}>
                {markOf(cell)}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    ))}
  </>
)

function groups({ rows, sums, yard, yards }: WeeksProps): { name: string | null; rows: WeeksRow[] }[] {
  if (rows.length === 0) return []
  if (sums.length > 0) return [{ name: 'Late now', rows }]
  const named = yards.length > 1 && yard === null
  return [...new Set(rows.map((r) => r.yard))].map((name) => ({
    name: named ? name : null,
    rows: rows.filter((r) => r.yard === name),
  }))
}

/** As wide as a phone's table: days that it has no room for are no columns there. */
const GroupRow = ({ name }: { name: string }) => (
  <tr class="weeks-yard">
    <th scope="rowgroup" colspan={NARROW_DAYS + 1}>
      {name}
    </th>
  </tr>
)

const cellClass = ({ window, quiet, work }: Cell): string =>
  [work?.late ? 'w-late' : '', quiet ? 'w-quiet' : window ? 'w-window' : ''].filter((x) => x !== '').join(' ')

/** One mark a cell: what happened, then what is late, then what is to be done, then the leaving. */
function markOf({ visit, work, leaves }: Cell) {
  const mark =
    visit !== null
      ? visit === 'open'
        ? '●'
        : '○'
      : work?.late
        ? '!'
        : leaves
          ? '⇥'
          : work !== null && work.words.length > 0
            ? work.lidOn
              ? '◇'
              : '◆'
            : null
  return mark === null ? null : <span aria-hidden="true">{mark}</span>
}

const Key = () => (
  <ul class="weeks-key" aria-label="Marks">
    <li>
      <b>●</b> opened, <b>○</b> looked at from outside
    </li>
    <li>
      <b>◆</b> best day to open it, <b>◇</b> to look from outside, <b class="w-late">!</b> late
    </li>
    <li>
      <i class="w-window" /> may be done, <i class="w-quiet" /> leave the lid on
    </li>
    <li>
      <b>⇥</b> likely to leave
    </li>
  </ul>
)
