/** Taking in a spreadsheet as a browser without scripts does it: every step's form posted as it came. */
import { beforeEach, describe, expect, it } from 'vitest'
import { type TestYard, testYard } from '../../support/yard-app.ts'
import { wordsOf } from '../../support/yard-on.ts'

const OLD = [
  'Hive #;Date;Job type;Customer;Temp;Queen;Result;Date out',
  '#12;03/04/2026;House wall;4 Elm Row;31;caught;sold;05/05/2026',
  '13;04/04/2026;Belfry;;28;no;dead;06/04/2026',
  '14;04/04/2026;tree;;28;no;Zorched;06/05/2026',
].join('\n')

let yard: TestYard
beforeEach(() => {
  yard = testYard({ day: '2026-06-10' })
})

const UNESCAPED: Record<string, string> = {
  '&amp;': '&',
  '&quot;': '"',
  '&#39;': "'",
  '&lt;': '<',
  '&gt;': '>',
}
const plain = (text: string): string => text.replaceAll(/&(amp|quot|#39|lt|gt);/g, (e) => UNESCAPED[e] ?? e)

/** What a browser would post of the page's form: hidden fields, texts, chosen radios, selected options. */
function formOf(html: string): FormData {
  const form = /<form[^>]*class="import-form"[\s\S]*?<\/form>/.exec(html)?.[0] ?? ''
  const data = new FormData()
  for (const [tag] of form.matchAll(/<input[^>]*>/g)) {
    const name = /name="([^"]*)"/.exec(tag)?.[1]
    const type = /type="([^"]*)"/.exec(tag)?.[1]
    if (name === undefined || (type === 'radio' && !/ checked/.test(tag))) continue
    data.set(plain(name), plain(/value="([^"]*)"/.exec(tag)?.[1] ?? ''))
  }
  for (const [, name, options] of form.matchAll(/<select[^>]*name="([^"]*)"[^>]*>([\s\S]*?)<\/select>/g)) {
    const chosen =
      /<option value="([^"]*)" selected/.exec(options ?? '') ?? /<option value="([^"]*)"/.exec(options ?? '')
    data.set(plain(name ?? ''), plain(chosen?.[1] ?? ''))
  }
  return data
}

const post = async (body: FormData, path = '/data/colonies'): Promise<Response> =>
  yard.ask('operator', path, { method: 'POST', body })

async function read(text: string, name = 'old.csv'): Promise<string> {
  const body = new FormData()
  body.set('go', 'read')
  body.set('file', new File([text], name))
  return (await post(body)).text()
}

/** Posts the form of a page as it stands, with some answers changed. */
async function next(html: string, go: string, changed: Record<string, string> = {}): Promise<Response> {
  const body = formOf(html)
  body.set('go', go)
  for (const [name, value] of Object.entries(changed)) body.set(name, value)
  return post(body)
}

const tags = (): string[] => yard.services.store.colonies().map((c) => c.tag)

describe('step by step', () => {
  it('columns guessed, dates and degrees asked, words told, previewed, taken in, taken back', async () => {
    const columns = await read(OLD)
    expect(wordsOf(columns)).toContain('What is in each column?')
    expect(formOf(columns).get('column-5')).toBe('queen_at_intake')

    const words = await (await next(columns, 'words')).text()
    expect(wordsOf(words)).toContain('Which comes first in the dates?')
    expect(wordsOf(words)).toContain('03/04/2026 in line 2 is Fri 3 Apr 2026')
    expect(wordsOf(words)).toContain('03/04/2026 in line 2 is Wed 4 Mar 2026')

    const unanswered = await next(words, 'preview')
    expect(unanswered.status).toBe(422)
    expect(wordsOf(await unanswered.text())).toContain('Say which comes first in the dates')

    const preview = await (await next(words, 'preview', { order: 'day-first', heat: 'C' })).text()
    expect(wordsOf(preview)).toContain('2 colonies can be taken in, 1 line cannot')
    expect(wordsOf(preview)).toContain('Result: “Zorched” has no meaning yet')
    expect(wordsOf(preview)).toContain('New removal types: Belfry.')
    expect(tags()).toEqual([])

    const taken = await next(preview, 'take-good')
    expect(taken.status).toBe(303)
    expect(tags().sort()).toEqual(['12', '13'])
    expect(yard.services.store.colony('12')?.history).toMatchObject({
      intake: {
        on: '2026-04-03',
        by: 'Odalys',
        removal: { type: 'wall', outdoorC: 31, site: '4 Elm Row' },
        queen: 'caged',
      },
      outcome: { what: 'moved-out', on: '2026-05-05' },
    })

    const done = await (await yard.ask('operator', taken.headers.get('location') ?? '')).text()
    expect(wordsOf(done)).toContain('2 colonies taken in from old.csv')
    const id = /undo\?import=([0-9a-f-]+)/.exec(done)?.[1] ?? ''
    expect(wordsOf(await (await yard.ask('operator', `/data/colonies/undo?import=${id}`)).text())).toContain(
      '2 colonies go out of the book again',
    )
    const undone = await yard.post('operator', '/data/colonies/undo', { import: id })
    expect(undone.status).toBe(303)
    expect(tags()).toEqual([])
    expect(yard.errors).toEqual([])
  })

  it('a preview sent twice writes once', async () => {
    const words = await (await next(await read(OLD), 'words')).text()
    const preview = await (
      await next(words, 'preview', { order: 'day-first', heat: 'C', 'word-outcome-zorched': 'other' })
    ).text()
    expect(wordsOf(preview)).toContain('3 colonies can be taken in')
    expect(wordsOf(preview)).toMatch(/new yards?: /i)
    const one = await next(preview, 'take-all')
    const two = await next(preview, 'take-all')
    expect(two.headers.get('location')).toBe(one.headers.get('location'))
    expect(tags()).toHaveLength(3)
  })

  it('nothing is written when the book changed after the preview', async () => {
    const sheet =
      'tag,removal_type,intake_on,queen_at_intake,yard\nW-1,wall,2026-05-01,caged,Orchard\nW-2,wall,2026-05-01,caged,Orchard'
    const preview = await read(sheet)
    await yard.send('operator', {
      id: '00000000-0000-7000-8000-000000000001',
      kind: 'intake',
      colony: 'W-2',
      on: '2026-06-01',
      by: 'Bram',
      yard: 'Orchard',
      queen: 'caged',
      removal: { type: 'wall' },
    })
    const refused = await next(preview, 'take-all')
    expect(refused.status).toBe(422)
    const words = wordsOf(await refused.text())
    expect(words).toContain('Nothing was written.')
    expect(words).toContain('is already in the yard')
    expect(tags()).toEqual(['W-2'])
  })

  it('the colonies CSV itself needs no questions, and comes out as it went in', async () => {
    const sheet =
      'tag,removal_type,intake_on,queen_at_intake,yard,outcome,outcome_on\r\nW-1,=bell tower,2026-05-01,caged,Orchard,died,2026-05-20\r\n'
    const preview = await read(sheet, 'colonies.csv')
    expect(wordsOf(preview)).toContain('1 colony can be taken in')
    await next(preview, 'take-all')
    const out = await yard.ask('operator', '/data/colonies/colonies.csv')
    expect(out.headers.get('content-type')).toContain('text/csv')
    // A spreadsheet must not take it for a formula.
    expect(await out.text()).toContain("W-1,'=bell tower,,2026-05-01,Orchard,caged")
  })

  it('offers to merge names, names dates that read two ways, and takes long empty outcomes as not known', async () => {
    const sheet = [
      'Box,Date,Type,Yard,By,Result',
      'A,3/4/2026,Wall,Home,Marla,',
      'B,6/5/2026,wall,home,marla,',
      'C,1/2/2023,WALL,home,Ines,',
    ].join('\n')
    const words = await (await next(await read(sheet), 'words')).text()
    expect(wordsOf(words)).toContain('Yards: “home”, “Home”')
    expect(wordsOf(words)).toContain(
      '3 dates can be read two ways, and none in this sheet has a number above 12',
    )
    expect(wordsOf(words)).toContain('3/4/2026 in line 2 is Fri 3 Apr 2026')
    expect(wordsOf(words)).toContain('nothing written, and it came more than 90 days ago 1 line')
    const preview = await (await next(words, 'preview', { order: 'day-first' })).text()
    expect(wordsOf(preview)).toContain('Home and home are taken as one: home')
    expect(wordsOf(preview)).toContain('3 dates could be read the other way round')
    expect(wordsOf(preview)).toContain('line 2, Date 3/4/2026: Fri 3 Apr, not Wed 4 Mar')
    expect(wordsOf(preview)).toContain('1 gone, not known how, 2 still in the yard')
    expect(wordsOf(preview)).toContain('1 colony left on a day that is not known')
    expect(wordsOf(preview)).toContain('Gone, not known how, day not known')
    const apart = await (await next(words, 'preview', { order: 'day-first', 'same-yard-home': '' })).text()
    expect(wordsOf(apart)).not.toContain('Home and home are taken as one')
    await next(preview, 'take-all')
    expect(yard.services.store.yards().map((y) => y.yard)).toEqual(['home'])
    expect(yard.services.store.colonies({ open: true }).map((c) => c.tag)).toEqual(['A', 'B'])
    expect(yard.services.store.colony('C')?.history.outcome).toMatchObject({
      what: 'unknown',
      dayUnknown: true,
    })
    expect(yard.errors).toEqual([])
  })

  it('cells pasted from a spreadsheet come with tabs', async () => {
    const body = new FormData()
    body.set('go', 'read')
    body.set('pasted', 'Box\tDate\tType\nA\t2026-05-01\twall')
    expect(wordsOf(await (await post(body)).text())).toContain('1 line below the headings in line 1')
  })
})

describe('what cannot be read', () => {
  it.each([
    ['a workbook', new Uint8Array([0x50, 0x4b, 3, 4, 0]), 'This is a workbook'],
    ['an empty file', new Uint8Array([]), 'Choose a file, or paste the cells'],
    ['a picture', new Uint8Array([0x89, 0x50, 0, 1]), 'This is no text'],
  ])('%s', async (_, bytes, said) => {
    const body = new FormData()
    body.set('go', 'read')
    body.set('file', new File([bytes], 'x'))
    const answer = await post(body)
    expect(answer.status).toBe(422)
    expect(wordsOf(await answer.text())).toContain(said)
  })

  it('two columns for one field, or none for the day', async () => {
    const columns = await read('Box,Mood\nA,calm')
    const answer = await next(columns, 'words')
    expect(answer.status).toBe(422)
    expect(wordsOf(await answer.text())).toContain('No column tells the day')
  })

  it('nonsense in the form leads back to the columns, never to an error', async () => {
    const body = new FormData()
    body.set('go', 'preview')
    body.set('text', '<script>alert(1)</script>;b\n1;2')
    body.set('column-0', 'no-such-field')
    body.set('headerLine', '-5')
    body.set('delimiter', 'comma; drop table')
    body.set('importId', 'not an id')
    const answer = await post(body)
    expect(answer.status).toBe(422)
    expect(await answer.text()).not.toContain('<script>alert')
    expect((await post(new FormData())).status).toBe(200)
    expect(yard.errors).toEqual([])
  })

  it('an import that is not there', async () => {
    expect((await yard.ask('operator', '/data/colonies/undo?import=nothing')).status).toBe(404)
    expect((await yard.post('operator', '/data/colonies/undo', { import: 'nothing' })).status).toBe(404)
  })
})

describe('taking back', () => {
  it('names what was entered on top instead', async () => {
    const preview = await read(
      'tag,removal_type,intake_on,queen_at_intake,yard\nW-1,wall,2026-05-01,caged,Orchard',
    )
    await next(preview, 'take-all')
    await yard.send('operator', {
      id: '00000000-0000-7000-8000-000000000002',
      kind: 'note',
      colony: 'W-1',
      on: '2026-06-01',
      by: 'Bram',
      text: 'Calm.',
    })
    const id = yard.services.store.imports.list()[0]?.id ?? ''
    const answer = await yard.post('operator', '/data/colonies/undo', { import: id })
    expect(answer.status).toBe(409)
    const words = wordsOf(await answer.text())
    expect(words).toContain('something was entered on top')
    expect(words).toContain('W-1')
    expect(tags()).toEqual(['W-1'])
  })

  it('is not for beekeepers and helpers', async () => {
    for (const role of ['beekeeper', 'helper'] as const) {
      for (const path of ['/data/colonies', '/data/colonies/colonies.csv', '/data/colonies/undo'])
        expect((await yard.ask(role, path)).status).toBe(403)
      const body = new FormData()
      body.set('go', 'take-all')
      expect((await yard.ask(role, '/data/colonies', { method: 'POST', body })).status).toBe(403)
    }
  })
})
