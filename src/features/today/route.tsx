import { Hono } from 'hono'
import { v7 } from 'uuid'
import {
  colonyPath,
  type Env,
  forecastCache,
  type Ground,
  groundIn,
  type PageDeps,
  page,
} from '../../app/index.ts'
import { addDays, type Day, dayIn, daysBetween } from '../../days.ts'
import type { History } from '../../journal/index.ts'
import type { Frame } from '../../parts/index.ts'
import type { ColonySummary, Store } from '../../store/index.ts'
import { timeIn } from '../../time-of-day.ts'
import {
  betterDay,
  boundBeside,
  dayWords,
  doubtWays,
  leftOutBeside,
  live,
  lostWords,
  mayWaitUntil,
  toDoOf,
  type Words,
  waitsUntil,
} from '../../words/index.ts'
import { type Missed, missedNow, missedWords, urgencyOf } from '../round/index.ts'
import { asked } from './asked.ts'
import { doubtOf } from './doubts.ts'
import type { DoubtLine, LostLine } from './hand-over.tsx'
import type { TodayLine } from './line.tsx'
import { TodayPage, type TodayProps } from './page.tsx'
import { dangerOf, urgentFirst } from './urgent.ts'

/** Today's round. */
export function today(deps: PageDeps): Hono<Env> {
  const app = new Hono<Env>()
  const forecasts = deps.forecasts ?? forecastCache()

  /** Only where the plan leaves another day open to choose. */
  const betterThanToday = (s: ColonySummary, ground: Ground, w: Words): string | null => {
    const until = mayWaitUntil(s.plan)
    const history = until === null ? null : deps.store.colony(s.id)?.history
    if (until === null || history === null || history === undefined) return null
    return betterDay(forecasts.telling({ id: s.id, history, plan: s.plan }, ground, until), w)
  }

  const doubtLine = (s: ColonySummary, w: Words): DoubtLine[] => {
    const history = (): History | null => deps.store.colony(s.id)?.history ?? null
    const words = doubtOf(s.plan, history, deps.store.protocol(), w)
    return words === null
      ? []
      : [{ tag: s.tag, path: colonyPath(s), words, ways: doubtWays(s.plan, true, w) }]
  }

  app.get('/', (c) => {
    const { frame } = c.var
    const ground = groundIn(deps.store, frame.today, frame.zone)
    const missed = missedNow(deps.store, frame.today)
    const inspector = deps.store.settings.get('inspector')
    const inYard = planned(deps.store, frame.today)
    const due = inYard.flatMap((s) =>
      lineOf(s, missed.get(s.id), inspector, () => betterThanToday(s, ground, frame.words), frame.words),
    )
    const ids = new Set(due.map((d) => d.id))
    const others = inYard.filter((s) => !ids.has(s.id))
    const empty = due.length === 0 && others.length === 0 && deps.store.changes({ limit: 1 }).length === 0
    return page(
      c,
      <TodayPage
        frame={frame}
        urgent={urgentFirst(due.filter((d) => d.line.danger !== null).map((d) => d.line))}
        yards={byYard(due.filter((d) => d.line.danger === null))}
        waiting={byWait(others.filter((s) => s.plan.lost === null))}
        notInBook={notInBook(deps.store)}
        letters={frame.may('see-private') ? (deps.lettersDue?.(frame.today) ?? 0) : 0}
        setBack={setBackLately(deps.store, frame)}
        withoutGo={deps.store.removals.withoutGo(addDays(frame.today, -WITHOUT_GO_DAYS)).map((v) => v.id)}
        looks={frame.may('correct-any') ? asked(deps.store, inYard, frame.today, frame.words) : []}
        lost={inYard.flatMap((s) => lostLine(s, frame.words))}
        doubts={frame.may('correct-any') ? inYard.flatMap((s) => doubtLine(s, frame.words)) : []}
        empty={empty}
      />,
    )
  })
  return app
}

/** On the day itself and the next: whoever comes in the morning after has not heard. */
function setBackLately(store: PageDeps['store'] | Store, { zone, today }: Frame): TodayProps['setBack'] {
  // The server alone knows.
  const at = 'refused' in store ? store.settings.get('setBack') : null
  if (at === null) return null
  const day = dayIn(zone, new Date(at))
  return daysBetween(day, today) > 1 ? null : { day: dayWords(day, today), at: timeIn(zone, new Date(at)) }
}

/** Days since anybody wrote on it for which Today says that a removal was begun without a “go” (judgement). */
const WITHOUT_GO_DAYS = 14

/** Known to the server alone, and there to a role that may see it. */
const notInBook = (store: PageDeps['store'] | Store): number =>
  'refused' in store ? store.refused.count() : 0

/** Colonies in the yard with their plans as of today, read once; where today's could not be written, recomputed. */
function planned(store: PageDeps['store'], today: Day): ColonySummary[] {
  const inYard = store.colonies({ open: true })
  if (inYard.every((s) => s.asOf === today)) return inYard
  const made = new Map(store.today(today).map((s) => [s.id, s]))
  return inYard.map((s) => made.get(s.id) ?? s)
}

const lostLine = (s: ColonySummary, w: Words): LostLine[] => {
  const words = lostWords(s.plan, w)
  return words === null ? [] : [{ tag: s.tag, path: colonyPath(s), words }]
}

interface Due {
  id: string
  yard: string
  line: TodayLine
}

function lineOf(
  s: ColonySummary,
  missed: Missed | undefined,
  inspector: string,
  better: () => string | null,
  w: Words,
): Due[] {
  const toDo = toDoOf(s.plan, w)
  if (toDo === null) return []
  return [
    {
      id: s.id,
      yard: s.yard,
      line: {
        tag: s.tag,
        path: colonyPath(s),
        stand: s.stand,
        yard: s.yard,
        toDo,
        danger: dangerOf(s.plan.advice.action, urgencyOf(s.plan), s.asOf, w),
        half: s.plan.missing.length > 0,
        missed: missed ? missedWords(missed, s.asOf, w) : null,
        betterDay: better(),
        leftOut: leftOutBeside(s.plan, toDo.why, w),
        bound: boundBeside(s.plan, w),
        inspector: toDo.action === 'call-inspector' ? inspector : null,
        entryId: toDo.lidOn ? v7() : '',
      },
    },
  ]
}

/** Yards in order; in each, what is late first, then due, then what may be done; among equals as one walks. */
function byYard(due: Due[]): { yard: string; lines: TodayLine[] }[] {
  const yards = new Map<string, TodayLine[]>()
  for (const { yard, line } of due) yards.set(yard, [...(yards.get(yard) ?? []), line])
  return [...yards].map(([yard, lines]) => ({ yard, lines: urgentFirst(lines) }))
}

type Waiting = TodayProps['waiting']

function byWait(others: ColonySummary[]): Waiting {
  const groups = new Map<Day | null, Waiting[number]['colonies']>()
  for (const s of others) {
    const until = waitsUntil(s.plan)
    const late = live(s.plan).some((c) => c.status === 'overdue')
    groups.set(until, [...(groups.get(until) ?? []), { tag: s.tag, path: colonyPath(s), late }])
  }
  return [...groups]
    .map(([until, colonies]) => ({ until, colonies }))
    .sort((a, b) => (a.until ?? '9').localeCompare(b.until ?? '9'))
}
