/** Handlers of one removal sheet: the form is read first, then the sheet, so that nobody can save in between. */

import {
  type AppContext,
  type PageDeps,
  signedIn,
  typedIn,
  unknownPage,
  withPhotos,
} from '../../app/index.ts'
import type { FieldProblem, Typed } from '../../forms/index.ts'
import { EMPTY_SHEET, photosOfSheet, type Sheet, sheetName } from '../../records/index.ts'
import type { SavedSheet } from '../../store/index.ts'
import { timeIn } from '../../time-of-day.ts'
import { type Known, STAYS } from './second.ts'
import { sheetIn } from './view.ts'

export type Saved = SavedSheet & { id: string; path: string }
type Handler = (
  c: AppContext,
  saved: Saved,
  typed: Typed,
  ofPhotos: FieldProblem[],
) => Response | Promise<Response>

export const onSheet =
  (deps: PageDeps) =>
  (handler: Handler) =>
  async (c: AppContext): Promise<Response> => {
    const came =
      c.req.method === 'POST' ? await withPhotos(c, deps, await typedIn(c)) : { typed: {}, problems: [] }
    const saved = sheetIn(c, deps)
    return saved === null ? unknownPage(c) : handler(c, saved, came.typed, came.problems)
  }

const HOUR_MS = 3_600_000
const DAY_MS = 24 * HOUR_MS

/** Who is who at a job: whoever writes and decided, everybody of the yard as far as it is known here, and who may sign. */
export function knownAt(c: AppContext, deps: PageDeps, s: Sheet, saved: SavedSheet | null): Known {
  const accounts = deps.crew?.() ?? []
  const daysOld = (at: string): number => (deps.clock().getTime() - Date.parse(at)) / DAY_MS
  const first = [signedIn(c), ...(s.decision === undefined ? [] : [s.decision.by])]
  return {
    first,
    yard: [
      ...first,
      ...accounts.map((a) => a.name),
      ...(saved?.versions.map((v) => v.savedBy) ?? []),
      ...(s.check.seconds?.map((x) => x.by) ?? []),
    ],
    accounts: [signedIn(c), ...accounts.map((a) => a.name)],
    open: accounts.filter((a) => a.open).map((a) => a.name),
    fresh: accounts
      .filter(({ made }) => made?.by != null && first.includes(made.by) && daysOld(made.at) < 1)
      .map((a) => a.name),
    elsewhere: new Map(
      deps.store.removals
        .list()
        .filter((v) => v.id !== c.req.param('id'))
        .flatMap(({ sheet }) => whoIsAt(sheet, c.var.frame.today).map((name) => [name, sheetName(sheet)])),
    ),
  }
}

/** Who leads there, who stays and watches, and who drew for something, until the bees are boxed. */
function whoIsAt(sheet: Sheet, today: string): string[] {
  const { decision } = sheet
  const drew = isDone(sheet)
    ? []
    : (sheet.check.seconds ?? []).filter((x) => x.on === today && x.account !== true)
  const stay = [...staysBy(sheet, today), ...drew.map((x) => x.by)]
  const goes = decision?.is === 'go' && decision.on === today && decision.fell === undefined
  return goes && !isDone(sheet) ? [...stay, decision.by] : stay
}

const isDone = ({ work, ended }: Sheet): boolean => work.boxedAt !== undefined || ended !== undefined

/** Who signed that they stay there and watch, until the bees are boxed. */
export const staysBy = (sheet: Sheet, today: string): string[] =>
  isDone(sheet)
    ? []
    : (sheet.check.seconds ?? []).filter((x) => x.on === today && STAYS.includes(x.item)).map((x) => x.by)

/** It was opened today on their “go”; the bees are not boxed, and nobody has written down that they left. */
const leads = ({ work: w, ...s }: Sheet, by: string, today: string): boolean =>
  s.decision?.by === by &&
  w.openedAt !== undefined &&
  w.on === today &&
  w.leftAt === undefined &&
  !isDone({ ...s, work: w })

/** In words, the job at which somebody stays and watches today, or has opened; undefined where at none but this. */
export const isElsewhere = (deps: PageDeps, id: string, by: string, today: string): string | undefined => {
  const at = deps.store.removals
    .list()
    .find(
      ({ sheet, ...v }) =>
        v.id !== id &&
        (staysBy(sheet, today).includes(by) || (v.colonies.length === 0 && leads(sheet, by, today))),
    )
  return at && `you are at ${sheetName(at.sheet)} until the bees there are boxed, or “Left” is written down`
}

/** A photo that stands on another sheet is no paper for this one. */
export const isOfAnotherJob = (deps: PageDeps, id: string, photo: string): boolean =>
  deps.store.removals.list().some((v) => v.id !== id && photosOfSheet(v.sheet).includes(photo))

/** This moment, as lines on a sheet bear it. */
export const momentNow = (c: AppContext, deps: PageDeps) => ({
  by: signedIn(c),
  on: c.var.frame.today,
  at: timeIn(c.var.frame.zone, deps.clock()),
  writtenAt: deps.clock().toISOString(),
})

/** The sheet as others may have read it: what somebody typed within the hour, and nobody saved over, they put right in peace (judgement). */
export function stoodFor(
  c: AppContext,
  deps: PageDeps,
  { id, versions }: Pick<Saved, 'id' | 'versions'>,
): Sheet {
  const { removals } = deps.store
  const hourAgo = new Date(deps.clock().getTime() - HOUR_MS).toISOString()
  // A phone’s own version lies over one of the server’s.
  const all = versions.flatMap((v) => [v, removals.version(id, Math.floor(v.version)) ?? v])
  const seen = all.find((v) => v.savedBy !== signedIn(c) || v.savedAt < hourAgo)
  return (seen && removals.version(id, seen.version)?.sheet) ?? EMPTY_SHEET
}

/** Who saves, and when. */
export const stampOf = (c: AppContext, deps: PageDeps) => ({
  savedAt: deps.clock().toISOString(),
  savedBy: signedIn(c),
})

/** Writes the sheet as it now is over its last version. Throws when it does not fit: what is written here was checked. */
export function keep(c: AppContext, deps: PageDeps, saved: Saved, sheet: Sheet): void {
  const result = deps.store.removals.save(saved.id, saved.last.version, sheet, stampOf(c, deps))
  if (!result.ok) throw new Error(`removal sheet ${saved.id}: ${JSON.stringify(result)}`)
}
