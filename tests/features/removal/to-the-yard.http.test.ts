/** From the phone call to the yard without typing anything twice, and what becomes of the job afterwards. Invented. */
import { beforeEach, describe, expect, test } from 'vitest'
import { TICKED } from '../../../src/features/removal/item.ts'
import { readNotes } from '../../../src/features/removal/notes-read.ts'
import { wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'
import { aCall, CALL, CALLED_ON, CHECK, noting, PRICE, SITE, signed, typedIn, WORK } from './a-call.ts'

let yard: Yard
const { call, fill, mark } = aCall(() => yard)
beforeEach(async () => {
  yard = await yardOn(CALLED_ON)
  yard.store.settings.set('yardName', 'Quarry yard')
})
const wordsAt = async (path: string): Promise<string> => wordsOf((await yard.get(path)).text)
const sign = async (path: string, more: Record<string, string> = {}) =>
  yard.post(`${path}/sign`, signed(await mark(path), more))

describe('from the phone call to the yard without typing anything twice', () => {
  test('call, site, price, signature, check, go, removal, intake', async () => {
    const path = await call()
    await fill(path, 'site', SITE)
    expect(
      await fill(path, 'agreement', { ...PRICE, warrantyDays: '60', deposit: '100', next: 'sign' }),
    ).toBe(`${path}/sign`)
    const agreement = await wordsAt(`${path}/sign`)
    expect(agreement).toContain(
      'Between Quarry yard and Ottoline Fairweather. The bees are at 4 Invented Row: in the wall left of the porch. Planned for Wed 10 Jun.',
    )
    expect(agreement).toContain('$95 an hour for the hours worked. We expect about 4 hours')
    expect(agreement).toContain('Above 85 °F')
    expect(agreement).toContain('settle again in the same hollow within 60 days')
    expect(agreement).toContain('A deposit of $100 is due now')
    expect((await sign(path)).status).toBe(303)
    yard.setDay(CALLED_ON, '07:20')
    await fill(path, 'check', CHECK)
    const reckoned = await wordsAt(`${path}/check`)
    expect(reckoned).toContain('Nothing on this list is unmet')
    expect(reckoned).toContain('Whoever is at the wall looks again, decides')
    await fill(path, 'check', { ...CHECK, is: 'go' })
    await fill(path, 'work', { outdoorC: '82', now: 'openedAt', water: 'yes' })
    yard.setDay(CALLED_ON, '12:00')
    await fill(path, 'work', WORK)

    const overview = await yard.get(path)
    expect(wordsOf(overview.text)).toContain('Bees are out')
    expect(overview.text).toContain('name="next" value="intake"')
    const intake = await yard.get(`${path}/intake`)
    for (const [name, value] of [
      ['on', CALLED_ON],
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
    const done = await wordsAt(path)
    expect(done).toContain('Came to the yard as W-9')
    // Boxed is not finished: the void is open still, and nobody has taken a photo.
    expect(done).toContain(
      'Not finished: void filled or screened, smell covered, box for stragglers, photo of it closed.',
    )
    expect(await wordsAt('/removals')).toMatch(/To close up.*Ottoline Fairweather/)
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
    expect(await wordsAt(path)).toContain('Came to the yard as W-1 , W-2')
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
      shownOn: CALLED_ON,
      hottestC: '70',
      wires: 'none',
      done: [...TICKED, readNotes(noting('In the pear tree.'))],
      where: 'On a branch',
      temper: '1',
      africanized: 'no',
      is: 'go',
    }
    yard.setDay(CALLED_ON, '07:20')
    await fill(path, 'check', check)
    await fill(path, 'work', { outdoorC: '70', now: 'openedAt', water: 'yes' })
    yard.setDay(CALLED_ON, '12:00')
    await fill(path, 'work', { ...WORK, sealed: '', cleaned: '', next: 'intake' })
    const intake = await yard.get(`${path}/intake`)
    await yard.post('/intake', {
      ...typedIn(intake.text),
      colony: 'S-1',
      yard: 'Quarry yard',
      queen: 'unknown',
    })
    expect(await wordsAt(path)).toContain('Finished')
  })

  test('wasps end the sheet', async () => {
    const path = await call({ ...CALL, what: 'wasps' })
    expect(await wordsAt(path)).toContain('Not honey bees : name somebody who takes wasps')
  })
})

describe('after the job', () => {
  test('a call-back is an entry on the sheet', async () => {
    const path = await call()
    expect((await yard.post(`${path}/call-back`, { what: '', on: CALLED_ON })).status).toBe(422)
    expect((await yard.post(`${path}/call-back`, { what: 'honey', on: '2026-06-11' })).status).toBe(422)
    const saved = await yard.post(`${path}/call-back`, {
      what: 'honey',
      on: CALLED_ON,
      note: 'At the skirting.',
      opened: 'no',
    })
    expect(saved.status).toBe(303)
    expect(await wordsAt(path)).toContain('Wed 10 Jun: Honey runs. At the skirting. (Ines)')
  })

  test('a job ends without a removal, with a reason', async () => {
    const path = await call()
    expect((await yard.post(`${path}/end`, { why: '' })).status).toBe(422)
    await yard.post(`${path}/end`, { why: 'Wasps.' })
    const words = await wordsAt(path)
    expect(words).toContain('Ended without a removal , Wed 10 Jun: Wasps.')
  })
})
