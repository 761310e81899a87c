/** Health through the app: washes, treatment window, a suspected disease held and cleared, pests, feed. */
import { v7 } from 'uuid'
import { beforeEach, describe, expect, test } from 'vitest'
import { INTAKE, wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'

let yard: Yard
beforeEach(async () => {
  yard = await yardOn('2026-05-30')
  for (const colony of ['W-1', 'W-2']) await yard.post('/intake', { ...INTAKE, colony })
})

const visit = (tag: string, fields: Record<string, string | string[]>) =>
  yard.post(`/colony/${tag}/visit`, { on: '2026-05-30', opened: 'yes', ...fields })
const health = async (tag = 'W-1'): Promise<string> => wordsOf((await yard.get(`/colony/${tag}/health`)).text)

describe('mites', () => {
  test('a wash is told with its limits, its threshold and what changed', async () => {
    expect(await health()).toContain('No wash yet')
    await yard.post('/colony/W-1/wash', { on: '2026-05-16', bees: '300', mites: '9' })
    await yard.post('/colony/W-1/wash', { on: '2026-05-30', bees: '300', mites: '24' })
    const words = await health()
    // Wilson's limits of 24 of 300, and Newcombe's of the difference, as in tests/features/health.
    expect(words).toContain('8 per 100 bees (5.4 to 11.6)')
    expect(words).toContain(
      'Over the threshold of 3 per 100, even at the lower limit: treat (the label is the law), then wash again.',
    )
    expect(words).toMatch(
      /More mites since Sat 16 May, 14 days before: \+5 per 100 \(\+1\.3 to \+8\.9\)\. At this pace they double about every 10 days\./,
    )
    expect(words).toContain('9 on 300')
  })
  test('a small or middling sample is not made to say more than it can', async () => {
    await yard.post('/colony/W-1/wash', { on: '2026-05-30', bees: '60', mites: '2' })
    const words = await health()
    expect(words).toContain(
      'Over the threshold of 3 per 100 by the count: wash again, or treat (the label is the law). The sample leaves room for chance. 60 bees are few',
    )
  })
  test('the threshold is that of the month', async () => {
    yard.store.settings.set('protocol', { miteThresholdByMonth: { '5': 1 } })
    await yard.post('/colony/W-1/wash', { on: '2026-05-30', bees: '300', mites: '9' })
    expect(await health()).toContain('Over the threshold of 1 per 100')
  })
  test('bad numbers come back beside their field', async () => {
    const answer = await yard.post('/colony/W-1/wash', { on: '2026-05-30', bees: '3', mites: '24' })
    expect(answer.status).toBe(422)
    expect(wordsOf(answer.text)).toContain('24 mites on 3 bees: are the two numbers swapped?')
  })
})

describe('the window for a treatment', () => {
  test('is on the ribbon and on the page, with the label as law and no dose', async () => {
    // A queen lost at the removal: her last brood is out before the new queen's is capped.
    await yard.post('/intake', { ...INTAKE, colony: 'W-3', queen: 'lost' })
    await visit('W-3', { on: '2026-05-06', eggs: 'none', open: 'some', cells: 'capped' })
    const page = await yard.get('/colony/W-3/health')
    const words = wordsOf(page.text)
    const { broodless } = yard.store.colony('W-3')?.summary.plan.spans ?? {}
    expect(broodless).toEqual({ from: '2026-05-22', to: expect.any(String) })
    expect(words).toMatch(/Fri 22 May to \w+ \d+ \w+ : no capped brood, so every mite is on a bee/)
    expect(words).toContain('The label registered where you are is the law')
    expect(words).toContain('Respirator')
    expect(words).not.toMatch(/\d+ ?(g|ml|mg)\b[^.]*(per|a) (hive|colony|seam|box)/i)
    expect(page.text).toContain('rb-broodless')
    expect((await yard.get('/colony/W-3')).text).toContain('rb-broodless')
    expect(page.text).toMatch(
      /aria-label="Brood ribbon\.[^"]*Treatment window, no capped brood: perhaps no capped brood Fri 22 May/,
    )
  })
  test('a treatment is recorded with its product, under the caution', async () => {
    const form = wordsOf((await yard.get('/colony/W-1/treat')).text)
    expect(form).toContain('Respirator')
    const saved = await yard.post('/colony/W-1/treat', {
      what: 'treatment',
      on: '2026-05-29',
      product: 'Oxal strips, lot 9',
    })
    expect(saved.status).toBe(303)
    expect(await health()).toContain('Treated: Fri 29 May (Oxal strips, lot 9)')
  })
  test('none in sight is said', async () => {
    await yard.post('/intake', { ...INTAKE, colony: 'W-4', queen: 'caged', on: '2026-05-29' })
    expect(await health('W-4')).toContain('No time without capped brood is in sight')
  })
})

describe('a suspected brood disease', () => {
  beforeEach(async () => {
    yard.store.settings.set('inspector', 'Hollis Vane, 555 0111')
    await visit('W-1', { on: '2026-05-20', signs: 'brood-disease-suspected' })
  })

  test('is shown with what to do and whom to call', async () => {
    const words = await health()
    expect(words).toContain('Held: brood disease suspected')
    expect(words).toContain('may not be moved, united or give brood, bees or comb to others')
    expect(words).toContain('Apiary inspector: Hollis Vane, 555 0111')
    expect(words).toContain('Brood disease: when to stop and call the inspector')
    expect(wordsOf((await yard.get('/health')).text)).toContain('1 held for a suspected brood disease')
  })

  test('holds it: move, uniting and giving are refused with a sentence, and nothing is written', async () => {
    const before = [...yard.store.journal()].length
    for (const [path, fields] of [
      ['/colony/W-1/move', { on: '2026-05-30', yard: 'North field', stand: '9' }],
      ['/colony/W-1/outcome', { on: '2026-05-30', what: 'moved-out' }],
      ['/colony/W-1/outcome', { on: '2026-05-30', what: 'united', into: 'W-2' }],
      ['/colony/W-2/outcome', { on: '2026-05-30', what: 'united', into: 'W-1' }],
      [
        '/colony/W-2/visit',
        { on: '2026-05-30', opened: 'yes', 'given1.what': 'egg-frame', 'given1.donor': 'W-1' },
      ],
    ] as const) {
      const answer = await yard.post(path, fields)
      expect(answer.status, path).toBe(422)
      expect(wordsOf(answer.text)).toContain(
        'brood disease was suspected in W-1 on Wed 20 May and is not cleared',
      )
    }
    expect([...yard.store.journal()]).toHaveLength(before)
  })

  test('the forms say so before anything is typed', async () => {
    for (const path of ['/colony/W-1/move', '/colony/W-1/outcome'])
      expect(wordsOf((await yard.get(path)).text), path).toContain(
        'a move, moving out and uniting are refused here',
      )
    expect(wordsOf((await yard.get('/colony/W-2/move')).text)).not.toContain('refused here')
  })

  test('it is not offered as a donor', async () => {
    await yard.post('/intake', { ...INTAKE, colony: 'W-3' })
    await visit('W-3', { on: '2026-05-12', eggs: 'single' })
    await visit('W-3', { on: '2026-05-26', eggs: 'single', capped: 'worker' })
    expect(yard.store.colony('W-3')?.summary.phase).toBe('queenright')
    const offered = async (): Promise<boolean> =>
      /<option value="W-3"/.test((await yard.get('/colony/W-2/visit')).text)
    expect(await offered()).toBe(true)
    await visit('W-3', { on: '2026-05-29', signs: 'brood-disease-suspected' })
    expect(await offered()).toBe(false)
  })

  test('a clean look alone does not free it; a recorded clearance does', async () => {
    await visit('W-1', { on: '2026-05-28', signs: 'none', eggs: 'single' })
    expect(await health()).toContain('The clean look on Thu 28 May does not clear it by itself')
    const cleared = await yard.post('/colony/W-1/cleared', {
      id: v7(),
      on: '2026-05-29',
      clearedBy: 'laboratory',
      reference: 'S-4471',
    })
    expect(cleared.status).toBe(303)
    expect(await health()).not.toContain('Held:')
    const page = wordsOf((await yard.get('/colony/W-1')).text)
    expect(page).toContain('Suspected disease cleared: a laboratory : report S-4471')
    expect(
      (await yard.post('/colony/W-1/move', { on: '2026-05-30', yard: 'North field', stand: '9' })).status,
    ).toBe(303)
  })

  test('an own look needs the look; nothing suspected, nothing to clear', async () => {
    const own = await yard.post('/colony/W-1/cleared', { on: '2026-05-30', clearedBy: 'own-look' })
    expect(own.status).toBe(422)
    expect(wordsOf(own.text)).toContain('needs a later look with the lid off')
    const none = await yard.post('/colony/W-2/cleared', { on: '2026-05-30', clearedBy: 'inspector' })
    expect(wordsOf(none.text)).toContain('there is nothing to clear')
  })

  test('a helper sees it held, records looks, and cannot clear it', async () => {
    const helper = await yardOn('2026-05-30', 'helper')
    expect((await helper.get('/health')).status).toBe(200)
    expect((await helper.get('/colony/W-1/cleared')).status).toBe(403)
  })
})

describe('pests', () => {
  test('beetles seen are to be looked at again within a week, with what to do', async () => {
    await visit('W-1', { on: '2026-05-20', signs: ['beetles', 'robbing'] })
    const words = await health()
    expect(words).toMatch(/Hive beetles Seen Wed 20 May\. Look again now: it was due Wed 27 May/)
    // In the words of the advice, the same on every page.
    expect(words).toContain('close the entrance to one bee’s width today')
    expect(words).toContain('Wax moth Looked for, never seen')
    expect(wordsOf((await yard.get('/health')).text)).toContain(
      'Hive beetles seen Wed 20 May, look again now',
    )
  })
})

describe('feed', () => {
  test('is logged with its amount, and held against an estimated need', async () => {
    await visit('W-1', { framesOfBees: '5', framesOfBrood: '2', stores: 'low' })
    await yard.post('/colony/W-1/feed', { on: '2026-05-29', what: 'syrup', litres: '2.1134', syrup: '2:1' })
    await yard.post('/colony/W-1/feed', { on: '2026-05-30', what: 'syrup', kg: '2.2' })
    const words = await health()
    expect(words).toContain('Stores: low')
    // 2.1134 US quarts are 2 litres, and stay so in the journal. 2 litres of 2:1 hold 1.77 kg of sugar, 2.2 lb are 1 kg: 6.1 lb together.
    expect(words).toContain('Given in the last 14 days: 6.1 lb of sugar')
    expect(words).toContain('2.11 US quarts, syrup 2:1')
    // 5 frames of bees, 2 of brood: 0.87 kg of sugar a week, 1.4 litres or 1.5 US quarts of 1:1.
    expect(words).toContain('about 1.9 lb of sugar a week: 1.5 US quarts of 1:1 syrup, or 1 US quart of 2:1')
    expect(words).toContain('Khoury, Barron & Myerscough 2013'.replace('&', '&amp;'))
    expect(words).toContain('Never honey of unknown origin')
  })
  test('without a count no need is made up', async () => {
    await yard.post('/intake', { ...INTAKE, colony: 'W-5', 'bees.frames': '' })
    expect(await health('W-5')).toContain('no need is reckoned')
  })
})

test('the yard’s list puts the pressing first, and an empty yard says so', async () => {
  await visit('W-2', { on: '2026-05-20', signs: 'brood-disease-suspected' })
  const words = wordsOf((await yard.get('/health')).text)
  expect(words).toMatch(/W-2 .*▲ Held.*To wash.*W-1/)
  const empty = await yardOn('2026-05-30')
  expect(wordsOf((await empty.get('/health')).text)).toContain('No colony is in the yard')
})
