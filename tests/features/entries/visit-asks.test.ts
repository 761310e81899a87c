/** What a visit asks first: src/features/entries/asked.ts. */
import { describe, expect, test } from 'vitest'
import { INSIDE, leading, SUBJECTS } from '../../../src/features/entries/asked.ts'
import { FIELDS } from '../../../src/forms/index.ts'
import type { Plan, Rule } from '../../../src/recovery/index.ts'
import { live } from '../../../src/words/index.ts'
import { box } from '../round/yard.ts'

const planAt = (age: number, queen: 'unseen' | 'lost' | 'caged' = 'unseen'): Plan =>
  box({ tag: 'V-1', age, queen }).plan

describe('the questions that lead a visit', () => {
  // Common practice: whether there is a queen shows in eggs, in brood too young to be older than the removal, or in queen cells.
  test('are eggs, open brood and queen cells on the first brood check', () => {
    const plan = planAt(6)
    expect(live(plan).map((c) => c.rule)).toContain('telling-visit')
    expect(leading(plan, false).slice(0, 3)).toEqual(['eggs', 'open', 'cells'])
  })

  test('are at most four, each once', () => {
    for (let age = 0; age <= 40; age++)
      for (const queen of ['unseen', 'lost', 'caged'] as const) {
        const asked = leading(planAt(age, queen), false)
        expect(asked.length).toBeGreaterThan(0)
        expect(asked.length).toBeLessThanOrEqual(4)
        expect(new Set(asked).size).toBe(asked.length)
      }
  })

  test('are what can be seen through a shut lid while it is shut', () => {
    for (const age of [0, 6, 20]) {
      const inside: readonly string[] = INSIDE
      expect(leading(planAt(age), true).filter((f) => inside.includes(f))).toEqual([])
    }
  })

  test('are the usual ones where the plan asks nothing', () => {
    const plan = { ...planAt(6), checks: [] }
    expect(leading(plan, false)).toEqual(['eggs', 'open', 'cells'])
  })

  test('come for a rule that is done and not seen from the next one', () => {
    const [check] = planAt(6).checks
    if (check === undefined) throw new Error('no check')
    const asks = (...rules: Rule[]): Plan => ({
      ...planAt(6),
      checks: rules.map((rule) => ({ ...check, rule, status: 'due' as const })),
    })
    expect(leading(asks('comb-ties'), false)).toEqual(['eggs', 'open', 'cells'])
    expect(leading(asks('comb-ties', 'worker-brood'), false)).toEqual(['capped', 'eggs', 'cells'])
  })
})

test('every question of an inspection has one subject, so that none is lost when it does not lead', () => {
  const subjects = [...SUBJECTS.inside, ...SUBJECTS.outside].flatMap((s) => [...s.fields])
  expect(new Set(subjects).size).toBe(subjects.length)
  const elsewhere = ['opened', 'note', 'photos']
  expect([...subjects].sort()).toEqual(
    Object.keys(FIELDS.inspection)
      .filter((f) => !elsewhere.includes(f))
      .sort(),
  )
})
