/** Two people at one sheet, or one form sent twice: both are kept, or the second is told what the first changed. Invented. */
import { beforeEach, describe, expect, test } from 'vitest'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'
import { aCall, CALL, CALLED_ON, SITE, typedIn } from './a-call.ts'
import { oneSheet } from './one-sheet.ts'
import { DAY, goAt, READY } from './ready.ts'

let yard: Yard
const { call, fill, version, sheetOf } = aCall(() => yard)
beforeEach(async () => {
  yard = await yardOn(CALLED_ON)
  yard.store.settings.set('yardName', 'Quarry yard')
})
const wordsAt = async (path: string): Promise<string> => wordsOf((await yard.get(path)).text)

describe('versions', () => {
  test('two people at two parts: both are kept', async () => {
    const path = await call()
    const shown = await version(path, 'site')
    await fill(path, 'job', { ...CALL, phone: '555 0199' })
    const saved = await yard.post(`${path}/site`, { ...SITE, version: shown })
    expect(saved.status).toBe(303)
    const words = await wordsAt(path)
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
    expect(await wordsAt(path)).toContain('Round the back')
    expect(await wordsAt(`${path}?version=2`)).toContain('555 0199')
  })
})

describe('a call that is sent again', () => {
  const id = '019e0000-0000-7000-8000-000000000001'
  const again = { id, version: '0', name: CALL.name, address: CALL.address, bystanders: 'none' }
  const about = () => sheetOf(id)?.site.bystanders

  test('with more on it is saved, and not only said to be', async () => {
    expect((await yard.post('/removals/new', again)).status).toBe(303)
    expect((await yard.post('/removals/new', { ...again, bystanders: 'allergic' })).status).toBe(303)
    expect(about()).toEqual(['allergic'])
  })

  test('over what somebody else wrote since is a clash, and not saved over', async () => {
    await yard.post('/removals/new', again)
    const dog = { bystanders: 'animals', bystandersNote: 'The dog is chained.' }
    expect((await yard.post(`/removals/${id}/job`, { ...again, ...dog, version: '1' })).status).toBe(303)
    const late = await yard.post('/removals/new', { ...again, wayIn: 'Gate code 1234' })
    expect(late.status).toBe(409)
    expect(about()).toEqual(['animals'])
  })
})

describe('a form', () => {
  const { last, sheet, saved, formOf, save, post, go, open } = oneSheet(
    () => yard,
    '019e0000-0000-7000-8000-000000000009',
    '08:00',
  )
  beforeEach(() => {
    yard.setDay(DAY)
    saved(READY)
  })

  test('with “Go” sent twice is one, and never gets past what came to light between', async () => {
    const check = await formOf('check')
    const again = () => post('check', { ...check, is: 'go' })
    expect((await again()).status).toBe(303)
    expect((await again()).status).toBe(303)
    const behind: Sheet['site']['behind'] = ['electric-in-cut', 'insulation']
    saved({ ...sheet(), site: { ...sheet().site, behind } }, 'Bram', { at: '09:00' })
    expect((await again()).status).toBe(422)
    expect((await open()).status).toBe(422)
  })

  test('whose version nobody has is asked again, with nothing tapped that was seen', async () => {
    saved({ ...READY, decision: goAt() })
    const late = await go({ version: '77' })
    expect(late.status).toBe(422)
    const shown = late.text.slice(late.text.indexOf('id="f-wires"'))
    expect(shown.slice(0, shown.indexOf('</form>'))).not.toMatch(/name="(done|wires)"[^>]*checked/)
    const site = await save('site', { version: '' })
    expect(site.status).toBe(422)
    expect(site.text).not.toMatch(/name="(behind|hazards)"[^>]*checked/)
    expect(last()?.version).toBe(2)
  })
})
