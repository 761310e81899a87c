import { Hono } from 'hono'
import { type AppContext, type Deps, type Env, page, unknownPage } from '../../app/index.ts'
import { hemisphereOf } from '../../biology/index.ts'
import { costsWith } from '../../decision/index.ts'
import { drawnStacks } from './became.tsx'
import { chartData } from './chart-data.ts'
import { namesIn } from './choice.ts'
import { choiceIn } from './choice-form.ts'
import { REVIEW_CSV, type ReviewCsv } from './csv.ts'
import { ratesOf } from './job-money.ts'
import { ReviewPage } from './page.tsx'
import { nameIn, type ReviewProps } from './part-props.ts'
import { privateFacts } from './prices.ts'
import { reviewRecords } from './records.ts'
import { SeasonReport } from './season-report.tsx'
import { reviewView } from './view.ts'

/** Files that tell costs. */
const PRIVATE: readonly ReviewCsv[] = ['money']

/** Which removals survive: the page, the report to print, and every chart's numbers. The choice stands in the address. */
export function review(deps: Deps): Hono<Env> {
  const app = new Hono<Env>()
  const recordsOf = reviewRecords(deps.store)

  const propsFor = (c: AppContext): ReviewProps => {
    const { frame } = c.var
    const protocol = deps.store.protocol()
    const hidden = frame.may('see-private') ? privateFacts(deps.store) : null
    const rates = ratesOf(costsWith())
    const options = {
      rates,
      heatLimitC: protocol.heatLimitC,
      hemisphere: hemisphereOf(frame.zone),
      ...(hidden === null ? {} : { prices: hidden.prices, told: hidden.told }),
    }
    const records = recordsOf(frame.zone)
    const { choice, problems } = choiceIn(new URL(c.req.url).searchParams, frame.today)
    const look = reviewView(records, choice, options)
    const naming = { units: frame.units, heatLimitC: protocol.heatLimitC }
    return {
      frame,
      look,
      charts: chartData(look, (g) => nameIn({ look, naming }, g), drawnStacks({ look })),
      naming,
      names: namesIn(
        records.map((r) => r.facts),
        options,
      ),
      total: records.length,
      callBacks: hidden?.callBacks ?? [],
      rates,
      currency: deps.store.settings.get('currency'),
      problems,
    }
  }

  app.get('/review', (c) => page(c, <ReviewPage {...propsFor(c)} />))
  app.get('/review/report', (c) =>
    page(c, <SeasonReport {...propsFor(c)} yardName={deps.store.settings.get('yardName')} />),
  )

  app.get('/review/:file{[a-z]+\\.csv}', (c) => {
    const name = c.req.param('file').replace(/\.csv$/, '')
    const file = (Object.keys(REVIEW_CSV) as ReviewCsv[]).find((f) => f === name)
    if (file === undefined || (PRIVATE.includes(file) && !c.var.frame.may('see-private')))
      return unknownPage(c)
    const text = REVIEW_CSV[file](propsFor(c).look)
    c.header('Content-Type', 'text/csv; charset=utf-8; header=present')
    c.header('Content-Disposition', `attachment; filename="review-${file}-${c.var.frame.today}.csv"`)
    c.header('Cache-Control', 'no-store')
    return c.body(text)
  })
  return app
}
