/** What jobs earned, at the costs the yard set: a setting changed is reckoned with on the next look. */
import { v7 } from 'uuid'
import { expect, it } from 'vitest'
import { EMPTY_SHEET } from '../../../src/records/index.ts'
import { testYard } from '../../support/yard-app.ts'
import { wordsOf } from '../../support/yard-on.ts'

it('visits and days cost what the yard says they do', async () => {
  const yard = testYard({ day: '2026-06-10' })
  const { store } = yard.services
  const stamp = { savedAt: '2026-06-01T12:00:00.000Z', savedBy: 'Odalys' }
  for (let n = 0; n < 10; n++) {
    const [colony, sheet] = [v7(), v7()]
    const base = { colony: `W-${n}`, by: 'Odalys' }
    await yard.send('operator', [
      {
        ...base,
        id: colony,
        kind: 'intake',
        on: '2026-04-01',
        yard: 'Home',
        queen: 'caged',
        removal: { type: 'wall' },
      },
      { ...base, id: v7(), kind: 'inspection', on: '2026-04-05', opened: true, eggs: 'single' },
      { ...base, id: v7(), kind: 'outcome', on: '2026-05-11', what: 'moved-out' },
    ])
    store.removals.save(
      sheet,
      0,
      { ...EMPTY_SHEET, agreement: { ...EMPTY_SHEET.agreement, paid: 400 + 10 * (n % 2) } },
      stamp,
    )
    store.removals.link(sheet, colony, stamp)
  }
  const money = async (): Promise<string> => wordsOf(await (await yard.ask('operator', '/review')).text())
  await yard.post('operator', '/protocol/costs', { 'cost.opening': '10', 'cost.day': '2' })
  // The mean price is 405; one visit and 40 days: 10 + 80.
  expect(await money()).toContain('Earns most: wall, $315 a job')
  expect(await money()).toContain('$10 a visit, $2 a day in the yard')
  store.settings.set('costs', { opening: 0, day: 0 })
  // 405 ± 2.262 (Student's t, 9 degrees, any printed table) × 5.27 / √10.
  expect(await money()).toContain('Earns most: wall, $405 a job ($401 to $409, 10 jobs)')
  // A helper sees neither; who reviews sees it beside the answer.
  expect((await yard.ask('helper', '/review')).status).toBe(403)
  expect(yard.errors).toEqual([])
})
