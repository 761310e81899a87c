/**
 * Do the tests bite? Puts one small fault after the other into a copy of the project and runs the tests of its room: a fault
 * that none of them notices is a survivor. Slow, so in slices:
 *
 *   npx tsx tests/bench/mutants/run.ts recovery --seed 1 --from 0 --take 25
 *   npx tsx tests/bench/mutants/run.ts recovery --at src/recovery/rearing.ts:62
 *
 * Prints a line a mutant, and adds it to tests/output/mutants.jsonl. Types are checked only for survivors by hand: a mutant
 * that would not compile counts as it behaves.
 */
import { spawnSync } from 'node:child_process'
import {
  appendFileSync,
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { parseArgs } from 'node:util'
import { seeded } from '../../forecast/random.ts'
import { type Mutant, mutantsOf } from './mutate.ts'

const TOP = fileURLToPath(new URL('../../..', import.meta.url))

/** What proves a room: tests that run in seconds. Others may notice more. */
const ROOMS: Record<string, { files: string; tests: string[]; project: string[] }> = {
  recovery: {
    files: 'src/recovery',
    tests: ['tests/recovery', 'tests/health', 'tests/reference/khoury.test.ts'],
    project: ['unit'],
  },
  decision: { files: 'src/decision', tests: ['tests/decision'], project: ['unit'] },
  store: {
    files: 'src/store',
    tests: ['tests/store', 'tests/safekeeping', 'tests/people'],
    project: ['unit', 'server'],
  },
  people: { files: 'src/people', tests: ['tests/people', 'tests/api'], project: ['unit', 'server'] },
}

/** Milliseconds after which a mutant that runs for ever counts as noticed. */
const PATIENCE_MS = 300_000

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    seed: { type: 'string', default: '1' },
    from: { type: 'string', default: '0' },
    take: { type: 'string', default: '25' },
    at: { type: 'string', multiple: true },
  },
})
const room = ROOMS[positionals[0] ?? '']
if (room === undefined) throw new RangeError(`name a room: ${Object.keys(ROOMS).join(', ')}`)

interface Place extends Mutant {
  file: string
}

const files = readdirSync(join(TOP, room.files), { recursive: true, encoding: 'utf8' })
  .filter((name) => /\.tsx?$/.test(name))
  .map((name) => `${room.files}/${name}`)
  .sort()
const all: Place[] = files.flatMap((file) =>
  mutantsOf(readFileSync(join(TOP, file), 'utf8'), file.endsWith('x') ? 'tsx' : 'ts').map((m) => ({
    ...m,
    file,
  })),
)

/** Named places, or a part of all in an order drawn by the seed. */
function chosen(): Place[] {
  if (values.at !== undefined) return all.filter((m) => values.at?.includes(`${m.file}:${m.line}`))
  const draw = seeded(Number(values.seed))
  const order = all.map((m) => ({ m, key: draw() })).sort((a, b) => a.key - b.key)
  const from = Number(values.from)
  return order.slice(from, from + Number(values.take)).map(({ m }) => m)
}

const copy = mkdtempSync(join(tmpdir(), 'resettle-mutants-'))
for (const part of ['src', 'tests', 'migrations', 'demo', 'web', 'package.json', 'tsconfig.json'])
  cpSync(join(TOP, part), join(copy, part), { recursive: true, filter: (from) => !from.includes('/output') })
symlinkSync(join(TOP, 'node_modules'), join(copy, 'node_modules'))
const log = join(TOP, 'tests', 'output', 'mutants.jsonl')
mkdirSync(join(TOP, 'tests', 'output'), { recursive: true })

/** Whether the room's tests fail on the copy as it is now. */
function noticed(): boolean {
  const projects = room?.project.flatMap((p) => ['--project', p]) ?? []
  const run = spawnSync(
    process.execPath,
    [
      'node_modules/vitest/vitest.mjs',
      'run',
      '--config',
      'tests/vitest.config.ts',
      '--bail=1',
      ...projects,
      ...(room?.tests ?? []),
    ],
    { cwd: copy, timeout: PATIENCE_MS, killSignal: 'SIGKILL', stdio: 'ignore' },
  )
  return run.status !== 0
}

try {
  if (noticed()) throw new Error('the tests fail without any mutant')
  const survivors: string[] = []
  const places = chosen()
  process.stdout.write(`${places.length} of ${all.length} mutants of ${room.files}\n`)
  for (const { file, line, was, becomes, text } of places) {
    const whole = readFileSync(join(TOP, file), 'utf8')
    writeFileSync(join(copy, file), text)
    const killed = noticed()
    writeFileSync(join(copy, file), whole)
    const told = `${file}:${line} ${was} -> ${becomes}`.replaceAll(/\s+/g, ' ')
    process.stdout.write(`${killed ? 'noticed ' : 'SURVIVED'} ${told}\n`)
    appendFileSync(log, `${JSON.stringify({ file, line, was, becomes, killed })}\n`)
    if (!killed) survivors.push(told)
  }
  process.stdout.write(`${survivors.length} of ${places.length} survived\n`)
} finally {
  rmSync(copy, { recursive: true, force: true })
}
