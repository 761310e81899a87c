/** What to check before the cut. The items are common practice in the trade; the limits are the yard's protocol. */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { beforeCut, ITEMS, type ItemId, TICKED, tradesNeeded } from '../../src/features/removal/before-cut.ts'
import { decisionProblems, unmetWords } from '../../src/features/removal/decide.ts'
import { underLimit, workingHours } from '../../src/features/removal/forecast.ts'
import { reckoningTitle } from '../../src/features/removal/words.ts'
import {
  ACCESS,
  BEHIND,
  EMPTY_SHEET,
  HAZARDS,
  type Sheet,
  sheet as sheetSchema,
  VACUUMS,
} from '../../src/records/removal-sheet.ts'
import { DEFAULT_PROTOCOL, protocolWith } from '../../src/recovery/protocol.ts'

const shows = { temperature: (c: number) => `${c} C`, depth: (mm: number) => `${mm} mm` }
const reckon = (s: Sheet, protocol = DEFAULT_PROTOCOL) => beforeCut(s, protocol, shows)
const stateIn = (s: Sheet, id: ItemId) => reckon(s).items.find((i) => i.id === id)

/** A wall job with nothing unmet. */
const READY: Sheet = {
  ...EMPTY_SHEET,
  job: { name: 'Ottoline Fairweather', address: '4 Invented Row', plannedOn: '2026-06-12' },
  site: {
    type: 'wall',
    where: 'left of the porch',
    access: 'ladder',
    heightM: 4,
    sheathingMm: 19,
    behind: ['insulation'],
    hazards: [],
    sprayed: 'no',
  },
  agreement: {
    pricing: 'hourly',
    hourly: 90,
    signature: { how: 'paper', name: 'Ottoline Fairweather', on: '2026-06-10', terms: 'As agreed.' },
  },
  check: {
    on: '2026-06-12',
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
  },
}
const but = (change: Partial<Sheet>): Sheet => ({ ...READY, ...change })

describe('go, wait or refuse', () => {
  test('nothing unmet', () => {
    expect(reckon(READY)).toMatchObject({ says: 'nothing-unmet', unmet: [] })
  })

  test('an empty sheet waits: what is not said is no ground to refuse', () => {
    const r = reckon(EMPTY_SHEET)
    expect(r.says).toBe('wait')
    expect(r.unmet.length).toBeGreaterThan(14)
  })

  test.each([...TICKED])('%s unticked is unmet, named, with who decides', (id) => {
    const r = reckon(but({ check: { ...READY.check, done: TICKED.filter((t) => t !== id) } }))
    expect(r.says).toBe('wait')
    expect(r.unmet.map((i) => i.id)).toEqual([id])
    expect(r.unmet[0]?.decides).not.toBe('')
  })

  test.each([
    ['electric-in-cut', 'wires'],
    ['gas', 'gas'],
    ['asbestos', 'asbestos'],
    ['lead-paint', 'lead paint'],
    ['weak-structure', 'builder'],
  ])('%s behind the surface: refuse until the licensed trade has cleared it', (found, word) => {
    const site = (BEHIND as readonly string[]).includes(found)
      ? { ...READY.site, behind: [found as 'gas'] }
      : { ...READY.site, hazards: [found as 'asbestos'] }
    const r = reckon(but({ site }))
    expect(r.says).toBe('refuse')
    expect(r.unmet[0]).toMatchObject({ id: 'trade', decides: 'A licensed trade, and local codes' })
    expect(r.unmet[0]?.why).toContain(word)
    const cleared = reckon(but({ site, check: { ...READY.check, clearedBy: 'Fitter, 11 June' } }))
    expect(cleared.says).toBe('nothing-unmet')
  })

  test('wires behind the surface are a caution, not a stop, until they are in the way of the cut', () => {
    const site = { ...READY.site, behind: ['electric' as const] }
    const r = reckon(but({ site }))
    expect(r.says).toBe('wait')
    expect(r.unmet).toMatchObject([{ id: 'wires', state: 'unsaid' }])
    expect(r.unmet[0]?.why).toContain('licensed electrician')
    expect(tradesNeeded(but({ site }))).toEqual([])
    expect(reckon(but({ site, check: { ...READY.check, clearedBy: 'Electrician, 11 June' } })).says).toBe(
      'nothing-unmet',
    )
  })

  test('what is not filled in is counted apart from what stops it', () => {
    const told = (site: Sheet['site']) => reckoningTitle(reckon({ ...EMPTY_SHEET, site }))
    expect(told({ type: 'wall', behind: ['electric'] })).toMatch(/^Wait: \d+ not filled in yet$/)
    expect(told({ type: 'wall', behind: ['gas'] })).toMatch(
      /^Refuse, as it stands: 1 thing stops it; \d+ not filled in yet$/,
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
    expect(stateIn(but({ site: { ...READY.site, access: 'ground' } }), 'ladder-person')?.state).toBe(
      'not-needed',
    )
    for (const access of ACCESS.filter((a) => a !== 'ground')) {
      const s = but({ site: { ...READY.site, access }, check: { ...READY.check, done: [] } })
      expect(stateIn(s, 'ladder-person')?.state).toBe('unsaid')
    }
  })

  test('a swarm is not cut: no depth, no chest; heat and people count all the same', () => {
    const swarm = but({ site: { type: 'swarm', access: 'ground', sprayed: 'no' } })
    for (const id of [
      'cut-depth',
      'services',
      'hazards-looked',
      'brood-chest',
      'ladder-person',
      'trade',
    ] as const)
      expect(stateIn(swarm, id)?.state).toBe('not-needed')
    expect(stateIn(swarm, 'heat')?.state).toBe('met')
    expect(reckon(swarm).says).toBe('nothing-unmet')
  })
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
  test('no "go" over what a licensed trade decides, whatever the reason', () => {
    const r = reckon(but({ site: { ...READY.site, hazards: ['asbestos'] } }))
    expect(decisionProblems({ is: 'go', reason: 'Looks fine to me.' }, r)).toMatchObject([{ field: 'is' }])
    expect(decisionProblems({ is: 'wait' }, r)).toEqual([])
  })
  test('"go" over anything else needs a reason', () => {
    const r = reckon(but({ check: { ...READY.check, done: TICKED.filter((t) => t !== 'tools') } }))
    expect(decisionProblems({ is: 'go' }, r)).toMatchObject([{ field: 'reason' }])
    expect(decisionProblems({ is: 'go', reason: 'Bram brings them.' }, r)).toEqual([])
    expect(unmetWords(r)[0]).toContain('Tools and boxes loaded')
  })
  test('nothing unmet needs none; refusing does', () => {
    expect(decisionProblems({ is: 'go' }, reckon(READY))).toEqual([])
    expect(decisionProblems({ is: 'refuse' }, reckon(READY))).toMatchObject([{ field: 'reason' }])
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
      const s = sheetSchema.parse({
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
      })
      const r = reckon(s)
      expect(JSON.stringify(r)).not.toMatch(/\bsafe/i)
      expect(r.items.map((i) => i.id)).toEqual([...ITEMS])
      for (const i of r.unmet) expect([i.what, i.why, i.decides].every((w) => w.length > 3)).toBe(true)
      expect(r.says === 'nothing-unmet').toBe(r.unmet.length === 0)
      if (decisionProblems({ is: 'go', reason: 'x' }, r).length > 0) expect(r.says).toBe('refuse')
    }),
    { numRuns: 300 },
  )
})
