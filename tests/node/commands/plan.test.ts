/** `resettle plan` as a user runs it: its answer on stdout, its complaints on stderr, exit 2 for bad input. */
import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, test, vi } from 'vitest'
import { run as planCommand } from '../../../src/node/commands/plan.ts'

const ROOT = join(import.meta.dirname, '../../..')
const folder = mkdtempSync(join(tmpdir(), 'resettle-plan-'))
afterAll(() => rmSync(folder, { recursive: true }))

interface Ran {
  code: number | null
  out: string
  err: string
}

/** The command in this process, its input from a file; `spawned` below is the same from outside. */
async function planned(args: string[], input: string): Promise<Ran> {
  const file = join(folder, 'colony.json')
  writeFileSync(file, input)
  const [out, err] = [process.stdout, process.stderr].map((stream) =>
    vi.spyOn(stream, 'write').mockReturnValue(true),
  )
  const said = (spy: typeof out): string => (spy?.mock.calls ?? []).map(([text]) => String(text)).join('')
  try {
    const code = await planCommand(args.map((a) => (a === '-' ? file : a)))
    return { code, out: said(out), err: said(err) }
  } finally {
    out?.mockRestore()
    err?.mockRestore()
  }
}

function spawned(command: string, args: string[], input: string, cwd: string): Ran {
  const run = spawnSync(command, args, { cwd, input, encoding: 'utf8' })
  return { code: run.status, out: run.stdout, err: run.stderr }
}

const intake = {
  kind: 'intake',
  on: '2026-05-01',
  by: 'ada',
  removal: { type: 'wall' },
  yard: 'North',
  queen: 'unseen',
}
const plan = (entries: object[], asOf = '2026-05-06', more: object = {}) =>
  planned(['--as-of', asOf, '-'], JSON.stringify({ tag: 'C-1', ...more, entries }))

describe('resettle plan', () => {
  test('prints the plan as JSON and nothing else', async () => {
    const run = await plan([intake])
    expect(run.err).toBe('')
    expect(run.code).toBe(0)
    const printed = JSON.parse(run.out)
    expect(Object.keys(printed)).toEqual([
      'tag',
      'asOf',
      'day',
      'phase',
      'checks',
      'advice',
      'quiet',
      'spans',
      'horizon',
      'surprises',
      'surprised',
      'missing',
      'exposed',
      'lost',
      'until',
      'readiness',
      'belief',
      'options',
    ])
    expect(printed).toMatchObject({ tag: 'C-1', asOf: '2026-05-06', day: 5, phase: 'queen-unknown' })
  })

  test('says the same as a command of its own, and by way of npm, from standard input', async () => {
    const input = JSON.stringify({ tag: 'C-1', entries: [intake] })
    const args = ['plan', '--as-of', '2026-05-06', '-']
    const here = await planned(args.slice(1), input)
    // The installed command, called in a folder of the user's.
    const bin = join(ROOT, 'src/bin.mjs')
    expect(spawned(process.execPath, [bin, ...args], input, folder)).toEqual(here)
    expect(spawned('npm', ['run', '-s', 'resettle', '--', ...args], input, ROOT)).toEqual(here)
    const none = spawned(process.execPath, [bin, 'dance'], '', folder)
    expect(none).toMatchObject({ code: 2, out: '' })
    expect(none.err).toContain('no command "dance"')
  })

  test('names the entry and the field of each problem, one line each, and exits with 2', async () => {
    const run = await plan([
      { ...intake, queen: 'lsot' },
      { kind: 'inspection', on: '2026-05-04', by: 'ben', opened: true, eggz: 'none' },
    ])
    expect(run.code).toBe(2)
    expect(run.out).toBe('')
    expect(run.err.trimEnd().split('\n')).toEqual([
      'entry 1: queen: must be one of: caged, loose, unseen, lost, unknown; not "lsot"',
      'entry 2: eggz: has no field "eggz"',
    ])
  })

  test.each([
    ['not JSON', ['--as-of', '2026-05-06', '-'], '{', 'not JSON'],
    ['no day', ['-'], '{}', '--as-of is missing'],
    ['a bad day', ['--as-of', '2026-13-01', '-'], '{}', '--as-of: must be a real date'],
    ['no such file', ['--as-of', '2026-05-06', 'nowhere.json'], '', 'cannot read nowhere.json'],
  ])('%s', async (_name, args, input, words) => {
    const run = await planned(args, input)
    expect(run.code).toBe(2)
    expect(run.out).toBe('')
    expect(run.err).toContain(words)
  })

  test('refuses an unknown protocol field, a future entry and a missing intake', async () => {
    expect((await plan([intake], '2026-05-06', { protocol: { holdays: 3 } })).err).toContain(
      'protocol: has no field "holdays"',
    )
    expect((await plan([{ ...intake, on: '2026-05-07' }])).err).toContain(
      'entry 1: on: 2026-05-07 is in the future',
    )
    expect((await plan([{ kind: 'note', on: '2026-05-02', by: 'ada', text: 'hello' }])).err).toContain(
      'without an intake',
    )
  })
})
