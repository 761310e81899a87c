import { Hono } from 'hono'
import { type AppContext, type Deps, type Env, page, typedIn } from '../../app/index.ts'
import { type FieldProblem, one, type Typed } from '../../forms/index.ts'
import {
  BLANKS,
  DEFAULT_TERMS,
  EMPTY_SHEET,
  type Sheet,
  TERMS_LIMIT,
  termsOf,
  unknownBlanks,
} from '../../records/index.ts'
import { temperature } from '../../words/index.ts'
import { TermsPage } from './sign-page.tsx'

/** An invented job, to show the text filled in. */
const EXAMPLE: Sheet = {
  ...EMPTY_SHEET,
  job: { name: 'Ottoline Fairweather', address: '4 Invented Row', plannedOn: '2026-06-12' },
  site: { where: 'in the wall left of the porch' },
  agreement: { pricing: 'hourly', hourly: 95, hours: 4 },
}

/** The operator's own text of the agreement. */
export function removalTerms(deps: Deps): Hono<Env> {
  const { settings } = deps.store
  const app = new Hono<Env>()
  const show = (c: AppContext, typed: Typed, problems: FieldProblem[] = []) => {
    const heat = temperature(deps.store.protocol().heatLimitC, c.var.frame.units)
    const around = {
      yard: settings.get('yardName') || 'your yard',
      currency: one(typed, 'currency'),
      heat,
      dayWords: () => 'Fri 12 Jun',
    }
    return page(
      c,
      <TermsPage
        frame={c.var.frame}
        form={{ typed, problems }}
        saved={c.req.query('saved') === '1'}
        blanks={Object.entries(BLANKS).map(([name, words]) => ({ name, words }))}
        example={termsOf(one(typed, 'terms'), EXAMPLE, around)}
      />,
      problems.length === 0 ? 200 : 422,
    )
  }

  app.get('/removals/terms', (c) =>
    show(c, { terms: [settings.get('agreementTerms')], currency: [settings.get('currency')] }),
  )

  app.post('/removals/terms', async (c) => {
    const typed = await typedIn(c)
    const terms = one(typed, 'default') === '1' ? DEFAULT_TERMS : one(typed, 'terms').replaceAll('\r\n', '\n')
    const problems: FieldProblem[] = []
    const slips = unknownBlanks(terms)
    if (terms === '') problems.push({ field: 'terms', message: 'must not be empty' })
    if (terms.length > TERMS_LIMIT)
      problems.push({ field: 'terms', message: `must be at most ${TERMS_LIMIT} characters` })
    if (slips.length > 0)
      problems.push({
        field: 'terms',
        message: `has braces that nothing fills in: ${slips.map((s) => `{${s}}`).join(', ')}. Use one of ${Object.keys(
          BLANKS,
        )
          .map((b) => `{${b}}`)
          .join(', ')}, or take the braces away`,
      })
    if (one(typed, 'currency').length > 5)
      problems.push({ field: 'currency', message: 'must be at most 5 characters' })
    if (problems.length > 0) return show(c, typed, problems)
    settings.set('agreementTerms', terms)
    settings.set('currency', one(typed, 'currency'))
    return c.redirect('/removals/terms?saved=1', 303)
  })
  return app
}
