/** In which language a page is: as chosen on the way in, else by the account, else by the browser; and never half and half. */
import { beforeEach, describe, expect, it } from 'vitest'
import { english } from '../../src/words/en/index.ts'
import { spanish } from '../../src/words/es/index.ts'
import { PASSPHRASE } from '../support/people.ts'
import { NAMES, type TestYard, testYard } from '../support/yard-app.ts'

let yard: TestYard
beforeEach(async () => {
  yard = testYard()
  await yard.session('operator')
})

const textAt = async (
  path: string,
  accept: string,
  role: 'helper' | 'operator' | null = null,
): Promise<string> => (await yard.ask(role, path, { headers: { 'Accept-Language': accept } })).text()

describe('the sign-in page', () => {
  it.each([
    ['es-MX,es;q=0.9,en;q=0.5', 'es'],
    ['en;q=0.4, es;q=0.8', 'es'],
    ['de-CH,es;q=0.3', 'es'],
    ['en-US,es;q=0.9', 'en'],
    ['de', 'en'],
    ['es;q=0', 'en'],
    ['*', 'en'],
    ['', 'en'],
  ])('asked for in “%s” is in %s', async (accept, language) => {
    const html = await textAt('/sign-in', accept)
    expect(html).toContain(`<html lang="${language}"`)
    const words = language === 'es' ? spanish : english
    expect(html).toContain(`<h1>${words.signIn.title}</h1>`)
  })

  it('can be read in the other, and leads on to where one was going', async () => {
    const html = await textAt('/sign-in?to=%2Fround', 'en')
    expect(html).toMatch(/<a [^>]*lang="es"[^>]*href="\/sign-in\?lang=es&amp;to=%2Fround"[^>]*>\s*Español/)
    const chosen = await textAt('/sign-in?lang=es&to=%2Fround', 'en')
    expect(chosen).toContain('<html lang="es"')
    expect(chosen).toContain('value="/round"')
  })

  it('says in that language what is wrong', async () => {
    const wrong = await yard.post(null, '/sign-in?lang=es', { name: 'Odalys', passphrase: 'not this one' })
    expect(wrong.status).toBe(401)
    expect(await wrong.text()).toContain(spanish.signIn.wrong)
  })
})

describe('a choice', () => {
  it('made on the way in stays with the account', async () => {
    const form = { name: NAMES.operator, passphrase: PASSPHRASE }
    expect((await yard.post(null, '/sign-in?lang=es', form)).status).toBe(303)
    expect(yard.services.people.accounts.byName(NAMES.operator)?.language).toBe('es')
  })

  it('of the account goes before the browser, and can be taken back', async () => {
    await yard.post('helper', '/account/language', { language: 'es' })
    expect(await textAt('/phone/person', 'en', 'helper')).toContain('"language":"es"')
    await yard.post('helper', '/account/language', { language: '' })
    expect(await textAt('/phone/person', 'en', 'helper')).toContain('"language":"en"')
    expect(await textAt('/phone/round', 'es', 'helper')).toContain('"language":"es"')
  })

  it('that is not spoken here is none', async () => {
    await yard.post('helper', '/account/language', { language: 'xx' })
    expect(yard.services.people.accounts.byName(NAMES.helper)?.language).toBeNull()
  })
})

it('leaves a page whose words are not all known in English whole', async () => {
  await yard.post('operator', '/account/language', { language: 'es' })
  const html = await textAt('/review', 'es', 'operator')
  expect(html).toContain('<html lang="en"')
  expect(html).toContain(english.ways['/round'])
})
