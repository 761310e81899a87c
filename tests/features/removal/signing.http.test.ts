/** What is signed: nothing blank, the text as it was shown, by a drawing or on paper; who signed has it at once. Invented. */
import { beforeEach, expect, test } from 'vitest'
import { wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'
import { aCall, CALL, CALLED_ON, PRICE, signed } from './a-call.ts'

let yard: Yard
const { call, fill, mark, sheetOf } = aCall(() => yard)
beforeEach(async () => {
  yard = await yardOn(CALLED_ON)
  yard.store.settings.set('yardName', 'Quarry yard')
})
const wordsAt = async (path: string): Promise<string> => wordsOf((await yard.get(path)).text)
const sign = async (path: string, more: Record<string, string> = {}) =>
  yard.post(`${path}/sign`, signed(await mark(path), more))

const priced = async (): Promise<string> => {
  const path = await call()
  await fill(path, 'agreement', PRICE)
  return path
}

test.each([
  ['the price', CALL, null],
  ['the address', { ...CALL, address: '' }, PRICE],
  ['the day', { ...CALL, plannedOn: '' }, PRICE],
])('nothing is signed while %s is blank', async (what, fields, price) => {
  const path = await call(fields)
  if (price !== null) await fill(path, 'agreement', price)
  const page = await yard.get(`${path}/sign`)
  expect(wordsOf(page.text)).toContain(`Nothing is signed blank. Still missing: ${what} .`)
  expect(page.text).not.toContain('name="drawing"')
  const answer = await sign(path, { how: 'paper' })
  expect(answer.status).toBe(422)
  expect(sheetOf(path)?.agreement.signature).toBeUndefined()
})

test('who signed gets the text at once: to share, by mail, to scan, on paper; by an address that nobody guesses', async () => {
  const path = await priced()
  const to = (await sign(path)).to?.split('#')[0] ?? ''
  const signed = await yard.get(to)
  // Loading it again loses nothing; with another address there is nothing.
  expect((await yard.get(to)).text).toContain('just-signed')
  expect((await yard.get(`${path}?copy=${'0'.repeat(64)}`)).text).not.toContain('just-signed')
  expect(signed.text).toContain('data-share-text="# Taking honey bees out, alive')
  expect(signed.text).toMatch(/href="mailto:\?subject=Agreement%20with%20Quarry%20yard&amp;body=%23%20Taking/)
  expect(signed.text).toContain('<svg')
  expect(signed.text).toContain(`${path}/print?what=agreement`)
  const link = /\/signed\/[0-9a-f]{64}/.exec(signed.text)?.[0] ?? ''
  expect(link).not.toBe('')
  const stranger = await yard.stranger(link)
  expect(wordsOf(await stranger.text())).toContain('Signed by Ottoline Fairweather, Wed 10 Jun')
  expect((await yard.stranger(link.slice(0, -1))).status).toBe(404)
  await yard.post(`${path}/unsign`, {})
  expect((await yard.stranger(link)).status).toBe(404)
  const kept = yard.store.removals.get(path.split('/').at(-1) ?? '')
  expect(JSON.stringify(kept)).not.toContain(link.split('/').at(-1))
})

test('keeps the text as signed, dated, and the name as a drawing', async () => {
  const path = await priced()
  expect((await sign(path)).status).toBe(303)
  yard.store.settings.set('agreementTerms', 'Other words for {customer}.')
  const page = await yard.get(`${path}/sign`)
  expect(wordsOf(page.text)).toContain('What is not included')
  expect(page.text).toContain('d="M40 120L90 60L140 130L220 50"')
  expect(wordsOf(page.text)).toContain('Signed by Ottoline Fairweather, Wed 10 Jun')
  const file = await yard.get(`${path}/signature.svg`)
  expect(file.headers.get('content-type')).toContain('image/svg+xml')
  expect(file.text).toContain('<title>Ottoline Fairweather, 2026-06-10</title>')
})

test('on paper needs a name and a day', async () => {
  const path = await priced()
  expect((await sign(path, { how: 'paper', name: '' })).status).toBe(422)
  expect((await sign(path, { how: 'paper', on: '2026-06-11' })).status).toBe(422)
  expect((await sign(path, { how: 'paper' })).status).toBe(303)
  expect(await wordsAt(path)).toContain('Signed by Ottoline Fairweather on paper')
})

test('an empty or hostile drawing is refused, nothing of it comes back as markup', async () => {
  const path = await priced()
  for (const drawing of ['', '[]', '"><script>alert(1)</script>', '{"path":"M0 0"}']) {
    const answer = await sign(path, { drawing })
    expect(answer.status).toBe(422)
    expect(answer.text).not.toContain('<script>alert')
  }
})

test('another text than the one that was shown is not signed', async () => {
  const path = await priced()
  const mark = /name="mark" value="([^"]+)"/.exec((await yard.get(`${path}/sign`)).text)?.[1] ?? ''
  await fill(path, 'agreement', { pricing: 'fixed', fixed: '900' })
  const answer = await yard.post(`${path}/sign`, { mark, how: 'paper', name: 'O', on: CALLED_ON })
  expect(answer.status).toBe(422)
  expect(wordsOf(answer.text)).toContain('has changed since this page was opened')
})

test('drawn up anew it is unsigned, and the signed version stays in the history', async () => {
  const path = await priced()
  await sign(path, { how: 'paper' })
  expect((await yard.post(`${path}/unsign`, {})).to).toBe(`${path}/agreement`)
  expect(await wordsAt(path)).not.toContain('Signed by')
  expect(await wordsAt(`${path}?version=3`)).toContain('Signed by Ottoline Fairweather')
})

test('the template is the operator’s: checked, kept, and taken back', async () => {
  const slip = await yard.post('/removals/terms', { terms: 'For {customr}.', currency: '€' })
  expect(slip.status).toBe(422)
  expect(wordsOf(slip.text)).toContain('{customr}')
  expect(
    (await yard.post('/removals/terms', { terms: '# Ours\r\n\r\nFor {customer}: {price}', currency: '€' }))
      .status,
  ).toBe(303)
  const path = await call()
  await fill(path, 'agreement', { pricing: 'fixed', fixed: '450' })
  expect(await wordsAt(`${path}/sign`)).toContain('For Ottoline Fairweather: A fixed price of €450')
  await yard.post('/removals/terms', { terms: 'x', currency: '$', default: '1' })
  expect(yard.store.settings.get('agreementTerms')).toContain('What is not included')
})
