/** What is known of a colony while its entries are read in order, and the questions opened and answered on the way. */

import { CELLS_SHOW_AFTER } from '../biology/index.ts'
import { addDays, type Day, later, type Span } from '../days.ts'
import type { History, Inspection, Note } from '../journal/index.ts'
import type { Check, Rule } from './plan-types.ts'
import type { Protocol, Window } from './protocol.ts'
import { SOURCE_OF } from './rules.ts'
import type { Sought } from './says/advice.ts'
import type { Cause } from './says/inside.ts'
import { inEnglish, type Reason } from './says/said.ts'
import type { Source } from './sources.ts'

type Sign = NonNullable<Inspection['signs']>[number]
type Settled = NonNullable<Note['settles']>

export type QueenOrigin = 'salvaged' | 'bought'

/** Whose eggs they are: the queen that came along, one raised here, or a bought one. */
export type Layer = 'own' | 'raised' | 'bought'

/** What failed last, so that the next rung of the ladder follows. */
export type Rung = 'own' | 'frame' | 'raised' | 'bought'

/** The story of the queen, as far as evidence carries it. */
export type Queen =
  /** Nobody has seen her, and nothing proves that she is gone. */
  | { is: 'unseen' }
  /** She is here and free, but no egg is proven hers yet. `seenOn`: when she was first known to be here. */
  | { is: 'present'; seenOn: Day }
  | { is: 'caged'; since: Day; origin: QueenOrigin; stillCagedOn: Day | null }
  | { is: 'released'; on: Day; origin: QueenOrigin; asked: number }
  /** Cells, or a cell or virgin that was given. `emerged`: she is known to be out; `notBefore`: by the measured extremes. */
  | {
      is: 'rearing'
      emergence: Span
      notBefore: Day
      firstSeen: Day
      stage: 'open' | 'capped' | 'emerged'
      emerged: boolean
      /** Nobody saw a virgin: a swarm came without brood and without a queen seen, and may have brought one. */
      assumed?: true
    }
  /** New eggs or open brood are proven. */
  | { is: 'laying'; firstSeen: Day; lastSeen: Day; freshComb: boolean; firstEgg: Span; layer: Layer }
  | { is: 'queenright'; provenOn: Day; lastSeen: Day; firstEgg: Span | null; layer: Layer }
  /** No queen. `chance`: young brood at hand may still become one. */
  | { is: 'none'; since: Day; why: readonly Cause[]; chance: boolean; failed: Rung }
  | { is: 'laying-workers'; since: Day }

/** A question that has been opened; `answeredOn` or `voidSince` once it is no longer asked. */
export interface Ask {
  rule: Rule
  opens: Day
  due: Day
  closes: Day
  why: Reason
  answeredOn: Day | null
  voidSince: Day | null
  /** Last visit that looked and could not answer yet. */
  lookedOn: Day | null
  /** What that visit left out, though the answer hangs on it; empty when it looked at all of it. */
  missing: readonly Sought[]
  /** A frame of eggs as insurance, not as the next rung. */
  insurance?: true
}

/** A queen in a cage in this box, whatever else goes on in it. */
export interface Caged {
  since: Day
  who: 'queen' | 'virgin'
  origin: QueenOrigin
  stillCagedOn: Day | null
}

/** Queen cells beside a queen that lays, or that came along with one. */
export interface CellsBeside {
  on: Day
  stage: 'open' | 'capped'
  count: number | null
  emergence: Span
}

/** Bees that walked into a trap: foragers, and no queen unless somebody saw one. */
export const trapped = ({ intake }: History): boolean =>
  intake.removal.type === 'trap-out' || intake.removal.method === 'trap'

export class State {
  readonly asks: Ask[] = []
  readonly sources: Source[] = []
  readonly surprises: Reason[] = []
  queen: Queen = { is: 'unseen' }
  caged: Caged | null = null
  cellsBeside: CellsBeside | null = null
  /** Last look for queen cells, and what was found. */
  cellsSeen: { on: Day; holding: boolean; count: number | null } | null = null
  /** Somebody said that the box is lost; a beekeeper confirms it by the outcome. */
  lost: { on: Day; how: 'no-bees' | 'dead' | 'gone'; by: string } | null = null
  /** A proven layer was found without eggs, for reasons that pass. */
  pausedSince: Day | null = null
  /** A queen that fails was seen on that day: she has to come out before anything else is given. */
  takeOut: Day | null = null
  /** A cage was found with its queen dead or rejected and nobody has looked inside since: another may be in here. */
  otherQueen: Day | null = null
  /** The last signs noted, and where they were seen. */
  signs: { on: Day; seen: readonly Sign[] } | null = null
  temper: { on: Day; value: number } | null = null
  /** Last day on which eggs or open brood were seen. */
  broodSeenOn: Day | null = null
  moved: { on: Day; km: number | null; sameYard: boolean } | null = null
  withdrawalUntil: Day | null = null
  settled = new Set<Settled>()
  /** Two looks that cannot both be right; a third is asked for. */
  disagreeSince: Day | null = null
  /** The frame of eggs whose cells are still to be read, or were read as none. */
  testFrame: { given: Day; read: 'none' | null } | null = null
  /** Last egg day of the old queen: the removal day. */
  readonly lastOldEgg: Day
  /** Last visit of any kind, the intake to begin with. */
  lastVisit: Day
  /** Latest count of frames of bees, and its day. */
  strength: { frames: number; on: Day; counted: boolean } | null = null
  stores: { level: 'low' | 'enough' | 'heavy'; on: Day } | null = null
  /** Last day on which feed was given. */
  fedOn: Day | null = null
  /** Last day on which a mite treatment was given. */
  treatedOn: Day | null = null
  mites: { per100: number; on: Day } | null = null
  /** Last look for brood disease. `suspectedOn`: the look a suspicion rests on, while it stands. */
  diseaseLook: { on: Day; suspected: boolean; suspectedOn?: Day } | null = null
  beetles: { on: Day; seen: boolean } | null = null
  /** First look at several eggs a cell that may still be a new queen's doubles. */
  doublesSince: Day | null = null
  /** Since when no queen is proven and none is being raised; null while one is. */
  watchingSince: Day | null = null
  /** Last look that found no eggs. */
  lastNoEggs: Day | null = null

  constructor(
    readonly history: History,
    readonly protocol: Protocol,
  ) {
    this.lastOldEgg = history.removedOn
    this.lastVisit = history.intake.on
  }

  /** Opens a question anchored on a day. A question of the same rule still open is replaced. */
  ask(rule: Rule, anchor: Day, why: Reason, window: Window = this.protocol.windows[rule]): Ask {
    this.void(rule, anchor)
    const ask: Ask = {
      rule,
      opens: addDays(anchor, window.opens),
      due: addDays(anchor, window.due),
      closes: addDays(anchor, window.closes),
      why,
      answeredOn: null,
      voidSince: null,
      lookedOn: null,
      missing: [],
    }
    this.asks.push(ask)
    return ask
  }

  /** The question of that rule that is still open, if any. */
  pending(rule: Rule): Ask | undefined {
    return this.asks.findLast((a) => a.rule === rule && a.answeredOn === null && a.voidSince === null)
  }

  /** Answers the open question of each rule. */
  answer(on: Day, ...rules: Rule[]): void {
    for (const rule of rules) {
      const ask = this.pending(rule)
      if (ask !== undefined) ask.answeredOn = on
    }
  }

  /** The question no longer stands: something else has overtaken it. */
  void(rule: Rule, on: Day): void {
    const ask = this.pending(rule)
    if (ask !== undefined) ask.voidSince = on
  }

  /** A look that touched the question but could not settle it. */
  looked(on: Day, ...rules: Rule[]): void {
    for (const rule of rules) {
      const ask = this.pending(rule)
      if (ask !== undefined) ask.lookedOn = on
    }
  }

  /** Two looks that cannot both be right: said, and asked about once more. */
  disagree(on: Day, why: Reason): void {
    this.surprises.push(why)
    this.disagreeSince = on
    this.ask('look-again', on, why)
  }

  /** The queen may have been lost long before the removal: the days without her are not counted from it. */
  get lossMayBeEarlier(): boolean {
    const { removal } = this.history.intake
    return removal.type === 'abandoned-hive' || removal.sprayed === 'yes' || trapped(this.history)
  }

  /** A look found no cells: brood that was here long enough for them to show was passed over by the bees. */
  passOver(on: Day): void {
    for (const source of this.sources)
      if (addDays(source.lastEgg, CELLS_SHOW_AFTER) <= on) source.passedOver = true
  }

  /** Last day on which young brood is known to have been added or laid; the removal day when there was none. */
  get lastYoungBrood(): Day {
    return this.sources.reduce((at, s) => later(at, s.youngUntil ?? s.lastEgg), this.lastOldEgg)
  }
}

/** The status of a question on a day. */
function statusOn(ask: Ask, today: Day): Check['status'] {
  if (ask.answeredOn !== null) return 'answered'
  if (ask.voidSince !== null) return 'void'
  if (today < ask.opens) return 'waiting'
  if (today < ask.due) return 'open'
  return today <= ask.closes ? 'due' : 'overdue'
}

/** The question as the plan shows it. */
export function checkOf(ask: Ask, today: Day): Check {
  return {
    rule: ask.rule,
    opens: ask.opens,
    due: ask.due,
    closes: ask.closes,
    status: statusOn(ask, today),
    ...(ask.answeredOn === null ? {} : { answeredOn: ask.answeredOn }),
    why: inEnglish([ask.why]),
    reason: ask.why,
    source: SOURCE_OF[ask.rule],
  }
}
