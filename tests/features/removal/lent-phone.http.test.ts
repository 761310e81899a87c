/** A phone that is lent: what one person wrote there and has not sent holds the “go” of the next one, and is named to everybody. Invented. */
import { beforeEach, describe, expect, test } from 'vitest'
import type { Role } from '../../../src/people/index.ts'
import { EMPTY_SHEET, type Sheet } from '../../../src/records/removal-sheet.ts'
import { answering, type Phone, phoneIn, sometimes, wordsOf } from '../../support/phone.ts'
import { type TestYard, testYard } from '../../support/yard-app.ts'
import { formIn } from '../../support/yard-on.ts'
import type { Fields } from './one-sheet.ts'
import { DAY, READY } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000081'
const OTHER = '019e0000-0000-7000-8000-000000000082'
const TRUSS = 'the roof truss is cracked through'
let yard: TestYard
let phone: Phone
const removals = () => yard.services.store.removals
const last = (): Sheet => removals().get(ID)?.last.sheet ?? EMPTY_SHEET

const send = async (path: string, fields: Fields): Promise<{ status: number; text: string }> => {
  const body = new URLSearchParams(
    Object.entries(fields).flatMap(([name, vs]) => [vs].flat().map((v) => [name, v])),
  )
  const request = new Request(`http://yard.test${path}`, { method: 'POST', body })
  const answer = await phone.syncService.form(request)
  return { status: answer?.status ?? 0, text: wordsOf((await answer?.text()) ?? '') }
}
/** A part as its form stands on the phone, with what is changed in it. */
const save = async (part: string, more: Fields, id = ID) => {
  const path = `/removals/${id}/${part}`
  return send(path, { ...formIn(await phone.open(path)), ...more })
}
const saved = async (part: string, more: Fields, id = ID): Promise<void> => {
  const { status, text } = await save(part, more, id)
  expect(status, text).toBe(303)
}
const CHECK = {
  hottestC: '75',
  cutMm: '3/4',
  vacuum: 'bee-vacuum',
  wires: 'none',
  done: READY.check.done ?? [],
  is: 'go',
}
const words = async (path = `/removals/${ID}`): Promise<string> => wordsOf(await phone.open(path))

const signal = () => phone.signal()
const hands = (role: Role) => phone.handedTo(role)

beforeEach(async () => {
  yard = testYard({ day: DAY })
  for (const role of ['operator', 'beekeeper', 'helper'] as const) await yard.session(role)
  const stamp = { savedAt: `${DAY}T08:00:00.000Z`, savedBy: 'Bram' }
  expect(removals().save(ID, 0, READY, stamp).ok).toBe(true)
  phone = phoneIn(yard, 'beekeeper')
  phone.at(`${DAY}T12:00:00Z`)
  await signal()
})

/** What Bram wrote, by what is asked of whoever uses the phone after him, and how the banner calls it. */
const WROTE: readonly [string, () => Promise<void>, string, string][] = [
  [
    'words',
    () => saved('site', { behindNote: 'a shaft right behind the board' }),
    '“a shaft right behind the board”',
    'a note others have not read',
  ],
  ['a refusal', () => saved('check', { is: 'refuse', reason: TRUSS }), `“${TRUSS}”`, 'a refusal'],
  [
    'a “Wait” with a reason',
    () => saved('check', { is: 'wait', reason: TRUSS }),
    `“${TRUSS}”`,
    'a “Wait” with a reason',
  ],
  ['fierce bees', () => saved('site', { temper: '5' }), 'Fierce bees: is it so here?', 'fierce bees'],
  [
    'the place',
    () => saved('site', { where: 'over the covered well' }),
    '“over the covered well”',
    'a note others have not read',
  ],
  ['a hotter day', () => saved('check', { hottestC: '99' }), '“Hottest: 99 °F”', 'a hotter day'],
  [
    'what is not known',
    () => saved('site', { temper: 'unknown' }),
    '“Temper: not known”',
    'temper not known',
  ],
  ['sprayed bees', () => saved('job', { sprayed: 'yes' }), 'Sprayed bees: is it so here?', 'sprayed bees'],
]

describe.each(WROTE)('%s that another person has not sent', (_, write, asked, kind) => {
  beforeEach(async () => {
    await write()
    // His session ends, or he signs out: the phone is the same to whoever is next.
    await hands('operator')
  })

  test('stand before the cut, and hold the “go” until they are answered', async () => {
    expect(last()).toEqual(READY)
    const page = await words()
    expect(page).toContain('Another sheet of this job: Ottoline Fairweather (Bram, not sent)')
    expect(page).toContain(asked)
    const barred = await save('check', CHECK)
    expect(barred.status).toBe(422)
    expect(barred.text).toContain('what another sheet says, looked for again')
    const form = formIn(await phone.open(`/removals/${ID}/check`))
    const html = await phone.open(`/removals/${ID}/check`)
    const named = html.matchAll(/name="(again\.not-there:[^"]*)"/g)
    const again = [...new Set([...named].map(([, name]) => name ?? ''))]
    const read = [...html.matchAll(/value="(read-there:[^"]*)"/g)].map(([, value]) => value ?? '')
    expect(again.length + read.length, 'one question each').toBe(1)
    const answers = Object.fromEntries(again.map((name) => [name, 'not']))
    await saved('check', { ...form, ...CHECK, ...answers, done: [...CHECK.done, ...read] })
    expect(await words()).toContain('Go, as this phone knows it')
  })

  test('are named on every page, by kind alone', async () => {
    await hands('helper')
    const page = await words('/')
    expect(page).toContain(`can kill waits here and reaches nobody: ${kind}. Bram signs in`)
    for (const secret of ['shaft', 'truss', 'Ottoline', 'well']) expect(page).not.toContain(secret)
    expect(await words('/outbox')).toContain(`A removal sheet of Bram: ${kind}.`)
    await expect(phone.open(`/removals/${ID}`)).rejects.toThrow()
  })
})

test('what stands on it is said beside its name, be it nothing but words', async () => {
  await saved('site', { behindNote: 'a shaft right behind the board' })
  await hands('operator')
  expect(await words()).toContain('(Bram, not sent) . It says: “a shaft right behind the board”.')
})

test('a hotter day and what is not known are read too, and a cooler one is not', async () => {
  await saved('check', { hottestC: '99' })
  await saved('site', { temper: 'unknown' })
  await hands('operator')
  const page = await words(`/removals/${ID}/check`)
  expect(page).toContain('“Hottest: 99 °F”')
  expect(page).toContain('“Temper: not known”')
  expect(page).not.toContain('Hottest: 75')
  expect((await save('check', CHECK)).status).toBe(422)
})

test('that it is on a roof is asked of this very job, though not of another wall of the house', async () => {
  const stamp = { savedAt: `${DAY}T08:30:00.000Z`, savedBy: 'Odalys' }
  const ground: Sheet = { ...READY, site: { ...READY.site, access: 'ground', heightM: 2 } }
  expect(removals().save(ID, 1, ground, stamp).ok).toBe(true)
  expect(removals().save(OTHER, 0, ground, stamp).ok).toBe(true)
  await signal()
  await saved('job', { access: 'roof', heightM: '13' })
  await hands('operator')
  expect(await words()).toContain('Ladder, roof or height: is it here?')
  expect(await words(`/removals/${OTHER}`)).not.toContain('Ladder, roof or height: is it here?')
})

test('what a colleague tapped after one’s own words is asked, though both wait', async () => {
  await hands('operator')
  await saved('job', { email: 'hers@example.org' })
  phone.heldBy('beekeeper')
  const db = await phone.database()
  const kept = await db.get('sheets', ID)
  const gas: Sheet = { ...READY, site: { ...READY.site, behind: ['insulation', 'gas'] } }
  if (kept?.mine)
    await db.put('sheets', {
      ...kept,
      aside: [{ ...kept.mine, sheet: gas, from: READY, owner: { id: 'x', name: 'Teuila' } }],
    })
  phone.heldBy('operator')
  // The worker begins anew, and reads its disk.
  await phone.syncService.form(new Request('http://yard.test/outbox/1/again', { method: 'POST' }))
  await saved('job', { email: 'her@example.org' })
  expect(await words()).toContain('Gas pipe: is it here?')
})

describe('where its jobs have not come since somebody else signed in', () => {
  const roundless = (path: string): boolean => path.startsWith('/phone/round')
  beforeEach(async () => {
    await saved('site', { behind: ['insulation', 'gas'] })
    await phone.syncService.signedOut()
    phone.heldBy('operator')
    await phone.signal(sometimes(roundless, answering(500)))
  })

  test('no page of a job is the server’s, which does not know it: it says what waits, and is opened again', async () => {
    const page = await words()
    expect(page).toContain('reaches nobody: gas pipe. Bram signs in')
    expect(page).toContain('Look again')
    expect(page).not.toContain('unmet')
    const { status, text } = await send(`/removals/${ID}/check`, { ...CHECK, version: '1' })
    expect(status).toBe(503)
    expect(text).toContain('gas pipe')
    await signal()
    expect(await words()).toContain('Gas pipe')
    expect((await save('check', CHECK)).status).toBe(422)
  })

  test('whoever is not signed in is asked to by the server', async () => {
    phone.heldBy(null)
    await phone.syncService.signedOut()
    await signal()
    await expect(phone.open(`/removals/${ID}`)).rejects.toThrow()
  })

  test('any other page, and the call of a new job, are the server’s', async () => {
    await expect(phone.open('/removals/new')).rejects.toThrow()
    await expect(phone.open('/yard')).rejects.toThrow()
  })
})

describe('a whole new sheet of the same house that waits for somebody else', () => {
  const call = (more: Fields) =>
    send('/removals/new', { name: 'Edgar Quill', address: '4 Invented Row', phone: '555 0142', ...more })

  test('holds the “go” like one that was sent, and says its things once', async () => {
    expect((await call({ told: 'gas meter in that wall' })).status).toBe(303)
    await hands('operator')
    const page = await words()
    expect(page).toContain('Another sheet of this house: Edgar Quill (Bram, not sent)')
    expect(page).toContain('Gas pipe: is it here?')
    expect((await save('check', CHECK)).status).toBe(422)
  })

  test('of another house it holds nothing', async () => {
    expect((await call({ address: '77 Larch Street', told: 'gas meter in that wall' })).status).toBe(303)
    await hands('operator')
    expect(await words()).not.toContain('Another sheet')
    await saved('check', CHECK)
  })

  test('of a sheet that is in the book, no more is asked by it than what is new on it', async () => {
    const stamp = { savedAt: `${DAY}T08:00:00.000Z`, savedBy: 'Bram' }
    const there: Sheet = { ...READY, job: { ...READY.job, told: 'Ring twice' } }
    expect(removals().save(OTHER, 0, there, stamp).ok).toBe(true)
    await signal()
    await saved('site', { temper: '5' }, OTHER)
    await hands('operator')
    const page = await words()
    expect(page.match(/Read: the sheet of/g)).toHaveLength(1)
    expect(page.match(/Fierce bees: is it so here\?/g)).toHaveLength(1)
  })
})
