import { setImmediate as breathe } from 'node:timers/promises'
import { Hono } from 'hono'
import { type AppContext, colonyPath, type Deps, type Env, page, signedIn, typedIn } from '../../app/index.ts'
import { remakerOf } from '../../app/node.ts'
import { type FieldProblem, one, type Typed } from '../../forms/index.ts'
import {
  type ColonyChange,
  changeFor,
  type ProtocolOverrides,
  totalsOf,
  yardProtocol,
} from '../../recovery/index.ts'
import { plannerOf } from '../../store/index.ts'
import { instantWords } from '../../words/index.ts'
import { readCosts, typedCosts } from './costs-form.ts'
import { protocolTyped, typedProtocol } from './form.ts'
import { ProtocolPage } from './page.tsx'
import { ProtocolPreviewPage, ProtocolProgressPage } from './preview-page.tsx'
import { unitsTyped } from './settings-route.tsx'
import { differences } from './words.ts'

/** The protocol: shown, previewed over the colonies in the yard, saved with who and why, and plans recomputed after it. */
export function protocol(deps: Deps): Hono<Env> {
  const { store } = deps
  const app = new Hono<Env>()
  const remaker = remakerOf(store, (error) => deps.report(error, 'making plans again'))

  const protocolNow = (c: AppContext): Typed =>
    typedProtocol(store.settings.get('protocol'), c.var.frame.units)

  app.get('/protocol', (c) => show(c, deps, protocolNow(c)))

  app.post('/protocol/back', async (c) => show(c, deps, await typedIn(c)))

  app.post('/protocol/preview', async (c) => {
    const typed = await typedIn(c)
    const { overrides, problems } = read(c, typed)
    if (problems.length > 0) return show(c, deps, typed, problems)
    const { colonies, changes } = await preview(c, deps, overrides)
    return page(
      c,
      <ProtocolPreviewPage
        frame={c.var.frame}
        typed={typed}
        differences={differences(store.settings.get('protocol'), overrides, c.var.frame.units)}
        totals={totalsOf(colonies, changes)}
        changes={changes}
      />,
    )
  })

  app.post('/protocol/save', async (c) => {
    const typed = await typedIn(c)
    const { overrides, problems } = read(c, typed)
    if (problems.length > 0) return show(c, deps, typed, problems)
    if (differences(store.settings.get('protocol'), overrides, c.var.frame.units).length === 0)
      return c.redirect('/protocol', 303)
    const reason = one(typed, 'reason')
    const refused = store.protocols.change(overrides, {
      changedAt: deps.clock().toISOString(),
      changedBy: signedIn(c),
      ...(reason === '' ? {} : { reason }),
    })
    if (refused.length > 0) return show(c, deps, typed, refused)
    remaker.start()
    return c.redirect('/protocol/progress', 303)
  })

  app.post('/protocol/costs', async (c) => {
    const typed = await typedIn(c)
    const { choices, problems } = readCosts(typed)
    if (problems.length > 0) return show(c, deps, protocolNow(c), problems, typed)
    store.protocols.choose('costs', choices.costs)
    store.protocols.choose('supplies', choices.supplies)
    remaker.start()
    return c.redirect('/protocol/progress', 303)
  })

  app.post('/protocol/rebuild', (c) => {
    store.protocols.remakeAll()
    remaker.start()
    return c.redirect('/protocol/progress', 303)
  })

  app.post('/protocol/go-on', (c) => {
    remaker.start()
    return c.redirect('/protocol/progress', 303)
  })

  app.get('/protocol/progress', (c) =>
    page(
      c,
      <ProtocolProgressPage
        frame={c.var.frame}
        recomputing={store.protocols.recomputing()}
        made={remaker.made()}
        stopped={remaker.stopped()}
      />,
    ),
  )
  return app
}

function read(c: AppContext, typed: Typed): { overrides: ProtocolOverrides; problems: FieldProblem[] } {
  const draft = protocolTyped(typed, c.var.frame.units)
  if (one(typed, 'reason').length > 500)
    draft.problems.push({ field: 'reason', message: 'must be at most 500 characters' })
  return draft
}

const SAVED: Record<string, string> = {
  units: 'Units, time zone and names are saved, for everyone in this book.',
}

function show(
  c: AppContext,
  deps: Deps,
  typed: Typed,
  problems: FieldProblem[] = [],
  costs: Typed = typedCosts(deps.store.settings),
): Response | Promise<Response> {
  const { store } = deps
  const { frame } = c.var
  return page(
    c,
    <ProtocolPage
      frame={frame}
      form={{ typed, problems }}
      protocol={store.protocol()}
      own={store.settings.get('protocol')}
      changes={store.protocols.changes().map((x) => ({
        by: x.changedBy,
        when: instantWords(x.changedAt, frame.zone, frame.today),
        lines: differences(x.before, x.after, frame.units),
        reason: x.reason,
      }))}
      costs={{ form: { typed: costs, problems }, currency: store.settings.get('currency') }}
      units={{ form: { typed: unitsTyped(deps), problems: [] }, machineZone: deps.zone }}
      saved={SAVED[c.req.query('saved') ?? ''] ?? null}
      recomputing={store.protocols.recomputing()}
    />,
    problems.length === 0 ? 200 : 422,
  )
}

/** Colonies read between two breaths, so that others are answered meanwhile. */
const SLICE = 5

/** Every colony in the yard by the rules now and by those typed. */
async function preview(
  c: AppContext,
  deps: Deps,
  overrides: ProtocolOverrides,
): Promise<{ colonies: number; changes: (ColonyChange & { path: string })[] }> {
  const { store } = deps
  const protocol = yardProtocol(overrides)
  const after = plannerOf(store.settings, () => protocol)
  const open = store.colonies({ open: true })
  const changes: (ColonyChange & { path: string })[] = []
  for (const [i, summary] of open.entries()) {
    if (i % SLICE === SLICE - 1) await breathe()
    const history = store.colony(summary.id)?.history
    if (history === undefined) continue
    const { exposed } = summary.plan
    const { today } = c.var.frame
    const change = changeFor(store.plan(history, today, exposed), after(history, today, exposed))
    if (change !== null) changes.push({ ...change, path: colonyPath(summary) })
  }
  // Those that become late, or ask for something else, are what one wants to see.
  const weight = (x: ColonyChange): number => (x.becomesLate.length > 0 ? 0 : x.action !== null ? 1 : 2)
  return { colonies: open.length, changes: changes.sort((a, b) => weight(a) - weight(b)) }
}
