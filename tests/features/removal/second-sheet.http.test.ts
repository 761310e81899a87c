/** Two people at one job, and two sheets of one house: what one of them has said is not passed by unread. Invented. */
import { beforeAll, beforeEach, describe, expect, test } from 'vitest'
import { seenOn } from '../../../src/features/removal/hazards.ts'
import { readThere } from '../../../src/features/removal/other-sheets.ts'
import { placeOf } from '../../../src/features/removal/place.ts'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'
import { emptied, type Fields, oneSheet } from './one-sheet.ts'
import { but, DAY, goAt, PAPER, PHOTO, READY, read } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000009'
const PATH = `/removals/${ID}`
let yard: Yard
beforeAll(async () => {
  yard = await yardOn(DAY)
  await yard.photos.keep(PHOTO)
})
beforeEach(() => emptied(yard))
const { last, sheet, saved: put, formOf, save, post, words } = oneSheet(() => yard, ID, '08:00')
const saved = (s: Sheet, savedBy = 'Ines', of = ID): void => put(s, savedBy, { of })

const check = (typed: Fields, more: Record<string, string>) =>
  yard.post(`${PATH}/check`, { ...typed, ...more })

describe('a refusal', () => {
  /** The gas of its reason was looked for again. */
  const LOOKED: Sheet = {
    ...READY,
    check: { ...READY.check, done: [...(READY.check.done ?? []), 'not-here:gas'] },
  }
  const refused: Sheet['decision'] = {
    is: 'refuse',
    by: 'Perpetua',
    on: DAY,
    at: '10:02',
    reason: 'smell of gas by the porch',
    unmet: [],
    ...placeOf(READY),
  }

  test('is not overrun by a form that lay open', async () => {
    saved(READY)
    const open = await formOf('check')
    saved({ ...READY, decision: refused }, 'Perpetua')
    const answer = await check(open, { is: 'go', reason: 'The bees must go today.' })
    expect(answer.status).toBe(422)
    expect(wordsOf(answer.text)).toContain('Perpetua tapped “Refuse”, 2026-06-12 10:02: smell of gas')
    expect(sheet().decision?.is).toBe('refuse')
  })

  test('takes a reason to go over, and stays on the page', async () => {
    saved(read({ ...LOOKED, decision: refused }), 'Perpetua')
    expect((await save('check', { is: 'go' })).status).toBe(422)
    const over = { is: 'go', reason: 'The fitter was here: it was the bin.' }
    expect((await save('check', over)).status).toBe(303)
    expect(await words()).toContain('Over a refusal. Perpetua tapped “Refuse”')
    // Nor does it go off by “Wait”, and then “Go”.
    expect((await save('check', { is: 'wait' })).status).toBe(303)
    expect((await save('check', { is: 'go' })).status).toBe(422)
    expect(sheet().decision?.over).toMatchObject({ by: 'Perpetua', reason: 'smell of gas by the porch' })
  })

  test('so does a “Wait” for a reason, and a bare one of somebody else', async () => {
    const waits = { ...refused, is: 'wait' as const, reason: 'smells of gas, I called the supplier' }
    saved(read({ ...LOOKED, decision: waits }), 'Perpetua')
    const barred = await save('check', { is: 'go' })
    expect(barred.status).toBe(422)
    expect(wordsOf(barred.text)).toContain('Perpetua tapped “Wait” (smells of gas, I called the supplier)')
    const over = { is: 'go', reason: 'The supplier was here: it was the bin.' }
    expect((await save('check', over)).status).toBe(303)
    expect(await words()).toContain('Over a “Wait”. Perpetua tapped “Wait”')
    const { reason: _, ...bare } = refused
    saved({ ...LOOKED, decision: { ...bare, is: 'wait' } }, 'Perpetua')
    expect((await save('check', { is: 'go' })).status).toBe(422)
    expect((await save('check', over)).status).toBe(303)
    saved({ ...LOOKED, decision: { ...bare, is: 'wait', by: 'Ines' } })
    expect((await save('check', { is: 'go' })).status).toBe(303)
  })

  test('is not overrun by a phone either, and who refused may take it back', async () => {
    const sync = (decision: Sheet['decision'], base: number) =>
      yard.send('/removals/sync', { id: ID, base, over: false, sheet: { ...LOOKED, decision } })
    const go: Sheet['decision'] = goAt('08:00')
    saved(LOOKED)
    saved(read({ ...LOOKED, decision: refused }), 'Perpetua')
    saved(read({ ...LOOKED, job: { ...READY.job, plannedAt: '07:00' }, decision: refused }))
    expect((await sync(go, 1)).status).toBe(422)
    expect((await sync(go, 3)).text).toContain('is needed: Perpetua refused')
    expect((await sync({ ...go, reason: 'The fitter was here.' }, 3)).status).toBe(200)
    expect(sheet().decision?.over?.by).toBe('Perpetua')
    saved(read({ ...LOOKED, decision: { ...refused, by: 'Ines' } }))
    expect((await save('check', { is: 'go' })).status).toBe(422)
    const answered = { is: 'go', reason: 'The fitter was here.' }
    expect((await save('check', answered)).status).toBe(303)
    expect(sheet().decision?.over?.by).toBe('Ines')
    // Answered once, one's own is not asked about again.
    expect((await save('check', { is: 'go' })).status).toBe(303)
    expect(sheet().decision?.over).toBeUndefined()
  })

  test('of one’s own is not taken away by a “Wait” with no word', async () => {
    saved(LOOKED)
    await save('check', { is: 'refuse', reason: 'Smell of gas in the hall' })
    expect((await save('check', { is: 'wait', reason: '' })).status).toBe(303)
    expect(sheet().decision?.over?.reason).toBe('Smell of gas in the hall')
    expect((await save('check', { is: 'go', reason: 'It is late.' })).status).toBe(422)
  })
})

test('a “go” is not given for a reason that names a hazard, and falls over a note that does', async () => {
  saved(READY)
  const smells = { is: 'go', reason: 'Smells of gas a bit, he says it always does' }
  expect((await save('check', smells)).status).toBe(422)
  expect((await save('check', { is: 'go', reason: '' })).status).toBe(303)
  const opened = {
    version: String(yard.store.removals.get(ID)?.last.version),
    now: 'openedAt',
    water: 'yes',
    outdoorC: '75',
  }
  expect((await yard.post(`${PATH}/work`, opened)).status).toBe(303)
  const note = { ...(await formOf('work')), note: 'GAS PIPE behind, nearly cut it' }
  await yard.post(`${PATH}/work`, note)
  expect(sheet().decision?.fell?.by).toBe('Ines')
  const boxed = { ...(await formOf('work')), now: 'boxedAt' }
  expect((await yard.post(`${PATH}/work`, boxed)).status).toBe(422)
})

describe('a clearance', () => {
  const gas = but({ site: { ...READY.site, behind: ['gas', 'insulation'] } })
  const clear = (seen: string, more: Record<string, string | string[]> = {}) =>
    yard.post(`${PATH}/clear`, {
      hazard: 'gas',
      seen,
      'trade-gas.as': 'gas-fitter',
      'trade-gas.who': 'Edda Brandt',
      'trade-gas.licence': '4711',
      'trade-gas.on': DAY,
      'trade-gas.says': 'clear',
      photos: PAPER,
      ...more,
    })

  test('is of the wall and of what was found when its form was opened', async () => {
    saved(gas)
    const open = (await yard.get(PATH)).text.match(/name="seen" value="([^"]*)"/)?.[1] ?? ''
    expect(open).toBe(seenOn(gas))
    saved({ ...gas, site: { ...gas.site, where: 'north gable' } })
    const moved = await clear(open)
    expect(moved.status).toBe(422)
    expect(wordsOf(moved.text)).toContain('another wall, or something else was found')
    saved({ ...gas, site: { ...gas.site, hazards: ['asbestos'] } })
    expect((await clear(open)).status).toBe(422)
    expect((await clear('')).status, 'one that shows nothing').toBe(422)
    saved(gas)
    expect((await clear(open)).status).toBe(303)
  })

  test('takes the last photo, shows it, and takes none of another job', async () => {
    saved(gas)
    const better = 'b'.repeat(64)
    await yard.photos.keep({ id: better, bytes: new Uint8Array([2]) })
    const first = await clear(seenOn(gas), { 'trade-gas.who': 'Edda' })
    expect(first.status).toBe(422)
    expect(first.text).toContain(`src="/photos/${PAPER}"`)
    expect((await clear(seenOn(gas), { photos: [PAPER, better] })).status).toBe(303)
    expect(sheet().check.clearances).toMatchObject([{ photo: better }])
    saved({ ...READY, job: { address: '9 Other Lane', photos: [PAPER] } }, 'Ines', ID.replace(/9$/, '8'))
    saved(gas)
    const other = await clear(seenOn(gas))
    expect(wordsOf(other.text)).toContain('is of another job')
  })
})

test('the job sheet on paper says of when it is, and who is about is asked, not looked for', async () => {
  saved(READY)
  const paper = await words(`${PATH}/print?what=job`)
  expect(paper).toContain('As of Fri 12 Jun 12:00, version 1')
  expect((await yard.get(`${PATH}/job`)).text).toContain('Asked: nobody')
})

test('an ended sheet never says “Go”', async () => {
  const decision: Sheet['decision'] = goAt()
  saved({ ...READY, decision, ended: { on: DAY, why: 'They flew off.' } })
  const { text } = await yard.get(PATH)
  expect(text).not.toContain('<b>Go</b>')
  expect(wordsOf(text)).toContain('It was go, decided by Ines, Fri 12 Jun, before the job ended')
})

describe('two sheets of one house', () => {
  const OTHER = ID.replace(/9$/, '8')
  /** The husband's call, looked at by somebody else: stopped for a gas pipe and somebody allergic. */
  const theirs: Sheet = {
    ...READY,
    job: { name: 'Edgar Fairweather', address: '4 Invented row, Springfield' },
    site: { ...READY.site, where: 'Left of the porch', behind: ['gas'], bystanders: ['allergic'] },
    decision: { is: 'refuse', by: 'Bram', on: DAY, reason: 'Gas.', unmet: [], ...placeOf(READY) },
  }
  const noted = readThere({ id: OTHER, notes: ['Gas.'] })
  const go = async (more: string[] = []) => {
    const open = await formOf('check')
    return yard.post(`${PATH}/check`, { ...open, done: [...(open.done ?? []), ...more], is: 'go' })
  }

  test('what can kill on the one holds the other until it is looked for again', async () => {
    saved(READY)
    saved(theirs, 'Bram', OTHER)
    const page = await words()
    expect(page).toMatch(/Another sheet of this house: Edgar Fairweather .*gas pipe, somebody allergic/)
    const barred = await go()
    expect(barred.status).toBe(422)
    expect(wordsOf(barred.text)).toContain('what another sheet says, looked for again')
    expect((await go([`not-there:gas:${OTHER}`])).status, 'one of two').toBe(422)
    expect((await go([`not-there:allergic:${OTHER}`])).status, 'not why it was refused').toBe(422)
    expect((await go([noted])).status, 'all by now').toBe(303)
    const { text } = await yard.get(PATH)
    expect(wordsOf(text)).toContain('not here: gas pipe, not here: somebody allergic')
  })

  test('what comes onto it afterwards takes the “go” away; on the next day it is asked again', async () => {
    saved(READY)
    expect((await go()).status).toBe(303)
    saved(theirs, 'Bram', OTHER)
    const version = String(last()?.version)
    const opened = await yard.post(`${PATH}/work`, { version, outdoorC: '75', now: 'openedAt', water: 'yes' })
    expect(opened.status).toBe(422)
    expect(await words('/removals')).toContain('No go any more')
    expect((await go([`not-there:gas:${OTHER}`, `not-there:allergic:${OTHER}`, noted])).status).toBe(303)
    yard.setDay('2026-06-13')
    expect((await formOf('check')).done).toBeUndefined()
  })

  test('it comes with a phone that knew nothing of it: kept, and no “go” any more', async () => {
    saved(theirs, 'Bram', OTHER)
    const decision: Sheet['decision'] = goAt('09:00')
    const sent = { id: ID, base: 0, over: false, sheet: { ...READY, decision } }
    expect((await yard.send('/removals/sync', sent)).status).toBe(200)
    expect(sheet().decision?.fell).toBeDefined()
  })

  test('another house, a job that is done and a sheet with nothing grave nag nobody', async () => {
    saved(READY)
    saved({ ...theirs, job: { address: '44 Invented Row' } }, 'Bram', OTHER)
    saved({ ...READY, job: { ...READY.job, name: 'Edgar' } }, 'Bram', ID.replace(/9$/, '7'))
    expect((await yard.get(PATH)).text).not.toContain('Another sheet of this house')
    expect((await go()).status).toBe(303)
  })
})

describe('when it is opened', () => {
  const decision: Sheet['decision'] = goAt()
  const open = () => post('work', { on: DAY, outdoorC: '75', now: 'openedAt', water: 'yes' })
  const ticked = (tickedAt: string, work: Sheet['work'] = {}): void =>
    saved({ ...READY, decision, work, check: { ...READY.check, tickedAt } })

  test('what was tapped more than three hours ago, or before anybody arrived, is tapped again', async () => {
    ticked('06:20')
    const barred = await open()
    expect(barred.status).toBe(422)
    expect(wordsOf(barred.text)).toContain('The go of 06:20 has run out: look again before you begin')
    const again = await formOf('check')
    expect(again.done ?? []).toEqual([])
    const wires = { wires: 'none', done: READY.check.done ?? [], is: 'go' }
    expect((await yard.post(`${PATH}/check`, { ...again, ...wires })).status).toBe(303)
    expect(sheet().check.tickedAt).toBe('12:00')
    expect((await open()).status).toBe(303)
    ticked('10:00', { on: DAY, arrivedAt: '11:00' })
    expect((await yard.get(`${PATH}/work`)).status).toBe(200)
    const early = await save('work', { outdoorC: '75', now: 'openedAt', water: 'yes' })
    expect(early.status).toBe(422)
    expect(wordsOf(early.text)).toContain('is of before anybody arrived (11:00)')
  })

  test('boxed alone it asks why, where all was tapped in the morning', async () => {
    const box = () => post('work', { on: DAY, outdoorC: '75', water: 'yes', now: 'boxedAt' })
    ticked('06:20')
    const asked = await box()
    expect(asked.status).toBe(422)
    expect(asked.text).toContain('name="withoutGo.why"')
    ticked('09:30')
    expect((await box()).status).toBe(303)
  })

  test('within three hours it stands', async () => {
    ticked('09:30', { on: DAY, arrivedAt: '09:40' })
    expect((await open()).status).toBe(303)
  })
})

test('a meter or utility box has something in it: “Looked: none” is not taken', async () => {
  const box = (behind: Sheet['site']['behind'], where = 'left of the porch'): Sheet =>
    read(
      but({
        site: { ...READY.site, where, type: 'utility-box', behind: behind ?? [], behindHow: 'detector' },
      }),
    )
  saved(box([]))
  const barred = await save('check', { is: 'go' })
  expect(barred.status).toBe(422)
  expect(wordsOf(barred.text)).toContain('A meter or utility box has wires, gas or water in it')
  // “Water pipe” is tapped in haste for the meter: of water alone it is said in words.
  saved(box(['water']))
  expect((await save('check', { is: 'go' })).status).toBe(422)
  saved(box(['water'], 'water meter box by the gate'))
  expect((await save('check', { is: 'go' })).status).toBe(303)
})

test('boards left to the owner, or a photo of it closed, are work that was begun', async () => {
  for (const work of [{ left: 'The boards.' }, { photos: PAPER }] as Record<string, string>[]) {
    saved(READY)
    const version = String(last()?.version)
    const answer = await yard.post(`${PATH}/work`, { version, on: DAY, leftAt: '11:00', ...work })
    expect(answer.status, JSON.stringify(work)).toBe(422)
    expect(answer.text).toContain('name="withoutGo.why"')
  }
})

describe('what a person in a hurry misread', () => {
  test('beside a “go” stands no “Wait”, its reason is called one, and nobody looked at the telephone', async () => {
    const { sprayed: _, ...site } = READY.site
    saved({ ...READY, site })
    const open = await formOf('check')
    expect((await check(open, { is: 'go', reason: 'Bees must go today' })).status).toBe(303)
    for (const path of [PATH, '/removals']) {
      const page = wordsOf((await yard.get(path)).text)
      expect(page).toContain('Gone over with a reason: 1 not filled in yet')
      expect(page).not.toContain('Wait:')
    }
    const page = await words()
    expect(page).toContain('with 1 unmet or not filled in. Reason: Bees must go today')
    expect(page).toContain('Who is about asked: nobody')
  })

  test('a clash names what clashes in words', async () => {
    const done = (tick: string): Sheet['check'] => ({
      ...READY.check,
      done: READY.check.done?.filter((t) => t !== tick) ?? [],
      tickedAt: '08:00',
    })
    saved(READY)
    saved({ ...READY, check: done('exclusion') }, 'Bram')
    const mine = { ...READY, check: done('not-alone') }
    const { text } = await yard.send('/removals/sync', { id: ID, base: 1, over: false, sheet: mine })
    expect(text).toContain('"Bram saved something else meanwhile"')
    expect(text).toContain(
      '"What is tapped before the cut: theirs “Somebody within call”, yours “Area kept clear”"',
    )
  })
})
