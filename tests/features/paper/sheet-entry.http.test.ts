/** A whole sheet typed in at once: every row by itself, nothing half-written, nothing twice, nothing lost. */
import { v7 } from 'uuid'
import { beforeEach, describe, expect, it } from 'vitest'
import { given, wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'

const TODAY = '2026-06-10'
const BOXES = ['W-2', 'W-3', 'W-10']

const intake = (colony: string) => ({
  id: v7(),
  colony,
  kind: 'intake',
  on: '2026-06-05',
  by: 'Maren',
  removal: { type: 'wall' },
  yard: 'North field',
  stand: colony.replace(/\D+/, ''),
  queen: 'unseen',
})

let yard: Yard
beforeEach(async () => {
  yard = await yardOn(TODAY)
  given(yard, BOXES.map(intake))
})

const PAGE = `/sheet-entry?yard=North+field&day=${TODAY}`
type Fields = Record<string, string | string[]>

/** The hidden fields of the page, as a browser posts them. */
function hiddenIn(html: string): Fields {
  const form = html.slice(html.indexOf('id="sheet-form"'))
  const fields: Fields = {}
  for (const [tag] of form.matchAll(/<input type="hidden"[^>]*>/g)) {
    const [name, value] = [/name="([^"]*)"/.exec(tag)?.[1], /value="([^"]*)"/.exec(tag)?.[1]]
    if (name !== undefined) fields[name] = value ?? ''
  }
  return fields
}
const blank = async (): Promise<Fields> => hiddenIn((await yard.get(PAGE)).text)
const post = async (fields: Fields, shown?: Fields) =>
  yard.post('/sheet-entry', { ...(shown ?? (await blank())), ...fields })
const entriesOf = (tag: string) => (yard.store.colony(tag)?.journal ?? []).map((r) => r.entry).slice(1)
const count = (): number => [...yard.store.journal()].length

describe('the page', () => {
  it('has a card for each box of the sheet, in its order, and two more', async () => {
    const { text } = await yard.get(PAGE)
    const legends = [...text.matchAll(/<legend>([^<]+)/g)].map((m) => (m[1] ?? '').trim())
    expect(legends.filter((l) => l !== 'Signs')).toEqual([...BOXES, 'Another box', 'Another box'])
  })

  it('has its fields in the order of the sheet', async () => {
    const { SHEET } = await import('../../../src/features/paper/sheet.ts')
    const { text } = await yard.get(PAGE)
    const names = [...text.matchAll(/name="r0\.([^"]+)"/g)].map((m) => m[1] ?? '')
    const shown = [...new Set(names)].filter((n) => SHEET.some((f) => f.name === n))
    expect(shown).toEqual(SHEET.map((f) => f.name))
  })

  it('cannot be sent by Enter in a field: its first button is disabled', async () => {
    const { text } = await yard.get(PAGE)
    const first = /<button[^>]*>/.exec(text.slice(text.indexOf('id="sheet-form"')))?.[0]
    expect(first).toContain('disabled')
  })
})

describe('a sheet', () => {
  it('is written row by row, empty rows left alone, signed by who walked and recorded by who typed', async () => {
    const saved = await post({
      by: 'Isolde',
      'r0.eggs': 'single',
      'r0.at': '09:10',
      'r2.missed.reason': 'rain',
    })
    expect(saved.status).toBe(303)
    expect(saved.to).toContain('saved=2')
    expect(entriesOf('W-2')).toMatchObject([
      { kind: 'inspection', opened: true, eggs: 'single', on: TODAY, at: '09:10', by: 'Isolde' },
    ])
    expect(entriesOf('W-3')).toEqual([])
    expect(entriesOf('W-10')).toMatchObject([{ kind: 'missed-visit', reason: 'rain' }])
    expect(yard.store.changes({ limit: 1 })[0]?.recordedBy).toBe('Ines')
    expect(wordsOf((await yard.get(saved.to ?? '')).text)).toMatch(
      /2 boxes are in the book.*W-2 .*In the book for Wed 10 Jun: Opened \(eggs single\), signed Isolde/,
    )
    // In the journal who was at the box stands first.
    expect(wordsOf((await yard.get('/colony/W-2')).text)).toContain('Isolde, entered by Ines')
  })

  it('keeps its good rows when another fails; the one that failed comes back filled in, with why', async () => {
    const answer = await post({
      'r0.eggs': 'single',
      'r1.eggs': 'none',
      'r1.cellCount': 'many',
      'r1.given1.what': 'syrup',
      'r1.note': 'a "quoted" <note>',
    })
    expect(answer.status).toBe(422)
    expect(entriesOf('W-2')).toHaveLength(1)
    // Neither the look nor the syrup of the row that failed.
    expect(entriesOf('W-3')).toEqual([])
    const words = wordsOf(answer.text)
    expect(words).toContain('1 box is in the book; 1 box is not yet')
    expect(words).toContain('How many must be a number, not “many”')
    expect(answer.text).toContain('name="r1.cellCount" type="text" value="many"')
    expect(answer.text).toContain('value="a &quot;quoted&quot; &lt;note&gt;"')
    expect(answer.text).toMatch(/name="r1\.eggs"[^>]*>(?:(?!<\/select>).)*value="none" selected/)
    expect(answer.text).not.toMatch(/name="r0\.eggs"[^>]*>(?:(?!<\/select>).)*selected/)
  })

  it('once mended, writes only what was missing', async () => {
    const refused = await post({ 'r0.eggs': 'single', 'r1.cellCount': 'many' })
    const again = await post({ 'r1.cellCount': '4', 'r1.cells': 'open' }, hiddenIn(refused.text))
    expect(again.to).toContain('saved=1')
    expect(entriesOf('W-2')).toHaveLength(1)
    expect(entriesOf('W-3')).toMatchObject([{ kind: 'inspection', cells: 'open', cellCount: 4 }])
  })

  it('sent twice is written once: a lost answer loses and doubles nothing', async () => {
    const shown = await blank()
    const fields = { 'r0.eggs': 'single', 'r0.given1.what': 'syrup', 'r1.stores': 'low', 'r1.opened': 'no' }
    await post(fields, shown)
    const n = count()
    expect((await post(fields, shown)).status).toBe(303)
    expect(count()).toBe(n)
  })

  it('takes a box that is not on it, by its tag, and says so when there is none', async () => {
    given(yard, [
      { ...intake('N-9'), on: '2026-06-08' },
      {
        id: v7(),
        colony: 'N-9',
        kind: 'inspection',
        on: '2026-06-09',
        by: 'Maren',
        opened: false,
        signs: [],
      },
    ])
    expect((await yard.get(PAGE)).text.includes('stand 9')).toBe(false)
    const saved = await post({ 'r3.tag': 'n-9', 'r3.opened': 'no', 'r4.tag': 'Z-1', 'r4.opened': 'no' })
    expect(saved.status).toBe(422)
    expect(entriesOf('N-9')).toMatchObject([{ on: '2026-06-09' }, { on: TODAY, opened: false }])
    expect(wordsOf(saved.text)).toContain('Tag names no colony of this yard: “Z-1”')
    expect(wordsOf((await post({ 'r3.opened': 'no' })).text)).toContain('Tag must not be empty')
  })

  it('refuses a row that contradicts its colony, that row alone', async () => {
    const early = { ...(await blank()), day: '2026-06-04' }
    const answer = await post({ 'r0.eggs': 'single' }, early)
    expect(answer.status).toBe(422)
    expect(wordsOf(answer.text)).toContain('is before the intake')
    expect(entriesOf('W-2')).toEqual([])
  })

  it('of yesterday is that of yesterday’s morning, with the boxes that have left since', async () => {
    yard.setDay('2026-06-11')
    await yard.post('/colony/W-3/outcome', { on: '2026-06-11', what: 'absconded' })
    const { text } = await yard.get(PAGE)
    expect(text).toContain('W-3')
    const saved = await post({ 'r1.opened': 'no' }, hiddenIn(text))
    expect(saved.status).toBe(303)
    expect(entriesOf('W-3')).toMatchObject([{ kind: 'outcome' }, { kind: 'inspection', on: TODAY }])
  })

  it('with nothing in it writes nothing', async () => {
    const n = count()
    expect((await post({})).to).toContain('saved=0')
    expect(count()).toBe(n)
  })

  it.each([
    ['r0.eggs', 'blue'],
    ['r0.framesOfBees', '99'],
    ['r0.framesOfBees', '0.3'],
    ['r0.temper', '9'],
    ['r0.at', '25:00'],
    ['r0.wash.bees', '300'],
    ['r0.given1.frames', '2'],
    ['r0.note', 'x'.repeat(2001)],
    ['r0.missed.reason', 'tired'],
    ['r0.signs', 'bears'],
    ['by', 'y'.repeat(61)],
  ])('with %s = %.20s is refused in that row, kept, nothing written', async (name, value) => {
    const n = count()
    const answer = await post({ ...(name === 'r0.note' ? {} : { 'r0.opened': 'yes' }), [name]: value })
    expect(answer.status).toBe(422)
    expect(count()).toBe(n)
    expect(yard.errors).toEqual([])
  })

  it('a helper types in what they saw, signed by themselves whatever name is typed', async () => {
    const helper = await yardOn(TODAY, 'helper')
    given(helper, BOXES.map(intake))
    const shown = hiddenIn((await helper.get(PAGE)).text)
    const saved = await helper.post('/sheet-entry', { ...shown, by: 'Somebody', 'r0.eggs': 'single' })
    expect(saved.status).toBe(303)
    expect(helper.store.changes({ limit: 1 })[0]).toMatchObject({ recordedBy: 'Ines', entry: { by: 'Ines' } })
  })
})
