/** `resettle review` as it is called: what goes to which stream, and the exit code. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, afterEach, describe, expect, it, vi } from 'vitest'
import { run } from '../../../src/node/commands/review.ts'
import { dataFile, openStore } from '../../../src/store/node.ts'

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

  it('bad rows: all are named, nothing is printed, exit 2', async () => {
    const { code, out, err } = await review('--from', file('bad.csv', BAD), '--as-of', '2026-07-01', '--json')
    expect([code, out]).toEqual([2, ''])
    expect(err).toBe(
      'line 5: queen_at_intake: must be one of: caged, loose, unseen, lost, unknown; not "x"\nline 6: removal_type: is missing\n',
    )
  })

  it('looks back with a file that knows more: what came later has not happened yet', async () => {
    // Semicolons, a decimal comma, a loss without its day, a type and a queen that nobody wrote down, and how one left.
    const sheet = [
      'tag;removal_type;intake_on;queen_at_intake;outdoor_c;outcome;outcome_on',
      'A;wall;2026-03-01;caged;29,5;died;2026-03-11',
      'B;wall;2026-03-01;unknown;;moved-out;2026-06-20',
      'C;unknown;2026-03-05;unseen;;died;',
      'D;wall;2026-03-06;caged;;unknown;2026-03-26',
      'E;wall;2026-06-01;caged;;;',
    ].join('\n')
    const json = async (day: string) =>
      JSON.parse((await review('--from', file('later.csv', sheet), '--as-of', day, '--json')).out)
    const past = await json('2026-04-10')
    expect(past.overall).toMatchObject({
      // In the curves: A, B, D. C left on a day that is not known; E had not come yet.
      colonies: 3,
      lost: 1,
      fates: { colonies: 4, died: 2, unknown: 1, stillHere: 1, movedOut: 0 },
    })
    // By hand: one of three lost on day 10; D followed to day 20, B to day 40.
    expect(past.overall.at30.survival).toBeCloseTo(2 / 3, 12)
    expect(past.byType.unknown).toMatchObject({ colonies: 0, fates: { died: 1 } })
    expect((await json('2026-07-01')).overall.fates).toMatchObject({ colonies: 5, movedOut: 1, stillHere: 1 })
    const early = await json('2026-03-05')
    expect(early.overall).toMatchObject({ lost: 0, fates: { colonies: 3, stillHere: 2, died: 1 } })
  })

  it('names a date that reads two ways with both readings, and what the file’s other dates prove', async () => {
    const told = async (...days: string[]) => {
      const rows = days.map((day, i) => `W-${i},wall,${day},caged,,`)
      return (await review('--from', file('two.csv', [GOOD.split('\n', 1)[0], ...rows].join('\n')))).err
    }
    expect(await told('3/4/2025', '2025-05-01')).toBe(
      'line 2: intake_on: "3/4/2025" can be read two ways, 2025-04-03 or 2025-03-04; write the one that is meant\n',
    )
    expect(await told('3/4/2025', '4/25/2025')).toContain(
      'line 2: intake_on: "3/4/2025" can be read two ways, 2025-04-03 or 2025-03-04; "4/25/2025" in line 3 has the month first, so it is likely 2025-03-04; write it so\n',
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
