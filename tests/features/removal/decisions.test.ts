/**
 * The decisions table: every hazard, cleared or not, by heat, by people. What "go" asks for is common practice in the
 * trade: live wires, gas and asbestos wait for whoever is licensed; work at heights and with stings is never done alone
 * (general guidance for work at heights and in heat; from memory).
 */
import { describe, expect, test } from 'vitest'
import { holds } from '../../../src/features/removal/before-cut.ts'
import { goStands } from '../../../src/features/removal/decide.ts'
import { ONLY_THE_TRADE } from '../../../src/features/removal/hazards.ts'
import { TICKED } from '../../../src/features/removal/item.ts'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { TRADE_HAZARDS, type TradeHazard } from '../../../src/records/said-by-others.ts'
import { but, DAY, goAt, here, READY } from './ready.ts'
import { cleared, line, mayGo, reckon, signedFor, withHazard, without } from './reckoned.ts'

type Change = (s: Sheet) => Sheet
/** What a person or the weather is like, and the item it opens; null where nothing is opened. */
const HEAT: [string, string | null, Change][] = [
  ['cool', null, (s) => s],
  ['38 °C', 'heat', (s) => ({ ...s, check: { ...s.check, hours: [], hottestC: 38 } })],
  [
    'no forecast',
    'heat',
    (s) => {
      const { hours: _, ...check } = s.check
      return { ...s, check }
    },
  ],
]
const PEOPLE: [string, string | null, Change][] = [
  ['all in order', null, (s) => s],
  ['alone on a ladder', 'ladder-person', (s) => without(s, 'ladder-person')],
  ['nobody within call', 'not-alone', (s) => without(s, 'not-alone')],
  ['no plan for stings', 'sting-plan', (s) => without(s, 'sting-plan')],
  [
    'somebody allergic',
    'allergy',
    (s) => without({ ...s, site: { ...s.site, bystanders: ['allergic'] } }, 'allergy'),
  ],
  [
    'children',
    'children',
    (s) => without({ ...s, site: { ...s.site, bystanders: ['children'] } }, 'children'),
  ],
  ['fierce bees', 'fierce', (s) => without({ ...s, site: { ...s.site, temper: 5 } }, 'fierce')],
  ['Africanized', 'fierce', (s) => without({ ...s, site: { ...s.site, africanized: 'yes' } }, 'fierce')],
  [
    'Africanized or not: not known',
    'fierce',
    (s) => without({ ...s, site: { ...s.site, africanized: 'unknown' } }, 'fierce'),
  ],
  ['temper not known', 'fierce', (s) => without({ ...s, site: { ...s.site, temper: 'unknown' } }, 'fierce')],
  [
    'nobody asked how they behave',
    'temper',
    (s) => {
      const { temper: _, ...site } = s.site
      return { ...s, site }
    },
  ],
  [
    'nobody asked of Africanized bees',
    'temper',
    (s) => {
      const { africanized: _, ...site } = s.site
      return { ...s, site }
    },
  ],
  [
    'an allergic son was written, and the words deleted',
    'notes',
    (s) => line(s, { what: 'allergic', is: 'written', words: 'my son is allergic' }),
  ],
  [
    'nobody asked who is about',
    'bystanders',
    (s) => {
      const { bystanders: _, ...site } = s.site
      return { ...s, site }
    },
  ],
]
const HAZARD_ROWS: [TradeHazard | null, boolean][] = [
  [null, true],
  ...TRADE_HAZARDS.flatMap((hazard): [TradeHazard, boolean][] => [
    [hazard, true],
    [hazard, false],
  ]),
]

describe.each(HAZARD_ROWS)('hazard %s, cleared: %s', (hazard, isCleared) => {
  const there = hazard === null ? READY : withHazard(READY, hazard)
  const base = hazard !== null && isCleared ? cleared(there, hazard) : there
  describe.each(HEAT)('heat: %s', (_heat, heatItem, heat) => {
    test.each(PEOPLE)('people: %s', (_people, personItem, people) => {
      const s = people(heat(base))
      const open = [hazard !== null && !isCleared ? `trade-${hazard}` : null, heatItem, personItem].filter(
        (i) => i !== null,
      )
      const holding = reckon(s).unmet.filter(holds)
      expect(holding.map((i) => i.id).sort()).toEqual([...open].sort())
      expect(mayGo(s)).toBe(open.length === 0)

      // Every item but what waits for the trade can be signed for by a second person, one at a time.
      const signedAll = open.reduce((made, item) => signedFor(made, item), s)
      // Nobody signs for not asking: “not known” is an answer.
      const barred =
        personItem === 'temper' ||
        personItem === 'bystanders' ||
        personItem === 'notes' ||
        (hazard !== null && !isCleared && ONLY_THE_TRADE.includes(hazard))
      expect(mayGo(signedAll)).toBe(!barred)
      if (open.length > 1) expect(mayGo(signedFor(s, open[0] ?? ''))).toBe(false)
    })
  })
})

describe('looks that nobody has had', () => {
  const { behind: _behind, hazards: _hazards, old: _old, ...unlooked } = READY.site
  test('services not located: no go, and nobody can sign for it', () => {
    const s = but({ site: { ...unlooked, hazards: [], old: 'no' } })
    expect(mayGo(s)).toBe(false)
    expect(mayGo(signedFor(s, 'services'))).toBe(false)
  })
  test.each(['yes', 'unknown', undefined] as const)(
    'built before 1980: %s; nobody looked for asbestos and lead: no go, and nobody can sign for it',
    (old) => {
      const s = but({ site: { ...unlooked, behind: [], ...(old === undefined ? {} : { old }) } })
      expect(mayGo(s)).toBe(false)
      expect(mayGo(signedFor(s, 'old-building'))).toBe(false)
    },
  )
  test('an empty sheet does not go, whatever the reason', () => {
    expect(mayGo({ job: {}, site: {}, agreement: {}, check: {}, work: {} })).toBe(false)
  })
  test('a nest that was tapped as a swarm is asked like a nest', () => {
    const s = but({ job: { ...READY.job, bees: 'nest' }, site: { ...unlooked, type: 'swarm' } })
    expect(mayGo(s)).toBe(false)
  })
  test('what was found counts for a swarm too: a power line beside it', () => {
    const swarm = but({ job: { ...READY.job, bees: 'swarm' }, site: { ...READY.site, type: 'swarm' } })
    expect(mayGo(swarm)).toBe(true)
    expect(mayGo(withHazard(swarm, 'electric-in-cut'))).toBe(false)
  })
})

describe('“go” stands', () => {
  const gone: Sheet = { ...READY, decision: goAt() }
  test('for the wall and the house that were looked at', () => {
    const at = (s: Sheet): boolean => goStands(here(s), reckon(here(s)), DAY)
    expect(at(gone)).toBe(true)
    expect(at({ ...gone, job: { ...gone.job, address: '99 New Road' } })).toBe(false)
    expect(at({ ...gone, site: { ...gone.site, where: 'chimney breast, the other house' } })).toBe(false)
    const { address: _a, where: _w, ...bare } = gone.decision ?? { is: 'go', by: 'Ines', on: DAY, unmet: [] }
    expect(at({ ...gone, decision: bare })).toBe(false)
  })
  test('on its day, until something comes up', () => {
    expect(goStands(gone, reckon(gone), DAY)).toBe(true)
    expect(goStands(gone, reckon(gone), '2026-06-13')).toBe(false)
    for (const hazard of TRADE_HAZARDS) {
      const s = withHazard(gone, hazard)
      expect(goStands(s, reckon(s), DAY)).toBe(false)
    }
    for (const id of TICKED) {
      const s = without(gone, id)
      const open = reckon(s).unmet.some(holds)
      expect(goStands(s, reckon(s), DAY)).toBe(!open)
    }
  })
})
