/** A place that was opened again after its job: that is a job of its own, and its sheet begins filled from the first one. */
import { v7 } from 'uuid'
import type { AppContext, PageDeps } from '../../app/index.ts'
import {
  type CallBack,
  EMPTY_SHEET,
  hasBegun,
  lastDayOf,
  type Sheet,
  sameHouse,
  type WithoutGo,
  withMark,
} from '../../records/index.ts'
import { unmetWords } from './decide.ts'
import { whoAndWhen } from './found-kept.ts'
import { withNoted } from './grave.ts'
import { placeOf, samePlace } from './place.ts'
import { momentNow, type Saved, stampOf } from './sheet-handlers.ts'
import { reckoningOf, removalPath } from './view.ts'

/** Who and where, and nothing that was looked at, asked or ticked: that is of the first day. */
const sameWall = ({ job, site }: Sheet, calledOn: string): Sheet => {
  const { name, phone, email, address, wayIn, caller, bees } = job
  const { type, where, surface } = site
  return {
    ...EMPTY_SHEET,
    job: said({ name, phone, email, address, wayIn, caller, bees, calledOn }),
    site: said({ type, where, surface }),
  }
}

/** Without what was not said. */
const said = <T extends object>(fields: T): { [K in keyof T]?: Exclude<T[K], undefined> } =>
  Object.fromEntries(Object.entries(fields).filter(([, v]) => v !== undefined)) as {
    [K in keyof T]?: Exclude<T[K], undefined>
  }

/** Begun on that day or since, or decided to be. Who only came and looked has opened nothing. */
const isOfThen = (s: Sheet, day: string): boolean =>
  s.ended === undefined &&
  [
    hasBegun(s) || s.work.withoutGo !== undefined ? lastDayOf(s) : undefined,
    s.decision?.is === 'go' ? s.decision.on : undefined,
  ].some((on) => on !== undefined && on >= day)

/** Where the opening is told that a call-back was about: the sheet it has, with its “go”, or a new one, marked as begun without. */
export function openedAgain(
  c: AppContext,
  deps: PageDeps,
  { id, last: { sheet } }: Saved,
  { on, note }: CallBack,
  why: WithoutGo['why'] | undefined,
): string {
  const there = deps.store.removals
    .list()
    .find(
      (v) =>
        v.id !== id &&
        sameHouse(v.sheet.job, sheet.job) &&
        samePlace(placeOf(v.sheet), placeOf(sheet), ['where']) &&
        isOfThen(v.sheet, on),
    )
  const of = there?.id ?? v7()
  if (there === undefined) {
    const made = withNoted(EMPTY_SHEET, sameWall(sheet, on), {}, momentNow(c, deps))
    const mark = {
      ...whoAndWhen(c, deps),
      ...(why === undefined ? {} : { why }),
      ...(note === undefined ? {} : { words: note.slice(0, 300) }),
      unmet: unmetWords(reckoningOf(c, deps, made, of)),
    }
    const result = deps.store.removals.save(of, 0, withMark(made, mark), stampOf(c, deps))
    if (!result.ok) throw new Error(`removal sheet ${of}: ${JSON.stringify(result)}`)
  }
  return `${removalPath(of)}/work?saved=1#now`
}
