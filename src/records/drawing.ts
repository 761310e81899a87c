/**
 * A name drawn on a screen. The browser sends points; the path is made here from the numbers alone, so nothing that a
 * browser says gets into the drawing but where the finger was.
 */
import * as z from 'zod/mini'
import { type Problems, type Result, refused } from '../result.ts'

/** The field it is drawn on, in its own units. */
export const FIELD = { width: 600, height: 200 } as const

/** Path data as `pathOf` makes it, and nothing else. */
export const DRAWN = /^(M\d{1,3} \d{1,3}(L\d{1,3} \d{1,3})+)+$/

/** The island thins a drawing to fewer; a form field is cut at 20,000 characters. */
const MOST_POINTS = 2000
/** Less ink than this is a slip of the finger, not a name. */
const LEAST_INK = 60

const point = z.tuple([
  z.number().check(z.minimum(-10_000), z.maximum(10_000)),
  z.number().check(z.minimum(-10_000), z.maximum(10_000)),
])
const strokes = z.array(z.array(point).check(z.maxLength(MOST_POINTS))).check(z.maxLength(300))

export type Drawing = Result<{ path: string }, Problems<string>>

/** From the text a browser sent, '[[[x, y], …], …]', to path data. */
export function drawingOf(text: string): Drawing {
  const parsed = strokes.safeParse(json(text))
  if (!parsed.success) return refused(['cannot be read as a drawing: draw the name again'])
  const lines = parsed.data.map((line) => line.map(onField)).filter((line) => line.length > 0)
  if (lines.reduce((n, line) => n + line.length, 0) > MOST_POINTS)
    return refused(['is too long: draw the name again, in fewer strokes'])
  if (lines.reduce((sum, line) => sum + inkOf(line), 0) < LEAST_INK)
    return refused(['is missing: draw the name on the field'])
  return { ok: true, path: lines.map(lineOf).join('') }
}

/** A name has more ink than a tick, and turns: a stroke from here to there is none (judgement; the field is 600 wide). */
const LEAST_NAME = 200
const LEAST_TURNS = 1.2

/** Whether path data may be a name: what a program sends is measured like what a finger drew. */
export function isDrawnName(path: string): boolean {
  const lines = path
    .split('M')
    .filter(Boolean)
    .map((line) => line.split('L').map((at): Point => [Number(at.split(' ')[0]), Number(at.split(' ')[1])]))
  const ink = lines.reduce((sum, line) => sum + inkOf(line), 0)
  const ends = lines.reduce(
    (sum, line) => sum + inkOf([line[0], line.at(-1)].filter((at) => at !== undefined)),
    0,
  )
  return ink >= LEAST_NAME && (lines.length > 1 || ink >= ends * LEAST_TURNS)
}

type Point = readonly [number, number]

const onField = ([x, y]: Point): Point => [
  Math.min(FIELD.width, Math.max(0, Math.round(x))),
  Math.min(FIELD.height, Math.max(0, Math.round(y))),
]

const inkOf = (line: readonly Point[]): number =>
  line.slice(1).reduce((sum, [x, y], i) => {
    const [a, b] = line[i] ?? [x, y]
    return sum + Math.hypot(x - a, y - b)
  }, 0)

/** A dot is a line to where it already is: a round cap makes it seen. */
function lineOf(line: readonly Point[]): string {
  const [first, ...rest] = line
  if (first === undefined) return ''
  const to = rest.filter(([x, y], i) => {
    const [a, b] = (i === 0 ? first : rest[i - 1]) ?? first
    return x !== a || y !== b
  })
  return `M${first[0]} ${first[1]}${(to.length === 0 ? [first] : to).map(([x, y]) => `L${x} ${y}`).join('')}`
}

function json(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return null
  }
}

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;')

/** The drawing as a file. Throws RangeError on path data that was not made here. */
export function svgOf(path: string, title: string): string {
  if (!DRAWN.test(path)) throw new RangeError('svgOf: not a drawing of ours')
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${FIELD.width} ${FIELD.height}" width="${FIELD.width}" height="${FIELD.height}"><title>${escaped(title)}</title><path d="${path}" fill="none" stroke="#000" stroke-width="3" stroke-linecap="round" stroke-linejoin="round"/></svg>\n`
}
