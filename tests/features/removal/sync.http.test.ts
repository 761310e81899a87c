/**
 * Sheets that a phone wrote without signal, and what anybody could send by hand: taken by the same rules as the pages.
 * Invented people.
 */
import { beforeEach, describe, expect, test } from 'vitest'
import { TICKED } from '../../../src/features/removal/item.ts'
import { AS_TOLD } from '../../../src/features/removal/people.ts'
import { placeOf } from '../../../src/features/removal/place.ts'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { down, good, type Phone, phoneIn } from '../../support/phone.ts'
import { ORIGIN, type TestYard, testYard } from '../../support/yard-app.ts'
import { wordsOf } from '../../support/yard-on.ts'
import { but, DAY, DRAWN, PAPER, PHOTO, READY } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000001'

let yard: TestYard
beforeEach(async () => {
  yard = testYard({ day: DAY })
  await yard.services.photos.keep(PHOTO)
  yard.services.store.settings.set('yardName', 'Quarry yard')
})

/** With the hour of its ticks, as every form saves them: that of the “go” where a test says none. */
const tapped = (s: Sheet): Sheet =>
  s.decision?.at === undefined ? s : { ...s, check: { tickedAt: s.decision.at, ...s.check } }
const post = async (
  sheet: Sheet,
  { base = 0, over = false, as = 'beekeeper' as 'beekeeper' | 'operator', id = ID } = {},
) => {
  const answer = await yard.ask(as, '/removals/sync', {
    method: 'POST',
    headers: { 'Content-Type': 'application/json' },
    body: JSON.stringify({
      id,
      base,
      over: over && yard.services.store.removals.get(id)?.last.version,
      sheet: tapped(sheet),
    }),
  })
  return { status: answer.status, text: await answer.text() }
}
const kept = (): Sheet | undefined => yard.services.store.removals.get(ID)?.last.sheet
const page = async (): Promise<string> => (await yard.ask('beekeeper', `/removals/${ID}`)).text()

const signature = { how: 'paper', name: 'Ottoline Fairweather', on: DAY, terms: 'As agreed.' } as const
const go: Sheet['decision'] = { is: 'go', by: 'Bram', on: DAY, at: '08:00', unmet: [], ...placeOf(READY) }
const cleared = (s: Sheet, who: string): Sheet => ({
  ...s,
  check: {
    ...s.check,
    clearances: [
      {
        hazard: 'gas',
        as: 'gas-fitter',
        who,
        licence: 'GF 4711',
        on: DAY,
        photo: PAPER,
        says: 'clear',
        knew: ['gas'],
        ...placeOf(s),
      },
    ],
  },
})
/** Everything but clothing and tools, and somebody without an account who signs for that. */
const bare = but({ check: { ...READY.check, done: READY.check.done?.filter((t) => t !== 'exclusion') } })
const KIT = {
  item: 'exclusion',
  of: AS_TOLD.exclusion,
  by: 'Zed Quill',
  why: 'stays' as const,
  path: DRAWN,
  phone: '555 0177',
  on: DAY,
  ...placeOf(READY),
}
const gas = but({ site: { ...READY.site, behind: ['gas', 'insulation'] } })

describe('nothing gets in by the queue or by hand that no form would take', () => {
  test('what somebody else says is not known stays so over a phone that had not read it', async () => {
    const fierce = (africanized: 'no' | 'unknown'): Sheet => but({ site: { ...READY.site, africanized } })
    const { africanized: _, ...unsaid } = READY.site
    await post(but({ site: unsaid }))
    await post(fierce('unknown'), { base: 1, as: 'operator' })
    expect((await post(fierce('no'), { base: 1, over: true })).status).toBe(200)
    expect(kept()?.site.africanized).toBe('unknown')
    // Whoever has read it may have asked meanwhile.
    expect(
      await post(fierce('no'), { base: yard.services.store.removals.get(ID)?.last.version ?? 0 }),
    ).toMatchObject({ status: 200 })
    expect(kept()?.site.africanized).toBe('no')
  })

  test('a “go” with nothing unmet is taken, again as often as it comes', async () => {
    expect((await post({ ...READY, decision: go })).status).toBe(200)
    expect((await post({ ...READY, decision: go })).text).toContain('"version":1')
    expect(kept()?.decision?.is).toBe('go')
  })

  test.each<[string, Sheet]>([
    ['gas that no trade has cleared', gas],
    ['gas that the crew cleared itself', cleared(gas, 'bram')],
    ['a wall nobody looked into', but({ site: { type: 'wall', access: 'ground', bystanders: [] } })],
    ['38 °C', but({ check: { ...READY.check, hours: [{ at: '09:00', c: 38 }] } })],
    ['an empty sheet', { job: {}, site: {}, agreement: {}, check: {}, work: {} }],
  ])('no “go” over %s', async (_, sheet) => {
    const answer = await post({ ...sheet, decision: go })
    expect(answer.status).toBe(422)
    expect(kept()).toBeUndefined()
  })

  test('no “go” for a day that has not come, and none signed by one person as two', async () => {
    expect((await post({ ...READY, decision: { ...go, on: '2026-06-13' } })).text).toContain('has not come')
    const second = { ...KIT, by: 'Bram' }
    await yard.session('helper')
    const asTwo = { ...bare, check: { ...bare.check, seconds: [second] }, decision: go }
    expect((await post(asTwo)).text).toContain('must be a second person')
    const other = { ...asTwo, check: { ...asTwo.check, seconds: [KIT] } }
    expect((await post(other)).status).toBe(200)
  })

  test('what was cleared is not taken before the photo of its paper', async () => {
    const s = cleared(gas, 'Edda Brandt')
    const named = s.check.clearances?.map((x) => ({ ...x, photo: 'b'.repeat(64) })) ?? []
    const answer = await post({ ...s, check: { ...s.check, clearances: named }, decision: go })
    expect(answer.text).toContain('its photo has not come')
    expect((await post({ ...s, decision: go })).status).toBe(200)
    expect(kept()?.check.clearances?.[0]?.photo).toBe(PAPER)
  })

  test('nothing is ticked for a day that has not come', async () => {
    const answer = await post({ ...READY, check: { ...READY.check, doneOn: '2026-06-13' } })
    expect(answer.text).toContain('of a day that has not come')
  })

  test('nobody signs for gas in the place of its trade', async () => {
    await yard.session('helper')
    const second = { item: 'trade-gas', of: 'x', by: 'Teuila', why: 'seen' as const, on: DAY }
    const answer = await post({ ...gas, check: { ...gas.check, seconds: [second] } })
    expect(answer.text).toContain('no second person can sign for that')
  })

  test('nothing is signed blank', async () => {
    const blank = but({ job: { name: 'Ottoline' }, agreement: { signature } })
    expect((await post(blank)).text).toContain('nothing is signed blank')
    const lines = but({
      agreement: { ...READY.agreement, signature: { ...signature, terms: 'At ________.' } },
    })
    expect((await post(lines)).text).toContain('nothing is signed blank')
  })

  test('a helper is not let in, and learns nothing', async () => {
    const answer = await yard.ask('helper', '/removals/sync', { method: 'POST', body: '{}' })
    expect(answer.status).toBe(403)
  })
})

describe('another role', () => {
  test('a helper decides, clears, signs and opens nothing by any address, and a stranger neither', async () => {
    await post(READY)
    const acts: [string, Record<string, string>][] = [
      ['check', { version: '1', is: 'go' }],
      ['site', { version: '1', behind: 'none-detector' }],
      [
        'clear',
        { hazard: 'gas', 'trade-gas.who': 'Edda Brandt', 'trade-gas.licence': '4711', 'trade-gas.on': DAY },
      ],
      ['second', { item: 'not-alone', 'not-alone.by': 'Juno', 'not-alone.reason': 'I stay here with them.' }],
      ['work', { version: '1', outdoorC: '75', now: 'openedAt', water: 'yes' }],
      ['sign', { how: 'paper', name: 'Ottoline Fairweather', on: DAY }],
      ['end', { why: 'Left.' }],
      ['intake', { colony: 'W-1' }],
    ]
    for (const [act, fields] of acts)
      for (const role of ['helper', null] as const) {
        const { status } = await yard.post(role, `/removals/${ID}/${act}`, fields)
        expect(status, `${role} ${act}`).toBe(role === null ? 401 : 403)
      }
    expect(yard.services.store.removals.get(ID)?.versions).toHaveLength(1)
    expect(kept()?.decision).toBeUndefined()
    expect(yard.services.store.colony('W-1')).toBeNull()
  })
})

describe('two people, one sheet', () => {
  test('what one found takes the “go” of the other away, and the hazard stays', async () => {
    await post(READY)
    await post({ ...READY, site: gas.site }, { base: 1, as: 'beekeeper' })
    const answer = await post({ ...READY, decision: go }, { base: 1, as: 'beekeeper' })
    expect(answer.status).toBe(200)
    expect(kept()?.site.behind).toContain('gas')
    const words = await page()
    expect(words).toContain('no longer stands')
    expect(words).toContain('gas pipe cleared')
  })

  const begun: Sheet['work'] = { on: DAY, openedAt: '09:00', boxedAt: '11:00', outdoorC: 20, water: true }
  test('work that was begun without a “go” is kept with a name and a reason, and not otherwise', async () => {
    for (const work of [begun, { openedAt: '09:00' }, { boxedAt: '11:00' }, { queen: 'caged' as const }])
      expect((await post({ ...READY, work })).text).toContain('It was begun without a “go”: say why')
    const because = { why: 'could-not-wait' as const, by: 'Bram', on: DAY, at: '09:05', unmet: [] }
    const others = { ...begun, withoutGo: { ...because, by: 'Teuila' } }
    expect((await post({ ...READY, work: others })).text).toContain('signed by somebody else')
    const work = { ...begun, withoutGo: because }
    expect((await post({ ...READY, work })).status).toBe(200)
    expect(await page()).toContain('Begun without a “go”')
    // A go that is sent afterwards does not unsay it, and no sheet takes the reason off.
    const { withoutGo: _, ...plain } = work
    expect(
      (await post({ ...READY, decision: { ...go, reason: 'Decided late.' }, work: plain }, { base: 1 }))
        .status,
    ).toBe(200)
    expect(kept()?.work.withoutGo).toEqual(because)
    expect(await page()).toContain('Begun without a “go”')
  })

  test('what was opened with a “go” that fell afterwards is taken; what was opened after it fell is not', async () => {
    const fell = (at: string) => ({ ...go, fell: { by: 'Bram', on: DAY, at } })
    const opened = { ...begun, underGo: { by: 'Bram', on: DAY, at: '09:00' } }
    const found = { ...gas, decision: fell('09:20'), work: opened }
    expect((await post({ ...found, decision: fell('08:30') })).text).toContain('without a “go”')
    expect((await post({ ...found, work: begun })).text).toContain('without a “go”')
    expect((await post(found)).status).toBe(200)
    expect(await page()).not.toContain('Begun without a “go”')
  })
})

describe('days and hours that this server did not see', () => {
  const begun = (on: string): Sheet['work'] => ({
    on,
    openedAt: '09:00',
    boxedAt: '11:00',
    outdoorC: 20,
    water: true,
    underGo: { by: 'Bram', on, at: '09:00' },
  })
  const marked = async (): Promise<boolean> => (await page()).includes('Begun without a “go”')

  test('a whole job of today, made without signal, is as it says', async () => {
    expect((await post({ ...READY, decision: go, work: begun(DAY) })).status).toBe(200)
    expect(await marked()).toBe(false)
  })
  test('yesterday made up today is kept, and marked', async () => {
    yard.at('2026-06-13T12:00:00Z')
    expect((await post({ ...READY, decision: go, work: begun(DAY) })).status).toBe(200)
    expect(kept()?.work).toMatchObject({
      openedAt: '09:00',
      withoutGo: { why: 'sent-later', on: '2026-06-13' },
    })
    expect(await marked()).toBe(true)
  })
  test('nor is it seen by sending the “go” a moment before', async () => {
    yard.at('2026-06-13T12:00:00Z')
    await post({ ...READY, decision: go })
    await post({ ...READY, decision: go, work: begun(DAY) }, { base: 1 })
    expect(await marked()).toBe(true)
  })
  test('a “go” that this server had on the day stands for what is sent the day after', async () => {
    await post({ ...READY, decision: go })
    yard.at('2026-06-13T12:00:00Z')
    expect((await post({ ...READY, decision: go, work: begun(DAY) }, { base: 1 })).status).toBe(200)
    expect(await marked()).toBe(false)
  })
  test('a “go” that falls at an hour that has not come, over gas that was here all day', async () => {
    await post(gas)
    const fell = (at: string): Sheet => ({
      ...gas,
      decision: { ...go, fell: { by: 'Bram', on: DAY, at } },
      work: begun(DAY),
    })
    expect((await post(fell('23:59'), { base: 1 })).status).toBe(200)
    expect(kept()?.work.withoutGo?.unmet.join()).toContain('gas pipe cleared')
    const other = ID.replace(/1$/, '2')
    await post(gas, { id: other })
    await post(fell('11:59'), { base: 1, id: other })
    expect(yard.services.store.removals.get(other)?.last.sheet.work.withoutGo?.why).toBe('sent-later')
  })
})

describe('what a phone must not send', () => {
  test('a “go” that fell by what somebody else found does not come back by itself', async () => {
    await post(READY)
    await post({ ...READY, site: gas.site }, { base: 1 })
    await post({ ...READY, decision: go }, { base: 1 })
    expect(kept()?.decision?.fell).toBeDefined()
  })
  test('a “go” over a refusal, even where it is to stand over it', async () => {
    await yard.session('operator')
    await post(READY)
    const { store } = yard.services
    const refused = {
      is: 'refuse' as const,
      by: 'Ines',
      on: DAY,
      at: '10:02',
      reason: 'Smell of gas.',
      unmet: [],
    }
    const stamp = { savedAt: `${DAY}T10:02:00.000Z`, savedBy: 'Ines' }
    store.removals.save(ID, 1, { ...READY, decision: refused }, stamp)
    expect((await post({ ...READY, decision: go }, { base: 1 })).status).toBe(422)
    expect((await post({ ...READY, decision: go }, { base: 1, over: true })).text).toContain('Smell of gas.')
    expect(kept()?.decision?.is).toBe('refuse')
  })
  test('a clearance of a clock that is ahead is of now', async () => {
    const s = cleared(gas, 'Edda Brandt')
    const ahead = s.check.clearances?.map((c) => ({ ...c, writtenAt: '2099-01-01T00:00:00.000Z' })) ?? []
    expect((await post({ ...s, check: { ...s.check, clearances: ahead } })).status).toBe(200)
    expect(kept()?.check.clearances?.[0]?.writtenAt?.slice(0, 10)).toBe(DAY)
  })

  test('a decision by another name, or for another wall', async () => {
    expect((await post({ ...READY, decision: { ...go, by: 'ok' } })).text).toContain(
      'somebody else than who sends it',
    )
    const elsewhere = { ...go, where: 'the north wall' }
    expect((await post({ ...READY, decision: elsewhere })).text).toContain('another place')
  })
  test('a “go” on what was looked for elsewhere, or on nobody’s word how fierce they are', async () => {
    const moved = { ...READY, job: { ...READY.job, address: '9 Other Lane' } }
    expect((await post({ ...moved, decision: { ...go, ...placeOf(moved) } })).text).toContain(
      'cannot be “go”',
    )
    const { temper: _, ...site } = READY.site
    expect((await post({ ...READY, site, decision: go })).text).toContain(
      'asked how they behave, and of Africanized bees',
    )
    const swarm = {
      ...READY,
      site: { ...READY.site, type: 'swarm', where: 'in the wall', behind: undefined },
    }
    const { behind: _b, ...bare } = swarm.site
    expect((await post({ ...swarm, site: bare, decision: { ...go, ...placeOf(swarm) } })).status).toBe(422)
  })
  test.each(['nobody', 'Zed Quill', 'Juno'])('%s as a second person', async (by) => {
    await yard.session('helper')
    const sheet = (second: object): Sheet => ({
      ...bare,
      check: { ...bare.check, seconds: [{ ...KIT, by, ...second }] },
      decision: go,
    })
    const { path: _p, ...undrawn } = KIT
    expect((await post({ ...bare, check: { ...bare.check, seconds: [{ ...undrawn, by }] } })).status).toBe(
      422,
    )
    expect((await post(sheet({ phone: 'at home' }))).text).toContain('must be their own number')
    expect((await post(sheet({}))).status).toBe(by === 'Zed Quill' ? 200 : 422)
  })
  test('an account is confirmed with its passphrase, which no phone and no program can say', async () => {
    await yard.session('helper')
    for (const item of ['exclusion', 'not-alone'] as const) {
      const { path: _p, phone: _t, ...tapped } = { ...KIT, item, of: AS_TOLD[item], by: 'Teuila' }
      const second = { ...tapped, account: true as const }
      const s = but({ check: { ...READY.check, done: READY.check.done?.filter((t) => t !== item) } })
      const answer = await post({ ...s, check: { ...s.check, seconds: [second] }, decision: go })
      expect(answer.text, item).toContain('confirmed with its passphrase')
    }
  })
  test('somebody who was only invited a minute ago is no second person', async () => {
    yard.services.people.invite({ name: 'Zed', role: 'helper', by: null })
    const answer = await post({ ...bare, check: { ...bare.check, seconds: [KIT] } })
    expect(answer.text).toContain('has an account here')
  })
  test('an allergic person off the sheet without a reason; with one it stays on the record', async () => {
    const allergic = but({ site: { ...READY.site, bystanders: ['allergic'] } })
    expect((await post(allergic)).status).toBe(200)
    expect(kept()?.site.noted).toContainEqual(
      expect.objectContaining({ what: 'allergic', is: 'found', by: 'Bram' }),
    )
    const first = kept()
    const gone = (noted: Sheet['site']['noted']): Sheet => ({
      ...allergic,
      site: { ...allergic.site, bystanders: [], ...(noted === undefined ? {} : { noted }) },
    })
    expect((await post(gone(undefined), { base: 1 })).text).toContain('without saying why: Somebody allergic')
    const line = { what: 'allergic', is: 'gone', why: 'left', by: 'Bram', on: DAY, at: '09:00' } as const
    const lines = [...(first?.site.noted ?? []), { ...line, writtenAt: `${DAY}T09:00:00.000Z` }]
    expect((await post(gone(lines), { base: 1 })).status).toBe(200)
    // No later sheet takes the lines off again.
    await post({ ...gone(undefined), job: { ...READY.job, told: 'Bees.' } }, { base: 2 })
    expect(
      kept()
        ?.site.noted?.filter((n) => n.what === 'allergic')
        .map((n) => n.is),
    ).toEqual(['found', 'gone'])
  })
  test('a gas pipe off the sheet with a word', async () => {
    await post(gas)
    const line = { what: 'gas', is: 'gone', why: 'mistake', by: 'Bram', on: DAY, at: '09:00' } as const
    const noted = [{ ...line, writtenAt: `${DAY}T09:00:00.000Z` }]
    const sheet = { ...gas, site: { ...gas.site, behind: ['insulation' as const], noted } }
    expect((await post(sheet, { base: 1 })).text).toContain('no trade has cleared')
    expect(kept()?.site.behind).toContain('gas')
  })
})

describe('on the phone', () => {
  let phone: Phone
  beforeEach(async () => {
    await post(READY)
    phone = phoneIn(yard, 'beekeeper')
    phone.at(`${DAY}T12:00:00Z`)
    expect(await phone.syncService.send()).toBe('done')
  })
  const onDisk = async (): Promise<string> => JSON.stringify(await (await phone.database()).getAll('sheets'))

  test('the jobs of today and tomorrow are there without signal; others are not', async () => {
    await post(but({ job: { ...READY.job, plannedOn: '2026-06-13' } }), { id: ID.replace(/1$/, '2') })
    const elsewhere = { name: 'Edgar Quill', address: '9 Other Lane', plannedOn: '2026-06-20' }
    await post(but({ job: elsewhere }), { id: ID.replace(/1$/, '3') })
    await phone.syncService.send()
    phone.network(down)
    expect(await phone.open(`/removals/${ID}`)).toContain('Ottoline Fairweather')
    expect(await phone.open(`/removals/${ID.replace(/1$/, '2')}`)).toContain('Ottoline Fairweather')
    await expect(phone.open(`/removals/${ID.replace(/1$/, '3')}`)).rejects.toThrow('the phone has no page')
  })

  test('words that are deleted there stay a line, on the phone and on the server', async () => {
    await post({ ...READY, job: { ...READY.job, told: 'By the gas pipe' } }, { base: 1 })
    await phone.syncService.send()
    phone.network(down)
    expect((await phone.post(`/removals/${ID}/job`, { version: '2', ...CALL, told: '' })).status).toBe(303)
    const page = wordsOf(await phone.open(`/removals/${ID}/check`))
    expect(page).toContain('In the words of this sheet (was written: “By the gas pipe”)')
    phone.network(good)
    expect(await phone.syncService.send()).toBe('done')
    expect(kept()?.job.told).toBeUndefined()
    const lines = kept()?.site.noted?.filter((n) => n.is === 'written')
    expect(lines).toMatchObject([{ what: 'gas', words: 'By the gas pipe', by: 'Bram' }])
  })

  test('what is written waits, survives, and is sent once there is signal', async () => {
    phone.network(down)
    expect((await phone.post(`/removals/${ID}/job`, { version: '1', ...CALL })).status).toBe(303)
    await phone.syncService.send()
    expect(kept()?.job.wayIn).toBeUndefined()
    expect((await phone.syncService.state()).waiting).toBe(1)
    phone.network(good)
    expect(await phone.syncService.send()).toBe('done')
    expect(kept()?.job.wayIn).toBe('Gate code 1234')
    expect((await phone.syncService.state()).waiting).toBe(0)
  })

  test('a “go” on the phone says of when it knows; another sheet of the house that it keeps holds the next one', async () => {
    await post({ ...READY, decision: { ...go, at: '11:00' } }, { base: 1 })
    await phone.syncService.send()
    phone.network(down)
    expect(await phone.open(`/removals/${ID}`)).toContain('Go, as this phone knows it')
    phone.network(good)
    const theirs = but({ site: { ...READY.site, behind: ['gas'] } })
    await post({ ...theirs, job: { ...READY.job, name: 'Edgar Quill' } }, { id: ID.replace(/1$/, '2') })
    await phone.syncService.send()
    phone.network(down)
    const page = await phone.open(`/removals/${ID}`)
    expect(page).toContain('Another sheet of this house')
    expect(page).not.toContain('Go, as this phone knows it')
    expect(page).toContain('name="again.not-there:gas:')
  })

  test('no “go” on a phone that has heard nothing today, but on what somebody read aloud, and when', async () => {
    const form = {
      shownOn: '2026-06-13',
      on: '2026-06-13',
      hottestC: '70',
      cutMm: '3/4',
      vacuum: 'bee-vacuum',
      wires: 'none',
    }
    const go = async (said: Record<string, string>) => {
      const open = await phone.open(`/removals/${ID}/check`)
      const version = /name="version" value="([\d.]+)"/.exec(open)?.[1] ?? ''
      const body = new URLSearchParams({ version, ...form, ...said, is: 'go' })
      for (const tick of TICKED) body.append('done', tick)
      const init = { method: 'POST', body }
      return phone.syncService.form(new Request(`${ORIGIN}/removals/${ID}/check`, init))
    }
    await post({ ...READY, job: { ...READY.job, plannedOn: '2026-06-13' } }, { base: 1 })
    await yard.session('operator')
    await phone.syncService.send()
    phone.network(down)
    phone.at('2026-06-13T08:00:00Z')
    const page = wordsOf(await phone.open(`/removals/${ID}`))
    expect(page).toContain('Heard nothing since Fri 12 Jun, 12:00.')
    const barred = await go({ reason: 'The bees must go today.' })
    expect(barred?.status).toBe(422)
    expect(wordsOf((await barred?.text()) ?? '')).toContain(
      'Who read you the list is not said: this phone has heard nothing since Fri 12 Jun, 12:00',
    )
    for (const reason of ['ok 07:50', 'Bram, 07:50', 'Odalys', 'Odalys read it, 07:50'])
      expect((await go({ reason }))?.status, reason).toBe(422)
    const read = { 'heard.by': 'Odalys', 'heard.at': '07:50', 'heard.news': 'none' }
    expect((await go(read))?.status).toBe(303)
    expect(wordsOf(await phone.open(`/removals/${ID}`))).toContain(
      'the phone had last heard at Fri 12 Jun, 12:00; Odalys read the list at 07:50: nothing new',
    )
  })

  test('another sheet of the house of next week holds it without signal, in words and with its refusal', async () => {
    const theirs = but({
      job: {
        name: 'Edgar Quill',
        address: '4a Inventd Rd',
        plannedOn: '2026-06-20',
        told: 'Grandma is allergic.',
      },
    })
    const decision = { ...go, is: 'refuse' as const, reason: 'Smell of gas in the hall' }
    await post({ ...theirs, decision }, { id: ID.replace(/1$/, '2') })
    await phone.syncService.send()
    phone.network(down)
    const page = await phone.open(`/removals/${ID}`)
    expect(page).toContain('Smell of gas in the hall')
    expect(page).toContain('name="again.not-there:gas:')
    expect(page).toContain('name="again.not-there:allergic:')
    const form = {
      version: '1',
      shownOn: DAY,
      hottestC: '70',
      cutMm: '7/8',
      vacuum: 'bee-vacuum',
      wires: 'none',
    }
    const done = TICKED.join(',')
    const answer = await phone.post(`/removals/${ID}/check`, { ...form, done, is: 'go' })
    expect(answer.status).toBe(422)
    expect(kept()?.decision).toBeUndefined()
  })

  test('a “go” of this morning has run out on the phone’s own page too', async () => {
    await post({ ...READY, decision: go }, { base: 1 })
    await phone.syncService.send()
    phone.network(down)
    const page = await phone.open(`/removals/${ID}`)
    expect(page).toContain('The go of 08:00 has run out: look again before you begin')
    expect(page).not.toContain('Go, as this phone knows it')
    expect(page).not.toContain('Nothing on this list is unmet')
    expect(page).toContain('name="is" value="go"')
  })

  test('what somebody found meanwhile is on the phone’s own page, though the two clash, and its “go” falls', async () => {
    await post({ ...READY, decision: { ...go, at: '11:00' } }, { base: 1 })
    await phone.syncService.send()
    phone.network(down)
    expect(await phone.open(`/removals/${ID}`)).toContain('Go, as this phone knows it')
    expect((await phone.post(`/removals/${ID}/job`, { version: '2', ...CALL })).status).toBe(303)
    const front = { ...READY.job, wayIn: 'Gate at the front' }
    await post({ ...gas, job: front, decision: { ...go, at: '11:00' } }, { base: 2, as: 'operator' })
    phone.network(good)
    await phone.syncService.send()
    phone.network(down)
    expect(kept()?.job.wayIn, 'the two clash').toBe('Gate at the front. Gate code 1234')
    const page = await phone.open(`/removals/${ID}`)
    expect(page).not.toContain('Go, as this phone knows it')
    expect(page).toContain('No go any more')
    expect(page.toLowerCase()).toContain('gas pipe')
  })

  test('“go” over gas is refused without signal too', async () => {
    await post(gas, { base: 1 })
    await phone.syncService.send()
    phone.network(down)
    const version = '2'
    const answer = await phone.post(`/removals/${ID}/check`, {
      version,
      hottestC: '70',
      cutMm: '7/8',
      is: 'go',
    })
    expect(answer.status).toBe(422)
    expect(answer.html).toContain('cannot be “go”')
  })

  test('times by hand without a “go” are asked why without signal too, and sent with it', async () => {
    phone.network(down)
    const times = { version: '1', on: DAY, openedAt: '09:00', boxedAt: '11:00' }
    const asked = await phone.post(`/removals/${ID}/work`, times)
    expect(asked.status).toBe(422)
    expect(asked.html).toContain('name="withoutGo.why"')
    expect(
      (await phone.post(`/removals/${ID}/work`, { ...times, 'withoutGo.why': 'open-already' })).status,
    ).toBe(303)
    phone.network(good)
    await phone.syncService.send()
    expect(kept()?.work.withoutGo).toMatchObject({ why: 'open-already', by: 'Bram', on: DAY })
  })

  test('another wall without signal: what was looked for at the first one is asked again', async () => {
    phone.network(down)
    const where = 'the north wall'
    const site = {
      version: '1',
      where,
      behind: 'insulation',
      hazards: 'none-tested',
      temper: '2',
      africanized: 'no',
    }
    expect((await phone.post(`/removals/${ID}/site`, { ...site, sheathingMm: '3/4' })).status).toBe(303)
    const tapped = { version: '2', hottestC: '70', cutMm: '7/8', vacuum: 'bee-vacuum', is: 'go' }
    const answer = await phone.post(`/removals/${ID}/check`, tapped)
    expect(answer.status).toBe(422)
    expect(answer.html).toContain('nobody has looked since')
  })

  test('a form that lay open while the wall was changed says nothing of the new one, without signal', async () => {
    const at = (page: string): string => /name="version" value="([\d.]+)"/.exec(page)?.[1] ?? ''
    phone.network(down)
    // Something of the phone's own is saved, so that the form's version is one of the phone's.
    await phone.post(`/removals/${ID}/job`, { version: '1', ...CALL })
    const stale = at(await phone.open(`/removals/${ID}/check`))
    const site = {
      sheathingMm: '3/4',
      behind: 'insulation',
      hazards: 'none-tested',
      temper: '2',
      africanized: 'no',
    }
    const moved = { ...site, where: 'the north gable', 'gone.climb': 'mistake' }
    const version = at(await phone.open(`/removals/${ID}/site`))
    expect((await phone.post(`/removals/${ID}/site`, { ...moved, version })).status).toBe(303)
    const form = new URLSearchParams({
      version: stale,
      shownOn: DAY,
      hottestC: '70',
      cutMm: '3/4',
      wires: 'none',
    })
    for (const tick of TICKED) form.append('done', tick)
    form.append('vacuum', 'bee-vacuum')
    form.append('is', 'go')
    const answer = await phone.syncService.form(
      new Request(`http://yard.test/removals/${ID}/check`, { method: 'POST', body: form }),
    )
    expect(answer?.status).toBe(422)
    expect(await answer?.text()).toContain('changed since this form was opened')
  })

  test('a “go” whose ground is gone, and work that was begun under it, are sent all the same', async () => {
    const at = async (part: string): Promise<Record<string, string>> => ({
      version: /name="version" value="([\d.]+)"/.exec(await phone.open(`/removals/${ID}/${part}`))?.[1] ?? '',
    })
    phone.network(down)
    const asked = { hottestC: '70', cutMm: '3/4', vacuum: 'bee-vacuum', wires: 'none', is: 'go' }
    const form = new URLSearchParams({ ...(await at('check')), ...asked, shownOn: DAY })
    for (const tick of READY.check.done ?? []) form.append('done', tick)
    const answer = await phone.syncService.form(
      new Request(`http://yard.test/removals/${ID}/check`, { method: 'POST', body: form }),
    )
    expect(answer?.status).toBe(303)
    const open = { ...(await at('work')), outdoorC: '70', now: 'openedAt', water: 'yes' }
    expect((await phone.post(`/removals/${ID}/work`, open)).status).toBe(303)
    const site = {
      where: 'left of the porch',
      sheathingMm: '3/4',
      temper: '2',
      africanized: 'no',
      hazards: 'none-tested',
    }
    const gasFound = { ...(await at('site')), ...site, behind: 'gas', 'gone.insulation': 'mistake' }
    expect((await phone.post(`/removals/${ID}/site`, gasFound)).status).toBe(303)
    phone.network(good)
    await phone.syncService.send()
    expect(await phone.syncService.state()).toMatchObject({ waiting: 0, refused: 0 })
    expect(kept()?.site.behind).toContain('gas')
    expect(kept()?.decision?.fell).toBeDefined()
    expect(kept()?.work.openedAt).toBeDefined()
    expect(await page()).not.toContain('Begun without a “go”')
  })

  test('a second person without signal: the accounts of the yard are on the phone, and not on a helper’s', async () => {
    await post({ ...READY, check: { ...READY.check, done: [] } }, { base: 1 })
    await phone.syncService.send()
    await phone.open(`/removals/${ID}/check`)
    // Nothing else is new when somebody gets an account.
    await yard.session('helper')
    await phone.syncService.send()
    phone.network(down)
    const shown = await phone.open(`/removals/${ID}/second?item=not-alone`)
    expect(shown).toContain('name="not-alone.by"')
    expect(shown).toContain('value="Teuila"')
    expect(shown).not.toContain('value="Bram"')
    expect(shown).toContain('There is no signal here')
    expect(shown).not.toContain('data-pad-field')
    const of = AS_TOLD['not-alone']
    const alone = { item: 'not-alone', of, 'not-alone.by': 'Teuila', 'not-alone.why': 'stays' }
    const answer = await phone.post(`/removals/${ID}/second`, { ...alone, passphrase: 'slow lantern' })
    expect(answer.status).toBe(422)
    expect(answer.html).toContain('without signal')
    // Who has none draws, and leaves a number: that works here, and is sent.
    const kit = {
      item: 'exclusion',
      of: AS_TOLD.exclusion,
      'exclusion.by': 'Zed Quill',
      'exclusion.why': 'seen',
    }
    const drawing = '[[[40,120],[90,60],[140,130],[220,50]]]'
    const drawn = await phone.post(`/removals/${ID}/second`, {
      ...kit,
      'exclusion.phone': '555 0177',
      drawing,
    })
    expect(drawn.status, drawn.html).toBe(303)
    phone.network(good)
    expect(await phone.syncService.send()).toBe('done')
    expect(kept()?.check.seconds).toMatchObject([{ by: 'Zed Quill', phone: '555 0177' }])
    const other = phoneIn(yard, 'helper')
    other.at(`${DAY}T12:00:00Z`)
    await other.syncService.send()
    const known = await (await other.database()).get('kept', 'round')
    expect(JSON.stringify(known)).not.toContain('crew')
  })

  test('names leave the phone at sign-out; what waits stays for its owner', async () => {
    expect(await onDisk()).toContain('Fairweather')
    await phone.syncService.signedOut()
    expect(await onDisk()).not.toContain('Fairweather')
    phone.heldBy('beekeeper')
    await phone.syncService.send()
    phone.network(down)
    await phone.post(`/removals/${ID}/job`, { version: '1', ...CALL })
    await phone.syncService.signedOut()
    expect(await onDisk()).toContain('Gate code 1234')
    phone.heldBy('helper')
    phone.network(good)
    await phone.syncService.send()
    expect(kept()?.job.wayIn).toBeUndefined()
    await expect(phone.open(`/removals/${ID}`)).rejects.toThrow()
    expect(await phone.open('/outbox')).not.toContain('Fairweather')
    phone.heldBy('beekeeper')
    await phone.syncService.send()
    expect(kept()?.job.wayIn).toBe('Gate code 1234')
  })
})

const CALL = {
  name: 'Ottoline Fairweather',
  address: '4 Invented Row',
  plannedOn: DAY,
  what: 'wall',
  access: 'ladder',
  sprayed: 'no',
  bystanders: 'none',
  wayIn: 'Gate code 1234',
}

describe('Find without signal', () => {
  test('looks through the sheets that the phone keeps, sent or not, and shows them to no helper', async () => {
    await post(READY)
    const phone = phoneIn(yard, 'beekeeper')
    phone.at(`${DAY}T12:00:00Z`)
    await phone.syncService.send()
    phone.network(down)
    const [name = ''] = (READY.job.name ?? '').split(' ')
    expect(name).not.toBe('')
    const found = await phone.open(`/find?q=${encodeURIComponent(name)}`)
    expect(found).toContain(`/removals/${ID}`)
    expect(found).toContain('removal sheets')

    const called = await phone.post('/removals/new', {
      name: 'Casimir Underhill',
      phone: '555 0142',
    })
    expect(called.status, called.html).toBe(303)
    expect(await phone.open('/find?q=underhill')).toContain('Casimir Underhill')

    phone.network(good)
    phone.heldBy('helper')
    await phone.syncService.send()
    for (const typed of [name, 'underhill'])
      expect(await phone.open(`/find?q=${encodeURIComponent(typed)}`)).toContain('Nothing fits')
  })
})
