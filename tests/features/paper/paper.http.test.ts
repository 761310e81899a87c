/** The round sheet: which boxes, in which order, in pages; its ticks in the order of the visit's form. */
import { v7 } from 'uuid'
import { beforeAll, describe, expect, it } from 'vitest'
import { SHEET } from '../../../src/features/paper/sheet.ts'
import { wordsIn } from '../../../src/words/index.ts'
import { given, wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'

const TODAY = '2026-06-10'

const intake = (colony: string, on: string, more: Record<string, unknown> = {}) => ({
  id: v7(),
  colony,
  kind: 'intake',
  on,
  by: 'Maren',
  removal: { type: 'wall', site: 'Quillpen Row 9' },
  yard: 'North field',
  stand: colony.replace(/\D+/, ''),
  queen: 'unseen',
  ...more,
})

let yard: Yard
beforeAll(async () => {
  yard = await yardOn(TODAY)
  given(yard, [
    ...['W-10', 'W-2', 'W-3', 'W-4'].map((tag) => intake(tag, '2026-06-05')),
    intake('S-1', '2026-06-05', { yard: 'South bank' }),
    intake('N-9', '2026-06-08'),
    { id: v7(), colony: 'N-9', kind: 'inspection', on: '2026-06-09', by: 'Isolde', opened: false, signs: [] },
  ])
})

const open = async (path: string): Promise<string> => {
  const answer = await yard.get(path)
  expect(answer.status).toBe(200)
  return answer.text
}
const blocks = (html: string): string[] =>
  [...html.matchAll(/class="block-tag">([^<]+)/g)].map((m) => m[1] ?? '')

describe('the round sheet', () => {
  it('has the boxes of the round in stand order, a yard on its own pages, pages counted', async () => {
    const html = await open('/paper?day=2026-06-10')
    expect(blocks(html)).toEqual(['W-2', 'W-3', 'W-4', 'W-10', 'S-1'])
    const heads = [...html.matchAll(/<header class="leaf-head">(.*?)<\/header>/g)].map((m) =>
      wordsOf(m[1] ?? '').trim(),
    )
    expect(heads).toEqual([
      // A page in front of each yard, then its blocks.
      'North field Wed 10 Jun 2026 walked by page 1 of 5',
      'North field Wed 10 Jun 2026 walked by page 2 of 5',
      'North field Wed 10 Jun 2026 walked by page 3 of 5',
      'South bank Wed 10 Jun 2026 walked by page 4 of 5',
      'South bank Wed 10 Jun 2026 walked by page 5 of 5',
    ])
  })

  it('says in front what to bring and mind, and at each box why, with every caution there is', async () => {
    const hot = await yardOn(TODAY)
    given(hot, [
      intake('W-1', '2026-06-05', { removal: { type: 'wall', sprayed: 'yes' }, temper: 5 }),
      intake('W-2', '2026-05-29', { tiedComb: true }),
      intake('S-1', '2026-06-05', { yard: 'South bank' }),
    ])
    const html = (await hot.get('/paper')).text
    const leaves = html.split('<section class="leaf')
    const fronts = leaves.filter((leaf) => leaf.startsWith(' leaf-front'))
    expect(fronts).toHaveLength(2)
    const [north = '', south = ''] = fronts.map((front) => wordsOf(front))
    expect(north).toMatch(/Bring .*scissors for the comb ties.* for W-2/)
    expect(north).toContain('have the plan for anaphylaxis at hand')
    expect(north).toMatch(/W-1 .*Mind: Fierce when last seen \(5 of 5\).* Mind: Sprayed before the removal/)
    expect(north).not.toContain('S-1')
    // The reason, as the round says it on the screen.
    expect(south).toContain('from the fourth day after, eggs can only be new')
  })

  it('of one yard, of all its boxes, of another day: plans as they will be that morning', async () => {
    expect(blocks(await open('/paper?yard=South+bank'))).toEqual(['S-1'])
    expect(blocks(await open('/paper?yard=North+field&all=1'))).toEqual(['W-2', 'W-3', 'W-4', 'N-9', 'W-10'])
    const ahead = await open('/paper?yard=North+field&day=2026-06-13')
    expect(blocks(ahead)).toContain('N-9')
    expect(wordsOf(ahead)).toMatch(/W-2 .*late 1 day, since Fri 12 Jun/)
  })

  it.each(['2026-06-09', '2027-01-01', 'tomorrow', ''])('of the day %j is that of today', async (day) =>
    expect(await open(`/paper?day=${day}`)).toContain('Wed 10 Jun 2026'),
  )

  it('is as large as asked, else as the yard’s units suggest', async () => {
    expect(await open('/paper?size=a4')).toContain('class="leaves leaves-a4"')
    expect(await open('/paper?size=letter')).toContain('class="leaves leaves-letter"')
    expect(await open('/paper')).toContain('class="leaves leaves-letter"')
  })

  it('says what to look for, and holds nothing private', async () => {
    const html = await open('/paper?all=1')
    expect(wordsOf(html)).toContain('The first brood check: Eggs? Queen cells? Neither?')
    expect(html).not.toContain('Quillpen')
  })

  it('asks nothing again that was recorded since the morning', async () => {
    const later = await yardOn(TODAY)
    const looked = (colony: string, more: Record<string, unknown>) => ({
      id: v7(),
      colony,
      kind: 'inspection',
      on: TODAY,
      by: 'Isolde',
      opened: true,
      ...more,
    })
    given(later, [
      ...['W-2', 'W-3', 'W-4'].map((tag) => intake(tag, '2026-06-05')),
      looked('W-2', { eggs: 'single', cells: 'none', queen: 'seen', stores: 'enough' }),
      looked('W-3', { eggs: 'none', open: 'none', cells: 'none' }),
    ])
    const html = (await later.get('/paper')).text
    expect(blocks(html)).toEqual(['W-3', 'W-4'])
    expect(wordsOf(html)).toMatch(/W-3 stand 3 day 5 seen today .*Give a frame of eggs/)
    expect(blocks((await later.get('/paper?all=1')).text)).toEqual(['W-2', 'W-3', 'W-4'])
    // What is typed in afterwards is still held against the morning.
    expect((await later.get(`/sheet-entry?day=${TODAY}`)).text).toContain('The first brood check')
  })

  it('says so when it would be empty', async () => {
    const quiet = await yardOn(TODAY)
    expect(wordsOf((await quiet.get('/paper')).text)).toContain('No box asks for anything more on that day')
  })

  it('has its ticks in the order of the form of a visit', async () => {
    const paper = await open('/paper?yard=South+bank')
    const onPaper = [...paper.matchAll(/data-field="([^"]+)"/g)].map((m) => m[1] ?? '')
    expect(onPaper).toEqual(SHEET.map((f) => f.name))
    const form = await open('/colony/S-1/visit')
    const inForm = [...new Set([...form.matchAll(/name="([^"]+)"/g)].map((m) => m[1] ?? ''))]
    const shared = onPaper.filter((name) => name !== 'note' && !name.startsWith('missed.'))
    expect(shared.filter((name) => !inForm.includes(name))).toEqual([])
    // The form leads with what the plan asks of this box; what is left stands in the order of the paper.
    const asked = ['cells', 'stores', 'signs', 'lost', 'framesOfBrood']
    const rest = (names: string[]): string[] => names.filter((n) => shared.includes(n) && !asked.includes(n))
    expect(rest(inForm)).toEqual(rest(shared))
  })

  it('offers every answer that the form offers', async () => {
    const form = await open('/colony/S-1/visit')
    for (const field of SHEET.filter((f) => f.choices !== undefined && !f.name.startsWith('missed.'))) {
      const offered = [...form.matchAll(/name="([^"]+)" value="([^"]+)"/g)].flatMap((m) =>
        m[1] === field.name ? [m[2]] : [],
      )
      expect(
        field.choices?.(wordsIn('en')).map((c) => c.value),
        field.name,
      ).toEqual(offered)
    }
  })
})

describe('stand labels', () => {
  it('carry the tag, where the box stands, and the address as phones reach it', async () => {
    const html = await open('/labels?yard=South+bank&address=yard.example')
    expect(wordsOf(html)).toMatch(/S-1 South bank stand 1 yard\.example\/colony\/S-1/)
    expect(html.match(/class="label"/g)).toHaveLength(1)
    expect(html.match(/<svg aria-hidden="true" xmlns/g)).toHaveLength(1)
  })

  it('are made with the address of the request where none is typed', async () =>
    expect(wordsOf(await open('/labels'))).toContain('yard.test/colony/W-2'))

  it('keep what was typed when it is no address, and say so', async () => {
    const html = await open('/labels?address=ftp%3A%2F%2F%22%3E%3Cb%3E')
    expect(wordsOf(html)).toContain('must be an address like https://yard.example')
    expect(html).toContain('value="ftp://&quot;&gt;&lt;b&gt;"')
  })

  it('warn of an address that no phone in the yard can open', async () => {
    expect(wordsOf(await open('/labels?address=http://localhost:8420'))).toContain('is this machine alone')
    expect(wordsOf(await open('/labels?address=https://yard.example'))).not.toContain('that needs https')
  })
})
