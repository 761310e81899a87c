/** The intake opens the story: what came along, and the first questions. */
import { framesOfBees } from '../../biology/index.ts'
import { type Intake, never, queenTaken } from '../../journal/index.ts'
import { emergence, emergenceFromCells, emergenceOfGivenVirgin } from '../rearing.ts'
import { broodAlong } from '../sources.ts'
import { type State, trapped } from '../state.ts'
import { noteCellsBeside } from './cells-beside.ts'
import { startRearing } from './raise.ts'
import { checkStrength } from './strength.ts'

export function begin(s: State): void {
  const { intake } = s.history
  const along = broodAlong(intake)
  if (along.any) s.sources.push({ from: 'old-queen', lastEgg: s.lastOldEgg, young: along.young })
  s.ask('outside-look', intake.on, { code: 'first-days' })
  s.ask('mite-wash', intake.on, { code: 'load-unknown' })
  if (intake.tiedComb === true) s.ask('comb-ties', intake.on, { code: 'combs-tied' })
  if (intake.temper !== undefined) s.temper = { on: intake.on, value: intake.temper }
  beginStrength(s, intake)
  beginQueen(s, intake, along.young)
}

/** A weight says how many bees came, and is no count of frames: it does not call a colony weak. */
function beginStrength(s: State, intake: Intake): void {
  const { frames, kg } = intake.bees ?? {}
  if (frames !== undefined) {
    s.strength = { frames, on: intake.on, counted: false }
    checkStrength(s, frames, intake.on)
  } else if (kg !== undefined) s.strength = { frames: framesOfBees(kg), on: intake.on, counted: false }
}

/** The first brood check: anchored on the old queen's last egg day. */
export function askTellingVisit(s: State): void {
  s.ask('telling-visit', s.lastOldEgg, { code: 'first-brood-check', lastEgg: s.lastOldEgg })
}

function beginQueen(s: State, intake: Intake, young: boolean): void {
  const cells = intake.queenCells
  const queen = queenTaken(intake)
  if (cells === 'open' || cells === 'capped') {
    // The cells were begun before the removal, for reasons of their own: only their age limits the span.
    const from = emergenceFromCells(cells, s.lastOldEgg, [], null)
    if (queen === 'unseen' || queen === 'lost') {
      askTellingVisit(s)
      s.void('telling-visit', intake.on)
      startRearing(s, from, cells, intake.on)
      return
    }
    noteCellsBeside(s, { on: intake.on, stage: cells, count: null, emergence: from.span })
  }
  if (intake.queenVirgin === true && (queen === 'caged' || queen === 'loose')) {
    startRearing(s, emergence(emergenceOfGivenVirgin(s.lastOldEgg), null), 'emerged', intake.on)
    if (queen === 'caged') cageUp(s, 'virgin')
    return
  }
  switch (queen) {
    case 'caged':
      // Her days in the cage count from the caging, which is the removal.
      s.queen = { is: 'caged', since: s.lastOldEgg, origin: 'salvaged', stillCagedOn: null }
      askTellingVisit(s)
      s.void('telling-visit', intake.on)
      cageUp(s, 'queen')
      return
    case 'loose':
      s.queen = { is: 'present', seenOn: intake.on }
      askTellingVisit(s)
      return
    case 'unseen':
      if (trapped(s.history)) queenless(s, young, 'trap-takes-foragers')
      else {
        s.queen = { is: 'unseen' }
        askTellingVisit(s)
      }
      return
    case 'lost':
      queenless(s, young, 'lost-at-removal')
      return
    default:
      never(queen)
  }
}

function cageUp(s: State, who: 'queen' | 'virgin'): void {
  const since = s.lastOldEgg
  s.caged = { since, who, origin: 'salvaged', stillCagedOn: null }
  const on = since === s.history.intake.on ? null : since
  s.ask('queen-release', since, { code: 'caged-at-removal', on }, s.protocol.salvagedQueenRelease)
}

function queenless(s: State, young: boolean, code: 'trap-takes-foragers' | 'lost-at-removal'): void {
  const why = [{ code }]
  askTellingVisit(s)
  s.queen = { is: 'none', since: s.lastOldEgg, why, chance: young, failed: 'own' }
  if (young) return
  const { intake } = s.history
  s.void('telling-visit', intake.on)
  s.ask('egg-frame', intake.on, { code: 'no-young-brood', because: why })
}
