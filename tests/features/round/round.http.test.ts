/** The round through its pages: list, box, what was saved, what was not reached, time, end; and who may. */
import { v7 } from 'uuid'
import { beforeEach, describe, expect, it } from 'vitest'
import { given, wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'

const TODAY = '2026-06-10'

const intake = (colony: string, on: string, more: Record<string, unknown> = {}) => ({
  id: v7(),
  colony,
  kind: 'intake',
  on,
  by: 'Maren',
  removal: { type: 'wall' },
  yard: 'North field',
  stand: colony.replace(/\D+/, ''),
  queen: 'unseen',
  ...more,
})
const look = (colony: string, on: string, more: Record<string, unknown> = {}) => ({
  id: v7(),
  colony,
  kind: 'inspection',
  on,
  by: 'Isolde',
  opened: false,
  signs: [],
  ...more,
})

/** W-2 and W-10 want their first brood check; W-7 is fine; S-1 stands in another yard and is late. */
const BOXES = [
  intake('W-2', '2026-06-05'),
  look('W-2', '2026-06-07'),
  intake('W-10', '2026-06-05'),
  look('W-10', '2026-06-07'),
  intake('W-7', '2026-06-08'),
  look('W-7', '2026-06-09'),
  intake('S-1', '2026-05-30', { yard: 'South bank' }),
  look('S-1', '2026-06-02'),
]

let yard: Yard
beforeEach(async () => {
  yard = await yardOn(TODAY)
  given(yard, BOXES)
})

const open = async (path: string): Promise<string> => {
  const answer = await yard.get(path)
  expect(answer.status, path).toBe(200)
  return answer.text
}

describe('the list', () => {
  it('walks the stands in order of number, yard by yard, and counts', async () => {
    const html = await open('/round?yard=')
    const order = [...html.matchAll(/round\/box\/([A-Z]-\d+)\?/g)].map((m) => m[1])
    expect(order.slice(1)).toEqual(['W-2', 'W-10', 'S-1'])
    expect(wordsOf(html)).toContain('0 of 3, 1 late')
    expect(wordsOf(html)).toContain('Start with W-2, stand 2')
  })

  it('is of one yard when one is picked; a yard there is none of means all', async () => {
    expect(wordsOf(await open('/round?yard=North+field'))).toContain('0 of 2')
    expect(wordsOf(await open('/round?yard=Nowhere'))).toContain('0 of 3, 1 late')
  })

  it('says so where nothing is to be done', async () => {
    const empty = await yardOn(TODAY)
    expect(wordsOf((await empty.get('/round')).text)).toContain('No box asks for anything here today')
  })
})

describe('a box', () => {
  it('says what matters at the lid, and leads to the next box and to the one before', async () => {
    const html = await open('/round/box/W-2?yard=North+field')
    const words = wordsOf(html)
    expect(words).toContain('Eggs? Queen cells? Neither?')
    expect(words).toContain('Not known yet if there is a queen, day 5')
    expect(html).toContain('href="/round/box/W-10?yard=North+field"')
    expect(await open('/round/box/W-10?yard=North+field')).toContain('href="/round/end?yard=North+field"')
  })

  it('that asks nothing has no place on the round: its own page comes', async () => {
    expect(await yard.get('/round/box/W-7?yard=')).toMatchObject({ status: 303, to: '/colony/W-7' })
  })

  it('that nobody knows is a helpful 404', async () => {
    const answer = await yard.get('/round/box/W-77?yard=')
    expect(answer.status).toBe(404)
    expect(wordsOf(answer.text)).toContain('W-7')
  })

  it('shows after a visit what it proved and what is to be done now, and keeps its place', async () => {
    const then = '/round/box/W-2?yard=North+field'
    const saved = await yard.post(`/colony/W-2/visit?then=${encodeURIComponent(then)}`, {
      on: TODAY,
      at: '12:00',
      opened: 'yes',
      eggs: 'none',
      open: 'none',
      cells: 'none',
    })
    expect(saved.status).toBe(303)
    expect(saved.to).toMatch(/^\/round\/box\/W-2\?yard=North\+field&saved=/)
    const words = wordsOf(await open(saved.to ?? ''))
    expect(words).toContain('1 of 2')
    expect(words).toContain('1 seen with more to do')
    expect(words).toContain('In the book today: Opened')
    expect(words).toContain('Now: give a frame of eggs')
  })

  it('fills in the time of a visit made on the round', async () => {
    const html = await open('/colony/W-2/visit?then=%2Fround%2Fbox%2FW-2%3Fyard%3D')
    expect(html).toMatch(/name="at"[^>]*value="12:00"|value="12:00"[^>]*name="at"/)
    expect(html).toContain('action="/colony/W-2/visit?then=%2Fround%2Fbox%2FW-2%3Fyard%3D"')
  })
})

describe('where a form leads', () => {
  it.each([
    ['https://elsewhere.example/round'],
    ['//elsewhere.example/round'],
    ['/round/../../settings'],
    ['/roundabout'],
    ['/round\\..\\settings'],
    ['javascript:alert(1)'],
    ['/settings'],
  ])('never follows %s', async (then) => {
    const fields = { on: TODAY, opened: 'no', id: v7() }
    const saved = await yard.post(`/colony/W-2/outside-look?then=${encodeURIComponent(then)}`, fields)
    expect(saved.to).toBe(`/colony/W-2?saved=${fields.id}`)
  })

  it('walks on after one tap, and says at the next box what was saved', async () => {
    const then = encodeURIComponent('/round/box/W-10?yard=')
    const saved = await yard.post(`/colony/W-2/outside-look?then=${then}`, { id: v7() })
    expect(wordsOf(await open(saved.to ?? ''))).toContain('In the book for W-2: looked from outside, lid on')
    const entry = yard.store.changes({ limit: 1 })[0]?.entry
    expect(entry).toMatchObject({ kind: 'inspection', opened: false, at: '12:00', by: 'Ines' })
  })
})

describe('a box that could not be reached', () => {
  const then = encodeURIComponent('/round/box/W-10?yard=')
  const miss = (fields: Record<string, string>) =>
    yard.post(`/colony/W-2/missed?then=${then}`, { id: v7(), on: TODAY, ...fields })

  it('says what cannot wait, before it is put off', async () => {
    const words = wordsOf(await open('/colony/W-2/missed'))
    expect(words).toContain('Its young brood can become a queen only until Thu 11 Jun')
  })

  it('is written down with its reason, and is no visit', async () => {
    await open('/')
    const before = yard.store.colony('W-2')?.summary.plan
    const saved = await miss({ reason: 'rain', again: '2026-06-12', note: 'Track under water.' })
    expect(saved.to).toMatch(/^\/round\/box\/W-10\?yard=&saved=/)
    expect(yard.store.colony('W-2')?.summary.plan).toEqual(before)
    expect(yard.store.changes({ limit: 1 })[0]?.entry).toMatchObject({
      kind: 'missed-visit',
      reason: 'rain',
      again: '2026-06-12',
      note: 'Track under water.',
    })
  })

  it('is said on Today and on the round, and stays there while cells can still be started', async () => {
    await miss({ reason: 'rain', again: '2026-06-17' })
    expect(wordsOf(await open('/'))).toContain('Not reached today: rain; again Wed 17 Jun.')
    yard.setDay('2026-06-11')
    const list = wordsOf(await open('/round?yard='))
    expect(list).toContain('Not reached Wed 10 Jun: rain; again Wed 17 Jun.')
    expect(list).not.toContain('Put off to a later day')
    expect(wordsOf(await open('/round/box/W-2?yard='))).toContain('passes unseen')
  })

  it('is put off once nothing of the bees’ own is closing, and comes back on its day', async () => {
    yard.setDay('2026-06-13')
    await yard.post('/colony/W-2/missed', {
      id: v7(),
      on: '2026-06-13',
      reason: 'no-time',
      again: '2026-06-15',
    })
    yard.setDay('2026-06-14')
    const list = wordsOf(await open('/round?yard='))
    expect(list).toMatch(/Put off to a later day.*W-2/)
    yard.setDay('2026-06-15')
    expect(wordsOf(await open('/round?yard='))).not.toContain('Put off to a later day')
  })

  it.each([
    [{}, 'Why not'],
    [{ reason: 'tired' }, 'must be one of'],
    [{ reason: 'rain', again: TODAY }, 'is not after'],
    [{ reason: 'rain', again: 'soon' }, 'must be a real date'],
  ])('is refused with %j, beside the field, nothing written', async (fields, sentence) => {
    const entries = [...yard.store.journal()].length
    const refused = await miss(fields)
    expect(refused.status).toBe(422)
    expect(wordsOf(refused.text)).toContain(sentence)
    expect([...yard.store.journal()]).toHaveLength(entries)
  })

  it('can be corrected and taken back like any entry', async () => {
    await miss({ reason: 'rain' })
    const id = yard.store.changes({ limit: 1 })[0]?.entry.id ?? ''
    expect(wordsOf(await open(`/entry/${id}/correct`))).toContain('Why not')
    const mended = await yard.post(`/entry/${id}/correct`, { id: v7(), on: TODAY, reason: 'heat' })
    expect(mended.status).toBe(303)
    expect(wordsOf(await open('/'))).toContain('Not reached today: too hot; again tomorrow.')
  })
})

describe('short of time', () => {
  it('says the order, until when, and what is left out at what cost', async () => {
    const words = wordsOf(await open('/round?yard=&minutes=20'))
    expect(words).toMatch(/In 20 minutes, until 12:20, in this order .*W-2/)
    expect(words).toContain('Left out, and what that costs')
    expect(words).toMatch(
      /W-10 The first brood check North field\. Its young brood can still become a queen until Thu 11 Jun/,
    )
    expect(words).toMatch(/S-1 .*South bank.*Late since/)
    expect(words).toContain('without the way between the yards')
  })

  it('stays in the yard that presses most unless all are chosen', async () => {
    const html = await open('/round?yard=')
    expect(html).toMatch(/<option value="North field" selected/)
    expect(html).toContain('all yards, the way between them not counted')
    const words = wordsOf(await open('/round?yard=North+field&minutes=20'))
    expect(words).not.toContain('South bank.')
    expect(words).not.toContain('the way between')
  })

  it('keeps the time in the links, so that what is left shrinks as one walks', async () => {
    const html = await open('/round?yard=&minutes=20')
    expect(html).toContain('/round/box/W-2?yard=&amp;until=12%3A20')
    expect(wordsOf(await open('/round?yard=&until=11:30'))).toContain('It is past 11:30: the time is up')
  })

  it.each(['0', '-5', 'many', '1e9', '12.5'])('takes %s minutes for no choice', async (minutes) =>
    expect(wordsOf(await open(`/round?yard=&minutes=${minutes}`))).toContain('0 of 3, 1 late'),
  )
})

describe('the end of the round', () => {
  it('says what was done, what it set in motion, what was not, and what to bring next time', async () => {
    await yard.post('/colony/W-2/visit', {
      on: TODAY,
      opened: 'yes',
      eggs: 'none',
      open: 'none',
      cells: 'none',
    })
    await yard.post('/colony/W-10/missed', { on: TODAY, reason: 'wind' })
    const words = wordsOf(await open('/round/end?yard=North+field'))
    expect(words).toContain('Next round: Thu 11 Jun, tomorrow')
    expect(words).toContain('1 frame of eggs, from a healthy donor for W-2')
    expect(words).toMatch(/Done W-2 .*Opened: eggs none/)
    expect(words).toContain('Queenless. Before this visit: not known yet if there is a queen.')
    expect(words).toMatch(/Not seen W-10 .*Not reached today: too windy; again tomorrow/)
  })

  it('has the colony that left among what was done', async () => {
    await yard.post('/colony/W-2/outcome', { on: TODAY, what: 'absconded' })
    expect(wordsOf(await open('/round/end?yard='))).toMatch(/Done W-2 Absconded/)
  })
})

describe('who walks', () => {
  it('a helper may walk the whole round and say what was not reached', async () => {
    const helper = await yardOn(TODAY, 'helper')
    given(helper, BOXES)
    for (const path of ['/round', '/round/box/W-2?yard=', '/round/end', '/colony/W-2/missed'])
      expect((await helper.get(path)).status, path).toBe(200)
    const saved = await helper.post('/colony/W-2/missed', { on: TODAY, reason: 'rain' })
    expect(saved.status).toBe(303)
  })

  it('no page of the round holds where a colony came from', async () => {
    const helper = await yardOn(TODAY, 'helper')
    given(helper, [intake('P-1', '2026-06-05', { removal: { type: 'wall', site: 'Quillpen Row 9' } })])
    for (const path of ['/round', '/round/box/P-1?yard=', '/round/end'])
      expect((await helper.get(path)).text).not.toContain('Quillpen')
  })
})

it('offers a helper who has not been at a box yet the page of a first round', async () => {
  const link = 'href="/how/first-round"'
  expect(await open('/round')).not.toContain(link)
  yard = await yardOn(TODAY, 'helper')
  given(yard, BOXES)
  expect(await open('/round')).toContain(link)
  given(yard, [look('W-2', TODAY, { by: 'Ines' })])
  expect(await open('/round')).not.toContain(link)
})

// The yard reads °F unless it says otherwise; 35 °C are 95 °F by definition.
it('says the degrees of its reasons as the yard reads them, at the box, at the end and on Today', async () => {
  given(yard, [intake('W-9', TODAY, { removal: { type: 'wall', outdoorC: 35 } }), look('W-9', TODAY)])
  for (const path of ['/round/box/W-9', '/round/end', '/health', '/colony/W-9/health', '/'])
    expect(wordsOf(await open(path)), path).not.toContain('°C')
  expect(wordsOf(await open('/')) + wordsOf(await open('/round/end'))).toContain('95 °F')
})

it('counts letters that are due again once something was written down', async () => {
  const says = async () => /(\d+) letters? about day 30/.exec(wordsOf(await open('/')))?.[1]
  expect(await says()).toBeUndefined()
  given(yard, [intake('W-30', '2026-05-08', { removal: { type: 'wall', site: 'Ms Invented, Quarry Lane' } })])
  expect(await says()).toBe('1')
  yard.setDay('2026-07-08')
  expect(await says()).toBeUndefined()
})
