/** A phone that was out of reach: what it found is not lost, and what it did not hear is not taken for “nothing”. Invented people. */
import { beforeEach, describe, expect, test } from 'vitest'
import { placeOf } from '../../../src/features/removal/place.ts'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { down, type Network, type Phone, sometimes, wordsOf } from '../../support/phone.ts'
import { type TestYard, testYard } from '../../support/yard-app.ts'
import { bodyOf, phoneAtNoon, sheetIn, sheetOn, type Taps } from './one-phone.ts'
import { DAY, DRAWN, goAt, PHOTO, READY, SITED, TAPPED, unticked } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000039'
const OTHER = '019e0000-0000-7000-8000-000000000038'
const PATH = `/removals/${ID}`
let yard: TestYard
let phone: Phone
const { last, saved, sync, page, version } = sheetIn(() => yard, ID)
const { form, send, tap, decide, mine: mineOf, words, ...asked } = sheetOn(() => phone, ID)
const signal = (passing?: Network) => phone.signal(passing)
const job = (more: Partial<Sheet['job']>, s = READY): Sheet => ({ ...s, job: { ...s.job, ...more } })
const PLANNED = job({ plannedOn: DAY })
const call = async (more: Taps) => expect((await asked.call(more)).status).toBe(303)
/** The gas that is found there; insulation was on the sheet. */
const findGas = async () =>
  expect((await tap('site', { ...SITED, behind: 'gas', 'gone.insulation': 'mistake' })).status).toBe(303)
const { is: _, ...CHECK } = TAPPED

beforeEach(async () => {
  yard = testYard({ day: DAY })
  await yard.services.photos.keep(PHOTO)
  await yard.session('operator')
  await yard.session('beekeeper')
  saved(PLANNED)
  phone = await phoneAtNoon(yard)
})

describe('a sheet that was not accepted', () => {
  const hers = 'Gate at the front'
  const [MINE, HERS] = ['mine@example.org', 'hers@example.org']
  beforeEach(async () => {
    await call({ wayIn: 'Back door', email: MINE })
    saved(job({ wayIn: hers, email: HERS }, last()), 'Odalys')
  })

  test('says whose the other word is and what both say, and that the rest of it is in the book', async () => {
    await signal()
    const page = await words('/outbox')
    expect(page).toContain('Odalys')
    expect(page).toContain('“Gate at the front”')
    expect(page).toContain('“Back door”')
    expect(page).toContain('The rest of yours is in the yard’s book')
  })

  test('is not “waiting” by one more tap', async () => {
    await signal()
    expect(await phone.syncService.state()).toMatchObject({ waiting: 0, refused: 1 })
    await call({ wayIn: 'Back door', email: MINE, told: 'Honey drips' })
    expect(await phone.syncService.state()).toMatchObject({ waiting: 0, refused: 1 })
    expect(await words('/outbox')).toContain(hers)
  })

  test('taken out keeps what it found, and is asked about once', async () => {
    await findGas()
    // The answer to what was sent never came: nothing of it is in the book.
    await signal(
      sometimes(
        (path) => path.startsWith('/removals/sync'),
        () =>
          Promise.resolve(
            new Response('{"problems":[{"field":"job.email","message":"E-mail: theirs …"}]}', {
              status: 422,
            }),
          ),
      ),
    )
    await signal(sometimes((path) => path.startsWith('/removals/sync'), down))
    expect(last().site.behind).not.toContain('gas')
    const asked = wordsOf(await phone.open(`/outbox/sheet/${ID}/take-out`))
    expect(asked).toContain('Yours goes: e-mail.')
    expect(asked, 'words of both stay').not.toContain('way in')
    expect(asked.toLowerCase()).toContain('gas')
    expect((await phone.post(`/outbox/sheet/${ID}/take-out`, {})).status).toBe(303)
    expect((await words()).toLowerCase()).toContain('gas')
    expect((await mineOf())?.sheet.job).toMatchObject({ email: HERS, wayIn: 'Gate at the front. Back door' })
    expect((await mineOf())?.sheet.site.behind).toContain('gas')
    await signal()
    expect(last().job.email).toBe(HERS)
    expect(last().site.behind).toContain('gas')
    expect(await phone.syncService.state()).toMatchObject({ waiting: 0, refused: 0 })
  })

  test('keeps a refusal with its reason, too', async () => {
    saved({ ...last(), decision: goAt('11:50', 'Odalys') }, 'Odalys')
    const answer = await decide({ is: 'refuse', reason: 'Smells of gas in the hall' })
    expect(answer.status).toBe(303)
    await signal()
    expect(await phone.syncService.state()).toMatchObject({ refused: 1 })
    await signal()
    await phone.post(`/outbox/sheet/${ID}/take-out`, {})
    await signal()
    expect(last().job.email).toBe(HERS)
    expect(last().decision).toMatchObject({ is: 'refuse', reason: 'Smells of gas in the hall' })
  })

  test('that found nothing and clashes whole leaves nothing to send', async () => {
    saved(job({ wayIn: 'Back door' }, last()), 'Odalys')
    await signal()
    await signal()
    await phone.post(`/outbox/sheet/${ID}/take-out`, {})
    await signal()
    expect(last().job.email).toBe(HERS)
    expect(await phone.syncService.state()).toMatchObject({ waiting: 0, refused: 0 })
  })

  test('put over theirs goes over what was read, and over nothing that came since', async () => {
    await signal()
    await phone.post(`/outbox/sheet/${ID}/over`, {})
    saved(job({ wayIn: 'Not by the gate: gas meter' }, last()), 'Odalys')
    await signal()
    expect(last().job.wayIn).toContain('Not by the gate: gas meter')
    expect(last().job.email).toBe(HERS)
    expect(await phone.syncService.state()).toMatchObject({ refused: 1 })
    await phone.post(`/outbox/sheet/${ID}/over`, {})
    await signal()
    expect(last().job).toMatchObject({ wayIn: expect.stringContaining('Back door'), email: MINE })
  })
})

test('a “go” that was tapped while the sheet was on its way falls over what the answer brings', async () => {
  await call({ plannedAt: '07:00' })
  saved({ ...last(), site: { ...last().site, sheathingMm: 22 } }, 'Odalys')
  phone.network(async (path, reach) => {
    const answer = await reach()
    if (path.startsWith('/removals/sync')) {
      phone.network(down)
      expect((await decide()).status).toBe(303)
    }
    return answer
  })
  await phone.syncService.send()
  await signal()
  expect(last().site.sheathingMm).toBe(22)
  expect(last().decision?.fell).toBeDefined()
})

test('a “go” that fell says what was found since, by whom and when', async () => {
  phone.at(`${DAY}T12:10:00Z`)
  yard.at(`${DAY}T12:20:00Z`)
  expect((await decide()).status).toBe(303)
  const found = { what: 'gas' as const, is: 'found' as const, by: 'Odalys', on: DAY, at: '12:15' }
  const noted = [{ ...found, writtenAt: `${DAY}T12:15:00.000Z` }]
  saved({ ...last(), site: { ...last().site, behind: ['insulation', 'gas'], noted } }, 'Odalys')
  await signal()
  const head = 'before this was found: gas pipe (Odalys, 12:15)'
  expect(await words()).toContain(head)
  expect(wordsOf(await page(PATH, 'operator'))).toContain(head)
})

test('a form of a version that a phone made says nothing of the server’s version of that number', async () => {
  await call({ plannedAt: '07:00' })
  const open = await form('check')
  saved({ ...last(), site: { ...last().site, where: 'north gable' }, check: {} }, 'Odalys')
  await signal()
  const body = bodyOf({ ...open, ...CHECK, is: 'go' })
  const answer = await yard.ask('beekeeper', `${PATH}/check`, { method: 'POST', body })
  expect(answer.status).toBe(422)
  expect(wordsOf(await answer.text())).toContain('changed since this form was opened')
  expect(last().decision).toBeUndefined()
})

test.each(['the server', 'the phone'])(
  'a form that lay open while its own sheet was sent says what it showed, to %s',
  async (where) => {
    await call({ plannedAt: '07:00' })
    const open = await form('check')
    await signal()
    expect(last().job.plannedAt).toBe('07:00')
    const fields = { ...open, ...CHECK, is: 'go' }
    if (where === 'the phone') expect((await send('check', fields)).status).toBe(303)
    else {
      const body = bodyOf(fields)
      expect((await yard.ask('beekeeper', `${PATH}/check`, { method: 'POST', body })).status).toBe(303)
    }
  },
)

test('gas goes before a big picture of the porch', async () => {
  const db = await phone.database()
  const picture = 'c'.repeat(64)
  await db.put('photos', {
    id: picture,
    bytes: new Uint8Array([1, 2]),
    keptAt: `${DAY}T11:00:00Z`,
    sent: false,
  })
  saved({ ...last(), decision: goAt('11:30', 'Odalys') }, 'Odalys')
  await signal()
  await findGas()
  const kept = await db.get('sheets', ID)
  const sheet = kept?.mine?.sheet
  if (kept?.mine && sheet) {
    const site = { ...sheet.site, photos: [picture] }
    await db.put('sheets', { ...kept, mine: { ...kept.mine, sheet: { ...sheet, site } } })
  }
  await signal(sometimes((path) => path.startsWith('/photos'), down))
  expect(last().site.behind).toContain('gas')
  expect(last().decision?.fell).toBeDefined()
  expect(await phone.syncService.state(), 'the rest waits for the picture').toMatchObject({ waiting: 1 })
  expect((await db.get('photos', picture))?.sent).toBe(false)
  // The picture has come: what was taken off with its reason is taken too.
  const photo = await db.get('photos', picture)
  if (photo) await db.put('photos', { ...photo, sent: true })
  await signal()
  expect((await mineOf())?.refused ?? null).toBeNull()
  expect(await phone.syncService.state()).toMatchObject({ waiting: 0, refused: 0 })
  expect(last().site).toMatchObject({ behind: ['gas'], photos: [picture] })
})

describe('a “go” on a phone that has heard nothing for hours', () => {
  const READ = { 'heard.by': 'Odalys', 'heard.at': '14:50', 'heard.news': 'none' }
  const LATELY = { ...READ, 'heard.at': '11:50' }

  describe('since this morning', () => {
    beforeEach(() => {
      phone.at(`${DAY}T15:10:00Z`)
    })
    test('is asked for a list read aloud, or for a look of one’s own', async () => {
      const page = await words(`${PATH}/check`)
      expect(page).toContain('heard nothing')
      const bare = await decide()
      expect(bare.status).toBe(422)
      expect(bare.text).toContain('this phone has heard nothing since 12:00')
      expect((await decide(READ)).status).toBe(303)
      expect((await mineOf())?.sheet.decision?.heard).toMatchObject({
        by: 'Odalys',
        at: '14:50',
        news: 'none',
      })
    })
    test('says so in the head, before and after it was opened', async () => {
      expect((await decide({ 'heard.looked': 'yes' })).status).toBe(303)
      expect(await words()).toContain('the phone had last heard')
      const open = { outdoorC: '70', water: 'yes', now: 'openedAt' }
      expect((await tap('work', open)).status).toBe(303)
      const page = await words()
      expect(page).toContain('the phone had last heard')
      expect(page).toContain('looked at all of it')
    })
    test('a look of one’s own is of the last hour', async () => {
      expect((await tap('check', CHECK)).status).toBe(303)
      phone.at(`${DAY}T16:20:00Z`)
      const shown = await form('check')
      const looked = { ...shown, ...CHECK, is: 'go', 'heard.looked': 'yes' }
      expect((await send('check', looked)).status).toBe(422)
      // Nor does one that was tapped in a form which lay open.
      phone.at(`${DAY}T17:30:00Z`)
      const { text } = await send('check', looked)
      expect(text).toContain('name="heard.looked"')
      expect(text).not.toMatch(/name="heard.looked"[^>]*checked/)
    })
    test('it is a tap of what was looked for, by name', async () => {
      const page = await words(`${PATH}/check`)
      expect(page).toContain(
        'Behind it: Insulation. Hazards: looked: none. Temper: 2 of 5. How high: Ladder, 13 ft. Who is about: asked: nobody. All of it is still so',
      )
    })
  })

  describe('in the hours after it', () => {
    const openIt = (more: Taps = {}) =>
      tap('work', { on: DAY, outdoorC: '75', water: 'yes', now: 'openedAt', ...more })
    beforeEach(async () => {
      const line = { what: 'gas' as const, is: 'found' as const, by: 'Odalys', on: DAY, at: '12:30' }
      const noted = [{ ...line, writtenAt: `${DAY}T12:30:00.000Z` }]
      saved({ ...last(), site: { ...last().site, behind: ['insulation', 'gas'], noted } }, 'Odalys')
      phone.at(`${DAY}T14:50:00Z`)
      expect((await decide()).status).toBe(303)
    })
    test('it opens nothing once what it knew is three hours old', async () => {
      phone.at(`${DAY}T14:58:00Z`)
      expect(await words()).toContain('Go, as this phone knows it')
      phone.at(`${DAY}T15:10:00Z`)
      const page = await words()
      expect(page).toContain('This phone has heard nothing since 12:00: look again before you begin')
      expect(page).not.toContain('Go, as this phone knows it')
      const barred = await openIt()
      expect(barred.status).toBe(422)
      expect(barred.text).toContain('has heard nothing since 12:00')
      expect((await mineOf())?.sheet.work.openedAt).toBeUndefined()
      // An hour typed by hand is asked why, as without a “go”.
      expect((await openIt({ now: '', openedAt: '15:05' })).status).toBe(422)
    })
    test('it opens it before that, and where it has heard since', async () => {
      phone.at(`${DAY}T14:58:00Z`)
      expect((await openIt()).status).toBe(303)
      const page = await words()
      expect(page).toContain('the phone had last heard at 12:00')
      expect(page).toContain('What others found since is not here')
    })
    test('it opens it where somebody read the list aloud, or it was looked at again', async () => {
      phone.at(`${DAY}T15:10:00Z`)
      expect((await decide(READ)).status).toBe(303)
      phone.at(`${DAY}T15:20:00Z`)
      expect((await openIt()).status).toBe(303)
    })
    test('once sent, it is said what it had not known', async () => {
      yard.at(`${DAY}T15:10:00Z`)
      phone.at(`${DAY}T15:10:00Z`)
      await signal()
      const page = await words()
      expect(page).toContain('It was go')
      expect(page).toContain('not known then: gas pipe (Odalys, 12:30)')
    })
  })

  describe('since yesterday', () => {
    beforeEach(async () => {
      for (const at of ['2026-06-11T12:00:00Z', `${DAY}T12:00:00Z`]) {
        yard.at(at)
        phone.at(at)
        if (at < DAY) await signal()
      }
    })
    test.each([
      'We begin at 9:00, Odalys is late',
      'Odalys does not answer at 9:00',
      'Odalys, yesterday 17:30',
    ])('is not given for “%s”', async (reason) => {
      expect((await decide({ reason })).status).toBe(422)
    })
    test.each<[string, Record<string, string>]>([
      ['nobody', { ...LATELY, 'heard.by': '' }],
      ['whoever decides', { ...LATELY, 'heard.by': 'Bram' }],
      ['no hour', { ...LATELY, 'heard.at': '' }],
      ['an hour long ago', { ...LATELY, 'heard.at': '08:30' }],
      ['an hour to come', { ...LATELY, 'heard.at': '14:00' }],
      ['nothing said of what is new', { ...LATELY, 'heard.news': '' }],
      ['a look alone', { 'heard.looked': 'yes' }],
    ])('nor with %s', async (_, fields) => {
      expect((await decide(fields)).status).toBe(422)
    })
    test('is given where it was read aloud a moment ago', async () => {
      expect((await decide(LATELY)).status).toBe(303)
    })
  })
})

test('one name by hand signs at one job at a time', async () => {
  const KIT = {
    item: 'exclusion',
    of: 'People 15 m away.',
    by: 'Zed Quill',
    why: 'stays' as const,
    phone: '555 0177',
    path: DRAWN,
    on: DAY,
    ...placeOf(READY),
  }
  saved(
    {
      ...READY,
      job: { ...READY.job, name: 'Mrs Umber', address: '9 Larch Street' },
      check: { ...READY.check, seconds: [KIT] },
    },
    'Odalys',
    OTHER,
  )
  const check = { ...unticked('exclusion', last()), seconds: [KIT] }
  const answer = await sync({ ...last(), check }, { base: version() })
  expect(answer.status).toBe(422)
  expect(answer.text).toContain('is at Mrs Umber today')
})
