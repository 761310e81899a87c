/** What is written after a “go”, or as its reason, holds it like what is tapped. Invented. */
import { beforeEach, describe, expect, test } from 'vitest'
import { notHere } from '../../../src/features/removal/other-sheets.ts'
import { placeOf } from '../../../src/features/removal/place.ts'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { formIn, type Yard, yardOn } from '../../support/yard-on.ts'
import { but, DAY, PAPER, PHOTO, READY } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000039'
const PATH = `/removals/${ID}`
let yard: Yard
const last = () => yard.store.removals.get(ID)?.last
const sheet = (): Sheet => last()?.sheet ?? READY
const saved = (s: Sheet, savedBy = 'Ines'): void => {
  const stamp = { savedAt: `${DAY}T08:00:00.000Z`, savedBy }
  expect(yard.store.removals.save(ID, last()?.version ?? 0, s, stamp).ok).toBe(true)
}
const go: Sheet['decision'] = { is: 'go', by: 'Ines', on: DAY, at: '11:00', unmet: [], ...placeOf(READY) }
const site = async (more: Record<string, string | string[]>) =>
  yard.post(`${PATH}/site`, { ...formIn((await yard.get(`${PATH}/site`)).text), ...more })
const open = () =>
  yard.post(`${PATH}/work`, {
    version: String(last()?.version),
    on: DAY,
    outdoorC: '75',
    water: 'yes',
    now: 'openedAt',
  })
const ticks = READY.check.done ?? []

beforeEach(async () => {
  yard = await yardOn(DAY)
})

test('the tick for one word does not stand for what is written of it later', async () => {
  const told = { ...READY.job, told: 'Opposite the gas station' }
  saved({
    ...READY,
    job: told,
    check: { ...READY.check, done: [...ticks, notHere('gas')] },
    decision: go,
  })
  expect((await site({ behindNote: 'Gas pipe right behind the nest' })).status).toBe(303)
  expect(sheet().check.done).not.toContain('not-here:gas')
  expect(sheet().decision?.fell).toBeDefined()
  expect((await open()).status).toBe(422)
})

test('a second pipe that is written after the first was cleared is asked of its trade again', async () => {
  await yard.photos.keep(PHOTO)
  const gas = but({
    site: { ...READY.site, behind: ['gas'] },
  })
  const cleared = {
    hazard: 'gas' as const,
    as: 'gas-fitter' as const,
    who: 'Casper Ashgrove',
    licence: 'G 471100',
    on: DAY,
    photo: PAPER,
    knew: ['gas' as const],
    writtenAt: `${DAY}T07:00:00.000Z`,
    ...placeOf(READY),
  }
  const noted = [
    {
      what: 'gas' as const,
      is: 'found' as const,
      by: 'Ines',
      on: DAY,
      at: '06:30',
      writtenAt: `${DAY}T06:30:00.000Z`,
    },
  ]
  saved({
    ...gas,
    site: { ...gas.site, noted },
    check: { ...gas.check, clearances: [cleared] },
    decision: go,
  })
  expect((await site({ behindNote: 'Another gas pipe right of it' })).status).toBe(303)
  expect(sheet().decision?.fell).toBeDefined()
  expect((await open()).status).toBe(422)
})

test('fierce bees that are found after a “go” ask for the distance anew', async () => {
  saved(but({ site: { ...READY.site, temper: 'unknown' }, decision: go }))
  expect((await site({ temper: '5' })).status).toBe(303)
  expect(sheet().check.done).not.toContain('fierce')
  expect((await open()).status).toBe(422)
})

describe('a reason', () => {
  const decide = (reason: string, done: string[] = ticks) =>
    yard.post(`${PATH}/check`, {
      version: String(last()?.version),
      shownOn: DAY,
      on: DAY,
      hottestC: '75',
      cutMm: '0.8',
      vacuum: 'bee-vacuum',
      wires: 'none',
      is: 'go',
      reason,
      done,
    })

  test('that names gas is no reason to go, until it is looked for', async () => {
    saved({ ...READY, agreement: { pricing: 'hourly', hourly: 90 } })
    const smells = 'Smells of gas a bit, the owner says it always does'
    const barred = await decide(smells)
    expect(barred.status).toBe(422)
    expect(barred.text).toContain('value="not-here:gas"')
    expect(sheet().decision).toBeUndefined()
    expect((await decide(smells, [...ticks, notHere('gas')])).status).toBe(303)
    expect((await open()).status).toBe(303)
  })
})
