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
import { type FieldProblem, fieldsIn, one, type Typed } from '../../forms/index.ts'
import {
  type Check,
  EMPTY_SHEET,
  GRAVE,
  HAZARDS,
  type Sheet,
  WHY_GONE,
  withoutGo,
} from '../../records/index.ts'
import { timeIn } from '../../time-of-day.ts'
import { CallPage } from './call-page.tsx'
import { unmetWords } from './decide.ts'
import { decide } from './decide-form.ts'
import { WITHOUT_GO_FIELDS } from './fields.ts'
import { asksPrice, sheetTyped, withPrice, withTemper } from './form.ts'
import { goneField, goneFrom, stays, type Whys, withNoted } from './grave.ts'
import { RemovalsPage } from './list-page.tsx'
import { ASKED, placeOf, samePlace, stamped } from './place.ts'
import { momentNow, type Saved, stampOf } from './sheet-handlers.ts'
import { openPart, showSheet } from './show.tsx'
import { justSigned } from './sign-route.tsx'
import { isOver, isShort, PARTS, type Part } from './stage.ts'
import {
  clashOf,
  reckoningOf,
  removalPath,
  rowOf,
  sheetIn,
  startOf,
  stoodOn,
  typesOf,
  wentAhead,
} from './view.ts'
import { hasBegun } from './without-go.ts'
import { GRAVE_WORDS } from './words.ts'

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
    const first = withNoted(EMPTY_SHEET, stamped(sheet, EMPTY_SHEET, ['bystanders']), {}, momentNow(c, deps))
    const result = store.removals.save(made, 0, first, stampOf(c, deps))
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
  const shown = deps.store.removals.version(saved.id, Number(one(typed, 'version')))?.sheet ?? last.sheet
  const read = partTyped(c, part, last.sheet, typed)
  const sheet = stamped(read.sheet, shown, ASKED[part] ?? [])
  if (part === 'check') sheet.check = tickedNow(c, sheet, shown, one(typed, 'shownOn'))
  const whys = whysTyped(typed)
  const problems = [...read.problems, ...ofPhotos, ...goneProblems(last.sheet, sheet, whys)]
  if (problems.length > 0) return showSheet(c, deps, saved, { part, typed, problems })
  const clash = clashOf(c, deps, part, saved, Number(one(typed, 'version')), sheet)
  if (clash !== null) return showSheet(c, deps, saved, { part, typed, clash })

  const barred = opens ? barredFrom(c, deps, sheet) : null
  // Not opened, but how hot it is stays: a second person signs for exactly that.
  const { openedAt, ...work } = sheet.work
  const noted = withNoted(last.sheet, barred === null ? sheet : { ...sheet, work }, whys, momentNow(c, deps))
  const begun =
    opens && barred === null ? underGo(c, deps, noted) : withReason(c, deps, last.sheet, noted, typed)
  const kept = begun === null ? null : fallen(c, deps, last.sheet, begun)
  if (kept === null) {
    const problem = { field: 'withoutGo.why', message: 'is not said: no “go” stood when this was begun' }
    return showSheet(c, deps, saved, { part, typed, problems: [problem] })
  }
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

/** The sheet with a part as it was typed, and with what is asked beside it: the price with the site, temper with a swarm. */
function partTyped(c: AppContext, part: Part, last: Sheet, typed: Typed): ReturnType<typeof sheetTyped> {
  const { units } = c.var.frame
  const read = sheetTyped(part, typed, units, last)
  if (part === 'check' && isShort(last)) return both(read, withTemper(read.sheet, typed, units))
  return asksPrice(part, last) ? both(read, withPrice(read.sheet, typed, units)) : read
}

const both = (read: ReturnType<typeof sheetTyped>, more: typeof read): typeof read => ({
  sheet: more.sheet,
  problems: [...read.problems, ...more.problems],
})

/** What was ticked, and the day and place it is of: a form that lay open over night, or for another house, says nothing. */
function tickedNow(c: AppContext, { check, ...s }: Sheet, shown: Sheet, shownOn: string): Check {
  const { today } = c.var.frame
  const here = placeOf({ ...s, check })
  const stale = (shownOn !== '' && shownOn !== today) || !samePlace(placeOf(shown), here)
  const on = check.on ?? s.job.plannedOn ?? today
  return { ...check, on, ...(stale ? { done: [] } : {}), doneOn: today, doneAt: here }
}

/** Why each thing is off the sheet, as far as it was tapped. */
const whysTyped = (typed: Typed): Whys =>
  Object.fromEntries(
    GRAVE.flatMap((what) => {
      const why = WHY_GONE.find((w) => w === one(typed, goneField(what)))
      return why === undefined ? [] : [[what, why]]
    }),
  )

const whoAndWhen = (c: AppContext, deps: PageDeps) => {
  const { writtenAt: _, ...moment } = momentNow(c, deps)
  return moment
}

const underGo = (c: AppContext, deps: PageDeps, s: Sheet): Sheet => ({
  ...s,
  work: { ...s.work, underGo: whoAndWhen(c, deps) },
})

/** A “go” that a change takes the ground from does not come back by itself: it is decided anew. */
function fallen(c: AppContext, deps: PageDeps, before: Sheet, after: Sheet): Sheet {
  const { decision } = after
  if (
    decision === undefined ||
    !stoodOn(c, deps, before, decision.on) ||
    stoodOn(c, deps, after, decision.on)
  )
    return after
  return { ...after, decision: { ...decision, fell: whoAndWhen(c, deps) } }
}

/** The sheet with a reason where work was begun that had no “go”; null where nobody has said one. */
function withReason(c: AppContext, deps: PageDeps, before: Sheet, after: Sheet, typed: Typed): Sheet | null {
  const { today } = c.var.frame
  // Boxed now, of a place that was opened on another day: what held it then holds it today.
  const goesOn =
    one(typed, 'now').startsWith('boxedAt') && after.work.on !== undefined && after.work.on < today
  if (
    goesOn
      ? startOf(c, deps, after).goes || after.work.withoutGo !== undefined
      : !hasBegun(after) || hasBegun(before)
  )
    return after
  const on = [after.work.on ?? today].filter((day) => day <= today)[0] ?? today
  if (!goesOn && wentAhead(c, deps, after, on)) return underGo(c, deps, after)
  const { raw } = fieldsIn(WITHOUT_GO_FIELDS, typed, c.var.frame.units, 'withoutGo.')
  const said = withoutGo.safeParse({
    ...raw,
    ...whoAndWhen(c, deps),
    unmet: unmetWords(reckoningOf(c, deps, after)),
  })
  return said.success ? { ...after, work: { ...after.work, withoutGo: said.data } } : null
}

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
function barredFrom(c: AppContext, deps: PageDeps, sheet: Sheet): string | null {
  const { goes, start } = startOf(c, deps, sheet)
  if (!goes) return 'waits for “go”: decided today, with nothing on the list that holds it'
  return start.state === 'met' || start.state === 'signed' ? null : `waits. ${start.why}`
}

/** What can kill is not taken off by a tap: a hazard that is here only once its trade has cleared it, anything else with a reason. */
function goneProblems(before: Sheet, after: Sheet, whys: Whys): FieldProblem[] {
  const held = stays(before, after)
  return goneFrom(before, after).flatMap((what) => {
    if (held.some((h) => h === what))
      return [
        {
          field: (HAZARDS as readonly string[]).includes(what) ? 'hazards' : 'behind',
          message: `cannot lose “${GRAVE_WORDS[what]}” by a tap: write down in the list who of the trade has cleared it, then take it off`,
        },
      ]
    return whys[what] === undefined
      ? [{ field: goneField(what), message: 'was on the sheet and can kill: say why it is off' }]
      : []
  })
}

const nextAfter = (path: string, part: Part, then: string): string => {
  if ((part === 'agreement' || part === 'site') && then === 'sign') return `${path}/sign`
  if (part === 'work' && then === 'intake') return `${path}/intake`
  return `${path}?saved=1#now`
}
