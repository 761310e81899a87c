/** Third step: what will be made, and what is wrong in which line. Nothing is written before this page says so. */

import { daysBetween } from '../../days.ts'
import { sentenceOf } from '../../forms/index.ts'
import { REMOVAL_TYPES } from '../../journal/index.ts'
import { dayWords, temperature } from '../../words/index.ts'
import type { Converted, ConvertedRow } from './convert.ts'
import type { LineProblem } from './csv-table.ts'
import { Go, StepForm, StepPage, type StepProps } from './kept.tsx'
import type { Mapping } from './mapping.ts'
import { valueWords } from './page-words.ts'

export interface PreviewProps extends StepProps {
  mapping: Mapping
  /** Rows that can be taken in. */
  good: ConvertedRow[]
  problems: LineProblem[]
  retagged: Converted['retagged']
  ownTypes: readonly string[]
  /** Yards of the book. */
  yards: readonly string[]
  /** It was tried, and this is why nothing was written. */
  refused: boolean
}

const SHOWN_ROWS = 8
const SHOWN_PROBLEMS = 50
/** Longer in a holding yard than this without an outcome is more likely a gap in the sheet (our choice). */
const LONG_STAY = 90

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
          they will count as still in the yard. {long.length === 1 ? 'Line' : 'Lines'}{' '}
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
        <li>No column tells of the queen: every queen counts as not seen.</li>
      ) : null}
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
      <table class="numbers problems-by-line">
        <thead>
          <tr>
            <th scope="col">Line</th>
            <th scope="col">What is wrong</th>
          </tr>
        </thead>
        <tbody>
          {problems.slice(0, SHOWN_PROBLEMS).map((x) => (
            <tr>
              <th scope="row">{x.line}</th>
              <td>{sentenceOf(x.field, x.message)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {problems.length > SHOWN_PROBLEMS ? <p>And {problems.length - SHOWN_PROBLEMS} more.</p> : null}
    </section>
  )

const FirstRows = (p: PreviewProps) => {
  const { today, units } = p.frame
  const facts = (r: ConvertedRow): string =>
    [
      r.removed_on === undefined || r.removed_on === r.intake_on
        ? ''
        : `removed ${dayWords(r.removed_on, today)}`,
      r.outdoor_c === undefined ? '' : temperature(r.outdoor_c, units),
      r.hours_open_to_boxed === undefined ? '' : `${r.hours_open_to_boxed} h`,
      r.method === undefined ? '' : valueWords.method(r.method),
      frames(r),
      r.removedBy === undefined ? '' : `by ${r.removedBy}`,
      r.stand === undefined ? '' : `stand ${r.stand}`,
      r.site === undefined ? '' : 'customer kept private',
      r.note ?? '',
    ]
      .filter(Boolean)
      .join(', ')
  return (
    <section class="section">
      <h2>The first lines, as they were understood</h2>
      <section class="table-scroll" tabindex={0} aria-label="The first lines">
        <table class="numbers first-rows">
          <thead>
            <tr>
              <th scope="col">Line</th>
              <th scope="col">Tag</th>
              <th scope="col">From</th>
              <th scope="col">Intake</th>
              <th scope="col">Queen</th>
              <th scope="col">Yard</th>
              <th scope="col">Became</th>
              <th scope="col">Besides</th>
            </tr>
          </thead>
          <tbody>
            {p.good.slice(0, SHOWN_ROWS).map((r) => (
              <tr>
                <td>{r.line}</td>
                <th scope="row" class="nowrap">
                  {r.tag}
                </th>
                <td>{valueWords.removal_type(r.removal_type)}</td>
                <td>{dayWords(r.intake_on, today)}</td>
                <td>{valueWords.queen_at_intake(r.queen_at_intake)}</td>
                <td>{r.yard}</td>
                <td>{becameOf(r, today)}</td>
                <td class="besides">{facts(r)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </section>
  )
}

function frames(r: ConvertedRow): string {
  const said = [
    [r.egg_frames, 'eggs'],
    [r.open_frames, 'open brood'],
    [r.capped_frames, 'capped brood'],
  ].flatMap(([n, what]) => (n === undefined ? [] : [`${n} ${what}`]))
  return said.length === 0 ? '' : `frames: ${said.join(', ')}`
}

function becameOf(r: ConvertedRow, today: string): string {
  if (r.outcome === undefined || r.outcome_on === undefined) return 'still here'
  const into = r.into === undefined ? '' : ` ${r.into}`
  return `${valueWords.outcome(r.outcome)}${into}, ${dayWords(r.outcome_on, today)}`
}
