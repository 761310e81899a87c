/** Checks, actions, phases and a colony's line, in English. */
import {
  type Action,
  type CheckStatus,
  type Phase,
  type Plan,
  type PressingSign,
  type Rule,
  SOURCE_OF,
} from '../../recovery/index.ts'

interface RuleWords {
  /** What one says on the way to the box. */
  name: string
  /** What the visit is to find out, or what is to be done. */
  question: string
}

const rules: Record<Rule, RuleWords> = {
  'outside-look': { name: 'First look from outside', question: 'Flying? Feed? Dead bees? Still there?' },
  'queen-release': { name: 'Look to the queen’s cage', question: 'Is she out of the cage, and accepted?' },
  'telling-visit': { name: 'The first brood check', question: 'Eggs? Queen cells? Neither?' },
  'egg-frame': { name: 'Give a frame of eggs', question: 'Give a frame of eggs from a donor.' },
  'cells-on-egg-frame': { name: 'Read the frame of eggs', question: 'Queen cells on the frame you gave?' },
  'recheck-eggs': { name: 'Look for eggs again', question: 'Eggs that cannot be the donor’s?' },
  'new-queen-eggs': { name: 'Look for the new queen’s eggs', question: 'Eggs yet?' },
  'buy-queen': {
    name: 'Introduce a mated queen',
    question: 'No virgin, no cells? Then introduce a mated queen.',
  },
  'eggs-after-introduction': { name: 'Look for the bought queen’s eggs', question: 'Is she laying?' },
  'worker-brood': {
    name: 'Look for capped worker brood',
    question: 'Flat worker caps, not raised drone caps?',
  },
  'cells-beside': { name: 'Look to the queen cells', question: 'What became of the queen cells?' },
  'look-again': { name: 'Look again', question: 'Which look was right?' },
  'comb-ties': { name: 'Take off the comb ties', question: 'Combs attached? Take the bands off.' },
  'mite-wash': { name: 'Mite wash', question: 'How many mites on 100 bees?' },
  welfare: { name: 'Welfare look', question: 'Stores, robbing, beetles, moths, strength?' },
  'unite-or-boost': { name: 'Unite or boost', question: 'Unite it, or add capped brood.' },
  'laying-workers': { name: 'Deal with laying workers', question: 'Unite with a strong queenright colony.' },
  'move-out': { name: 'Move out', question: 'Last look for disease, and go.' },
}

const actions: Record<Action, string> = {
  none: 'Nothing to do',
  'leave-alone': 'Leave the lid on',
  'outside-look': 'Look from outside, lid on',
  'open-and-look': 'Open it and look',
  'release-queen': 'See to the queen’s cage',
  'give-egg-frame': 'Give a frame of eggs',
  'buy-queen': 'Introduce a mated queen',
  unite: 'Unite it',
  'move-out': 'Move it out',
  'call-inspector': 'Close it up and call the apiary inspector',
  boost: 'Add a frame of capped brood',
  'order-queen': 'Order a mated queen',
  feed: 'Feed it',
  wash: 'Wash bees for mites',
  'see-to-signs': 'See to what was found',
  'take-out-queen': 'Find the queen and take her out',
}

const phases: Record<Phase, string> = {
  'awaiting-release': 'Queen still in her cage',
  'awaiting-eggs': 'Queen in, waiting for her eggs',
  'queen-unknown': 'Not known yet if there is a queen',
  rearing: 'Raising a queen',
  'awaiting-new-queen': 'New queen maturing and mating',
  laying: 'Eggs of its own, not yet proven worker brood',
  queenright: 'Queenright',
  queenless: 'Queenless',
  'laying-workers': 'Laying workers',
  closed: 'Left the yard',
}

const statuses: Record<CheckStatus, string> = {
  waiting: 'can wait',
  open: 'may be done',
  due: 'due',
  overdue: 'late',
  answered: 'answered',
  void: 'no longer asked',
}

/** What was found, on a line of the round; what to do about it is the reason. */
const signs: Record<PressingSign, string> = {
  robbing: 'Stop the robbing',
  beetles: 'See to the hive beetles',
  moths: 'See to the wax moths',
  'deformed-wings': 'Deformed wings: wash for mites',
}

const left: Record<string, string> = {
  'moved-out': 'Moved out',
  united: 'United with another colony',
  died: 'Died',
  absconded: 'Absconded',
  other: 'Left the yard',
  unknown: 'Gone, not known how',
}

const found: Record<NonNullable<Plan['lost']>['how'], string> = {
  'no-bees': 'Found without bees',
  dead: 'Found dead',
  gone: 'Found gone',
}

export const trade = {
  rules,
  /** Where a check’s window comes from: the core has it, for the plan is a public format. */
  sources: SOURCE_OF,
  actions,
  phases,
  statuses,
  signs,
  left,
  found,
  everyBroodFrame: 'Look at every frame of brood',
  foundOn: (how: string, day: string, by: string) => `${how} on ${day}, signed ${by}`,
  toConfirm: (how: string) => `${how}, to be confirmed`,
  nothingPlanned: 'nothing planned',
  /** `day` with its weekday. */
  canWait: (day: string) => `can wait until ${day}`,
  itCanWait: (day: string) => `it can wait until ${day}`,
  lidOnInQuiet: 'leave the lid on',
}
