import { Hono } from 'hono'
import { v7, validate } from 'uuid'
import {
  type AppContext,
  type Deps,
  type Env,
  page,
  signedIn,
  typedIn,
  unknownPage,
} from '../../app/index.ts'
import { type FieldProblem, one, type Typed } from '../../forms/index.ts'
import { EMPTY_SHEET, priceWords, type Sheet, sheetName } from '../../records/index.ts'
import type { SavedSheet } from '../../store/index.ts'
import { instantWords, temperature } from '../../words/index.ts'
import { RemovalCheckPage } from './check-page.tsx'
import { partTyped, typedPart } from './form.ts'
import { RemovalsPage } from './list-page.tsx'
import { RemovalPage } from './page.tsx'
import { type Clash, RemovalPartPage } from './part-page.tsx'
import { factsOf } from './sheet-facts.ts'
import { isOver, PARTS, type Part, stageOf } from './stage.ts'
import { colonyLinks, nextStep, reckoningOf, removalPath, rowOf, sheetIn, typesOf } from './view.ts'

/** Removal sheets: the list, one sheet, and its parts as forms. Signing and deciding have files of their own. */
export function removals(deps: Deps): Hono<Env> {
  const { store } = deps
  const app = new Hono<Env>()

  app.get('/removals', (c) => {
    const rows = store.removals.list().map((v) => rowOf(c, deps, v.id, v.sheet, v.colonies))
    const key = (r: (typeof rows)[number]): string => `${r.plannedOn ?? '9'} ${r.plannedAt ?? ''}`
    const open = rows.filter((r) => !isOver(r.stage)).sort((a, b) => key(a).localeCompare(key(b)))
    const over = rows.filter((r) => isOver(r.stage))
    return page(
      c,
      <RemovalsPage frame={c.var.frame} open={open} over={over} erased={c.req.query('erased') === '1'} />,
    )
  })

  app.get('/removals/new', (c) => {
    const typed = { id: [v7()], version: ['0'], calledOn: [c.var.frame.today] }
    return form(c, deps, { part: 'job', typed, problems: [], saved: null, clash: null })
  })

  app.post('/removals/new', async (c) => {
    const typed = await typedIn(c)
    const id = one(typed, 'id')
    const draft = partTyped('job', typed, c.var.frame.units)
    const problems = [...draft.problems]
    if (problems.length === 0 && !['name', 'phone', 'address'].some((f) => f in draft.raw))
      problems.push({ field: 'name', message: 'is missing: type a name, a telephone number or an address' })
    if (problems.length > 0) return form(c, deps, { part: 'job', typed, problems, saved: null, clash: null })
    const made = validate(id) ? id : v7()
    const result = store.removals.save(made, 0, { ...EMPTY_SHEET, job: draft.raw }, stampOf(c, deps))
    if (!result.ok && 'problems' in result)
      return form(c, deps, { part: 'job', typed, problems: result.problems, saved: null, clash: null })
    return c.redirect(`${removalPath(made)}?saved=1`, 303)
  })

  app.get('/removals/:id', (c) => {
    const saved = sheetIn(c, deps)
    if (saved === null) return unknownPage(c)
    const asked = Number(c.req.query('version'))
    const older =
      Number.isInteger(asked) && asked > 0 && asked < saved.last.version
        ? store.removals.version(saved.id, asked)
        : null
    return overview(c, deps, saved, older?.sheet ?? saved.last.sheet, older?.version ?? null)
  })

  for (const part of PARTS) {
    app.get(`/removals/:id/${part}`, (c) => {
      const saved = sheetIn(c, deps)
      if (saved === null) return unknownPage(c)
      const { sheet, version } = saved.last
      const typed = { ...typedPart(part, sheet[part], c.var.frame.units), ...firstFill(part, sheet) }
      return form(c, deps, {
        part,
        typed: { ...typed, id: [saved.id], version: [String(version)] },
        problems: [],
        saved,
        clash: null,
      })
    })

    app.post(`/removals/:id/${part}`, async (c) => {
      const typed = await typedIn(c)
      const saved = sheetIn(c, deps)
      return saved === null ? unknownPage(c) : savePart(c, deps, part, saved, typed)
    })
  }
  return app
}

const stampOf = (c: AppContext, deps: Deps) => ({ savedAt: deps.clock().toISOString(), savedBy: signedIn(c) })

/** What stands in a form that nobody has filled yet: the day planned. */
function firstFill(part: Part, sheet: Sheet): Typed {
  const { plannedOn, plannedAt } = sheet.job
  const typed: Typed = {}
  if (part === 'check' && sheet.check.on === undefined && plannedOn !== undefined) typed.on = [plannedOn]
  if (part === 'check' && sheet.check.from === undefined && plannedAt !== undefined) typed.from = [plannedAt]
  if (part === 'work' && sheet.work.on === undefined && plannedOn !== undefined) typed.on = [plannedOn]
  return typed
}

interface FormShown {
  part: Part
  typed: Typed
  problems: FieldProblem[]
  saved: (SavedSheet & { id: string; path: string }) | null
  clash: Clash | null
}

function form(
  c: AppContext,
  deps: Deps,
  { part, typed, problems, saved, clash }: FormShown,
): Response | Promise<Response> {
  const sheet = saved?.last.sheet ?? EMPTY_SHEET
  const props = {
    frame: c.var.frame,
    form: { typed, problems },
    part,
    sheet,
    path: saved?.path ?? null,
    name: sheetName(sheet),
    types: typesOf(deps),
    currency: deps.store.settings.get('currency'),
    clash,
  }
  const status = problems.length > 0 ? 422 : clash === null ? 200 : 409
  if (part !== 'check') return page(c, <RemovalPartPage {...props} />, status)
  const heat = temperature(deps.store.protocol().heatLimitC, c.var.frame.units)
  return page(c, <RemovalCheckPage {...props} reckoning={reckoningOf(c, deps, sheet)} heat={heat} />, status)
}

/** Saves one part over the last version. Only if the same part has been changed meanwhile is there a clash. */
function savePart(
  c: AppContext,
  deps: Deps,
  part: Part,
  saved: SavedSheet & { id: string; path: string },
  typed: Typed,
): Response | Promise<Response> {
  const draft = partTyped(part, typed, c.var.frame.units)
  const { last } = saved
  const shown = Number(one(typed, 'version'))
  // What the form does not hold stays: the signature is written on its own page.
  const kept =
    part === 'agreement' && last.sheet.agreement.signature
      ? { signature: last.sheet.agreement.signature }
      : {}
  if (draft.problems.length > 0)
    return form(c, deps, { part, typed, problems: draft.problems, saved, clash: null })
  const theirs = clashOf(c, deps, part, saved, shown)
  if (theirs !== null)
    return form(c, deps, {
      part,
      typed: { ...typed, version: [String(last.version)] },
      problems: [],
      saved,
      clash: theirs,
    })
  const content = { ...last.sheet, [part]: { ...draft.raw, ...kept } }
  const result = deps.store.removals.save(saved.id, last.version, content, stampOf(c, deps))
  if (result.ok) return c.redirect(part === 'check' ? `${saved.path}/decide` : `${saved.path}?saved=1`, 303)
  const problems =
    'problems' in result
      ? result.problems
      : [{ field: '', message: 'was saved by somebody else just now: save again' }]
  return form(c, deps, { part, typed, problems, saved, clash: null })
}

function clashOf(
  c: AppContext,
  deps: Deps,
  part: Part,
  saved: SavedSheet & { id: string },
  shown: number,
): Clash | null {
  const { last } = saved
  if (shown === last.version || !Number.isInteger(shown)) return null
  const before = deps.store.removals.version(saved.id, shown)
  if (before === null || JSON.stringify(before.sheet[part]) === JSON.stringify(last.sheet[part])) return null
  const { frame } = c.var
  const at = { units: frame.units, today: frame.today, currency: deps.store.settings.get('currency') }
  const old = new Map(factsOf(part, before.sheet, at))
  return {
    by: last.savedBy,
    when: instantWords(last.savedAt, frame.zone, frame.today),
    theirs: factsOf(part, last.sheet, at)
      .filter(([label, value]) => old.get(label) !== value)
      .map(([label, value]) => ({ label, value })),
  }
}

function overview(
  c: AppContext,
  deps: Deps,
  saved: SavedSheet & { id: string; path: string },
  sheet: Sheet,
  olderVersion: number | null,
): Response | Promise<Response> {
  const { frame } = c.var
  const currency = deps.store.settings.get('currency')
  const stage = stageOf(sheet, saved.colonies.length)
  const over = isOver(stage) || stage === 'worked'
  return page(
    c,
    <RemovalPage
      frame={frame}
      path={saved.path}
      name={sheetName(sheet)}
      sheet={sheet}
      stage={stage}
      parts={PARTS.map((part) => ({
        part,
        facts: factsOf(part, sheet, { units: frame.units, today: frame.today, currency }),
      }))}
      reckoning={over ? null : reckoningOf(c, deps, sheet)}
      next={nextStep(saved.id, sheet, saved.colonies)}
      colonies={colonyLinks(deps, saved.colonies)}
      versions={saved.versions.map((v) => ({
        version: v.version,
        by: v.savedBy,
        when: instantWords(v.savedAt, frame.zone, frame.today),
      }))}
      older={olderVersion === null ? null : { version: olderVersion, last: saved.last.version }}
      saved={c.req.query('saved') === '1'}
      price={priceWords(sheet.agreement, currency) ?? null}
    />,
  )
}
