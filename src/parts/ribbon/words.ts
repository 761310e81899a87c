/** The brood ribbon in words: says what the drawing shows, for those who cannot see it. */

import type { Day } from '../../days.ts'
import { dayWords, fromTo, RULE_WORDS, STATUS_WORDS } from '../../words/index.ts'
import type { Band, Ribbon } from './model.ts'

const KIND: Record<Band['kind'], string> = {
  eggs: 'eggs',
  open: 'open brood',
  capped: 'capped brood',
  cell: 'in her cell',
  emergence: 'leaves her cell',
  mating: 'matures and mates',
  caged: 'caged',
  broodless: 'no capped brood',
  'first-egg': 'first egg',
}

function bandWords(b: Band, today: Day): string {
  const when = fromTo(b.from, b.to, today)
  const likely = b.likely === undefined || b.from === b.to ? '' : `, likely ${dayWords(b.likely, today)}`
  return `${b.maybe ? 'perhaps ' : ''}${KIND[b.kind]} ${when}${likely}`
}

const list = (parts: string[]): string => parts.join('; ')

/** One sentence a lane, then quiet time, visits and windows. */
export function ribbonWords(r: Ribbon): string[] {
  const visits = (kind: string): string =>
    list([...new Set(r.ticks.filter((t) => t.kind === kind).map((t) => dayWords(t.on, r.today)))])
  const lines = r.lanes.map((lane) => `${lane.name}: ${list(lane.bands.map((b) => bandWords(b, r.today)))}.`)
  if (r.quiet !== null) lines.push(`Lid stays on ${fromTo(r.quiet.from, r.quiet.to, r.today)}.`)
  const opened = visits('opened')
  if (opened !== '') lines.push(`Opened: ${opened}.`)
  const outside = visits('lid-on')
  if (outside !== '') lines.push(`Looked at with the lid on: ${outside}.`)
  const given = visits('given')
  if (given !== '') lines.push(`Something given: ${given}.`)
  for (const w of r.windows)
    lines.push(
      `${RULE_WORDS[w.rule].name}: ${fromTo(w.opens, w.closes, r.today)}, ${STATUS_WORDS[w.status]}.`,
    )
  if (r.left !== null) lines.push(`Left the yard ${dayWords(r.left, r.today)}.`)
  return lines
}

/** A lane's own label on the drawing, short enough for a phone. */
export function laneLabel(lane: Ribbon['lanes'][number], today: Day): string {
  const last = lane.bands.at(-1)
  switch (lane.of) {
    case 'along':
    case 'donor':
      return last === undefined ? lane.name : `${lane.name}, gone by ${dayWords(last.to, today)}`
    case 'treatment': {
      const band = lane.bands[0]
      return band === undefined ? lane.name : `Treatment window ${fromTo(band.from, band.to, today)}`
    }
    default: {
      const likely = lane.bands.find((b) => b.likely !== undefined)
      if (likely?.likely === undefined) return lane.name
      const what = likely.kind === 'emergence' ? 'out about' : 'about'
      return `${lane.name}, ${what} ${dayWords(likely.likely, today)}`
    }
  }
}
