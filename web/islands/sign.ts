/**
 * The field on which a name is drawn. Points go into a hidden field as numbers; the server makes the drawing from them.
 * Without JavaScript the field stays hidden, and the agreement is signed on paper.
 */

type Point = [number, number]

/** Fewer points than the server takes, so that a long name is thinned rather than refused. */
const MOST = 1700

function start(pad: HTMLElement): void {
  const field = pad.querySelector<SVGSVGElement>('[data-pad-field]')
  const ink = pad.querySelector<SVGPathElement>('[data-pad-ink]')
  const value = pad.querySelector<HTMLInputElement>('[data-pad-value]')
  const clear = pad.querySelector<HTMLButtonElement>('[data-pad-clear]')
  if (field === null || ink === null || value === null || clear === null) return
  const { width, height } = field.viewBox.baseVal
  let strokes = kept(value.value)
  let drawing: Point[] | null = null

  const show = (): void => {
    const all = drawing === null ? strokes : [...strokes, drawing]
    ink.setAttribute('d', all.map(pathOf).join(''))
    value.value = JSON.stringify(thinned(all))
  }
  const at = (event: PointerEvent): Point => {
    const box = field.getBoundingClientRect()
    return [
      Math.round(((event.clientX - box.left) / box.width) * width),
      Math.round(((event.clientY - box.top) / box.height) * height),
    ]
  }
  field.addEventListener('pointerdown', (event) => {
    if (!event.isPrimary || event.button !== 0) return
    event.preventDefault()
    field.setPointerCapture(event.pointerId)
    drawing = [at(event)]
    show()
  })
  field.addEventListener('pointermove', (event) => {
    if (drawing === null || !event.isPrimary) return
    const last = drawing.at(-1)
    const next = at(event)
    if (last !== undefined && Math.hypot(next[0] - last[0], next[1] - last[1]) < 2) return
    drawing.push(next)
    show()
  })
  const stop = (): void => {
    if (drawing !== null) strokes = [...strokes, drawing]
    drawing = null
    show()
  }
  field.addEventListener('pointerup', stop)
  field.addEventListener('pointercancel', stop)
  clear.addEventListener('click', () => {
    strokes = []
    drawing = null
    show()
  })
  pad.hidden = false
  for (const hint of document.querySelectorAll<HTMLElement>('[data-no-pad]')) hint.hidden = true
  show()
}

/** What was drawn before a refused form came back. */
function kept(text: string): Point[][] {
  try {
    const read: unknown = JSON.parse(text)
    return Array.isArray(read) ? (read as Point[][]).filter(Array.isArray) : []
  } catch {
    return []
  }
}

const pathOf = (line: Point[]): string => {
  const [first, ...rest] = line
  if (first === undefined) return ''
  return `M${first.join(' ')}${(rest.length === 0 ? [first] : rest).map((p) => `L${p.join(' ')}`).join('')}`
}

/** Every second point is dropped until few enough are left; the ends of strokes stay. */
function thinned(strokes: Point[][]): Point[][] {
  let made = strokes
  while (made.reduce((n, s) => n + s.length, 0) > MOST && made.some((s) => s.length > 3))
    made = made.map((s) => s.filter((_, i) => i % 2 === 0 || i === s.length - 1))
  return made
}

for (const pad of document.querySelectorAll<HTMLElement>('[data-pad]')) start(pad)
