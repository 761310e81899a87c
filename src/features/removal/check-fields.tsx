/** Before the cut: heat, depth, how the bees come off, and what somebody taps with their own eyes on it. */

import type { Child } from 'hono/jsx'
import { Choices, Fields, type FormState, idOf, many, one } from '../../forms/index.ts'
import type { Sheet } from '../../records/index.ts'
import { unitOf } from '../../words/index.ts'
import { waysOut } from './as-known.ts'
import { DECISION_FIELDS, HANGS, HEARD_FIELDS, PART_FIELDS, TEMPERED } from './fields.ts'
import { Folded } from './folded.tsx'
import { forecastOver } from './forecast.ts'
import { FORECAST_ROWS } from './form.ts'
import { GRAVE_WORDS, TICKS } from './hazard-words.ts'
import { askedSame, cuts, sameOne } from './hazards.ts'
import { TICKED } from './item.ts'
import { againField, isHere } from './looked-again.ts'
import { notesOf, readNotes, readsNotes } from './notes-read.ts'
import {
  notThere,
  type OtherSheet,
  readOf,
  readThere,
  sharing,
  stoppedThere,
  type Told,
} from './other-sheets.ts'
import type { PartFieldsProps } from './part-fields.tsx'
import { AS_TOLD, isAsked } from './people.ts'
import { factsOf } from './sheet-facts.ts'
import { isShort } from './stage.ts'
import { andSaid, notHere, writtenOn } from './written.ts'

export const CheckFields = (p: PartFieldsProps) => {
  const cut = cuts(p.sheet)
  return (
    <>
      <Fields {...p} of={PART_FIELDS.check} show={[cut ? ['hottestC', 'cutMm'] : 'hottestC']} />
      {cut ? <Fields {...p} of={PART_FIELDS.check} show={['vacuum']} /> : null}
      <input type="hidden" name="shownOn" value={p.frame.today} />
      <input type="hidden" name="shownAt" value={one(p.form.typed, 'shownAt')} />
      {isShort(p.sheet) ? (
        <Fields {...p} of={{ ...HANGS, ...TEMPERED }} show={['where', 'temper', 'africanized']} />
      ) : null}
      <Fields {...p} of={PART_FIELDS.check} show={['wires']} />
      <LookedAgain {...p} />
      <Checklist {...p} />
      <HeardSince {...p} />
      <Folded
        legend="A reason; heat by the hour"
        form={p.form}
        fields={['reason', ...HOURS]}
        open={forecastOver(p.sheet, p.frame.today, one(p.form.typed, 'shownAt')) !== null}
      >
        <Fields {...p} of={DECISION_FIELDS} show={['reason']} />
        <Fields {...p} of={PART_FIELDS.check} show={[['on', 'from', 'until']]} />
        <Forecast {...p} />
      </Folded>
    </>
  )
}

/** A phone that has heard nothing for hours: what others found since is read to it, or looked for. */
const HeardSince = ({ heard, ...p }: PartFieldsProps) =>
  heard?.deaf !== true ? null : (
    <fieldset class="field">
      <legend>For “go”: this phone has heard nothing since {heard.words}</legend>
      <p class="hint">What others found since is not here. {waysOut(heard)}.</p>
      {heard.others.length === 0 ? null : (
        <Fields
          {...p}
          prefix="heard."
          of={HEARD_FIELDS}
          show={['by', 'at', 'news']}
          with={{ by: { choices: heard.others.map((name) => ({ value: name, label: name })) } }}
        />
      )}
      {heard.mayLook ? (
        <div class="choices checklist">
          <Tick
            form={p.form}
            name="heard.looked"
            value="yes"
            what="Nobody read it: I have looked myself, now"
          >
            {stillSo(p)} All of it is still so, and nobody else was here since {heard.words}.
          </Tick>
        </div>
      ) : null}
    </fieldset>
  )

/** What is looked at again, by name: one tap is of what stands here, and of nothing else. */
const stillSo = ({ sheet, frame, currency }: Pick<PartFieldsProps, 'sheet' | 'frame' | 'currency'>): string =>
  (['site', 'job'] as const)
    .flatMap((part) => factsOf(part, sheet, { units: frame.units, today: frame.today, currency }))
    .filter(([label]) => SEEN.includes(label))
    .map(([label, value]) => `${label}: ${value}.`)
    .join(' ')
const SEEN: readonly string[] = ['Behind it', 'Hazards', 'Wires near', 'Temper', 'How high', 'Who is about']

export const HOURS = Array.from({ length: FORECAST_ROWS }, (_, i) => `hours.${i}.c`)

interface TickProps {
  form: FormState
  name: string
  value: string
  what: string
  children?: Child
}

/** One box, its name and what it takes. */
const Tick = ({ form, name, value, what, children }: TickProps) => (
  <label class="tap">
    <input type="checkbox" name={name} value={value} checked={many(form.typed, name).includes(value)} />
    <span>
      <b>{what}</b>
      <small>{children}</small>
    </span>
  </label>
)

/** Only what this job asks for, each with what it takes to be so. */
const Checklist = ({ form, sheet, others, frame: { today } }: PartFieldsProps) => {
  const own = readsNotes(sheet, today) ? notesOf(sheet, today) : []
  const notes = [
    ...(own.length === 0 ? [] : [[readNotes(sheet, today), 'all it says of danger is tapped', own] as const]),
    ...readOf(sheet, others, today).map(
      (o) => [readThere(o), `the sheet of ${o.name}, same ${o.shares}`, o.notes] as const,
    ),
  ]
  return (
    <fieldset class="field choices checklist" id={idOf('done')}>
      <legend>Tap what you see is so, now</legend>
      {TICKED.filter((id) => isAsked(id, sheet)).map((id) => (
        <Tick form={form} name="done" value={id} what={TICKS[id]}>
          {AS_TOLD[id]}
        </Tick>
      ))}
      {notes.map(([id, what, texts]) => (
        <Tick form={form} name="done" value={id} what={`Read: ${what}`}>
          {texts.map((n) => `“${n}”`).join(' ')}
        </Tick>
      ))}
    </fieldset>
  )
}

/** What is looked for again: each with two answers, never a box among those that one wants ticked. */
const LookedAgain = ({ form, sheet: saved, others }: PartFieldsProps) => {
  const ticked = many(form.typed, 'done')
  return (
    <>
      {lookedAgain(andSaid(saved, one(form.typed, 'reason')), others).map(
        ({ id, asks, why, not = 'Looked: not here', here = 'It is here' }) => (
          <Choices
            form={form}
            name={againField(id)}
            label={asks}
            hint={why}
            across={2}
            choices={[
              { value: 'not', label: not },
              { value: 'here', label: here },
            ]}
            standing={ticked.includes(id) ? 'not' : ticked.includes(isHere(id)) ? 'here' : ''}
          />
        ),
      )}
    </>
  )
}

interface Again {
  id: string
  asks: string
  why: string
  not?: string
  here?: string
}

/** People are asked for, bees and a building are so or not, and a pipe is looked for. */
function asksOf(what: Told): Pick<Again, 'asks' | 'not' | 'here'> {
  const words = GRAVE_WORDS[what]
  if (what === 'allergic' || what === 'children')
    return { asks: `${words}: today too?`, not: 'Asked: nobody', here: 'Yes' }
  return what === 'fierce' || what === 'sprayed' || what === 'old'
    ? { asks: `${words}: is it so here?`, not: 'Asked: not so', here: 'It is so' }
    : { asks: `${words}: is it here?` }
}

const SO_HERE = { not: 'Looked: not so', here: 'It is so' }
const OF_ANOTHER = { not: 'Another house', here: 'The same house' }

/** The first of what a sheet says that is perhaps of this house: ' It says: gas pipe.' */
const quoted = ({ shares, what: [first], notes: [note] }: OtherSheet): string =>
  shares !== 'perhaps'
    ? ''
    : ` It says: ${first === undefined ? `“${note}”` : GRAVE_WORDS[first].toLowerCase()}.`

/** What is looked for again for what somebody wrote, or another sheet says. */
function lookedAgain(sheet: Sheet, others: readonly OtherSheet[]): Again[] {
  return [
    ...askedSame(sheet).map((c) => ({
      id: sameOne(c.hazard),
      asks: `${GRAVE_WORDS[c.hazard]}: the same one?`,
      why: `More was written since ${c.who} cleared it. Another one is cleared by itself.`,
      not: 'The same',
      here: 'Another one',
    })),
    ...writtenOn(sheet).map(({ what, was }) => ({
      id: notHere(what),
      ...asksOf(what),
      why: `In the words of this sheet${was}.`,
    })),
    ...others.flatMap((o) => [
      ...(o.shares === 'perhaps' ? [] : o.what).map((g) => ({
        id: notThere(g, o),
        ...asksOf(g),
        why: `On another sheet ${sharing(o)}: ${o.name}.`,
      })),
      ...(o.asks === undefined
        ? []
        : [
            {
              id: stoppedThere(o),
              ...(o.shares === 'perhaps' ? OF_ANOTHER : SO_HERE),
              asks: o.shares === 'perhaps' ? 'Is it the same house?' : `“${o.asks}”: is that so here?`,
              why: `Another sheet ${sharing(o)}${o.stopped === undefined ? '' : ' was stopped'}: ${o.name}.${quoted(o)}`,
            },
          ]),
    ]),
  ]
}

/** Hours and temperatures side by side; a row without a temperature counts for nothing. */
const Forecast = ({ form, frame }: PartFieldsProps) => {
  const { symbol } = unitOf(frame.units, 'temperature')
  const bad = (name: string) => form.problems.find((p) => p.field === name)?.message
  return (
    <div class="field">
      <p class="forecast-title" id="forecast-label">
        Time, then {symbol}
      </p>
      <ul class="forecast" aria-labelledby="forecast-label">
        {Array.from({ length: FORECAST_ROWS }, (_, i) => {
          const [at, c] = [`hours.${i}.at`, `hours.${i}.c`]
          const problem = bad(c) ?? bad(at)
          return (
            <li class={problem === undefined ? '' : 'has-problem'}>
              <input
                id={idOf(at)}
                name={at}
                type="text"
                inputmode="numeric"
                maxlength={5}
                autocomplete="off"
                class="forecast-hour"
                aria-label={`Hour ${i + 1}`}
                value={one(form.typed, at)}
              />
              <input
                id={idOf(c)}
                name={c}
                type="text"
                inputmode="decimal"
                maxlength={6}
                autocomplete="off"
                aria-label={`Temperature of hour ${i + 1}, ${symbol}`}
                value={one(form.typed, c)}
              />
              {problem === undefined ? null : <span class="problem">{problem}</span>}
            </li>
          )
        })}
      </ul>
    </div>
  )
}
