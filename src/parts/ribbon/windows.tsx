/**
 * The days for each check, a row each, with its name beside it, on the side where there is room on a phone. Where there
 * is none on either side, the name stands above the row, and the row takes more room.
 */

import type { Day } from '../../days.ts'
import type { Check } from '../../recovery/index.ts'
import type { Words } from '../../words/index.ts'
import type { Ribbon } from './model.ts'
import { pct, type Scale, width } from './scale.ts'

const ROW = 22
/** More of it, where the name stands above. */
const NAME_ABOVE = 15

/** The narrowest strip that names must fit on, and how wide a letter of them is at most on average, in pixels. */
const NARROWEST = 286
const LETTER = 6.4
const GAP = 6

/** How much of the narrowest strip the words take, in per cent. */
export const roomFor = (words: string): number => ((words.length * LETTER + GAP) / NARROWEST) * 100

interface NameAt {
  x: number
  dx: number
  anchor: 'start' | 'end'
  above: boolean
}

/** Where the name of a window goes that lies from `start` to `end` (per cent), so that it never leaves the strip. */
export function nameAt(words: string, start: number, end: number): NameAt {
  const room = roomFor(words)
  if (end + room <= 100) return { x: end, dx: GAP, anchor: 'start', above: false }
  if (start - room >= 0) return { x: start, dx: -GAP, anchor: 'end', above: false }
  return start + room <= 100
    ? { x: start, dx: 0, anchor: 'start', above: true }
    : { x: 100, dx: -3, anchor: 'end', above: true }
}

export interface WindowRow {
  w: Check
  words: string
  from: Day
  to: Day
  start: number
  end: number
  name: NameAt
  /** The middle of its bar, down from the first row's top. */
  y: number
}

/** The rows of the windows that lie on the strip, laid out one under the other. */
export function windowRows(
  ribbon: Ribbon,
  s: Scale,
  { trade }: Words,
): { rows: WindowRow[]; height: number } {
  const rows: WindowRow[] = []
  let height = 0
  for (const w of ribbon.windows) {
    const from = w.opens < ribbon.from ? ribbon.from : w.opens
    const to = w.closes > ribbon.to ? ribbon.to : w.closes
    if (from > to) continue
    const [start, end] = [s.at(from), s.at(from) + width(s, from, to)]
    const words = trade.rules[w.rule].name
    const name = nameAt(words, start, end)
    height += ROW + (name.above ? NAME_ABOVE : 0)
    rows.push({ w, words, from, to, start, end, name, y: height - ROW / 2 })
  }
  return { rows, height }
}

/** A window's bar, with its best day. */
export const WindowBar = ({ row, s, top }: { row: WindowRow; s: Scale; top: number }) => {
  const { w, from, to, start, end } = row
  const y = top + row.y
  return (
    <g class={`rb-window rb-window-${w.status}`}>
      <rect x={pct(start)} width={pct(end - start)} y={y - 5} height="9" />
      {w.due >= from && w.due <= to ? (
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

/** Its name. Drawn after all bars and lines, so that nothing runs through it. */
export const WindowName = ({ row: { words, name, y }, top }: { row: WindowRow; top: number }) => (
  <text
    class="rb-label"
    x={pct(name.x)}
    dx={name.dx}
    y={top + y + (name.above ? -9 : 4)}
    text-anchor={name.anchor}
  >
    {words}
  </text>
)
