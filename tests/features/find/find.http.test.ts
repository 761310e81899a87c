/** Finding anything: by tag however it is typed, place, customer and words; by each role what it may see. */
import { v7 } from 'uuid'
import { expect, it } from 'vitest'
import { findBoxes, snippet } from '../../../src/features/find/search.ts'
import { folded } from '../../../src/folded.ts'
import type { ColonySummary } from '../../../src/store/index.ts'
import { processorOf } from '../../support/processor.ts'
import { type Yard, yardOn } from '../../support/yard-on.ts'

const DAY = '2026-06-10'

const intakeOf = (tag: string, more: Record<string, unknown> = {}): Record<string, unknown> => ({
  id: v7(),
  colony: tag,
  kind: 'intake',
  on: '2026-06-04',
  by: 'Bram',
  removal: { type: 'wall', site: '4 Rue de l’Église, Zoë Lindqvist' },
  yard: 'North field',
  stand: '3',
  queen: 'unseen',
  ...more,
})

async function filled(role: 'helper' | 'operator' = 'operator'): Promise<Yard> {
  const yard = await yardOn(DAY, role)
  const result = yard.store.append(
    [
      intakeOf('W-07'),
      intakeOf('W-11', { removal: { type: 'swarm' }, yard: 'Mill', stand: '12', on: '2026-06-08' }),
      {
        id: v7(),
        colony: 'W-11',
        kind: 'note',
        on: '2026-06-09',
        by: 'Bram',
        text: 'Café roof leaks over the stand.',
      },
    ],
    { today: DAY, recordedAt: `${DAY}T08:00:00.000Z` },
  )
  expect(result).toMatchObject({ ok: true })
  return yard
}

const find = async (yard: Yard, q: string): Promise<string> => {
  const answer = await yard.get(`/find?q=${encodeURIComponent(q)}`)
  return answer.status === 303 ? `→ ${answer.to}` : answer.text.slice(answer.text.indexOf('<main'))
}

it.each(['W-07', 'w07', 'W7', ' w 07 '])('“%s” opens W-07 at once', async (typed) => {
  expect(await find(await filled(), typed)).toBe('→ /colony/W-07')
})

it.each([
  '/',
  '/round',
  '/yard',
  '/intake',
  '/colony/W-07',
  '/colony/W-07/visit',
  '/how',
  '/account',
  '/review',
])('is in the head of %s', async (path) => {
  const { status, text } = await (await filled()).get(path)
  expect(status).toBe(200)
  expect(text.slice(text.indexOf('<header'), text.indexOf('</header'))).toContain('action="/find"')
})

it('shows the boxes written down last first, and of two that fit the one that came last', async () => {
  const yard = await filled()
  const empty = await find(yard, '')
  expect(empty.indexOf('W-11')).toBeLessThan(empty.indexOf('W-07'))
  const both = await find(yard, 'w')
  expect(both.indexOf('/colony/W-11')).toBeLessThan(both.indexOf('/colony/W-07'))
})

it.each([
  ['mill', 'W-11'],
  ['stand 12', 'W-11'],
  ['12', 'W-11'],
  ['swarm', 'W-11'],
  ['cafe leaks', 'W-11'],
  ['CAFÉ', 'W-11'],
  ['eglise', 'W-07'],
  ['enjambre', 'W-11'],
  ['sitio 12', 'W-11'],
  ['pared', 'W-07'],
  ['zoe', 'W-07'],
])('“%s” finds %s alone', async (typed, tag) => {
  const page = await find(await filled(), typed)
  expect([...new Set(page.match(/W-\d\d/g))]).toEqual([tag])
})

it('finds a box by what is to be done there and how it stands, in English and in Spanish', async () => {
  const yard = await filled()
  yard.store.append(
    [
      {
        id: v7(),
        colony: 'W-07',
        kind: 'inspection',
        on: '2026-06-09',
        by: 'Bram',
        opened: true,
        eggs: 'none',
        cells: 'none',
        open: 'none',
        signs: ['brood-disease-suspected'],
      },
    ],
    { today: DAY, recordedAt: `${DAY}T09:00:00.000Z` },
  )
  expect(yard.store.colony('W-07')?.summary.action).toBe('call-inspector')
  for (const typed of ['call inspector', 'llamar inspector', 'INSPECTOR APÍCOLA'])
    expect([...new Set((await find(yard, typed)).match(/W-\d\d/g))], typed).toEqual(['W-07'])
})

it('a helper finds no customer and no street, and is not told that there is one', async () => {
  const yard = await filled('helper')
  for (const typed of ['eglise', 'Zoë Lindqvist']) {
    const page = await find(yard, typed)
    expect(page).toContain('Nothing fits')
    expect(page).not.toContain('W-07')
  }
  expect(await find(yard, 'leaks')).toContain('W-11')
})

it('a caller is found by name, street and the end of the number, by beekeepers only', async () => {
  const yard = await yardOn(DAY)
  await yard.store.removals.save(
    v7(),
    0,
    {
      job: { name: 'Odalys Brandt', phone: '+44 7700 900123', address: '12 Larch Row' },
      site: {},
      agreement: {},
      check: {},
      work: {},
    },
    { savedAt: `${DAY}T08:00:00.000Z`, savedBy: 'Ines' },
  )
  for (const typed of ['odalys', 'larch row', '900123'])
    expect(await find(yard, typed), typed).toContain('Odalys Brandt')
  expect(await find(yard, 'odalys elm')).toContain('Nothing fits')
})

it('what was taken back is not found', async () => {
  const yard = await filled()
  const note = yard.store.mentions('leaks')[0]?.entry.id ?? ''
  await yard.post(`/entry/${note}/withdraw`, { reason: 'Tapped by mistake' })
  expect(await find(yard, 'leaks')).toContain('Nothing fits')
})

it('nothing typed: the boxes written down last come first', async () => {
  const yard = await filled()
  yard.store.append([{ id: v7(), colony: 'W-07', kind: 'note', on: DAY, by: 'Bram', text: 'later' }], {
    today: DAY,
    recordedAt: `${DAY}T09:00:00.000Z`,
  })
  expect([...(await find(yard, '')).matchAll(/W-\d\d(?=<)/g)].map(([tag]) => tag).slice(0, 2)).toEqual([
    'W-07',
    'W-11',
  ])
})

it('a word like % or _ is looked for as it is', async () => {
  const yard = await filled()
  expect(await find(yard, '%')).toContain('Nothing fits')
  expect(await find(yard, 'c_f')).toContain('Nothing fits')
})

it('letters are folded as people leave accents out', () => {
  expect(folded('Zoë Ørsted, Straße, ŁÓDŹ')).toBe('zoe orsted, strasse, lodz')
})

it('a snippet shows the words where they stand', () => {
  const text = `${'before '.repeat(30)}the Café roof leaks ${'after '.repeat(40)}`
  const parts = snippet(text, ['cafe'])
  expect(parts.find((p) => p.hit)?.text).toBe('Café')
  expect(parts.map((p) => p.text).join('').length).toBeLessThan(160)
})

it('those that left come after those that are there', () => {
  const at = (tag: string, closedOn: string | null): ColonySummary =>
    ({
      tag,
      yard: 'Mill',
      stand: null,
      removalType: 'wall',
      phase: 'queenright',
      outcome: null,
      intakeOn: '2026-05-01',
      closedOn,
    }) as ColonySummary
  const found = findBoxes('mill', [at('A-1', '2026-06-01'), at('A-2', null)])
  expect(found.map((f) => f.summary.tag)).toEqual(['A-2', 'A-1'])
})

it('among 12,000 entries a word is found in well under a second', async () => {
  const yard = await yardOn(DAY)
  const tags = Array.from({ length: 100 }, (_, i) => `B-${i + 1}`)
  const stamp = { today: DAY, recordedAt: `${DAY}T08:00:00.000Z` }
  yard.store.append(
    tags.map((tag) => intakeOf(tag)),
    stamp,
  )
  for (const tag of tags)
    yard.store.append(
      Array.from({ length: 119 }, (_, i) => ({
        id: v7(),
        colony: tag,
        kind: 'note',
        on: DAY,
        by: 'Bram',
        text: `Höhe ${i}, ${tag}: four seams of bees and some stores`,
      })),
      stamp,
    )
  yard.store.append(
    [{ id: v7(), colony: 'B-50', kind: 'note', on: DAY, by: 'Bram', text: 'propolised quilt' }],
    stamp,
  )
  const { made, ms: took } = await processorOf(() => find(yard, 'propolised'))
  expect(made).toContain('B-50')
  console.info(`found among 12,001 entries in ${Math.round(took)} ms`)
  expect(took).toBeLessThan(1000)
})
