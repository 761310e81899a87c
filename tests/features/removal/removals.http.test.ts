/** Removal sheets through the app: from the phone call to the colony, and who may see them. */
import { beforeEach, describe, expect, test } from 'vitest'
import { seenOn } from '../../../src/features/removal/hazards.ts'
import { TICKED } from '../../../src/features/removal/item.ts'
import { readNotes } from '../../../src/features/removal/notes-read.ts'
import { AS_TOLD } from '../../../src/features/removal/people.ts'
import { EMPTY_SHEET, type Sheet } from '../../../src/records/removal-sheet.ts'
import { PASSPHRASE } from '../../support/people.ts'
import { wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'
import { PAPER, PHOTO } from './ready.ts'

let yard: Yard
beforeEach(async () => {
  yard = await yardOn('2026-06-10')
  await yard.photos.keep(PHOTO)
  yard.store.settings.set('yardName', 'Quarry yard')
})

const CALL = {
  name: 'Ottoline Fairweather',
  phone: '555 0100',
  address: '4 Invented Row',
  wayIn: 'Gate code 1234',
  calledOn: '2026-06-09',
  told: 'Bees in the wall since April.',
  plannedOn: '2026-06-10',
  plannedAt: '07:00',
  what: 'wall',
  since: 'weeks',
  access: 'ladder',
  heightM: '12',
  sprayed: 'no',
  bystanders: 'children',
  caller: 'owner',
}
const SITE = {
  where: 'in the wall left of the porch',
  foundBy: ['heat-camera', 'listening'],
  surface: 'cedar siding',
  sheathingMm: '3/4',
  behind: 'insulation',
  hazards: 'none-new',
  temper: '2',
  africanized: 'no',
}
/** A sheet on which that was told, and the way in. */
const noting = (told: string): Sheet => ({ ...EMPTY_SHEET, job: { told, wayIn: CALL.wayIn } })
const PRICE = { pricing: 'hourly', hourly: '95', hours: '4' }
const CHECK = {
  shownOn: '2026-06-10',
  on: '2026-06-10',
  from: '07:00',
  until: '12:00',
  'hours.0.at': '07:00',
  'hours.0.c': '70',
  'hours.1.at': '10:00',
  'hours.1.c': '76',
  'hours.2.at': '12:00',
  'hours.2.c': '84',
  cutMm: '7/8',
  vacuum: 'bee-vacuum',
  wires: 'none',
  done: [...TICKED, readNotes(noting('Bees in the wall since April.'))],
}
const WORK = {
  on: '2026-06-10',
  arrivedAt: '07:00',
  openedAt: '07:30',
  boxedAt: '11:00',
  leftAt: '12:00',
  outdoorC: '82',
  method: 'vacuum',
  queen: 'caged',
  queenFoundAt: '10:15',
  'brood.eggs': '0.5',
  'brood.open': '1',
  'brood.capped': '2',
  broodCare: 'closed-chest',
  queenCells: 'none',
  'bees.frames': '5',
  deadBeesKg: '0.2',
  tiedComb: 'yes',
  temper: '2',
  sealed: 'yes',
  cleaned: 'all',
  note: 'Calm at dusk.',
}
const DRAWN = JSON.stringify([
  [
    [40, 120],
    [90, 60],
    [140, 130],
    [220, 50],
  ],
])

async function call(fields: Record<string, string | string[]> = CALL): Promise<string> {
  const saved = await yard.post('/removals/new', { ...fields, version: '0' })
  expect(saved.status).toBe(303)
  return (saved.to ?? '').replace(/\?.*/, '')
}

const version = async (path: string, part: string): Promise<string> =>
  /name="version" value="(\d+)"/.exec((await yard.get(`${path}/${part}`)).text)?.[1] ?? ''

async function fill(path: string, part: string, fields: Record<string, string | string[]>): Promise<string> {
  const saved = await yard.post(`${path}/${part}`, { ...fields, version: await version(path, part) })
  expect(saved.status, wordsOf(saved.text)).toBe(303)
  return saved.to ?? ''
}

async function sign(
  path: string,
  more: Record<string, string> = {},
): Promise<{ status: number; text: string; to: string | null }> {
  const mark = /name="mark" value="([^"]+)"/.exec((await yard.get(`${path}/sign`)).text)?.[1] ?? ''
  return yard.post(`${path}/sign`, {
    mark,
    how: 'drawn',
    name: 'Ottoline Fairweather',
    on: '2026-06-10',
    drawing: DRAWN,
    ...more,
  })
}

describe('from the phone call to the yard without typing anything twice', () => {
  test('call, site, price, signature, check, go, removal, intake', async () => {
    const path = await call()
    await fill(path, 'site', SITE)
    expect(
      await fill(path, 'agreement', { ...PRICE, warrantyDays: '60', deposit: '100', next: 'sign' }),
    ).toBe(`${path}/sign`)
    const agreement = wordsOf((await yard.get(`${path}/sign`)).text)
    expect(agreement).toContain(
      'Between Quarry yard and Ottoline Fairweather. The bees are at 4 Invented Row: in the wall left of the porch. Planned for Wed 10 Jun.',
    )
    expect(agreement).toContain('$95 an hour for the hours worked. We expect about 4 hours')
    expect(agreement).toContain('Above 85 °F')
    expect(agreement).toContain('settle again in the same hollow within 60 days')
    expect(agreement).toContain('A deposit of $100 is due now')
    expect((await sign(path)).status).toBe(303)
    yard.setDay('2026-06-10', '07:20')
    await fill(path, 'check', CHECK)
    const reckoned = wordsOf((await yard.get(`${path}/check`)).text)
    expect(reckoned).toContain('Nothing on this list is unmet')
    expect(reckoned).toContain('Whoever is at the wall looks again, decides')
    await fill(path, 'check', { ...CHECK, is: 'go' })
    await fill(path, 'work', { outdoorC: '82', now: 'openedAt', water: 'yes' })
    yard.setDay('2026-06-10', '12:00')
    await fill(path, 'work', WORK)

    const overview = await yard.get(path)
    expect(wordsOf(overview.text)).toContain('Bees are out')
    expect(overview.text).toContain('name="next" value="intake"')
    const intake = await yard.get(`${path}/intake`)
    for (const [name, value] of [
      ['on', '2026-06-10'],
      ['removal.outdoorC', '82'],
      ['removal.hoursOpenToBoxed', '3.5'],
      ['removal.site', 'Ottoline Fairweather, 4 Invented Row'],
      ['deadBeesKg', '0.2'],
    ])
      expect(intake.text).toMatch(new RegExp(`name="${name}"[^>]*value="${value}"`))
    for (const [name, value] of [
      ['queen', 'caged'],
      ['removal.type', 'wall'],
      ['removal.method', 'vacuum'],
      ['removal.sprayed', 'no'],
      ['brood.eggs', '0.5'],
      ['broodCare', 'closed-chest'],
      ['tiedComb', 'yes'],
    ])
      expect(intake.text).toMatch(new RegExp(`name="${name}" value="${value}" checked`))

    const saved = await yard.post('/intake', {
      ...typedIn(intake.text),
      colony: 'W-9',
      yard: 'Quarry yard',
      stand: '3',
    })
    expect(saved.status).toBe(303)
    const colony = yard.store.colony('W-9')
    expect(colony?.history.intake).toMatchObject({
      removal: { type: 'wall', method: 'vacuum', hoursOpenToBoxed: 3.5, sprayed: 'no' },
      queen: 'caged',
      brood: { eggs: 0.5, open: 1, capped: 2 },
      note: 'On site 07:00 to 12:00. Queen found at 10:15. Entrance sealed. All comb taken out. Calm at dusk.',
    })
    expect(colony?.summary.id).toBe(path.split('/').at(-1))
    const done = wordsOf((await yard.get(path)).text)
    expect(done).toContain('Came to the yard as W-9')
    // Boxed is not finished: the void is open still, and nobody has taken a photo.
    expect(done).toContain(
      'Not finished: void filled or screened, smell covered, box for stragglers, photo of it closed.',
    )
    expect(wordsOf((await yard.get('/removals')).text)).toMatch(/To close up.*Ottoline Fairweather/)
    expect(yard.errors).toEqual([])
  })

  test('a second box of the same job is linked too', async () => {
    const path = await call()
    await fill(path, 'site', SITE)
    await fill(path, 'work', { ...WORK, 'withoutGo.why': 'said-aloud' })
    const first = await yard.get(`${path}/intake`)
    await yard.post('/intake', { ...typedIn(first.text), colony: 'W-1', yard: 'Quarry yard' })
    const second = await yard.get(`${path}/intake`)
    expect(second.text).toContain(`action="${path}/intake"`)
    await yard.post(`${path}/intake`, { ...typedIn(second.text), colony: 'W-2', yard: 'Quarry yard' })
    expect(wordsOf((await yard.get(path)).text)).toContain('Came to the yard as W-1 , W-2')
  })
})

/** What stands in a form, as a browser would post it. */
function typedIn(html: string): Record<string, string> {
  const typed: Record<string, string> = {}
  for (const [tag] of html.matchAll(/<input [^>]*>/g)) {
    const at = (name: string): string | undefined => new RegExp(`\\b${name}="([^"]*)"`).exec(tag)?.[1]
    const [name, type] = [at('name'), at('type')]
    if (name === undefined || ((type === 'radio' || type === 'checkbox') && !/ checked/.test(tag))) continue
    typed[name] = at('value') ?? ''
  }
  for (const [, name, text] of html.matchAll(/<textarea [^>]*name="([^"]+)"[^>]*>([^<]*)</g))
    typed[name ?? ''] = (text ?? '').trim()
  return typed
}

describe('what is unmet', () => {
  const idOf = (path: string): string => path.split('/').at(-1) ?? ''
  const sheetOf = (path: string) => yard.store.removals.get(idOf(path))?.last.sheet

  test('is one list on the sheet, with who decides; and named in the list of jobs', async () => {
    const path = await call()
    await fill(path, 'site', { ...SITE, hazards: 'asbestos' })
    for (const page of [path, `${path}/check`, `${path}/site`]) {
      const words = wordsOf((await yard.get(page)).text)
      expect(words, page).toContain('Stop. Not yet: ')
      expect(words, page).toContain('Asbestos suspected')
      expect(words, page).toContain('Who decides: a licensed trade, and local codes.')
      expect(words, page).not.toMatch(/\bsafe\b/i)
    }
    expect(wordsOf((await yard.get('/removals')).text)).toMatch(
      /Stop\. Not yet: asbestos tested, and none\. \d+ not filled in yet\./,
    )
  })

  test('the trade clears one hazard, by name, licence and day; the crew does not', async () => {
    const path = await call()
    await fill(path, 'site', { ...SITE, behind: ['gas', 'insulation'] })
    await fill(path, 'check', CHECK)
    const barred = await yard.post(`${path}/check`, {
      ...CHECK,
      is: 'go',
      reason: 'Fine.',
      version: await version(path, 'check'),
    })
    expect(barred.status).toBe(422)
    expect(wordsOf(barred.text)).toContain('cannot be “go”. Not yet: gas pipe cleared')
    const own = await yard.post(`${path}/clear`, {
      seen: seenOn(sheetOf(path) ?? EMPTY_SHEET),
      hazard: 'gas',
      'trade-gas.as': 'gas-fitter',
      'trade-gas.who': 'Ines',
      'trade-gas.licence': '4711',
      'trade-gas.on': '2026-06-10',
      'trade-gas.says': 'clear',
    })
    expect(own.status).toBe(422)
    expect(wordsOf(own.text)).toContain('must be somebody of the licensed trade, not of the yard')
    const cleared = await yard.post(`${path}/clear`, {
      seen: seenOn(sheetOf(path) ?? EMPTY_SHEET),
      hazard: 'gas',
      'trade-gas.as': 'gas-fitter',
      'trade-gas.who': 'Edda Brandt',
      'trade-gas.licence': 'Brandt & Co, 4711',
      'trade-gas.on': '2026-06-10',
      'trade-gas.says': 'clear',
      photos: PAPER,
    })
    expect(cleared.status).toBe(303)
    expect(sheetOf(path)?.check.clearances).toMatchObject([
      { hazard: 'gas', as: 'gas-fitter', knew: ['gas'], address: CALL.address, where: SITE.where },
    ])
    const words = wordsOf((await yard.get(`${path}/check`)).text)
    expect(words).not.toContain('A gas pipe: the gas fitter')
    // Another one comes to light: the gas fitter is asked again.
    await fill(path, 'site', { ...SITE, behind: ['gas', 'insulation'], hazards: 'lead-paint' })
    const later = wordsOf((await yard.get(`${path}/check`)).text)
    expect(later).toContain('It was cleared before something else was found')
  })

  test('a gas pipe does not vanish by a tap', async () => {
    const path = await call()
    await fill(path, 'site', { ...SITE, behind: 'gas' })
    const gone = await yard.post(`${path}/site`, {
      ...SITE,
      behind: 'none-detector',
      version: await version(path, 'site'),
    })
    expect(gone.status).toBe(422)
    expect(wordsOf(gone.text)).toContain('stays: “Gas pipe” was seen here')
    expect(sheetOf(path)?.site.behind).toEqual(['gas'])
  })

  test('a second person signs for one item; not for gas, and not the one who decides', async () => {
    await yard.account('Bram')
    const path = await call()
    await fill(path, 'site', SITE)
    await sign(path)
    const done = CHECK.done.filter((t) => t !== 'ladder-person' && t !== 'not-alone')
    const fields = { ...CHECK, done }
    await fill(path, 'check', fields)
    const go = async () =>
      yard.post(`${path}/check`, {
        ...fields,
        is: 'go',
        reason: 'Signs tonight.',
        version: await version(path, 'check'),
      })
    expect((await go()).status).toBe(422)
    const page = await yard.get(`${path}/check`)
    const why = AS_TOLD['ladder-person']
    expect(page.text).toContain('/second?item=ladder-person')
    const name = (by: string, item = 'ladder-person', of = why) =>
      yard.post(`${path}/second`, {
        item,
        of,
        [`${item}.by`]: by,
        [`${item}.why`]: 'stays',
        passphrase: PASSPHRASE,
      })
    expect((await name('ines')).status).toBe(422)
    expect((await name('Bram', 'ladder-person', 'Something else.')).status).toBe(422)
    expect((await name('Bram')).status).toBe(303)
    expect((await go()).status, 'one name is for one item').toBe(422)
    expect((await name('Bram', 'not-alone', AS_TOLD['not-alone'])).status).toBe(303)
    const gone = await go()
    // The agreement is not signed: that needs a reason, and has one.
    expect(gone.status, wordsOf(gone.text)).toBe(303)
    expect(wordsOf((await yard.get(path)).text)).toContain('Go , decided by Ines, Wed 10 Jun')
    await fill(path, 'site', { ...SITE, behind: ['insulation', 'gas'] })
    const back = wordsOf((await yard.get(path)).text)
    expect(back).toContain('No go any more: it no longer stands')
    await name('Bram', 'trade-gas', 'x')
    expect(sheetOf(path)?.check.seconds).toHaveLength(2)
  })

  test('when work starts the heat is asked again, and “go” has to stand', async () => {
    await yard.account('Bram')
    const path = await call()
    await fill(path, 'site', SITE)
    const open = async (c: string) =>
      yard.post(`${path}/work`, {
        outdoorC: c,
        now: 'openedAt',
        water: 'yes',
        version: await version(path, 'work'),
      })
    const early = await open('70')
    expect(early.status).toBe(422)
    expect(wordsOf(early.text)).toContain('waits for “go”')
    await fill(path, 'check', { ...CHECK, is: 'go', reason: 'Signs tonight.' })
    expect((await open('')).status).toBe(422)
    const hot = await open('100')
    expect(hot.status).toBe(422)
    expect(wordsOf(hot.text)).toContain('100 °F now, over the limit of 85 °F')
    expect(sheetOf(path)?.work.openedAt).toBeUndefined()
    expect(hot.text).toContain('/second?item=heat-at-start')
    const of = /name="of" value="([^"]*)"/.exec(
      (await yard.get(`${path}/second?item=heat-at-start`)).text,
    )?.[1]
    const signed = await yard.post(`${path}/second`, {
      item: 'heat-at-start',
      of: of ?? '',
      'heat-at-start.by': 'Bram',
      'heat-at-start.why': 'stays',
      passphrase: PASSPHRASE,
      'heat-at-start.reason': 'One comb left, in the shade.',
    })
    expect(signed.status, wordsOf(signed.text)).toBe(303)
    expect((await open('104')).status, 'hotter than what was signed for').toBe(422)
    expect((await open('100')).status).toBe(303)
    expect(sheetOf(path)?.work).toMatchObject({ water: true, openedAt: expect.stringMatching(/^\d\d:\d\d$/) })
    const intake = await yard.get(`${path}/intake`)
    expect(wordsOf(intake.text)).toContain('Taken out at 100 °F, over the limit of 85 °F')
  })

  test('the heat limit is the protocol’s', async () => {
    const path = await call()
    await fill(path, 'site', SITE)
    await fill(path, 'check', CHECK)
    expect(wordsOf((await yard.get(`${path}/check`)).text)).not.toContain('Outdoor heat under the limit')
    yard.store.settings.set('protocol', { heatLimitC: 25 })
    expect(wordsOf((await yard.get(`${path}/check`)).text)).toContain(
      '84 °F at 12:00, over the limit of 77 °F. At or under it: 07:00 to 10:00.',
    )
  })

  test('the price is asked with the site, and what the agreement says besides stays', async () => {
    const path = await call()
    expect((await yard.get(path)).text).toContain('name="hourly"')
    const answer = await yard.post(`${path}/site`, {
      ...SITE,
      version: '1',
      hourly: '95',
      hours: '4',
      next: 'sign',
    })
    expect(answer.to).toBe(`${path}/sign`)
    expect(sheetOf(path)?.agreement).toEqual({ pricing: 'hourly', hourly: 95, hours: 4 })
    // Once it is named it is changed in its own part.
    expect((await yard.get(`${path}/site`)).text).not.toContain('name="hourly"')
    await yard.post(`${path}/site`, { ...SITE, version: '2', hourly: '5' })
    expect(sheetOf(path)?.agreement.hourly).toBe(95)
    const other = await call()
    const both = await yard.post(`${other}/site`, { ...SITE, version: '1', hourly: 'much' })
    expect(both.status).toBe(422)
    expect(wordsOf(both.text)).toContain('Price of an hour must be a number')
  })

  test('the cautions stand before the act, not under the form', async () => {
    const path = await call()
    await fill(path, 'site', SITE)
    for (const part of ['check', 'work']) {
      const { text } = await yard.get(`${path}/${part}`)
      expect(text.indexOf('Check first'), part).toBeGreaterThan(0)
      expect(text.indexOf('Check first'), part).toBeLessThan(text.indexOf('id="entry-form"'))
    }
    expect(wordsOf((await yard.get(`${path}/print?what=job`)).text)).toContain('Check first')
  })

  test('local codes and licensed practice are said once', async () => {
    const path = await call()
    await fill(path, 'site', SITE)
    const words = wordsOf((await yard.get(`${path}/check`)).text)
    expect(words.match(/Local codes and licensed practice/g)).toHaveLength(1)
  })
})

describe('the short sheet of a swarm', () => {
  test('the call, heat and people, the box', async () => {
    const path = await call({
      ...CALL,
      told: 'In the pear tree.',
      what: 'swarm',
      since: 'today',
      access: 'ground',
      bystanders: 'none',
    })
    const page = await yard.get(path)
    const words = wordsOf(page.text)
    expect(words).toContain('Before the cut')
    expect(words).not.toContain('What runs behind it')
    expect(page.text).not.toContain('name="cutMm"')
    expect(page.text).toContain('value="free"')
    const check = {
      shownOn: '2026-06-10',
      hottestC: '70',
      wires: 'none',
      done: [...TICKED, readNotes(noting('In the pear tree.'))],
      where: 'On a branch',
      temper: '1',
      africanized: 'no',
      is: 'go',
    }
    yard.setDay('2026-06-10', '07:20')
    await fill(path, 'check', check)
    await fill(path, 'work', { outdoorC: '70', now: 'openedAt', water: 'yes' })
    yard.setDay('2026-06-10', '12:00')
    await fill(path, 'work', { ...WORK, sealed: '', cleaned: '', next: 'intake' })
    const intake = await yard.get(`${path}/intake`)
    await yard.post('/intake', {
      ...typedIn(intake.text),
      colony: 'S-1',
      yard: 'Quarry yard',
      queen: 'unknown',
    })
    expect(wordsOf((await yard.get(path)).text)).toContain('Finished')
  })

  test('wasps end the sheet', async () => {
    const path = await call({ ...CALL, what: 'wasps' })
    expect(wordsOf((await yard.get(path)).text)).toContain('Not honey bees : name somebody who takes wasps')
  })
})

describe('after the job', () => {
  test('a call-back is an entry on the sheet', async () => {
    const path = await call()
    expect((await yard.post(`${path}/call-back`, { what: '', on: '2026-06-10' })).status).toBe(422)
    expect((await yard.post(`${path}/call-back`, { what: 'honey', on: '2026-06-11' })).status).toBe(422)
    const saved = await yard.post(`${path}/call-back`, {
      what: 'honey',
      on: '2026-06-10',
      note: 'At the skirting.',
      opened: 'no',
    })
    expect(saved.status).toBe(303)
    expect(wordsOf((await yard.get(path)).text)).toContain('Wed 10 Jun: Honey runs. At the skirting. (Ines)')
  })
})

describe('signing', () => {
  const priced = async (): Promise<string> => {
    const path = await call()
    await fill(path, 'agreement', PRICE)
    return path
  }

  test.each([
    ['the price', CALL, null],
    ['the address', { ...CALL, address: '' }, PRICE],
    ['the day', { ...CALL, plannedOn: '' }, PRICE],
  ])('nothing is signed while %s is blank', async (what, fields, price) => {
    const path = await call(fields)
    if (price !== null) await fill(path, 'agreement', price)
    const page = await yard.get(`${path}/sign`)
    expect(wordsOf(page.text)).toContain(`Nothing is signed blank. Still missing: ${what} .`)
    expect(page.text).not.toContain('name="drawing"')
    const answer = await sign(path, { how: 'paper' })
    expect(answer.status).toBe(422)
    expect(
      yard.store.removals.get(path.split('/').at(-1) ?? '')?.last.sheet.agreement.signature,
    ).toBeUndefined()
  })

  test('who signed gets the text at once: to share, by mail, to scan, on paper; by an address that nobody guesses', async () => {
    const path = await priced()
    const to = (await sign(path)).to?.split('#')[0] ?? ''
    const signed = await yard.get(to)
    // Loading it again loses nothing; with another address there is nothing.
    expect((await yard.get(to)).text).toContain('just-signed')
    expect((await yard.get(`${path}?copy=${'0'.repeat(64)}`)).text).not.toContain('just-signed')
    expect(signed.text).toContain('data-share-text="# Taking honey bees out, alive')
    expect(signed.text).toMatch(
      /href="mailto:\?subject=Agreement%20with%20Quarry%20yard&amp;body=%23%20Taking/,
    )
    expect(signed.text).toContain('<svg')
    expect(signed.text).toContain(`${path}/print?what=agreement`)
    const link = /\/signed\/[0-9a-f]{64}/.exec(signed.text)?.[0] ?? ''
    expect(link).not.toBe('')
    const stranger = await yard.stranger(link)
    expect(wordsOf(await stranger.text())).toContain('Signed by Ottoline Fairweather, Wed 10 Jun')
    expect((await yard.stranger(link.slice(0, -1))).status).toBe(404)
    await yard.post(`${path}/unsign`, {})
    expect((await yard.stranger(link)).status).toBe(404)
    const kept = yard.store.removals.get(path.split('/').at(-1) ?? '')
    expect(JSON.stringify(kept)).not.toContain(link.split('/').at(-1))
  })

  test('keeps the text as signed, dated, and the name as a drawing', async () => {
    const path = await priced()
    expect((await sign(path)).status).toBe(303)
    yard.store.settings.set('agreementTerms', 'Other words for {customer}.')
    const page = await yard.get(`${path}/sign`)
    expect(wordsOf(page.text)).toContain('What is not included')
    expect(page.text).toContain('d="M40 120L90 60L140 130L220 50"')
    expect(wordsOf(page.text)).toContain('Signed by Ottoline Fairweather, Wed 10 Jun')
    const file = await yard.get(`${path}/signature.svg`)
    expect(file.headers.get('content-type')).toContain('image/svg+xml')
    expect(file.text).toContain('<title>Ottoline Fairweather, 2026-06-10</title>')
  })

  test('on paper needs a name and a day', async () => {
    const path = await priced()
    expect((await sign(path, { how: 'paper', name: '' })).status).toBe(422)
    expect((await sign(path, { how: 'paper', on: '2026-06-11' })).status).toBe(422)
    expect((await sign(path, { how: 'paper' })).status).toBe(303)
    expect(wordsOf((await yard.get(path)).text)).toContain('Signed by Ottoline Fairweather on paper')
  })

  test('an empty or hostile drawing is refused, nothing of it comes back as markup', async () => {
    const path = await priced()
    for (const drawing of ['', '[]', '"><script>alert(1)</script>', '{"path":"M0 0"}']) {
      const answer = await sign(path, { drawing })
      expect(answer.status).toBe(422)
      expect(answer.text).not.toContain('<script>alert')
    }
  })

  test('another text than the one that was shown is not signed', async () => {
    const path = await priced()
    const mark = /name="mark" value="([^"]+)"/.exec((await yard.get(`${path}/sign`)).text)?.[1] ?? ''
    await fill(path, 'agreement', { pricing: 'fixed', fixed: '900' })
    const answer = await yard.post(`${path}/sign`, { mark, how: 'paper', name: 'O', on: '2026-06-10' })
    expect(answer.status).toBe(422)
    expect(wordsOf(answer.text)).toContain('has changed since this page was opened')
  })

  test('drawn up anew it is unsigned, and the signed version stays in the history', async () => {
    const path = await priced()
    await sign(path, { how: 'paper' })
    expect((await yard.post(`${path}/unsign`, {})).to).toBe(`${path}/agreement`)
    expect(wordsOf((await yard.get(path)).text)).not.toContain('Signed by')
    expect(wordsOf((await yard.get(`${path}?version=3`)).text)).toContain('Signed by Ottoline Fairweather')
  })

  test('the template is the operator’s: checked, kept, and taken back', async () => {
    const slip = await yard.post('/removals/terms', { terms: 'For {customr}.', currency: '€' })
    expect(slip.status).toBe(422)
    expect(wordsOf(slip.text)).toContain('{customr}')
    expect(
      (await yard.post('/removals/terms', { terms: '# Ours\r\n\r\nFor {customer}: {price}', currency: '€' }))
        .status,
    ).toBe(303)
    const path = await call()
    await fill(path, 'agreement', { pricing: 'fixed', fixed: '450' })
    expect(wordsOf((await yard.get(`${path}/sign`)).text)).toContain(
      'For Ottoline Fairweather: A fixed price of €450',
    )
    await yard.post('/removals/terms', { terms: 'x', currency: '$', default: '1' })
    expect(yard.store.settings.get('agreementTerms')).toContain('What is not included')
  })
})

describe('versions', () => {
  test('two people at two parts: both are kept', async () => {
    const path = await call()
    const shown = await version(path, 'site')
    await fill(path, 'job', { ...CALL, phone: '555 0199' })
    const saved = await yard.post(`${path}/site`, { ...SITE, version: shown })
    expect(saved.status).toBe(303)
    const words = wordsOf((await yard.get(path)).text)
    expect(words).toContain('555 0199')
    expect(words).toContain('cedar siding')
    expect(words).toContain('Version 3')
  })

  test('two people at one part: the second is told what the first changed, and nothing is lost', async () => {
    const path = await call()
    const shown = await version(path, 'job')
    await fill(path, 'job', { ...CALL, phone: '555 0199' })
    const clash = await yard.post(`${path}/job`, { ...CALL, wayIn: 'Round the back', version: shown })
    expect(clash.status).toBe(409)
    const words = wordsOf(clash.text)
    expect(words).toContain('Ines saved this page meanwhile')
    expect(words).toContain('555 0199')
    expect(clash.text).toContain('Round the back')
    await yard.post(`${path}/job`, { ...typedIn(clash.text), wayIn: 'Round the back' })
    expect(wordsOf((await yard.get(path)).text)).toContain('Round the back')
    expect(wordsOf((await yard.get(`${path}?version=2`)).text)).toContain('555 0199')
  })
})

describe('bad input', () => {
  test('a sheet needs something to be found by', async () => {
    const answer = await yard.post('/removals/new', { told: 'Bees.', version: '0' })
    expect(answer.status).toBe(422)
    expect(wordsOf(answer.text)).toContain('type a name, a telephone number or an address')
    expect(answer.text).toContain('Bees.')
  })
  test('every field says what it wants, and what was typed is kept', async () => {
    const path = await call()
    for (const [part, fields, says] of [
      ['job', { plannedOn: '2026-02-30' }, 'must be a real date'],
      ['job', { ...CALL, heightM: 'high' }, 'must be a number'],
      ['job', { ...CALL, heightM: '9999' }, 'must be at most'],
      ['job', { ...CALL, access: 'wings' }, 'must be one of'],
      ['site', { behind: ['wires'] }, 'must be one of'],
      ['agreement', { hourly: '-4' }, 'must be at least 0'],
      ['check', { 'hours.0.at': '07:00', 'hours.0.c': 'warm' }, 'must be a number'],
      ['check', { 'hours.0.at': '07:00', 'hours.0.c': '500' }, 'is it the right unit'],
      ['check', { cutMm: 'deep' }, 'must be a number'],
      ['work', { 'bees.frames': '0.3' }, 'quarter frames'],
      ['work', { boxedAt: '25:00' }, 'must be a time'],
      ['work', { note: 'x'.repeat(1600) }, 'must be at most 1500'],
    ] as const) {
      const answer = await yard.post(`${path}/${part}`, { ...fields, version: '1' } as Record<string, string>)
      expect(answer.status, JSON.stringify(fields)).toBe(422)
      expect(wordsOf(answer.text)).toContain(says)
    }
    expect(yard.store.removals.get(path.split('/').at(-1) ?? '')?.last.version).toBe(1)
  })
  test('hostile text stays text', async () => {
    const path = await call({
      ...CALL,
      name: '<img src=x onerror=alert(1)>',
      told: '</textarea><script>alert(1)</script>',
    })
    for (const page of [path, `${path}/job`, `${path}/sign`, `${path}/print?what=job`, '/removals'])
      expect((await yard.get(page)).text).not.toMatch(/<img src=x|<script>alert/)
  })
  test('an unknown sheet is a 404', async () => {
    for (const end of ['', '/site', '/sign', '/check', '/print', '/call-back', '/intake', '/erase'])
      expect((await yard.get(`/removals/019707a0-0000-7000-8000-000000000001${end}`)).status).toBe(404)
  })
})

describe('who may', () => {
  test('a helper opens none of it, and learns no name', async () => {
    const path = await call()
    const helper = await yardOn('2026-06-10', 'helper')
    for (const page of ['/removals', '/removals/new', '/removals/terms', path, `${path}/site`])
      expect((await helper.get(page)).status).toBe(403)
    expect((await helper.get('/')).text).not.toContain('/removals')
  })
  test('a beekeeper uses sheets, but neither writes the template nor erases', async () => {
    const beekeeper = await yardOn('2026-06-10', 'beekeeper')
    expect((await beekeeper.get('/removals')).status).toBe(200)
    const made = await beekeeper.post('/removals/new', { name: 'O', version: '0' })
    const path = (made.to ?? '').replace(/\?.*/, '')
    expect((await beekeeper.get(path)).status).toBe(200)
    expect((await beekeeper.get('/removals/terms')).status).toBe(403)
    expect((await beekeeper.get(`${path}/erase`)).status).toBe(403)
    expect((await beekeeper.post(`${path}/erase`, {})).status).toBe(403)
  })
  test('an operator erases a sheet for good', async () => {
    const path = await call()
    expect(wordsOf((await yard.get(`${path}/erase`)).text)).toContain('Backups of before keep it')
    expect((await yard.post(`${path}/erase`, {})).to).toBe('/removals?erased=clean')
    expect((await yard.get(path)).status).toBe(404)
  })
  test('nothing of the customer gets into the journal’s notes, the changes or the colony page of a helper', async () => {
    const path = await call()
    await fill(path, 'work', { ...WORK, 'withoutGo.why': 'said-aloud' })
    const intake = await yard.get(`${path}/intake`)
    await yard.post('/intake', {
      ...typedIn(intake.text),
      colony: 'W-9',
      yard: 'Quarry yard',
      'removal.type': 'wall',
    })
    const [row] = [...yard.store.journal()]
    const { removal, ...rest } = row?.entry.kind === 'intake' ? row.entry : { removal: {} }
    expect(JSON.stringify(rest)).not.toMatch(/Ottoline|Invented|555 01|code 1234/)
    expect(removal).toHaveProperty('site')
  })
})

test('a job ends without a removal, with a reason', async () => {
  const path = await call()
  expect((await yard.post(`${path}/end`, { why: '' })).status).toBe(422)
  await yard.post(`${path}/end`, { why: 'Wasps.' })
  const words = wordsOf((await yard.get(path)).text)
  expect(words).toContain('Ended without a removal , Wed 10 Jun: Wasps.')
})
