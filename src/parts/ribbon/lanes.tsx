/** The bars of a lane: brood, a cage, a queen on her way; and who looked when. */
import type { Child } from 'hono/jsx'
import { type Day, dayNumber } from '../../days.ts'
import type { Band, Lane, Ribbon, Tick } from './model.ts'
import { pct, type Scale, width } from './scale.ts'

/** One lane's bars, fading where brood is old. */
export const LaneBars = (p: { lane: Lane; s: Scale; y: number; bar: number }) => {
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
        <OnDay day={b.likely} s={s} y={y} height={bar}>
          <path class="rb-likely" d={`M0 ${-1}L${bar / 3} ${bar / 2}L0 ${bar + 1}L${-bar / 3} ${bar / 2}Z`} />
        </OnDay>
      )}
    </>
  )
}

/** A mark at the middle of a day, in a box of its own so that it keeps its shape however the ribbon is stretched. */
const OnDay = (p: { day: Day; s: Scale; y: number; height: number; children: Child }) => (
  <svg
    x={pct(p.s.at(p.day) + 50 / p.s.days)}
    y={p.y}
    overflow="visible"
    aria-hidden="true"
    width="1"
    height={p.height}
  >
    {p.children}
  </svg>
)

const TICK_PATH: Record<Tick['kind'], (r: number) => string> = {
  opened: (r) => `M${-r} ${-r}h${2 * r}v${2 * r}h${-2 * r}Z`,
  'lid-on': (r) => `M${-r} ${-r}h${2 * r}v${2 * r}h${-2 * r}Z`,
  given: (r) => `M0 ${-r}v${2 * r}M${-r} 0h${2 * r}`,
  cage: (r) => `M${-r} ${-r}h${2 * r}v${2 * r}h${-2 * r}ZM0 ${-r}v${2 * r}`,
}

/** The marks of visits and gifts. */
export const Ticks = ({ ribbon, s, y, size }: { ribbon: Ribbon; s: Scale; y: number; size: number }) => (
  <>
    {unique(ribbon.ticks)
      .filter((t) => t.on >= ribbon.from && t.on <= ribbon.to)
      .map((t) => (
        <OnDay day={t.on} s={s} y={y} height={1}>
          <path
            class={`rb-tick rb-tick-${t.kind}`}
            d={TICK_PATH[t.kind](t.kind === 'given' ? size : size - 1)}
          />
        </OnDay>
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
