/** Supplies: queens and frames of eggs to have on hand, how many to order, and who can give. */

import { addDays, type Day } from '../../days.ts'
import {
  type ColonyNeed,
  type Donor,
  moreThan,
  type NeedByDay,
  type OrderAdvice,
  type OrderOptions,
  type SupplyForecast,
} from '../../forecast/index.ts'
import { type FormState, ProblemSummary } from '../../forms/index.ts'
import {
  betweenPath,
  DaysPlot,
  type Frame,
  Layout,
  linePath,
  Numbers,
  SUPPLY_TABS,
  scaleFor,
  stretchOf,
  Tabs,
  Wide,
} from '../../parts/index.ts'
import { chance, dayWords } from '../../words/index.ts'
import { Donors } from './donors.tsx'
import { orderLabel } from './order.ts'
import { OrderForm } from './order-form.tsx'
import { OrderTable } from './order-table.tsx'

export interface SuppliesProps {
  frame: Frame
  /** Colonies in the yard. */
  colonies: number
  forecast: SupplyForecast
  needs: ColonyNeed[]
  donors: Donor[]
  order: OrderAdvice
  options: OrderOptions
  form: FormState
  currency: string
  pathOf: (tag: string) => string
}

export const SuppliesPage = (p: SuppliesProps) => (
  <Layout frame={p.frame} title="Supplies">
    <Tabs of={SUPPLY_TABS} frame={p.frame} />
    <h1>Queens and frames of eggs to have on hand</h1>
    <ProblemSummary form={p.form} labels={orderLabel} heading="Not all of it could be read" ending={null} />
    {p.colonies === 0 ? (
      <div class="sheet">
        <h2>No colony in the yard</h2>
        <p>
          Once colonies are here, this page says how many queens and frames of eggs they are likely to need.
        </p>
      </div>
    ) : (
      <div class="supplies">
        <Order {...p} />
        <ByDate {...p} />
        <Which {...p} />
        <Donors donors={p.donors} today={p.frame.today} pathOf={p.pathOf} eggFrames={p.forecast.eggFrames} />
      </div>
    )}
  </Layout>
)

const Order = (p: SuppliesProps) => {
  const { order, options, frame } = p
  const cheapest =
    order.cheapest === order.order
      ? 'It is also the cheapest order at the costs below.'
      : `At the costs below, ${order.cheapest === 0 ? 'none' : order.cheapest} would be cheapest.`
  return (
    <section class="section" id="order">
      <h2>Order</h2>
      <p class="reading">
        <b>{order.sentence}</b> It covers what may be needed until {dayWords(order.until, frame.today)}.{' '}
        {cheapest}
      </p>
      <p class="small soft">
        One too many costs its price ({p.currency}
        {options.costOver}); one too few sets a colony back or costs it ({p.currency}
        {options.costShort}).
      </p>
      <details class="caution" open={p.form.problems.length > 0}>
        <summary>Reckon with other numbers</summary>
        <OrderForm form={p.form} currency={p.currency} />
      </details>
      <OrderTable order={order} currency={p.currency} />
    </section>
  )
}

const ByDate = (p: SuppliesProps) => {
  const { forecast, options, frame, donors } = p
  const spare = donors.reduce((sum, d) => sum + d.spare, 0)
  return (
    <section class="section" id="by-date">
      <h2>Likely needed by date</h2>
      <div class="foresight-two">
        <Need
          title="Mated queens"
          needs={forecast.queens}
          today={frame.today}
          have={options.inHand}
          haveWords={`on hand ${options.inHand}`}
        />
        <Need
          title="Frames of eggs"
          needs={forecast.eggFrames}
          today={frame.today}
          have={spare}
          haveWords={`donors can spare ${spare}`}
        />
      </div>
      <p class="fine">
        Counted over every colony’s odds, exactly (Poisson-binomial); what a plan says to give counts as
        needed. A frame of eggs comes first, a bought queen when that has failed; laying workers are united.
        Colonies count as independent: a bad week for mating makes the spread wider than stated. New jobs are
        not in it. <a href="/rates">What the odds rest on</a>.
      </p>
    </section>
  )
}

/** Days between the rows of a table. */
const EVERY = 4

interface NeedProps {
  title: string
  needs: NeedByDay[]
  today: Day
  have: number
  haveWords: string
}

const Need = ({ title, needs, today, have, haveWords }: NeedProps) => {
  const last = needs.at(-1)
  const most = Math.max(1, ...needs.map((n) => n.ninety))
  const scale = scaleFor(Math.max(most, have <= 2 * most ? have : 0))
  const steps = scale.steps.filter(Number.isInteger)
  const words = `${title}: by ${dayWords(last?.day ?? today, today)} about ${(last?.expected ?? 0).toFixed(1)}, nine times in ten at most ${last?.ninety ?? 0}; ${haveWords}.`
  const line = have <= scale.top ? have : null
  return (
    <figure>
      <h3>{title}</h3>
      <DaysPlot
        low
        stretch={stretchOf(today, last?.day ?? addDays(today, 1))}
        scale={{ top: scale.top * 1.04, steps, label: String }}
        today={null}
        text={words}
        words={
          line === null ? null : (
            <text
              class="have-word"
              x="100%"
              dx="-0.4em"
              y={`${(1 - line / (scale.top * 1.04)) * 100}%`}
              dy="-0.35em"
              text-anchor="end"
            >
              {haveWords}
            </text>
          )
        }
      >
        <path
          class="fan-band"
          d={betweenPath(
            needs.map(() => 0),
            needs.map((n) => n.ninety),
            scale.top * 1.04,
          )}
        />
        <path
          class="fan-median"
          d={linePath(
            needs.map((n) => n.expected),
            scale.top * 1.04,
          )}
        />
        {line === null ? null : (
          <path class="fan-after" d={`M0 ${(1 - line / (scale.top * 1.04)) * 1000}H1000`} />
        )}
      </DaysPlot>
      <figcaption class="fine">Line: expected. Shaded: nine times in ten no more than this.</figcaption>
      <Wide label="How many, by date">
        <Numbers heads={['By', 'Expected', '9 in 10, at most', <>Short with {have}</>]}>
          {needs
            .filter((_, i) => i % EVERY === 0)
            .map((n) => (
              <tr>
                <th scope="row">{n.day === today ? 'today' : dayWords(n.day, today)}</th>
                <td>{n.expected.toFixed(1)}</td>
                <td>{n.ninety}</td>
                <td>{chance(moreThan(n.chances, have))}</td>
              </tr>
            ))}
        </Numbers>
      </Wide>
    </figure>
  )
}

const LEAST = 0.05
const MOST_ROWS = 15

/** The colonies that the numbers come from. */
const Which = ({ needs, pathOf }: SuppliesProps) => {
  const at = (n: number[]): number => n[Math.max(0, n.length - 1)] ?? 0
  const likely = needs
    .map((n) => ({ tag: n.tag, queen: at(n.queens), eggs: at(n.eggFrames) }))
    .filter((n) => n.queen >= LEAST || n.eggs >= LEAST)
    .sort((a, b) => b.queen + b.eggs - (a.queen + a.eggs) || a.tag.localeCompare(b.tag))
  if (likely.length === 0) return null
  return (
    <section class="section" id="which">
      <h2>For which colonies</h2>
      <Wide label="Colonies likely to need something">
        <Numbers heads={['Colony', 'A queen', 'A frame of eggs']}>
          {likely.slice(0, MOST_ROWS).map((n) => (
            <tr>
              <th scope="row">
                <a class="tag tall" href={pathOf(n.tag)}>
                  {n.tag}
                </a>
              </th>
              <td>{n.queen < 0.005 ? '' : chance(n.queen)}</td>
              <td>{n.eggs < 0.005 ? '' : chance(n.eggs)}</td>
            </tr>
          ))}
        </Numbers>
      </Wide>
      <p class="fine">
        Chance of coming to need one within four weeks
        {likely.length > MOST_ROWS
          ? `; ${likely.length - MOST_ROWS} more with smaller chances are left out`
          : ''}
        .
      </p>
    </section>
  )
}
