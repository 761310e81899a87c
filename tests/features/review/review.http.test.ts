/** The review over HTTP, on the invented yard: page, report, files; what each role gets; what is said with few colonies. */
import { parse } from 'csv-parse/sync'
import { beforeAll, describe, expect, it } from 'vitest'
import type { ChartData } from '../../../src/features/review/chart-data.ts'
import { REVIEW_CSV } from '../../../src/features/review/csv.ts'
import { factsInStore } from '../../../src/features/review/records.ts'
import { reviewOf } from '../../../src/features/review/review.ts'
import { filledFile } from '../../support/filled.ts'
import { type TestYard, testYard } from '../../support/yard-app.ts'
import { wordsOf } from '../../support/yard-on.ts'

const DAY = '2026-06-10'

let yard: TestYard
beforeAll(() => {
  yard = testYard({ day: DAY, file: filledFile(DAY, 'boxes') })
})

const text = async (path: string, of = yard): Promise<string> => (await of.ask('operator', path)).text()
const words = async (path: string, of = yard): Promise<string> => wordsOf(await text(path, of))
const table = async (path: string): Promise<Record<string, string>[]> =>
  parse(await text(path), { columns: true, skip_empty_lines: true })

describe('the page', () => {
  it('says in sentences and tables what the statistics say', async () => {
    const review = reviewOf(factsInStore(yard.services.store, 'UTC'), DAY)
    const said = await words('/review')
    const n = review.overall.colonies
    const share = Math.round((review.overall.at30.survival ?? 0) * 100)
    expect(said).toContain(`Of ${n} colonies, an estimated ${share} % were alive at day 30`)
    for (const step of review.overall.steps.slice(0, 5))
      expect(said).toContain(` ${step.day} ${step.atRisk} `)
    for (const title of [
      'Ways of loss',
      'What goes with losing a colony',
      'How they came by a queen',
      'Days in the yard',
      'Money for each colony kept',
    ])
      expect(said).toContain(title)
  })

  it('needs no script: the charts are drawn, and each tells itself to those who cannot see it', async () => {
    const html = await text('/review')
    for (const chart of ['survival', 'ways', 'queenright']) {
      const figure = html.split(`data-chart="${chart}"`)[1] ?? ''
      expect(figure.slice(0, 400)).toMatch(/role="img" aria-label="[^"]{60,}"/)
      expect(figure).toContain('<path class="')
    }
    expect(html).not.toContain('<canvas')
    expect(html).not.toMatch(/ style="/)
  })

  it('carries its charts’ data, which cannot end its own element', async () => {
    await yard.send('operator', {
      id: '00000000-0000-7000-8000-00000000000a',
      kind: 'intake',
      colony: 'X-1',
      on: '2026-06-01',
      by: 'Bram',
      yard: '</script><b>',
      queen: 'caged',
      removal: { type: '</script><script>alert(1)' },
    })
    const html = await text('/review?show=%3C/script%3E%3Cscript%3Ealert(1)&by=removalType')
    const data =
      /<script type="application\/json" id="review-data">([\s\S]*?)<\/script>/.exec(html)?.[1] ?? ''
    const charts = JSON.parse(data) as ChartData
    expect(charts.survival.map((l) => l.name)).toEqual(['all', '</script><script>alert(1)'])
    expect(html).not.toContain('<script>alert')
  })

  it('takes its choice from the address, and says what it is', async () => {
    const said = await words('/review?removalType=wall&from=2026-04-01&by=queen&united=loss')
    expect(said).toMatch(/\d+ of \d+ colonies, taken in since Wed 1 Apr, removal type: wall, as of/)
    expect(said).toContain('Lost means died, absconded or united')
    expect(said).toContain('queen caged')
    expect(await words('/review?by=season')).toContain('Leaning on all groups')
    expect(await words('/review')).toContain('Leaning on all types')
    expect(await words('/review?from=yesterday')).toContain('is no date written YYYY-MM-DD')
    expect(await words('/review?removalType=no-such-type')).toContain('No colony fits')
  })

  it('with fewer than ten colonies says what cannot be concluded', async () => {
    const said = await words('/review?removalType=container')
    expect(said).toContain('what cannot be concluded')
    expect(said).toMatch(/Nothing can be said of this from \d colonies/)
    expect(said).not.toContain('times the rate')
  })

  it('never claims a cause', async () => {
    const said = await words('/review')
    expect(said).not.toMatch(/\b(because of|due to|leads? to|caused|causes|effect of)\b/i)
    expect(said).toContain('Going together is not causing')
  })

  it('without colonies teaches what to do', async () => {
    const empty = testYard({ day: DAY })
    const said = await words('/review', empty)
    expect(said).toContain('No colony yet')
    expect(said).toContain('Take in an old spreadsheet')
    expect(await words('/review/report', empty)).toContain('No colony fits the choice')
    for (const file of Object.keys(REVIEW_CSV))
      expect((await empty.ask('operator', `/review/${file}.csv`)).status).toBe(200)
    expect(empty.errors).toEqual([])
  })
})

describe('the report', () => {
  it('has its two pages and says the same', async () => {
    const html = await text('/review/report?by=removalType')
    expect(html.match(/class="report-page"/g)).toHaveLength(2)
    const said = wordsOf(html)
    expect(said).toMatch(/Of \d+ colonies, \d+ moved out, \d+ were lost \(\d+ died/)
    // Moved out is an end of its own: the share alive had nobody moved out stands in the chart below, with its caution.
    expect(said).toMatch(
      /Best: [a-z ]+, \d+ % \(\d+ to \d+ %\) of \d+ moved out by day 60, \d+ % lost\. Worst: /,
    )
    const page = wordsOf(await text('/review?by=removalType'))
    for (const answer of [/Best: .*? lost\. Worst: .*? lost\./, /Chance alone would .*?(?:\d\)|alike)\./]) {
      const told = answer.exec(page)?.[0]
      expect(told).toBeDefined()
      expect(said).toContain(told)
    }
    expect(said).toContain('Strong colonies are the ones that move out')
    expect(said).toContain('How this is counted')
    expect(html).not.toContain('review-data')
  })
})

describe('the files', () => {
  it('hold the statistics with every digit', async () => {
    const review = reviewOf(factsInStore(yard.services.store, 'UTC'), DAY)
    const curves = (await table('/review/curves.csv')).filter((r) => r.group === 'all')
    expect(curves.map((r) => [Number(r.day), Number(r.at_risk), Number(r.survival)])).toEqual(
      review.overall.steps.map((s) => [s.day, s.atRisk, s.survival]),
    )
    const walls = (await table('/review/curves.csv')).filter((r) => r.group === 'wall')
    expect(walls).toHaveLength(review.byType.wall?.steps.length ?? 0)
    const died = (await table('/review/ways.csv')).filter((r) => r.group === 'all' && r.way === 'died')
    expect(Number(died.at(-1)?.share)).toBe(review.overall.waysOfLeaving.at(-1)?.died)
    const day30 = (await table('/review/days.csv')).find((r) => r.group === 'wall' && r.day === '30')
    expect(Number(day30?.survival)).toBe(review.byType.wall?.at30.survival)
  })

  it.each(Object.keys(REVIEW_CSV))('%s.csv goes by the choice and is a file', async (file) => {
    const answer = await yard.ask('operator', `/review/${file}.csv?removalType=wall`)
    expect(answer.status).toBe(200)
    expect(answer.headers.get('content-type')).toContain('text/csv')
    expect(answer.headers.get('content-disposition')).toBe(`attachment; filename="review-${file}-${DAY}.csv"`)
    expect((await answer.text()).split('\r\n').length).toBeGreaterThan(1)
  })

  it('a group’s name that a spreadsheet would take for a formula is guarded', async () => {
    await yard.send('operator', {
      id: '00000000-0000-7000-8000-00000000000b',
      kind: 'intake',
      colony: 'X-2',
      on: '2026-06-01',
      by: 'Bram',
      yard: 'Orchard',
      queen: 'caged',
      removal: { type: '=HYPERLINK("x")' },
    })
    const csv = await text('/review/stays.csv')
    expect(csv).toContain(`"'=HYPERLINK(""x"")"`)
    expect(csv).not.toMatch(/^=|,=/m)
  })

  it('there are no others', async () => {
    for (const name of ['nothing', 'toString', '__proto__'])
      expect((await yard.ask('operator', `/review/${name}.csv`)).status).toBe(404)
  })
})

it('is for operators only', async () => {
  for (const role of ['beekeeper', 'helper'] as const)
    for (const path of ['/review', '/review/report', '/review/curves.csv', '/review/money.csv'])
      expect((await yard.ask(role, path)).status, `${role} ${path}`).toBe(403)
  expect(yard.errors).toEqual([])
})

it('what is entered is reckoned with at once', async () => {
  const before = /\d+ colonies, as of/.exec(await words('/review'))?.[0]
  await yard.send('operator', {
    id: '00000000-0000-7000-8000-00000000000c',
    kind: 'intake',
    colony: 'X-3',
    on: '2026-06-01',
    by: 'Bram',
    yard: 'Orchard',
    queen: 'caged',
    removal: { type: 'wall' },
  })
  expect(/\d+ colonies, as of/.exec(await words('/review'))?.[0]).not.toBe(before)
})
