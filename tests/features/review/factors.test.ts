/** What goes with losing: the choice of model, and that sentences never claim a cause. */
import { describe, expect, it } from 'vitest'
import { addDays } from '../../../src/days.ts'
import { FACTORS } from '../../../src/features/review/factor-columns.ts'
import { goesWithLosing } from '../../../src/features/review/factors.ts'
import {
  findingLines,
  findingReading,
  findingsReading,
  times,
} from '../../../src/features/review/findings-reading.ts'
import { holm } from '../../../src/statistics/index.ts'
import type { ColonyFacts } from '../../../src/stays/index.ts'

const AS_OF = '2026-10-01'
function colony(i: number, lostOnDay: number | null, change: Partial<ColonyFacts> = {}): ColonyFacts {
  const intakeOn = '2026-06-01'
  return {
    tag: `C${i}`,
    removalType: 'wall',
    yard: null,
    intakeOn,
    queen: 'caged',
    broodSalvaged: null,
    outdoorC: null,
    hoursOpenToBoxed: null,
    method: null,
    removedBy: null,
    lookedAfterBy: null,
    lastSeen: null,
    outcome:
      lostOnDay === null
        ? { what: 'moved-out', on: addDays(intakeOn, 35), into: null }
        : { what: 'died', on: addDays(intakeOn, lostOnDay), into: null },
    followedFrom: intakeOn,
    ...change,
  }
}
/** 120 colonies; above 30 °C two of three are lost, else one of three. */
const HEAT = Array.from({ length: 120 }, (_, i) => {
  const hot = i % 2 === 0
  const lost = hot ? i % 3 !== 0 : i % 3 === 0
  return colony(i, lost ? (i * 7) % 34 : null, {
    outdoorC: hot ? 31 + (i % 4) : 22 + (i % 5),
    removalType: i % 5 < 3 ? 'wall' : 'tree',
    method: i % 7 < 3 ? 'vacuum' : 'brushed',
  })
})

describe('the model', () => {
  it('is joint with losses enough, and finds the heat', () => {
    const { together, findings, leftOut } = goesWithLosing(HEAT, AS_OF)
    expect(together).toBe(true)
    expect(findings.map((f) => f.label)).toEqual(['tree', '5 °C warmer', 'vacuum'])
    const heat = findings.find((f) => f.factor === 'heat')
    expect(heat?.lower ?? 0).toBeGreaterThan(1)
    expect(leftOut.map((l) => l.factor)).toEqual(['queen', 'brood', 'hours'])
  })

  it('takes one fact at a time with few losses, and nothing with fewer than five', () => {
    const few = HEAT.slice(0, 24)
    const { together, findings } = goesWithLosing(few, AS_OF)
    expect(together).toBe(false)
    expect(findings.length).toBeGreaterThan(0)
    const none = goesWithLosing(HEAT.slice(0, 6), AS_OF)
    expect(none.findings).toEqual([])
    expect(findingsReading(none)).toMatch(/^Fewer than 5 colonies were lost/)
  })

  it('types with fewer than five colonies are taken together', () => {
    const rare = HEAT.map((c, i) => ({ ...c, removalType: i < 3 ? 'trap-out' : i < 6 ? 'swarm' : 'wall' }))
    const { findings } = goesWithLosing(rare, AS_OF, { wanted: ['type'] })
    expect(findings.map((f) => [f.label, f.against])).toEqual([['other types', 'wall']])
  })

  it('a fact that separates: the cautious estimate, and that is said', () => {
    const separated = HEAT.map((c) => ({
      ...c,
      queen: c.outcome?.what === 'died' ? ('lost' as const) : ('caged' as const),
    }))
    const [finding] = goesWithLosing(separated, AS_OF, { wanted: ['queen'] }).findings
    expect(finding?.method).toBe('firth-penalised')
    expect(finding === undefined ? '' : findingReading(finding)).toContain('a cautious one')
  })
})

const FINDING = {
  factor: 'heat' as const,
  label: '5 °C warmer',
  against: '5 °C cooler',
  ratio: 1.62,
  lower: 1.1,
  upper: 2.4,
  p: 0.01,
  holm: 0.03,
  method: 'maximum-likelihood' as const,
  colonies: 120,
  lost: 60,
  behind: 60,
}

describe('one test a fact', () => {
  const TYPES = Array.from({ length: 8 }, (_, i) => `type-${i}`)
  const many = Array.from({ length: 160 }, (_, i) => ({
    ...(HEAT[i % HEAT.length] as ColonyFacts),
    tag: `M${i}`,
    removalType: TYPES[(i * 7 + (i >> 3)) % TYPES.length] ?? '',
  }))

  it('a fact with many groups has one p, adjusted for the other facts, and one sentence where it finds nothing', () => {
    const found = goesWithLosing(many, AS_OF)
    const type = found.tests.find((t) => t.factor === 'type')
    expect(type?.df).toBe(7)
    for (const t of found.tests) expect(t.holm).toBeGreaterThanOrEqual(t.p)
    // Read is the whole fact's p, or the comparison's own among the fact's others where that is greater.
    for (const f of found.findings) {
      const own = found.findings.filter((x) => x.factor === f.factor).map((x) => x.p ?? 1)
      const among = own.length < 2 ? 0 : (holm(own)[own.indexOf(f.p ?? 1)] ?? 1)
      const whole = found.tests.find((t) => t.factor === f.factor)?.holm ?? 1
      expect(f.holm).toBeCloseTo(Math.max(whole, among), 12)
    }
    expect(findingsReading(found)).toContain(
      `Every p is raised for the ${found.tests.length} facts asked about (Holm)`,
    )
    expect(type?.holm).toBeGreaterThan(0.05)
    const lines = findingLines(found)
    expect(lines.length).toBeLessThanOrEqual(FACTORS.length)
    expect(lines[0]).toMatch(
      /^These numbers do not show that losing goes with the removal type \(one test for all 8 groups, p = /,
    )
  })

  it('thirty groups that do differ are not thirty sentences', () => {
    const lethal = many.map((c, i) => ({
      ...c,
      outcome:
        c.removalType < 'type-4'
          ? { what: 'died' as const, on: addDays(c.intakeOn, 5 + (i % 9)), into: null }
          : null,
    }))
    const lines = findingLines(goesWithLosing(lethal, AS_OF, { wanted: ['type'] }))
    expect(lines).toHaveLength(4)
    expect(lines[3]).toBe('4 more comparisons by the removal type stand in the table.')
  })

  it('nothing is compared where one loss stands between two groups', () => {
    // Six colonies each of a and b, one lost in all; enough were lost in c for a model.
    const row = (type: string, i: number, lost: boolean): ColonyFacts => ({
      ...(HEAT[0] as ColonyFacts),
      tag: `${type}${i}`,
      removalType: type,
      outcome: lost ? { what: 'died', on: addDays('2026-05-01', 10 + i), into: null } : null,
    })
    const rows = [
      ...Array.from({ length: 7 }, (_, i) => row('a', i, i === 0)),
      ...Array.from({ length: 6 }, (_, i) => row('b', i, false)),
      ...Array.from({ length: 6 }, (_, i) => row('c', i, i < 5)),
    ].map((c) => ({ ...c, intakeOn: '2026-05-01', followedFrom: '2026-05-01' }))
    const { findings, leftOut } = goesWithLosing(rows, AS_OF, { wanted: ['type'] })
    expect(findings.map((f) => [f.label, f.behind, f.lower !== null])).toEqual([['c', 6, true]])
    expect(leftOut).toEqual([{ factor: 'type', why: 'only one was lost of those with b and those with a' }])
  })
})

describe('sentences', () => {
  it('say how much, with limits, and that it is no cause', () => {
    expect(findingReading(FINDING)).toBe(
      'For each 5 °C warmer at the removal, colonies were lost at 1.6 times the rate (1.1 to 2.4 times). That they go together does not say that one made the other.',
    )
  })

  it('do not lean on one of many facts that stands out as chance would have it', () => {
    expect(findingReading({ ...FINDING, holm: 0.06 })).toBe(
      'For each 5 °C warmer at the removal, colonies were lost at 1.6 times the rate (1.1 to 2.4 times), but with so many facts looked at, one that stands out as far as this is to be expected by chance.',
    )
  })

  it('say when no difference can be read', () => {
    expect(findingReading({ ...FINDING, lower: 0.8, lost: 8, behind: 8 })).toBe(
      'For each 5 °C warmer at the removal, colonies were lost at 1.6 times the rate, but anything from 0.80 to 2.4 times fits these numbers, so no difference can be read from them. Only 8 losses stand behind this.',
    )
    expect(findingReading({ ...FINDING, ratio: null })).toMatch(/nothing can be worked out/)
  })

  it('never claim a cause', () => {
    const { findings } = goesWithLosing(HEAT, AS_OF)
    for (const f of findings)
      expect(findingReading(f)).not.toMatch(/\b(caus\w*|because|due to|leads? to|effect)\b/i)
  })

  it('figures that count', () => {
    expect([0.004, 0.457, 0.997, 1.034, 1.62, 2.06, 12.4, 4000].map(times)).toEqual([
      'under 0.01',
      '0.46',
      '1.00',
      '1.03',
      '1.6',
      '2.1',
      '12',
      'over 1000',
    ])
  })
})
