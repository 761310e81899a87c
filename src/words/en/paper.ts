/** The round on paper, typed in afterwards, and the labels, in English. */
export const paper = {
  /** The three things done with paper. */
  onPaper: 'On paper',
  ways: { '/paper': 'Print a round sheet', '/sheet-entry': 'Type in a sheet', '/labels': 'Stand labels' },
  size: 'Paper',
  sizes: { a4: 'A4', letter: 'Letter' },
  show: 'Show',
  print: 'Print',
  boxes: 'Boxes',
  onTheRound: 'on the round',
  all: 'all',
  asPrinted: 'As it is printed',
  /** What stands before a box to be ticked or a line to write on. */
  labels: {
    tag: 'Tag',
    at: 'Time',
    opened: 'Lid',
    eggs: 'Eggs',
    open: 'Open brood',
    capped: 'Capped brood',
    onFreshComb: 'That brood',
    cells: 'Queen cells',
    cellCount: 'How many',
    queen: 'Queen',
    searched: 'Looked',
    framesOfBees: 'Frames of bees',
    framesOfBrood: 'Frames of brood',
    lost: 'Found',
    stores: 'Stores',
    signs: 'Signs',
    temper: 'Temper',
    'cage.found': 'Queen’s cage',
    'given1.what': 'Given',
    'given1.frames': 'Frames',
    'given1.donor': 'From',
    'given1.caged': 'A queen',
    'given1.litres': 'Syrup',
    'ties.done': 'Bands',
    'wash.bees': 'Wash: bees',
    'wash.mites': 'Mites',
    'missed.reason': 'Not reached',
    note: 'Note',
  },
  caged: 'Caged',
  notCaged: 'Not caged',
  /** Answers said shorter on paper, where a line is a line: by their values, or 'field value' where one field alone says so. */
  short: {
    other: 'other',
    'torn-down': 'torn',
    'brood-disease-suspected': 'brood disease?',
    'mated-queen': 'mated queen',
    treatment: 'treatment',
    'not-found': 'not found',
    'in-haste': 'glanced',
    thoroughly: 'every frame',
    released: 'out',
    'still-caged': 'still in it',
  } as Record<string, string>,
  sheet: {
    title: 'Round sheet',
    heading: 'Round sheet on paper',
    day: 'Day',
    empty: (yard: string | null, more: boolean) =>
      `No box asks for anything${more ? ' more' : ''} on that day${yard === null ? '' : ` at ${yard}`}: the sheet would be empty.`,
    pages: (n: number, size: string) =>
      `${n === 1 ? '1 page' : `${n} pages`}, ${size}. Print it from your browser. Afterwards the whole sheet is typed in on one page: `,
    typeIn: 'type in this sheet',
    walkedBy: 'walked by',
    page: (n: number, of: number) => `page ${n} of ${of}`,
    ofStay: (n: number) => `day ${n}`,
    seenToday: 'seen today',
    time: 'time',
    lidOn: ', lid on',
    late: (window: string) => `late ${window}`,
    also: (names: string) => ` Also: ${names}.`,
    mind: (caution: string) => ` Mind: ${caution}`,
    why: 'Why',
  },
  entry: {
    title: 'Type in a sheet',
    heading: 'Type in a round sheet',
    day: 'Day of the round',
    walkedBy: 'Walked by',
    save: 'Save the sheet',
    leftEmpty: 'Boxes left empty are left alone.',
    saved: (saved: number, refused: number) => {
      const done =
        saved === 0
          ? 'Nothing new is in the book'
          : saved === 1
            ? '1 box is in the book'
            : `${saved} boxes are in the book`
      if (refused === 0) return `${done}.`
      const left = refused === 1 ? '1 box is not' : `${refused} boxes are not`
      return `${saved === 0 ? `${left} in the book yet` : `${done}; ${left} yet`}: see what is wrong there, mend it and save again. What is in the book is not sent twice.`
    },
    anotherBox: 'Another box',
    known: (day: string) => `In the book for ${day}:`,
    signedBy: (what: string, by: string) => `${what}, signed ${by}`,
    empty: 'must not be empty',
    noColony: (tag: string) => `names no colony of this yard: “${tag}”`,
    both: (label: string) => `is ticked, but ${label} is filled in too: keep one of them`,
    noLid: 'is missing: opened, or lid on?',
  },
  stands: {
    title: 'Stand labels',
    about:
      'A label for each box: the tag to read from a distance, and a code. Point a phone’s camera at it and the colony’s page opens, of whichever colony has the tag then.',
    none: 'No colonies stand there.',
    address: 'Address of this book, as phones reach it',
    badAddress: 'must be an address like https://yard.example',
    here: (origin: string) =>
      `${origin} is this machine alone: no phone in the yard can open it. Put in the address that phones use.`,
    notHttps: (origin: string) =>
      `Phones open ${origin}, but keep no round without signal: that needs https.`,
  },
}
