/** What went wrong, and working without signal, in English. */
export const trouble = {
  today: 'Today',
  theYard: 'The yard',
  noPage: {
    title: 'No such page',
    heading: 'There is no such page',
    why: 'The address may be mistyped or from an older version.',
  },
  notYours: {
    title: 'Not yours to open',
    heading: (whose: string) => `This page is ${whose}`,
    why: (name: string) => `You are signed in as ${name}. Ask an operator of this yard if you need it.`,
    beekeepers: 'for beekeepers and operators',
    operators: 'for operators',
  },
  noEntry: {
    title: 'No such entry',
    heading: 'There is no such entry in the journal',
    why: 'Entries are never deleted, so the address must be wrong. Find the colony, and the entry in its journal.',
  },
  noColony: {
    title: 'No such colony',
    heading: (tag: string) => `No colony has the tag “${tag}”`,
    nothingLike:
      'No tag in this book looks like it. Check what is painted on the box, or log its intake if it has none yet.',
    didYouMean: 'Did you mean one of these?',
    left: ' (left the yard)',
    all: 'All colonies',
    log: 'Log an intake',
  },
  tooLarge: {
    title: 'Too much at once',
    heading: 'That is too much at once',
    why: 'What was sent is larger than this server takes from a browser. Nothing was saved.',
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
  noSignal: {
    title: 'No signal',
    heading: 'This page needs signal',
    why: 'The yard’s server does not answer, and this phone keeps only the round: the boxes in the yard, and recording.',
    signIn: 'If the server answers but the session has ended, signing in needs signal too.',
    waits: 'What waits to be sent',
  },
  notKept: {
    title: 'Not saved',
    heading: 'This was not saved',
    why: 'The yard’s server does not answer, and this phone had no room to keep it, or may not. Go back: what you typed is still in the form. Make room on the phone, or try again with signal.',
  },
}
