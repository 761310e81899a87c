/** The history of changes, on its page and as CSV. */
import { parse } from 'csv-parse/sync'
import { beforeEach, expect, test } from 'vitest'
import { CHANGE_COLUMNS } from '../../../src/features/data/changes.ts'
import { inspection, intake, newId, withdrawal } from '../../store/helpers.ts'
import { NAMES, type TestYard, testYard } from '../../support/yard-app.ts'

let yard: TestYard
beforeEach(() => {
  yard = testYard()
})

async function threeChanges(): Promise<void> {
  const look = inspection('A-1', '2026-05-15', {
    eggs: 'none',
    note: '=HYPERLINK("http://elsewhere.example")',
  })
  const mended = { ...look, id: newId(), eggs: 'single', replaces: look.id }
  await yard.send('beekeeper', [intake('A-1')])
  await yard.send('helper', look)
  yard.at('2026-06-02T08:30:00Z')
  await yard.send('beekeeper', mended)
  await yard.send('operator', withdrawal('A-1', mended.id))
}

test('says who entered, corrected and took back what, and when; newest first', async () => {
  await threeChanges()
  const text = (await (await yard.ask('operator', '/changes')).text())
    .replaceAll(/<[^>]+>/g, ' ')
    .replaceAll(/\s+/g, ' ')
  expect(text).toMatch(
    /Tue 2 Jun, 08:30 Odalys took back Opened of Fri 15 May.*Wrong box.*Bram corrected Opened.*eggs: none single.*Mon 1 Jun, 12:00 Teuila entered Opened.*Bram entered Intake/,
  )
})

test('pages through a long history without missing or repeating anything', async () => {
  await yard.send('operator', [intake('A-1')])
  const looks = Array.from({ length: 120 }, () => inspection('A-1', '2026-05-15'))
  await yard.send('operator', looks)
  const seen: string[] = []
  let path: string | undefined = '/changes'
  while (path !== undefined) {
    const text: string = await (await yard.ask('operator', path)).text()
    seen.push(...[...text.matchAll(/#e-([\w-]{36})/g)].map((m) => m[1] ?? ''))
    path = /href="(\/changes\?before=\d+)"/.exec(text)?.[1]
  }
  expect(seen).toHaveLength(121)
  expect(new Set(seen).size).toBe(121)
})

test('of one colony alone', async () => {
  await yard.send('operator', [intake('A-1'), intake('A-2')])
  const asked = await yard.ask('operator', '/changes?colony=A-2')
  expect(asked.headers.get('location')).toBe('/colony/A-2/changes')
  const text = await (await yard.ask('beekeeper', '/colony/A-2/changes')).text()
  expect(text).not.toContain('/changes/csv')
  expect(text).toContain('History of changes of A-2')
  expect(text).not.toContain('>A-1<')
})

test('as CSV: every change a line, and no cell that a spreadsheet would run', async () => {
  await threeChanges()
  await yard.send('helper', inspection('A-1', '2026-05-16', { note: '@SUM(1)' }))
  await yard.send('beekeeper', intake('+A-9', { yard: '-2+3', removal: { type: '=1+1' } }))
  const response = await yard.ask('operator', '/changes/csv')
  expect(response.headers.get('content-type')).toContain('text/csv')
  const text = await response.text()
  const rows = parse(text, { columns: true }) as Record<string, string>[]
  expect(Object.keys(rows[0] ?? {})).toEqual([...CHANGE_COLUMNS])
  expect(rows).toHaveLength(6)
  expect(rows.map((r) => r.did).reverse()).toEqual([
    'entered',
    'entered',
    'corrected',
    'withdrew',
    'entered',
    'entered',
  ])
  expect(rows.find((r) => r.did === 'corrected')).toMatchObject({
    recorded_by: NAMES.beekeeper,
    changed: 'eggs: "none" -> "single"',
  })
  for (const cell of rows.flatMap((r) => Object.values(r))) expect(cell).not.toMatch(/^[=+\-@\t\r]/)
  expect(rows.some((r) => r.colony === "'+A-9")).toBe(true)
})
