/**
 * A layer that has stopped: the risk of laying workers counts from the last egg she can have laid, which looked-for brood
 * dates (eggs 0-3 days old, open brood 3-9: Winston 1987), and not from the look that missed her.
 */
import { expect, test } from 'vitest'
import { addDays } from '../../src/days.ts'
import { readPlanInput } from '../../src/node/commands/plan-input.ts'
import { planOf } from '../../src/recovery/plan.ts'

const intake = {
  kind: 'intake',
  on: '2026-05-01',
  by: 'ada',
  removal: { type: 'wall' },
  yard: 'North',
  queen: 'loose',
}
const look = (on: string, more: object) => ({
  kind: 'inspection',
  on,
  by: 'ben',
  opened: true,
  cells: 'none',
  ...more,
})

test.each([
  ['no eggs: laid by four days before', { eggs: 'none' }, '2026-05-17'],
  ['no eggs and no open brood: laid by ten days before', { eggs: 'none', open: 'none' }, '2026-05-11'],
])('%s', (_name, seen, lastEgg) => {
  const entries = [
    intake,
    look('2026-05-06', { eggs: 'single', onFreshComb: true }),
    look('2026-05-21', seen),
  ]
  const input = readPlanInput(JSON.stringify({ tag: 'X-1', entries }), '2026-05-21')
  if (!input.ok) throw new Error(JSON.stringify(input.problems))
  const plan = planOf(input.history, '2026-05-21')
  expect(plan.phase).toBe('queenless')
  expect(plan.spans.layingWorkerRisk?.earliest).toBe(addDays(lastEgg, 21))
  // What is seen later is still held against her up to the day of the look.
  expect(plan.horizon.eggs).toBe('2026-05-24')
})
