/** Opened or boxed on a phone that had not heard that its “go” was lost: it is kept, and it is marked. Invented. */
import { beforeEach, describe, expect, test } from 'vitest'
import { placeOf } from '../../../src/features/removal/place.ts'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { type TestYard, testYard } from '../../support/yard-app.ts'
import { wordsOf } from '../../support/yard-on.ts'
import { DAY, READY } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000042'
let yard: TestYard
beforeEach(() => {
  yard = testYard({ day: DAY })
})
const removals = () => yard.services.store.removals
const last = (): Sheet => removals().get(ID)?.last.sheet ?? READY
const saved = (s: Sheet): void => {
  const stamp = { savedAt: `${DAY}T08:00:00.000Z`, savedBy: 'Odalys' }
  expect(removals().save(ID, removals().get(ID)?.last.version ?? 0, s, stamp).ok).toBe(true)
}
const sync = async (sheet: Sheet, base: number) => {
  const answer = await yard.ask('beekeeper', '/removals/sync', {
    method: 'POST',
    headers: { 'Content-Type': 'application/json' },
    body: JSON.stringify({ id: ID, base, over: false, sheet }),
  })
  return answer.status
}
const page = async () => wordsOf(await (await yard.ask('beekeeper', `/removals/${ID}`)).text())

const GOES: Sheet = {
  ...READY,
  check: { ...READY.check, tickedAt: '10:00' },
  decision: { is: 'go', by: 'Odalys', on: DAY, at: '10:00', unmet: [], ...placeOf(READY) },
}
const REFUSED: Sheet = {
  ...GOES,
  decision: {
    ...placeOf(READY),
    is: 'refuse',
    by: 'Odalys',
    on: DAY,
    at: '10:40',
    reason: 'The stairs are burnt through',
    unmet: [],
  },
}
const GAS: Sheet = {
  ...GOES,
  site: { ...READY.site, behind: ['insulation', 'gas'] },
  decision: {
    ...(GOES.decision as object),
    fell: { by: 'Odalys', on: DAY, at: '10:40' },
  } as Sheet['decision'],
}
const opened = (at: string, s = GOES): Sheet => ({
  ...s,
  work: { on: DAY, openedAt: at, outdoorC: 20, water: true, underGo: { by: 'Bram', on: DAY, at } },
})
const boxed = (at: string, s: Sheet): Sheet => ({ ...s, work: { ...s.work, boxedAt: at, queen: 'caged' } })

describe.each([
  ['a colleague’s refusal', REFUSED],
  ['a pipe that a colleague found', GAS],
])('after %s that the phone had not heard', (_, lost) => {
  test('what was opened is kept, and marked', async () => {
    saved(GOES)
    saved(lost)
    expect(await sync(opened('11:30'), 1)).toBe(200)
    expect(last().work).toMatchObject({ openedAt: '11:30', withoutGo: { why: 'sent-later', by: 'Bram' } })
    expect(await page()).toContain('Begun without a “go”')
  })
  test('what was opened before it is as it says', async () => {
    saved(GOES)
    saved(lost)
    expect(await sync(opened('10:30'), 1)).toBe(200)
    expect(last().work.withoutGo).toBeUndefined()
  })
  test('bees of what was open before it come with a mark', async () => {
    saved(opened('10:30'))
    saved({ ...lost, work: opened('10:30').work })
    expect(await sync(boxed('11:30', opened('10:30')), 1)).toBe(200)
    expect(last().work).toMatchObject({ boxedAt: '11:30', withoutGo: { why: 'sent-later', by: 'Bram' } })
  })
  test('bees that were boxed after it come with a mark, though it was opened before', async () => {
    saved(GOES)
    saved(lost)
    expect(await sync(boxed('11:30', opened('10:30')), 1)).toBe(200)
    expect(last().work.withoutGo).toMatchObject({ why: 'sent-later' })
  })
  test('bees that were boxed before it do not', async () => {
    saved(opened('10:10'))
    saved({ ...lost, work: opened('10:10').work })
    expect(await sync(boxed('10:35', opened('10:10')), 1)).toBe(200)
    expect(last().work.withoutGo).toBeUndefined()
  })
})

describe('the mark of what was begun over what came here later', () => {
  const refusedEarly = async () => {
    saved(READY)
    saved({
      ...opened('11:30'),
      work: { ...opened('11:30').work, underGo: { by: 'Odalys', on: DAY, at: '11:30' } },
    })
    const decision: Sheet['decision'] = {
      ...placeOf(READY),
      is: 'refuse',
      by: 'Bram',
      on: DAY,
      at: '11:05',
      reason: 'The well cover is broken',
      unmet: [],
    }
    return sync({ ...READY, decision }, 1)
  }
  test('names whose work it was and what it was begun over, not who sent that', async () => {
    await refusedEarly()
    expect(last().decision).toMatchObject({ is: 'refuse', by: 'Bram' })
    expect(last().work.withoutGo).toMatchObject({ by: 'Odalys', on: DAY, at: '11:30' })
    const words = await page()
    expect(words).toContain(
      `Begun without a “go” . Bram tapped “Refuse”, ${DAY} 11:05: The well cover is broken; not heard by then (Odalys, ${DAY} 11:30)`,
    )
    expect(words).not.toContain('came here only afterwards')
  })
  test('says what was found, where that ended it', async () => {
    saved(GOES)
    const found = {
      what: 'gas',
      is: 'found',
      by: 'Odalys',
      on: DAY,
      at: '10:40',
      writtenAt: `${DAY}T10:40:00Z`,
    } as const
    saved({ ...GAS, site: { ...GAS.site, noted: [found] } })
    expect(await sync(opened('11:30'), 1)).toBe(200)
    expect(await page()).toContain(
      `Gas pipe found (Odalys, ${DAY} 10:40); not heard by then (Bram, ${DAY} 11:30)`,
    )
  })
  test('is of no work that began here, where a colleague with a wrong clock sends a note', async () => {
    saved(READY)
    saved({
      ...opened('11:30'),
      work: { ...opened('11:30').work, underGo: { by: 'Odalys', on: DAY, at: '11:30' } },
    })
    const answer = await yard.ask('beekeeper', '/removals/sync', {
      method: 'POST',
      headers: { 'Content-Type': 'application/json' },
      body: JSON.stringify({
        id: ID,
        base: 1,
        over: false,
        now: `${DAY}T03:00:00.000Z`,
        sheet: { ...READY, job: { ...READY.job, phone: '555 0199' } },
      }),
    })
    expect(answer.status).toBe(200)
    expect(last().work).toMatchObject({ openedAt: '11:30' })
    expect(last().work.withoutGo).toBeUndefined()
  })
})

test.each(['', 'beside a clash'])(
  'one’s own “go” over a pipe that stood in the book by then is marked %s',
  async (clash) => {
    const noted = [
      { what: 'gas', is: 'found', by: 'Odalys', on: DAY, at: '10:40', writtenAt: `${DAY}T10:40:00.000Z` },
    ] as const
    saved(READY)
    const phone = clash === '' ? {} : { phone: '555 0100' }
    saved({ ...READY, job: { ...READY.job, ...phone }, site: { ...GAS.site, noted: [...noted] } })
    const own = {
      ...opened('11:30'),
      decision: { ...GOES.decision, by: 'Bram', at: '11:00' } as Sheet['decision'],
    }
    const mine = clash === '' ? own : { ...own, job: { ...own.job, phone: '555 0199' } }
    expect(await sync({ ...mine, check: { ...mine.check, tickedAt: '11:00' } }, 1)).toBe(
      clash === '' ? 200 : 422,
    )
    expect(last().work).toMatchObject({ openedAt: '11:30', withoutGo: { why: 'sent-later' } })
    expect(last().decision).toMatchObject({ is: 'go', by: 'Bram', fell: { on: DAY } })
  },
)

test('a refused sheet whose bees are in the box says so, and leads to their intake', async () => {
  saved(GOES)
  saved(REFUSED)
  expect(await sync(boxed('11:50', opened('11:30')), 1)).toBe(200)
  const words = await page()
  expect(words).toContain('Bees are out')
  expect(words).toContain('The stairs are burnt through')
  expect(await (await yard.ask('beekeeper', '/removals')).text()).toContain(`/removals/${ID}/intake`)
})

test('one that is open and refused is not over', async () => {
  saved(GOES)
  saved({ ...REFUSED, work: opened('10:30').work })
  expect(await page()).not.toContain('Refused')
  expect(await page()).toMatch(/Begun, and refused · 4 Invented Row/)
  expect(await page()).not.toContain('Waiting')
  expect(await page()).toContain('The stairs are burnt through')
})
