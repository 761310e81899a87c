/** What a look left out, though the answer to what was asked hangs on it. */
import { type Inspection, never } from '../../journal/index.ts'
import type { Rule } from '../rules.ts'
import type { Sought } from '../says/advice.ts'
import type { Ask } from '../state.ts'

/** A look that was asked for and left out what the answer hangs on: the question stays, as late as it was. */
export function leftOut(look: Inspection, asked: readonly Ask[]): void {
  for (const ask of asked) {
    if (ask.answeredOn !== null || ask.voidSince !== null) continue
    const missing = soughtBy(ask.rule, look).filter((what) => !lookedFor(look, what))
    ask.missing = missing
    if (missing.length > 0) ask.lookedOn = look.on
  }
}

/** What the answer hangs on. Eggs seen answer by themselves; "none" needs the cells beside it. */
function soughtBy(rule: Rule, look: Inspection): readonly Sought[] {
  switch (rule) {
    case 'telling-visit':
      return look.eggs === 'single' || look.eggs === 'multiple' ? [] : ['eggs', 'queen cells']
    case 'cells-on-egg-frame':
    case 'cells-beside':
      return ['queen cells']
    case 'recheck-eggs':
    case 'new-queen-eggs':
    case 'eggs-after-introduction':
    case 'look-again':
      return ['eggs']
    case 'worker-brood':
      return ['capped brood']
    default:
      return []
  }
}

function lookedFor(look: Inspection, what: Sought): boolean {
  switch (what) {
    case 'eggs':
      return look.eggs !== undefined
    case 'queen cells':
      return look.cells !== undefined
    case 'capped brood':
      return look.capped !== undefined
    default:
      return never(what)
  }
}
