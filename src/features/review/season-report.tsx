/** The season on two pages of paper: what the review says, without anything to tap. */

import type { Child } from 'hono/jsx'
import { inWordsWithYear } from '../../days.ts'
import { Crumb, Layout, Numbers } from '../../parts/index.ts'
import { FEW, FEW_MEANS, fewWords } from '../../words/index.ts'
import { answers } from './became.tsx'
import { OnDay } from './days-part.tsx'
import { fatesReading } from './fates.ts'
import { findingReading, findingsReading, isClear, moneyReading, stayReading } from './findings-reading.ts'
import { amount } from './money.ts'
import { MONEY_ROWS } from './money-part.tsx'
import { nameIn, pathIn, type ReviewProps } from './part-props.ts'
import { StepChart } from './plot.tsx'
import { CURVE_CAUTION, coloniesOf, waysReading } from './readings.ts'
import { PathTable, queenrightReading } from './recovery.tsx'
import { comparison } from './survival.tsx'
import { WaysChart } from './ways-plot.tsx'
import { COHORT_WORDS, choiceWords, named } from './words.ts'

/** More groups than this do not fit on a page. */
const MOST_GROUPS = 12
/** Said once on paper instead of after every finding. */
const NO_CAUSE = 'That they go together does not say that one made the other.'
/** Findings shown on paper. */
const MOST_FINDINGS = 3

export const SeasonReport = (p: ReviewProps & { yardName: string }) => (
  <Layout frame={p.frame} title="Season report" ways={false}>
    <Crumb to={pathIn(p, '')}>Review</Crumb>
    <p class="buttons report-hint">Two pages, A4 or Letter: print this page from the browser’s menu.</p>
    {p.look.all.curve.colonies === 0 ? (
      <div class="sheet">
        <h1>Season report</h1>
        <p>No colony fits the choice.</p>
      </div>
    ) : (
      <article class="report">
        <FirstPage {...p} />
        <SecondPage {...p} />
      </article>
    )}
  </Layout>
)

const FirstPage = (p: ReviewProps & { yardName: string }) => {
  const { look } = p
  const reading = comparison(p)
  return (
    <div class="report-page">
      <header class="report-head">
        <h1>{p.yardName === '' ? 'Season report' : `${p.yardName}: season report`}</h1>
        <p>
          {[coloniesOf(look.taken, ''), ...choiceWords(look.choice, p.naming)].join(', ')}, as of{' '}
          {inWordsWithYear(look.choice.asOf)}
        </p>
      </header>
      <ul class="sentences">
        <li>{fatesReading(look.fates, look.choice.unitedIsLoss)}</li>
        {answers(p).map((text) => (
          <li>{text}</li>
        ))}
        {look.all.curve.colonies < FEW ? (
          <li>
            With fewer than {FEW} colonies this report tells what happened; it cannot say which removals are
            worth doing.
          </li>
        ) : null}
      </ul>
      <h2>Alive by day</h2>
      <StepChart
        id="survival"
        axis={p.charts.axis}
        lines={p.charts.survival}
        named={p.charts.survival.length > 1}
        counted="Colonies still followed on that day"
        text={`Share of colonies not lost, by days since intake. ${reading}`}
      />
      <p>{reading}</p>
      <p class="fine">{CURVE_CAUTION}</p>
      {look.groups.length < 2 ? null : (
        <>
          <h2>By {COHORT_WORDS[look.choice.by]}</h2>
          <OnDay of={p} day={30} most={MOST_GROUPS} />
          <p class="fine">
            Full dots: what a group shows by itself; diamonds: what to expect of its next colony, leaning on
            all groups. Lines: 95 % limits. {look.groups.some((g) => g.curve.colonies < FEW) ? FEW_MEANS : ''}
            {look.groups.length > MOST_GROUPS
              ? ` The ${look.groups.length - MOST_GROUPS} smallest groups are left out here.`
              : ''}
          </p>
        </>
      )}
    </div>
  )
}

const SecondPage = (p: ReviewProps) => {
  const { look, charts } = p
  const ways = waysReading('', 60, look.all.review)
  return (
    <div class="report-page">
      <div class="report-two">
        <section>
          <h2>Ways of loss</h2>
          <WaysChart ways={charts.ways} axis={charts.axis} text={ways} />
          <p>{ways}</p>
        </section>
        <section>
          <h2>How they came by a queen</h2>
          <PathTable paths={look.paths.filter((x) => x.colonies > 0)} />
          <p>{queenrightReading(p)}</p>
        </section>
      </div>
      <section>
        <h2>What goes with losing a colony</h2>
        <Findings {...p} />
      </section>
      <div class="report-two">
        <section>
          <h2>Days in the yard</h2>
          <p>{stayReading(look.all.stay)}</p>
          <LongestStays {...p} />
        </section>
        {p.frame.may('see-private') ? (
          <section>
            <h2>Money for each colony kept</h2>
            <p>{moneyReading(look.money, p.currency)}</p>
            <MoneyLines {...p} />
          </section>
        ) : null}
      </div>
      <section>
        <h2>How this is counted</h2>
        <p class="fine">
          Lost:{' '}
          {look.choice.unitedIsLoss
            ? 'died, absconded or united'
            : 'died or absconded; united is a way of its own'}
          . Moved out is not lost. Colonies still in the yard count for as long as they were followed, those
          entered late from then on. Shares by Kaplan and Meier with Greenwood’s variance and 95 % log-log
          limits (Jeffreys’ where none or all were lost), ways by Aalen and Johansen, groups pooled by a
          beta-binomial, ratios by Cox’s model with Efron’s ties. Limits say how far chance alone could have
          carried these figures.
        </p>
      </section>
    </div>
  )
}

/** Those that show a difference, in sentences; of the others, how many there were. */
const Findings = (p: ReviewProps) => {
  const { findings, all } = p.look
  if (all.curve.colonies < FEW)
    return <p>Nothing can be said of this from {coloniesOf(all.curve.colonies, '')}.</p>
  const found = findings.findings.map((f) => named(f, p.frame.units))
  const showing = found.filter(isClear).slice(0, MOST_FINDINGS)
  const others = found.length - showing.length
  return (
    <>
      <p>
        {findingsReading(findings)} {NO_CAUSE}
      </p>
      <Sentences>
        {showing.map((f) => (
          <li>{findingReading(f).replace(` ${NO_CAUSE}`, '')}</li>
        ))}
        {others > 0 ? (
          <li>
            {showing.length === 0 ? `None of ${others}` : `Of ${others} other`} comparisons{' '}
            {showing.length === 0 ? 'shows' : 'none shows'} a difference that these numbers could carry.
          </li>
        ) : null}
      </Sentences>
    </>
  )
}

const Sentences = ({ children }: { children?: Child }) => <ul class="sentences">{children}</ul>

const LongestStays = (p: ReviewProps) =>
  p.look.groups.length < 2 ? null : (
    <Numbers caption="Day by which half had left">
      {p.look.groups.slice(0, 4).map((g) => (
        <tr>
          <th scope="row">
            {nameIn(p, g)}
            {fewWords(g.stay.colonies)}
          </th>
          <td>{g.stay.median.day ?? 'not yet'}</td>
        </tr>
      ))}
    </Numbers>
  )

const MoneyLines = ({ look, currency }: ReviewProps) =>
  look.money.perKept === null ? null : (
    <Numbers caption={<>For each of {look.money.kept} kept</>}>
      {MONEY_ROWS.map(([what, words]) => (
        <tr>
          <th scope="row">{words}</th>
          <td>{amount(what, look.money.perKept?.[what] ?? 0, currency)}</td>
        </tr>
      ))}
    </Numbers>
  )
