/** A helper who reads Spanish walks the round without signal: every page the phone makes is in Spanish, and no word of English is left. */
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { english } from '../../src/words/en/index.ts'
import { spanish } from '../../src/words/es/index.ts'
import { launch } from '../support/browser.ts'
import { intakes, startField } from '../support/field.ts'
import { sidewaysScroll, violations } from '../support/page-checks.ts'
import { follow, headline, press, tap, tapAll, words } from '../support/person.ts'
import { textsOf } from '../words/made-up.ts'

const DAY = '2026-06-10'

let browser: Browser
beforeAll(async () => {
  browser = await launch()
})
afterAll(() => browser.close())

/** All that a catalogue says: its texts, and the texts within its functions. */
function saidIn(node: unknown): string {
  if (typeof node === 'string') return node
  if (typeof node === 'function')
    return (String(node).match(/'[^'\n]*'|"[^"\n]*"|`[^`]*`/g) ?? [])
      .map((text) => text.replaceAll(/\$\{[^}]*\}/g, ' '))
      .join(' ')
  if (node === null || typeof node !== 'object') return ''
  // A value that programs read is no word of the page.
  return Object.entries(node)
    .map(([key, value]) => (key === 'value' ? '' : saidIn(value)))
    .join(' ')
}

const lettersOf = (text: string): string[] => text.toLowerCase().match(/[a-zà-ÿ]{3,}/g) ?? []

/** Words of English that Spanish does not have: of our pages, and the most common ones. */
const ENGLISH = new Set([
  ...'the and for with was has had not its they them this that from when what look bees eggs queen box'.split(
    ' ',
  ),
  ...lettersOf(saidIn(english)),
])
/** Written alike in both: of reasons, which are made of data elsewhere, and a month. */
const BOTH = ['introduce', 'ago']
for (const word of [...lettersOf(saidIn(spanish)), ...BOTH]) ENGLISH.delete(word)

/** What people wrote here, and names. */
const WRITTEN = ['North field', 'Teuila', 'Bram', 'Resettle', 'English']

async function englishOn(page: Page): Promise<string[]> {
  const seen = textsOf(await page.content()).join(' ')
  const ours = WRITTEN.reduce((rest, written) => rest.replaceAll(written, ' '), seen)
  return lettersOf(ours).filter((word) => ENGLISH.has(word))
}

it('is walked offline from Today to its end, with the page of a colony, a correction and a search', async () => {
  const field = await startField(browser, {
    day: DAY,
    entries: intakes(['W-1', 'W-2', 'W-10'], '2026-06-05'),
  })
  const { page, wire, yard, sent, noticed, stop } = field
  const walked: string[] = []
  /** Nothing else may be on the page, whatever it is. */
  const isSpanish = async (): Promise<void> => {
    const at = new URL(page.url()).pathname.replace(/[0-9a-f-]{36}/, 'ID')
    walked.push(at)
    expect([at, await page.locator('html').getAttribute('lang')]).toEqual([at, 'es'])
    expect([at, ...(await englishOn(page))]).toEqual([at])
    expect([at, await sidewaysScroll(page)]).toEqual([at, 0])
  }
  try {
    await page.goto('/account')
    await tap(page, 'Language', 'Español')
    await press(page, 'Read in this language')
    // Who sets it and walks out of reach at once reads the round in it.
    wire.fate(() => 'cut')

    await page.goto('/')
    await isSpanish()
    await follow(page, 'Hacer la ronda')
    await isSpanish()
    await follow(page, /^Empezar con W-1/)
    await isSpanish()
    await follow(page, 'Anotar la visita')
    await isSpanish()
    await tapAll(page, {
      'La tapa': 'Se abrió',
      Huevos: 'No hay',
      'Cría abierta': 'No hay',
      'Celdas reales': 'No hay',
    })
    await isSpanish()
    // The panel runs the core in the page itself, with the words of its language alone.
    await page.locator('#live summary').click()
    expect(await page.locator('#live-text').textContent()).toMatch(
      /^(?!.*\b(the|now|proves)\b).*Lo que esto prueba/is,
    )
    await press(page, 'Guardar la visita')
    expect(await headline(page)).toBe('W-1 sitio 1')
    expect(await words(page)).toContain('dar un cuadro con huevos')
    await isSpanish()
    expect(await violations(page)).toEqual([])

    await follow(page, /^W-2/)
    await follow(page, 'No se pudo llegar')
    await isSpanish()
    await press(page, 'Guardar y seguir')
    // Refused: nothing was tapped.
    await isSpanish()
    await tap(page, 'Por qué no', 'Lluvia')
    await press(page, 'Guardar y seguir')
    await isSpanish()

    for (const path of [
      ...['/round?yard=', '/round?minutes=40&yard=', '/round/end?yard=', '/outbox', '/yard', '/find', '/how'],
      ...[
        '/how/words',
        '/how/first-round',
        '/find?q=pared&list',
        '/find?q=zzz',
        '/colony/W-2',
        '/colony/W-1',
      ],
      ...['/colony/W-10/visit?lid=on', '/colony/W-10/note', '/colony/W-10/move', '/weeks', '/colony/Z-9'],
    ]) {
      await page.goto(path)
      await isSpanish()
    }
    await page.goto('/colony/W-1/move')
    await page.getByLabel('Apiario', { exact: true }).fill('Otro')
    await press(page, 'Guardar el traslado')
    // There is no such yard: asked in Spanish whether a new one is meant.
    expect(await words(page)).toContain('Un apiario nuevo')
    expect(
      lettersOf((await words(page)).replaceAll('North field', '')).filter((w) => ENGLISH.has(w)),
    ).toEqual([])

    wire.fate(() => 'pass')
    await page.goto('/outbox')
    await press(page, 'Enviar ahora')
    await sent()
    await page.goto('/colony/W-1')
    await isSpanish()
    await follow(page, /^Corregir/)
    await isSpanish()
    await press(page, 'Guardar la corrección')
    expect(new URL(page.url()).pathname).toBe('/colony/W-1')
    await isSpanish()
    await follow(page, /^Anular/)
    await isSpanish()
    expect(yard.store.colony('W-1')?.history.entries.at(-1)).toMatchObject({ eggs: 'none', by: 'Teuila' })
    expect(new Set(walked).size).toBeGreaterThan(20)
    // Two of the pages asked for the phone does not keep, and says so.
    expect(
      noticed.filter((n) => !/ERR_|Failed to load resource|^503 .*\/(weeks|colony\/Z-9)$/.test(n)),
    ).toEqual([])
  } finally {
    await stop()
  }
})

it('the test itself knows English from Spanish', () => {
  expect(lettersOf('Record the visit').filter((w) => ENGLISH.has(w))).toEqual(['record', 'the', 'visit'])
  expect(lettersOf('Anotar la visita').filter((w) => ENGLISH.has(w))).toEqual([])
  expect(ENGLISH.size).toBeGreaterThan(1000)
})
