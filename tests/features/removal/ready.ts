/** A wall job with nothing unmet, to be changed by tests. Invented. */
import { TICKED } from '../../../src/features/removal/item.ts'
import { readNotes } from '../../../src/features/removal/notes-read.ts'
import { placeOf } from '../../../src/features/removal/place.ts'
import type { Known } from '../../../src/features/removal/second.ts'
import { EMPTY_SHEET, type Sheet } from '../../../src/records/removal-sheet.ts'

export const DAY = '2026-06-12'
export const SHOWS = { temperature: (c: number) => `${c} C`, depth: (mm: number) => `${mm} mm` }

/** Who has an account in the yard of these tests; Ines writes and decides. */
export const YARD: Known = {
  first: ['Ines'],
  yard: ['Ines', 'Bram', 'Teuila', 'Casimir'],
  accounts: ['Ines', 'Bram', 'Teuila', 'Casimir'],
  open: ['Ines', 'Bram', 'Teuila'],
  fresh: [],
  elsewhere: new Map(),
}

/** A photo of a paper, kept under its own checksum. */
export const PAPER = 'a'.repeat(64)
export const PHOTO = { id: PAPER, bytes: new Uint8Array([1]) }

/** A name drawn by hand, with ink enough. */
export const DRAWN = 'M40 120L90 60L140 130L220 50'
/** The same as its points are sent. */
export const DRAWING = '[[[40,120],[90,60],[140,130],[220,50]]]'

/** The sheet looked at, asked and ticked where it is now. */
export function here(s: Sheet): Sheet {
  const at = placeOf(s)
  const seen = { ...at, on: s.check.doneOn ?? DAY }
  return {
    ...s,
    site: { ...s.site, lookedAt: { behind: seen, hazards: seen, old: seen, bystanders: seen } },
    check: { ...s.check, doneAt: at },
  }
}

export const READY: Sheet = here({
  ...EMPTY_SHEET,
  job: { name: 'Ottoline Fairweather', address: '4 Invented Row', plannedOn: DAY },
  site: {
    type: 'wall',
    where: 'left of the porch',
    access: 'ladder',
    heightM: 4,
    sheathingMm: 19,
    behind: ['insulation'],
    hazards: [],
    old: 'no',
    bystanders: [],
    temper: 2,
    africanized: 'no',
    sprayed: 'no',
  },
  agreement: {
    pricing: 'hourly',
    hourly: 90,
    signature: { how: 'paper', name: 'Ottoline Fairweather', on: '2026-06-10', terms: 'As agreed.' },
  },
  check: {
    on: DAY,
    hours: [
      { at: '06:00', c: 18 },
      { at: '09:00', c: 24 },
      { at: '12:00', c: 29.4 },
      { at: '15:00', c: 33 },
    ],
    from: '06:00',
    until: '12:00',
    cutMm: 22,
    vacuum: 'bee-vacuum',
    wires: 'none',
    done: [...TICKED],
    doneOn: DAY,
  },
})

/** The sheet with its notes read before the cut. */
export const read = (s: Sheet): Sheet => ({
  ...s,
  check: { ...s.check, done: [...(s.check.done ?? []), readNotes(s)] },
})

/** A “go” for the ready sheet. */
export const goAt = (at?: string, by = 'Ines'): NonNullable<Sheet['decision']> => ({
  is: 'go',
  by,
  on: DAY,
  ...(at === undefined ? {} : { at }),
  unmet: [],
  ...placeOf(READY),
})

/** Its ticks without that one. */
export const unticked = (tick: string, s = READY): Sheet['check'] => ({
  ...s.check,
  done: s.check.done?.filter((t) => t !== tick) ?? [],
})

/** Another sheet, looked at where it is. */
export const but = (change: Partial<Sheet>): Sheet => here({ ...READY, ...change })

/** The form before the cut, as it is tapped there, with its “Go”. */
export const TAPPED = {
  hottestC: '75',
  cutMm: '3/4',
  vacuum: 'bee-vacuum',
  wires: 'none',
  done: [...TICKED],
  is: 'go',
}

/** The call of the ready sheet, and what was found there, as their forms are tapped. */
export const CALLED = {
  name: 'Ottoline Fairweather',
  address: '4 Invented Row',
  plannedOn: DAY,
  what: 'wall',
  access: 'ladder',
  heightM: '13',
  sprayed: 'no',
  bystanders: 'none',
}
export const SITED = {
  where: 'left of the porch',
  sheathingMm: '3/4',
  temper: '2',
  africanized: 'no',
  hazards: 'none-tested',
}

/** Its gas pipe, and the fitter who shut it here. */
export const GAS_CLEARED: Sheet = {
  ...READY,
  site: { ...READY.site, behind: ['gas'] },
  check: {
    ...READY.check,
    clearances: [
      {
        hazard: 'gas',
        as: 'gas-fitter',
        who: 'Edda Brandt',
        licence: '4711',
        on: DAY,
        photo: PAPER,
        knew: ['gas'],
        ...placeOf(READY),
      },
    ],
  },
}

/** Everything tapped that a swarm is asked, without reading; `where` as somebody said it. */
export const swarmAt = (where?: string): Sheet =>
  here({
    ...EMPTY_SHEET,
    job: { bees: 'swarm', since: 'today', address: '4 Invented Row' },
    site: {
      type: 'swarm',
      ...(where === undefined ? {} : { where }),
      access: 'ground',
      heightM: 2,
      bystanders: [],
      sprayed: 'no',
      temper: 1,
      africanized: 'no',
    },
    check: { on: DAY, hottestC: 20, wires: 'none', done: [...TICKED], doneOn: DAY },
  })
