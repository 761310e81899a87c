/** What pages say while one types, and what a phone reports, in English. */
export const islands = {
  showThem: 'Show them',
  newer: 'Newer entries came in: show them',
  iSee: 'I see',
  signInTheyGo: (waiting: string) => `${waiting}: sign in, and they go.`,
  roundNotHere: 'The round is not on this phone yet: open Today with signal.',
  roundAsOf: (when: string) => `This phone has the round as of ${when}.`,
  promised: 'The browser has promised to keep it.',
  mayClear: 'The browser may clear it out when it is short of room; on the home screen it is safer.',
  newerVersion: 'A newer version is ready. What waits to be sent goes over to it.',
  useIt: 'Use it',
  iKnow: 'I know',
  clearedNothing:
    'This browser had cleared what this phone kept. Nothing was waiting to be sent; the round has been fetched again.',
  cleared: (unsent: number, when: string | null) =>
    `This browser has cleared what this phone had kept. ${unsent === 1 ? '1 entry that was' : `${unsent} entries that were`} not sent yet ${unsent === 1 ? 'is' : 'are'} lost${when === null ? '' : `, the last one of ${when}`}. Write ${unsent === 1 ? 'it' : 'them'} down again. On the home screen Resettle is safer from this.`,
  draftSaved:
    'This is saved already. Saving it again changes nothing; to change it, correct it in the journal.',
  draftBack: (when: string, photos: boolean) =>
    `What you typed ${when} is back${photos ? ', without its photos: choose them again' : ''}.`,
  emptyForm: 'Start with an empty form',
  smaller: (n: number) => (n === 1 ? 'Making it smaller…' : `Making ${n} smaller…`),
  unread: (names: string) => `Not a picture this browser can read: ${names}.`,
  over: (most: number, over: number) => `One entry takes ${most} photos; ${over} left out.`,
  photo: (n: number) => `Photo ${n}`,
  leaveOut: 'Leave out',
  copied: 'Copied',
  notCopied: 'This browser does not let it be copied',
  scan: {
    label: 'Scan a label',
    itsLabel: 'Scan its label',
    reading: 'Reading the label…',
    unread:
      'No label could be read. Hold the phone straight over the code, near enough to fill half the picture.',
    notOurs: 'That is no label of this book.',
    right: (tag: string) => `✓ The label says ${tag}: the right box.`,
    wrong: (tag: string, wanted: string) =>
      `Stop: the label says ${tag}, and this is the form of ${wanted}. `,
    instead: (tag: string) => `Write at ${tag} instead`,
  },
  photoSize: (n: number, kb: number) =>
    `${n === 1 ? '1 photo' : `${n} photos`}, ${kb} kB. Where they were taken is gone from them.`,
}
