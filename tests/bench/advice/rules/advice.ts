/** Does as told: asks for the plan on each day at the yard and carries out what it says. */
import type { Answer } from '../ask.ts'
import { type Keeper, TAG } from '../keeper.ts'
import { layerSeen } from './knowledge.ts'
import { HOLD, type Rule, type RuleSettings } from './rule.ts'

/** Frames of eggs that the yard's donors can spare. */
const EGG_FRAMES = 3
/** Things done to one box on one day at most: look, act on it, and see to what that brings. */
const ACTS_A_DAY = 4

const asked = (answer: Answer, rule: string): boolean =>
  answer.checks.some(
    (c) => c.rule === rule && (c.status === 'open' || c.status === 'due' || c.status === 'overdue'),
  )

/** With the lid off anyway, what the plan asks for besides. */
function chores(keeper: Keeper, answer: Answer): void {
  if (asked(answer, 'comb-ties')) keeper.takeOffTies()
  // Once all else is said to be met, "the last wash is too old" asks for a wash, whichever way it is said.
  const missing = keeper.day >= HOLD && answer.readiness.unmet.some((u) => u.what.startsWith('mites'))
  if ((asked(answer, 'mite-wash') || missing) && keeper.day - keeper.washedOn > 7) keeper.wash()
}

/** Carries one advice out. Returns whether the plan is to be asked again today. */
function carryOut(keeper: Keeper, answer: Answer): boolean {
  switch (answer.advice.action) {
    case 'none':
    case 'leave-alone':
      return false
    case 'outside-look':
      keeper.lookOutside()
      return false
    case 'open-and-look':
      if (keeper.looks.at(-1)?.day === keeper.day) {
        chores(keeper, answer)
        return false
      }
      keeper.look()
      chores(keeper, answer)
      return true
    case 'release-queen':
      keeper.seeToCage()
      return true
    case 'give-egg-frame':
      keeper.giveEggFrame()
      return false
    case 'boost':
      keeper.boost()
      return false
    case 'order-queen': {
      const ordered = keeper.queenOrdered
      keeper.orderQueen()
      return !ordered
    }
    case 'buy-queen':
      return buy(keeper)
    case 'feed':
      keeper.feed()
      return false
    case 'wash':
      keeper.wash()
      return true
    case 'see-to-signs':
      keeper.look()
      return false
    case 'take-out-queen':
      keeper.takeOutQueen()
      return false
    case 'unite':
      keeper.unite()
      return false
    case 'call-inspector':
      keeper.callInspector()
      return false
    case 'move-out':
      keeper.moveOut()
      return false
    default:
      throw new Error(`the plan says "${answer.advice.action}", and nobody knows how to do that`)
  }
}

/** Orders her, or with her at hand looks first (for a virgin, for cells, for eggs after all) and asks once more. */
function buy(keeper: Keeper): boolean {
  if (!keeper.queenInHand) {
    keeper.orderQueen()
    return false
  }
  if (keeper.looks.at(-1)?.day !== keeper.day) {
    keeper.look()
    return true
  }
  keeper.introduce()
  return false
}

/** A second opinion on the answer: the same answer, or another action in its place. */
type SecondThought = (keeper: Keeper, answer: Answer) => Answer

const ask = (keeper: Keeper, { asker, costs }: RuleSettings) =>
  asker.ask({
    asOf: keeper.colony.on,
    tag: TAG,
    protocol: { matingMonths: keeper.colony.world.matingMonths as ('4' | '5')[] },
    supplies: {
      queensInHand: keeper.queenInHand ? 1 : 0,
      daysUntilQueens: keeper.daysUntilQueens,
      eggFrames: EGG_FRAMES,
    },
    costs,
    entries: keeper.entries,
  })

function advised(name: string, second: SecondThought = (_, answer) => answer): Rule {
  return {
    name,
    family: 'advice',
    begin(settings) {
      return async (keeper) => {
        for (let n = 0; n < ACTS_A_DAY && keeper.fate === null; n++) {
          const got = ask(keeper, settings)
          const answer = second(keeper, got instanceof Promise ? await got : got)
          if (!carryOut(keeper, answer)) return
        }
      }
    },
  }
}

const instead = (answer: Answer, action: string): Answer => ({ ...answer, advice: { action, why: '' } })

/** Does not unite what still has a frame and a half of bees: leaves it be. */
const uniteOnlySmall: SecondThought = (keeper, answer) => {
  if (answer.advice.action !== 'unite') return answer
  const bees = keeper.looks.findLast((l) => l.framesOfBees !== undefined)?.framesOfBees ?? 3
  const workers = keeper.looks.at(-1)?.eggs === 'multiple'
  if (bees < 1.5 || workers) return answer
  const last = keeper.looks.at(-1)?.day ?? 0
  return instead(answer, keeper.day - last >= 7 ? 'open-and-look' : 'none')
}

/** The same, and a frame of eggs about day 18 wherever no layer was seen. */
const withTestFrame: SecondThought = (keeper, answer) => {
  const due = keeper.day >= 17 && keeper.day <= 23 && !keeper.eggsGiven.some((day) => day >= 11)
  const seen = keeper.looks.some((look) => layerSeen(keeper, look))
  return due && !seen && keeper.introduced.length === 0
    ? instead(answer, 'give-egg-frame')
    : uniteOnlySmall(keeper, answer)
}

export const ADVICE = advised('the advice')

export const ADVICE_AND_MORE: readonly Rule[] = [
  advised('the advice, uniting only under 1.5 frames of bees', uniteOnlySmall),
  advised('the same, and a frame of eggs about day 18 where no queen is proven', withTestFrame),
]
