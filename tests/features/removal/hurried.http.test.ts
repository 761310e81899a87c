/** A hurried beekeeper at the pages: tapping “Go” again the day after, opening by hand, a form left open. Invented. */
import { beforeEach, expect, test } from 'vitest'
import { seenOn } from '../../../src/features/removal/hazards.ts'
import { placeOf } from '../../../src/features/removal/place.ts'
import { PASSPHRASE } from '../../support/people.ts'
import { formIn, INTAKE, wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'
import { but, DAY, PAPER, PHOTO, READY } from './ready.ts'

/** Points as a finger draws a name. */
const DRAWING = '[[[40,120],[90,60],[140,130],[220,50]]]'

const ID = '019e0000-0000-7000-8000-000000000009'
const PATH = `/removals/${ID}`
let yard: Yard
beforeEach(async () => {
  yard = await yardOn(DAY)
  await yard.photos.keep(PHOTO)
  const decision = { is: 'go' as const, by: 'Ines', on: DAY, unmet: [], ...placeOf(READY) }
  yard.store.removals.save(
    ID,
    0,
    { ...READY, decision },
    { savedAt: `${DAY}T08:00:00.000Z`, savedBy: 'Ines' },
  )
})
const sheet = () => yard.store.removals.get(ID)?.last.sheet
/** What a page that was opened just now shows of the wall. */
const seen = (): string => seenOn(sheet() ?? READY)

/** The fields of the page's big form as they stand, every ticked box with them. */
const standing = async (path: string) => formIn((await yard.get(path)).text)

test('today “Go” stands, and it is opened', async () => {
  expect((await yard.get(`${PATH}/work`)).text).toContain('value="openedAt"')
  const answer = await yard.post(`${PATH}/work`, {
    version: '1',
    outdoorC: '75',
    now: 'openedAt',
    water: 'yes',
  })
  expect(answer.status).toBe(303)
  expect(sheet()?.work.openedAt).toBe('12:00')
})

test('the day after, nothing is opened on yesterday’s “Go”, and “Go” is not tapped again over yesterday’s ticks', async () => {
  yard.setDay('2026-06-13')
  const opening = await yard.post(`${PATH}/work`, {
    version: '1',
    outdoorC: '75',
    now: 'openedAt',
    water: 'yes',
  })
  expect(opening.status).toBe(422)
  expect(sheet()?.work.openedAt).toBeUndefined()

  const again = await yard.post(`${PATH}/check`, { ...(await standing(`${PATH}/check`)), is: 'go' })
  expect(again.status).toBe(422)
  expect(sheet()?.decision?.on).toBe(DAY)
  expect(again.text).toContain('cannot be “go”')
})

test('a form that was open since yesterday does not bring its ticks into today', async () => {
  const stale = await standing(`${PATH}/check`)
  expect(stale.done).toContain('sting-plan')
  yard.setDay('2026-06-13')
  const answer = await yard.post(`${PATH}/check`, { ...stale, on: '', hottestC: '75', is: 'go' })
  expect(answer.status).toBe(422)
  expect(sheet()?.check.done).toEqual([])
  expect(sheet()?.decision?.on).toBe(DAY)
})

test('gas that comes to light after “Go” holds the opening until its trade has cleared it', async () => {
  const site = await standing(`${PATH}/site`)
  expect((await yard.post(`${PATH}/site`, { ...site, behind: ['gas', 'insulation'] })).status).toBe(303)
  // Nothing offers to open it.
  expect((await yard.get(`${PATH}/work`)).text).not.toContain('value="openedAt"')
  const version = (): string => String(yard.store.removals.get(ID)?.last.version)
  const open = () =>
    yard.post(`${PATH}/work`, { version: version(), outdoorC: '75', now: 'openedAt', water: 'yes' })
  expect((await open()).status).toBe(422)
  // Neither a tap takes it off …
  expect(
    (await yard.post(`${PATH}/site`, { ...site, version: version(), behind: 'none-detector' })).status,
  ).toBe(422)
  // … nor the kind of bees, nor the customer's word.
  await yard.post(`${PATH}/job`, { version: version(), name: 'Ottoline Fairweather', what: 'swarm' })
  const clear = {
    hazard: 'gas',
    'trade-gas.as': 'gas-fitter',
    'trade-gas.licence': '4711',
    'trade-gas.on': DAY,
    'trade-gas.says': 'clear',
    photos: PAPER,
  }
  const own = await yard.post(`${PATH}/clear`, {
    ...clear,
    seen: seen(),
    'trade-gas.who': 'Ottoline Fairweather',
  })
  expect(own.status).toBe(422)
  expect((await open()).status).toBe(422)
  expect(sheet()?.work.openedAt).toBeUndefined()
  expect(sheet()?.site.behind).toContain('gas')
})

test('times by hand without a “Go” are kept only with a name and a reason, and stay unmet', async () => {
  const { decision: _, ...undecided } = but({})
  const other = ID.replace(/9$/, '8')
  const path = `/removals/${other}`
  const kept = () => yard.store.removals.get(other)?.last.sheet.work
  yard.store.removals.save(other, 0, undecided, { savedAt: `${DAY}T08:00:00.000Z`, savedBy: 'Ines' })
  for (const said of [
    { openedAt: '09:00' },
    { boxedAt: '11:00' },
    { queen: 'caged' },
    { 'bees.frames': '5' },
  ]) {
    const answer = await yard.post(`${path}/work`, { version: '1', on: DAY, ...said })
    expect(answer.status, JSON.stringify(said)).toBe(422)
    expect(answer.text).toContain('name="withoutGo.why"')
    expect(kept()).toEqual({})
  }
  const times = { version: '1', on: DAY, openedAt: '09:00', boxedAt: '11:00' }
  const made = await yard.post(`${path}/work`, { ...times, 'withoutGo.why': 'could-not-wait' })
  expect(made.status).toBe(303)
  expect(kept()?.withoutGo).toMatchObject({ why: 'could-not-wait', by: 'Ines', on: DAY, at: '12:00' })
  for (const page of [path, '/removals'])
    expect(wordsOf((await yard.get(page)).text), page).toMatch(
      /Begun without a “go”.*It could not wait \(Ines, 2026-06-12 12:00\)/,
    )
  await yard.post('/intake', { ...INTAKE, on: DAY, otherJob: 'yes' })
  const today = await yard.get('/')
  expect(wordsOf(today.text)).toContain('1 removal was begun without a “go”')
  // A go that is decided afterwards does not unsay it, nor does another save.
  await yard.post(`${path}/work`, { version: '2', on: DAY, openedAt: '09:10', boxedAt: '11:00' })
  expect(kept()?.withoutGo?.why).toBe('could-not-wait')
})

test('times by hand on the day of a “Go” that stands need no reason; over gas that came to light they do', async () => {
  const hand = (more: object) =>
    yard.post(`${PATH}/work`, {
      version: '1',
      on: DAY,
      openedAt: '11:00',
      water: 'yes',
      outdoorC: '75',
      ...more,
    })
  const site = await standing(`${PATH}/site`)
  const version = (): string => String(yard.store.removals.get(ID)?.last.version)
  expect((await yard.post(`${PATH}/site`, { ...site, behind: ['gas', 'insulation'] })).status).toBe(303)
  expect((await hand({ version: version() })).status).toBe(422)
  expect(sheet()?.work.openedAt).toBeUndefined()
  const other = ID.replace(/9$/, '4')
  const decision = { is: 'go' as const, by: 'Ines', on: DAY, unmet: [], ...placeOf(READY) }
  yard.store.removals.save(
    other,
    0,
    { ...READY, decision },
    { savedAt: `${DAY}T08:00:00.000Z`, savedBy: 'Ines' },
  )
  yard.setDay('2026-06-13')
  const late = (more: object) =>
    yard.post(`/removals/${other}/work`, {
      version: '1',
      on: DAY,
      openedAt: '11:00',
      water: 'yes',
      outdoorC: '75',
      ...more,
    })
  expect((await late({})).status, 'the day that stood in the form answers for nothing').toBe(422)
  expect((await late({ 'withoutGo.why': 'that-day' })).status, 'written up the day after').toBe(303)
  expect(yard.store.removals.get(other)?.last.sheet.work.withoutGo).toBeUndefined()
})

test('“Looked: none” does not go along to another wall: it is asked again, on the form of that wall', async () => {
  const site = await standing(`${PATH}/site`)
  expect(site.behind).toEqual(['insulation'])
  // The wall is changed with all that stood in the form; then the answers that were given of the old one are tapped again.
  expect((await yard.post(`${PATH}/site`, { ...site, where: 'the north wall' })).status).toBe(303)
  const shown = await standing(`${PATH}/site`)
  expect([shown.behind, shown.hazards]).toEqual([undefined, undefined])
  const go = async () => yard.post(`${PATH}/check`, { ...(await standing(`${PATH}/check`)), is: 'go' })
  const answer = await go()
  expect(answer.status).toBe(422)
  expect(wordsOf(answer.text)).toContain('nobody has looked since')
  expect((await yard.get(`${PATH}/work`)).text).not.toContain('value="openedAt"')
  await yard.post(`${PATH}/site`, { ...shown, behind: ['insulation'], hazards: 'none-new' })
  // What was ticked at the other wall is not ticked at this one.
  expect((await standing(`${PATH}/check`)).done).toBeUndefined()
  expect((await go()).status).toBe(422)
  const check = await standing(`${PATH}/check`)
  const done = READY.check.done ?? []
  expect((await yard.post(`${PATH}/check`, { ...check, done, wires: 'none', is: 'go' })).status).toBe(303)
  expect(sheet()?.decision).toMatchObject({ by: 'Ines', where: 'the north wall' })
})

test('another address: who is about is asked there too', async () => {
  const call = await standing(`${PATH}/job`)
  expect(call.bystanders).toEqual(['none'])
  expect((await yard.post(`${PATH}/job`, { ...call, address: '9 Other Lane' })).status).toBe(303)
  expect((await standing(`${PATH}/job`)).bystanders).toBeUndefined()
  const answer = await yard.post(`${PATH}/check`, { ...(await standing(`${PATH}/check`)), is: 'go' })
  expect(answer.status).toBe(422)
  expect(wordsOf(answer.text)).toContain('asked of another address')
})

test('whoever is signed in decides, whatever name is sent', async () => {
  const check = await standing(`${PATH}/check`)
  expect((await yard.get(`${PATH}/check`)).text).not.toContain('name="by"')
  await yard.post(`${PATH}/check`, { ...check, by: 'ok', is: 'wait' })
  expect(sheet()?.decision).toMatchObject({ is: 'wait', by: 'Ines' })
})

test('an allergic person goes off the sheet with a reason, which stays', async () => {
  const call = await standing(`${PATH}/job`)
  await yard.post(`${PATH}/job`, { ...call, bystanders: ['allergic', 'children'] })
  const version = (): string => String(yard.store.removals.get(ID)?.last.version)
  const off = (more: object) =>
    yard.post(`${PATH}/job`, { ...call, version: version(), bystanders: 'none', ...more })
  const asked = await off({})
  expect(asked.status).toBe(422)
  expect(asked.text).toContain('name="gone.allergic"')
  expect(sheet()?.site.bystanders).toContain('allergic')
  expect((await off({ 'gone.allergic': 'left' })).status, 'the children too').toBe(422)
  expect((await off({ 'gone.allergic': 'left', 'gone.children': 'mistake' })).status).toBe(303)
  expect(sheet()?.site.bystanders).toEqual([])
  expect(wordsOf((await yard.get(PATH)).text)).toContain('Somebody allergic, not so any more, Ines')
  // Back again: cared for anew.
  await yard.post(`${PATH}/job`, { ...call, version: version(), bystanders: 'allergic' })
  const answer = await yard.post(`${PATH}/check`, { ...(await standing(`${PATH}/check`)), is: 'go' })
  expect(answer.status).toBe(422)
  expect(wordsOf(answer.text)).toContain('the allergic person cared for')
})

/** The sheet with something that is not so, and what is shown of it to be signed for. */
async function unticked(item: string): Promise<{ text: string; of: string }> {
  const check = await standing(`${PATH}/check`)
  const done = (check.done as string[]).filter((d) => d !== item)
  await yard.post(`${PATH}/check`, { ...check, done, is: '' })
  const { text } = await yard.get(`${PATH}/second?item=${item}`)
  return { text, of: /name="of" value="([^"]*)"/.exec(text)?.[1] ?? '' }
}

test('a second person with an account types its own passphrase, and nobody draws under that name', async () => {
  await yard.account('Bram')
  const { text, of } = await unticked('ladder-person')
  expect(text).toContain('value="Bram"')
  expect(text).not.toContain('value="Ines"')
  // This can kill: nobody without an account.
  expect(text).not.toContain('data-pad-field')
  const sign = (by: string, more: object) =>
    yard.post(`${PATH}/second`, {
      item: 'ladder-person',
      of,
      'ladder-person.by': by,
      'ladder-person.why': 'stays',
      ...more,
    })
  const drawn = { drawing: DRAWING, 'ladder-person.phone': '555 0177' }
  expect((await sign('Bram', {})).status).toBe(422)
  expect((await sign('Bram', drawn)).status, 'drawn by whoever holds the telephone').toBe(422)
  const wrong = await sign('Bram', { passphrase: 'slow lantern over gravel ' })
  expect(wrong.status).toBe(422)
  expect(wrong.text).not.toContain('slow lantern')
  expect((await sign('Bram Oyelaran', { ...drawn, passphrase: PASSPHRASE })).status).toBe(422)
  expect((await sign('Zed Quill', drawn)).status, 'anybody').toBe(422)
  expect(sheet()?.check.seconds).toBeUndefined()
  expect((await sign('Bram', { passphrase: PASSPHRASE })).status).toBe(303)
  expect(sheet()?.check.seconds).toMatchObject([{ by: 'Bram', why: 'stays', account: true }])
  expect(JSON.stringify(sheet())).not.toContain('slow lantern')
  expect((await yard.post(`${PATH}/check`, { ...(await standing(`${PATH}/check`)), is: 'go' })).status).toBe(
    303,
  )
})

test('a second person without one: name, drawing and their own telephone, and not for what can kill', async () => {
  const { text, of } = await unticked('exclusion')
  expect(text).toContain('data-pad-field')
  const sign = (by: string, drawing: string, phone = '555 0177') =>
    yard.post(`${PATH}/second`, {
      item: 'exclusion',
      of,
      'exclusion.by': by,
      'exclusion.why': 'seen',
      'exclusion.phone': phone,
      drawing,
    })
  for (const [by, drawn, phone] of [
    ['Zed Q', DRAWING],
    ['nobody', DRAWING],
    ['Zed Quill', ''],
    ['Zed Quill', '[[[5,5],[6,6]]]'],
    ['Zed Quill', '[[[5,5],[150,5]]]'],
    ['Zed Quill', '[]'],
    ['Zed Quill', DRAWING, ''],
    ['Jim Fairweather', DRAWING],
    ['Ines Albrecht', DRAWING],
  ] as const)
    expect((await sign(by, drawn, phone)).status, `${by} ${drawn}`).toBe(422)
  expect((await sign('Zed Quill', DRAWING)).status).toBe(303)
  expect(sheet()?.check.seconds).toMatchObject([
    { by: 'Zed Quill', why: 'seen', phone: '555 0177', path: expect.stringContaining('M40') },
  ])
})

test('gas is not cleared by a name and a number: its paper is photographed', async () => {
  const site = await standing(`${PATH}/site`)
  await yard.post(`${PATH}/site`, { ...site, behind: ['gas', 'insulation'] })
  const clear = (more: object) =>
    yard.post(`${PATH}/clear`, {
      seen: seen(),
      hazard: 'gas',
      'trade-gas.as': 'gas-fitter',
      'trade-gas.who': 'Edda Brandt',
      'trade-gas.licence': '4711',
      'trade-gas.on': DAY,
      'trade-gas.says': 'clear',
      ...more,
    })
  const bare = await clear({})
  expect(bare.status).toBe(422)
  expect(wordsOf(bare.text)).toContain('is missing: their paper, the tag on the line, or the test result')
  expect((await clear({ photos: 'b'.repeat(64) })).status, 'one that is only named').toBe(422)
  expect((await clear({ photos: PAPER })).status).toBe(303)
  expect(sheet()?.check.clearances).toMatchObject([{ photo: PAPER }])
})

test('wires near bees or ladder: asked at every job, and they do not go off by another look', async () => {
  const go = async (wires: string) =>
    yard.post(`${PATH}/check`, { ...(await standing(`${PATH}/check`)), wires, is: 'go' })
  expect(wordsOf((await go('')).text)).toContain('wires near bees or ladder')
  expect((await go('unknown')).status).toBe(422)
  expect((await go('near')).status).toBe(422)
  expect(sheet()?.site.nearWires).toBe(true)
  const back = await go('none')
  expect(back.status).toBe(422)
  expect(wordsOf(back.text)).toContain('wires, meter or pole near')
  const clear = {
    hazard: 'near-wires',
    'trade-near-wires.as': 'supplier',
    'trade-near-wires.who': 'Quarry Power Supply',
    'trade-near-wires.licence': 'ticket 4711',
    'trade-near-wires.on': DAY,
    'trade-near-wires.says': 'clear',
    photos: PAPER,
  }
  expect((await yard.post(`${PATH}/clear`, { ...clear, seen: seen() })).status).toBe(303)
  expect((await go('near')).status).toBe(303)
})

test('how fierce they are is asked, and not knowing is met as fierce', async () => {
  const { temper: _t, africanized: _a, ...site } = READY.site
  yard.store.removals.save(ID, 1, { ...READY, site }, { savedAt: `${DAY}T09:00:00.000Z`, savedBy: 'Ines' })
  const go = async () => yard.post(`${PATH}/check`, { ...(await standing(`${PATH}/check`)), is: 'go' })
  expect(wordsOf((await go()).text)).toContain('asked how they behave, and of Africanized bees')
  const shown = await standing(`${PATH}/site`)
  await yard.post(`${PATH}/site`, { ...shown, temper: 'unknown', africanized: 'no' })
  expect(sheet()?.site.temper).toBe('unknown')
  const check = await standing(`${PATH}/check`)
  const done = (check.done as string[]).filter((d) => d !== 'fierce')
  expect((await yard.post(`${PATH}/check`, { ...check, done, is: 'go' })).status).toBe(422)
})

test('a form that lay open over night does not open it on yesterday’s temperature', async () => {
  const stale = await standing(`${PATH}/work`)
  expect(stale.shownOn).toContain(DAY)
  yard.setDay('2026-06-13')
  yard.store.removals.save(
    ID,
    1,
    {
      ...READY,
      job: { ...READY.job, plannedOn: '2026-06-13' },
      check: { ...READY.check, on: '2026-06-13', doneOn: '2026-06-13' },
      decision: { is: 'go', by: 'Ines', on: '2026-06-13', unmet: [], ...placeOf(READY) },
    },
    { savedAt: '2026-06-13T08:00:00.000Z', savedBy: 'Ines' },
  )
  const open = (more: object) =>
    yard.post(`${PATH}/work`, {
      ...stale,
      version: '2',
      outdoorC: '75',
      now: 'openedAt',
      water: 'yes',
      ...more,
    })
  const answer = await open({})
  expect(answer.status).toBe(422)
  expect(answer.text).toContain('How hot is it now?')
  expect(sheet()?.work.openedAt).toBeUndefined()
  expect(
    (await open({ version: String(yard.store.removals.get(ID)?.last.version), shownOn: '2026-06-13' }))
      .status,
  ).toBe(303)
  expect(sheet()?.work).toMatchObject({ on: '2026-06-13', openedAt: '12:00' })
})

test('a temperature that passed once is asked again, one over the limit stands until a second person has signed', async () => {
  const at = async (outdoorC: number): Promise<string> => {
    const id = ID.replace(/9$/, outdoorC > 30 ? '7' : '6')
    const work = { on: DAY, outdoorC, water: true }
    yard.store.removals.save(id, 0, { ...READY, work }, { savedAt: `${DAY}T11:30:00.000Z`, savedBy: 'Ines' })
    return String((await standing(`/removals/${id}/work`)).outdoorC)
  }
  expect(await at(20)).toBe('')
  expect(await at(36)).not.toBe('')
})

test('what comes to light once it is open is said on top: stop', async () => {
  await yard.post(`${PATH}/work`, { version: '1', outdoorC: '75', now: 'openedAt', water: 'yes' })
  const before = (await yard.get(PATH)).text
  expect(before).not.toContain('id="unmet"')
  const site = await standing(`${PATH}/site`)
  await yard.post(`${PATH}/site`, { ...site, behind: ['gas', 'insulation'] })
  const { text } = await yard.get(PATH)
  expect(text).toContain('id="unmet"')
  expect(text).toContain('Stop. Not yet: gas pipe cleared')
  // The work is written down all the same: what happened cannot be refused.
  const version = String(yard.store.removals.get(ID)?.last.version)
  expect(
    (await yard.post(`${PATH}/work`, { version, now: 'boxedAt', on: DAY, openedAt: '12:00' })).status,
    'going on over gas is answered for',
  ).toBe(422)
  const because = { 'withoutGo.why': 'open-already', now: 'boxedAt', on: DAY, openedAt: '12:00' }
  expect((await yard.post(`${PATH}/work`, { version, ...because })).status).toBe(303)
  expect(sheet()?.work.withoutGo?.unmet.join()).toContain('gas pipe cleared')
})

test('nobody who has written on the sheet clears its gas', async () => {
  const site = await standing(`${PATH}/site`)
  await yard.post(`${PATH}/site`, { ...site, behind: ['gas', 'insulation'] })
  const clear = (who: string) =>
    yard.post(`${PATH}/clear`, {
      seen: seen(),
      hazard: 'gas',
      'trade-gas.who': who,
      'trade-gas.as': 'gas-fitter',
      'trade-gas.licence': 'GF 4711',
      'trade-gas.on': DAY,
      'trade-gas.says': 'clear',
      photos: PAPER,
    })
  // Bram wrote a version of it once, and is at home today.
  const last = yard.store.removals.get(ID)?.last
  const stamp = { savedAt: `${DAY}T09:00:00.000Z`, savedBy: 'Bram' }
  const told = { ...last?.sheet, job: { ...last?.sheet.job, told: 'Bees.' } }
  expect(yard.store.removals.save(ID, last?.version ?? 0, told, stamp).ok).toBe(true)
  expect((await clear('Bram Oyelaran')).status).toBe(422)
  expect((await clear('Edda Brandt')).status).toBe(303)
  expect(sheet()?.check.clearances).toMatchObject([{ address: '4 Invented Row', where: 'left of the porch' }])
})

test('“Looked: none” together with a gas pipe is a gas pipe', async () => {
  const site = await standing(`${PATH}/site`)
  await yard.post(`${PATH}/site`, { ...site, behind: ['none', 'gas', 'insulation'] })
  expect(sheet()?.site.behind).toEqual(['gas', 'insulation'])
})

test('the same “Go” sent twice is one, and never gets past what came to light between', async () => {
  const check = await standing(`${PATH}/check`)
  const { decision: _, ...undecided } = but({ check: { ...READY.check } })
  const id = ID.replace(/9$/, '5')
  yard.store.removals.save(id, 0, undecided, { savedAt: `${DAY}T08:00:00.000Z`, savedBy: 'Ines' })
  const go = () => yard.post(`/removals/${id}/check`, { ...check, version: '1', is: 'go' })
  expect((await go()).status).toBe(303)
  expect((await go()).status).toBe(303)
  const { last } = yard.store.removals.get(id) ?? {}
  yard.store.removals.save(
    id,
    last?.version ?? 0,
    { ...last?.sheet, site: { ...last?.sheet.site, behind: ['electric-in-cut', 'insulation'] } },
    { savedAt: `${DAY}T09:00:00.000Z`, savedBy: 'Bram' },
  )
  expect((await go()).status).toBe(422)
  const opening = { version: String((last?.version ?? 0) + 1), outdoorC: '75', now: 'openedAt', water: 'yes' }
  expect((await yard.post(`/removals/${id}/work`, opening)).status).toBe(422)
})

test('a ladder, a nest, droppings: nothing that asks for care goes off by a tap', async () => {
  const version = (): string => String(yard.store.removals.get(ID)?.last.version)
  const call = await standing(`${PATH}/job`)
  const ground = await yard.post(`${PATH}/job`, {
    ...call,
    version: version(),
    access: 'ground',
    heightM: '',
  })
  expect(ground.status).toBe(422)
  expect(ground.text).toContain('name="gone.climb"')
  const site = await standing(`${PATH}/site`)
  await yard.post(`${PATH}/site`, { ...site, hazards: 'droppings' })
  const off = await yard.post(`${PATH}/site`, { ...site, version: version(), hazards: 'none-tested' })
  expect(off.text).toContain('name="gone.droppings"')

  const other = ID.replace(/9$/, '3')
  const { where: _w, sheathingMm: _s, behind: _b, ...bare } = READY.site
  const { cutMm: _c, ...check } = READY.check
  const nest = { ...READY, site: bare, check }
  yard.store.removals.save(other, 0, nest, { savedAt: `${DAY}T08:00:00.000Z`, savedBy: 'Ines' })
  const told = await standing(`/removals/${other}/job`)
  const swarm = await yard.post(`/removals/${other}/job`, { ...told, what: 'swarm', since: 'today' })
  expect(swarm.text).toContain('name="gone.nest"')
})

test('work that goes on on another day waits for a “go” of that day, or a reason', async () => {
  await yard.post(`${PATH}/work`, { version: '1', outdoorC: '75', now: 'openedAt', water: 'yes' })
  yard.setDay('2026-06-13')
  const work = await standing(`${PATH}/work`)
  const box = (more: object) => yard.post(`${PATH}/work`, { ...work, version: '2', now: 'boxedAt', ...more })
  expect((await box({})).status).toBe(422)
  expect((await box({ 'withoutGo.why': 'open-already' })).status).toBe(303)
  expect(sheet()?.work).toMatchObject({ boxedAt: '12:00', withoutGo: { on: '2026-06-13' } })
})

test('no bees come of a place where nothing was begun', async () => {
  const answer = await yard.get(`${PATH}/intake`)
  expect([answer.status, answer.to]).toEqual([303, `${PATH}/work#now`])
})

test('who came, looked and left has begun nothing', async () => {
  const { decision: _, ...undecided } = but({})
  const other = ID.replace(/9$/, '2')
  yard.store.removals.save(other, 0, undecided, { savedAt: `${DAY}T08:00:00.000Z`, savedBy: 'Ines' })
  const seen = { version: '1', on: DAY, arrivedAt: '09:00', leftAt: '10:00' }
  expect((await yard.post(`/removals/${other}/work`, seen)).status).toBe(303)
  const { text } = await yard.get(`/removals/${other}`)
  expect(text).not.toContain('Begun without')
  expect(text).not.toContain('Log the intake')
})

test('another word for the wall does not take gas, wires or asbestos off', async () => {
  const site = await standing(`${PATH}/site`)
  await yard.post(`${PATH}/site`, { ...site, behind: ['gas', 'electric', 'insulation'], hazards: 'asbestos' })
  const version = (): string => String(yard.store.removals.get(ID)?.last.version)
  for (const moved of [{ where: 'left of the porch, low' }, { surface: 'siding' }]) {
    await yard.post(`${PATH}/site`, {
      ...(await standing(`${PATH}/site`)),
      ...moved,
      behind: ['gas', 'electric', 'insulation'],
      hazards: 'asbestos',
    })
    const off = await yard.post(`${PATH}/site`, {
      ...(await standing(`${PATH}/site`)),
      version: version(),
      behind: 'none-detector',
      hazards: 'none-tested',
      'gone.gas': 'elsewhere',
      'gone.electric': 'elsewhere',
      'gone.asbestos': 'elsewhere',
      'gone.insulation': 'elsewhere',
    })
    expect(off.status).toBe(422)
    expect(wordsOf(off.text)).toContain('Another place has a sheet of its own')
  }
  await yard.post(`${PATH}/job`, { ...(await standing(`${PATH}/job`)), address: '9 Other Lane' })
  const off = await yard.post(`${PATH}/site`, {
    ...site,
    version: version(),
    'gone.gas': 'elsewhere',
    hazards: 'none-tested',
  })
  expect(off.status).toBe(422)
  expect(sheet()?.site.behind).toContain('gas')
  expect(sheet()?.site.hazards).toContain('asbestos')
})

test('water that is said to be missing is not there because it is opened', async () => {
  const answer = await yard.post(`${PATH}/work`, {
    version: '1',
    outdoorC: '75',
    water: 'no',
    now: 'openedAt',
  })
  expect(answer.status).toBe(422)
  expect(sheet()?.work.openedAt).toBeUndefined()
})

test('what was opened before it was decided was not opened on that', async () => {
  await yard.post(`${PATH}/check`, { ...(await standing(`${PATH}/check`)), is: 'go' })
  const version = (): string => String(yard.store.removals.get(ID)?.last.version)
  const times = { on: DAY, openedAt: '06:00', boxedAt: '08:00', outdoorC: '75', water: 'yes' }
  expect((await yard.post(`${PATH}/work`, { ...times, version: version() })).status).toBe(422)
})

test('a call that is sent again with more on it is saved, and not only said to be', async () => {
  const id = ID.replace(/9$/, '1')
  const call = {
    id,
    version: '0',
    name: 'Ottoline Fairweather',
    address: '4 Invented Row',
    bystanders: 'none',
  }
  expect((await yard.post('/removals/new', call)).status).toBe(303)
  expect((await yard.post('/removals/new', { ...call, bystanders: 'allergic' })).status).toBe(303)
  expect(yard.store.removals.get(id)?.last.sheet.site.bystanders).toEqual(['allergic'])
})

test('without an address there is nowhere to send an ambulance to', async () => {
  const { address: _, ...job } = READY.job
  yard.store.removals.save(ID, 1, but({ job }), { savedAt: `${DAY}T09:00:00.000Z`, savedBy: 'Ines' })
  const answer = await yard.post(`${PATH}/check`, { ...(await standing(`${PATH}/check`)), is: 'go' })
  expect(answer.status).toBe(422)
  expect(wordsOf(answer.text)).toContain('plan for stings')
})

test('an intake beside its open sheet is not passed by in silence', async () => {
  const shown = await yard.get('/intake')
  expect(wordsOf(shown.text)).toContain('Ottoline Fairweather, 4 Invented Row')
  expect(shown.text).toContain(`href="${PATH}#now"`)
  const log = (more: object) => yard.post('/intake', { ...INTAKE, on: DAY, ...more })
  const today = await log({})
  expect(today.status).toBe(422)
  expect(wordsOf(today.text)).toContain('These bees are of none of the jobs above')
  // Of another kind, or another day: only the place itself gives it away.
  const elsewhere = { on: '2026-06-11', 'removal.removedOn': '2026-06-11', 'removal.type': 'swarm' }
  yard.setDay('2026-06-14')
  expect((await log({ ...elsewhere, 'removal.site': 'at 4, invented row' })).status).toBe(422)
  expect((await log({ ...elsewhere, 'removal.site': 'Miss Ottoline FAIRWEATHER' })).status).toBe(422)
  expect((await log({ ...elsewhere, 'removal.site': '9 Other Lane' })).status).toBe(303)
  expect((await log({ colony: 'W-13', stand: '5', otherJob: 'yes' })).status).toBe(303)
})

test('no bees come of a sheet on which nothing was begun, by whatever form its id is sent', async () => {
  const answer = await yard.post('/intake', { ...INTAKE, on: DAY, id: ID })
  expect([answer.status, answer.to]).toEqual([303, `${PATH}/work#now`])
  expect(yard.store.colony('W-12')).toBeNull()
})

test('bees that came of a sheet all the same are marked in the list too', async () => {
  const { decision: _, ...undecided } = but({})
  const other = ID.replace(/9$/, '2')
  yard.store.removals.save(other, 0, undecided, { savedAt: `${DAY}T08:00:00.000Z`, savedBy: 'Ines' })
  await yard.post('/intake', { ...INTAKE, on: DAY, otherJob: 'yes' })
  const colony = yard.store.colony('W-12')?.summary.id ?? ''
  yard.store.removals.link(other, colony, { savedAt: `${DAY}T12:00:00.000Z`, savedBy: 'Ines' })
  for (const page of ['/removals', `/removals/${other}`])
    expect(wordsOf((await yard.get(page)).text), page).toContain('Begun without a “go” . Nobody has said why')
})

test('what is said where “none” was tapped is read once more above “Go”', async () => {
  const site = { ...READY.site, behind: [], behindNote: 'Grey pipe, and a cable.', surface: 'grey board' }
  const job = { ...READY.job, told: 'Bees in the wall.' }
  yard.store.removals.save(ID, 1, but({ site, job }), { savedAt: `${DAY}T09:00:00.000Z`, savedBy: 'Ines' })
  const { text } = await yard.get(`${PATH}/check`)
  const words = wordsOf(text.slice(text.indexOf('checklist'), text.indexOf('value="go"')))
  expect(words).toContain(
    'Read: all it says of danger is tapped “grey board” “Bees in the wall.” “Grey pipe, and a cable.”',
  )
})

test('no “go” for a job that has ended, for wasps, or with a dot for a reason', async () => {
  const { decision: _, ...undecided } = but({ agreement: {} })
  const save = (s: object, version: number) =>
    yard.store.removals.save(
      ID,
      version,
      { ...undecided, ...s },
      { savedAt: `${DAY}T09:00:00.000Z`, savedBy: 'Ines' },
    )
  const go = async (reason: string) =>
    (await yard.post(`${PATH}/check`, { ...(await standing(`${PATH}/check`)), is: 'go', reason })).status
  save({}, 1)
  expect(await go('.')).toBe(422)
  save({ ended: { on: DAY, why: 'They flew.' } }, yard.store.removals.get(ID)?.last.version ?? 0)
  expect(await go('Signs tonight.')).toBe(422)
  save({ job: { ...READY.job, bees: 'wasps' } }, yard.store.removals.get(ID)?.last.version ?? 0)
  expect(await go('Signs tonight.')).toBe(422)
  save({}, yard.store.removals.get(ID)?.last.version ?? 0)
  expect(await go('Signs tonight.')).toBe(303)
})

test('a “go” that stands no more is not the word in the list, and does not lead to the removal', async () => {
  const site = await standing(`${PATH}/site`)
  await yard.post(`${PATH}/site`, { ...site, behind: ['gas', 'insulation'] })
  const { text } = await yard.get('/removals')
  expect(wordsOf(text)).toContain('No go any more')
  expect(wordsOf(text)).toContain('Stop. Not yet: gas pipe cleared')
  expect(text).toContain(`href="${PATH}/check#now"`)
  expect(text).not.toContain(`href="${PATH}/work#now"`)
  const sheetPage = (await yard.get(PATH)).text
  expect(wordsOf(sheetPage)).not.toContain('with nothing on the list unmet')
  // What stops it stands apart from what is to be met.
  expect(sheetPage).toMatch(/<li class="stops">\s*<span class="stop-mark">Stop<\/span>/)
})

test('work over gas says afterwards what was unmet', async () => {
  const site = await standing(`${PATH}/site`)
  await yard.post(`${PATH}/site`, { ...site, behind: ['gas', 'insulation'] })
  const version = String(yard.store.removals.get(ID)?.last.version)
  const times = { on: DAY, openedAt: '11:00', boxedAt: '11:30', 'withoutGo.why': 'could-not-wait' }
  expect((await yard.post(`${PATH}/work`, { ...times, version })).status).toBe(303)
  const words = wordsOf((await yard.get(PATH)).text)
  expect(words).toContain('What was unmet then')
  expect(words).toContain('It was go, decided by Ines')
})

test('a second opening under the same sheet asks everything anew', async () => {
  const version = (): string => String(yard.store.removals.get(ID)?.last.version)
  await yard.post(`${PATH}/work`, { version: '1', outdoorC: '75', now: 'openedAt', water: 'yes' })
  await yard.post(`${PATH}/work`, { ...(await standing(`${PATH}/work`)), now: 'boxedAt' })
  expect(sheet()?.work).toMatchObject({ on: DAY, boxedAt: '12:00' })
  expect(sheet()?.work.withoutGo).toBeUndefined()
  yard.setDay('2026-06-18')
  const again = { ...(await standing(`${PATH}/work`)), on: '2026-06-18', openedAt: '09:00', boxedAt: '11:00' }
  const answer = await yard.post(`${PATH}/work`, { ...again, version: version() })
  expect(answer.status).toBe(422)
  expect(answer.text).toContain('name="withoutGo.why"')
  const why = { 'withoutGo.why': 'could-not-wait' }
  expect((await yard.post(`${PATH}/work`, { ...again, ...why, version: version() })).status).toBe(303)
  expect(wordsOf((await yard.get(PATH)).text)).toContain('Begun without a “go”')
})

test('boxed by hand on a job that was opened yesterday: on which day is asked', async () => {
  await yard.post(`${PATH}/work`, { version: '1', outdoorC: '75', now: 'openedAt', water: 'yes' })
  yard.setDay('2026-06-13')
  // What is asked of a day is asked again.
  expect((await yard.get(PATH)).text).toContain('id="unmet"')
  const work = { ...(await standing(`${PATH}/work`)), on: DAY, boxedAt: '15:00', version: '2' }
  const answer = await yard.post(`${PATH}/work`, work)
  expect(answer.status).toBe(422)
  expect(answer.text).toContain('value="that-day"')
  expect((await yard.post(`${PATH}/work`, { ...work, 'withoutGo.why': 'that-day' })).status).toBe(303)
  expect(sheet()?.work.withoutGo).toBeUndefined()
})

test('a call that is sent again over what somebody else wrote since is a clash, and not saved over', async () => {
  const id = ID.replace(/9$/, '1')
  const call = {
    id,
    version: '0',
    name: 'Ottoline Fairweather',
    address: '4 Invented Row',
    bystanders: 'none',
  }
  await yard.post('/removals/new', call)
  const path = `/removals/${id}`
  const dog = { bystanders: 'animals', bystandersNote: 'The dog is chained.' }
  expect((await yard.post(`${path}/job`, { ...call, ...dog, version: '1' })).status).toBe(303)
  const late = await yard.post('/removals/new', { ...call, wayIn: 'Gate code 1234' })
  expect(late.status).toBe(409)
  expect(yard.store.removals.get(id)?.last.sheet.site.bystanders).toEqual(['animals'])
})

test('what its trade cleared days ago, good for one, does not go off with a word', async () => {
  const site = await standing(`${PATH}/site`)
  await yard.post(`${PATH}/site`, { ...site, behind: ['electric-in-cut', 'insulation'] })
  const clear = {
    hazard: 'electric-in-cut',
    'trade-electric-in-cut.as': 'electrician',
    'trade-electric-in-cut.who': 'Edda Brandt',
    'trade-electric-in-cut.licence': '4711',
    'trade-electric-in-cut.on': DAY,
    'trade-electric-in-cut.says': 'clear',
    photos: PAPER,
  }
  expect((await yard.post(`${PATH}/clear`, { ...clear, seen: seen() })).status).toBe(303)
  yard.setDay('2026-06-15')
  const version = String(yard.store.removals.get(ID)?.last.version)
  const off = { ...site, version, behind: ['insulation'], 'gone.electric-in-cut': 'removed' }
  expect((await yard.post(`${PATH}/site`, off)).status).toBe(422)
  expect(sheet()?.site.behind).toContain('electric-in-cut')
})

test('a form whose version nobody has is asked again, with nothing tapped that was seen', async () => {
  const check = await standing(`${PATH}/check`)
  const go = await yard.post(`${PATH}/check`, { ...check, version: '77', is: 'go' })
  expect(go.status).toBe(422)
  const shown = go.text.slice(go.text.indexOf('id="f-wires"'))
  expect(shown.slice(0, shown.indexOf('</form>'))).not.toMatch(/name="(done|wires)"[^>]*checked/)
  const site = await yard.post(`${PATH}/site`, { ...(await standing(`${PATH}/site`)), version: '' })
  expect(site.status).toBe(422)
  expect(site.text).not.toMatch(/name="(behind|hazards)"[^>]*checked/)
  expect(yard.store.removals.get(ID)?.last.version).toBe(1)
})

test('a second nest on the same day, on the same sheet, is opened anew', async () => {
  await yard.post(`${PATH}/work`, { version: '1', outdoorC: '75', now: 'openedAt', water: 'yes' })
  await yard.post(`${PATH}/work`, { ...(await standing(`${PATH}/work`)), now: 'boxedAt' })
  const site = { ...(await standing(`${PATH}/site`)), where: 'the gable' }
  expect((await yard.post(`${PATH}/site`, site)).status).toBe(303)
  const work = { ...(await standing(`${PATH}/work`)), openedAt: '12:30', boxedAt: '14:00' }
  const answer = await yard.post(`${PATH}/work`, work)
  expect(answer.status).toBe(422)
  expect(answer.text).toContain('name="withoutGo.why"')
})

test('another box a week later is not of the “go” of this job', async () => {
  await yard.post(`${PATH}/work`, { version: '1', outdoorC: '75', now: 'openedAt', water: 'yes' })
  await yard.post(`${PATH}/work`, { ...(await standing(`${PATH}/work`)), now: 'boxedAt' })
  const box = (more: object) => yard.post(`${PATH}/intake`, { ...INTAKE, on: DAY, ...more })
  expect((await box({ 'removal.removedOn': DAY })).status).toBe(303)
  yard.setDay('2026-06-20')
  const later = { on: '2026-06-20', colony: 'W-13', stand: '5' }
  expect((await box({ ...later, 'removal.removedOn': '2026-06-20' })).status).toBe(422)
  const stood = { ...later, 'removal.removedOn': DAY }
  expect((await box(stood)).status, 'of which opening is asked').toBe(422)
  expect((await box({ ...stood, thatOpening: 'yes' })).status, 'left standing for a week').toBe(303)
})
