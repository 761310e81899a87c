/** The weeks ahead: days and sums held against the plans themselves, and a row that says what its marks show. */
import { v7 } from 'uuid'
import { expect, it } from 'vitest'
import { addDays } from '../../../src/days.ts'
import { cellsOf, daysShown, together, workOf } from '../../../src/features/weeks/weeks.ts'
import type { Plan } from '../../../src/recovery/index.ts'
import { workDays } from '../../../src/words/index.ts'
import { intakes } from '../../support/field.ts'
import { processorOf } from '../../support/processor.ts'
import { given, type Yard, yardOn } from '../../support/yard-on.ts'

const DAY = '2026-06-08'

const filled = async (role: 'helper' | 'operator' = 'operator'): Promise<Yard> => {
  const yard = await yardOn(DAY, role)
  given(yard, intakes(['W-1', 'W-2'], '2026-06-05'))
  given(yard, [
    {
      id: v7(),
      colony: 'W-2',
      kind: 'inspection',
      on: DAY,
      by: 'Isolde',
      opened: true,
      cells: 'capped',
      eggs: 'none',
    },
  ])
  return yard
}

/** As of the day of the yard: any page brings the plans up to date. */
const planOf = async (yard: Yard, tag: string): Promise<Plan> => {
  await yard.get('/yard')
  const plan = yard.store.colony(tag)?.summary.plan
  if (plan === undefined) throw new Error(tag)
  return plan
}

it('shows a week back and three ahead', () => {
  const days = daysShown(DAY, 0)
  expect([days[0], days.length, days.at(-1)]).toEqual(['2026-06-01', 28, '2026-06-28'])
})

it('puts windows, quiet time, work and the leaving on the days the plan has', async () => {
  const yard = await filled()
  for (const tag of ['W-1', 'W-2']) {
    const plan = await planOf(yard, tag)
    const cells = cellsOf({ plan, visits: [] }, daysShown(DAY, 0))
    const { quiet } = plan
    expect(cells.filter((c) => c.quiet).length > 0).toBe(quiet !== null && quiet.from <= '2026-06-28')
    for (const c of cells.filter((x) => x.quiet))
      expect(c.day >= (quiet?.from ?? '') && c.day <= (quiet?.to ?? '')).toBe(true)
    expect(cells.flatMap((c) => (c.work === null ? [] : [c.day]))).toEqual(
      workDays(plan)
        .map((w) => w.day)
        .filter((d) => d <= '2026-06-28'),
    )
  }
  // W-2 raises a queen: it is shut for days on end, and W-1 is not.
  expect((await planOf(yard, 'W-2')).quiet).not.toBeNull()
  expect((await planOf(yard, 'W-1')).quiet).toBeNull()
})

it('no work falls before the day of the plan, and what is late stands on it', async () => {
  const yard = await filled()
  yard.setDay('2026-06-25')
  const plan = await planOf(yard, 'W-1')
  const [now, ...rest] = workDays(plan)
  expect(now).toMatchObject({ day: '2026-06-25', late: true })
  expect(rest.every((w) => w.day > '2026-06-25' && !w.late)).toBe(true)
})

it('no box is opened in its quiet time', async () => {
  const yard = await filled()
  const plan = await planOf(yard, 'W-2')
  const { quiet } = plan
  expect(quiet).not.toBeNull()
  for (const w of workDays(plan))
    if (!w.lidOn && w.checks.every((c) => c.rule !== 'cells-beside'))
      expect(w.day < (quiet?.from ?? '') || w.day > (quiet?.to ?? ''), w.day).toBe(true)
})

it('sums are of the cells below them', async () => {
  const yard = await filled()
  const days = daysShown(DAY, 0)
  const plans = [await planOf(yard, 'W-1'), await planOf(yard, 'W-2')]
  const rows = plans.map((plan) => cellsOf({ plan, visits: [] }, days))
  const sums = days.map((_, i) =>
    workOf(
      rows.flatMap((r) => r[i] ?? []),
      DAY,
    ),
  )
  const all = rows.flat().filter((c) => c.work !== null && c.work.words.length > 0)
  expect(together(sums).visits).toBe(all.length)
  expect(together(sums).opened).toBe(all.filter((c) => !c.work?.lidOn).length)
})

it('a frame of eggs that the plan asks for is counted on its day', async () => {
  const yard = await yardOn('2026-06-12')
  given(yard, intakes(['W-1'], '2026-06-05'))
  given(yard, [
    {
      id: v7(),
      colony: 'W-1',
      kind: 'inspection',
      on: '2026-06-12',
      by: 'Isolde',
      opened: true,
      cells: 'none',
      eggs: 'none',
      open: 'none',
      capped: 'none',
    },
  ])
  const plan = await planOf(yard, 'W-1')
  expect(plan.advice.action).toBe('give-egg-frame')
  const cells = cellsOf({ plan, visits: [] }, ['2026-06-12'])
  expect(workOf(cells, '2026-06-12')).toMatchObject({
    queens: 0,
    eggFrames: 1,
    late: 0,
    visits: 1,
    opened: 1,
  })
})

it('the page says each row in words, marks past visits, and tells operators what to order', async () => {
  const yard = await filled()
  const page = await yard.get('/weeks')
  expect(page.status).toBe(200)
  expect(page.text).toMatch(/W-2.*visited Mon 8 Jun/s)
  expect(page.text).toContain('●')
  expect(page.text).toContain('href="/supplies"')
  const helper = await (await filled('helper')).get('/weeks')
  expect(helper.status).toBe(200)
  expect(helper.text).not.toContain('href="/supplies"')
  expect(yard.errors).toEqual([])
})

it.each(['/weeks?skip=14', '/weeks?skip=999', '/weeks?skip=x', '/weeks?yard=nowhere'])(
  '%s is a page',
  async (path) => {
    const yard = await filled()
    const page = await yard.get(path)
    expect(page.status).toBe(200)
    if (path.endsWith('=14')) expect(page.text).toContain(`datetime="${addDays(DAY, 14)}"`)
  },
)

it('200 boxes are drawn in under a second', async () => {
  const yard = await yardOn(DAY)
  given(
    yard,
    intakes(
      Array.from({ length: 200 }, (_, i) => `W-${i + 1}`),
      '2026-06-05',
    ),
  )
  await yard.get('/weeks')
  const { made: page, ms: took } = await processorOf(() => yard.get('/weeks'))
  console.info(`200 boxes over 28 days: ${Math.round(took)} ms, ${Math.round(page.text.length / 1024)} kB`)
  expect(page.text.match(/class="tag"/g)).toHaveLength(200)
  expect(took).toBeLessThan(1000)
})
