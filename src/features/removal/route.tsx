import { Hono } from 'hono'
import { v7, validate } from 'uuid'
import {
  type AppContext,
  type Env,
  type PageDeps,
  page,
  typedIn,
  unknownPage,
  withPhotos,
} from '../../app/index.ts'
import { daysBetween } from '../../days.ts'
import { type FieldProblem, one, type Typed } from '../../forms/index.ts'
import type { Check } from '../../records/index.ts'
import { timeIn } from '../../time-of-day.ts'
import { CallPage } from './call-page.tsx'
import { decide } from './decide-form.ts'
import { asksPrice, sheetTyped, withPrice } from './form.ts'
import { vanished } from './hazards.ts'
import { RemovalsPage } from './list-page.tsx'
import { type Saved, stampOf } from './sheet-handlers.ts'
import { openPart, showSheet } from './show.tsx'
import { justSigned } from './sign-route.tsx'
import { isOver, PARTS, type Part } from './stage.ts'
import { clashOf, removalPath, rowOf, sheetIn, startOf, typesOf } from './view.ts'
import { HAZARD_WORDS } from './words.ts'

/** Removal sheets: the list, the call, and a sheet that grows part by part. Signing and other acts have files of their own. */
export function removals(deps: PageDeps): Hono<Env> {
  const { store } = deps
  const app = new Hono<Env>()

  app.get('/removals', (c) => {
    const rows = store.removals.list().map((v) => rowOf(c, deps, v.id, v.sheet, v.colonies))
    const key = (r: (typeof rows)[number]): string => `${r.plannedOn ?? '9'} ${r.plannedAt ?? ''}`
    const open = rows.filter((r) => !isOver(r.stage)).sort((a, b) => key(a).localeCompare(key(b)))
    const toClose = rows.filter((r) => r.stage === 'boxed' && isLately(r.plannedOn, c.var.frame.today))
    const over = rows.filter((r) => isOver(r.stage) && !toClose.includes(r))
    return page(
      c,
      <RemovalsPage
        frame={c.var.frame}
        open={open}
        toClose={toClose}
        over={over}
        erased={c.req.query('erased') ?? null}
      />,
    )
  })

  const call = (c: AppContext, typed: Typed, problems: FieldProblem[] = []) =>
    page(
      c,
      <CallPage frame={c.var.frame} form={{ typed, problems }} types={typesOf(deps)} />,
      problems.length > 0 ? 422 : 200,
    )

  app.get('/removals/new', (c) => {
    const { today } = c.var.frame
    return call(c, { id: [v7()], version: ['0'], calledOn: [today], plannedOn: [today] })
  })

  app.post('/removals/new', async (c) => {
    const { typed, problems: ofPhotos } = await withPhotos(c, deps, await typedIn(c))
    const id = one(typed, 'id')
    const { sheet, problems } = sheetTyped('job', typed, c.var.frame.units)
    problems.push(...ofPhotos)
    if (problems.length === 0 && !['name', 'phone', 'address'].some((f) => one(typed, f) !== ''))
      problems.push({ field: 'name', message: 'is missing: type a name, a telephone number or an address' })
    if (problems.length > 0) return call(c, typed, problems)
    const made = validate(id) ? id : v7()
    const result = store.removals.save(made, 0, sheet, stampOf(c, deps))
    if (!result.ok && 'problems' in result) return call(c, typed, result.problems)
    return c.redirect(`${removalPath(made)}?saved=1#now`, 303)
  })

  // An id, so that pages beside it (the text of the agreement) are not taken for one.
  app.get('/removals/:id{[0-9a-f-]{36}}', async (c) => {
    const saved = sheetIn(c, deps)
    if (saved === null) return unknownPage(c)
    const asked = Number(c.req.query('version'))
    const older =
      Number.isInteger(asked) && asked > 0 && asked < saved.last.version
        ? store.removals.version(saved.id, asked)
        : null
    const signed = older === null ? await justSigned(c, deps, saved) : null
    return showSheet(c, deps, saved, { older, part: openPart(c, deps, saved), signed })
  })

  for (const part of PARTS) {
    app.get(`/removals/:id/${part}`, (c) => {
      const saved = sheetIn(c, deps)
      return saved === null ? unknownPage(c) : showSheet(c, deps, saved, { part })
    })

    app.post(`/removals/:id/${part}`, async (c) => {
      const came = await withPhotos(c, deps, await typedIn(c))
      const saved = sheetIn(c, deps)
      return saved === null ? unknownPage(c) : savePart(c, deps, part, saved, came.typed, came.problems)
    })
  }
  return app
}

/** Days after which nobody goes back to close up unasked: jobs from before this was asked are not dug up (judgement). */
const CLOSING_DAYS = 60
const isLately = (day: string | null, today: string): boolean =>
  day !== null && daysBetween(day, today) <= CLOSING_DAYS

/** Times a button can set to now. */
const NOW = ['arrivedAt', 'openedAt', 'boxedAt', 'leftAt']

/** What was typed, with the time of the button that was tapped; opening says that water and shade are there. */
function withNow(c: AppContext, deps: PageDeps, typed: Typed): { typed: Typed; opens: boolean } {
  // 'boxedAt' or 'boxedAt intake': the time, and where it leads.
  const [now = '', next = ''] = one(typed, 'now').split(' ')
  if (!NOW.includes(now)) return { typed, opens: false }
  const time = [timeIn(c.var.frame.zone, deps.clock())]
  const { today } = c.var.frame
  const opens = now === 'openedAt'
  // What is opened is opened today, and not on a temperature from a form that lay open over night.
  const shownOn = one(typed, 'shownOn')
  const stale = opens && shownOn !== '' && shownOn !== today
  const on = opens || one(typed, 'on') === '' ? { on: [today] } : {}
  const then = next === '' ? {} : { next: [next] }
  const heat = stale ? { outdoorC: [] } : {}
  const water = opens ? { water: ['yes'] } : {}
  return { typed: { ...typed, ...on, ...then, ...heat, ...water, [now]: time }, opens }
}

/** Saves one part over the last version. Only if the same part has been changed meanwhile is there a clash. */
function savePart(
  c: AppContext,
  deps: PageDeps,
  part: Part,
  saved: Saved,
  came: Typed,
  ofPhotos: FieldProblem[],
): Response | Promise<Response> {
  const { typed, opens } = withNow(c, deps, came)
  const { last } = saved
  const read = sheetTyped(part, typed, c.var.frame.units, last.sheet)
  const { sheet, problems } = asksPrice(part, last.sheet) ? priceToo(c, read, typed) : read
  problems.push(...ofPhotos, ...goneProblems(vanished(last.sheet, sheet)))
  if (problems.length > 0) return showSheet(c, deps, saved, { part, typed, problems })
  const clash = clashOf(c, deps, part, saved, Number(one(typed, 'version')), sheet)
  if (clash !== null) return showSheet(c, deps, saved, { part, typed, clash })
  if (part === 'check' && sheet.check.on === undefined)
    sheet.check = { ...sheet.check, on: sheet.job.plannedOn ?? c.var.frame.today }
  if (part === 'check') sheet.check = ticked(sheet.check, one(typed, 'shownOn'), c.var.frame.today)

  const barred = opens ? barredFrom(c, deps, sheet) : null
  // Not opened, but how hot it is stays: a second person signs for exactly that.
  const { openedAt, ...work } = sheet.work
  const kept = barred === null ? sheet : { ...sheet, work }
  const result = deps.store.removals.save(saved.id, last.version, kept, stampOf(c, deps))
  if (!result.ok) {
    const message = 'was saved by somebody else just now: save again'
    return showSheet(c, deps, saved, {
      part,
      typed,
      problems: 'problems' in result ? result.problems : [{ field: '', message }],
    })
  }
  if (barred !== null) return again(c, deps, saved, part, typed, [{ field: 'openedAt', message: barred }])
  if (part === 'check' && one(typed, 'is') !== '') {
    const fresh = deps.store.removals.get(saved.id)
    const wrong = fresh === null ? [] : decide(c, deps, { ...saved, ...fresh }, typed)
    if (wrong.length > 0) return again(c, deps, saved, part, typed, wrong)
  }
  return c.redirect(nextAfter(saved.path, part, one(typed, 'next')), 303)
}

/** The price was asked with the site. */
function priceToo(
  c: AppContext,
  read: ReturnType<typeof sheetTyped>,
  typed: Typed,
): ReturnType<typeof sheetTyped> {
  const { sheet, problems } = withPrice(read.sheet, typed, c.var.frame.units)
  return { sheet, problems: [...read.problems, ...problems] }
}

/** What was ticked, and the day it is so: a form that lay open over night says nothing of today. */
const ticked = (check: Check, shownOn: string, today: string): Check => ({
  ...check,
  ...(shownOn === '' || shownOn === today ? {} : { done: [] }),
  doneOn: today,
})

/** The same form again, over what has just been saved. */
function again(
  c: AppContext,
  deps: PageDeps,
  saved: Saved,
  part: Part,
  typed: Typed,
  problems: FieldProblem[],
): Response | Promise<Response> {
  const fresh = deps.store.removals.get(saved.id) ?? saved
  const version = [String(fresh.last.version)]
  return showSheet(c, deps, { ...saved, ...fresh }, { part, typed: { ...typed, version }, problems })
}

/** Why the surface is not opened now; null where it may be. */
function barredFrom(c: AppContext, deps: PageDeps, sheet: Parameters<typeof startOf>[2]): string | null {
  const { goes, start } = startOf(c, deps, sheet)
  if (!goes) return 'waits for “go”: decided today, with nothing on the list that holds it'
  return start.state === 'met' || start.state === 'signed' ? null : `waits. ${start.why}`
}

const goneProblems = (gone: ReturnType<typeof vanished>): FieldProblem[] =>
  gone.map((hazard) => ({
    field:
      hazard === 'asbestos' || hazard === 'lead-paint' || hazard === 'weak-structure' ? 'hazards' : 'behind',
    message: `cannot lose “${HAZARD_WORDS[hazard]}” by a tap: write down in the list who of the trade has cleared it, then take it off`,
  }))

const nextAfter = (path: string, part: Part, then: string): string => {
  if ((part === 'agreement' || part === 'site') && then === 'sign') return `${path}/sign`
  if (part === 'work' && then === 'intake') return `${path}/intake`
  return `${path}?saved=1#now`
}
