/** A sheet that is refused over one word keeps all the rest of what it brings. Bram sends by a phone; Odalys saved first. Invented. */
import { beforeEach, describe, expect, test } from 'vitest'
import { placeOf } from '../../../src/features/removal/place.ts'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { type TestYard, testYard } from '../../support/yard-app.ts'
import { DAY, here, READY } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000041'
let yard: TestYard
beforeEach(() => {
  yard = testYard({ day: DAY })
})
const removals = () => yard.services.store.removals
const version = (): number => removals().get(ID)?.last.version ?? 0
const last = (): Sheet => removals().get(ID)?.last.sheet ?? READY
const saved = (s: Sheet, savedBy = 'Odalys'): void => {
  const stamp = { savedAt: `${DAY}T08:00:00.000Z`, savedBy }
  expect(removals().save(ID, version(), s, stamp).ok).toBe(true)
}
const sync = async (sheet: Sheet, { base = 1, over = false as boolean } = {}) => {
  const answer = await yard.ask('beekeeper', '/removals/sync', {
    method: 'POST',
    headers: { 'Content-Type': 'application/json' },
    body: JSON.stringify({ id: ID, base, over: over && version(), sheet }),
  })
  return { status: answer.status, text: await answer.text() }
}
const but = (s: Sheet, job: Partial<Sheet['job']>, site: Partial<Sheet['site']> = {}): Sheet => ({
  ...s,
  job: { ...s.job, ...job },
  site: { ...s.site, ...site },
})
const decided = (is: 'go' | 'wait' | 'refuse', by: string, at: string, s = READY): Sheet['decision'] => ({
  is,
  by,
  on: DAY,
  at,
  unmet: [],
  ...(is === 'go' ? {} : { reason: 'The truss is cracked through' }),
  ...placeOf(s),
})

describe('beside a clash over the telephone', () => {
  const hers = but(READY, { phone: '555 0100' })
  beforeEach(() => {
    saved(READY)
    saved(hers)
  })

  test.each<[string, Partial<Sheet['site']>]>([
    ['how fierce they are', { temper: 5 }],
    ['that they were sprayed', { sprayed: 'yes' }],
    ['that they are Africanized', { africanized: 'yes' }],
    ['that they sit on a roof', { access: 'roof' }],
    ['how “none” is known', { behindHow: 'owner', oldHow: 'untouched' }],
  ])('%s is in the book', async (_, site) => {
    const answer = await sync(but(READY, { phone: '555 0199' }, site))
    expect(answer.status).toBe(422)
    expect(answer.text).toContain('Telephone: theirs “555 0100”, yours “555 0199”')
    expect(answer.text).toContain(`"version":${version()}`)
    expect(last().site).toMatchObject(site)
    expect(last().job.phone).toBe('555 0100')
  })

  test('the hottest hour is in the book, and a “go” of the same sheet has fallen', async () => {
    const mine = { ...but(READY, { phone: '555 0199' }), decision: decided('go', 'Bram', '11:50') }
    expect((await sync({ ...mine, check: { ...mine.check, hottestC: 37 } })).status).toBe(422)
    expect(last().check.hottestC).toBe(37)
    expect(last().decision).toMatchObject({ is: 'go', by: 'Bram', fell: { by: 'Odalys' } })
    const page = await (await yard.ask('beekeeper', `/removals/${ID}`)).text()
    expect(page, 'nobody who decided changed anything').toContain('before Odalys changed something')
  })

  test.each(['refuse', 'wait'] as const)('a “%s” is in the book', async (is) => {
    const mine = { ...but(READY, { phone: '555 0199' }), decision: decided(is, 'Bram', '11:50') }
    expect((await sync(mine)).status).toBe(422)
    expect(last().decision).toMatchObject({ is, by: 'Bram', reason: 'The truss is cracked through' })
    expect(last().job.phone).toBe('555 0100')
  })

  test('sent again it makes no new version, and then stands over that one', async () => {
    const mine = but(READY, { phone: '555 0199' }, { temper: 5, entrance: 'a gas pipe under the ridge' })
    const first = await sync(mine)
    const made = version()
    expect(await sync(mine)).toEqual(first)
    expect(version()).toBe(made)
    expect((await sync(mine, { over: true })).status).toBe(200)
    expect(last()).toMatchObject({ job: { phone: '555 0199' }, site: { temper: 5 } })
  })

  test('nothing is told as a word of whoever sends it', async () => {
    await sync(but(READY, { phone: '555 0199' }, { temper: 5 }))
    expect((await sync(but(READY, { phone: '555 0199' }, { temper: 5 }))).text).toContain(
      'Odalys saved something else meanwhile',
    )
  })
})

describe('of two decisions that cross, the careful one is in the book at once', () => {
  beforeEach(() => saved(READY))
  test.each(['refuse', 'wait'] as const)('“%s” over a colleague’s “go”', async (is) => {
    saved({ ...READY, decision: decided('go', 'Odalys', '11:50') })
    await sync({ ...READY, decision: decided(is, 'Bram', '11:40') })
    expect(last().decision).toMatchObject({ is, by: 'Bram' })
  })
  test('sent again, one that was read and answered meanwhile holds nothing back', async () => {
    saved({ ...READY, decision: decided('go', 'Odalys', '11:50') })
    const mine = { ...READY, decision: decided('refuse', 'Bram', '11:40') }
    await sync(mine)
    const answered = { ...decided('go', 'Odalys', '11:58'), reason: 'The truss is shored up now' }
    saved({ ...last(), decision: answered as Sheet['decision'] })
    expect((await sync(mine)).status).toBe(422)
    expect(last().decision).toMatchObject({ is: 'go', by: 'Odalys', at: '11:58' })
  })
  test('a colleague’s refusal over “wait”', async () => {
    saved({ ...READY, decision: decided('refuse', 'Odalys', '11:50') })
    expect((await sync({ ...READY, decision: decided('wait', 'Bram', '11:55') })).status).toBe(422)
    expect(last().decision).toMatchObject({ is: 'refuse', by: 'Odalys' })
  })
  test('one’s own later “go” over one’s own refusal is meant', async () => {
    saved({ ...READY, decision: decided('refuse', 'Bram', '11:00') }, 'Bram')
    const mine = {
      ...decided('go', 'Bram', '11:50'),
      reason: 'The truss is shored up now',
    } as Sheet['decision']
    expect((await sync({ ...READY, decision: mine })).status).toBe(200)
    expect(last().decision).toMatchObject({ is: 'go', by: 'Bram' })
  })
})

describe('where the clash is the danger', () => {
  test.each<[string, Partial<Sheet['site']>, Partial<Sheet['site']>]>([
    ['how fierce they are', { temper: 1 }, { temper: 5 }],
    ['sprayed', { sprayed: 'no' }, { sprayed: 'yes' }],
    ['not known whether sprayed', { sprayed: 'no' }, { sprayed: 'unknown' }],
  ])('%s: the careful answer is in the book before anybody taps', async (_, hers, mine) => {
    const { sprayed: _s, ...site } = READY.site
    const base = { ...READY, site }
    saved(base)
    saved(but(base, {}, hers))
    expect((await sync(but(base, {}, mine))).status).toBe(200)
    expect(last().site).toMatchObject(mine)
  })
  test('and a colleague’s stays over one’s own, put over', async () => {
    const { sprayed: _, ...site } = READY.site
    saved({ ...READY, site })
    saved(but(READY, {}, { sprayed: 'yes' }))
    await sync(but(READY, {}, { sprayed: 'no' }), { over: true })
    expect(last().site.sprayed).toBe('yes')
  })
})

test.each([
  ['refuse', 'refuse'],
  ['wait', 'refuse'],
  ['refuse', 'wait'],
] as const)(
  'of two that stopped it, %s and %s, both reasons are in the book, and once',
  async (hers, his) => {
    const joists = {
      ...decided(his, 'Bram', '11:40'),
      reason: 'The joists are eaten through',
    } as Sheet['decision']
    saved(READY)
    saved({ ...READY, decision: decided(hers, 'Odalys', '11:50') })
    await sync({ ...READY, decision: joists })
    await sync({ ...READY, decision: joists })
    const { is, reason = '' } = last().decision ?? {}
    expect(is).toBe('refuse')
    expect(reason.match(/The truss is cracked through/g)).toHaveLength(1)
    expect(reason.match(/The joists are eaten through/g)).toHaveLength(1)
  },
)

test('looked at two places: of each answer the careful one stays at the one that stands', async () => {
  saved(READY)
  saved(here(but(READY, {}, { where: 'under the sill' })))
  await sync(here(but(READY, {}, { where: 'the north gable', sheathingMm: 40, temper: 5 })))
  expect(last().site).toMatchObject({ where: 'under the sill. the north gable', sheathingMm: 19, temper: 5 })
})

describe('one person, two phones', () => {
  test.each<[string, Partial<Sheet['site']>, Partial<Sheet['site']>]>([
    ['the kind of place', { type: 'floor' }, { type: 'swarm' }],
  ])('%s is asked', async (_, newer, older) => {
    saved(READY)
    saved(but(READY, {}, newer), 'Bram')
    const answer = await sync(but(READY, {}, older))
    expect(answer.status).toBe(422)
    expect(answer.text).toContain('You saved something else meanwhile')
    expect(answer.text).toMatch(/from your other phone “[^”]*”, from this one “/)
    expect(answer.text).not.toContain('theirs')
    expect(last().site).toMatchObject(newer)
  })
  test('words of both stay, whole', async () => {
    saved(READY)
    const long = `${'Honey on the sill. '.repeat(25)}A shaft of 20 m`
    saved(but(READY, {}, { surface: 'boards', foundNote: long }), 'Bram')
    const other = `${'Dry, old comb. '.repeat(30)}A gas line comes up there`
    expect((await sync(but(READY, {}, { surface: 'cedar', foundNote: other }))).status).toBe(200)
    expect(last().site).toMatchObject({ surface: 'boards. cedar', foundNote: `${long}. ${other}` })
  })
  test('of each hour the hotter forecast stays', async () => {
    const hours = (c: number) => ({
      ...READY.check,
      hours: [
        { at: '06:00', c: 18 },
        { at: '12:00', c },
      ],
    })
    saved(READY)
    saved({ ...READY, check: hours(24) }, 'Bram')
    expect((await sync({ ...READY, check: hours(37) })).status).toBe(200)
    expect(last().check.hours).toEqual(hours(37).hours)
  })
  test('of what has a careful answer, that stays', async () => {
    const { sprayed: _, ...site } = READY.site
    saved({ ...READY, site })
    saved(but(READY, {}, { sprayed: 'yes' }), 'Bram')
    expect((await sync(but(READY, {}, { sprayed: 'no' }))).status).toBe(200)
    expect(last().site.sprayed).toBe('yes')
  })
})

describe('words that cross in a field of one text', () => {
  const SAID = 'Shaft under the porch, she said'
  test.each<[string, (words: string) => Sheet]>([
    ['what is agreed', (extra) => ({ ...READY, agreement: { ...READY.agreement, extra } })],
    ['the name', (name) => but(READY, { name })],
  ])('stay a line, and are read before “go”: %s', async (_, of) => {
    saved(READY)
    saved(of('Una Hale'))
    expect((await sync(of(SAID))).status).toBe(422)
    expect(last().site.noted).toContainEqual(expect.objectContaining({ what: 'note', words: SAID }))
    const page = await yard.ask('operator', `/removals/${ID}/check`)
    expect(await page.text()).toContain(`Was written: ${SAID}`)
  })

  test('are shown in the head of a job that is open', async () => {
    const on = { by: 'Odalys', on: DAY, at: '08:00' }
    const open = { openedAt: '08:10', on: DAY, underGo: on, knew: [] }
    const go = { is: 'go' as const, ...on, unmet: [], ...placeOf(READY) }
    const opened = (note?: string): Sheet => ({
      ...READY,
      decision: go,
      work: { ...open, ...(note === undefined ? {} : { note }) },
    })
    saved(opened())
    saved(opened('Nice bees'))
    expect((await sync(opened('The knife tingled in my hand'))).status).toBe(422)
    const page = await (await yard.ask('operator', `/removals/${ID}`)).text()
    expect(page).toContain('The knife tingled in my hand')
  })
})
