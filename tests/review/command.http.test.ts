/** `resettle review` as it is called: what goes to which stream, and the exit code. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, afterEach, describe, expect, it, vi } from 'vitest'
import { run } from '../../src/node/commands/review.ts'
import { dataFile, openStore } from '../../src/store/index.ts'

const folder = mkdtempSync(join(tmpdir(), 'resettle-review-'))
afterAll(() => rmSync(folder, { recursive: true }))
afterEach(() => {
  vi.restoreAllMocks()
  vi.unstubAllEnvs()
})

async function review(...args: string[]) {
  let [out, err] = ['', '']
  vi.spyOn(process.stdout, 'write').mockImplementation((text) => {
    out += String(text)
    return true
  })
  vi.spyOn(process.stderr, 'write').mockImplementation((text) => {
    err += String(text)
    return true
  })
  const code = await run(args)
  return { code, out, err }
}
function file(name: string, content: string | Uint8Array): string {
  const path = join(folder, name)
  writeFileSync(path, content)
  return path
}

const GOOD = `tag,removal_type,intake_on,queen_at_intake,outcome,outcome_on
A,wall,2026-05-01,caged,died,2026-05-13
B,wall,2026-05-01,loose,moved-out,2026-06-05
C,belfry,2026-05-10,unseen,,
`
const BAD = `${GOOD}D,wall,2026-05-01,x,,\nE,,2026-05-01,caged,,\n`

describe('from a file', () => {
  it('prints the JSON and nothing else', async () => {
    const { code, out, err } = await review(
      '--from',
      file('good.csv', `\uFEFF${GOOD}`),
      '--as-of',
      '2026-07-01',
      '--json',
    )
    expect([code, err]).toEqual([0, ''])
    const json = JSON.parse(out)
    expect(json).toMatchObject({ asOf: '2026-07-01', overall: { colonies: 3, lost: 1 }, logRank: { df: 1 } })
    expect(Object.keys(json.byType)).toEqual(['belfry', 'wall'])
    expect(json.byType.wall.steps).toEqual([
      {
        day: 12,
        atRisk: 2,
        lost: 1,
        left: 0,
        survival: 0.5,
        lower: expect.any(Number),
        upper: expect.any(Number),
      },
      {
        day: 35,
        atRisk: 1,
        lost: 0,
        left: 1,
        survival: 0.5,
        lower: expect.any(Number),
        upper: expect.any(Number),
      },
    ])
  })

  it('without --json prints words', async () => {
    const { code, out } = await review('--from', file('good.csv', GOOD), '--as-of', '2026-07-01')
    expect(code).toBe(0)
    expect(out).toMatch(/^3 colonies as of Wed 1 Jul 2026; lost means died or absconded\n/)
    expect(out).toContain('Two colonies are too few')
  })

  it('as of a past day takes a file that knows more, and tells only what was known then', async () => {
    const later = `${GOOD}D,wall,2026-06-20,caged,,\n`
    const { code, out, err } = await review(
      '--from',
      file('later.csv', later),
      '--as-of',
      '2026-05-20',
      '--json',
    )
    expect([code, err]).toEqual([0, ''])
    // A died on 13 May; B moved out later and D came later.
    expect(JSON.parse(out).overall).toMatchObject({
      colonies: 3,
      lost: 1,
      fates: { colonies: 3, died: 1, movedOut: 0, stillHere: 2 },
    })
  })

  it('a day that has not come yet is still a mistake', async () => {
    const text = GOOD.replace('2026-06-05', '2999-06-05')
    const { code, err } = await review('--from', file('ahead.csv', text), '--as-of', '2026-07-01')
    expect(code).toBe(2)
    expect(err).toMatch(/^line 3: outcome_on: 2999-06-05 is after /)
  })

  it('fates that nobody wrote down are taken, counted and said', async () => {
    const text = `${GOOD}D,wall,2026-05-02,unknown,died,\nE,unknown,2026-05-02,caged,unknown,2026-06-01\n`
    const path = file('unknown.csv', text)
    const { code, out } = await review('--from', path, '--as-of', '2026-07-01', '--json')
    expect(code).toBe(0)
    expect(JSON.parse(out).overall).toMatchObject({
      colonies: 4,
      lost: 1,
      withoutDay: 1,
      fates: { colonies: 5, died: 2, movedOut: 1, stillHere: 1, unknown: 1 },
    })
    const words = await review('--from', path, '--as-of', '2026-07-01')
    expect(words.out).toContain('1 left, nobody knows how')
    expect(words.out).toContain(
      '1 of them left on a day nobody wrote down: it is counted here, and in no share by day',
    )
  })

  it('thirty types are a table and a few sentences', async () => {
    const lines = Array.from({ length: 240 }, (_, i) => {
      const day = String(1 + (i % 28)).padStart(2, '0')
      const what = ['died', 'moved-out', 'absconded', 'united'][i % 4]
      return `T${i},kind-${i % 30},2026-05-${day},caged,${what},2026-07-${day}`
    })
    const text = `${GOOD.split('\n')[0]}\n${lines.join('\n')}\n`
    const { out } = await review('--from', file('thirty.csv', text), '--as-of', '2026-09-01')
    const sentences = out.split('\n').filter((l) => l.endsWith('.'))
    expect(sentences.length).toBeLessThan(40)
    expect(out).toContain('The other 25 types stand in the table.')
    expect(out).toMatch(/one test for all 30 groups/)
  })

  it('bad rows: all are named, nothing is printed, exit 2', async () => {
    const { code, out, err } = await review('--from', file('bad.csv', BAD), '--as-of', '2026-07-01', '--json')
    expect([code, out]).toEqual([2, ''])
    expect(err).toBe(
      'line 5: queen_at_intake: must be one of: caged, loose, unseen, lost, unknown; not "x"\nline 6: removal_type: is missing\n',
    )
  })

  it('--skip-bad names them and goes on with the rest', async () => {
    const { code, out, err } = await review(
      '--from',
      file('bad.csv', BAD),
      '--as-of',
      '2026-07-01',
      '--json',
      '--skip-bad',
    )
    expect(code).toBe(0)
    expect(err.split('\n')).toHaveLength(3)
    expect(JSON.parse(out).overall.colonies).toBe(3)
  })

  it.each([
    [['--from', join(folder, 'none.csv')], /cannot read .*none\.csv: ENOENT/],
    [['--from', file('latin.csv', Uint8Array.of(0x74, 0xe9, 0x0a))], /latin\.csv is not UTF-8 text/],
    [['--from', file('good.csv', GOOD), '--as-of', '2026-02-30'], /--as-of: must be a real date/],
    [['--colour'], /usage: resettle review/],
  ])('%j: said in one line, exit 2', async (args, message) => {
    const { code, out, err } = await review(...args)
    expect([code, out]).toEqual([2, ''])
    expect(err).toMatch(message)
  })
})

describe("from the yard's own book", () => {
  it('says where it looked when there is none', async () => {
    vi.stubEnv('RESETTLE_DATA', join(folder, 'nowhere'))
    const { code, err } = await review('--as-of', '2026-07-01')
    expect(code).toBe(2)
    expect(err).toMatch(/no yard's book at .*nowhere.*--from/)
  })

  it('reads it; a colony entered late counts from the day it was entered', async () => {
    vi.stubEnv('RESETTLE_DATA', join(folder, 'yard'))
    const store = openStore(dataFile({ make: true }))
    store.settings.set('timeZone', 'UTC')
    const intake = (n: number, tag: string, on: string) => ({
      id: `019707a0-0000-7000-8000-00000000000${n}`,
      colony: tag,
      kind: 'intake',
      on,
      by: 'Rowan',
      yard: 'Home',
      queen: 'loose',
      removal: { type: 'wall' },
    })
    const at = (today: string, entries: object[]) =>
      expect(store.append(entries, { today, recordedAt: `${today}T12:00:00.000Z` })).toMatchObject({
        ok: true,
      })
    at('2026-05-01', [intake(1, 'A', '2026-05-01')])
    at('2026-05-21', [intake(2, 'B', '2026-05-01')])
    at('2026-06-10', [
      {
        id: '019707a0-0000-7000-8000-000000000003',
        colony: 'A',
        kind: 'outcome',
        on: '2026-05-11',
        by: 'Rowan',
        what: 'died',
      },
    ])
    store.close()
    const { code, out } = await review('--as-of', '2026-07-01', '--json')
    expect(code).toBe(0)
    // B was entered on its day 20 and not seen since: on day 10, when A died, only A was at risk.
    expect(
      JSON.parse(out).overall.steps.map((s: { day: number; atRisk: number }) => [s.day, s.atRisk]),
    ).toEqual([[10, 1]])
  })
})
