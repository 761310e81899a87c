/** Every field of every form: wrong type, out of range, missing, too long, hostile. Nothing is half-written, nothing is lost. */
import fc from 'fast-check'
import { v7 } from 'uuid'
import { beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { GIFT_SLOTS } from '../../../src/features/entries/visit.ts'
import { FIELDS } from '../../../src/forms/fields.ts'
import { anyCharacters } from '../../abuse/values.ts'
import { often } from '../../support/long.ts'
import { INTAKE, wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'

const count = (y: Yard): number => [...y.store.journal()].length

describe('a refused intake', () => {
  let yard: Yard
  beforeEach(async () => {
    yard = await yardOn('2026-05-06')
  })

  it.each([
    ['colony', '', 'Tag must not be empty'],
    ['colony', '<b>', 'Tag must be letters, digits, dashes and single spaces'],
    ['colony', 'x'.repeat(41), 'Tag must be at most 40 characters'],
    ['yard', '', 'Yard is missing'],
    ['yard', 'y'.repeat(81), 'Yard must be at most 80 characters'],
    ['stand', 's'.repeat(21), 'Stand must be at most 20 characters'],
    ['on', '', 'Day it came is missing'],
    ['on', '2026-02-30', 'Day it came must be a real date'],
    ['on', '2026-05-07', 'Day it came: Thu 7 May is in the future (today is '],
    ['on', 'yesterday', 'Day it came must be a real date'],
    ['at', '25:00', 'Time must be a time written HH:MM'],
    ['removal.removedOn', '2026-05-05', 'is after the intake'],
    ['removal.outdoorC', 'hot', 'Outdoor temperature must be a number'],
    ['removal.outdoorC', '400', 'Outdoor temperature must be at most 140 °F'],
    ['removal.hoursOpenToBoxed', '-1', 'must be at least 0'],
    ['removal.method', 'spade', 'must be one of'],
    ['removal.sprayed', 'perhaps', 'must be one of'],
    ['removal.site', 'a'.repeat(301), 'must be at most 300 characters'],
    ['queen', '', 'The queen is missing: tap one of the answers'],
    ['queen', 'crowned', 'must be one of'],
    ['brood.eggs', '0.3', 'must be in quarter frames'],
    ['brood.open', '99', 'must be at most 60'],
    ['brood.capped', '-1', 'must be at least 0'],
    ['broodCare', 'fridge', 'must be one of'],
    ['queenCells', 'many', 'must be one of'],
    ['bees.frames', 'a lot', 'must be a number'],
    ['bees.kg', '9000', 'must be at most 44 lb'],
    ['deadBeesKg', '9000', 'must be at most 44 lb'],
    ['tiedComb', 'sort of', 'Comb tied in with bands must be'],
    ['temper', '6', 'Temper must be at most 5'],
    ['temper', '2.5', 'Temper must be a whole number'],
    ['note', 'n'.repeat(2001), 'Note must be at most 2000 characters'],
  ])('%s = %j is refused beside the field and in the summary', async (field, value, sentence) => {
    const refused = await yard.post('/intake', { ...INTAKE, [field]: value })
    expect(refused.status).toBe(422)
    expect(wordsOf(refused.text)).toContain('Nothing was saved yet')
    expect(wordsOf(refused.text)).toContain(sentence)
    // The summary leads to the field, and the field says it too.
    const id = `f-${field.replaceAll('.', '_')}`
    expect(refused.text).toContain(`href="#${id}"`)
    expect(refused.text).toContain(`id="${id}-problem"`)
    expect(count(yard)).toBe(0)
  })

  it('keeps everything that was typed', async () => {
    const typed = { ...INTAKE, 'removal.outdoorC': 'hot', note: 'by the <gate> & "wall"' }
    const page = (await yard.post('/intake', typed)).text
    expect(page).toContain('value="hot"')
    expect(page).toContain('by the &lt;gate&gt; &amp; &quot;wall&quot;')
    expect(page).toMatch(/name="queen" value="unseen" checked/)
    expect(page).toMatch(/name="brood.eggs" value="0.5" checked/)
  })

  it('names every problem at once, in the order of the form', async () => {
    const page = await yard.post('/intake', { on: 'x', temper: '9' })
    const list = page.text.match(/<ul class="problem-list">[\s\S]*?<\/ul>/)?.[0] ?? ''
    const fields = [...list.matchAll(/href="#f-([^"]+)"/g)].map((m) => m[1])
    expect(fields).toEqual(['colony', 'on', 'removal_type', 'yard', 'queen', 'temper'])
  })

  it('is told of a future day together with all the rest', async () => {
    const refused = await yard.post('/intake', { ...INTAKE, on: '2026-05-07', temper: '9' })
    expect(wordsOf(refused.text)).toContain('is in the future')
    expect(wordsOf(refused.text)).toContain('Temper must be at most 5')
  })

  it('is told of a tag that another colony in the yard has', async () => {
    await yard.post('/intake', INTAKE)
    const refused = await yard.post('/intake', { ...INTAKE, colony: 'w-12' })
    expect(wordsOf(refused.text)).toMatch(/“[^”]+” is already in the yard/)
  })
})

describe('contradictions with the history', () => {
  let yard: Yard
  beforeAll(async () => {
    yard = await yardOn('2026-05-06')
    await yard.post('/intake', INTAKE)
    await yard.post('/intake', { ...INTAKE, colony: 'W-13' })
    await yard.post('/colony/W-13/outcome', { on: '2026-05-05', what: 'died' })
  })

  it.each([
    ['/colony/W-12/visit', { on: '2026-04-20', opened: 'yes', stores: 'low' }, 'is before the intake'],
    ['/colony/W-12/note', { on: '2026-06-20', text: 'later' }, 'is in the future'],
    [
      '/colony/W-12/outcome',
      { on: '2026-05-06', what: 'united', into: 'W-12' },
      'cannot be united into itself',
    ],
    ['/colony/W-12/move', { on: '2026-05-06', yard: '' }, 'Yard is missing'],
    [
      '/colony/W-13/visit',
      { on: '2026-05-06', opened: 'no', stores: 'low' },
      'is after the colony left the yard',
    ],
    ['/colony/W-13/outcome', { on: '2026-05-05', what: 'moved-out' }, 'is a second outcome'],
  ])('%s %j', async (path, form, sentence) => {
    const before = count(yard)
    const refused = await yard.post(path, form)
    expect(refused.status).toBe(422)
    expect(wordsOf(refused.text)).toContain(sentence)
    expect(count(yard)).toBe(before)
  })
})

describe('hostile text', () => {
  let yard: Yard
  beforeAll(async () => {
    yard = await yardOn('2026-05-06')
    await yard.post('/intake', INTAKE)
  })

  const names = [
    'on',
    'at',
    'colony',
    ...Object.values(FIELDS).flatMap((specs) => Object.keys(specs).flatMap((path) => [path, `${path}+`])),
    ...GIFT_SLOTS.flatMap((slot) => Object.keys(FIELDS.given).map((path) => slot + path)),
    'cage.found',
    'wash.bees',
    'wash.mites',
    'ties.done',
    'id',
    'id.',
    '__proto__',
    'constructor',
  ]
  const nasty = fc.oneof(
    fc.constantFrom(
      '"><img src=x onerror=alert(1)>',
      "'><script>alert(1)</script>",
      '</textarea><script>alert(1)</script>',
      '</script><script>alert(1)</script>',
      '<!--',
      '{{7*7}}<%= 7*7 %>',
      '\u0000',
      '\u202e\u2066',
      "' OR 1=1 --",
      '../../etc/passwd',
      '𝔘𝔫𝔦𝔠𝔬𝔡𝔢 🐝',
      'x'.repeat(5000),
      'NaN',
      '-0',
      '1e309',
      '2026-05-06',
    ),
    anyCharacters(60),
  )
  const paths = [
    '/intake',
    '/colony/W-12/visit',
    '/colony/W-12/outcome',
    '/colony/W-12/move',
    '/colony/W-12/note',
    '/colony/W-12/outside-look',
    '/settings',
  ]

  it('in any field of any form is answered in words, shown as text, and breaks nothing', async () => {
    const form = fc.dictionary(
      fc.constantFrom(...names),
      fc.oneof(nasty, fc.array(nasty, { maxLength: 3 })),
      {
        maxKeys: 8,
      },
    )
    await fc.assert(
      fc.asyncProperty(fc.constantFrom(...paths), form, async (path, fields) => {
        const answer = await yard.post(path, fields as Record<string, string | string[]>)
        expect([303, 404, 422]).toContain(answer.status)
        expect(answer.text).not.toMatch(/<img src=x|<script>alert/)
        if (answer.to !== null)
          expect((await yard.get(answer.to)).text).not.toMatch(/<img src=x|<script>alert/)
      }),
      { numRuns: often(1000, 60) },
    )
    expect(yard.errors).toEqual([])
    expect(yard.store.verify().problems).toEqual([])
  })

  it('in the address is shown as text', async () => {
    await fc.assert(
      fc.asyncProperty(nasty, async (text) => {
        const part = encodeURIComponent(text.replaceAll(/[\ud800-\udfff]/g, ''))
        for (const path of [`/colony/${part}`, `/yard?find=${part}&yard=${part}`, `/entry/${part}/correct`]) {
          const answer = await yard.get(path)
          expect([200, 303, 404]).toContain(answer.status)
          expect(answer.text).not.toMatch(/<img src=x|<script>alert/)
        }
      }),
      { numRuns: 40 },
    )
    expect(yard.errors).toEqual([])
  })

  it('that was let in is escaped wherever it is shown', async () => {
    const text = '</script><script>alert(1)</script><img src=x onerror=alert(1)>'
    const id = v7()
    await yard.post('/colony/W-12/visit', { 'id.': id, on: '2026-05-06', opened: 'yes', note: text })
    for (const path of [
      '/colony/W-12',
      '/colony/W-12/visit',
      `/entry/${id}/correct`,
      `/entry/${id}/withdraw`,
    ]) {
      const page = (await yard.get(path)).text
      expect(page).not.toMatch(/<script>alert|<img src=x/)
    }
    expect((await yard.get('/colony/W-12')).text).toContain('&lt;img src=x')
  })
})
