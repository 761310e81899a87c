/** The shape of a plan: what `planOf` returns, what `resettle plan` prints and what pages show. Public format. */
import type { Day, Span } from '../days.ts'
import type { Action } from './actions.ts'
import type { Rule } from './rules.ts'
import type { Reason, UnmetReason } from './says/said.ts'
import type { Exposure } from './tracing.ts'

export { ACTIONS, type Action } from './actions.ts'
export { RULES, type Rule } from './rules.ts'

export const PHASES = [
  'awaiting-release',
  'awaiting-eggs',
  'queen-unknown',
  'rearing',
  'awaiting-new-queen',
  'laying',
  'queenright',
  'queenless',
  'laying-workers',
  'closed',
] as const
export type Phase = (typeof PHASES)[number]

/** waiting before `opens`; open from `opens`; due from `due`; overdue after `closes`; answered or void whenever so. */
export type CheckStatus = 'waiting' | 'open' | 'due' | 'overdue' | 'answered' | 'void'

/** A question with a window of days, which a later observation answers. */
export interface Check {
  rule: Rule
  opens: Day
  due: Day
  closes: Day
  status: CheckStatus
  /** The day of the observation that answered it. */
  answeredOn?: Day
  /** Why it is asked, in an English sentence; and the same as data, for other languages and programs. */
  why: string
  reason: Reason
  /** Where its window comes from. */
  source: string
}

export interface Advice {
  action: Action
  /** In English sentences; and the same as data, sentence by sentence. */
  why: string
  reasons: readonly Reason[]
  /** The last day on which it stands, where the calendar alone ends it. */
  until?: Day
  /** The sign it is about, where one leads. */
  sign?: 'robbing' | 'beetles' | 'moths' | 'deformed-wings'
  /** The check it does, or answers; left out where the advice stands alone. */
  rule?: Rule
}

/** Advice before it is put into words. */
export type Advised = Omit<Advice, 'why'>

/** What a look left out, though the answer to a check hangs on it. */
export interface Missing {
  check: Rule
  what: 'eggs' | 'queen cells' | 'capped brood'
  /** The look that left it out. */
  since: Day
}

/** Somebody said that the box is lost: a beekeeper confirms it by recording how it left. */
interface Lost {
  on: Day
  how: 'no-bees' | 'dead' | 'gone'
  by: string
}

/** From and to, both days included. */
export interface DayRange {
  from: Day
  to: Day
}

export interface PlanSpans {
  /** Last day on which young brood at hand can still be made a queen. */
  cellsPossibleUntil?: Day
  /** When the queen being raised leaves her cell. */
  emergence?: Span
  /** When the coming layer's first egg is expected. */
  firstEgg?: Span
  /** When capped worker brood can prove a mated queen. */
  workerBroodProof?: Span
  /** When laying workers are to be expected if no queen and no young brood comes. */
  layingWorkerRisk?: Span
  /** No capped brood at all: mites are on the bees, not in cells. */
  broodless?: DayRange
}

/** The last day on which that sighting proves nothing new; null when there is no other source. */
export interface Horizon {
  eggs: Day | null
  open: Day | null
  capped: Day | null
}

export interface Unmet {
  what: string
  reason: UnmetReason
  /** Earliest day it can be met; null when nothing seen so far allows a date. */
  earliest: Day | null
}

export interface Readiness {
  ready: boolean
  unmet: Unmet[]
  expected: Span | null
}

export interface Plan {
  tag: string
  asOf: Day
  /** Days since intake (0 on the day itself). */
  day: number
  phase: Phase
  checks: Check[]
  advice: Advice
  /** Leave the lid on: a queen is emerging, maturing or mating. */
  quiet: DayRange | null
  spans: PlanSpans
  horizon: Horizon
  /** Evidence that contradicts the spans, each with its likeliest explanations. */
  surprises: string[]
  /** The same as data, in the same order. */
  surprised: readonly Reason[]
  /** What the last looks left open that they were to answer; empty when nothing. */
  missing: Missing[]
  /** Bound to a colony in which brood disease is suspected: held, and to be looked at; null when it is not. */
  exposed: Exposure | null
  /** Found dead, gone or without bees, and not yet confirmed. */
  lost: Lost | null
  /** The next day after today on which something is asked: what it can wait until, where nothing is asked today. */
  until: Day | null
  readiness: Readiness
}
