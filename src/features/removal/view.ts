/** What pages of removal sheets are made of: a sheet of the store with its name, stage, reckoning and next step. */

import { type AppContext, colonyPath, type Deps } from '../../app/index.ts'
import { type Sheet, sheetName, termsOf } from '../../records/index.ts'
import type { SavedSheet } from '../../store/index.ts'
import { dayWords, temperature } from '../../words/index.ts'
import { ownTypes } from '../entries/index.ts'
import { beforeCut, type Reckoning } from './before-cut.ts'
import type { RemovalRow } from './list-page.tsx'
import { isOver, nextPart, type Stage, stageOf } from './stage.ts'
import { showsIn } from './words.ts'

export const removalPath = (id: string): string => `/removals/${id}`

/** The saved sheet of a path; null when there is none. */
export const sheetIn = (c: AppContext, deps: Deps): (SavedSheet & { id: string; path: string }) | null => {
  const id = c.req.param('id') ?? ''
  const saved = deps.store.removals.get(id)
  return saved === null ? null : { ...saved, id, path: removalPath(id) }
}

export const reckoningOf = (c: AppContext, deps: Deps, sheet: Sheet): Reckoning =>
  beforeCut(sheet, deps.store.protocol(), showsIn(c.var.frame.units), c.var.frame.today)

/** Where the next step of a job is. */
export function nextStep(id: string, sheet: Sheet, colonies: readonly string[]): RemovalRow['next'] {
  const part = nextPart(stageOf(sheet, colonies.length))
  if (part === null) return null
  const path = removalPath(id)
  const href = `${path}/${part}`
  return { part, href }
}

export const colonyLinks = (deps: Deps, ids: readonly string[]): { tag: string; path: string }[] =>
  ids.flatMap((id) => {
    const colony = deps.store.colony(id)
    return colony === null ? [] : [{ tag: colony.summary.tag, path: colonyPath(colony.summary) }]
  })

/** A line of the list. */
export function rowOf(
  c: AppContext,
  deps: Deps,
  id: string,
  sheet: Sheet,
  colonies: readonly string[],
): RemovalRow {
  const stage: Stage = stageOf(sheet, colonies.length)
  const reckoned = isOver(stage) || stage === 'worked' ? null : reckoningOf(c, deps, sheet)
  // Early on most of the list is simply not said yet.
  const early = stage === 'called' || stage === 'looked-at'
  const reckoning = early && reckoned?.says !== 'refuse' ? null : reckoned
  return {
    path: removalPath(id),
    name: sheetName(sheet),
    address: sheet.job.address ?? null,
    plannedOn: sheet.job.plannedOn ?? null,
    plannedAt: sheet.job.plannedAt ?? null,
    stage,
    reckoning,
    next: nextStep(id, sheet, colonies),
    colonies: colonyLinks(deps, colonies),
  }
}

/** The agreement of a job as it would be signed now. */
export function termsNow(c: AppContext, deps: Deps, sheet: Sheet): string {
  const { settings } = deps.store
  const { frame } = c.var
  return termsOf(settings.get('agreementTerms'), sheet, {
    yard: settings.get('yardName'),
    currency: settings.get('currency'),
    heat: temperature(deps.store.protocol().heatLimitC, frame.units),
    dayWords: (day) => dayWords(day, frame.today),
  })
}

export const typesOf = (deps: Deps): string[] => ownTypes(deps.store)
