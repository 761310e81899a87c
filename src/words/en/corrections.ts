/** Correcting an entry, taking it back, moving it to the right box, moving a colony, in English. */
export const corrections = {
  /** 'the visit of Sun 10 May' */
  named: (kind: string, day: string) => `${kind} of ${day}`,
  correct: (what: string) => `Correct ${what}`,
  change: (what: string) => `Change ${what}`,
  saveCorrection: 'Save the correction',
  saveChange: 'Save the change',
  asItStands: (tag: string) =>
    `The entry of ${tag} as it stands. What it said before stays in the journal, struck out.`,
  notSent: (tag: string) => `The entry of ${tag}, not sent yet. What it said before is not kept.`,
  waiting: 'Waiting to be sent',
  takeBack: (what: string) => `Take back ${what}`,
  takeItBack: 'Take it back',
  intakeBack: (tag: string) =>
    `Taking back the intake takes ${tag} out of the yard, as if it had never been logged. If only something in it is wrong, correct it instead.`,
  didNotHappen: 'For what did not happen. The plan is made again without it.',
  anotherThan: (tag: string) => `It was another box than ${tag}`,
  otherBox: {
    title: (kind: string, day: string) => `${kind} of ${day} was at another box`,
    button: 'Move it there',
    says: (tag: string) =>
      `Taken back at ${tag}, where it stays in the journal struck out, and written down at the right box. Both plans are made again.`,
    to: 'The right box',
    toHint: 'Its tag',
    along: 'What goes along',
    reason: (tag: string) => `It was another box: ${tag}`,
  },
  move: {
    title: (tag: string) => `${tag} to another stand`,
    button: 'Save the move',
    now: (place: string) => `Now in ${place}.`,
    newYard: 'A new yard',
  },
  intake: {
    tag: 'Tag on the box',
    whereFrom: 'Where from',
    queenAndBrood: 'Queen and brood',
    theBox: 'The box',
    fromSheet: 'What the removal sheet says of it: look it over, or add to it',
    howTaken: 'Customer; how and when it was taken',
    seldom: 'A virgin, marked or clipped; brood chilled or dead',
    weights: 'Weight, dead bees, tied comb, temper',
    noteAndPhotos: 'Note and photos',
    broodAlong: 'Brood comb that came along, in frames. Not counted is not the same as none.',
  },
}
