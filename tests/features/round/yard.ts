/** Boxes for the round's tests, told by days since their intake. */
import { addDays, type Day } from '../../../src/days.ts'
import { planOf } from '../../../src/decision/index.ts'
import type { Box } from '../../../src/features/round/box.ts'
import { type Entry, entry } from '../../../src/journal/entry.ts'
import { historyOf } from '../../../src/journal/history.ts'
import { DEFAULT_PROTOCOL } from '../../../src/recovery/protocol.ts'
import type { Planner } from '../../../src/store/index.ts'

export const TODAY: Day = '2026-06-10'

/** A yard that chose nothing. */
export const PLANNER: Planner = (history, day, exposure = null) =>
  planOf(history, day, DEFAULT_PROTOCOL, { exposure })

let made = 0
const nextId = (): string => {
  made++
  return `019707a0-0000-7000-8000-${made.toString(16).padStart(12, '0')}`
}

/** What happened, by the day it happened: days before today are negative. */
export type Told = Record<string, unknown> & { kind: string; day: number }

export interface BoxTold {
  tag: string
  stand?: string | null
  yard?: string
  /** Days since the intake. */
  age: number
  queen?: 'caged' | 'loose' | 'unseen' | 'lost'
  intake?: Record<string, unknown>
  entries?: Told[]
}

function entriesOf(told: BoxTold): Entry[] {
  const { tag, age, queen = 'unseen', yard = 'Quarry', intake = {} } = told
  const stand = told.stand === undefined ? tag.replace(/\D+/, '') : told.stand
  const base = (day: number) => ({ id: nextId(), colony: tag, by: 'Odalys', on: addDays(TODAY, day) })
  return [
    {
      ...base(-age),
      kind: 'intake',
      removal: { type: 'wall' },
      yard,
      queen,
      ...(stand === null ? {} : { stand }),
      ...intake,
    },
    ...(told.entries ?? []).map(({ day, ...fields }) => ({ ...base(day), ...fields })),
  ].map((raw) => entry.parse(raw))
}

/** The box with its plan as of today. */
export function box(told: BoxTold, today = TODAY): Box {
  const entries = entriesOf(told)
  const history = historyOf(told.tag, entries)
  if (history === null) throw new Error(`${told.tag} has no intake`)
  const place = history.entries.findLast((e) => e.kind === 'move') ?? history.intake
  return {
    id: history.intake.id,
    tag: told.tag,
    yard: place.yard,
    stand: place.stand ?? null,
    plan: planOf(history, today, DEFAULT_PROTOCOL),
    history,
  }
}
