import { Hono } from 'hono'
import { v7 } from 'uuid'
import { TodayPage, type TodayLine } from '../../../web/pages/today.tsx'
import { toDoOf } from '../../../web/words/lines.ts'
import { coming } from '../../../web/words/rules.ts'
import type { Day } from '../../days.ts'
import type { ColonySummary } from '../../store/index.ts'
import type { Deps, Env } from '../deps.ts'
import { colonyPath, page } from '../respond.tsx'

/** Today's round. */
export function today(deps: Deps): Hono<Env> {
  const app = new Hono<Env>()
  app.get('/', (c) => {
    const { frame } = c.var
    const due = deps.store.today(frame.today)
    const ids = new Set(due.map((s) => s.id))
    const others = deps.store.colonies({ open: true }).filter((s) => !ids.has(s.id))
    const empty = due.length === 0 && others.length === 0 && deps.store.changes({ limit: 1 }).length === 0
    return page(c, <TodayPage frame={frame} yards={byYard(due)} waiting={byWait(others)} empty={empty} />)
  })
  return app
}

/** Yards in order; in each, what is late first, then as one walks. */
function byYard(due: ColonySummary[]): { yard: string; lines: TodayLine[] }[] {
  const yards = new Map<string, TodayLine[]>()
  for (const s of due) {
    const lines = yards.get(s.yard) ?? []
    lines.push({ tag: s.tag, path: colonyPath(s), stand: s.stand, toDo: toDoOf(s.plan), entryId: v7() })
    yards.set(s.yard, lines)
  }
  return [...yards].map(([yard, lines]) => ({
    yard,
    lines: [...lines.filter((l) => l.toDo.late), ...lines.filter((l) => !l.toDo.late)],
  }))
}

function byWait(others: ColonySummary[]): { until: Day | null; colonies: { tag: string; path: string }[] }[] {
  const groups = new Map<Day | null, { tag: string; path: string }[]>()
  for (const s of others) {
    const until = coming(s.plan)[0]?.opens ?? null
    groups.set(until, [...(groups.get(until) ?? []), { tag: s.tag, path: colonyPath(s) }])
  }
  return [...groups]
    .map(([until, colonies]) => ({ until, colonies }))
    .sort((a, b) => (a.until ?? '9').localeCompare(b.until ?? '9'))
}
