/** The brood ribbon in words: says what the drawing shows, for those who cannot see it. */

import type { Day } from '../../days.ts'
import { type Words, wordsIn } from '../../words/index.ts'
import type { Band, Lane, Ribbon } from './model.ts'

function bandWords(b: Band, today: Day, { dates, ribbon }: Words): string {
  const name = `${ribbon.bands[b.kind]} ${dates.fromTo(b.from, b.to, today)}`
  const likely = b.likely === undefined || b.from === b.to ? '' : ribbon.likely(dates.day(b.likely, today))
  return `${b.maybe ? ribbon.perhaps(name) : name}${likely}`
}

const list = (parts: string[]): string => parts.join('; ')

/** One sentence a lane, then quiet time, visits and windows. */
export function ribbonWords(r: Ribbon, w: Words = wordsIn('en')): string[] {
  const { dates, ribbon: said, trade } = w
  const when = ({ from, to }: { from: Day; to: Day }): string => dates.fromTo(from, to, r.today)
  const visits = (kind: string): string =>
    list([...new Set(r.ticks.filter((t) => t.kind === kind).map((t) => dates.day(t.on, r.today)))])
  const [opened, outside, given] = [visits('opened'), visits('lid-on'), visits('given')]
  return [
    ...r.lanes.map(
      (lane) => `${said.lanes[lane.name]}: ${list(lane.bands.map((b) => bandWords(b, r.today, w)))}.`,
    ),
    r.quiet === null ? '' : said.lidStaysOn(when(r.quiet)),
    opened === '' ? '' : said.opened(opened),
    outside === '' ? '' : said.lookedLidOn(outside),
    given === '' ? '' : said.given(given),
    ...r.windows.map(
      (c) =>
        `${trade.rules[c.rule].name}: ${when({ from: c.opens, to: c.closes })}, ${trade.statuses[c.status]}.`,
    ),
    r.left === null ? '' : said.leftOn(dates.day(r.left, r.today)),
  ].filter((line) => line !== '')
}

/** A lane's own label on the drawing, short enough for a phone. */
export function laneLabel(lane: Lane, today: Day, { dates, ribbon: said }: Words): string {
  const name = said.lanes[lane.name]
  const last = lane.bands.at(-1)
  switch (lane.of) {
    case 'along':
    case 'donor':
      return last === undefined ? name : said.goneBy(name, dates.day(last.to, today))
    case 'treatment': {
      const band = lane.bands[0]
      return band === undefined ? name : said.treatment(dates.fromTo(band.from, band.to, today))
    }
    default: {
      const likely = lane.bands.find((b) => b.likely !== undefined)
      if (likely?.likely === undefined) return name
      const day = dates.day(likely.likely, today)
      return likely.kind === 'emergence' ? said.outAbout(name, day) : said.about(name, day)
    }
  }
}
