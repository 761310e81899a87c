/** A job as it is filled in from the call on, part by part, and what stands in each form. Invented. */
import { expect } from 'vitest'
import { TICKED } from '../../../src/features/removal/item.ts'
import { readNotes } from '../../../src/features/removal/notes-read.ts'
import { EMPTY_SHEET, type Sheet } from '../../../src/records/removal-sheet.ts'
import { wordsOf, type Yard } from '../../support/yard-on.ts'
import type { Fields } from './one-sheet.ts'
import { DRAWING } from './ready.ts'

export const CALLED_ON = '2026-06-10'
export const CALL = {
  name: 'Ottoline Fairweather',
  phone: '555 0100',
  address: '4 Invented Row',
  wayIn: 'Gate code 1234',
  calledOn: '2026-06-09',
  told: 'Bees in the wall since April.',
  plannedOn: CALLED_ON,
  plannedAt: '07:00',
  what: 'wall',
  since: 'weeks',
  access: 'ladder',
  heightM: '12',
  sprayed: 'no',
  bystanders: 'children',
  caller: 'owner',
}
export const SITE = {
  where: 'in the wall left of the porch',
  foundBy: ['heat-camera', 'listening'],
  surface: 'cedar siding',
  sheathingMm: '3/4',
  behind: 'insulation',
  hazards: 'none-new',
  temper: '2',
  africanized: 'no',
}
/** A sheet on which that was told, and the way in. */
export const noting = (told: string): Sheet => ({ ...EMPTY_SHEET, job: { told, wayIn: CALL.wayIn } })
export const PRICE = { pricing: 'hourly', hourly: '95', hours: '4' }
export const CHECK = {
  shownOn: CALLED_ON,
  on: CALLED_ON,
  from: '07:00',
  until: '12:00',
  'hours.0.at': '07:00',
  'hours.0.c': '70',
  'hours.1.at': '10:00',
  'hours.1.c': '76',
  'hours.2.at': '12:00',
  'hours.2.c': '84',
  cutMm: '7/8',
  vacuum: 'bee-vacuum',
  wires: 'none',
  done: [...TICKED, readNotes(noting(CALL.told))],
}
export const WORK = {
  on: CALLED_ON,
  arrivedAt: '07:00',
  openedAt: '07:30',
  boxedAt: '11:00',
  leftAt: '12:00',
  outdoorC: '82',
  method: 'vacuum',
  queen: 'caged',
  queenFoundAt: '10:15',
  'brood.eggs': '0.5',
  'brood.open': '1',
  'brood.capped': '2',
  broodCare: 'closed-chest',
  queenCells: 'none',
  'bees.frames': '5',
  deadBeesKg: '0.2',
  tiedComb: 'yes',
  temper: '2',
  sealed: 'yes',
  cleaned: 'all',
  note: 'Calm at dusk.',
}

/** `yard`: the one of this test. */
export function aCall(yard: () => Yard) {
  const hidden = async (path: string, name: string): Promise<string> =>
    new RegExp(`name="${name}" value="([^"]+)"`).exec((await yard().get(path)).text)?.[1] ?? ''
  const version = (path: string, part: string) => hidden(`${path}/${part}`, 'version')
  return {
    version,
    /** The call is saved; gives the path of its sheet. */
    call: async (fields: Fields = CALL): Promise<string> => {
      const saved = await yard().post('/removals/new', { ...fields, version: '0' })
      expect(saved.status).toBe(303)
      return (saved.to ?? '').replace(/\?.*/, '')
    },
    /** A part is saved; gives where that leads. */
    fill: async (path: string, part: string, fields: Fields): Promise<string> => {
      const saved = await yard().post(`${path}/${part}`, { ...fields, version: await version(path, part) })
      expect(saved.status, wordsOf(saved.text)).toBe(303)
      return saved.to ?? ''
    },
    mark: (path: string) => hidden(`${path}/sign`, 'mark'),
    sheetOf: (path: string) => yard().store.removals.get(path.split('/').at(-1) ?? '')?.last.sheet,
  }
}

/** “Signed” by drawing, as `mark` stood on the page that was shown. */
export const signed = (mark: string, more: Record<string, string> = {}) => ({
  mark,
  how: 'drawn',
  name: CALL.name,
  on: CALLED_ON,
  drawing: DRAWING,
  ...more,
})

/** What stands in a form, as a browser would post it. */
export function typedIn(html: string): Record<string, string> {
  const typed: Record<string, string> = {}
  for (const [tag] of html.matchAll(/<input [^>]*>/g)) {
    const at = (name: string): string | undefined => new RegExp(`\\b${name}="([^"]*)"`).exec(tag)?.[1]
    const [name, type] = [at('name'), at('type')]
    if (name === undefined || ((type === 'radio' || type === 'checkbox') && !/ checked/.test(tag))) continue
    typed[name] = at('value') ?? ''
  }
  for (const [, name, text] of html.matchAll(/<textarea [^>]*name="([^"]+)"[^>]*>([^<]*)</g))
    typed[name ?? ''] = (text ?? '').trim()
  return typed
}
