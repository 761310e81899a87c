/** The strength to come: bees by day with their band, the lowest point, and what a frame of capped brood would change. */

import { addDays, type Day, daysBetween, earlier, later } from '../../days.ts'
import type { FrameSeen, StrengthForecast } from '../../forecast/index.ts'
import {
  along,
  anchor,
  below,
  betweenPath,
  DaysPlot,
  linePath,
  scaleFor,
  stretchOf,
  Wide,
} from '../../parts/index.ts'
import { chance, dayWords, frames } from '../../words/index.ts'

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
  const now = f.days.find((d) => d.day === today)
  return (
    <>
      <h3>Strength to come</h3>
      <p>
        {now === undefined
          ? ''
          : `About ${frames(now.median)} frames of bees today (${frames(now.low)} to ${frames(now.high)}). `}
        {lowestWords(p)} Chance of falling under {p.minFrames} {p.minFrames === 1 ? 'frame' : 'frames'} before{' '}
        {dayWords(f.until, today)}: <b>{chance(f.chanceUnder)}</b>.
      </p>
      {f.assumed ? (
        <p class="soft small">
          Nobody wrote down how many bees came: five frames are assumed, give or take half. Count frames of
          bees at the next look.
        </p>
      ) : null}
      <Fan {...p} />
      <GiveFrame {...p} />
      <StrengthTable {...p} />
    </>
  )
}

function lowestWords({ strength: f, today }: StrengthProps): string {
  const { day, frames: n } = f.lowest
  const gone = f.days.find((d) => d.day >= today && d.median < GONE)
  if (gone !== undefined)
    return `As things stand it dwindles to nothing by about ${dayWords(gone.day, today)}.`
  if (day > today) return `Lowest on ${dayWords(day, today)}, about ${frames(n)}.`
  if (day === today) return 'It is at its lowest now.'
  return `Its lowest point is past (${dayWords(day, today)}, about ${frames(n)}).`
}

function shown({ strength: f, today }: StrengthProps) {
  const first = f.days[0]?.day ?? today
  const last = f.days.at(-1)?.day ?? today
  const to = earlier(last, later(addDays(today, AHEAD), addDays(first, SHORTEST)))
  return f.days.slice(0, daysBetween(first, to) + 1)
}

const Fan = (p: StrengthProps) => {
  const { strength: f, today, frame } = p
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
        text={`Frames of bees by day, median and the band that holds eight times in ten. ${lowestWords(p)}`}
        words={
          <>
            <text class="least-word" x="100%" dx="-0.4em" y={`${least}%`} dy="-0.35em" text-anchor="end">
              minimum {p.minFrames}
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
                  lowest {frames(low.frames)}
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
        Frames of bees: the line is as likely too high as too low, the band holds eight times in ten
        {counted.length === 0 ? '' : ', dots are counts at visits'}. Dashed: with a frame of capped brood
        given on {dayWords(frame.on, today)}.
      </figcaption>
    </figure>
  )
}

/** Frames of bees: a smaller difference is none. */
const NOTICED = 0.1

function frameWords({ frame, strength, today }: StrengthProps): string {
  const given = frame.on === today ? 'Given today' : `Given on ${dayWords(frame.on, today)}`
  if (frame.lowest.frames - strength.lowest.frames < NOTICED)
    return `${given}, one frame of capped brood would not lift the lowest point of ${frames(strength.lowest.frames)} frames of bees.`
  return `${given}: ${frame.sentence.charAt(0).toLowerCase()}${frame.sentence.slice(1)}`
}

/** What a frame of capped brood would change, on a day to choose: works without scripts. */
const GiveFrame = (p: StrengthProps) => (
  <>
    <p>{frameWords(p)}</p>
    <form class="give-when" method="get" action={`${p.path}#foresight`}>
      <fieldset>
        <legend>A frame of capped brood given</legend>
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
              {n === 0 ? 'today' : `in ${n} days`}
            </button>
          )
        })}
      </fieldset>
    </form>
  </>
)

const StrengthTable = (p: StrengthProps) => {
  const { today, frame } = p
  const days = shown(p)
  const start = daysBetween(days[0]?.day ?? today, today) % 3
  return (
    <details class="caution">
      <summary>Strength in numbers</summary>
      <Wide label="Frames of bees by day">
        <table class="numbers">
          <thead>
            <tr>
              <th scope="col">Day</th>
              <th scope="col">Frames of bees</th>
              <th scope="col">Eight times in ten</th>
              <th scope="col">Brood laid here, frames</th>
              <th scope="col">Under {p.minFrames}</th>
              <th scope="col">With the frame</th>
            </tr>
          </thead>
          <tbody>
            {days.flatMap((d, i) =>
              i % 3 === start
                ? [
                    <tr class={d.day === today ? 'row-now' : undefined}>
                      <th scope="row">{d.day === today ? 'today' : dayWords(d.day, today)}</th>
                      <td>{frames(d.median)}</td>
                      <td>
                        {frames(d.low)} to {frames(d.high)}
                      </td>
                      <td>{frames(d.brood)}</td>
                      <td>{chance(d.under)}</td>
                      <td>{frames(frame.days[i]?.median ?? d.median)}</td>
                    </tr>,
                  ]
                : [],
            )}
          </tbody>
        </table>
      </Wide>
      <p class="fine">
        Bees are counted by the day they emerge and die by season; a queen lays as the odds say; bees can care
        for about two cells of open brood each. Brood survival 94, 92 and 98 % by stage (Fukuda &amp; Sakagami
        1968); about 2,300 bees a frame. Counts at visits draw the forecast to themselves.
      </p>
    </details>
  )
}
