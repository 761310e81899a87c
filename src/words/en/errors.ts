/** Pages that say what went wrong, in English. */
export const errors = {
  theYard: 'The yard',
  noPage: {
    title: 'No such page',
    heading: 'There is no such page',
    says: 'The address may be mistyped or from an older version.',
  },
  notYours: {
    title: 'Not yours to open',
    beekeepers: 'for beekeepers and operators',
    operators: 'for operators',
    heading: (whose: string) => `This page is ${whose}`,
    says: (name: string) => `You are signed in as ${name}. Ask an operator of this yard if you need it.`,
  },
  noEntry: {
    title: 'No such entry',
    heading: 'There is no such entry in the journal',
    says: 'Entries are never deleted, so the address must be wrong. Find the colony, and the entry in its journal.',
  },
  noColony: {
    title: 'No such colony',
    heading: (tag: string) => `No colony has the tag “${tag}”`,
    nothingLike:
      'No tag in this book looks like it. Check what is painted on the box, or log its intake if it has none yet.',
    didYouMean: 'Did you mean one of these?',
    left: '(left the yard)',
    all: 'All colonies',
    logIntake: 'Log an intake',
  },
  tooMany: {
    title: 'Too many tries',
    /** `wait`: a sentence. */
    says: (wait: string) =>
      `Many links that do not work were opened from your network, so this one was not looked for. ${wait} A link that works opens in any case: check that all of it was copied.`,
  },
  elsewhere: {
    title: 'Open the yard’s own address',
    heading: 'This was sent from another address',
    /** Around the address. */
    says: [
      'Nothing was saved. This yard takes what is typed only from its own pages, at ',
      '. Open that address, and do it again there.',
    ],
    proxy:
      'If that is not the address people use, there is a proxy between: whoever runs this server sets RESETTLE_URL to the address people use, and starts it again.',
    open: (address: string) => `Open ${address}`,
  },
  tooLarge: {
    title: 'Too much at once',
    heading: 'That is too much at once',
    says: 'What was sent is larger than this server takes from a browser. Nothing was saved.',
    fields: (most: number) => `The form has more than ${most} fields, so it was not read. Nothing was saved.`,
    shorten: 'Shorten the note, and save again.',
  },
  broken: {
    title: 'Something broke',
    heading: 'Something broke on our side',
    posted:
      'What you sent was not saved. Go back: the form still holds what you typed, and saving it again cannot make it double.',
    notMade: 'The page could not be made. The journal is not touched by this.',
    full: 'The server’s disk is full. Nothing was saved. Make room on it, then save again: what was saved before is safe.',
    busy: 'The book is being written by another program just now. Nothing was saved. Try again in a moment.',
    damaged:
      'The book’s file cannot be read or written properly. Stop the server and run “resettle verify” on it.',
    bug: 'The server’s log says what happened.',
  },
}
