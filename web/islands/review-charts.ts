/** The review's charts come alive: a canvas over each plot, and below it what the day under the finger says. */

import type { Chart } from 'chart.js'
import {
  type ChartData,
  type DrawnArea,
  type DrawnLine,
  drawOn,
  END_OF_STACK,
  type Line,
  linesOn,
  type Stroke,
  stackOn,
  waysOn,
} from '../../src/features/review/index.ts'

function start(): void {
  const text = document.getElementById('review-data')?.textContent
  if (text === null || text === undefined) return
  const data = JSON.parse(text) as ChartData
  const figures = [...document.querySelectorAll<HTMLElement>('[data-chart]')]
  for (const figure of document.querySelectorAll<HTMLElement>('[data-stack]')) readStack(figure, data)
  let charts = figures.flatMap((figure) => draw(figure, data))
  const again = (): void => {
    for (const chart of charts) chart.destroy()
    charts = figures.flatMap((figure) => draw(figure, data))
  }
  window.matchMedia('(prefers-color-scheme: dark)').addEventListener('change', again)
}

/** Covers one plot with a canvas, made anew. */
function draw(figure: HTMLElement, data: ChartData): Chart<'line'>[] {
  const box = figure.querySelector<HTMLElement>('.plot-box')
  if (box === null) return []
  box.querySelector('canvas')?.remove()
  const canvas = document.createElement('canvas')
  canvas.setAttribute('aria-hidden', 'true')
  box.append(canvas)
  figure.classList.add('drawn')
  const ink = getComputedStyle(figure).color
  switch (figure.dataset.chart) {
    case 'survival':
      return [
        drawOn(canvas, {
          axis: data.axis,
          lines: linesIn(box, data.survival),
          areas: [],
          ink,
          onDay: readout(figure.dataset.chart, (day) => linesOn(data.survival, day)),
        }),
      ]
    case 'ways':
      return [
        drawOn(canvas, {
          axis: data.axis,
          lines: [],
          areas: areasIn(box),
          ink,
          onDay: readout(figure.dataset.chart, (day) => waysOn(data.ways, day)),
        }),
      ]
    case 'queenright':
      return [
        drawOn(canvas, {
          axis: data.queenright.axis,
          lines: linesIn(box, [data.queenright.line]),
          areas: [],
          ink,
          onDay: readout(figure.dataset.chart, (day) => linesOn([data.queenright.line], day)),
        }),
      ]
    default:
      return []
  }
}

/** The stroke of a shape that the style sheet has coloured. */
function strokeOf(shape: Element): Stroke {
  const style = getComputedStyle(shape)
  return {
    color: style.stroke,
    width: Number.parseFloat(style.strokeWidth),
    dash: style.strokeDasharray === 'none' ? [] : style.strokeDasharray.split(/[ ,]+/).map(Number.parseFloat),
  }
}

/** The lines as they were drawn on the server, the first one last so that it lies on top. */
function linesIn(box: HTMLElement, lines: readonly Line[]): DrawnLine[] {
  return lines.flatMap((line, place): DrawnLine[] => {
    const group = box.querySelector(`.series-${place}`)
    const step = group?.querySelector('.step')
    if (group === null || step === null || step === undefined) return []
    const band = group.querySelector('.band')
    const ticks = group.querySelector('.left-tick')
    return [
      {
        points: line.points.map(([x, y]) => ({ x, y })),
        stroke: strokeOf(step),
        band:
          band === null ? null : { path: band.getAttribute('d') ?? '', color: getComputedStyle(band).fill },
        ticks: ticks === null ? null : { path: ticks.getAttribute('d') ?? '', stroke: strokeOf(ticks) },
      },
    ]
  })
}

const areasIn = (box: HTMLElement): DrawnArea[] =>
  [...box.querySelectorAll('.way-area')].map((area) => ({
    path: area.getAttribute('d') ?? '',
    color: getComputedStyle(area).fill,
    edge: strokeOf(area),
  }))

/** A stack tells its day under the finger. It stands as the server drew it; only a line follows the finger. */
function readStack(figure: HTMLElement, { stacks }: ChartData): void {
  const box = figure.querySelector<HTMLElement>('.stack-box')
  const stack = stacks[Number(figure.dataset.stack)]
  if (box === null || stack === undefined) return
  const say = readout('stacks', (day) => stackOn(stack, day))
  const show = (event: PointerEvent): void => {
    const { left, width } = box.getBoundingClientRect()
    const day = Math.min(
      END_OF_STACK,
      Math.max(0, Math.round(((event.clientX - left) / width) * END_OF_STACK)),
    )
    box.style.setProperty('--day', `${(100 * day) / END_OF_STACK}%`)
    box.classList.add('read')
    say(day)
  }
  box.addEventListener('pointerdown', show)
  box.addEventListener('pointermove', show)
  box.addEventListener('pointerleave', (event) => {
    box.classList.remove('read')
    // A finger that was lifted has left what it read to be read.
    if (event.pointerType === 'mouse') say(null)
  })
}

/** Says what the day says, and its own words again when the finger is gone. */
function readout(chart: string | undefined, words: (day: number) => string): (day: number | null) => void {
  const place = document.querySelector<HTMLElement>(`[data-readout="${chart}"]`)
  // Of several pictures with one place to tell in, none may take another's words for the standing ones.
  const standing = place?.dataset.standing ?? place?.textContent ?? ''
  if (place !== null) place.dataset.standing = standing
  return (day) => {
    if (place !== null) place.textContent = day === null ? standing : `${words(day)}.`
  }
}

start()
