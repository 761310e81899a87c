/** Words that somebody in haste has written, and what answers for them: nothing of another kind does. Invented. */
import { describe, expect, test } from 'vitest'
import { beforeCut, holds } from '../../../src/features/removal/before-cut.ts'
import { clearanceProblems } from '../../../src/features/removal/decide.ts'
import { isCleared } from '../../../src/features/removal/hazards.ts'
import { otherSheetsOf } from '../../../src/features/removal/other-sheets.ts'
import { placeOf } from '../../../src/features/removal/place.ts'
import { hangsInWords } from '../../../src/features/removal/swarm.ts'
import { writtenAnew, writtenIn } from '../../../src/features/removal/written.ts'
import type { Job, Sheet, Site } from '../../../src/records/removal-sheet.ts'
import type { Clearance } from '../../../src/records/said-by-others.ts'
import { sameHouse } from '../../../src/records/same-house.ts'
import { DEFAULT_PROTOCOL } from '../../../src/recovery/index.ts'
import { but, DAY, GAS_CLEARED, PAPER, READY, read, SHOWS, swarmAt, YARD } from './ready.ts'

const holding = (s: Sheet, others: Parameters<typeof beforeCut>[4] = []): string[] =>
  // The tap by which notes are read once more answers for none of this.
  beforeCut(read(s), DEFAULT_PROTOCOL, SHOWS, DAY, others)
    .unmet.filter(holds)
    .map((i) => i.id)
const site = (more: Partial<Site>): Sheet => but({ site: { ...READY.site, ...more } })
const job = (more: Partial<Job>): Sheet => but({ job: { ...READY.job, ...more } })
const heard = (s: Sheet): string[] => writtenIn(s).map((w) => w.tapped[0])

const paper = (hazard: Clearance['hazard'], s: Sheet, more: Partial<Clearance> = {}): Clearance => ({
  hazard,
  as: hazard === 'gas' ? 'gas-fitter' : hazard === 'asbestos' ? 'surveyor' : 'electrician',
  who: 'Edda Brandt',
  licence: '4711',
  on: DAY,
  photo: PAPER,
  says: 'clear',
  knew: [hazard],
  ...placeOf(s),
  ...more,
})

describe('lines above are no socket', () => {
  const socket = site({ behind: ['electric'] })
  const cleared: Sheet = { ...socket, check: { ...socket.check, clearances: [paper('electric', socket)] } }
  const told = (words: string): Sheet => ({ ...cleared, job: { ...cleared.job, told: words } })
  test('so a cleared socket does not answer for a line, a meter or a pole in words', () => {
    expect(holding(cleared)).toEqual([])
    for (const words of [
      'power line right above the nest, hangs low',
      'the meter is beside it',
      'a pole at the corner',
      'transformador',
    ])
      expect(holding(told(words)), words).toEqual(['notes'])
  })
  test('it answers for what is behind the surface, and a tap on “near” for the line', () => {
    expect(holding(told('an outlet on the inside, old wiring'))).toEqual([])
    const near = site({ nearWires: true })
    expect(heard({ ...near, job: { ...near.job, told: 'power line above, and a cable to it' } })).toEqual([])
  })
})

describe('name, address, telephone and e-mail are words too', () => {
  test.each([
    [{ name: 'Mrs Fairweather - ALLERGIC to bees, epipen' }, ['allergic']],
    [{ address: '4 Invented Row (gas meter under the nest)' }, ['gas', 'near-wires']],
    [{ phone: '555 0100 ask about gas pipe' }, ['gas']],
    [{ email: 'kids@example.org' }, ['children']],
  ] as [Partial<Job>, string[]][])('%o', (more, what) => {
    expect(heard(job(more))).toEqual(what)
  })
  test('a street is called as it is, and “no gas, no kids” is none', () => {
    for (const address of ['2 School Lane', '14 Cable Street', 'Gas Works Road 3', '9 Calle Luz'])
      expect(heard(job({ address })), address).toEqual([])
    expect(heard(job({ told: 'no gas, no kids, nobody allergic, not aggressive' }))).toEqual([])
    expect(heard(job({ told: 'No wires. Sin gas' }))).toEqual([])
    expect(heard(job({ told: 'no gas man came yet, not sure of the wires' }))).toEqual(['gas', 'electric'])
    expect(heard(job({ told: 'no idea about gas' }))).toEqual(['gas'])
  })
})

describe('“built after 1980”', () => {
  test.each([
    { told: 'house is from 1962' },
    { told: '1920 farmhouse, lath and plaster' },
    { told: 'Listed building' },
    { told: 'built in the sixties' },
  ])('is asked again where somebody has written: %o', (more) => {
    expect(holding(job(more))).toEqual(['notes'])
  })
  test('by what is cut too; and an answer that says old is not asked about its words', () => {
    expect(holding(site({ surface: 'plaster and lath' }))).toEqual(['notes'])
    for (const surface of ['cement shingles', 'popcorn', 'fibro', 'Uralit', 'chapa de cemento'])
      expect(holding(site({ surface })), surface).toEqual(['notes'])
    const { old: _, ...unsaid } = READY.site
    const old = but({ job: { ...READY.job, told: 'from 1962' }, site: { ...unsaid, hazards: ['asbestos'] } })
    expect(holding(old)).toEqual(['trade-asbestos'])
  })
  test('a number of a house or a telephone is no year, and 1994 is after', () => {
    expect(holding(job({ address: '1850 Main Street', phone: '555 1940' }))).toEqual([])
    expect(holding(job({ told: 'built 1994, renovated 2010' }))).toEqual([])
  })
  test('looked again: this part of it is newer', () => {
    const s = job({ told: 'house is from 1962, the porch is new' })
    const done = [...(s.check.done ?? []), 'not-here:old']
    expect(holding({ ...s, check: { ...s.check, done } })).toEqual([])
  })
})

describe('a swarm that is in something', () => {
  const told = (words: string): Sheet => {
    const s = swarmAt('In the grass')
    return { ...s, job: { ...s.job, told: words } }
  }
  test.each([
    'in the AC unit in the back yard',
    'in the mailbox in the yard',
    'in the steel post in the garden fence',
    'in the car, under the apple tree',
    'in the trunk of the oak tree',
    'in the hose reel in the yard',
    'in the septic tank lid in the yard',
  ])('%s', (words) => {
    expect(hangsInWords(told(words)), 'told').toBe(false)
    expect(hangsInWords(swarmAt(words)), 'where').toBe(false)
  })
  test.each(['vine on the house', 'tree fort', 'fence round the tower', 'tree by the tracks'])(
    'on what is no tree: %s',
    (words) => expect(hangsInWords(swarmAt(words))).toBe(false),
  )
  test.each([
    'in the big old pear tree',
    'in a bush by the gate',
    'in the front yard, on a low branch',
    'hanging in a clump from a branch',
    'came in the morning, in the hedge now',
    'between two branches of the apple tree',
    'In a bush or hedge',
    'en un arbusto del jardín',
  ])('and in what is open: %s', (words) => {
    expect(hangsInWords(told(words))).toBe(true)
  })
})

test('of a box, water alone is said where it is a water meter or valve', () => {
  const box = (where: string): Sheet => site({ type: 'utility-box', behind: ['water'], where })
  for (const where of [
    'water softener box by the garage',
    'sprinkler water timer box',
    'well water box',
    'box by the water tower',
  ])
    expect(holding(box(where)), where).toContain('services')
  for (const where of ['contador de agua', 'water valve box at the kerb', 'hydrant'])
    expect(holding(box(where)), where).not.toContain('services')
})

test('once it is open, more that is written behind it is asked of who cleared it', () => {
  const open: Sheet = { ...GAS_CLEARED, work: { on: DAY, openedAt: '08:00' } }
  const note = (behindNote: string): Sheet => ({ ...open, site: { ...open.site, behindNote } })
  expect(writtenAnew(open, note('there is another one right of it, hissing'))).toEqual(['gas'])
  const { work } = { work: { ...open.work, boxedAt: '10:00' } }
  expect(writtenAnew({ ...open, work }, { ...note('another one'), work }), 'closed again').toEqual([])
})

describe('a paper clears by what it says', () => {
  const gas = site({ behind: ['gas'] })
  const wrong = (c: Clearance, s = gas): string[] => clearanceProblems(c, s, YARD, DAY).map((p) => p.field)
  test('an appointment, a find and a sample clear nothing; nor does what nobody was asked of', () => {
    expect(wrong(paper('gas', gas))).toEqual([])
    for (const says of ['not-yet', 'found', undefined] as const)
      expect(wrong(paper('gas', gas, { says })), says).toEqual(['says'])
    const wall = site({ hazards: ['asbestos'] })
    for (const says of ['not-yet', 'found', undefined] as const)
      expect(wrong(paper('asbestos', wall, { says }), wall), says).toEqual(['says'])
  })
  test('and one that came in all the same does not', () => {
    const with_ = (says: Clearance['says']): Sheet => ({
      ...gas,
      check: { ...gas.check, clearances: [paper('gas', gas, { says })] },
    })
    expect(isCleared(with_('clear'), 'gas', DAY)).toBe(true)
    expect(isCleared(with_('not-yet'), 'gas', DAY)).toBe(false)
    expect(isCleared(with_(undefined), 'gas', DAY), 'from before it was asked').toBe(true)
  })
  test('the number is a number, and says nothing beside it', () => {
    for (const licence of ['appointment ticket 88123, comes Monday', 'will come 88123', '4711 still live'])
      expect(wrong(paper('gas', gas, { licence })), licence).toEqual(['licence'])
    for (const licence of ['report 4711', 'Brandt & Co, 4711', 'licence no. GF 4711', 'test report 88123'])
      expect(wrong(paper('gas', gas, { licence })), licence).toEqual([])
  })
})

describe('another sheet of the house was stopped', () => {
  const refused = (reason: string): Sheet => ({
    ...READY,
    decision: { is: 'refuse', by: 'Bram', on: DAY, at: '07:00', reason, unmet: [], ...placeOf(READY) },
  })
  const other = (sheet: Sheet) => otherSheetsOf('mine', READY, [{ id: 'x', sheet, colonies: [] }], DAY)
  test('for words that name nothing: one tap, of those very words', () => {
    const others = other(refused('Whole wall hisses and stinks, fitter comes at noon'))
    expect(holding(READY, others)).toEqual(['other-sheet'])
    const tick = (id: string): Sheet =>
      but({ check: { ...READY.check, done: [...(READY.check.done ?? []), id] } })
    expect(holding(tick('not-there:stopped:x:07:00'), others)).toEqual([])
    expect(holding(tick('not-there:stopped:x:06:00'), others), 'said again later').toEqual(['other-sheet'])
    const ended: Sheet = { ...READY, ended: { on: DAY, why: 'Wall stinks' } }
    expect(holding(READY, other(ended))).toEqual(['other-sheet'])
  })
  test('what it names is asked by its name alone, and a bare “Wait” says nothing', () => {
    expect(other(refused('Gas.'))).toMatchObject([{ what: ['gas'] }])
    expect(other(refused('Gas.'))[0]?.asks).toBeUndefined()
    const { reason: _, ...bare } = refused('').decision ?? { reason: '' }
    const waits: Sheet = { ...READY, decision: { ...bare, is: 'wait' } as Sheet['decision'] }
    expect(holding(READY, other(waits))).toEqual([])
  })
})

test('a house that is written another way', () => {
  const same = (a: string, b: string): boolean => sameHouse({ address: a }, { address: b })
  expect(same('4 Invented Row', '4Invented Row')).toBe(true)
  expect(same('Hwy 9 mile 12', 'Highway 9, mile 12')).toBe(true)
  expect(same('4a Invented Row', '4 Invented Row')).toBe(true)
  expect(same('4 Invented Row', '5Invented Row')).toBe(false)
})
