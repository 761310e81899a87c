/** What a phone or a program sends is held to what the forms hold it to: nothing gets in by the queue or by hand. Invented. */
import { beforeEach, describe, expect, test } from 'vitest'
import { AS_TOLD } from '../../../src/features/removal/people.ts'
import { placeOf } from '../../../src/features/removal/place.ts'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { type TestYard, testYard } from '../../support/yard-app.ts'
import { sheetIn } from './one-phone.ts'
import { but, DAY, DRAWN, goAt, PAPER, PHOTO, READY, unticked } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000001'
let yard: TestYard
const { kept, version, sync, saved } = sheetIn(() => yard, ID)
beforeEach(async () => {
  yard = testYard({ day: DAY })
  await yard.services.photos.keep(PHOTO)
})
/** With the hour of its ticks, as every form saves them: that of the “go” where a test says none. */
const post: typeof sync = (s, how) =>
  sync(s.decision?.at === undefined ? s : { ...s, check: { tickedAt: s.decision.at, ...s.check } }, how)
const go = goAt('08:00', 'Bram')
const gas = but({ site: { ...READY.site, behind: ['gas', 'insulation'] } })
const signature = { how: 'paper', name: 'Ottoline Fairweather', on: DAY, terms: 'As agreed.' } as const
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
const bare = but({ check: unticked('exclusion') })
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

describe('nothing gets in by the queue or by hand that no form would take', () => {
  test('what somebody else says is not known stays so over a phone that had not read it', async () => {
    const fierce = (africanized: 'no' | 'unknown'): Sheet => but({ site: { ...READY.site, africanized } })
    const { africanized: _, ...unsaid } = READY.site
    await post(but({ site: unsaid }))
    await post(fierce('unknown'), { base: 1, as: 'operator' })
    expect((await post(fierce('no'), { base: 1, over: true })).status).toBe(200)
    expect(kept()?.site.africanized).toBe('unknown')
    // Whoever has read it may have asked meanwhile.
    expect(await post(fierce('no'), { base: version() })).toMatchObject({ status: 200 })
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
    const refused = {
      is: 'refuse' as const,
      by: 'Ines',
      on: DAY,
      at: '10:02',
      reason: 'Smell of gas.',
      unmet: [],
    }
    saved({ ...READY, decision: refused }, 'Ines')
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
      const s = but({ check: unticked(item) })
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
