import { describe, expect, it } from 'vitest'
import { demoEntries } from '../../demo/entries.ts'
import { liveStories } from '../../demo/live/stories.ts'
import type { Day } from '../../src/days.ts'
import { planOf } from '../../src/decision/index.ts'
import { historyOf } from '../../src/journal/history.ts'
import { ACTIONS, type Check, PHASES, type Plan, RULES } from '../../src/recovery/plan-types.ts'
import { AWKWARD_DAYS, byColony } from './colonies.ts'

function plansOn(today: Day): Map<string, Plan> {
  const colonies = byColony(demoEntries(today))
  return new Map(
    liveStories.map(({ tag }) => {
      const history = historyOf(tag, colonies.get(tag) ?? [])
      if (history === null) throw new Error(`${tag} has no intake`)
      return [tag, planOf(history, today)]
    }),
  )
}

const asked = (plan: Plan | undefined, rule: Check['rule']): Check | undefined =>
  plan?.checks.find((c) => c.rule === rule && !['answered', 'void'].includes(c.status))

describe.each(AWKWARD_DAYS)('the plans of the invented yard on %s', (today) => {
  const plans = plansOn(today)
  const all = [...plans.values()]

  it('show every phase, every action and every check', () => {
    expect(PHASES.filter((phase) => !all.some((p) => p.phase === phase))).toEqual([])
    // To order a queen ahead, somebody has to say that none is in hand: no journal does.
    expect(ACTIONS.filter((action) => !all.some((p) => p.advice.action === action))).toEqual(['order-queen'])
    expect(RULES.filter((rule) => !all.some((p) => asked(p, rule) !== undefined))).toEqual([])
  })

  it('have something waiting, open, due and overdue', () => {
    const statuses = new Set(all.flatMap((p) => p.checks.map((c) => c.status)))
    expect([...statuses]).toEqual(expect.arrayContaining(['waiting', 'open', 'due', 'overdue', 'answered']))
  })

  it('are not fooled by a donor’s eggs', () => {
    expect(plans.get('M-08')?.phase).not.toBe('laying')
    expect(asked(plans.get('M-08'), 'cells-on-egg-frame')).toBeDefined()
  })

  it.each([
    // No cells on a frame of eggs, and a queen balled: another queen is more likely there than none (common practice).
    ['a queen rejected', 'T-08', 'awaiting-eggs'],
    ['a queen still caged', 'T-02', 'awaiting-release'],
    ['laying workers', 'M-15', 'laying-workers'],
    ['a virgin that is late', 'M-07', 'awaiting-new-queen'],
    ['a queen that lays only drones', 'M-17', 'queenless'],
    ['a sighting corrected: cells, not eggs', 'T-15', 'rearing'],
    ['the intake of this morning', 'T-12', 'awaiting-release'],
    ['a pair united', 'T-16', 'closed'],
  ])('know %s', (_, tag, phase) => {
    expect(plans.get(tag)?.phase).toBe(phase)
  })

  it('call the inspector, send one home, and see what cannot be', () => {
    expect(plans.get('M-16')?.advice.action).toBe('call-inspector')
    expect(plans.get('M-01')?.readiness.ready).toBe(true)
    expect(plans.get('M-01')?.advice.action).toBe('move-out')
    expect([...plans].filter(([, p]) => p.surprises.length > 0).map(([tag]) => tag)).toEqual([
      'M-20',
      'M-22',
      'M-04',
    ])
    expect(asked(plans.get('M-12'), 'telling-visit')?.status).toBe('overdue')
  })
})
