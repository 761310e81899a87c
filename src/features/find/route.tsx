import { Hono } from 'hono'
import { colonyPath, type Env, nearestTags, type PageDeps, page } from '../../app/index.ts'
import type { Sheet } from '../../records/index.ts'
import type { ColonySummary, Repository } from '../../store/index.ts'
import { leftWords, type Words } from '../../words/index.ts'
import { type BoxLine, type EntryLine, FindPage, type SheetLine } from './page.tsx'
import { findBoxes, findEntries, isSheetOf, rarest, snippet, wordsOf } from './search.ts'

/** Most of a kind on the page; more than these are not read on a phone (judgement). */
const MOST = 20
const RECENT = 8
/** Entries to look back through for the boxes written down last. */
const LOOK_BACK = 200

/** Find anything. */
export function find(deps: PageDeps): Hono<Env> {
  const app = new Hono<Env>()
  app.get('/find', (c) => {
    const { store } = deps
    const { words: w } = c.var.frame
    const lines = (found: ColonySummary[]): BoxLine[] => found.map((s) => boxLine(s, w))
    const typed = (c.req.query('q') ?? '').trim().slice(0, 80)
    const words = wordsOf(typed)
    const colonies = typed === '' ? [] : store.colonies({})
    const boxes = findBoxes(typed, colonies)
    const exact = boxes.filter((b) => b.near === 0)
    // The tag of one box, and nothing else typed: one is there. Those before it that had the tag are found by its page.
    const [only] = exact.filter((b) => b.summary.closedOn === null)
    if (only !== undefined && c.req.query('list') === undefined)
      return c.redirect(colonyPath(only.summary), 303)
    const entries = words.length === 0 ? [] : entriesIn(store, words, w)
    const sheets = words.length === 0 ? [] : sheetsIn(store, words, w)
    const nothing = boxes.length + entries.length + sheets.length === 0
    return page(
      c,
      <FindPage
        frame={c.var.frame}
        typed={typed}
        boxes={lines(boxes.slice(0, MOST).map((b) => b.summary))}
        entries={entries.slice(0, MOST)}
        sheets={sheets.slice(0, MOST)}
        recent={typed === '' ? lines(recentIn(store)) : []}
        more={[boxes, entries, sheets].reduce((sum, of) => sum + Math.max(0, of.length - MOST), 0)}
        near={nothing && typed !== '' ? lines(nearestTags(typed, colonies)) : []}
      />,
    )
  })
  return app
}

const boxLine = (s: ColonySummary, w: Words): BoxLine => ({
  tag: s.tag,
  path: colonyPath(s),
  place: w.entries.at(s.yard, s.stand ?? undefined),
  standing: s.outcome === null ? w.trade.phases[s.phase] : leftWords(s.outcome, w),
  left: s.closedOn !== null,
})

/** What stands in a journal still: what was corrected or taken back is found by what took its place. */
function entriesIn(store: Repository, words: readonly string[], w: Words): EntryLine[] {
  return findEntries(words, store.mentions(rarest(words))).flatMap(({ row: { entry, tag }, text }) => {
    const colony = store.colony(entry.colony)
    if (colony === null || !colony.history.entries.some((e) => e.id === entry.id)) return []
    return [
      {
        tag,
        path: `${colonyPath(colony.summary)}#e-${entry.id}`,
        on: entry.on,
        kind: w.entries.kinds[entry.kind],
        by: entry.by,
        text: snippet(text, words),
      },
    ]
  })
}

/** Removal sheets, for a role that has them, the newest job first; on a phone those that it keeps. */
function sheetsIn(store: Repository, words: readonly string[], w: Words): SheetLine[] {
  return store.removals
    .list()
    .filter(({ sheet }) => isSheetOf(words, sheet))
    .sort((a, b) => jobDay(b.sheet).localeCompare(jobDay(a.sheet)))
    .map(({ id, sheet: { job }, colonies }) => ({
      path: `/removals/${id}`,
      name: job.name ?? job.address ?? w.finding.nameless,
      address: job.name === undefined ? null : (job.address ?? null),
      calledOn: job.calledOn ?? null,
      boxes: colonies.flatMap((colony) => {
        const s = store.colony(colony)?.summary
        return s === undefined ? [] : [{ tag: s.tag, path: colonyPath(s) }]
      }),
    }))
}

const jobDay = ({ job }: Sheet): string => job.plannedOn ?? job.calledOn ?? ''

/** The boxes that were written down last. */
function recentIn(store: Repository): ColonySummary[] {
  const ids = new Set(store.changes({ limit: LOOK_BACK }).map((r) => r.entry.colony))
  return [...ids].slice(0, RECENT).flatMap((id) => store.colony(id)?.summary ?? [])
}
