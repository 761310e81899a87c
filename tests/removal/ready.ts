/** A wall job with nothing unmet, to be changed by tests. Invented. */
import { TICKED } from '../../src/features/removal/item.ts'
import { EMPTY_SHEET, type Sheet } from '../../src/records/removal-sheet.ts'

export const DAY = '2026-06-12'
export const SHOWS = { temperature: (c: number) => `${c} C`, depth: (mm: number) => `${mm} mm` }

export const READY: Sheet = {
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
    bystanders: [],
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
    done: [...TICKED],
    doneOn: DAY,
  },
}

export const but = (change: Partial<Sheet>): Sheet => ({ ...READY, ...change })
