/** The sentences of a letter to a customer: plain and warm, no terms of the trade left unexplained, nobody named. */
import type { Gift, Intake, Outcome } from '../../journal/index.ts'
import type { Phase } from '../../recovery/index.ts'

/** Where they lived, of the built-in kinds of removal. A kind that a yard added may name a customer: it is left out. */
export const OUT_OF: Record<string, string> = {
  wall: 'out of the wall',
  floor: 'out of the floor',
  roof: 'out of the roof',
  tree: 'out of the tree',
  ground: 'out of the ground',
  'utility-box': 'out of the meter or utility box',
  equipment: 'out of the machine they had settled in',
  container: 'out of the container they had settled in',
  swarm: 'from where they hung',
  'trap-out': 'out through a trap at their entrance',
  'abandoned-hive': 'out of their abandoned hive',
}

export const QUEEN_CAME: Record<Intake['queen'], string> = {
  caged: 'We found their queen, and she travelled in a small cage in their midst.',
  loose: 'We saw their queen go into the box with them.',
  unseen: 'We did not see their queen that day, which is common: there are thousands of bees and one of her.',
  unknown: 'Nobody wrote down whether their queen was seen that day.',
  lost: 'Their queen was lost in the removal, so from the first day they needed a new one.',
}

/** How they are, while they are with us. */
export const NOW: Record<Exclude<Phase, 'closed'>, string> = {
  'awaiting-release':
    'Their queen is with them, in a small cage until they know her scent. That takes a few days.',
  'awaiting-eggs': 'Their queen should be with them. We are waiting for the eggs she lays in the new box.',
  'queen-unknown':
    'We do not know yet whether they have a queen. Their comb tells: eggs in it show that one is laying.',
  rearing:
    'They are raising a new queen. We leave their box shut meanwhile: a young queen is easily lost when it is opened.',
  'awaiting-new-queen':
    'A young queen should be among them. She needs calm, warm days to fly out and mate, and then some days before she lays.',
  laying:
    'A queen is laying. Whether she mated well shows when her brood is capped, about nine days after it was laid.',
  queenright: 'They have a laying queen, and her brood is sound. That is what all the waiting was for.',
  queenless: 'They have no queen at the moment. We are helping them to one.',
  'laying-workers':
    'They have been without a queen for long, and some workers have begun to lay, which cannot keep a colony going. The best that can usually be done is to join them with a colony that has a queen.',
}

/** How it ended. The day comes before it. */
export const ENDED: Record<Outcome['what'], string> = {
  'moved-out': 'they moved out of our holding yard, on to the place where they are to stay.',
  united: 'we joined them with another colony. Your bees live on in it.',
  died: 'we had to write them down as lost: the colony died. We are sorry. Bees that lose their home, their stores and often their queen on one day do not all come through, whatever is done for them.',
  absconded:
    'we found their box empty: they had left it. We are sorry. Bees sometimes give up a new home, and where they went we cannot tell.',
  other: 'they left our holding yard.',
  unknown: 'they were no longer in our holding yard, and our book does not say how they left it.',
}

/** What they were given; null: not listed one by one. */
export const GIVEN: Record<Gift, string | null> = {
  'egg-frame':
    'We gave them a comb of eggs from a strong colony: bees without a queen can raise one from it.',
  'open-brood': 'We gave them a comb of young brood from a strong colony.',
  'capped-brood': 'We gave them a comb of brood about to emerge, to make them stronger.',
  'queen-cell': 'We gave them a queen cell, from which a young queen emerges.',
  virgin: 'We gave them a young queen, not yet mated.',
  'mated-queen': 'We gave them a young queen that was laying already.',
  treatment: 'We treated them against mites.',
  bees: 'We gave them more bees.',
  combs: null,
  syrup: null,
  pollen: null,
}

/** About the opening they were taken out of. Common practice. */
export const CLOSE_IT =
  'Old comb smells of bees for years and draws in others. What keeps them out is clearing it away and closing the opening; that is work for somebody equipped for ladders and walls, once nothing flies there any more.'

/** What to know about the place they came from. Common practice. */
export const THE_PLACE: readonly string[] = [
  'If bees gather there again: keep back, keep children and animals away, and neither spray them nor shut them in. Call somebody who removes bees.',
  'Trouble breathing, a swollen face or faintness after a sting: call the emergency number at once.',
]
