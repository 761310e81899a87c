/** What pages of removal sheets are made of: a sheet of the store with its name, stage, reckoning and next step. */

import { type AppContext, colonyPath, type PageDeps, signedIn } from '../../app/index.ts'
import { dayIn, daysBetween } from '../../days.ts'
import type { ColonyId } from '../../ids.ts'
import {
  type Blank,
  isNewVisit,
  isUnderWay,
  openBlanks,
  type Sheet,
  type Surroundings,
  sheetName,
  termsOf,
} from '../../records/index.ts'
import type { SavedSheet } from '../../store/index.ts'
import { timeIn } from '../../time-of-day.ts'
import { dayWords, instantWords, labelIn, removalTypes, temperature } from '../../words/index.ts'
import { ownTypes } from '../entries/index.ts'
import { heardOf, unheard } from './as-known.ts'
import { beforeCut, type Reckoning, stops } from './before-cut.ts'
import { CALLED_BACK } from './choices.ts'
import { goStands } from './decide.ts'
import { hotByNow } from './forecast.ts'
import { typedPart } from './form.ts'
import { atStart } from './heat.ts'
import type { Facts } from './item.ts'
import type { RemovalRow } from './list-page.tsx'
import { type OtherSheet, otherSheetsOf } from './other-sheets.ts'
import type { Clash } from './page-foot.tsx'
import { carefulFacts, differing } from './sheet-facts.ts'
import { isOnGo, isOver, nextPart, type Part, type Stage, stageOf } from './stage.ts'
import { ranOut } from './ticked-when.ts'
import { beganWithoutGo, withoutGoWords } from './without-go.ts'
import { noGo, showsIn, stageWords } from './words.ts'

export const removalPath = (id: string): string => `/removals/${id}`

/** The saved sheet of a path; null when there is none. */
export const sheetIn = (
  c: AppContext,
  deps: PageDeps,
): (SavedSheet & { id: string; path: string }) | null => {
  const id = c.req.param('id') ?? ''
  const saved = deps.store.removals.get(id)
  return saved === null ? null : { ...saved, id, path: removalPath(id) }
}

/** Which sheet a page is about; undefined where it is none of a sheet. */
const idIn = (c: AppContext): string | undefined => c.req.param('id')

/** Other sheets of the same house, as far as they are known here. */
export function othersOf(c: AppContext, deps: PageDeps, sheet: Sheet, id: string | undefined): OtherSheet[] {
  if (id === undefined) return []
  const { removals } = deps.store
  const all = known.get(c) ?? [...removals.list(), ...(removals.unsent?.() ?? [])]
  known.set(c, all)
  const { units, today } = c.var.frame
  const at = { units, today, currency: deps.store.settings.get('currency') }
  const withFacts = all.map((v) => ({
    ...v,
    facts: (): string[] =>
      v.id !== id
        ? boxNotes(deps, v.colonies)
        : 'by' in v
          ? carefulFacts(sheet, v.sheet, at).map((fact) => fact.join(': '))
          : [],
  }))
  return otherSheetsOf(id, sheet, withFacts, today)
}

/** What was written on the forms of its boxes: at the wall nobody tells one form from the other. */
export const boxNotes = ({ store }: PageDeps, colonies: readonly ColonyId[]): string[] =>
  colonies.flatMap((id) => {
    // A colony is called by its first intake.
    const entry = store.entry(String(id))?.entry
    return entry?.kind === 'intake' && entry.note !== undefined ? [entry.note] : []
  })

/** Read once for a page: it holds every sheet against all of them, and while it is made only its own is written. */
const known = new WeakMap<
  AppContext,
  (Pick<SavedSheet, 'colonies'> & { id: string; by?: string; sheet: Sheet })[]
>()

/** Names whose accounts cannot sign in any more, or not yet. */
const closedIn = (deps: PageDeps): string[] => (deps.crew?.() ?? []).filter((a) => !a.open).map((a) => a.name)

/** Whoever signed with an account that is closed since cannot be asked any more: it stays on the sheet, and stands for nothing. */
const withoutClosed = (s: Sheet, closed: readonly string[]): Sheet =>
  s.check.seconds === undefined
    ? s
    : {
        ...s,
        check: {
          ...s.check,
          seconds: s.check.seconds.filter((x) => x.account !== true || !closed.includes(x.by)),
        },
      }

/** `id`: of the sheet, where the address does not say it. */
export const reckoningOf = (c: AppContext, deps: PageDeps, sheet: Sheet, id = idIn(c)): Reckoning => {
  const { units, today } = c.var.frame
  const now = timeIn(c.var.frame.zone, deps.clock())
  const signed = withoutClosed(sheet, closedIn(deps))
  return beforeCut(signed, deps.store.protocol(), showsIn(units), today, othersOf(c, deps, sheet, id), now)
}

/** Where it is looked at once more, and decided. */
const toDecide = (id: string): RemovalRow['next'] => ({ part: 'check', href: `${removalPath(id)}/check#now` })

/** Where the next step of a job is. */
function nextStep(id: string, sheet: Sheet, colonies: readonly string[]): RemovalRow['next'] {
  const part = nextPart(stageOf(sheet, colonies.length), sheet)
  if (part === null) return null
  const path = removalPath(id)
  const href = part === 'intake' ? `${path}/intake` : `${path}/${part}#now`
  return { part, href }
}

export const colonyLinks = (deps: PageDeps, ids: readonly string[]): { tag: string; path: string }[] =>
  ids.flatMap((id) => {
    const colony = deps.store.colony(id)
    return colony === null ? [] : [{ tag: colony.summary.tag, path: colonyPath(colony.summary) }]
  })

/** Days in which an account is new: whoever signed with it is named to the operator (judgement). */
const NEW_DAYS = 7

/** 'Bram (account made 2026-06-10)': who signed as a second person with an account that was new; null for nobody. */
export function newSigners(c: AppContext, deps: PageDeps, { check }: Sheet): string | null {
  const said = (deps.crew?.() ?? []).flatMap(({ name, made }) => {
    if (made === undefined) return []
    const day = dayIn(c.var.frame.zone, new Date(made.at))
    const signed = check.seconds?.some(
      (x) => x.account === true && x.by === name && daysBetween(day, x.on) < NEW_DAYS,
    )
    return signed === true ? [`${name} (account made ${day})`] : []
  })
  return said.length === 0 ? null : said.join(', ')
}

/** A line of the list. */
export function rowOf(
  c: AppContext,
  deps: PageDeps,
  id: string,
  sheet: Sheet,
  colonies: readonly string[],
): RemovalRow {
  const stage: Stage = stageOf(sheet, colonies.length)
  const { today } = c.var.frame
  const reckoned = isOver(stage) || sheet.work.boxedAt !== undefined ? null : reckoningOf(c, deps, sheet, id)
  const { goes, late } = isOnGo(stage, sheet) ? startOf(c, deps, sheet, id) : { goes: true, late: null }
  const opened = isUnderWay(sheet, today)
  const next = goes || opened ? nextStep(id, sheet, colonies) : toDecide(id)
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
    fell: goes && late === null ? null : noGo(sheet, late, today),
    says: stageWords(stage, sheet),
    reckoning,
    // Of what is long over only what somebody has said.
    begun:
      withoutGoWords(sheet) ??
      (beganWithoutGo(sheet, colonies.length) && (!isOver(stage) || stage === 'boxed')
        ? 'Nobody has said why.'
        : null),
    newSigners: newSigners(c, deps, sheet),
    // Nobody is led on over what stops it.
    next: opened && reckoned?.unmet.some(stops) ? null : next,
    colonies: colonyLinks(deps, colonies),
  }
}

/** What the agreement of a job is filled in with beside its sheet. */
function around(c: AppContext, deps: PageDeps, sheet: Sheet): Surroundings {
  const { settings } = deps.store
  const { frame } = c.var
  const { type } = sheet.site
  return {
    ...(type === undefined ? {} : { bees: labelIn(removalTypes(), type).toLowerCase() }),
    // A yard that has no name yet is whoever stands there.
    yard: settings.get('yardName') || signedIn(c),
    currency: settings.get('currency'),
    heat: temperature(deps.store.protocol().heatLimitC, frame.units),
    dayWords: (day) => dayWords(day, frame.today),
  }
}

/** The agreement of a job as it would be signed now. */
export const termsNow = (c: AppContext, deps: PageDeps, sheet: Sheet): string =>
  termsOf(deps.store.settings.get('agreementTerms'), sheet, around(c, deps, sheet))

/** What it still lacks: the blanks of the text, and price, address and day whatever the text says. */
export function blanksNow(c: AppContext, deps: PageDeps, sheet: Sheet): Blank[] {
  const all = `${deps.store.settings.get('agreementTerms')} {price} {address} {day}`
  return openBlanks(all, sheet, around(c, deps, sheet))
}

export const typesOf = (deps: PageDeps): string[] => ownTypes(deps.store)

/**
 * Whether a “go” stands now, or something is under way on one; why nothing is begun on it at this hour: it has run out, or it is hotter
 * than anybody may cut in; what is asked when work starts; and what was forecast of this hour, where it is open and
 * that is too hot.
 */
export function startOf(
  c: AppContext,
  deps: PageDeps,
  sheet: Sheet,
  id = idIn(c),
): { goes: boolean; late: string | null; start: Facts; warms: string | null } {
  const { today, units, zone } = c.var.frame
  const limit = deps.store.protocol().heatLimitC
  const closed = closedIn(deps)
  const hour = timeIn(zone, deps.clock())
  const now = isUnderWay(sheet, today) ? undefined : hour
  const goes = goStands(sheet, reckoningOf(c, deps, sheet, id), today, closed, now)
  const start = atStart(withoutClosed(sheet, closed), limit, showsIn(units), today)
  const hot = start.state === 'unmet' ? start.why : null
  const ran = goes ? hot : stoodOn(c, deps, sheet, today, id) ? ranOut(sheet, now ?? '') : null
  const open = now === undefined && sheet.work.openedAt !== undefined && sheet.work.boxedAt === undefined
  const warms = open ? hotByNow(sheet, limit, showsIn(units), { today, now: hour }) : null
  return { goes, late: now === undefined ? null : ran, start, warms }
}

/**
 * Whether a “go” of that day is one, for what was done until somebody left; with `at`, whether the phone had heard enough at that hour.
 */
export function stoodOn(
  c: AppContext,
  deps: PageDeps,
  sheet: Sheet,
  day: string,
  id = idIn(c),
  at?: string,
): boolean {
  const { units, today } = c.var.frame
  // What another sheet says today was not known on another day.
  const others = day === today ? othersOf(c, deps, sheet, id) : []
  // An account that is closed today was open then.
  const closed = day === today ? closedIn(deps) : []
  const { leftAt: _, ...work } = sheet.work
  const signed = withoutClosed({ ...sheet, work }, closed)
  const reckoned = beforeCut(signed, deps.store.protocol(), showsIn(units), day, others)
  const deaf = at !== undefined && day === today && unheard(heardOf(c, deps), signed, at) !== null
  return !deaf && goStands(signed, reckoned, day, closed)
}

/** Whether what begins on that day was begun on a “go” of the last three hours, and what is asked when work starts was met. */
export function wentAhead(c: AppContext, deps: PageDeps, before: Sheet, after: Sheet, day: string): boolean {
  const { state } = atStart(after, deps.store.protocol().heatLimitC, showsIn(c.var.frame.units), day)
  const { on, at } = after.work.underGo ?? {
    on: c.var.frame.today,
    at: timeIn(c.var.frame.zone, deps.clock()),
  }
  const hour = begunAt(before, after) ?? (day === on ? at : undefined)
  if (hour === undefined || ranOut(after, hour, before) !== null) return false
  return stoodOn(c, deps, after, day, idIn(c), hour) && (state === 'met' || state === 'signed')
}

/** The hour of what begins, as it was said; undefined where it was not. */
const begunAt = (was: Sheet, { work: after, ...s }: Sheet): string | undefined => {
  const before = isNewVisit(was, { ...s, work: after }) ? {} : was.work
  return [
    [before.openedAt, after.openedAt],
    [before.boxedAt, after.boxedAt],
  ].find(([was, is]) => was !== is)?.[1]
}

export const callBackLines = (s: Sheet, today: string): string[] =>
  (s.callBacks ?? []).map(
    (b) =>
      `${dayWords(b.on, today)}: ${labelIn(CALLED_BACK, b.what)}${b.opened === true ? ', and it was opened' : ''}${b.note === undefined ? '' : `. ${b.note}`} (${b.by})`,
  )

/** What somebody else changed of the same part since it was shown; null where nobody did, or said the same (a button tapped twice). */
export function clashOf(
  c: AppContext,
  deps: PageDeps,
  part: Part,
  saved: SavedSheet & { id: string },
  shown: number,
  mine: Sheet,
): Clash | null {
  const { last } = saved
  if (shown === last.version || !Number.isInteger(shown)) return null
  const before = deps.store.removals.version(saved.id, shown)
  const { frame } = c.var
  if (before === null) return null
  const as = (s: Sheet): string => JSON.stringify(typedPart(part, s, frame.units))
  if (as(before.sheet) === as(last.sheet) || as(mine) === as(last.sheet)) return null
  const at = { units: frame.units, today: frame.today, currency: deps.store.settings.get('currency') }
  return {
    by: last.savedBy,
    when: instantWords(last.savedAt, frame.zone, frame.today),
    theirs: differing(part, before.sheet, last.sheet, at).map(([label, value]) => ({ label, value })),
  }
}
