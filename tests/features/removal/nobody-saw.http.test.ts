/** A “go” that nobody here saw is marked: what was begun without one, and days and hours that a phone sends later. Invented. */
import { beforeEach, describe, expect, test } from 'vitest'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { type TestYard, testYard } from '../../support/yard-app.ts'
import { sheetIn } from './one-phone.ts'
import { but, DAY, goAt, READY } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000001'
let yard: TestYard
const { kept, sync, page } = sheetIn(() => yard, ID)
beforeEach(() => {
  yard = testYard({ day: DAY })
})
/** With the hour of its ticks, as every form saves them: that of the “go” where a test says none. */
const post: typeof sync = (s, how) =>
  sync(s.decision?.at === undefined ? s : { ...s, check: { tickedAt: s.decision.at, ...s.check } }, how)
const go = goAt('08:00', 'Bram')
const gas = but({ site: { ...READY.site, behind: ['gas', 'insulation'] } })

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
    await post(gas, { of: other })
    await post(fell('11:59'), { base: 1, of: other })
    expect(kept(other)?.work.withoutGo?.why).toBe('sent-later')
  })
})
