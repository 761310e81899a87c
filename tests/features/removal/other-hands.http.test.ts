/** One phone in two hands at a removal: what one person found and has not sent is missed by nobody, and lost by no tap. Invented. */
import { beforeEach, describe, expect, test } from 'vitest'
import type { Role } from '../../../src/people/index.ts'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { type Phone, wordsOf } from '../../support/phone.ts'
import { type TestYard, testYard } from '../../support/yard-app.ts'
import { phoneAtNoon, sheetIn, sheetOn, type Taps } from './one-phone.ts'
import { DAY, PHOTO, READY, SITED, TAPPED } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000071'
const PATH = `/removals/${ID}`
const OVER = `/outbox/sheet/${ID}/over`
const TAKE_OUT = `/outbox/sheet/${ID}/take-out`
const NOTE = 'a note others have not read'
const WHAT = `gas pipe, a building of before 1980, ${NOTE}`
const KILLS = `Something that can kill waits here and reaches nobody: ${WHAT}. Bram signs in on this phone`
const KEY = 'Key under the pot'
let yard: TestYard
let phone: Phone
const { last, saved } = sheetIn(() => yard, ID)
const { tap, call, findGas, words } = sheetOn(() => phone, ID)
const job = (more: Partial<Sheet['job']>, s = last()): Sheet => ({ ...s, job: { ...s.job, ...more } })

const outbox = () => words('/outbox')
/** Signal, and it is gone again. */
const signal = () => phone.signal()
const hands = (role: Role) => phone.handedTo(role)

beforeEach(async () => {
  yard = testYard({ day: DAY })
  await yard.services.photos.keep(PHOTO)
  for (const role of ['operator', 'beekeeper', 'helper'] as const) await yard.session(role)
  saved({ ...READY, job: { ...READY.job, plannedOn: DAY } })
  phone = await phoneAtNoon(yard)
})

describe('gas that waits on a phone whose owner’s session has ended', () => {
  beforeEach(async () => {
    expect((await call({ wayIn: KEY })).status).toBe(303)
    expect((await findGas()).status).toBe(303)
    phone.heldBy(null)
  })

  test('goes by itself while the session stands, and nothing is cried', async () => {
    expect(await outbox()).not.toContain('can kill')
  })

  test('is said on every page that the phone makes, and to the pages that it does not', async () => {
    await signal()
    for (const path of ['/', '/removals', PATH, '/outbox', '/round'])
      expect(wordsOf(await phone.open(path)), path).toContain(KILLS)
    expect((await phone.syncService.state()).kills).toEqual([{ what: WHAT, by: 'Bram' }])
  })

  test('is seen in the outbox by whoever took a photo of it', async () => {
    expect(await phone.open('/outbox')).not.toContain('/photos/')
    expect((await call({ photos: PHOTO.id })).status).toBe(303)
    expect(await phone.open('/outbox')).toContain(`<img src="/photos/${PHOTO.id}"`)
    await hands('operator')
    expect(await phone.open('/outbox')).not.toContain('/photos/')
  })

  test('is said before anybody has signed in again', async () => {
    await phone.syncService.signedOut()
    expect((await phone.syncService.state()).kills).toEqual([{ what: WHAT, by: 'Bram' }])
  })

  test.each(['operator', 'helper'] as const)(
    'is said to the %s who signs in, and nothing private',
    async (role) => {
      await hands(role)
      expect(wordsOf(await phone.open('/'))).toContain(KILLS)
      const page = await phone.open('/outbox')
      expect(wordsOf(page)).toContain(`A removal sheet of Bram: ${WHAT}.`)
      for (const words of [KEY, 'Ottoline', 'Invented Row', 'action="/outbox/send"', OVER, TAKE_OUT])
        expect(page).not.toContain(words)
    },
  )

  test('in words alone is said by its name, and not in those words', async () => {
    await hands('beekeeper')
    expect(last().site.behind).toContain('gas')
    saved({ ...last(), site: READY.site }, 'Odalys')
    await signal()
    expect(
      (await tap('site', { ...SITED, behind: 'insulation', behindNote: 'asbestos, says Ottoline' })).status,
    ).toBe(303)
    await hands('helper')
    const page = wordsOf(await phone.open('/'))
    expect(page).toContain('reaches nobody: asbestos')
    expect(page).not.toContain('Ottoline')
  })

  test('is not said any more once it is in the book', async () => {
    await hands('operator')
    await hands('beekeeper')
    expect(await phone.syncService.state()).toMatchObject({ waiting: 0, refused: 0, kills: [] })
    expect(last()).toMatchObject({ job: { wayIn: KEY }, site: { behind: ['insulation', 'gas'] } })
  })
})

describe('two people who write on one sheet on one phone', () => {
  beforeEach(async () => {
    expect((await call({ wayIn: KEY })).status).toBe(303)
    expect((await findGas()).status).toBe(303)
    await hands('operator')
    expect((await call({ email: 'hers@example.org' })).status).toBe(303)
  })

  test('neither is written over', async () => {
    expect(await phone.syncService.state()).toMatchObject({ waiting: 2 })
    const page = await outbox()
    expect(page).toContain('Ottoline Fairweather Removal sheet: gas pipe')
    expect(page).toContain('A removal sheet of Bram: gas pipe')
  })

  test('hers is taken, with the gas that he found, and his waits for him', async () => {
    await signal()
    expect(await phone.syncService.state()).toMatchObject({ waiting: 1, refused: 0, kills: [{ by: 'Bram' }] })
    expect(last().job.email).toBe('hers@example.org')
    expect(last().job.wayIn).toBeUndefined()
    expect((await phone.syncService.state()).kills?.[0]?.what, 'the gas is in the book').not.toContain('gas')
    expect(last().site.behind).toContain('gas')
    expect(last().site.noted).toMatchObject([{ what: 'gas', is: 'found', by: 'Odalys' }])
    expect(await outbox()).not.toContain('Not accepted')
    await hands('beekeeper')
    expect(await phone.syncService.state()).toMatchObject({ waiting: 0, refused: 0 })
    expect(last().job).toMatchObject({ email: 'hers@example.org', wayIn: KEY })
  })

  test('hers taken out leaves his', async () => {
    await phone.post(TAKE_OUT, {})
    await signal()
    await hands('beekeeper')
    expect(last().job.wayIn).toBe(KEY)
  })
})

describe('a sheet that was not accepted', () => {
  test('over a clash is put over theirs by one tap, and the button goes', async () => {
    await call({ email: 'his@example.org' })
    saved(job({ email: 'hers@example.org' }), 'Odalys')
    await signal()
    expect(await phone.open('/outbox')).toContain(OVER)
    await phone.post(OVER, {})
    expect(await phone.open('/outbox')).not.toContain(OVER)
    await signal()
    expect(last().job.email).toBe('his@example.org')
  })

  test('for anything else offers its page, and no button that does nothing', async () => {
    await call({ wayIn: KEY })
    const kept = await (await phone.database()).get('sheets', ID)
    if (kept?.mine) {
      // As a phone of before kept it: taken off with no word.
      const site = { ...kept.mine.sheet.site, behind: [] }
      await (await phone.database()).put('sheets', {
        ...kept,
        mine: { ...kept.mine, sheet: { ...kept.mine.sheet, site } },
      })
    }
    await phone.syncService.signedOut()
    await signal()
    const page = await phone.open('/outbox')
    expect(wordsOf(page)).toContain('without saying why: Insulation. Put it back on the page of the sheet')
    expect(page).not.toContain(OVER)
    expect(wordsOf(page)).toContain('Mend it')
  })
})

describe('a session that ended while there is signal', () => {
  beforeEach(async () => {
    phone.heldBy(null)
    await signal()
  })

  test('is named on the pages of a removal, with the way to sign in', async () => {
    phone.at(`${DAY}T16:00:00Z`)
    for (const path of [PATH, `${PATH}/check`]) {
      const page = await phone.open(path)
      expect(page).toContain(`href="/sign-in?to=${encodeURIComponent(path)}"`)
      expect(wordsOf(page)).toContain('Your sign-in is over. What others found since 12:00 is not here')
      expect(wordsOf(page)).not.toMatch(/until there is signal|where there is a signal/)
    }
  })
})

describe('a form that the phone refuses', () => {
  const open = (more: Taps = {}) => tap('work', { on: DAY, now: 'openedAt', ...more })
  beforeEach(async () => {
    expect((await tap('check', TAPPED)).status).toBe(303)
    await signal()
    expect(last().decision?.is).toBe('go')
  })

  test('“Open it, now” with no temperature leaves nothing waiting', async () => {
    const answer = await open()
    expect(answer.status).toBe(422)
    expect(answer.text).toContain('Nothing was saved yet')
    expect(await phone.syncService.state()).toMatchObject({ waiting: 0, refused: 0 })
  })

  test('too hot, it says that the rest of it is kept', async () => {
    const answer = await open({ outdoorC: '104', water: 'yes' })
    expect(answer.status).toBe(422)
    expect(answer.text).toContain('Saved, all but the opening')
    expect(await phone.syncService.state()).toMatchObject({ waiting: 1 })
  })

  test('for a slip beside gas, it says that the gas is kept, and what falls', async () => {
    const typed = { ...SITED, behind: ['insulation', 'gas'], sheathingMm: 'abc' }
    const answer = await tap('site', typed)
    expect(answer.status).toBe(422)
    expect(answer.text).toContain('Not saved, but kept: gas pipe, no “go” stands')
    expect(await phone.syncService.state()).toMatchObject({ waiting: 1 })
  })

  test('for a slip alone, it keeps nothing', async () => {
    const answer = await tap('work', { on: DAY, boxHours: 'abc' })
    expect(answer.text).toContain('Nothing was saved yet')
    expect(await phone.syncService.state()).toMatchObject({ waiting: 0 })
  })

  test('“Go” that is not given says that the list is kept', async () => {
    const answer = await tap('check', { ...TAPPED, done: [] })
    expect(answer.status).toBe(422)
    expect(answer.text).toContain('Saved, all but the decision')
  })
})
