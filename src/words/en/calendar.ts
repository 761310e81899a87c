/** Checks and windows in people's own calendars, and the page of their addresses, in English. */
import type { Shows } from '../../people/index.ts'

export const calendar = {
  title: 'Calendar',
  heading: 'In your calendar',
  about:
    'Your phone’s own calendar can show the coming checks, quiet times and windows, and keeps them up to date by itself: what is answered disappears, what moves, moves. Give it an address that only you have; it works until you take it back, signed in or not.',
  takenBack: 'Taken back: that address opens nothing any more.',
  make: 'Make an address',
  whichYard: 'Which yard',
  whatStands: 'What stands in it',
  /** What it shows, with a few words more. */
  shows: {
    'yard-day': ['One entry a yard and day', 'the boxes and what they ask for in its text'],
    'best-day': ['Each box, from the best day', 'to the last on which it is good'],
    window: ['Each box, its whole window', 'from its first day to its last'],
  } satisfies Record<Shows, [string, string]>,
  sayWhat: 'Say what stands in the calendar.',
  noYard: 'There is no such yard with colonies in it.',
  tooMany: (n: number) => `You have ${n} addresses already: take one back first.`,
  made: {
    title: 'Your new address',
    label: 'Calendar address',
    open: 'Open in this phone’s calendar',
    copy: 'Copy the address',
    how: 'Or copy it into your calendar, where it says to subscribe to a calendar by its address. It is shown this once. Whoever has it can read the tags, the yards and what is due, so do not pass it on; take it back here if it got into other hands.',
    notHttps:
      'This address is not https: many calendars refuse it, and others on the same network could read along.',
  },
  yours: 'Your addresses',
  /** `asked`: when a calendar last asked; null: never. */
  line: (made: string, asked: string | null) =>
    `made ${made}; ${asked === null ? 'no calendar has asked for it yet' : `a calendar last asked ${asked}`}`,
  takeBack: 'Take back',
  /** Said to those who hear the page, after the button’s words. */
  takeBackOf: (yard: string) => ` the address of ${yard}`,
  /** What stands in the calendar itself. */
  late: (what: string) => `late: ${what}`,
  expected: (what: string) => `expected: ${what}`,
  window: (days: string, best: string) => `Window: ${days}, best ${best}.`,
  expectedOn: (days: string, best: string) => `Expected: ${days}, best ${best}.`,
  theBox: (waits: string) => `The box ${waits}.`,
  quiet: {
    title: 'leave the lid on',
    text: 'A young queen may be leaving her cell, maturing or flying to mate. Look from outside only.',
  },
  cells: {
    title: 'last day its young brood can become a queen',
    text: 'If it has neither eggs nor queen cells by then, only a frame of eggs or a bought queen is left.',
  },
  layingWorkers: {
    title: 'laying workers threaten',
    text: 'No queen is proven, and the last young brood is three to four weeks old.',
  },
  broodless: {
    title: 'no capped brood (for a mite treatment)',
    text: 'A treatment then reaches mites that cannot hide in cells. Respirator, gloves, and the label registered where you are: the label is the law.',
  },
  yardDay: (yard: string, boxes: string, late: number) =>
    `${yard}: ${boxes}${late === 0 ? '' : `, ${late} late`}`,
  until: (what: string, day: string) => `${what}, until ${day}`,
  waits: 'can wait until this day',
}
