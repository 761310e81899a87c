/** Third step: what will be made, and what is wrong in which line. Nothing is written before this page says so. */

import { daysBetween } from '../../days.ts'
import { sentenceOf } from '../../forms/index.ts'
import { REMOVAL_TYPES } from '../../journal/index.ts'
import { Numbers } from '../../parts/index.ts'
import { dayWords } from '../../words/index.ts'
import type { Converted, ConvertedRow } from './convert.ts'
import type { LineProblem } from './csv-table.ts'
import { FirstRows } from './first-rows.tsx'
import { Go, StepForm, StepPage, type StepProps } from './kept.tsx'
import type { Mapping } from './mapping.ts'
import { APART } from './names-found.ts'
import { valueWords } from './page-words.ts'
import { LONG_STAY } from './words.ts'

export interface PreviewProps extends StepProps {
  mapping: Mapping
  /** Rows that can be taken in. */
  good: ConvertedRow[]
  problems: LineProblem[]
  retagged: Converted['retagged']
  twoWays: Converted['twoWays']
  ownTypes: readonly string[]
  /** Yards of the book. */
  yards: readonly string[]
  /** It was tried, and this is why nothing was written. */
  refused: boolean
}

const SHOWN_PROBLEMS = 50

const colonies = (n: number): string => (n === 1 ? '1 colony' : `${n} colonies`)
const lines = (n: number): string => (n === 1 ? '1 line' : `${n} lines`)

export const PreviewPage = (p: PreviewProps) => {
  const bad = new Set(p.problems.map((x) => x.line)).size
  return (
    <StepPage of={p} step="Preview" title={headline(p.good.length, bad)}>
      {p.refused ? (
        <div class="notice notice-late" role="alert">
          <p>
            <b>Nothing was written.</b> The book has changed since the preview; this is how it stands now.
          </p>
        </div>
      ) : null}
      {p.good.length === 0 ? null : <WhatIsMade {...p} />}
      <Problems {...p} bad={bad} />
      <StepForm of={p} shown={() => false}>
        <div class="save">
          {p.good.length === 0 ? null : bad === 0 ? (
            <Go to="take-all" main>
              Take in {colonies(p.good.length)}
            </Go>
          ) : (
            <Go to="take-good" main>
              Take in {colonies(p.good.length)}, leave out {lines(bad)}
            </Go>
          )}
          <Go to="words">Back to the words</Go>
          <Go to="columns">Back to the columns</Go>
        </div>
      </StepForm>
      {p.good.length === 0 ? null : <FirstRows {...p} />}
    </StepPage>
  )
}

const headline = (good: number, bad: number): string =>
  good === 0
    ? 'Nothing can be taken in yet'
    : bad === 0
      ? `${colonies(good)} can be taken in`
      : `${colonies(good)} can be taken in, ${lines(bad)} cannot`

const WhatIsMade = (p: PreviewProps) => {
  const { today } = p.frame
  const days = p.good.map((r) => r.intake_on).sort()
  const here = p.good.filter((r) => r.outcome === undefined)
  const long = here.filter((r) => daysBetween(r.intake_on, today) > LONG_STAY)
  const newTypes = [...new Set(p.good.map((r) => r.removal_type))].filter(
    (t) => !(REMOVAL_TYPES as readonly string[]).includes(t) && !p.ownTypes.includes(t),
  )
  const newYards = [...new Set(p.good.map((r) => r.yard ?? p.mapping.yard))].filter(
    (y) => !p.yards.includes(y),
  )
  const undated = p.good.filter((r) => r.outcome !== undefined && r.outcome_on === undefined).length
  const outcomes = [...new Set(p.good.flatMap((r) => r.outcome ?? []))]
  return (
    <ul class="sentences">
      <li>
        Intakes from {dayWords(days[0] ?? today, today)} to {dayWords(days.at(-1) ?? today, today)}.
      </li>
      <li>
        {[
          ...outcomes.map(
            (o) => `${p.good.filter((r) => r.outcome === o).length} ${valueWords.outcome(o).toLowerCase()}`,
          ),
          `${here.length} still in the yard`,
        ].join(', ')}
        .{here.length > 0 ? ' Those still in the yard get their plans and checks at once.' : ''}
      </li>
      {long.length === 0 ? null : (
        <li>
          <b>
            {colonies(long.length)} of them came more than {LONG_STAY} days ago and the sheet does not say
            what became of them:
          </b>{' '}
          as you said, they will count as still in the yard. {long.length === 1 ? 'Line' : 'Lines'}{' '}
          {some(long.map((r) => r.line))}.
        </li>
      )}
      {newTypes.length === 0 ? null : <li>New removal types: {newTypes.join(', ')}.</li>}
      {newYards.length === 0 ? null : (
        <li>
          {newYards.length === 1 ? 'A new yard' : 'New yards'}: {newYards.join(', ')}.
          {p.yards.length === 0 ? '' : ` The book has ${p.yards.join(', ')}.`}
        </li>
      )}
      {p.mapping.words.queen_at_intake === undefined ? (
        <li>No column tells of the queen: she counts as not written down.</li>
      ) : null}
      {undated === 0 ? null : (
        <li>
          {colonies(undated)} left on a day that is not known: counted in what became of them, and in no
          curve.
        </li>
      )}
      {p.mapping.names
        .filter((n) => n.taken !== APART)
        .map((n) => (
          <li>
            {[n.keep, ...n.others].filter((name) => name !== n.taken).join(', ')} and {n.taken} are taken as
            one: {n.taken}.
          </li>
        ))}
      {p.twoWays.length === 0 ? null : <TwoWays {...p} />}
      {p.retagged.length === 0 ? null : (
        <li>
          Tags changed, because these signs cannot be in one:{' '}
          {p.retagged
            .slice(0, 10)
            .map((r) => `${r.from} → ${r.to}`)
            .join(', ')}
          {p.retagged.length > 10 ? ` and ${p.retagged.length - 10} more` : ''}.
        </li>
      )}
    </ul>
  )
}

/** Dates that mean another day with the other order, and nothing in the sheet proves which. */
const TwoWays = ({ twoWays, frame, mapping }: PreviewProps) => (
  <li>
    <b>{twoWays.length === 1 ? 'One date' : `${twoWays.length} dates`} could be read the other way round.</b>{' '}
    They were taken with the {mapping.order === 'month-first' ? 'month' : 'day'} first:{' '}
    {twoWays
      .slice(0, 5)
      .map(
        (d) =>
          `line ${d.line}, ${d.field} ${d.text}: ${dayWords(d.taken, frame.today)}, not ${dayWords(d.other, frame.today)}`,
      )
      .join('; ')}
    {twoWays.length > 5 ? `; and ${twoWays.length - 5} more` : ''}.
  </li>
)

const some = (numbers: readonly number[]): string =>
  numbers.length <= 12
    ? numbers.join(', ')
    : `${numbers.slice(0, 12).join(', ')} and ${numbers.length - 12} more`

const Problems = ({ problems, bad }: PreviewProps & { bad: number }) =>
  problems.length === 0 ? null : (
    <section class="section" id="wrong">
      <h2>What is wrong in {lines(bad)}</h2>
      <p>
        Mend them in your sheet and start again, or leave these lines out. A column that only sometimes holds
        a number or a date can go into the note instead.
      </p>
      <Numbers class="problems-by-line" heads={['Line', 'What is wrong']}>
        {problems.slice(0, SHOWN_PROBLEMS).map((x) => (
          <tr>
            <th scope="row">{x.line}</th>
            <td>{sentenceOf(x.field, x.message)}</td>
          </tr>
        ))}
      </Numbers>
      {problems.length > SHOWN_PROBLEMS ? <p>And {problems.length - SHOWN_PROBLEMS} more.</p> : null}
    </section>
  )
