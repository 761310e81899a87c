/**
 * The whole test run: `npm test`.
 *
 * Type check, lint and the build of the browser's files run side by side; then the tests, each kind in its turn, because
 * a kind fills all cores by itself and what measures times wants a quiet machine. Ends with one line, 'N passed, N failed'.
 */
import { spawn } from 'node:child_process'
import { mkdirSync, readFileSync, rmSync } from 'node:fs'
import { delimiter, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { ensureChromium, NoChromium, thisMachine } from './support/chromium.ts'
import { closingLine, NOTHING, oneFailure, plus, type Tally, tallyOf } from './support/tally.ts'

const ROOT = fileURLToPath(new URL('..', import.meta.url))
const OUTPUT = join(ROOT, 'tests', 'output')
const ENV = {
  ...process.env,
  PATH: `${join(ROOT, 'node_modules', '.bin')}${delimiter}${process.env.PATH ?? ''}`,
}

interface Ended {
  code: number
  output: string
  seconds: number
}

/** Runs a command; its output is shown as it comes, or kept until the end when it runs beside others. */
function run(
  command: string,
  args: string[],
  show: 'live' | 'kept',
  env: NodeJS.ProcessEnv = {},
): Promise<Ended> {
  const started = performance.now()
  return new Promise((done) => {
    const child = spawn(command, args, {
      cwd: ROOT,
      env: { ...ENV, ...env },
      stdio: ['ignore', 'pipe', 'pipe'],
    })
    let output = ''
    const take = (chunk: Buffer): void => {
      if (show === 'live') process.stdout.write(chunk)
      else output += chunk.toString()
    }
    const end = (code: number): void => done({ code, output, seconds: (performance.now() - started) / 1000 })
    child.stdout.on('data', take)
    child.stderr.on('data', take)
    child.on('error', (error) => {
      take(Buffer.from(`${command}: ${error.message}\n`))
      end(1)
    })
    child.on('close', (code) => end(code ?? 1))
  })
}

const heading = (text: string): void => console.log(`\n== ${text}`)

/** A step without tests of its own. */
async function check(name: string, command: string, args: string[]): Promise<Tally> {
  const { code, output, seconds } = await run(command, args, 'kept')
  heading(`${name}: ${code === 0 ? 'well' : 'FAILED'} (${seconds.toFixed(1)} s)`)
  process.stdout.write(output)
  return code === 0 ? NOTHING : oneFailure(name)
}

/** One vitest project, counted from its JSON report. */
async function tests(project: string, env: NodeJS.ProcessEnv = {}): Promise<Tally> {
  heading(`${project} tests`)
  const report = join(OUTPUT, `${project}.json`)
  // Left alone, vitest keeps one core free; what measures times has the machine to itself.
  const workers = project === 'speed' ? ['--maxWorkers=1'] : ['--maxWorkers=100%']
  const args = ['run', '--config', 'tests/vitest.config.ts', '--project', project, ...workers]
  const { code, seconds } = await run(
    'vitest',
    [...args, '--reporter=default', '--reporter=json', `--outputFile.json=${report}`],
    'live',
    env,
  )
  const tally = tallyOf(textOf(report), project, code)
  console.log(`${project}: ${closingLine(tally)} (${seconds.toFixed(1)} s)`)
  return tally
}

function textOf(file: string): string | null {
  try {
    return readFileSync(file, 'utf8')
  } catch {
    return null
  }
}

async function journeys(): Promise<Tally> {
  try {
    const env = { CHROMIUM_PATH: ensureChromium(thisMachine()) }
    return plus(await tests('journeys', env), await tests('speed', env))
  } catch (error) {
    if (!(error instanceof NoChromium)) throw error
    heading('journeys: FAILED')
    console.log(error.message)
    return oneFailure('journeys: no Chromium')
  }
}

async function main(): Promise<number> {
  const started = performance.now()
  // A report left from an earlier run must never be counted as this one's.
  rmSync(OUTPUT, { recursive: true, force: true })
  mkdirSync(OUTPUT, { recursive: true })
  const first = await Promise.all([
    check('type check', 'tsc', ['--noEmit']),
    check('lint', 'biome', ['check', '--error-on-warnings', '.']),
    check('build', 'vite', ['build', '--config', 'web/vite.config.ts', '--logLevel', 'warn']),
  ])
  let total = first.reduce(plus, NOTHING)
  for (const project of ['unit', 'reference', 'server']) total = plus(total, await tests(project))
  total = plus(total, await journeys())
  if (total.failures.length > 0) {
    heading('what failed')
    for (const line of total.failures) console.log(line)
  }
  heading(`done in ${((performance.now() - started) / 1000).toFixed(0)} s`)
  console.log(closingLine(total))
  return total.failed === 0 && total.passed > 0 ? 0 : 1
}

process.exitCode = await main()
