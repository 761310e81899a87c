/** An old book put in order: names merged and renamed, colonies long gone closed; nothing lost, and each taken back. */
import { v7 } from 'uuid'
import { beforeEach, describe, expect, it } from 'vitest'
import { type TestYard, testYard } from '../../support/yard-app.ts'
import { wordsOf } from '../../support/yard-on.ts'

let yard: TestYard
beforeEach(() => {
  yard = testYard({ day: '2026-06-10' })
})

const book = () => yard.services.store
const send = (entry: Record<string, unknown>) => yard.send('operator', { id: v7(), ...entry })

async function intake(
  tag: string,
  type: string,
  place: string,
  by: string,
  on = '2026-05-01',
): Promise<void> {
  await send({ kind: 'intake', colony: tag, on, by, yard: place, queen: 'caged', removal: { type } })
}
const words = async (path: string): Promise<string> =>
  wordsOf(await (await yard.ask('operator', path)).text())
const typeOf = (tag: string) => book().colony(tag)?.history.intake.removal.type
/** Posts a form, a field once for each of its values. */
const post = (path: string, fields: Record<string, string | string[]>): Promise<Response> => {
  const body = new URLSearchParams()
  for (const [name, values] of Object.entries(fields))
    for (const value of [values].flat()) body.append(name, value)
  return yard.ask('operator', path, { method: 'POST', body })
}
const rowsOf = () => [...book().journal()].length

describe('names', () => {
  beforeEach(async () => {
    await intake('A', 'wall', 'Home', 'Marla')
    await intake('B', 'Wall', 'home', 'marla')
    await intake('C', 'WALL', 'home', 'Ines')
    await send({ kind: 'move', colony: 'A', on: '2026-05-09', by: 'Ines', yard: 'Orchard' })
  })

  it('that differ only in capitals are offered, the shipped type kept; nothing is merged unasked', async () => {
    const page = await words('/data/names')
    expect(page).toContain('Removal types: “wall”, “WALL”, “Wall” All are “wall”: correct 2 entries')
    expect(page).toContain('Yards: “home”, “Home”')
    expect(page).toContain('People: “Marla”, “marla”')
    expect(
      book()
        .yards()
        .map((y) => y.yard),
    ).toEqual(['home', 'Orchard'])
    expect(typeOf('B')).toBe('Wall')
  })

  it('merged by corrections: nothing lost, counted as one, and taken back to what each was', async () => {
    const before = rowsOf()
    const id = v7()
    const merge = { id, what: 'removalType', from: ['Wall', 'WALL'], to: 'wall' }
    const answer = await post('/data/names', merge)
    expect(answer.headers.get('location')).toBe(`/data/names?done=${id}`)
    expect(['A', 'B', 'C'].map(typeOf)).toEqual(['wall', 'wall', 'wall'])
    expect(rowsOf()).toBe(before + 2)
    // Sent twice, it is done once.
    await post('/data/names', merge)
    expect(rowsOf()).toBe(before + 2)
    expect(book().settings.get('tidied')).toMatchObject([
      { id, from: ['Wall', 'WALL'], to: 'wall', entries: 2 },
    ])
    expect(await words(`/data/names?done=${id}`)).toContain('Done: “Wall”, “WALL” became “wall”, 2 entries.')
    expect(await words('/data/names')).not.toContain('Removal types: “wall”, “WALL”')

    await post('/data/names/back', { change: id })
    expect(['A', 'B', 'C'].map(typeOf)).toEqual(['wall', 'Wall', 'WALL'])
    expect(await words(`/data/names?done=${id}`)).toContain('Taken back:')
    await post('/data/names/back', { change: id })
    expect(rowsOf()).toBe(before + 4)
    expect(book().verify().problems).toEqual([])
  })

  it('of yards: moves and stands come along; a correction made since stays when it is taken back', async () => {
    book().settings.set('stands', { home: 8, Orchard: 5 })
    await send({ kind: 'move', colony: 'C', on: '2026-05-09', by: 'Ines', yard: 'Home' })
    const id = v7()
    await post('/data/names', { id, what: 'yard', from: ['home', 'Orchard'], to: 'Home' })
    expect(book().yards()).toEqual([{ yard: 'Home', open: 3 }])
    expect(book().settings.get('stands')).toEqual({ Home: 8 })
    const intakeOfB = book().colony('B')?.history.intake
    await send({ ...intakeOfB, id: v7(), colony: 'B', replaces: intakeOfB?.id, yard: 'Quarry' })
    await post('/data/names/back', { change: id })
    expect(['A', 'B', 'C'].map((tag) => book().colony(tag)?.summary.yard)).toEqual([
      'Orchard',
      'Quarry',
      'Home',
    ])
    expect(book().settings.get('stands')).toMatchObject({ home: 8, Orchard: 5 })
    expect(yard.errors).toEqual([])
  })

  it('of people: whoever signs in keeps the name; others are renamed, the visit and its day as they were', async () => {
    await post('/data/names', { id: v7(), what: 'person', from: 'Marla', to: 'Marla K.' })
    await post('/data/names', { id: v7(), what: 'person', from: 'marla', to: 'Marla K.' })
    expect(book().colony('A')?.history.intake).toMatchObject({ by: 'Marla K.', on: '2026-05-01' })
    expect(book().colony('B')?.history.intake.by).toBe('Marla K.')
    const refused = await post('/data/names', { what: 'person', from: 'Odalys', to: 'Ines' })
    expect(refused.status).toBe(422)
    expect(wordsOf(await refused.text())).toContain('Odalys is a name with which somebody signs in')
  })

  it('too long, empty or the same: refused in words, nothing written', async () => {
    const before = rowsOf()
    for (const to of ['', 'Wall', 'x'.repeat(41)]) {
      const answer = await post('/data/names', { what: 'removalType', from: 'Wall', to })
      expect(answer.status).toBe(422)
      expect(wordsOf(await answer.text())).toContain('Nothing was changed')
    }
    expect(rowsOf()).toBe(before)
    for (const role of ['beekeeper', 'helper'] as const)
      for (const path of ['/data/names', '/data/long-gone'])
        expect((await yard.ask(role, path)).status).toBe(403)
  })
})

describe('colonies long gone', () => {
  beforeEach(async () => {
    await intake('OLD', 'wall', 'Home', 'Marla', '2023-05-01')
    await send({
      kind: 'inspection',
      colony: 'OLD',
      on: '2023-06-20',
      by: 'Ines',
      opened: true,
      eggs: 'none',
    })
    await send({ kind: 'note', colony: 'OLD', on: '2023-09-01', by: 'Ines', text: 'stand overgrown' })
    await intake('BARE', 'tree', 'Home', 'Marla', '2023-05-02')
    await intake('NEW', 'wall', 'Home', 'Marla', '2026-06-01')
  })
  const idOf = (tag: string) => book().colony(tag)?.summary.id ?? ''

  it('are listed by their last sighting, those of a year ago ticked', async () => {
    const page = await (await yard.ask('operator', '/data/long-gone')).text()
    expect(wordsOf(page)).toMatch(
      /BARE Home, last seen [^,]*2 May 2023.* OLD Home, last seen [^,]*20 Jun 2023/,
    )
    expect(wordsOf(page)).not.toContain('NEW Home')
    expect(page.match(/type="checkbox"[^>]* checked/g)).toHaveLength(2)
  })

  it('are told of on the review, with the way there', async () => {
    expect(await words('/review')).toContain(
      '2 that count as still here came more than a year ago, or were not seen for 60 days. Close what is long gone',
    )
  })

  it('are closed many at once on the day of the last sighting, and opened again together', async () => {
    const id = v7()
    const close = { id, colony: [idOf('OLD'), idOf('BARE')], what: 'unknown', day: 'last-seen' }
    await post('/data/long-gone', close)
    await post('/data/long-gone', close)
    expect(book().colony('OLD')?.history.outcome).toMatchObject({ what: 'unknown', on: '2023-06-20' })
    expect(book().colony('BARE')?.history.outcome).toMatchObject({ what: 'unknown', on: '2023-05-02' })
    expect(
      book()
        .colonies({ open: true })
        .map((c) => c.tag),
    ).toEqual(['NEW'])
    expect(await words(`/data/long-gone?done=${id}`)).toContain(
      'Done: 2 colonies closed: gone, not known how.',
    )
    await post('/data/names/back', { change: id })
    expect(
      book()
        .colonies({ open: true })
        .map((c) => c.tag)
        .sort(),
    ).toEqual(['BARE', 'NEW', 'OLD'])
    expect(book().verify().problems).toEqual([])
    expect(yard.errors).toEqual([])
  })

  it('a day that is not known counts in what became of them, and in no curve', async () => {
    await post('/data/long-gone', { colony: [idOf('OLD')], what: 'died', day: 'not-known' })
    expect(book().colony('OLD')?.history.outcome).toMatchObject({ what: 'died', dayUnknown: true })
    expect(await words('/review')).toContain('Of 3 colonies, 1 was lost (1 died), 2 are still here')
    const none = await post('/data/long-gone', { what: 'died' })
    expect(none.status).toBe(422)
  })
})
