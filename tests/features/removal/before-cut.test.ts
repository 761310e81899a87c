/** What to check before the cut. The items are common practice in the trade; the limits are the yard's protocol. */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { beforeCut, holds } from '../../../src/features/removal/before-cut.ts'
import { callBacksByType } from '../../../src/features/removal/call-backs.ts'
import { leftToClose } from '../../../src/features/removal/closing.ts'
import { decisionProblems, unmetWords } from '../../../src/features/removal/decide.ts'
import { underLimit, workingHours } from '../../../src/features/removal/forecast.ts'
import { atStart, heatToBees } from '../../../src/features/removal/heat.ts'
import { ITEMS, type ItemId, TICKED } from '../../../src/features/removal/item.ts'
import { reckoningTitle } from '../../../src/features/removal/words.ts'
import {
  ACCESS,
  BEHIND,
  EMPTY_SHEET,
  HAZARDS,
  type Sheet,
  sheet as sheetSchema,
  VACUUMS,
} from '../../../src/records/removal-sheet.ts'
import { DEFAULT_PROTOCOL, protocolWith } from '../../../src/recovery/protocol.ts'
import { but, DAY, here, READY, SHOWS } from './ready.ts'

const reckon = (s: Sheet, protocol = DEFAULT_PROTOCOL) => beforeCut(s, protocol, SHOWS, DAY)
const stateIn = (s: Sheet, id: ItemId) => reckon(s).items.find((i) => i.id === id)

describe('go, wait or refuse', () => {
  test('nothing unmet', () => {
    expect(reckon(READY)).toMatchObject({ says: 'nothing-unmet', unmet: [] })
  })

  test('an empty sheet waits: what is not said is no ground to refuse', () => {
    const r = reckon(EMPTY_SHEET)
    expect(r.says).toBe('wait')
    expect(r.unmet.length).toBeGreaterThan(13)
  })

  // Water, clothing and tools are asked when it is opened; before the cut only where nothing is (below).
  test.each(TICKED.filter((t) => !['water', 'kit', 'free'].includes(t)))(
    '%s unticked is unmet where it is asked, named, with who decides',
    (id) => {
      const asked: Partial<Record<ItemId, Sheet['site']>> = {
        allergy: { bystanders: ['allergic'] },
        children: { bystanders: ['children'] },
        fierce: { temper: 4 as const },
        droppings: { hazards: ['droppings'] },
        stopcock: { behind: ['water'] },
        notes: { behindNote: 'A gas pipe, left of it.' },
      }
      const site = { ...READY.site, ...asked[id] }
      const r = reckon(but({ site, check: { ...READY.check, done: TICKED.filter((t) => t !== id) } }))
      expect(r.says).toBe('wait')
      expect(r.unmet.map((i) => i.id)).toEqual([id])
      expect(r.unmet[0]?.decides).not.toBe('')
      if (site !== READY.site && asked[id] !== undefined)
        expect(
          reckon(but({ check: { ...READY.check, done: TICKED.filter((t) => t !== id) } })).unmet,
        ).toEqual([])
    },
  )

  test('a plain job is asked for the ticks that every job has, and no more', () => {
    const none = but({
      site: { ...READY.site, behind: [], behindHow: 'traced', access: 'ground', heightM: 1 },
      check: { ...READY.check, done: [] },
    })
    expect(reckon(none).unmet.map((i) => i.id)).toEqual(['not-alone', 'sting-plan', 'exclusion'])
  })

  test('what is not filled in is counted apart from what stops it', () => {
    const told = (site: Sheet['site']) => reckoningTitle(reckon({ ...EMPTY_SHEET, site }))
    expect(told({ type: 'wall' })).toMatch(/^Wait: \d+ not filled in yet$/)
    expect(told({ type: 'wall', behind: ['gas'] })).toMatch(
      /^Stop\. Not yet: gas pipe cleared\. \d+ not filled in yet$/,
    )
  })

  test('a shop vacuum straight onto bees: refuse', () => {
    expect(reckon(but({ check: { ...READY.check, vacuum: 'shop-vacuum' } }))).toMatchObject({
      says: 'refuse',
    })
    for (const vacuum of ['none', 'bee-vacuum'] as const)
      expect(reckon(but({ check: { ...READY.check, vacuum } })).says).toBe('nothing-unmet')
  })

  test('the ladder asks for a second person, the ground does not', () => {
    expect(stateIn(READY, 'ladder-person')?.state).toBe('met')
    expect(
      stateIn(but({ site: { ...READY.site, access: 'ground', heightM: 1 } }), 'ladder-person')?.state,
    ).toBe('not-needed')
    for (const access of ACCESS.filter((a) => a !== 'ground')) {
      const s = but({ site: { ...READY.site, access }, check: { ...READY.check, done: [] } })
      expect(stateIn(s, 'ladder-person')?.state).toBe('unsaid')
    }
  })

  test('a swarm needs only the short sheet: nothing is cut; heat and people count all the same', () => {
    const { vacuum: _, cutMm: _cut, ...check } = READY.check
    const swarm = but({
      site: {
        type: 'swarm',
        where: 'On a branch',
        access: 'ground',
        heightM: 2,
        sprayed: 'no',
        bystanders: [],
        temper: 1,
        africanized: 'no',
      },
      check,
    })
    for (const id of ['cut-depth', 'services', 'old-building', 'vacuum', 'ladder-person'] as const)
      expect(stateIn(swarm, id)?.state).toBe('not-needed')
    expect(stateIn(swarm, 'heat')?.state).toBe('met')
    expect(reckon(swarm).says).toBe('nothing-unmet')
    const dry = { ...swarm, check: { ...swarm.check, done: TICKED.filter((t) => t !== 'water') } }
    expect(reckon(dry).unmet.map((i) => i.id)).toEqual(['water'])
  })

  test.each<[string, Partial<Sheet>]>([
    ['there for weeks', { job: { bees: 'swarm', since: 'weeks' } }],
    ['behind a surface', { site: { type: 'swarm', surface: 'siding' } }],
    ['behind boards of a thickness', { site: { type: 'swarm', sheathingMm: 19 } }],
    ['with a pipe behind it', { site: { type: 'swarm', behind: ['gas'] } }],
    ['that goes in deep', { site: { type: 'swarm', nestDeepMm: 100 } }],
    ['that a blade is set for', { check: { cutMm: 20 } }],
  ])('the word swarm does not make an open branch of what is %s', (_, said) => {
    const open: Sheet = { ...EMPTY_SHEET, job: { bees: 'swarm' }, site: { type: 'swarm' } }
    expect(stateIn(open, 'cut-depth')?.state).toBe('not-needed')
    const s = { ...open, ...said, site: { type: 'swarm', ...said.site } }
    expect(stateIn(s, 'cut-depth')?.state).toBe('unsaid')
    expect(stateIn(s, 'old-building')?.state).toBe('unsaid')
  })

  test.each(['trap-out', 'abandoned-hive', 'container'])(
    'a %s takes no blade, unless one is set or the board measured',
    (type) => {
      const { cutMm: _, ...check } = READY.check
      const { sheathingMm: _mm, ...site } = READY.site
      const s = but({ site: { ...site, type }, check })
      expect(stateIn(s, 'cut-depth')?.state).toBe('not-needed')
      expect(stateIn({ ...s, site: { ...s.site, sheathingMm: 19 } }, 'cut-depth')?.state).toBe('unsaid')
      expect(stateIn({ ...s, check: READY.check }, 'cut-depth')?.state).toBe('unsaid')
      // It may stand at a wall all the same.
      expect(stateIn(s, 'services')?.state).toBe('met')
    },
  )

  test('who called does not own the place: the owner is asked, or has signed', () => {
    const { signature: _, ...agreement } = READY.agreement
    const tenant = but({ job: { ...READY.job, caller: 'tenant' }, agreement })
    expect(reckon(tenant).unmet.map((i) => i.id)).toEqual(['caller', 'agreement'])
  })
})

describe('when work starts the heat is asked again', () => {
  const at = (work: Sheet['work'], s = READY) =>
    atStart({ ...s, work }, DEFAULT_PROTOCOL.heatLimitC, SHOWS, DAY)
  test('how hot now, water and shade for people, the limit', () => {
    expect(at({}).state).toBe('unsaid')
    expect(at({ outdoorC: 22 })).toMatchObject({ state: 'unsaid', why: expect.stringContaining('water') })
    expect(at({ outdoorC: 22, water: true }).state).toBe('met')
    expect(at({ outdoorC: 29.5, water: true }).state).toBe('unmet')
  })
  test('over the limit a second person signs, for that heat and no more', () => {
    const { why } = at({ outdoorC: 31, water: true })
    const second = {
      item: 'heat-at-start',
      by: 'Bram',
      why: 'stays' as const,
      account: true as const,
      on: DAY,
      of: why,
    }
    const s = but({ check: { ...READY.check, seconds: [second] } })
    expect(at({ outdoorC: 31, water: true }, s).state).toBe('signed')
    expect(at({ outdoorC: 38, water: true }, s).state).toBe('unmet')
  })
})

describe('what the heat did to the bees', () => {
  const said = (work: Sheet['work']) =>
    heatToBees(but({ work }), DEFAULT_PROTOCOL.heatLimitC, SHOWS).join(' ')
  test('nothing out of the ordinary: nothing said', () => {
    expect(said({ outdoorC: 24, openedAt: '08:00', boxedAt: '10:00' })).toBe('')
  })
  test('over the limit, a hot box, brood long in the open', () => {
    expect(said({ outdoorC: 34 })).toContain('over the limit of 29.4 C')
    expect(said({ boxC: 41 })).toContain('slumped')
    expect(said({ boxC: 33 })).toContain('shaded and vented')
    expect(said({ openedAt: '08:00', boxedAt: '12:00' })).toContain('dried out')
    expect(said({ openedAt: '08:00', boxedAt: '12:00', broodCare: 'closed-chest' })).toBe('')
  })
})

describe('closing up', () => {
  test('each thing left is named; a swarm leaves no hole', () => {
    expect(leftToClose(READY)).toEqual(['comb', 'void', 'smell', 'entrance', 'stragglers', 'photo'])
    expect(leftToClose({ ...EMPTY_SHEET, site: { type: 'swarm' } })).toEqual([])
    const swarm = (where: string): Sheet => ({ ...EMPTY_SHEET, site: { type: 'swarm', where } })
    expect(leftToClose(swarm('by the road'))).toEqual([])
    expect(leftToClose(swarm('in the wall'))).not.toEqual([])
    const work: Sheet['work'] = {
      cleaned: 'all',
      sealed: 'yes',
      closedUp: ['void', 'smell', 'stragglers'],
      photos: ['a'.repeat(64)],
    }
    expect(leftToClose(but({ work }))).toEqual([])
    expect(leftToClose(but({ work: { ...work, cleaned: 'part', sealed: 'owner' } }))).toEqual([
      'comb',
      'entrance',
    ])
  })
})

test('call-backs are counted by removal type, of jobs that were carried out', () => {
  const job = (type: string, what: ('bees-back' | 'honey')[], boxed = true) => ({
    sheet: but({
      site: { type },
      work: boxed ? { boxedAt: '10:00' } : {},
      callBacks: what.map((w) => ({ on: DAY, what: w, by: 'Ines' })),
    }),
    colonies: [],
  })
  const counts = callBacksByType([
    job('wall', ['bees-back', 'honey']),
    job('wall', []),
    job('swarm', []),
    job('tree', ['honey'], false),
  ])
  expect(counts.map((c) => [c.type, c.jobs, c.withCallBack, c.byWhat['bees-back'], c.byWhat.honey])).toEqual([
    ['wall', 2, 1, 1, 1],
    ['swarm', 1, 0, 0, 0],
  ])
})

describe('cutting depth: the sheathing and 1/8 in more, no deeper (common practice)', () => {
  const at = (cutMm: number, protocol = DEFAULT_PROTOCOL) =>
    reckon(but({ check: { ...READY.check, cutMm } }), protocol).items.find((i) => i.id === 'cut-depth')
  test('19 mm and 3.175 mm', () => {
    expect(at(22.175)?.state).toBe('met')
    expect(at(22.3)).toMatchObject({ state: 'unmet' })
    expect(at(22.3)?.why).toContain('22.175 mm')
  })
  test('the margin is the yard’s', () => {
    expect(at(22, protocolWith({ cutMarginMm: 0 }))?.state).toBe('unmet')
    expect(at(24, protocolWith({ cutMarginMm: 6 }))?.state).toBe('met')
  })
  test('three quarters of an inch and an eighth, typed as inches, meet exactly', () => {
    const s = but({
      site: { ...READY.site, sheathingMm: 0.75 * 25.4 },
      check: { ...READY.check, cutMm: 0.875 * 25.4 },
    })
    expect(stateIn(s, 'cut-depth')?.state).toBe('met')
  })
  test('not measured is not said', () => {
    const { sheathingMm: _, ...site } = READY.site
    expect(stateIn(but({ site }), 'cut-depth')?.state).toBe('unsaid')
  })
})

describe('heat: above 85 °F (29.4 °C) nothing is cut out (common practice)', () => {
  const hours = READY.check.hours ?? []
  test('only the planned hours count', () => {
    expect(workingHours(READY).map((h) => h.at)).toEqual(['06:00', '09:00', '12:00'])
    expect(stateIn(READY, 'heat')?.state).toBe('met')
    expect(stateIn(but({ check: { ...READY.check, until: '15:00' } }), 'heat')).toMatchObject({
      state: 'unmet',
    })
  })
  test('over the limit: says when, and when it is cooler', () => {
    const why = stateIn(but({ check: { ...READY.check, until: '16:00' } }), 'heat')?.why
    expect(why).toContain('33 C at 15:00')
    expect(why).toContain('06:00 to 12:00')
  })
  test('hot all day: another day, or refuse', () => {
    const hot = hours.map((h) => ({ ...h, c: 35 }))
    expect(stateIn(but({ check: { ...READY.check, hours: hot } }), 'heat')?.why).toContain(
      'another day, or refuse',
    )
  })
  test('the limit is the yard’s', () => {
    const strict = reckon(READY, protocolWith({ heatLimitC: 25 }))
    expect(strict.unmet.map((i) => i.id)).toEqual(['heat'])
  })
  test('one number will do: the hottest hour while you work', () => {
    const at = (hottestC: number) =>
      stateIn(but({ check: { ...READY.check, hours: [], hottestC } }), 'heat')?.state
    expect([at(29.4), at(29.5)]).toEqual(['met', 'unmet'])
  })
  test('one cool hour at dawn does not stand for an afternoon', () => {
    const check = { ...READY.check, hours: [{ at: '06:00', c: 18 }], until: '15:00' }
    expect(stateIn(but({ check }), 'heat')).toMatchObject({ state: 'unsaid' })
  })
  test('no hours, another day’s hours, or none in the planned time: not said', () => {
    for (const check of [
      { ...READY.check, hours: [] },
      { ...READY.check, on: '2026-06-11' },
      { ...READY.check, from: '18:00', until: '20:00' },
    ])
      expect(stateIn(but({ check }), 'heat')?.state).toBe('unsaid')
  })
  test('stretches under the limit, in whatever order they were typed', () => {
    const typed = [
      { at: '20:00', c: 28 },
      { at: '12:00', c: 33 },
      { at: '06:00', c: 20 },
      { at: '09:00', c: 27 },
      { at: '16:00', c: 34 },
    ]
    expect(underLimit(typed, 29.4)).toEqual(['06:00 to 09:00', 'at 20:00'])
  })
})

describe('the decision', () => {
  const go = (s: Sheet, reason?: string) =>
    decisionProblems({ is: 'go', by: 'Ines', ...(reason === undefined ? {} : { reason }) }, reckon(s), s)
  test('no "go" over what a licensed trade decides, whatever the reason', () => {
    const s = but({ site: { ...READY.site, hazards: ['asbestos'] } })
    expect(go(s, 'Looks fine to me.')).toMatchObject([{ field: 'is' }])
    expect(decisionProblems({ is: 'wait', by: 'Ines' }, reckon(s), s)).toEqual([])
  })
  test('"go" over what cannot kill needs a reason', () => {
    const { sprayed: _, ...site } = READY.site
    const s = but({ site })
    expect(go(s)).toMatchObject([{ field: 'reason' }])
    expect(go(s, 'The owner is on the telephone.')).toEqual([])
    expect(unmetWords(reckon(s))[0]).toContain('asked whether the bees were sprayed')
  })
  test('nothing unmet needs none; refusing does', () => {
    expect(go(READY)).toEqual([])
    expect(decisionProblems({ is: 'refuse', by: 'Ines' }, reckon(READY), READY)).toMatchObject([
      { field: 'reason' },
    ])
  })
})

test('whatever is on the sheet, it never says "safe", and every unmet item says who decides', () => {
  const sheets = fc.record({
    access: fc.constantFrom(...ACCESS),
    behind: fc.subarray([...BEHIND]),
    hazards: fc.subarray([...HAZARDS]),
    vacuum: fc.constantFrom(...VACUUMS),
    done: fc.subarray([...TICKED] as string[]),
    cutMm: fc.option(fc.integer({ min: 0, max: 60 }), { nil: undefined }),
    c: fc.integer({ min: -10, max: 45 }),
    type: fc.constantFrom('wall', 'swarm', 'ground', 'a bus'),
    sprayed: fc.constantFrom('yes', 'no', 'unknown', undefined),
  })
  fc.assert(
    fc.property(sheets, (x) => {
      const { cutMm, sprayed } = x
      const s = here(
        sheetSchema.parse({
          ...READY,
          site: {
            ...READY.site,
            type: x.type,
            access: x.access,
            behind: x.behind,
            hazards: x.hazards,
            ...(sprayed ? { sprayed } : {}),
          },
          check: {
            ...READY.check,
            vacuum: x.vacuum,
            done: x.done,
            ...(cutMm === undefined ? {} : { cutMm }),
            hours: [{ at: '08:00', c: x.c }],
          },
        }),
      )
      const r = reckon(s)
      expect(JSON.stringify(r)).not.toMatch(/\bsafe/i)
      expect(r.items.map((i) => i.id)).toEqual([...ITEMS])
      for (const i of r.unmet) expect([i.what, i.why, i.decides].every((w) => w.length > 3)).toBe(true)
      expect(r.says === 'nothing-unmet').toBe(r.unmet.length === 0)
      const barred = decisionProblems({ is: 'go', by: 'Ines', reason: 'x' }, r, s).length > 0
      expect(barred).toBe(r.unmet.some(holds))
    }),
    { numRuns: 300 },
  )
})
