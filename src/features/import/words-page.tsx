/** Second step: how dates and degrees are meant, and what the sheet's own words stand for. */

import { inWordsWithYear } from '../../days.ts'
import type { Questions } from './ask.ts'
import { type DateOrder, dateTyped } from './dates.ts'
import { meaningField, sameField } from './form.ts'
import { Go, StepForm, StepPage, type StepProps, Wrong } from './kept.tsx'
import type { Mapping, WordFound } from './mapping.ts'
import { APART, type Named, type NameFound } from './names-found.ts'
import { meaningsOf, WORDED_TITLES } from './page-words.ts'
import { LONG_BLANK, LONG_STAY, type Worded } from './words.ts'

interface WordsProps extends StepProps {
  mapping: Mapping
  asked: Questions
  ownTypes: readonly string[]
  yards: string[]
  /** What was wrong with the answers. */
  problems: string[]
}

const SHOWN = /^(order|heat|yard|removalType|tagPrefix)$|^word-|^same-/

export const WordsPage = (p: WordsProps) => (
  <StepPage of={p} step="Words and units" title="How is it meant?">
    <Wrong heading="This is needed first" problems={p.problems} />
    <StepForm of={p} shown={(name) => SHOWN.test(name)}>
      {p.asked.order ? <Order {...p} /> : <OrderFound {...p} />}
      {p.asked.heat ? <Heat {...p} /> : null}
      {p.asked.words.map((column) => (
        <Words of={p} column={column} words={p.mapping.words[column] ?? []} />
      ))}
      {p.asked.names ? <Names names={p.mapping.names} /> : null}
      <Rest {...p} />
      <div class="save">
        <Go to="preview" main>
          Next: preview
        </Go>
        <Go to="columns">Back to the columns</Go>
      </div>
    </StepForm>
  </StepPage>
)

/** Which of two readings of a date is meant, on a date of the sheet itself. */
const Order = ({ mapping }: WordsProps) => {
  const { ambiguous, mixed, twoWays } = mapping.found
  const example = (order: DateOrder): string => {
    const day = ambiguous === null ? null : dateTyped(ambiguous.text, order)
    return day === null || ambiguous === null
      ? ''
      : `${ambiguous.text} in line ${ambiguous.line} is ${inWordsWithYear(day)}`
  }
  return (
    <fieldset class="field choices" id="f-order">
      <legend>Which comes first in the dates?</legend>
      {mixed ? (
        <p class="problem">
          Some dates have the day first and some the month: lines of the other kind will be wrong.
        </p>
      ) : (
        <p class="hint">
          {twoWays === 1 ? 'One date can' : `${twoWays} dates can`} be read two ways, and none in this sheet
          has a number above 12 that would prove which.
        </p>
      )}
      <div class="taps taps-2">
        {(['day-first', 'month-first'] as const).map((order) => (
          <label class="tap">
            <input type="radio" name="order" value={order} checked={mapping.order === order} />
            <span>
              {order === 'day-first' ? 'The day' : 'The month'}
              <small>{example(order)}</small>
            </span>
          </label>
        ))}
      </div>
    </fieldset>
  )
}

/** Nothing to ask: a date proves it. */
const OrderFound = ({ mapping: { found } }: WordsProps) =>
  found.proof === null ? null : (
    <p class="small soft">
      Dates are read with the {found.order === 'day-first' ? 'day' : 'month'} first: “{found.proof.text}” in
      line {found.proof.line} can be nothing else.{' '}
      {found.twoWays === 0
        ? ''
        : `${found.twoWays} ${found.twoWays === 1 ? 'other' : 'others'} could be read two ways and ${found.twoWays === 1 ? 'follows' : 'follow'} it, such as “${found.ambiguous?.text}” in line ${found.ambiguous?.line}.`}
    </p>
  )

const Heat = ({ mapping, frame }: WordsProps) => (
  <fieldset class="field choices" id="f-heat">
    <legend>Temperatures are in</legend>
    <div class="taps taps-2">
      {(['F', 'C'] as const).map((unit) => (
        <label class="tap">
          <input
            type="radio"
            name="heat"
            value={unit}
            checked={(mapping.heat ?? frame.units.temperature) === unit}
          />
          <span>°{unit}</span>
        </label>
      ))}
    </div>
  </fieldset>
)

const Words = ({ of: p, column, words }: { of: WordsProps; column: Worded; words: WordFound[] }) => (
  <fieldset class="group words">
    <legend>{WORDED_TITLES[column]}</legend>
    <ul class="columns">
      {words.map((w, i) => (
        <li class={w.meaning === null ? 'column has-problem' : 'column'}>
          <label for={`f-${column}-${i}`}>
            {w.word === '' ? <i>{emptyWords(column, w.key)}</i> : <>“{w.word}”</>}{' '}
            <span class="soft small">
              {w.rows} {w.rows === 1 ? 'line' : 'lines'}
            </span>
          </label>
          <select id={`f-${column}-${i}`} name={meaningField(column, w.key)}>
            {w.meaning === null ? <option value="">choose what it stands for</option> : null}
            {meaningsOf(column, w, p.ownTypes).map((c) => (
              <option value={c.value} selected={c.value === w.meaning}>
                {c.label}
              </option>
            ))}
          </select>
        </li>
      ))}
    </ul>
  </fieldset>
)

const emptyWords = (column: Worded, key: string): string =>
  column !== 'outcome'
    ? 'nothing written'
    : key === LONG_BLANK
      ? `nothing written, and it came more than ${LONG_STAY} days ago`
      : 'no word, but a day it left'

const NAMED_TITLES: Record<Named, string> = { yard: 'Yards', removed_by: 'People' }

/** Names written in several ways: one, or each by itself. */
const Names = ({ names }: { names: readonly NameFound[] }) => (
  <fieldset class="group words">
    <legend>Names written in several ways</legend>
    <ul class="columns">
      {names.map((n) => (
        <li class="column">
          <label for={`f-${sameField(n.column, n.key)}`}>
            {NAMED_TITLES[n.column]}: {[n.keep, ...n.others].map((name) => `“${name}”`).join(', ')}
          </label>
          <select id={`f-${sameField(n.column, n.key)}`} name={sameField(n.column, n.key)}>
            {[n.keep, ...n.others].map((name) => (
              <option value={name} selected={name === n.taken}>
                all are “{name}”
              </option>
            ))}
            <option value={APART} selected={n.taken === APART}>
              keep them apart
            </option>
          </select>
        </li>
      ))}
    </ul>
  </fieldset>
)

/** What the sheet does not tell at all. */
const Rest = ({ asked, mapping, yards }: WordsProps) =>
  asked.yard || asked.removalType || asked.tagPrefix ? (
    <fieldset class="group">
      <legend>What the sheet does not say</legend>
      {asked.removalType ? (
        <Text name="removalType" label="Removal type of every line" value={mapping.removalType} />
      ) : null}
      {asked.yard ? (
        <Text name="yard" label="Yard of lines that name none" value={mapping.yard} list={yards} />
      ) : null}
      {asked.tagPrefix ? (
        <Text
          name="tagPrefix"
          label="Tags begin with"
          hint="No column holds tags: each colony gets this and the number of its line."
          value={mapping.tagPrefix}
        />
      ) : null}
    </fieldset>
  ) : null

const Text = (p: { name: string; label: string; value: string; hint?: string; list?: string[] }) => (
  <div class="field">
    <label for={`f-${p.name}`}>{p.label}</label>
    {p.hint === undefined ? null : <p class="hint">{p.hint}</p>}
    <input
      id={`f-${p.name}`}
      type="text"
      name={p.name}
      value={p.value}
      class="wide"
      maxlength={80}
      autocomplete="off"
      list={p.list === undefined ? undefined : `f-${p.name}-list`}
    />
    {p.list === undefined ? null : (
      <datalist id={`f-${p.name}-list`}>
        {p.list.map((value) => (
          <option value={value} />
        ))}
      </datalist>
    )}
  </div>
)
