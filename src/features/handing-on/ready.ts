/** Colonies that can go, and those that soon can. Pure. */
import { addDays, type Day, type Span } from '../../days.ts'
import type { ColonyId } from '../../ids.ts'
import { asksForFollowUp, type MoveRecord, type Permit } from '../../records/index.ts'
import type { ColonySummary } from '../../store/index.ts'
import { beforeItLeaves } from '../../words/index.ts'

export interface ReadyLine {
  summary: ColonySummary
  /** What is said before it leaves. */
  before: string[]
  papers: number
}

export interface SoonLine {
  summary: ColonySummary
  expected: Span
  /** How many conditions are not met. */
  missing: number
}

/** Days ahead that count as soon: time to find a keeper and to get papers (judgement). */
const SOON_DAYS = 14

/** Ready ones by how long they have been here; soon ones by their likely day. */
export function readyList(
  colonies: readonly ColonySummary[],
  papersOf: (id: string) => readonly Permit[],
  today: Day,
): { ready: ReadyLine[]; soon: SoonLine[] } {
  const ready = colonies
    .filter((s) => s.plan.readiness.ready)
    .map((summary) => {
      const papers = papersOf(summary.id)
      return { summary, before: beforeItLeaves(summary.plan, papers, today), papers: papers.length }
    })
    .sort((a, b) => b.summary.day - a.summary.day)
  const soon = colonies
    .flatMap((summary): SoonLine[] => {
      const { ready: now, expected, unmet } = summary.plan.readiness
      return now || expected === null || expected.likely > addDays(today, SOON_DAYS)
        ? []
        : [{ summary, expected, missing: unmet.length }]
    })
    .sort((a, b) => (a.expected.likely < b.expected.likely ? -1 : 1))
  return { ready, soon }
}

/** Colonies that moved out about a season ago, and nobody has told or been asked how they fare. */
export const toAsk = (
  gone: readonly ColonySummary[],
  records: ReadonlyMap<ColonyId, MoveRecord>,
  today: Day,
): ColonySummary[] =>
  gone.filter((s) => {
    const { followUps = [], askedOn } = records.get(s.id) ?? {}
    return (
      s.outcome === 'moved-out' &&
      s.closedOn !== null &&
      asksForFollowUp({ movedOutOn: s.closedOn, followUps }, askedOn !== undefined, today)
    )
  })
