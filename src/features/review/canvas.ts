/**
 * The plot of a chart on a canvas, by Chart.js: step lines with their limits and ticks, or stacked areas, and a
 * hairline on the day under the finger. Axes, names and the numbers at risk are the page's own (src/parts); colours
 * and dashes are read from the drawing that the canvas covers, so there is one place that says them: the style sheet.
 */

import {
  Chart,
  type ChartConfiguration,
  LinearScale,
  LineController,
  LineElement,
  type Plugin,
  PointElement,
} from 'chart.js'
import { BOX, TOP } from '../../parts/index.ts'
import type { DayAxis } from './chart-data.ts'

Chart.register(LinearScale, LineController, LineElement, PointElement)

export interface Stroke {
  color: string
  width: number
  dash: number[]
}

/** A step line to draw; shapes are path text in the box of paths.ts. */
export interface DrawnLine {
  points: { x: number; y: number }[]
  stroke: Stroke
  band: { path: string; color: string } | null
  ticks: { path: string; stroke: Stroke } | null
}

export interface DrawnArea {
  path: string
  color: string
  edge: Stroke
}

export interface Drawing {
  axis: DayAxis
  lines: DrawnLine[]
  areas: DrawnArea[]
  /** Colour of the hairline. */
  ink: string
  /** Called with the day under the finger; null: none. */
  onDay: (day: number | null) => void
}

/** Draws, and draws again whenever the canvas changes its size. */
export function drawOn(canvas: HTMLCanvasElement, drawing: Drawing): Chart<'line'> {
  const config: ChartConfiguration<'line'> = {
    type: 'line',
    data: {
      datasets: drawing.lines.map(({ points, stroke }) => ({
        data: points,
        stepped: 'before',
        borderColor: stroke.color,
        borderWidth: stroke.width,
        borderDash: stroke.dash,
        pointRadius: 0,
        pointHitRadius: 0,
        pointHoverRadius: 0,
        clip: false,
      })),
    },
    options: {
      animation: false,
      responsive: true,
      maintainAspectRatio: false,
      parsing: false,
      normalized: true,
      events: ['mousemove', 'mouseout', 'click', 'touchstart', 'touchmove'],
      scales: {
        x: { type: 'linear', min: 0, max: drawing.axis.end, display: false },
        y: { type: 'linear', min: 0, max: TOP, display: false },
      },
    },
    plugins: [shapes(drawing), hairline(drawing)],
  }
  return new Chart(canvas, config)
}

/** A path of the box, in the canvas' own pixels: strokes keep their width. */
function placed(path: string, chart: Chart<'line'>): Path2D {
  const { left, top, width, height } = chart.chartArea
  const made = new Path2D()
  made.addPath(new Path2D(path), new DOMMatrix([width / BOX, 0, 0, height / BOX, left, top]))
  return made
}

function ink(chart: Chart<'line'>, { color, width, dash }: Stroke): CanvasRenderingContext2D {
  const { ctx } = chart
  ctx.strokeStyle = color
  ctx.lineWidth = width
  ctx.setLineDash(dash)
  return ctx
}

/** Areas and limits below the lines, ticks above them. */
const shapes = ({ lines, areas }: Drawing): Plugin<'line'> => ({
  id: 'shapes',
  beforeDatasetsDraw(chart) {
    chart.ctx.save()
    for (const { path, color, edge } of areas) {
      const shape = placed(path, chart)
      chart.ctx.fillStyle = color
      chart.ctx.fill(shape)
      ink(chart, edge).stroke(shape)
    }
    for (const { band } of lines) {
      if (band === null) continue
      chart.ctx.fillStyle = band.color
      chart.ctx.fill(placed(band.path, chart))
    }
    chart.ctx.restore()
  },
  afterDatasetsDraw(chart) {
    chart.ctx.save()
    for (const { ticks } of lines)
      if (ticks !== null) ink(chart, ticks.stroke).stroke(placed(ticks.path, chart))
    chart.ctx.restore()
  },
})

/** The day under the finger. */
function hairline({ axis, ink: color, onDay }: Drawing): Plugin<'line'> {
  let day: number | null = null
  return {
    id: 'hairline',
    afterEvent(chart, args) {
      const { x, type } = args.event
      const under = chart.scales.x?.getValueForPixel(x ?? -1)
      const now =
        type === 'mouseout' || under === undefined ? null : Math.min(axis.end, Math.max(0, Math.round(under)))
      if (now === day) return
      day = now
      args.changed = true
      onDay(day)
    },
    afterDatasetsDraw(chart) {
      if (day === null) return
      const x = chart.scales.x?.getPixelForValue(day) ?? 0
      const { top, bottom } = chart.chartArea
      chart.ctx.save()
      const ctx = ink(chart, { color, width: 1, dash: [] })
      ctx.beginPath()
      ctx.moveTo(x, top)
      ctx.lineTo(x, bottom)
      ctx.stroke()
      chart.ctx.restore()
    },
  }
}
