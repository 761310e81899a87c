/** What is written after a “go”, or as its reason, holds it like what is tapped. Invented. */
import { beforeAll, beforeEach, describe, expect, test } from 'vitest'
import { beforeCut, holds } from '../../../src/features/removal/before-cut.ts'
import { clearanceProblems } from '../../../src/features/removal/decide.ts'
import { AS_TOLD } from '../../../src/features/removal/people.ts'
import { placeOf } from '../../../src/features/removal/place.ts'
import { hangsInWords } from '../../../src/features/removal/swarm.ts'
import { ranOut } from '../../../src/features/removal/ticked-when.ts'
import { beganWithoutGo } from '../../../src/features/removal/without-go.ts'
import { notHere } from '../../../src/features/removal/written.ts'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { DEFAULT_PROTOCOL } from '../../../src/recovery/index.ts'
import { formIn, type Yard, yardOn } from '../../support/yard-on.ts'
import { emptied, oneSheet } from './one-sheet.ts'
import { but, DAY, goAt, here, PAPER, PHOTO, READY, read, SHOWS, YARD } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000039'
const PATH = `/removals/${ID}`
let yard: Yard
const { sheet, saved, save, post } = oneSheet(() => yard, ID, '08:00')
const go: NonNullable<Sheet['decision']> = goAt('11:00')
const site = async (more: Record<string, string | string[]>) => save('site', { ...more })
const open = () => post('work', { on: DAY, outdoorC: '75', water: 'yes', now: 'openedAt' })
const ticks = READY.check.done ?? []

beforeAll(async () => {
  yard = await yardOn(DAY)
})
beforeEach(() => emptied(yard))

test('the tick for one word does not stand for what is written of it later', async () => {
  const told = { ...READY.job, told: 'Opposite the gas station' }
  const check = { ...READY.check, done: [...ticks, notHere('gas')] }
  saved({ ...read({ ...READY, job: told, check }), decision: go })
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
    post('check', {
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
    expect(barred.text).toContain('name="again.not-here:gas"')
    expect(sheet().decision).toBeUndefined()
    expect((await decide(smells, [...ticks, notHere('gas')])).status).toBe(303)
    expect((await open()).status).toBe(303)
  })
})

test('a button claims nothing: clothing, tools, water and shade are tapped by whoever is there', async () => {
  saved({ ...READY, decision: go })
  const page = (await yard.get(`${PATH}/work`)).text
  expect(page).toContain('>Open it, now<')
  const { water: _, ...form } = { water: [], ...formIn(page) }
  expect((await yard.post(`${PATH}/work`, { ...form, outdoorC: '75', now: 'openedAt' })).status).toBe(422)
  expect(sheet().work.openedAt).toBeUndefined()
  expect((await open()).status).toBe(303)
})

describe('a second person’s name', () => {
  const signed = (at?: string): Sheet => ({
    ...READY,
    check: {
      ...READY.check,
      done: ticks.filter((t) => t !== 'not-alone'),
      tickedAt: '11:40',
      seconds: [
        {
          item: 'not-alone',
          of: AS_TOLD['not-alone'],
          by: 'Bram',
          why: 'stays',
          account: true,
          on: DAY,
          ...(at === undefined ? {} : { at }),
          ...placeOf(READY),
        },
      ],
    },
  })
  const holding = (s: Sheet, now?: string): string[] =>
    beforeCut(s, DEFAULT_PROTOCOL, SHOWS, DAY, [], now)
      .unmet.filter(holds)
      .map((i) => i.id)

  test('is of the last three hours, like what is ticked', () => {
    expect(holding(signed('11:30'), '12:00')).toEqual([])
    expect(holding(signed('06:00'), '12:00')).toEqual(['not-alone'])
    expect(holding(signed(), '12:00'), 'with no hour').toEqual(['not-alone'])
    // Of what is under way nobody is asked again.
    const begun = { ...signed('06:00'), work: { on: DAY, openedAt: '08:00' } }
    expect(holding(begun, '12:00')).toEqual([])
  })

  test('and what is begun rests on it', () => {
    const s = { ...signed('09:00'), decision: { ...go, at: '11:00' } }
    expect(ranOut(s, '11:30')).toBeNull()
    expect(ranOut(s, '12:30')).toContain('has run out')
  })
})

test('a report that found it clears nothing', () => {
  const s = but({ site: { ...READY.site, hazards: ['asbestos'] } })
  const report = {
    hazard: 'asbestos' as const,
    as: 'surveyor' as const,
    who: 'Umber Laboratory',
    on: DAY,
    photo: PAPER,
    says: 'clear' as const,
  }
  expect(clearanceProblems({ ...report, licence: 'report 4711' }, s, YARD, DAY)).toEqual([])
  const found = { ...report, licence: 'report 4711 POSITIVE chrysotile 12 %' }
  expect(clearanceProblems(found, s, YARD, DAY)).toMatchObject([{ field: 'licence' }])
})

test.each([
  ['utility-box', 'irrigation controller box', 'services'],
  ['utility-box', 'box by the gate', 'services'],
  ['equipment', 'pool heater', 'notes'],
  ['shed', 'behind the panel', 'notes'],
])('%s, %s: what is in it is asked', (type, where, asks) => {
  const { job } = READY
  const s = here({
    ...READY,
    job: { ...job, told: 'We water the lawn there' },
    site: { ...READY.site, type, where, behind: type === 'utility-box' ? ['water'] : ['insulation'] },
  })
  const open = beforeCut(s, DEFAULT_PROTOCOL, SHOWS, DAY).unmet.filter(holds)
  expect(open.map((i) => i.id)).toContain(asks)
})

test.each([
  'fence of the substation',
  'oak, in a knothole',
  'apple tree bird house',
  'bush by the valve pit',
])('a swarm on a “%s” is no short sheet', (where) => {
  const site = { ...READY.site, type: 'swarm', where }
  const s = here({ ...READY, job: { ...READY.job, bees: 'swarm' }, site })
  const asked = beforeCut(s, DEFAULT_PROTOCOL, SHOWS, DAY).unmet.filter(holds)
  expect(hangsInWords(s) && asked.length === 0).toBe(false)
})

test('bees that came of it by a program, with nothing begun or its “go” fallen, leave the mark', () => {
  const s: Sheet = { ...READY, decision: go }
  expect(beganWithoutGo(s, 0)).toBe(false)
  expect(beganWithoutGo(s, 1)).toBe(true)
  const work = { on: DAY, openedAt: '11:30', boxedAt: '11:50' }
  expect(beganWithoutGo({ ...s, work }, 1)).toBe(false)
  const fell = { by: 'Bram', on: DAY, at: '11:10' }
  expect(beganWithoutGo({ ...s, work, decision: { ...go, fell } }, 1)).toBe(true)
})

test('a “go” with no hour is not taken from a phone or a program', async () => {
  saved(READY)
  const { at: _, ...hourless } = go
  const send = (decision: Sheet['decision']) =>
    yard.send('/removals/sync', { id: ID, base: 1, over: false, sheet: { ...READY, decision } })
  expect((await send(hourless)).text).toContain('has no hour')
  expect((await send(go)).status).toBe(200)
})
