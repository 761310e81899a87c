/** At the box, in English: what a visit proves, what to be careful of, what moving and treating do. */
import type { Phase } from '../../recovery/index.ts'

const hasQueen: Partial<Record<Phase, string>> = {
  'awaiting-release': 'has a queen in a cage',
  'awaiting-eggs': 'has a queen',
  laying: 'has a laying queen',
  queenright: 'has a laying queen',
  rearing: 'is raising a queen',
  'awaiting-new-queen': 'may have a young queen',
  'queen-unknown': 'may have a queen',
}

export const visit = {
  proof: {
    suspected:
      'Brood disease suspected. Nothing is proven, but the colony is held: nothing is moved, united or given from it until somebody records who cleared it.',
    eggsUntil: (day: string) =>
      `Eggs prove nothing new until after ${day}: they may be from brood that came along or was given.`,
    openUntil: (day: string) =>
      `Open brood proves nothing new until after ${day}: they may be from brood that came along or was given.`,
    cappedUntil: (day: string) =>
      `Capped worker brood proves nothing new until after ${day}: they may be from brood that came along or was given.`,
    phase: (now: string, before: string) => `${now}. Before this visit: ${before}.`,
    spans: {
      emergence: 'The queen leaves her cell',
      firstEgg: 'First egg',
      workerBroodProof: 'Proof by capped worker brood',
    },
    answers: (names: string) => `Answers: ${names}.`,
    next: (name: string, days: string) => `Next: ${name}, ${days}.`,
  },
  cautions: {
    suspected:
      'Suspected brood disease: leave it closed, clean tools and gloves before the next box, take no comb or brood from it.',
    fierce: (temper: number) =>
      `Fierce when last seen (${temper} of 5): full veil and gloves, somebody within call. Where Africanized bees are established, local rules decide.`,
    quiet: 'Lid on: a young queen may be leaving her cell, or out to mate.',
    sprayed: 'Sprayed before the removal: keep none of its comb or honey, feed none of it.',
    buyQueen: 'Look for a virgin and for queen cells first, and cut cells out: either kills a bought queen.',
    giveFrame: 'Take the frame from a colony in which brood disease was looked for and none seen.',
    unite:
      'Look for brood disease in both first. Laying workers kill a queen: unite only with a strong queenright colony.',
    hasQueen,
    uniting: (tag: string, has: string) =>
      `${tag} ${has}. Where the colony it goes into has one too, take out the lesser one before you unite them, cells too: two queens fight, and both can be lost.`,
    warmth: (full: string, short: string) => `Full look from ${full} on; a short one from ${short}.`,
  },
  moving: {
    foragers: (distance: string) =>
      `Under about ${distance} foragers fly back to the old stand and are lost. Move in the evening, closed, and lean branches before the entrance, so that they learn the place anew.`,
    youngQueen: (days: string | null) =>
      `A young queen who has learnt the old place may not come home from her flight: ${days === null ? 'move before she flies, or wait until she lays' : `not ${days}, if it can wait`}.`,
    treatingCaged:
      'A queen is in a cage in there: formic acid, thymol and the like can kill her. See to her first.',
    treatingYoung:
      'A young queen may be in there: formic acid, thymol and the like can cost her. Wait until she lays, unless the mites cannot wait.',
    treated: (day: string, product: string | undefined) =>
      `Treated ${day}${product === undefined ? '' : ` (${product})`}.`,
    washAgain: (days: string) => `Wash again ${days}.`,
    noWithdrawal: 'No withdrawal is noted: the label says it.',
    withdrawal: (day: string) => `Withdrawal until ${day}.`,
  },
  doubt: {
    correct: 'correct it in its journal',
    tell: 'tell a beekeeper',
    ifWrong: (way: string) => `If an entry is wrong, ${way}.`,
    lookAgain: (days: string, way: string) => `Look once more ${days}; or if an entry is wrong, ${way}.`,
  },
  bound: (from: string, how: string) =>
    `Bound to ${from}, in which brood disease is suspected: it ${how}. Held.`,
}
