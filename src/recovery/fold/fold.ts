/** Reads a history in order into a state. One entry, one step; every visit also answers "has anybody looked?" */

import type { Day } from '../../days.ts'
import { later } from '../../days.ts'
import {
  type Disagreement,
  type DiseaseCleared,
  type History,
  isVisit,
  type Move,
  never,
  type StandingEntry,
  saysNothing,
  withDayLooks,
} from '../../journal/index.ts'
import type { Protocol } from '../protocol.ts'
import { State } from '../state.ts'
import { give, lookAtCage, washMites } from './act.ts'
import { begin } from './begin.ts'
import { inspect } from './inspect.ts'
import { keepWatch } from './watch.ts'

export function fold(history: History, protocol: Protocol): State {
  const s = new State(history, protocol)
  begin(s)
  askWelfare(s, history.intake.on)
  keepWatch(s, history.intake.on)
  // Notes may come after the outcome; nothing is asked any more then.
  let left = false
  const { entries, disagree } = withDayLooks(history.entries.slice(1))
  for (const e of entries) {
    step(s, e)
    const apart = e.kind === 'inspection' && e.opened ? disagree.find((d) => d.on === e.on) : undefined
    if (apart !== undefined) sayApart(s, apart)
    left ||= e.kind === 'outcome'
    if (!left) keepWatch(s, e.on)
  }
  return s
}

function step(s: State, e: StandingEntry): void {
  if (isVisit(e) && !(e.kind === 'inspection' && saysNothing(e))) visited(s, e.on)
  switch (e.kind) {
    case 'inspection':
      inspect(s, e)
      return
    case 'given':
      give(s, e)
      return
    case 'queen-cage':
      lookAtCage(s, e)
      return
    case 'ties-removed':
      s.answer(e.on, 'comb-ties')
      return
    case 'mite-wash':
      washMites(s, e)
      return
    case 'disease-cleared':
      clearDisease(s, e)
      return
    case 'outcome':
      s.answer(e.on, ...(e.what === 'moved-out' ? (['move-out'] as const) : []))
      if (e.what === 'united') s.answer(e.on, 'unite-or-boost', 'laying-workers')
      for (const ask of s.asks) if (ask.answeredOn === null && ask.voidSince === null) ask.voidSince = e.on
      return
    case 'move':
      moved(s, e)
      return
    case 'note':
      if (e.settles !== undefined) s.settled.add(e.settles)
      return
    // A round that did not reach it says nothing; the intake is read at the beginning.
    case 'missed-visit':
    case 'intake':
      return
    default:
      never(e)
  }
}

/** Two people, or one person twice, on one day: they cannot both be right. */
function sayApart(s: State, { on, about }: Disagreement): void {
  s.disagree(on, { code: 'looks-disagree', on, about })
}

function moved(s: State, e: Move): void {
  const before = s.history.entries
    .filter((x) => (x.kind === 'move' || x.kind === 'intake') && x !== e && x.on <= e.on)
    .at(-1)
  const from = before?.kind === 'move' || before?.kind === 'intake' ? before.yard : null
  s.moved = { on: e.on, km: e.distanceKm ?? null, sameYard: from === e.yard }
}

/** The inspector's word is a look of that day; a laboratory's result is none, and an own look has its own entry. */
function clearDisease(s: State, e: DiseaseCleared): void {
  const look = s.diseaseLook
  if (look === null) return
  s.diseaseLook = { on: e.clearedBy === 'inspector' ? later(look.on, e.on) : look.on, suspected: false }
}

function visited(s: State, on: Day): void {
  const look = s.pending('outside-look')
  if (look !== undefined && on >= look.opens) look.answeredOn = on
  const welfare = s.pending('welfare')
  // A visit before the window only moves it; a visit in or after it answers it.
  if (welfare !== undefined && on < welfare.opens) s.asks.splice(s.asks.indexOf(welfare), 1)
  else if (welfare !== undefined) welfare.answeredOn = on
  s.lastVisit = on
  askWelfare(s, on)
}

function askWelfare(s: State, on: Day): void {
  s.ask('welfare', on, { code: 'welfare', last: on })
}
