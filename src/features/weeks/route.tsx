import { Hono } from 'hono'
import { colonyPath, type Deps, type Env, page } from '../../app/index.ts'
import type { Day } from '../../days.ts'
import { DEFAULT_ORDER, orderAdvice } from '../../forecast/index.ts'
import { type Happening, type History, happeningOf, isVisit } from '../../journal/index.ts'
import type { ColonySummary } from '../../store/index.ts'
import { dayWords, fromTo } from '../../words/index.ts'
import { suppliesOn } from '../supplies/node.ts'
import { WeeksPage, type WeeksProps, type WeeksRow } from './page.tsx'
import { type Cell, cellsOf, daysShown, leavesOn, together, type Work, workOf } from './weeks.ts'

const WEEK = 7
/** Days one step further; and how far ahead plans are worth a look (judgement). */
const STEP = 14
const FURTHEST = 56

/** More boxes than this of several yards are one row a yard, and rows of the late ones (judgement: four screens of a phone). */
const MOST_ROWS = 50

/** The weeks ahead. */
export function weeks(deps: Deps): Hono<Env> {
  const app = new Hono<Env>()
  const reckon = suppliesOn(deps)
  app.get('/weeks', async (c) => {
    const { store } = deps
    const { frame } = c.var
    const yards = store.yards().filter((y) => y.open > 0)
    const yard = yards.find((y) => y.yard === c.req.query('yard'))?.yard ?? null
    const asked = Number(c.req.query('skip') ?? '0')
    const skip = Number.isInteger(asked) ? Math.max(0, Math.min(FURTHEST, asked)) : 0
    const days = daysShown(frame.today, skip)
    const [first = frame.today] = days
    store.refresh(frame.today)
    const rows = store
      .colonies({ open: true, ...(yard === null ? {} : { yard }) })
      .map((s) => rowOf(s, visitsIn(store.colony(s.id)?.history ?? null, first, s.yard), days, frame.today))
    const work = workOn(days, rows, frame.today)
    const whole = c.req.query('boxes') === 'all'
    const summed = yard === null && yards.length > 1 && rows.length > MOST_ROWS && !whole
    const hrefOf = (to: number, of: { yard?: string; boxes?: 'all' } = {}): string => {
      const query = new URLSearchParams({
        ...(yard === null ? {} : { yard }),
        ...(whole ? { boxes: 'all' } : {}),
        ...(to === 0 ? {} : { skip: String(to) }),
        ...of,
      })
      return query.size === 0 ? '/weeks' : `/weeks?${query}`
    }
    return page(
      c,
      <WeeksPage
        frame={frame}
        days={days}
        rows={summed ? rows.filter((r) => r.cells.some((cell) => cell.work?.late)) : rows}
        sums={
          summed
            ? yards.map((y) => ({
                yard: y.yard,
                path: hrefOf(skip, { yard: y.yard }),
                work: workOn(
                  days,
                  rows.filter((r) => r.yard === y.yard),
                  frame.today,
                ),
              }))
            : []
        }
        work={work}
        all={summed ? { boxes: rows.length, path: hrefOf(skip, { boxes: 'all' }) } : null}
        weeks={weeksOf(days, work, frame.today)}
        yard={yard}
        yards={yards.map((y) => y.yard)}
        earlier={skip === 0 ? null : hrefOf(Math.max(0, skip - STEP))}
        later={skip >= FURTHEST ? null : hrefOf(skip + STEP)}
        order={
          frame.may('see-supplies') && rows.length > 0
            ? orderAdvice((await reckon(frame)).forecast.queens, DEFAULT_ORDER).sentence
            : null
        }
      />,
    )
  })
  return app
}

const workOn = (days: readonly Day[], rows: readonly WeeksRow[], today: Day): Work[] =>
  days.map((_, i) =>
    workOf(
      rows.flatMap((r) => r.cells[i] ?? []),
      today,
    ),
  )

/** Visits that stand: what was taken back did not happen. */
const visitsIn = (history: History | null, from: Day, yard: string): Happening[] =>
  (history?.entries ?? []).filter((e) => e.on >= from && isVisit(e)).map((e) => happeningOf(e, yard))

const rowOf = (
  s: ColonySummary,
  visits: readonly Happening[],
  days: readonly Day[],
  today: Day,
): WeeksRow => {
  const cells = cellsOf({ plan: s.plan, visits }, days)
  return {
    tag: s.tag,
    path: colonyPath(s),
    yard: s.yard,
    stand: s.stand,
    cells,
    said: saidOf(s, cells, today),
  }
}

function saidOf({ plan }: ColonySummary, cells: readonly Cell[], today: Day): string {
  const went = cells.filter((c) => c.visit !== null).map((c) => dayWords(c.day, today))
  const leaves = leavesOn(plan)
  const said = [
    went.length === 0 ? '' : `visited ${went.join(', ')}`,
    ...cells
      .filter((c) => c.work !== null && c.work.words.length > 0)
      .map((c) => `${dayWords(c.day, today)} ${c.work?.words.join(', ')}${c.work?.late ? ', late' : ''}`),
    plan.quiet === null ? '' : `lid on ${fromTo(plan.quiet.from, plan.quiet.to, today)}`,
    leaves === null ? '' : `may leave ${dayWords(leaves, today)}`,
  ]
  return said.filter((x) => x !== '').join('; ') || 'nothing planned'
}

/** Seven days each, as far as they are shown whole. */
function weeksOf(days: readonly Day[], work: readonly Work[], today: Day): WeeksProps['weeks'] {
  const found: WeeksProps['weeks'] = []
  for (let i = Math.max(0, days.indexOf(today)); i + WEEK <= days.length; i += WEEK) {
    const [from, to] = [days[i], days[i + WEEK - 1]]
    if (from !== undefined && to !== undefined)
      found.push({ from, to, work: together(work.slice(i, i + WEEK)) })
  }
  return found
}
