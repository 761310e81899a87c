/** planOf on colonies with 60 standing entries. Goal: under 1 ms median. */
import { addDays } from '../../src/days.ts'
import { planOf } from '../../src/decision/index.ts'
import { type History, historyOf } from '../../src/journal/history.ts'
import { Dice, randomFrom, story } from '../store/yard.ts'
import { report, timed } from './clock.ts'

const INTAKE = '2026-05-01'
const ENTRIES = 60

function histories(count: number): History[] {
  const dice = new Dice(randomFrom(60))
  const made: History[] = []
  while (made.length < count) {
    const told = story(dice, { tag: 'P-1', intakeOn: INTAKE, until: '2027-12-31', stay: 200, leaves: 0 })
    const history = historyOf(
      'P-1',
      told.map((t) => t.entry),
    )
    if (history !== null && history.entries.length >= ENTRIES)
      made.push({ ...history, entries: history.entries.slice(0, ENTRIES) })
  }
  return made
}

export function bench(): void {
  const colonies = histories(50)
  let n = 0
  const call = (): void => {
    const history = colonies[n++ % colonies.length]
    if (history !== undefined) planOf(history, addDays(history.entries.at(-1)?.on ?? INTAKE, 1))
  }
  report(`plan of one colony, ${ENTRIES} entries`, timed(call, 5000), 'under 1 ms')
  const entries = colonies[0]?.entries ?? []
  report(
    `history of one colony, ${ENTRIES} entries`,
    timed(() => historyOf('P-1', entries), 5000),
  )
}
