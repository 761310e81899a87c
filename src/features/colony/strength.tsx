/** The strength to come: bees by day with their band, the lowest point, and what a frame of capped brood would change. */

import { addDays, type Day, daysBetween, earlier, later } from '../../days.ts'
import type { FrameSeen, StrengthForecast } from '../../forecast/index.ts'
import { useWords } from '../../forms/index.ts'
import {
  along,
  anchor,
  below,
  betweenPath,
  DaysPlot,
  linePath,
  Numbers,
  scaleFor,
  stretchOf,
  Wide,
} from '../../parts/index.ts'
import { chance, frames, type Words } from '../../words/index.ts'

interface StrengthProps {
  strength: StrengthForecast
  frame: FrameSeen
  minFrames: number
  today: Day
  path: string
}

const AHEAD = 30
const SHORTEST = 60
/** Fewer frames of bees than this are no colony any more. Judgement. */
const GONE = 0.5
/** Days from now on which a frame may be given. */
const GIVE_IN = [0, 3, 7, 10, 14, 21]

export const Strength = (p: StrengthProps) => {
  const { strength: f, today } = p
  const words = useWords()
  const said = words.likely.strength
  const now = f.days.find((d) => d.day === today)
  return (
    <>
      <h3>{said.title}</h3>
      <p>
        {now === undefined ? '' : `${said.now(frames(now.median), frames(now.low), frames(now.high))} `}
        {lowestWords(p, words)} {said.under(p.minFrames, words.dates.day(f.until, today))}{' '}
        <b>{chance(f.chanceUnder, words)}</b>.
      </p>
      {f.assumed ? <p class="soft small">{said.assumed}</p> : null}
      <Fan {...p} />
      <GiveFrame {...p} />
      <StrengthTable {...p} />
    </>
  )
}

function lowestWords({ strength: f, today }: StrengthProps, w: Words): string {
  const said = w.likely.strength
  const { day, frames: n } = f.lowest
  const gone = f.days.find((d) => d.day >= today && d.median < GONE)
  if (gone !== undefined) return said.dwindles(w.dates.day(gone.day, today))
  if (day > today) return said.lowestOn(w.dates.day(day, today), frames(n))
  if (day === today) return said.lowestNow
  return said.lowestPast(w.dates.day(day, today), frames(n))
}

function shown({ strength: f, today }: StrengthProps) {
  const first = f.days[0]?.day ?? today
  const last = f.days.at(-1)?.day ?? today
  const to = earlier(last, later(addDays(today, AHEAD), addDays(first, SHORTEST)))
  return f.days.slice(0, daysBetween(first, to) + 1)
}

const Fan = (p: StrengthProps) => {
  const { strength: f, today, frame } = p
  const words = useWords()
  const said = words.likely.strength
  const days = shown(p)
  const stretch = stretchOf(days[0]?.day ?? today, days.at(-1)?.day ?? today)
  const counted = f.counted.filter((c) => c.day >= stretch.from && c.day <= stretch.to)
  const { top, steps } = scaleFor(
    Math.max(p.minFrames * 1.4, ...days.map((d) => d.high), ...counted.map((c) => c.frames)),
  )
  const after = frame.days.slice(0, days.length).map((d) => d.median)
  const low = f.lowest
  const lowAt = along(stretch, low.day)
  const least = below(p.minFrames, top)
  return (
    <figure class="fan">
      <DaysPlot
        stretch={stretch}
        scale={{ top, steps, label: (v) => String(v) }}
        today={today}
        text={said.chart(lowestWords(p, words))}
        words={
          <>
            <text class="least-word" x="100%" dx="-0.4em" y={`${least}%`} dy="-0.35em" text-anchor="end">
              {said.minimum(p.minFrames)}
            </text>
            {counted.map((c) => (
              <circle
                class="counted"
                cx={`${along(stretch, c.day)}%`}
                cy={`${below(c.frames, top)}%`}
                r="5"
              />
            ))}
            {low.day <= today || low.day > stretch.to ? null : (
              <>
                <svg aria-hidden="true" x={`${lowAt}%`} y={`${below(low.frames, top)}%`} overflow="visible">
                  <path class="lowest" d="M0 4L-6 14H6Z" />
                </svg>
                <text
                  class="lowest-word"
                  x={`${lowAt}%`}
                  y={`${below(low.frames, top)}%`}
                  dy="2em"
                  text-anchor={anchor(lowAt)}
                >
                  {said.lowest(frames(low.frames))}
                </text>
              </>
            )}
          </>
        }
      >
        <path
          class="fan-band"
          d={betweenPath(
            days.map((d) => d.low),
            days.map((d) => d.high),
            top,
          )}
        />
        <path class="fan-least" d={`M0 ${least * 10}H1000`} />
        <path class="fan-after" d={linePath(after, top)} />
        <path
          class="fan-median"
          d={linePath(
            days.map((d) => d.median),
            top,
          )}
        />
      </DaysPlot>
      <figcaption class="fine">
        {said.caption(counted.length > 0, words.dates.day(frame.on, today))}
      </figcaption>
    </figure>
  )
}

/** Frames of bees: a smaller difference is none. */
const NOTICED = 0.1

/** Whole per cents: two of them are held against each other. */
const whole = (p: number): string => `${Math.round(p * 100)} %`

function frameWords({ frame, strength, minFrames, today }: StrengthProps, w: Words): string {
  const said = w.likely.strength
  const day = frame.on === today ? null : w.dates.day(frame.on, today)
  const from = frames(strength.lowest.frames)
  if (frame.lowest.frames - strength.lowest.frames < NOTICED) return said.noLift(day, from)
  return said.lifts(day, {
    from,
    to: frames(frame.lowest.frames),
    minimum: minFrames,
    chance: whole(strength.chanceUnder),
    chanceThen: whole(frame.chanceUnder),
  })
}

/** What a frame of capped brood would change, on a day to choose: works without scripts. */
const GiveFrame = (p: StrengthProps) => {
  const words = useWords()
  const said = words.likely.strength
  return (
    <>
      <p>{frameWords(p, words)}</p>
      <form class="give-when" method="get" action={`${p.path}#foresight`}>
        <fieldset>
          <legend>{said.givenWhen}</legend>
          {GIVE_IN.map((n) => {
            const on = addDays(p.today, n)
            return (
              <button
                class="button button-plain"
                type="submit"
                name="frame"
                value={on}
                aria-pressed={on === p.frame.on ? 'true' : 'false'}
              >
                {said.inDays(n)}
              </button>
            )
          })}
        </fieldset>
      </form>
    </>
  )
}

const StrengthTable = (p: StrengthProps) => {
  const { today, frame } = p
  const words = useWords()
  const said = words.likely.strength
  const days = shown(p)
  const start = daysBetween(days[0]?.day ?? today, today) % 3
  return (
    <details class="caution">
      <summary>{said.numbers}</summary>
      <Wide label={said.byDay}>
        <Numbers
          heads={[
            words.likely.day,
            said.bees,
            said.eightInTen,
            said.brood,
            said.underN(p.minFrames),
            said.withFrame,
          ]}
        >
          {days.flatMap((d, i) =>
            i % 3 === start
              ? [
                  <tr class={d.day === today ? 'row-now' : undefined}>
                    <th scope="row">
                      {d.day === today ? words.likely.today : words.dates.day(d.day, today)}
                    </th>
                    <td>{frames(d.median)}</td>
                    <td>{said.range(frames(d.low), frames(d.high))}</td>
                    <td>{frames(d.brood)}</td>
                    <td>{chance(d.under, words)}</td>
                    <td>{frames(frame.days[i]?.median ?? d.median)}</td>
                  </tr>,
                ]
              : [],
          )}
        </Numbers>
      </Wide>
      <p class="fine">{said.sources}</p>
    </details>
  )
}
