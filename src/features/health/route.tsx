import { Hono } from 'hono'
import { colonyIn, colonyPath, type Deps, type Env, page, unknownColony } from '../../app/index.ts'
import type { Plan } from '../../recovery/index.ts'
import { inUnits, leftWords, type Units, type Words } from '../../words/index.ts'
import { entryForm } from '../entries/index.ts'
import { ColonyHealthPage } from './colony-page.tsx'
import { ClearedPage, FeedPage, TreatPage, WashPage } from './forms.tsx'
import { healthOf, needsWash, urgencyOf } from './health.ts'
import { HealthPage } from './page.tsx'
import type { HealthRow } from './row.tsx'

const signsSay = ({ advice }: Plan, units: Units, w: Words): string | null =>
  advice.action === 'see-to-signs' ? inUnits(w.reasons.all(advice.reasons), units) : null

/** Health: of the yard, of one colony, and the short forms that feed it. */
export function health(deps: Deps): Hono<Env> {
  const { store } = deps
  const app = new Hono<Env>()

  app.get('/health', (c) => {
    const { today, units, words } = c.var.frame
    const protocol = store.protocol()
    const rows = store
      .colonies({ open: true })
      .flatMap((s): HealthRow[] => {
        const history = store.colony(s.id)?.history
        if (history === undefined) return []
        const of = healthOf(history, today, protocol, s.plan.spans.broodless ?? null)
        return [
          {
            tag: s.tag,
            path: colonyPath(s),
            yard: s.yard,
            stand: s.stand,
            call: s.plan.advice.action === 'call-inspector',
            says: signsSay(s.plan, units, words),
            health: of,
          },
        ]
      })
      .sort((a, b) => urgencyOf(a.health) - urgencyOf(b.health))
    const at = (urgency: number): number => rows.filter((r) => urgencyOf(r.health) === urgency).length
    return page(
      c,
      <HealthPage
        frame={c.var.frame}
        rows={rows}
        counts={{
          held: at(0),
          seen: at(1),
          over: at(2),
          unwashed: rows.filter((r) => needsWash(r.health)).length,
        }}
        inspector={store.settings.get('inspector')}
        bound={store
          .colonies({ open: true })
          .filter((s) => s.plan.exposed !== null)
          .map((s) => ({ tag: s.tag, path: colonyPath(s), plan: s.plan }))}
        gone={[...store.goneBound()].flatMap(([id, { bonds }]) => {
          const s = store.colony(id)?.summary
          if (s === undefined || s.outcome === null || s.closedOn === null) return []
          const left = `${leftWords(s.outcome, words)} ${words.dates.day(s.closedOn, today)}`
          return [{ tag: s.tag, path: colonyPath(s), left, bonds }]
        })}
      />,
    )
  })

  app.get('/colony/:tag/health', (c) => {
    const found = colonyIn(c, store)
    if (found === null) return unknownColony(c, deps, c.req.param('tag'))
    const { summary, history } = found
    const protocol = store.protocol()
    const of = healthOf(history, c.var.frame.today, protocol, summary.plan.spans.broodless ?? null)
    return page(
      c,
      <ColonyHealthPage
        frame={c.var.frame}
        summary={summary}
        history={history}
        path={colonyPath(summary)}
        health={of}
        protocol={protocol}
        inspector={store.settings.get('inspector')}
        bound={store
          .colonies({ open: true })
          .filter((s) => s.plan.exposed?.from === summary.tag)
          .map((s) => ({ tag: s.tag, path: colonyPath(s), exposed: s.plan.exposed }))}
      />,
    )
  })

  app.route('/', entryForm(deps, { kind: 'mite-wash', name: 'wash', view: (view) => <WashPage {...view} /> }))
  app.route(
    '/',
    entryForm(deps, {
      kind: 'given',
      name: 'feed',
      blank: () => ({ what: ['syrup'] }),
      view: (view) => <FeedPage {...view} />,
    }),
  )
  app.route('/', entryForm(deps, { kind: 'given', name: 'treat', view: (view) => <TreatPage {...view} /> }))
  app.route(
    '/',
    entryForm(deps, { kind: 'disease-cleared', name: 'cleared', view: (view) => <ClearedPage {...view} /> }),
  )
  return app
}
