/**
 * The whole test run: `npm test`.
 *
 * Tests begin when what they open is built, of all kinds together, while types, lint and unused exports are still looked at: a start of
 * tests reads the house on one core. Last, alone, comes what measures times. Ends with one line, 'N passed, N failed'.
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

/** Tests, counted from their JSON report. */
async function tests(projects: string[], env: NodeJS.ProcessEnv): Promise<Tally> {
  heading('tests')
  const report = join(OUTPUT, 'all.json')
  const chosen = projects.flatMap((project) => ['--project', project])
  const { code, seconds } = await run(
    'vitest',
    [
      ...['run', '--config', 'tests/vitest.config.ts', ...chosen],
      ...['--reporter=default', '--reporter=json', `--outputFile.json=${report}`],
    ],
    'live',
    env,
  )
  const tally = tallyOf(textOf(report), 'tests', code)
  console.log(`tests: ${closingLine(tally)} (${seconds.toFixed(1)} s)`)
  return tally
}

function textOf(file: string): string | null {
  try {
    return readFileSync(file, 'utf8')
  } catch {
    return null
  }
}

/** Where Chromium is, or why there is none: then the journeys fail, and the rest is run all the same. */
function chromium(): { path: string } | { missing: string } {
  try {
    return { path: ensureChromium(thisMachine()) }
  } catch (error) {
    if (!(error instanceof NoChromium)) throw error
    return { missing: error.message }
  }
}

async function allTests(): Promise<Tally> {
  const found = chromium()
  if ('path' in found) return tests(['together', 'speed'], { CHROMIUM_PATH: found.path, TOGETHER: '1' })
  heading('journeys: FAILED')
  console.log(found.missing)
  return plus(oneFailure('journeys: no Chromium'), await tests(['quiet'], {}))
}

async function main(): Promise<number> {
  const started = performance.now()
  // A report left from an earlier run must never be counted as this one's.
  rmSync(OUTPUT, { recursive: true, force: true })
  mkdirSync(OUTPUT, { recursive: true })
  const types = check('type check', 'npm', ['run', '-s', 'types'])
  const build = await check('build', 'npm', ['run', '-s', 'build'])
  const beside = [
    types,
    check('lint', 'biome', ['check', '--error-on-warnings', '.']),
    check('unused exports', 'npm', ['run', '-s', 'unused']),
    allTests(),
  ]
  const total = [build, ...(await Promise.all(beside))].reduce(plus, NOTHING)
  if (total.failures.length > 0) {
    heading('what failed')
    for (const line of total.failures) console.log(line)
  }
  heading(`done in ${((performance.now() - started) / 1000).toFixed(0)} s`)
  console.log(closingLine(total))
  return total.failed === 0 && total.passed > 0 ? 0 : 1
}

process.exitCode = await main()
