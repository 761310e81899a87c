import { v7 } from 'uuid'
import { beforeEach, describe, expect, it } from 'vitest'
import { INTAKE, wordsOf, type Yard, yardOn } from '../support/yard-on.ts'

let yard: Yard
beforeEach(async () => {
  yard = await yardOn('2026-05-06')
})

const count = (y: Yard): number => [...y.store.journal()].length

describe('an empty yard', () => {
  it('teaches what to do first', async () => {
    expect(wordsOf((await yard.get('/')).text)).toContain('Log the first intake')
    expect(wordsOf((await yard.get('/yard')).text)).toContain('No colony yet')
  })
})

describe('logging an intake', () => {
  it('writes one entry and shows the plan it made', async () => {
    const saved = await yard.post('/intake', { ...INTAKE, id: v7() })
    expect(saved.status).toBe(303)
    expect(saved.to).toMatch(/^\/colony\/W-12\?saved=/)
    const page = await yard.get(saved.to ?? '')
    const words = wordsOf(page.text)
    expect(words).toContain('In the book')
    expect(words).toContain('signed Ines')
    expect(words).toContain('The first brood check: Tue 5 to Fri 8 May')
    expect(count(yard)).toBe(1)
  })

  it('stores SI: 75 °F is 23.9 °C', async () => {
    await yard.post('/intake', INTAKE)
    const history = yard.store.colony('W-12')?.history
    // To a tenth (src/units.ts).
    expect(history?.intake.removal.outdoorC).toBe(23.9)
    expect(history?.intake.by).toBe('Ines')
  })

  it('saved twice is one entry, answered the same', async () => {
    const form = { ...INTAKE, id: v7() }
    const first = await yard.post('/intake', form)
    const second = await yard.post('/intake', form)
    expect(second.to).toBe(first.to)
    expect(count(yard)).toBe(1)
  })

  it('keeps what was changed after going back from being lost unsaid', async () => {
    const id = v7()
    await yard.post('/intake', { ...INTAKE, id })
    const again = await yard.post('/intake', { ...INTAKE, id, queen: 'caged' })
    expect(again.status).toBe(422)
    expect(wordsOf(again.text)).toContain('was saved before and has changed since')
    expect(count(yard)).toBe(1)
  })

  it('remembers the yard last used, and the types a yard added', async () => {
    await yard.post('/intake', { ...INTAKE, 'removal.type': '', 'removal.type+': 'church tower' })
    const page = await yard.get('/intake')
    expect(page.text).toContain('value="North field"')
    expect(page.text).toContain('value="church tower"')
  })
})

describe('the round of the day', () => {
  beforeEach(async () => {
    await yard.post('/intake', INTAKE)
    await yard.post('/intake', { ...INTAKE, colony: 'W-3', stand: '10' })
    await yard.post('/intake', { ...INTAKE, colony: 'W-4', stand: '2' })
  })

  it('walks the stands in the order of numbers', async () => {
    const words = wordsOf((await yard.get('/')).text)
    expect(words.indexOf('W-4')).toBeLessThan(words.indexOf('W-12'))
    expect(words.indexOf('W-12')).toBeLessThan(words.indexOf('W-3'))
    expect(words).toContain('The first brood check')
  })

  it('makes its plans anew when the day changes', async () => {
    yard.setDay('2026-05-12')
    const words = wordsOf((await yard.get('/')).text)
    expect(words).toContain('late')
    expect(words).toContain('4 days, since Fri 8 May')
  })

  it('takes a look from outside with one tap', async () => {
    const id = v7()
    const saved = await yard.post('/colony/W-12/outside-look', { id })
    expect(saved.to).toBe(`/colony/W-12?saved=${id}`)
    const entry = yard.store.entry(id)?.entry
    expect(entry).toMatchObject({ kind: 'inspection', opened: false, on: '2026-05-06', by: 'Ines' })
  })

  it('says until when the others can wait', async () => {
    await yard.post('/colony/W-12/visit', { on: '2026-05-06', opened: 'yes', eggs: 'none', cells: 'capped' })
    expect(wordsOf((await yard.get('/')).text)).toMatch(/Can wait.*until.*W-12/)
  })
})

describe('a visit', () => {
  beforeEach(() => yard.post('/intake', INTAKE))

  it('changes the plan and says so', async () => {
    const saved = await yard.post('/colony/W-12/visit', {
      on: '2026-05-06',
      opened: 'yes',
      eggs: 'none',
      open: 'none',
      cells: 'none',
    })
    expect(saved.status).toBe(303)
    expect(wordsOf((await yard.get(saved.to ?? '')).text)).toContain('The plan now: give a frame of eggs')
  })

  it('becomes as many entries as were filled, all at once', async () => {
    await yard.post('/colony/W-12/visit', {
      on: '2026-05-06',
      opened: 'yes',
      eggs: 'none',
      cells: 'none',
      'given1.what': 'egg-frame',
      'given1.frames': '1',
      'given1.donor': 'Q-2',
      'given2.what': 'syrup',
      'given2.litres': '1,5',
      'ties.done': 'yes',
      'wash.bees': '300',
      'wash.mites': '6',
    })
    const kinds = yard.store.colony('W-12')?.history.entries.map((e) => e.kind)
    expect(kinds).toEqual(['intake', 'inspection', 'mite-wash', 'ties-removed', 'given', 'given'])
  })

  it('writes nothing when one part of it is wrong', async () => {
    const refused = await yard.post('/colony/W-12/visit', {
      on: '2026-05-06',
      opened: 'yes',
      eggs: 'none',
      'wash.bees': '30',
      'wash.mites': '300',
    })
    expect(refused.status).toBe(422)
    expect(wordsOf(refused.text)).toContain('are the two numbers swapped?')
    expect(refused.text).toContain('value="300"')
    expect(count(yard)).toBe(1)
  })

  it('refuses eggs seen through the lid', async () => {
    const refused = await yard.post('/colony/W-12/visit', { on: '2026-05-06', opened: 'no', eggs: 'single' })
    expect(refused.status).toBe(422)
    expect(wordsOf(refused.text)).toContain('cannot be seen with the lid on')
  })

  it('gives the phone the history to reckon with, but not the address', async () => {
    await yard.post('/intake', { ...INTAKE, colony: 'W-20', 'removal.site': '12 Quarry Lane </script><b>' })
    const page = await yard.get('/colony/W-20/visit')
    const data = page.text.match(/<script type="application\/json" id="live-data">([\s\S]*?)<\/script>/)?.[1]
    expect(JSON.parse(data ?? '').entries[0].queen).toBe('unseen')
    expect(page.text).not.toContain('Quarry')
  })

  it('starts with the lid on where the plan says to leave it on', async () => {
    await yard.post('/colony/W-12/visit', { on: '2026-05-06', opened: 'yes', eggs: 'none', cells: 'capped' })
    const page = await yard.get('/colony/W-12/visit')
    expect(page.text).toMatch(/name="opened" value="no" checked/)
  })
})

describe('corrections', () => {
  it('put an entry in the place of another, which stays, struck out', async () => {
    const id = v7()
    await yard.post('/intake', { ...INTAKE, id })
    const form = await yard.get(`/entry/${id}/correct`)
    expect(form.text).toContain('value="W-12"')
    expect(form.text).toMatch(/name="removal.outdoorC"[^>]*value="75"/)
    expect(form.text).toMatch(/name="queen" value="unseen" checked/)
    const saved = await yard.post(`/entry/${id}/correct`, { ...INTAKE, queen: 'caged' })
    expect(saved.status).toBe(303)
    const words = wordsOf((await yard.get('/colony/W-12')).text)
    expect(words).toContain('Corrected by Ines, Wed 6 May')
    expect(yard.store.colony('W-12')?.history.intake.queen).toBe('caged')
    expect(count(yard)).toBe(2)
  })

  it('of a tag move the colony to its new name', async () => {
    const id = v7()
    await yard.post('/intake', { ...INTAKE, id })
    const saved = await yard.post(`/entry/${id}/correct`, { ...INTAKE, colony: 'W-21' })
    expect(saved.to).toMatch(/^\/colony\/W-21\?saved=/)
    expect((await yard.get('/colony/W-12')).status).toBe(404)
  })

  it('lead to the entry when it was corrected already', async () => {
    const id = v7()
    await yard.post('/intake', { ...INTAKE, id })
    await yard.post(`/entry/${id}/correct`, { ...INTAKE, queen: 'caged' })
    expect((await yard.get(`/entry/${id}/correct`)).to).toBe(`/colony/W-12#e-${id}`)
  })

  it('take a visit back, with a reason', async () => {
    await yard.post('/intake', INTAKE)
    const id = v7()
    await yard.post('/colony/W-12/note', { id, on: '2026-05-06', text: 'two supers' })
    expect((await yard.post(`/entry/${id}/withdraw`, { reason: '' })).status).toBe(422)
    const saved = await yard.post(`/entry/${id}/withdraw`, { reason: 'another box' })
    expect(saved.status).toBe(303)
    expect(wordsOf((await yard.get('/colony/W-12')).text)).toContain(
      'Taken back by Ines, Wed 6 May: another box',
    )
  })

  it('take a whole colony out of the yard with its intake', async () => {
    const id = v7()
    await yard.post('/intake', { ...INTAKE, id })
    expect((await yard.post(`/entry/${id}/withdraw`, { reason: 'logged twice' })).to).toBe('/yard')
    expect(yard.store.colonies({ open: true })).toEqual([])
  })

  it('know no entry that is not there', async () => {
    expect((await yard.get(`/entry/${v7()}/correct`)).status).toBe(404)
    expect((await yard.get('/entry/nonsense/withdraw')).status).toBe(404)
  })
})

describe('leaving and moving', () => {
  beforeEach(() => yard.post('/intake', INTAKE))

  it('takes a colony off the round, its page kept under its id', async () => {
    const saved = await yard.post('/colony/W-12/outcome', {
      on: '2026-05-06',
      what: 'absconded',
      cause: 'heat',
    })
    expect(saved.to).toMatch(/^\/colony\/[0-9a-f-]{36}\?saved=/)
    expect(wordsOf((await yard.get(saved.to ?? '')).text)).toContain('W-12 is off the round')
    expect(wordsOf((await yard.get('/')).text)).not.toContain('W-12')
    expect(wordsOf((await yard.get('/yard?show=left')).text)).toContain('Absconded')
  })

  it('has the way of leaving tapped that the round suggested, and nothing that is none', async () => {
    expect((await yard.get('/colony/W-12/outcome?what=united')).text).toMatch(/value="united" checked/)
    const other = await yard.get('/colony/W-12/outcome?what=<b>')
    expect(other.status).toBe(200)
    expect(other.text).not.toMatch(/name="what"[^>]*checked/)
  })

  it('moves it to another stand', async () => {
    await yard.post('/colony/W-12/move', { on: '2026-05-06', yard: 'Orchard', stand: '7', newYard: 'yes' })
    expect(yard.store.colony('W-12')?.summary).toMatchObject({ yard: 'Orchard', stand: '7' })
    expect(wordsOf((await yard.get('/yard?yard=Orchard')).text)).toContain('W-12')
  })
})

describe('finding a colony', () => {
  beforeEach(async () => {
    await yard.post('/intake', INTAKE)
    await yard.post('/intake', {
      ...INTAKE,
      colony: 'T-7',
      'removal.type': 'tree',
      yard: 'Orchard',
      newYard: 'yes',
    })
  })

  it('goes straight there by its tag, whatever the capitals', async () => {
    expect((await yard.get('/yard?find=w-12')).to).toBe('/colony/W-12')
  })

  it('filters by word, yard and standing, and says when nothing fits', async () => {
    expect(wordsOf((await yard.get('/yard?find=tree')).text)).toMatch(/1 colony.*T-7/)
    expect(wordsOf((await yard.get('/yard?yard=Orchard')).text)).not.toContain('W-12')
    expect(wordsOf((await yard.get('/yard?phase=queenright')).text)).toContain('No colony fits')
    for (const sort of ['walk', 'next', 'day', 'tag', 'nonsense'])
      expect((await yard.get(`/yard?sort=${sort}&page=99`)).status).toBe(200)
  })

  it('offers the nearest tags for one that is unknown', async () => {
    const page = await yard.get('/colony/w12x')
    expect(page.status).toBe(404)
    expect(wordsOf(page.text)).toContain('Did you mean')
    expect(page.text).toContain('href="/colony/W-12"')
    expect((await yard.get('/nowhere')).status).toBe(404)
  })
})

describe('units and time zone', () => {
  it('are kept for the yard, and shown everywhere', async () => {
    await yard.post('/intake', INTAKE)
    await yard.post('/settings', { temperature: 'C', weight: 'kg', timeZone: 'Europe/Oslo' })
    expect(wordsOf((await yard.get('/colony/W-12')).text)).toContain('outdoors 24 °C')
    expect(yard.store.settings.get('timeZone')).toBe('Europe/Oslo')
  })

  it('refuse what is none, and change nothing', async () => {
    const refused = await yard.post('/settings', { temperature: 'C', weight: 'stone', timeZone: 'Mars/Base' })
    expect(refused.status).toBe(422)
    expect(yard.store.settings.get('temperature')).toBe('F')
    const zone = await yard.post('/settings', { temperature: 'C', weight: 'kg', timeZone: 'Mars/Base' })
    expect(wordsOf(zone.text)).toContain('must be a time zone')
    expect(yard.store.settings.get('temperature')).toBe('F')
  })

  it('decide which day is today', async () => {
    await yard.post('/settings', { temperature: 'F', weight: 'lb', timeZone: 'Pacific/Kiritimati' })
    expect((await yard.get('/')).text).toContain('datetime="2026-05-07"')
  })
})
