/** `resettle plan` as a user runs it: its answer on stdout, its complaints on stderr, exit 2 for bad input. */
import { spawnSync } from 'node:child_process'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'

const ROOT = join(import.meta.dirname, '../..')

function ran(command: string, args: string[], input: string, cwd: string) {
  const run = spawnSync(command, args, { cwd, input, encoding: 'utf8' })
  return { code: run.status, out: run.stdout, err: run.stderr }
}

/** The installed command, called in a folder of the user's. */
const resettle = (args: string[], input: string) =>
  ran(process.execPath, [join(ROOT, 'src/bin.mjs'), ...args], input, tmpdir())

const intake = {
  kind: 'intake',
  on: '2026-05-01',
  by: 'ada',
  removal: { type: 'wall' },
  yard: 'North',
  queen: 'unseen',
}
const plan = (entries: object[], asOf = '2026-05-06', more: object = {}) =>
  resettle(['plan', '--as-of', asOf, '-'], JSON.stringify({ tag: 'C-1', ...more, entries }))

describe('resettle plan', () => {
  test('prints the plan as JSON and nothing else', () => {
    const run = plan([intake])
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

  test('says the same by way of npm', () => {
    const input = JSON.stringify({ tag: 'C-1', entries: [intake] })
    const args = ['plan', '--as-of', '2026-05-06', '-']
    expect(ran('npm', ['run', '-s', 'resettle', '--', ...args], input, ROOT)).toEqual(resettle(args, input))
  })

  test('names the entry and the field of each problem, one line each, and exits with 2', () => {
    const run = plan([
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
    ['not JSON', ['plan', '--as-of', '2026-05-06', '-'], '{', 'not JSON'],
    ['no day', ['plan', '-'], '{}', '--as-of is missing'],
    ['a bad day', ['plan', '--as-of', '2026-13-01', '-'], '{}', '--as-of: must be a real date'],
    ['no such file', ['plan', '--as-of', '2026-05-06', 'nowhere.json'], '', 'cannot read nowhere.json'],
    ['no such command', ['dance'], '', 'no command "dance"'],
  ])('%s', (_name, args, input, words) => {
    const run = resettle(args, input)
    expect(run.code).toBe(2)
    expect(run.out).toBe('')
    expect(run.err).toContain(words)
  })

  test('refuses an unknown protocol field, a future entry and a missing intake', () => {
    expect(plan([intake], '2026-05-06', { protocol: { holdays: 3 } }).err).toContain(
      'protocol: has no field "holdays"',
    )
    expect(plan([{ ...intake, on: '2026-05-07' }]).err).toContain('entry 1: on: 2026-05-07 is in the future')
    expect(plan([{ kind: 'note', on: '2026-05-02', by: 'ada', text: 'hello' }]).err).toContain(
      'without an intake',
    )
  })
})
