/** What a visit asks first: the questions of the plan's checks; and where the others are found, by subject. */
import { factsOf, type Plan, type Rule } from '../../recovery/index.ts'
import { live, toDoOf, type Words } from '../../words/index.ts'

/** What is seen with the lid off. */
export const INSIDE = [
  'eggs',
  'open',
  'capped',
  'onFreshComb',
  'cells',
  'cellCount',
  'queen',
  'searched',
  'framesOfBees',
  'framesOfBrood',
] as const
/** What is seen through the lid as well. */
const OUTSIDE = ['stores', 'signs', 'lost', 'temper'] as const
export type Seen = (typeof INSIDE)[number] | (typeof OUTSIDE)[number]

/** Asked by each rule, the most telling first. What is done and not seen has its own part of the form. */
const ASKS: Readonly<Record<Rule, readonly Seen[]>> = {
  'outside-look': ['stores', 'signs', 'lost'],
  'queen-release': [],
  'telling-visit': ['eggs', 'open', 'cells'],
  'egg-frame': ['eggs', 'cells'],
  'cells-on-egg-frame': ['cells', 'eggs'],
  'recheck-eggs': ['eggs', 'onFreshComb', 'cells'],
  'new-queen-eggs': ['eggs', 'onFreshComb', 'cells'],
  'buy-queen': ['cells', 'queen'],
  'eggs-after-introduction': ['eggs', 'cells'],
  'worker-brood': ['capped', 'eggs', 'cells'],
  'cells-beside': ['cells', 'cellCount'],
  'look-again': ['eggs', 'open', 'cells'],
  'comb-ties': [],
  'mite-wash': [],
  welfare: ['stores', 'signs', 'framesOfBees'],
  'unite-or-boost': ['framesOfBees', 'queen'],
  'laying-workers': ['eggs', 'capped', 'queen'],
  'move-out': ['eggs', 'framesOfBees', 'stores', 'signs'],
}

/** With the lid off and nothing asked, people look for these (judgement). */
const USUAL: readonly Seen[] = ['eggs', 'open', 'cells']

/** So many questions lead; more would not fit on the first screen (390 x 844). */
const MOST = 4

/** What the plan asks with the lid off, in the order of the form: what leads on Today, then what presses most, what shows from outside last. */
export function askedRules(plan: Plan): Rule[] {
  const lead = toDoOf(plan)?.check?.rule
  const rank = (rule: Rule): number => (rule === lead ? 0 : factsOf(rule).lid === 'on' ? 2 : 1)
  return live(plan)
    .map((c) => c.rule)
    .sort((a, b) => rank(a) - rank(b))
}

/** The questions that lead the form, each once; through a shut lid only what can be seen so. */
export function leading(plan: Plan, lidOn: boolean): Seen[] {
  if (lidOn) return [...ASKS['outside-look']]
  const asked = [...new Set(askedRules(plan).flatMap((rule) => ASKS[rule]))].slice(0, MOST)
  return asked.length === 0 ? [...USUAL] : asked
}

export interface Subject {
  /** Its name in the catalogue. */
  title: keyof Words['record']['subjects']
  /** Each in the order of the form; what leads is left out there. */
  fields: readonly Seen[]
}

export const SUBJECTS: { inside: readonly Subject[]; outside: readonly Subject[] } = {
  inside: [
    { title: 'brood', fields: ['eggs', 'open', 'capped', 'onFreshComb', 'framesOfBrood'] },
    { title: 'queen', fields: ['cells', 'cellCount', 'queen', 'searched'] },
    { title: 'strength', fields: ['framesOfBees'] },
  ],
  outside: [{ title: 'outside', fields: ['stores', 'signs', 'lost', 'temper'] }],
}
