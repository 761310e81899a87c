/**
 * The first look at Review after a start, from the file to the page, with a long past: seconds of the processor and the
 * most memory of a process that does nothing else. Goals: 10,000 colonies that have left in less than 1 s; 85,000 in less
 * than 8 s and 300 MB.
 *
 *     npm run bench -- review            (BENCH_LEFT=10000,85000; BENCH_BOOKS=a folder that keeps the books made)
 */
import { execFileSync } from 'node:child_process'
import { existsSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { testYard } from '../support/yard-app.ts'
import { pastBook } from './past.ts'

const SIZES = (process.env.BENCH_LEFT ?? '10000,85000').split(',').map(Number)
const TODAY = '2026-07-01'
const BOOKS = process.env.BENCH_BOOKS

const cpuMs = (): number => {
  const { user, system } = process.cpuUsage()
  return (user + system) / 1000
}

async function look(file: string): Promise<void> {
  const yard = testYard({ day: TODAY, file })
  await yard.session('operator')
  await yard.ask('operator', '/intake')
  const line = async (what: string): Promise<void> => {
    const from = cpuMs()
    const answer = await yard.ask('operator', '/review')
    const text = await answer.text()
    if (answer.status !== 200) throw new Error(`/review: ${answer.status}`)
    const most = process.resourceUsage().maxRSS / 1024
    process.stdout.write(
      `    ${what}: ${((cpuMs() - from) / 1000).toFixed(2)} s of the processor, ${(text.length / 1024).toFixed(0)} KB, at most ${most.toFixed(0)} MB\n`,
    )
  }
  await line('first look')
  await line('second look')
  yard.services.close()
}

const again = (...args: string[]): void => {
  execFileSync(process.execPath, [...process.execArgv, fileURLToPath(import.meta.url), ...args], {
    stdio: ['ignore', 'inherit', 'inherit'],
  })
}

export function bench(): void {
  const folder = BOOKS ?? mkdtempSync(join(tmpdir(), 'resettle-past-'))
  mkdirSync(folder, { recursive: true })
  try {
    for (const left of SIZES) {
      const file = join(folder, `${left}.db`)
      if (!existsSync(file)) again('make', file, String(left))
      process.stdout.write(`  review, ${left} colonies that have left\n`)
      again('look', file)
    }
  } finally {
    if (BOOKS === undefined) rmSync(folder, { recursive: true, force: true })
  }
}

const [, , what, file = '', left] = process.argv
if (what === 'make') pastBook(file, { left: Number(left), today: TODAY })
if (what === 'look') await look(file)
