/**
 * Draws the brood ribbon. Across, everything is in per cent of the strip, so that it fits any width while letters keep
 * their size; down, it is in pixels. Brood stages differ by pattern, so it reads the same in black and white.
 */
import { addDays, type Day, dayNumber, daysBetween } from '../../../src/days.ts'
import type { Check } from '../../../src/recovery/plan-types.ts'
import { dayWords } from '../../words/dates.ts'
import { RULE_WORDS } from '../../words/rules.ts'
import type { Band, Lane, Ribbon, Tick } from './model.ts'
import { laneLabel, ribbonWords } from './words.ts'

const pct = (n: number): string => `${Number(n.toFixed(2))}%`

interface Scale {
  days: number
  /** Left edge of a day, in per cent. */
  at: (day: Day) => number
}

const scaleOf = (r: Ribbon): Scale => {
  const days = daysBetween(r.from, r.to) + 1
  return { days, at: (day) => (daysBetween(r.from, day) / days) * 100 }
}

const width = (s: Scale, from: Day, to: Day): number => ((daysBetween(from, to) + 1) / s.days) * 100

/** The patterns, once a page. */
export const RibbonDefs = () => (
  <svg class="ribbon-defs" aria-hidden="true" width="0" height="0">
    <defs>
      <pattern id="rb-eggs" width="6" height="7" patternUnits="userSpaceOnUse">
        <path d="M2 1.5v4" stroke="currentColor" stroke-width="1.4" stroke-linecap="round" />
      </pattern>
      <pattern id="rb-open" width="9" height="9" patternUnits="userSpaceOnUse">
        <path d="M6.5 2.5a2.6 2.6 0 1 0 0 4" fill="none" stroke="currentColor" stroke-width="1.6" />
      </pattern>
      <pattern id="rb-capped" width="5" height="5" patternUnits="userSpaceOnUse">
        <rect width="5" height="5" fill="currentColor" />
        <path d="M0 2.5h1.2" stroke="var(--sheet)" stroke-width="1" />
      </pattern>
      <pattern id="rb-quiet" width="9" height="9" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <path d="M0 0v9" stroke="currentColor" stroke-width="1.1" opacity="0.5" />
      </pattern>
      <linearGradient id="rb-fade">
        <stop offset="0" class="rb-clear" />
        <stop offset="1" class="rb-paper" />
      </linearGradient>
    </defs>
  </svg>
)

const TOP = 40
const LANE = 40
const BAR = 15
const ROW = 22

/** The large ribbon, with letters. */
export const RibbonStrip = ({ ribbon }: { ribbon: Ribbon }) => {
  const s = scaleOf(ribbon)
  const lanesEnd = TOP + ribbon.lanes.length * LANE
  const height = lanesEnd + ribbon.windows.length * ROW + (ribbon.windows.length > 0 ? 26 : 10)
  return (
    <figure class="ribbon">
      <svg
        width="100%"
        height={height}
        role="img"
        aria-label={`Brood ribbon. ${ribbonWords(ribbon).join(' ')}`}
      >
        <Quiet ribbon={ribbon} s={s} top={22} height={height - 22} letters />
        <Axis ribbon={ribbon} s={s} height={height} />
        {ribbon.lanes.map((lane, i) => (
          <LaneBars lane={lane} s={s} y={TOP + i * LANE + 17} bar={BAR} />
        ))}
        <Ticks ribbon={ribbon} s={s} y={30} size={5} />
        {ribbon.windows.map((w, i) => (
          <WindowRow w={w} s={s} y={lanesEnd + 16 + i * ROW} ribbon={ribbon} />
        ))}
        <TodayLine ribbon={ribbon} s={s} height={height} letters />
        {ribbon.lanes.map((lane, i) => (
          <text class="rb-label" x="3" y={TOP + i * LANE + 12}>
            {laneLabel(lane, ribbon.today)}
          </text>
        ))}
        {ribbon.windows.map((w, i) => (
          <WindowName w={w} s={s} y={lanesEnd + 20 + i * ROW} ribbon={ribbon} />
        ))}
      </svg>
      <figcaption>
        <Legend />
        <details class="caution">
          <summary>The ribbon in words</summary>
          <ul>
            {ribbonWords(ribbon).map((line) => (
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
          lid on
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

const Axis = ({ ribbon, s, height }: { ribbon: Ribbon; s: Scale; height: number }) => {
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
            {s.at(day) > 92 ? null : (
              <text class="rb-date" x={x} y="13" dx={n === 0 ? 0 : 1}>
                {dayWords(day, ribbon.today).split(' ').slice(1, 3).join(' ')}
              </text>
            )}
          </>
        )
      })}
    </>
  )
}

const LaneBars = (p: { lane: Lane; s: Scale; y: number; bar: number }) => {
  const last = p.lane.bands.at(-1)
  const fades = (p.lane.of === 'along' || p.lane.of === 'donor') && last !== undefined
  return (
    <g class={`rb-lane rb-of-${p.lane.of}`}>
      {p.lane.bands.map((b) => (
        <Bar b={b} s={p.s} y={p.y} bar={p.bar} />
      ))}
      {fades ? (
        <rect
          class="rb-fade"
          x={pct(p.s.at(last.from) + width(p.s, last.from, last.to) / 2)}
          y={p.y - 0.5}
          width={pct(width(p.s, last.from, last.to) / 2 + 0.2)}
          height={p.bar + 1}
        />
      ) : null}
    </g>
  )
}

const Bar = ({ b, s, y, bar }: { b: Band; s: Scale; y: number; bar: number }) => {
  const box = { x: pct(s.at(b.from)), width: pct(width(s, b.from, b.to)) }
  const thin = b.kind === 'mating' || b.kind === 'cell' || b.kind === 'caged' || b.kind === 'broodless'
  return (
    <>
      <rect
        class={`rb-bar rb-${b.kind}${b.maybe ? ' rb-maybe' : ''}`}
        {...box}
        y={thin && bar > 8 ? y + 4 : y}
        height={thin && bar > 8 ? bar - 8 : bar}
      />
      {b.likely === undefined ? null : (
        <svg
          x={pct(s.at(b.likely) + 50 / s.days)}
          y={y}
          overflow="visible"
          aria-hidden="true"
          width="1"
          height={bar}
        >
          <path class="rb-likely" d={`M0 ${-1}L${bar / 3} ${bar / 2}L0 ${bar + 1}L${-bar / 3} ${bar / 2}Z`} />
        </svg>
      )}
    </>
  )
}

const TICK_PATH: Record<Tick['kind'], (r: number) => string> = {
  opened: (r) => `M${-r} ${-r}h${2 * r}v${2 * r}h${-2 * r}Z`,
  'lid-on': (r) => `M${-r} ${-r}h${2 * r}v${2 * r}h${-2 * r}Z`,
  given: (r) => `M0 ${-r}v${2 * r}M${-r} 0h${2 * r}`,
  cage: (r) => `M${-r} ${-r}h${2 * r}v${2 * r}h${-2 * r}ZM0 ${-r}v${2 * r}`,
}

const Ticks = ({ ribbon, s, y, size }: { ribbon: Ribbon; s: Scale; y: number; size: number }) => (
  <>
    {unique(ribbon.ticks)
      .filter((t) => t.on >= ribbon.from && t.on <= ribbon.to)
      .map((t) => (
        <svg
          x={pct(s.at(t.on) + 50 / s.days)}
          y={y}
          overflow="visible"
          aria-hidden="true"
          width="1"
          height="1"
        >
          <path
            class={`rb-tick rb-tick-${t.kind}`}
            d={TICK_PATH[t.kind](t.kind === 'given' ? size : size - 1)}
          />
        </svg>
      ))}
  </>
)

/** One tick a day: opened hides the rest, a look hides a gift. */
function unique(ticks: readonly Tick[]): Tick[] {
  const rank: Tick['kind'][] = ['opened', 'lid-on', 'cage', 'given']
  const best = new Map<Day, Tick>()
  for (const t of ticks) {
    const held = best.get(t.on)
    if (held === undefined || rank.indexOf(t.kind) < rank.indexOf(held.kind)) best.set(t.on, t)
  }
  return [...best.values()].sort((a, b) => dayNumber(a.on) - dayNumber(b.on))
}

/** Where a window lies on the strip, in per cent; null when it is not on it. */
function windowAt(
  w: Check,
  s: Scale,
  ribbon: Ribbon,
): { from: Day; to: Day; start: number; end: number } | null {
  const from = w.opens < ribbon.from ? ribbon.from : w.opens
  const to = w.closes > ribbon.to ? ribbon.to : w.closes
  if (from > to) return null
  return { from, to, start: s.at(from), end: s.at(from) + width(s, from, to) }
}

interface WindowProps {
  w: Check
  s: Scale
  y: number
  ribbon: Ribbon
}

const WindowRow = ({ w, s, y, ribbon }: WindowProps) => {
  const at = windowAt(w, s, ribbon)
  if (at === null) return null
  return (
    <g class={`rb-window rb-window-${w.status}`}>
      <rect x={pct(at.start)} width={pct(at.end - at.start)} y={y - 5} height="9" />
      {w.due >= at.from && w.due <= at.to ? (
        <svg
          x={pct(s.at(w.due) + 50 / s.days)}
          y={y - 0.5}
          overflow="visible"
          aria-hidden="true"
          width="1"
          height="1"
        >
          <circle r="3.2" />
        </svg>
      ) : null}
    </g>
  )
}

/** Beside its window, on the side where there is room. */
const WindowName = ({ w, s, y, ribbon }: WindowProps) => {
  const at = windowAt(w, s, ribbon)
  if (at === null) return null
  const after = at.end < 58
  return (
    <text
      class="rb-label"
      x={pct(after ? at.end : at.start)}
      dx={after ? 6 : -6}
      y={y}
      text-anchor={after ? 'start' : 'end'}
    >
      {RULE_WORDS[w.rule].name}
    </text>
  )
}

const TodayLine = (p: { ribbon: Ribbon; s: Scale; height: number; letters?: boolean }) => {
  const { ribbon, s } = p
  const day = ribbon.left ?? ribbon.today
  if (day < ribbon.from || day > ribbon.to) return null
  const x = s.at(day) + 50 / s.days
  return (
    <g class="rb-today">
      <line x1={pct(x)} x2={pct(x)} y1={p.letters ? 18 : 0} y2={p.height} />
      {p.letters ? (
        <text x={pct(x)} y={p.height - 4} dx={x > 80 ? -4 : 4} text-anchor={x > 80 ? 'end' : 'start'}>
          {ribbon.left === null ? 'today' : 'left'}
        </text>
      ) : null}
    </g>
  )
}

const LEGEND: { kind: string; word: string }[] = [
  { kind: 'rb-bar rb-eggs', word: 'eggs' },
  { kind: 'rb-bar rb-open', word: 'open brood' },
  { kind: 'rb-bar rb-capped', word: 'capped brood' },
  { kind: 'rb-bar rb-emergence', word: 'a queen leaves her cell' },
  { kind: 'rb-bar rb-first-egg rb-maybe', word: 'her first egg' },
  { kind: 'rb-quiet', word: 'lid stays on' },
]

const Legend = () => (
  <ul class="legend">
    {LEGEND.map((l) => (
      <li>
        <svg width="26" height="14" aria-hidden="true">
          <rect class={l.kind} x="0.5" y="0.5" width="25" height="13" />
        </svg>
        {l.word}
      </li>
    ))}
    <li>
      <svg width="14" height="14" aria-hidden="true">
        <path class="rb-tick rb-tick-opened" d="M3 3h8v8H3Z" />
      </svg>
      opened
    </li>
    <li>
      <svg width="14" height="14" aria-hidden="true">
        <path class="rb-tick rb-tick-lid-on" d="M3 3h8v8H3Z" />
      </svg>
      looked, lid on
    </li>
    <li>
      <svg class="rb-window" width="26" height="14" aria-hidden="true">
        <rect x="0.5" y="2.5" width="25" height="9" />
        <circle cx="13" cy="7" r="3.2" />
      </svg>
      days for a check, best day
    </li>
  </ul>
)
