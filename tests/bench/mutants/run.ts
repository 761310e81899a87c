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
import { setTimeout as sleep } from 'node:timers/promises'
import { fileURLToPath } from 'node:url'
import { parseArgs } from 'node:util'
import { createVitest, type Vitest } from 'vitest/node'
import { seeded } from '../../forecast/random.ts'
import { type Mutant, mutantsOf } from './mutate.ts'

const TOP = fileURLToPath(new URL('../../..', import.meta.url))

interface Proofs {
  files: string
  /** Cheap tests first: most faults need no more than these. */
  stages: string[][]
  project: string[]
}

/** What proves a room: tests that run in seconds. Others may notice more. */
const ROOMS: Record<string, Proofs> = {
  recovery: {
    files: 'src/recovery',
    stages: [
      ['tests/recovery/cases', 'tests/recovery/edges', 'tests/recovery/tracing', 'tests/recovery/guards'],
      ['tests/recovery', 'tests/features/health', 'tests/reference/khoury.test.ts'],
    ],
    project: ['unit'],
  },
  decision: {
    files: 'src/decision',
    stages: [
      ['tests/forecast/same-story.test.ts', 'tests/decision/chores.test.ts'],
      ['tests/decision', 'tests/forecast/agrees-with-plan.test.ts', 'tests/recovery/guards.test.ts'],
    ],
    project: ['unit'],
  },
  store: {
    files: 'src/store',
    stages: [
      ['tests/store/append', 'tests/store/verify', 'tests/store/read', 'tests/store/guards'],
      ['tests/store', 'tests/features/data', 'tests/people'],
    ],
    project: ['unit', 'server'],
  },
  people: {
    files: 'src/people',
    stages: [
      [
        'tests/people/limits',
        'tests/people/passphrase',
        'tests/people/permissions',
        'tests/features/accounts',
      ],
      ['tests/people', 'tests/features/api'],
    ],
    project: ['unit', 'server'],
  },
}

function roomNamed(name: string): Proofs {
  const room = ROOMS[name]
  if (room === undefined) throw new RangeError(`name a room: ${Object.keys(ROOMS).join(', ')}`)
  return room
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
const room = roomNamed(positionals[0] ?? '')

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

/** One kept test runner: each mutant costs only the changed file and the tests, not a start. Threads, so that one which never ends can be ended. */
const runner = (): Promise<Vitest> =>
  createVitest('test', {
    root: copy,
    config: join(copy, 'tests/vitest.config.ts'),
    project: room.project,
    watch: false,
    bail: 1,
    pool: 'threads',
    maxWorkers: 1,
    reporters: [{}],
    silent: true,
  })
let vitest = await runner()
/** What failed last, by name. */
let blame = ''

/** Whether the room's tests fail on the copy as it is now, where `changed` is what differs from the run before. */
async function noticed(changed: readonly string[]): Promise<boolean> {
  for (const file of changed) vitest.invalidateFile(join(copy, file))
  for (const tests of room.stages) if (await fails(tests)) return true
  return false
}

async function fails(tests: readonly string[]): Promise<boolean> {
  const specs = await vitest.globTestSpecifications([...tests])
  const patience = new AbortController()
  const late = sleep(PATIENCE_MS, 'late' as const, { signal: patience.signal }).catch(() => 'late' as const)
  const ended = await Promise.race([vitest.runTestSpecifications(specs), late])
  patience.abort()
  if (ended === 'late') {
    await vitest.close()
    vitest = await runner()
    return true
  }
  const failed = ended.testModules.filter((module) => !module.ok())
  blame = [...failed.map((module) => module.relativeModuleId), ...ended.unhandledErrors.map(String)].join(
    ', ',
  )
  return blame !== ''
}

try {
  if (await noticed([])) throw new Error(`the tests fail without any mutant: ${blame}`)
  const survivors: string[] = []
  const places = chosen()
  process.stdout.write(`${places.length} of ${all.length} mutants of ${room.files}\n`)
  let before: string[] = []
  for (const { file, line, was, becomes, text } of places) {
    const whole = readFileSync(join(TOP, file), 'utf8')
    writeFileSync(join(copy, file), text)
    const killed = await noticed([...before, file])
    before = [file]
    writeFileSync(join(copy, file), whole)
    const told = `${file}:${line} ${was} -> ${becomes}`.replaceAll(/\s+/g, ' ')
    process.stdout.write(`${killed ? 'noticed ' : 'SURVIVED'} ${told}\n`)
    appendFileSync(log, `${JSON.stringify({ file, line, was, becomes, killed })}\n`)
    if (!killed) survivors.push(told)
  }
  process.stdout.write(`${survivors.length} of ${places.length} survived\n`)
} finally {
  await vitest.close()
  rmSync(copy, { recursive: true, force: true })
}
