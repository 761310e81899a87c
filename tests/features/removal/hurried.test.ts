/** Ways past a question that a hurried person finds without meaning to: each is shut. Limits are judgement, said where they stand. */
import { describe, expect, test } from 'vitest'
import { beforeCut, holds } from '../../../src/features/removal/before-cut.ts'
import { decisionProblems, goStands } from '../../../src/features/removal/decide.ts'
import { goneFrom, withNoted } from '../../../src/features/removal/grave.ts'
import { atStart } from '../../../src/features/removal/heat.ts'
import { TICKED } from '../../../src/features/removal/item.ts'
import { placeOf, stamped } from '../../../src/features/removal/place.ts'
import { sameName } from '../../../src/features/removal/same-name.ts'
import { secondProblems } from '../../../src/features/removal/second.ts'
import { writtenIn } from '../../../src/features/removal/written.ts'
import { mergeSheets } from '../../../src/records/merge-sheets.ts'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import type { Grave, Noted } from '../../../src/records/said-by-others.ts'
import { DEFAULT_PROTOCOL } from '../../../src/recovery/protocol.ts'
import { but, DAY, DRAWN, GAS_CLEARED, here, PAPER, READY, read, SHOWS, swarmAt, YARD } from './ready.ts'

const holding = (s: Sheet, day = DAY): string[] =>
  beforeCut(s, DEFAULT_PROTOCOL, SHOWS, day)
    .unmet.filter(holds)
    .map((i) => i.id)

describe('yesterday’s sheet tapped through again', () => {
  test('what was ticked yesterday is asked anew, and the forecast of yesterday is none', () => {
    expect(holding(READY)).toEqual([])
    const next = holding(READY, '2026-06-13')
    for (const id of ['heat', 'not-alone', 'ladder-person', 'sting-plan', 'exclusion'])
      expect(next).toContain(id)
  })
  test('ticks that came without a day count for nothing', () => {
    const { doneOn: _, ...check } = READY.check
    expect(holding(but({ check }))).toContain('sting-plan')
  })
})

describe('the unit that was not looked at', () => {
  // 38 °C typed where °F is asked is 38 °F: 3.3 °C.
  const typed = (38 - 32) / 1.8
  test('38 typed for °F is not a cool day', () => {
    const { hours: _, ...check } = READY.check
    expect(holding(but({ check: { ...check, hottestC: typed } }))).toEqual(['heat'])
    expect(holding(but({ check: { ...check, hottestC: 18 } }))).toEqual([])
  })
  test('nor when work starts', () => {
    const at = (outdoorC: number) =>
      atStart(but({ work: { outdoorC, water: true } }), DEFAULT_PROTOCOL.heatLimitC, SHOWS, DAY).state
    expect(at(typed)).toBe('unmet')
    expect(at(18)).toBe('met')
  })
})

describe('the same person under another name', () => {
  test.each([
    ['Ines', 'ines albrecht'],
    ['Ines A.', 'Ines'],
    ['Inès', 'INES'],
    ['Albrecht, Ines', 'Ines Albrecht'],
    ['I. Albrecht', 'Ines Albrecht'],
  ])('%s is %s', (a, b) => {
    expect(sameName(a, b)).toBe(true)
    // By hand, one is not the other's second person.
    const people = { first: [b], yard: [b], accounts: [b], open: [b], fresh: [], elsewhere: new Map() }
    const byHand = { item: 'heat', by: a, why: 'seen' as const, path: DRAWN, phone: '555 0177' }
    if (a !== b) expect(secondProblems(byHand, READY, people)).toMatchObject([{ field: 'by' }])
  })
  test('others are others', () => {
    expect(sameName('Ines Albrecht', 'Ines Brandt')).toBe(false)
    expect(sameName('Ann', 'Anna')).toBe(false)
    expect(sameName('...', 'Ines')).toBe(false)
  })
})

test.each([
  ['her son is allergic', 'somebody allergic'],
  ['Su hija tiene alergia', 'somebody allergic'],
  ['enchufe detrás', 'electric wires'],
  ['high on a power pole', 'a power line, meter or pole'],
  ['the breaker is behind', 'electric wires'],
  ['uralita en el techo', 'asbestos'],
  ['an LPG bottle', 'gas'],
  ['green cabinet at the street', 'electric wires'],
  ['kids play there', 'children'],
  ['killer bees, they chased the postman', 'fierce bees'],
  ['the boards are rotten', 'weak boards'],
])('“%s” is written and tapped nowhere: %s', (told, says) => {
  expect(writtenIn(but({ job: { ...READY.job, told } })).map((w) => w.says)).toEqual([says])
})

test('what was written since, or a way up that is higher, is ticked again', () => {
  const stamp = { by: 'Ines', on: DAY, at: '09:00', writtenAt: `${DAY}T09:00:00.000Z` }
  const ticks = (after: Sheet): string[] => withNoted(READY, after, {}, stamp).check.done ?? []
  expect(ticks(READY)).toEqual(READY.check.done)
  const told = but({ job: { ...READY.job, told: 'A gas meter beside it.' } })
  const wires = { ...told, check: { ...told.check, done: [...TICKED, 'not-here:electric'] } }
  expect(holding(wires), 'the gas of it').toEqual(['notes'])
  expect(ticks(told)).toContain('ladder-person')
  const roof = but({ site: { ...READY.site, access: 'roof', heightM: 9 } })
  expect(ticks(roof)).not.toContain('ladder-person')
  const lower = but({ site: { ...READY.site, heightM: 3 } })
  expect(ticks(lower)).toContain('ladder-person')
})

test('“go” says what the bees are in', () => {
  const { type: _, ...site } = READY.site
  const s = but({ site })
  const reckoning = beforeCut(s, DEFAULT_PROTOCOL, SHOWS, DAY)
  const go = { is: 'go' as const, by: 'Ines', on: DAY, unmet: [], ...placeOf(s) }
  expect(decisionProblems(go, reckoning, s)).toMatchObject([
    { message: expect.stringContaining('what the bees are in') },
  ])
  expect(goStands({ ...s, decision: go }, reckoning, DAY)).toBe(false)
})

test('whoever stays and watches is at one job', () => {
  const stays = { item: 'not-alone', by: 'Bram', why: 'seen' as const, account: true as const }
  expect(secondProblems(stays, READY, YARD)).toEqual([])
  const busy = { ...YARD, elsewhere: new Map([['Bram', 'Mrs Umber']]) }
  expect(secondProblems(stays, READY, busy)).toMatchObject([
    { field: 'by', message: expect.stringContaining('is at Mrs Umber today') },
  ])
  // Who has looked at something can have done so on the way.
  expect(secondProblems({ ...stays, item: 'heat' }, READY, busy)).toEqual([])
})

describe('an old paper', () => {
  const cleared = (hazard: 'gas' | 'asbestos', on: string): Sheet =>
    but({
      site: {
        ...READY.site,
        behind: hazard === 'gas' ? ['gas'] : [],
        behindHow: 'detector',
        hazards: hazard === 'asbestos' ? ['asbestos'] : [],
      },
      check: {
        ...READY.check,
        clearances: [
          {
            hazard,
            as: hazard === 'gas' ? 'gas-fitter' : 'surveyor',
            who: 'Edda Brandt',
            licence: '4711',
            on,
            photo: PAPER,
            knew: [hazard],
            ...placeOf(READY),
          },
        ],
      },
    })
  test('gas that was shut off two years ago may be on again; asbestos that was tested stays tested for five years', () => {
    expect(holding(cleared('gas', '2024-06-12'))).toEqual(['trade-gas'])
    expect(holding(cleared('gas', '2026-05-13'))).toEqual([])
    expect(holding(cleared('gas', '2026-05-12'))).toEqual(['trade-gas'])
    expect(holding(cleared('asbestos', '2024-06-12'))).toEqual([])
    expect(holding(cleared('asbestos', '1950-01-01'))).toEqual(['trade-asbestos'])
  })
})

test('five metres up is not the ground, whatever was tapped', () => {
  const s = but({
    site: { ...READY.site, access: 'ground', heightM: 5 },
    check: { ...READY.check, done: READY.check.done?.filter((t) => t !== 'ladder-person') },
  })
  expect(holding(s)).toEqual(['ladder-person'])
  expect(holding({ ...s, site: { ...s.site, heightM: 2 } })).toEqual([])
})

test('the customer is no second person', () => {
  const wrong = (customer: string): string[] =>
    secondProblems(
      { item: 'heat', by: 'Mrs Fairweather', why: 'stays', path: DRAWN, phone: '555 0177' },
      { ...READY, job: { ...READY.job, name: customer }, agreement: {} },
      YARD,
    ).map((p) => p.field)
  expect(wrong('Fairweather')).toContain('by')
})

describe('a sheet used again for another wall', () => {
  const gas = here(GAS_CLEARED)
  const at = (address: string, where: string): string[] =>
    holding(here({ ...gas, job: { ...gas.job, address }, site: { ...gas.site, where } }))
  test('what was cleared here is not cleared there', () => {
    expect(at('4 Invented Row', 'left of the porch')).toEqual([])
    expect(at('4, Invented ROW', 'Left of the porch.')).toEqual([])
    // One word more is another place: a wall is not the north wall.
    expect(at('4 Invented Row', 'left of the porch, low')).toEqual(['trade-gas'])
    expect(at('4 Invented Row, Quarryville', 'left of the porch')).toEqual(['trade-gas'])
    expect(at('14 Invented Row', 'left of the porch')).toEqual(['trade-gas'])
    expect(at('4 Invented Row', 'right of the porch')).toEqual(['trade-gas'])
    const { unmet } = beforeCut(
      { ...gas, job: { ...gas.job, address: '9 Other Lane' } },
      DEFAULT_PROTOCOL,
      SHOWS,
      DAY,
    )
    expect(unmet[0]?.why).toContain('cleared for another place (4 Invented Row: left of the porch)')
  })
  test.each<[string, (s: Sheet) => Sheet]>([
    ['address', (s) => ({ ...s, job: { ...s.job, address: '9 Other Lane' } })],
    ['wall', (s) => ({ ...s, site: { ...s.site, where: 'the north wall' } })],
    ['surface', (s) => ({ ...s, site: { ...s.site, surface: 'cedar shingles' } })],
    ['kind of place', (s) => ({ ...s, site: { ...s.site, type: 'chimney' } })],
  ])('after another %s nothing is looked for yet, and nothing ticked', (what, moved) => {
    const s = moved(READY)
    const held = holding(s)
    for (const id of ['services', 'old-building', 'not-alone', 'sting-plan']) expect(held).toContain(id)
    expect(held.includes('bystanders')).toBe(what === 'address')
    expect(holding(here(s))).toEqual([])
  })
  test('built after 1980 was said of the old place', () => {
    const built: Sheet = { ...READY, site: { ...READY.site, old: 'no' } }
    const { hazards: _, ...site } = { ...built.site, where: 'the north wall' }
    const item = beforeCut({ ...built, site }, DEFAULT_PROTOCOL, SHOWS, DAY).items.find(
      (i) => i.id === 'old-building',
    )
    expect(item).toMatchObject({ weight: 'trade', state: 'unsaid' })
  })
  test('what was looked for without a place does not count', () => {
    const { lookedAt: _, ...site } = READY.site
    expect(holding({ ...READY, site })).toEqual(['services', 'old-building', 'bystanders'])
  })
  test('an answer that stood in the form when the place was changed in it is of the old place', () => {
    const moved: Sheet = { ...READY, site: { ...READY.site, where: 'the north wall' } }
    const asked = ['behind', 'hazards', 'old'] as const
    expect(holding(stamped(moved, READY, asked, DAY))).toContain('services')
    // Shown again, with that place on it, and tapped again.
    expect(stamped(moved, moved, asked, DAY).site.lookedAt?.behind).toMatchObject({ where: 'the north wall' })
    // The first answer is of the place that was typed with it.
    const { behind: _, ...unasked } = READY.site
    expect(stamped(moved, { ...READY, site: unasked }, asked, DAY).site.lookedAt?.behind).toMatchObject({
      where: 'the north wall',
    })
  })
})

describe('a swarm that has gone into something', () => {
  const swarm = swarmAt('On a branch')
  test('hanging free, it needs the short sheet, and somebody who sees that it does', () => {
    expect(holding(swarm)).toEqual([])
    const unseen = { ...swarm, check: { ...swarm.check, done: TICKED.filter((t) => t !== 'free') } }
    expect(holding(unseen)).toEqual(['free'])
    const s = beforeCut(unseen, DEFAULT_PROTOCOL, SHOWS, DAY)
    expect(s.items.find((i) => i.id === 'free')?.weight, 'no second person signs that away').toBe('trade')
  })
  test('in a tree it hangs free; near a wire it is not taken', () => {
    expect(holding(here({ ...swarm, site: { ...swarm.site, where: 'in the pear tree' } }))).toEqual([])
    const wired = here({ ...swarm, site: { ...swarm.site, nearWires: true } })
    expect(holding(wired)).toEqual(['trade-near-wires'])
    const told = here({ ...swarm, job: { ...swarm.job, told: 'They are in the electric meter cabinet.' } })
    expect(holding(told)).toContain('services')
  })
  test.each<[string, Partial<Sheet['site']>]>([
    ['in words', { where: 'in the wall left of the porch' }],
    ['in a cabinet', { where: 'in the electrical panel' }],
    ['in Spanish', { where: 'en la pared' }],
    ['beside a tree', { where: 'in the eaves over the garden' }],
    ['in a tree', { where: 'pear tree, hollow' }],
    ['out of something', { where: 'out of the soffit vent' }],
    ['in a shed', { where: 'on the wall of the garden shed' }],
    ['with an entrance', { entrance: 'a gap under the sill' }],
    ['of a size', { nestHighMm: 400 }],
    ['found with a camera', { foundBy: ['heat-camera'] }],
    ['behind siding', { surface: 'cedar siding' }],
  ])('%s, it is asked like the nest it is', (_, site) => {
    const s = here({ ...swarm, site: { ...swarm.site, ...site } })
    for (const id of ['services', 'old-building', 'cut-depth']) expect(holding(s)).toContain(id)
  })
})

describe('what was taken off and comes back', () => {
  const at = (writtenAt: string, what: Grave, is: 'found' | 'gone'): Noted => ({
    what,
    is,
    by: 'Ines',
    on: DAY,
    at: writtenAt.slice(11, 16),
    writtenAt,
  })
  const gas = but({
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
          writtenAt: `${DAY}T09:00:00.000Z`,
          ...placeOf(READY),
        },
      ],
    },
  })
  test('is cleared anew', () => {
    expect(holding(gas)).toEqual([])
    const noted = [at(`${DAY}T10:00:00.000Z`, 'gas', 'gone'), at(`${DAY}T10:05:00.000Z`, 'gas', 'found')]
    const back: Sheet = { ...gas, site: { ...gas.site, noted } }
    expect(holding(back)).toEqual(['trade-gas'])
    const again = gas.check.clearances?.map((c) => ({ ...c, writtenAt: `${DAY}T10:10:00.000Z` })) ?? []
    expect(holding({ ...back, check: { ...back.check, clearances: again } })).toEqual([])
  })
  test('the allergic person is cared for anew', () => {
    const allergic: Sheet = { ...READY, site: { ...READY.site, bystanders: ['allergic'] } }
    expect(goneFrom(allergic, READY)).toEqual(['allergic'])
    const { writtenAt, by, on, at: time } = at(`${DAY}T10:00:00.000Z`, 'allergic', 'gone')
    const stamp = { writtenAt, by, on, at: time }
    const gone = withNoted(allergic, READY, { allergic: 'left' }, stamp)
    expect(gone.site.noted).toMatchObject([{ what: 'allergic', is: 'gone', why: 'left', by: 'Ines' }])
    const back = withNoted(gone, { ...gone, site: { ...gone.site, bystanders: ['allergic'] } }, {}, stamp)
    expect(holding(back)).toEqual(['allergy'])
  })
})

test.each(['roof', 'wall', 'tree'])(
  'a %s is not worked from the ground until somebody says how low it is',
  (type) => {
    const site = { ...READY.site, type, access: 'ground' as const }
    const { heightM: _, ...unsaid } = site
    const check = { ...READY.check, done: READY.check.done?.filter((t) => t !== 'ladder-person') }
    expect(holding(but({ site: unsaid, check }))).toEqual(['ladder-person'])
    expect(holding(but({ site: { ...unsaid, heightM: 2.2 }, check }))).toEqual([])
  },
)

test('a cool forecast for tomorrow is none for today; a hot one is said at once', () => {
  const day = '2026-06-13'
  const s = (c: number): Sheet =>
    but({
      job: { ...READY.job, plannedOn: day },
      check: { ...READY.check, on: day, hours: [{ at: '09:00', c }] },
    })
  expect(holding(s(20))).toEqual(['heat'])
  const says = (c: number) =>
    beforeCut(s(c), DEFAULT_PROTOCOL, SHOWS, DAY).items.find((i) => i.id === 'heat')?.state
  expect([says(20), says(38)]).toEqual(['unsaid', 'unmet'])
})

test('one cool hour is no forecast, unless the hottest one or the end of the work is said too', () => {
  const { from: _f, until: _u, hours: _h, ...check } = READY.check
  const dawn = { ...check, hours: [{ at: '06:00', c: 18 }] }
  expect(holding(but({ check: dawn }))).toEqual(['heat'])
  expect(holding(but({ check: { ...dawn, hottestC: 26 } }))).toEqual([])
  expect(holding(but({ check: { ...dawn, from: '06:00', until: '08:00' } }))).toEqual([])
})

test('dawn and dusk are no forecast of noon', () => {
  const { hottestC: _, ...check } = READY.check
  const hours = [
    { at: '06:00', c: 17 },
    { at: '20:00', c: 21 },
  ]
  expect(holding(but({ check: { ...check, hours, from: '06:00', until: '20:00' } }))).toEqual(['heat'])
  expect(holding(but({ check: { ...check, hours, hottestC: 27, from: '06:00', until: '20:00' } }))).toEqual(
    [],
  )
})

test('how hot it was yesterday does not open it today', () => {
  const work = { outdoorC: 20, water: true, on: DAY }
  const at = (day: string) => atStart(but({ work }), DEFAULT_PROTOCOL.heatLimitC, SHOWS, day).state
  expect([at(DAY), at('2026-06-13')]).toEqual(['met', 'unsaid'])
})

describe('written without signal yesterday, sent today', () => {
  const next = '2026-06-13'
  const none: Sheet = but({ check: { ...READY.check, done: [] } })
  const today: Sheet = but({ check: { ...READY.check, done: ['kit'], doneOn: next, on: next, hottestC: 38 } })
  const yesterday: Sheet = but({ check: { ...READY.check, hottestC: 20 } })
  test('yesterday’s ticks and forecast do not get today’s date, whoever is sent last', () => {
    for (const merged of [mergeSheets(none, yesterday, today), mergeSheets(none, today, yesterday)]) {
      expect(merged.sheet.check).toMatchObject({ done: ['kit'], doneOn: next, on: next, hottestC: 38 })
      expect(merged.clashes).toEqual([])
    }
  })
  test('nor does how hot it was when the surface was to be opened', () => {
    const s = (on: string, outdoorC: number): Sheet => but({ work: { on, outdoorC, water: true } })
    const { sheet } = mergeSheets(READY, s(DAY, 20), s(next, 36))
    expect(sheet.work).toEqual({ on: next, outdoorC: 36, water: true })
  })
  test('ticks of one wall do not get the place of another, nor do looks', () => {
    const moved = here({ ...READY, site: { ...READY.site, where: 'the north wall' } })
    const mine: Sheet = { ...READY, check: { ...READY.check, done: ['kit', 'exclusion'] } }
    const { sheet } = mergeSheets(READY, mine, moved)
    expect(sheet.site.where).toBe('the north wall')
    expect(holding(sheet)).toContain('exclusion')
    // One added a look, the other who is about: both are kept, each of its place.
    const { lookedAt: _, ...site } = READY.site
    const none: Sheet = { ...READY, site }
    const looked = (lookedAt: NonNullable<Sheet['site']['lookedAt']>): Sheet => ({
      ...none,
      site: { ...site, lookedAt },
    })
    const at = placeOf(READY)
    const both = mergeSheets(none, looked({ behind: at }), looked({ bystanders: at }))
    expect(both.sheet.site.lookedAt).toEqual({ behind: at, bystanders: at })
    const apart = mergeSheets(
      none,
      looked({ behind: at }),
      looked({ behind: { ...at, where: 'the north wall' } }),
    )
    expect(apart.sheet.site.lookedAt).toEqual({})
  })
  test('of the same day both are heard: what differs is a clash', () => {
    const other: Sheet = but({ check: { ...READY.check, done: ['kit', 'exclusion'] } })
    expect(mergeSheets(none, READY, other).clashes).toEqual(['check.done'])
  })
})

test('with no word for the wall, a look at one wall is no look at another', () => {
  const { where: _, ...site } = READY.site
  expect(holding(but({ site }))).toEqual(['services', 'old-building'])
})

test('who is about is asked again after days, a wall after months', () => {
  const on = (day: string): Sheet => {
    const at = { ...placeOf(READY), on: day }
    const lookedAt = { behind: at, hazards: at, old: at, bystanders: at }
    return { ...READY, site: { ...READY.site, lookedAt } }
  }
  expect(holding(on(DAY))).toEqual([])
  expect(holding(on('2026-06-10'))).toEqual([])
  expect(holding(on('2026-06-09'))).toEqual(['bystanders'])
  expect(holding(on('2026-03-13'))).toEqual(['services', 'old-building', 'bystanders'])
  // Saved again as it stood, it is as old as it was.
  const later = stamped(on('2026-06-11'), on('2026-06-11'), ['bystanders'], DAY)
  expect(later.site.lookedAt?.bystanders?.on).toBe('2026-06-11')
})

test('twelve inches typed for twelve millimetres is a slip of the unit', () => {
  const s = but({ site: { ...READY.site, sheathingMm: 305 }, check: { ...READY.check, cutMm: 307 } })
  expect(holding(s)).toEqual(['cut-depth'])
})

test('a water pipe has its stopcock found, or a second person’s name', () => {
  const s = but({
    site: { ...READY.site, behind: ['insulation', 'water'] },
    check: { ...READY.check, done: TICKED.filter((t) => t !== 'stopcock') },
  })
  expect(holding(s)).toEqual(['stopcock'])
  expect(goneFrom(s, READY)).toEqual(['water'])
})

test('a forecast of one hour is none of a job of four; nor are two hours at dawn', () => {
  const { hottestC: _, ...check } = READY.check
  const long = { ...READY.agreement, hours: 5 }
  const noon = [
    { at: '08:00', c: 18 },
    { at: '12:00', c: 38 },
  ]
  const at = (more: object): string[] => holding(but({ agreement: long, check: { ...check, ...more } }))
  expect(at({ hours: noon, from: '08:00', until: '09:00' })).toEqual(['heat'])
  const dawn = [
    { at: '06:00', c: 15 },
    { at: '07:00', c: 17 },
  ]
  const { from: _f, until: _u, ...open } = check
  expect(holding(but({ check: { ...open, hours: dawn } }))).toEqual(['heat'])
})

test('“none” on a building says how it is known, and nobody signs for not knowing', () => {
  const { old: _, ...site } = READY.site
  for (const old of [undefined, 'yes', 'unknown'] as const) {
    const s = but({ site: { ...site, ...(old === undefined ? {} : { old }) } })
    expect(holding(s)).toEqual(['old-building'])
    const item = beforeCut(s, DEFAULT_PROTOCOL, SHOWS, DAY).items.find((i) => i.id === 'old-building')
    expect(item?.weight).toBe('trade')
  }
  expect(holding(but({ site: { ...site, old: 'no' } }))).toEqual([])
  // “Not cut into” of a wall for which a blade is set is a slip.
  expect(holding(but({ site: { ...site, oldHow: 'untouched' } }))).toEqual(['old-building'])
  const { sheathingMm: _mm, ...uncut } = site
  const { cutMm: _cut, ...check } = READY.check
  const open = holding(but({ site: { ...uncut, oldHow: 'untouched' }, check }))
  expect(open).not.toContain('old-building')
})

test.each<[string, Partial<Sheet>, string]>([
  ['gas', { site: { ...READY.site, behindNote: 'Gas pipe runs left of the window.' } }, 'gas'],
  ['a cable', { job: { ...READY.job, told: 'Beside the electric meter.' } }, 'a power line, meter or pole'],
  ['the board', { site: { ...READY.site, surface: 'asbestos cement board' } }, 'asbestos'],
  ['in Spanish', { site: { ...READY.site, surface: 'placa de amianto' } }, 'asbestos'],
  [
    'next door',
    { site: { ...READY.site, bystanders: ['neighbours'], bystandersNote: 'Mrs Brown has an EpiPen.' } },
    'somebody allergic',
  ],
])('what is written of %s and tapped nowhere holds until it is looked at again', (_, change, says) => {
  const s = but(change)
  expect(holding(s)).toEqual(['notes'])
  const item = beforeCut(s, DEFAULT_PROTOCOL, SHOWS, DAY).items.find((i) => i.id === 'notes')
  expect(item).toMatchObject({ weight: 'trade', why: expect.stringContaining(says) })
  const not = ['not-here:gas', 'not-here:near-wires', 'not-here:asbestos', 'not-here:allergic']
  const looked = but({ ...change, check: { ...READY.check, done: [...TICKED, ...not] } })
  expect(holding(read(looked))).toEqual([])
})

test('what is written and tapped is asked where it was tapped', () => {
  const s = but({
    site: { ...READY.site, behind: ['gas', 'insulation'], behindNote: 'Gas pipe, left of the window.' },
  })
  expect(holding(read(s))).toEqual(['trade-gas'])
})
