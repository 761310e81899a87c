/**
 * Draws the brood ribbon. Across, everything is in per cent of the strip, so that it fits any width while letters keep
 * their size; down, it is in pixels. Brood stages differ by pattern, so it reads the same in black and white.
 */

import { addDays } from '../../days.ts'
import { useWords } from '../../forms/index.ts'
import { Legend } from './key.tsx'
import { LaneBars, Ticks } from './lanes.tsx'
import type { Lane, Ribbon } from './model.ts'
import { pct, type Scale, scaleOf, width } from './scale.ts'
import { WindowBar, WindowName, windowRows } from './windows.tsx'
import { laneLabel, ribbonWords } from './words.ts'

const TOP = 40
const LANE = 40
const BAR = 15

/** The large ribbon, with letters. */
export const RibbonStrip = ({ ribbon }: { ribbon: Ribbon }) => {
  const words = useWords()
  const said = words.ribbon
  const lines = ribbonWords(ribbon, words)
  const s = scaleOf(ribbon)
  const lanesEnd = TOP + ribbon.lanes.length * LANE
  const windows = windowRows(ribbon, s, words)
  const height = lanesEnd + windows.height + (windows.rows.length > 0 ? 26 : 10)
  const top = lanesEnd + 5
  return (
    <figure class="ribbon">
      <svg width="100%" height={height} role="img" aria-label={`${said.label} ${lines.join(' ')}`}>
        <Quiet ribbon={ribbon} s={s} top={22} height={height - 22} letters />
        <Axis ribbon={ribbon} s={s} height={height} />
        {ribbon.lanes.map((lane, i) => (
          <LaneBars lane={lane} s={s} y={TOP + i * LANE + 17} bar={BAR} />
        ))}
        <Ticks ribbon={ribbon} s={s} y={30} size={5} />
        {windows.rows.map((row) => (
          <WindowBar row={row} s={s} top={top} />
        ))}
        <TodayLine ribbon={ribbon} s={s} height={height} letters />
        {ribbon.lanes.map((lane, i) => (
          <text class="rb-label" x="3" y={TOP + i * LANE + 12}>
            {laneLabel(lane, ribbon.today, words)}
          </text>
        ))}
        {windows.rows.map((row) => (
          <WindowName row={row} top={top} />
        ))}
      </svg>
      <figcaption>
        <Legend />
        <details class="caution">
          <summary>{said.inWords}</summary>
          <ul>
            {lines.map((line) => (
              <li>{line}</li>
            ))}
          </ul>
        </details>
      </figcaption>
    </figure>
  )
}

/** The small ribbon of a row: no letters, the row says it in words. */
export const RibbonSmall = ({ ribbon }: { ribbon: Ribbon }) => {
  const s = scaleOf(ribbon)
  const height = 34
  const order: Lane['of'][] = ['along', 'donor', 'queen', 'new-layer']
  const y = { along: 9, donor: 15, queen: 21, 'new-layer': 27, treatment: 9 }
  // The treatment window is for the large ribbon only: here it would be one stripe too many.
  const lanes = ribbon.lanes
    .filter((l) => l.of !== 'treatment')
    .sort((a, b) => order.indexOf(a.of) - order.indexOf(b.of))
  return (
    <svg class="ribbon-small" width="100%" height={height} aria-hidden="true">
      <rect class="rb-ground" x="0" y="7" width="100%" height="26" />
      <Quiet ribbon={ribbon} s={s} top={7} height={26} />
      {lanes.map((lane) => (
        <LaneBars lane={lane} s={s} y={y[lane.of]} bar={5} />
      ))}
      <Ticks ribbon={ribbon} s={s} y={3.5} size={3} />
      <TodayLine ribbon={ribbon} s={s} height={height} />
    </svg>
  )
}

const Quiet = (p: { ribbon: Ribbon; s: Scale; top: number; height: number; letters?: boolean }) => {
  const { lidOn } = useWords().ribbon
  const { quiet } = p.ribbon
  if (quiet === null) return null
  const from = quiet.from < p.ribbon.from ? p.ribbon.from : quiet.from
  const to = quiet.to > p.ribbon.to ? p.ribbon.to : quiet.to
  if (from > to) return null
  const box = { x: pct(p.s.at(from)), width: pct(width(p.s, from, to)), y: p.top, height: p.height }
  const word = p.letters ? wordAt(p.s.at(from), p.s.at(to), p.s.at(p.ribbon.today)) : null
  return (
    <>
      <rect class="rb-quiet" {...box} />
      {word === null ? null : (
        <text class="rb-quiet-word" x={pct(word)} y={p.top + p.height - 5} text-anchor="middle">
          {lidOn}
        </text>
      )}
    </>
  )
}

/** Room for the words "lid on" on a phone, in per cent; "today" has its own to the right of its line. */
const ROOM = 13
const TODAY_ROOM = 15

/** The middle of the wider part of the quiet time that the word "today" leaves free; null when there is no room. */
function wordAt(from: number, to: number, today: number): number | null {
  const parts = [
    { from, to: Math.min(to, today) },
    { from: Math.max(from, today + TODAY_ROOM), to },
  ]
  const wider = parts.reduce((a, b) => (b.to - b.from > a.to - a.from ? b : a))
  return wider.to - wider.from < ROOM ? null : (wider.from + wider.to) / 2
}

/** Room for a date on the axis: '26 Nov'. */
const DATE_ROOM = 14

const Axis = ({ ribbon, s, height }: { ribbon: Ribbon; s: Scale; height: number }) => {
  const { dates } = useWords()
  const step = s.days > 56 ? 14 : 7
  const marks = Array.from({ length: Math.ceil(s.days / step) }, (_, i) => i * step)
  return (
    <>
      {marks.map((n) => {
        const day = addDays(ribbon.from, n)
        const x = pct(s.at(day))
        return (
          <>
            <line class="rb-week" x1={x} x2={x} y1="18" y2={height} />
            {s.at(day) > 100 - DATE_ROOM ? null : (
              <text class="rb-date" x={x} y="13" dx={n === 0 ? 0 : 1}>
                {dates.axis(day)}
              </text>
            )}
          </>
        )
      })}
    </>
  )
}

const TodayLine = (p: { ribbon: Ribbon; s: Scale; height: number; letters?: boolean }) => {
  const said = useWords().ribbon
  const { ribbon, s } = p
  const day = ribbon.left ?? ribbon.today
  if (day < ribbon.from || day > ribbon.to) return null
  const x = s.at(day) + 50 / s.days
  return (
    <g class="rb-today">
      <line x1={pct(x)} x2={pct(x)} y1={p.letters ? 18 : 0} y2={p.height} />
      {p.letters ? (
        <text x={pct(x)} y={p.height - 4} dx={x > 80 ? -4 : 4} text-anchor={x > 80 ? 'end' : 'start'}>
          {ribbon.left === null ? said.today : said.left}
        </text>
      ) : null}
    </g>
  )
}
