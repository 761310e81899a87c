/**
 * Every rule in one table: what it counts from, its window, whether the lid comes off, what it presses for and
 * where its window comes from. Whatever else needs a list of rules reads it here.
 */
import type { Action } from './actions.ts'
import type { Window } from './protocol.ts'

/**
 * What a rule asks for. `look`: a question about the queen, answered at an open box. `deed`: something to be done about
 * her. `chore`: done at an open box too, but never a reason to open one before it is due. `outside`: answered with the
 * lid on. `leave`: it may go.
 */
type Task = 'look' | 'deed' | 'chore' | 'outside' | 'leave'

export interface RuleFacts {
  /** What the window counts from, in words. */
  anchor: string
  /** Days after the anchor; a yard may set its own. `queen-release` is for a bought queen. */
  window: Window
  /** `either`: lid on where nothing else asks to open it. */
  lid: 'on' | 'off' | 'either'
  task: Task
  /** Of looks: their order where several are asked, the most telling first (judgement). */
  telling?: number
  /** Of looks: what the answer is read from. */
  finds?: 'eggs' | 'cells' | 'worker-brood' | 'laying-workers'
  /** Whether its answer decides if young brood at hand gets to become a queen: while that is possible, nothing presses more. */
  decidesCells?: true
  /** The advice that does what is asked. */
  deeds?: readonly Action[]
  /** After a look that found nothing, days until looking again tells more than it disturbs (common practice); 1 when left out. */
  letBe?: number
  /** Where the window comes from, for the reader. */
  source: string
}

/** In the order in which a colony meets them, which is the order in which they are listed. */
const RULE_TABLE = {
  'outside-look': {
    anchor: 'the intake',
    window: { opens: 1, due: 2, closes: 3 },
    lid: 'on',
    task: 'outside',
    source: 'Common practice: the first days after a move are when a colony leaves.',
  },
  'queen-release': {
    anchor: 'the day a bought queen went in caged',
    window: { opens: 3, due: 4, closes: 6 },
    lid: 'off',
    task: 'deed',
    deeds: ['release-queen'],
    decidesCells: true,
    source:
      'Common practice: 2-3 days for a queen of their own, 3-5 for a stranger; keepers differ (48 hours to 5 days).',
  },
  'telling-visit': {
    anchor: 'the removal, the old queen’s last egg day',
    window: { opens: 4, due: 5, closes: 7 },
    lid: 'off',
    task: 'look',
    telling: 1,
    finds: 'eggs',
    decidesCells: true,
    source:
      'Eggs hatch after 3 days, so eggs from day 4 are new (Winston 1987); cells are begun within 48 hours of loss (Fell & Morse 1984).',
  },
  'egg-frame': {
    anchor: 'the day it is known that there is no queen',
    window: { opens: 0, due: 1, closes: 3 },
    lid: 'off',
    task: 'deed',
    deeds: ['give-egg-frame', 'buy-queen'],
    decidesCells: true,
    source:
      'Common practice; larvae make a queen until 3 days after hatching, best within 36 hours (Oliver 2021).',
  },
  'cells-on-egg-frame': {
    anchor: 'the day the frame was given',
    window: { opens: 3, due: 4, closes: 6 },
    lid: 'off',
    task: 'look',
    telling: 2,
    finds: 'cells',
    decidesCells: true,
    source:
      'Cells show after 1-5 days (Oliver 2021; common practice); read the frame by day 8, before a virgin could emerge on day 10.',
  },
  'recheck-eggs': {
    anchor: 'the day the frame was given',
    window: { opens: 8, due: 10, closes: 14 },
    lid: 'off',
    task: 'look',
    telling: 3,
    finds: 'eggs',
    source:
      'Past the horizon of the frame given (eggs hatch after 3 days, open brood is capped after 9; Winston 1987).',
  },
  'new-queen-eggs': {
    anchor: 'the likely emergence; its last day from the latest one',
    window: { opens: 12, due: 16, closes: 21 },
    lid: 'off',
    task: 'look',
    telling: 4,
    finds: 'eggs',
    letBe: 4,
    source:
      'First egg 10.6 days after emergence, 4-22 (Szabo et al. 1987); 12.9 (Pérez-Sato & Ratnieks 2006). Planned at 12, given up after 21.',
  },
  'buy-queen': {
    anchor: 'the day it is known that raising one failed',
    window: { opens: 0, due: 2, closes: 7 },
    lid: 'off',
    task: 'deed',
    deeds: ['buy-queen'],
    source: 'Common practice; laying workers threaten 3-4 weeks after the last young brood.',
  },
  'eggs-after-introduction': {
    anchor: 'the day she was let out',
    window: { opens: 4, due: 7, closes: 10 },
    lid: 'off',
    task: 'look',
    telling: 5,
    finds: 'eggs',
    letBe: 3,
    source: 'Common practice: eggs 3-10 days after release.',
  },
  'worker-brood': {
    anchor: 'the first new eggs seen',
    window: { opens: 6, due: 9, closes: 14 },
    lid: 'off',
    task: 'look',
    telling: 8,
    finds: 'worker-brood',
    source:
      'Worker brood is capped 9 days after the egg (Winston 1987); only flat worker caps prove a mated queen.',
  },
  'cells-beside': {
    anchor: 'the day on which queen cells were seen beside a queen',
    window: { opens: 3, due: 4, closes: 6 },
    lid: 'off',
    task: 'look',
    telling: 6,
    finds: 'cells',
    source:
      'Common practice: an open cell is capped within five days and a capped one emerges within eight (Winston 1987), so what becomes of them is seen in three to six.',
  },
  'look-again': {
    anchor: 'the looks that disagree; after a pause in laying, five days later',
    window: { opens: 2, due: 3, closes: 5 },
    lid: 'off',
    task: 'look',
    telling: 0,
    finds: 'eggs',
    source:
      'Arithmetic: eggs hatch after three days (Winston 1987), so a second look two to three days on tells which of two looks was right. Common practice.',
  },
  'comb-ties': {
    anchor: 'the intake',
    window: { opens: 7, due: 10, closes: 21 },
    lid: 'off',
    task: 'chore',
    source: 'Common practice: combs are attached, and bands often chewed, within one to two weeks.',
  },
  'mite-wash': {
    anchor: 'the intake; its last day is the last of the hold',
    window: { opens: 14, due: 21, closes: 30 },
    lid: 'off',
    task: 'chore',
    source: 'Common practice; threshold 3 mites per 100 bees by wash (USDA-ARS).',
  },
  welfare: {
    anchor: 'the last visit of any kind',
    window: { opens: 5, due: 7, closes: 10 },
    lid: 'either',
    task: 'outside',
    source:
      'Common practice: small beetles and robbing can ruin a weak colony within two weeks of warm weather.',
  },
  'unite-or-boost': {
    anchor: 'the count under the least strength',
    window: { opens: 0, due: 2, closes: 7 },
    lid: 'off',
    task: 'deed',
    deeds: ['unite'],
    source: 'Common practice: 3-5 frames of bees make a summer colony that can live.',
  },
  'laying-workers': {
    anchor: 'the sign, or three weeks after the last young brood',
    window: { opens: 0, due: 1, closes: 5 },
    lid: 'off',
    task: 'look',
    telling: 7,
    finds: 'laying-workers',
    deeds: ['unite'],
    source:
      'Onset about 14 days (Collison), 21 (Oliver 2021) to 30 days without queen and young brood; shaking out is disputed.',
  },
  'move-out': {
    anchor: 'the day on which all is met',
    window: { opens: 0, due: 3, closes: 14 },
    lid: 'either',
    task: 'leave',
    deeds: ['move-out'],
    source: 'The hold of the protocol, and every condition for leaving met.',
  },
} as const satisfies Record<string, RuleFacts>

export type Rule = keyof typeof RULE_TABLE
export const RULES = Object.keys(RULE_TABLE) as [Rule, ...Rule[]]

const facts: Record<Rule, RuleFacts> = RULE_TABLE

export const factsOf = (rule: Rule): RuleFacts => facts[rule]

/** The rules that fit, in the order of the table. */
export const rulesWhere = (fits: (f: RuleFacts) => boolean): readonly Rule[] =>
  RULES.filter((rule) => fits(facts[rule]))

/** One value of every rule. */
export const eachRule = <T>(value: (f: RuleFacts, rule: Rule) => T): Record<Rule, T> =>
  Object.fromEntries(RULES.map((rule) => [rule, value(facts[rule], rule)])) as Record<Rule, T>

/** Questions answered at an open box, most telling first. */
export const LOOKS: readonly Rule[] = [...rulesWhere((f) => f.task === 'look')].sort(
  (a, b) => (facts[a].telling ?? 0) - (facts[b].telling ?? 0),
)
export const CHORES = rulesWhere((f) => f.task === 'chore')
/** Answered with the lid on. */
export const OUTSIDE = rulesWhere((f) => f.task === 'outside')
/** Where each window comes from, in a line for the reader. */
export const SOURCE_OF: Record<Rule, string> = eachRule((f) => f.source)
/** What each window counts from. */
export const ANCHOR_OF: Record<Rule, string> = eachRule((f) => f.anchor)
