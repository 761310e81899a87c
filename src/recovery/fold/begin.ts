/** The intake opens the story: what came along, and the first questions. */
import { framesOfBees } from '../../biology/strength.ts'
import { inWords } from '../../days.ts'
import { type Intake, queenTaken } from '../../journal/entry.ts'
import { emergenceFromCells } from '../rearing.ts'
import { broodAlong } from '../sources.ts'
import type { State } from '../state.ts'
import { startRearing } from './raise.ts'
import { checkStrength } from './strength.ts'

export function begin(s: State): void {
  const { intake } = s.history
  const along = broodAlong(intake)
  if (along.any) s.sources.push({ from: 'old-queen', lastEgg: s.lastOldEgg, young: along.young })
  s.ask(
    'outside-look',
    intake.on,
    'Do they fly, is there feed, are there dead bees, or have they left? The lid stays on.',
  )
  s.ask('mite-wash', intake.on, 'How many mites per 100 bees? Nobody knows this colony’s load yet.')
  if (intake.tiedComb === true)
    s.ask('comb-ties', intake.on, 'Are the combs attached to their frames? Then the bands come off.')
  beginStrength(s, intake)
  beginQueen(s, intake, along.young)
}

function beginStrength(s: State, intake: Intake): void {
  const frames =
    intake.bees?.frames ?? (intake.bees?.kg === undefined ? undefined : framesOfBees(intake.bees.kg))
  if (frames === undefined) return
  s.strength = { frames, on: intake.on, counted: false }
  checkStrength(s, frames, intake.on)
}

/** The telling visit: anchored on the old queen's last egg day. */
export function askTellingVisit(s: State): void {
  s.ask(
    'telling-visit',
    s.lastOldEgg,
    `Eggs, queen cells, or neither? Her last egg on this comb was laid by ${inWords(s.lastOldEgg)}; from the fourth day after, eggs can only be new, and cells show if she is gone.`,
  )
}

function beginQueen(s: State, intake: Intake, young: boolean): void {
  const cells = intake.queenCells
  const queen = queenTaken(intake)
  if ((cells === 'open' || cells === 'capped') && (queen === 'unseen' || queen === 'lost')) {
    askTellingVisit(s)
    s.void('telling-visit', intake.on)
    // The cells were begun before the removal, for reasons of their own: only their age limits the span.
    startRearing(s, emergenceFromCells(cells, s.lastOldEgg, [], null), cells, intake.on)
    return
  }
  switch (queen) {
    case 'caged':
      s.queen = { is: 'caged', since: intake.on, origin: 'salvaged', stillCagedOn: null }
      askTellingVisit(s)
      s.void('telling-visit', intake.on)
      s.ask(
        'queen-release',
        intake.on,
        'Is she out of her cage, and do the bees accept her? She was caged at intake.',
        s.protocol.salvagedQueenRelease,
      )
      return
    case 'loose':
      s.queen = { is: 'present', seenOn: intake.on }
      askTellingVisit(s)
      return
    case 'unseen':
      s.queen = { is: 'unseen' }
      askTellingVisit(s)
      return
    case 'lost':
      askTellingVisit(s)
      s.queen = {
        is: 'none',
        since: s.lastOldEgg,
        why: 'the queen was lost at the removal',
        chance: young,
        failed: 'own',
      }
      if (young) return
      s.void('telling-visit', intake.on)
      s.ask(
        'egg-frame',
        intake.on,
        'The queen is lost and no young brood came along: they can raise a queen only from eggs given to them.',
      )
  }
}
