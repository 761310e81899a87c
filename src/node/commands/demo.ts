/** `resettle demo`: the invented yard, in a database of its own that goes away when it is stopped. */
import { mkdirSync, mkdtempSync, readdirSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import { demoAccounts } from '../../../demo/accounts.ts'
import { fill } from '../../../demo/fill.ts'
import { fillOffice } from '../../../demo/office.ts'
import { dayIn } from '../../days.ts'
import { openServices } from '../services.ts'
import { BUILT_PROGRAM, portOf, serveUntilStopped } from './serve.ts'

/** Each demo has a folder of its own in it, so that two can run side by side. */
const HERE = join(tmpdir(), 'resettle-demo')

/** Fills a fresh database, serves it until stopped, and takes it away again. */
export async function run(args: string[]): Promise<number> {
  const port = portWanted(args)
  if (typeof port !== 'number') return 2
  mkdirSync(HERE, { recursive: true })
  sweep()
  const folder = mkdtempSync(join(HERE, `yard-${process.pid}-`))
  try {
    const services = openServices(join(folder, 'resettle.db'), {
      cost: { n: 1024, r: 8, p: 1 },
      ...BUILT_PROGRAM,
    })
    const { store } = services
    const now = new Date()
    const zone = store.settings.get('timeZone') ?? Intl.DateTimeFormat().resolvedOptions().timeZone
    const { entries } = fill(store, dayIn(zone, now), now.toISOString())
    fillOffice(store, dayIn(zone, now), now.toISOString())
    process.stderr.write(`An invented yard of ${store.colonies().length} colonies, ${entries} entries.\n`)
    const demo = await demoAccounts(services.people)
    return await serveUntilStopped({ services, port, demo }, 'The demo is at')
  } catch (error) {
    if (!isTaken(error)) throw error
    process.stderr.write(
      `Port ${port} is taken by another program. Name another: npm run demo -- --port 8500\n`,
    )
    return 1
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

/** Takes away what a demo left that was killed instead of stopped: its folder carries the number of its process. */
function sweep(): void {
  for (const name of readdirSync(HERE)) {
    const pid = Number(/^yard-(\d+)-/.exec(name)?.[1] ?? Number.NaN)
    if (!Number.isNaN(pid) && !isRunning(pid)) rmSync(join(HERE, name), { recursive: true, force: true })
  }
}

function isRunning(pid: number): boolean {
  try {
    return process.kill(pid, 0)
  } catch (error) {
    // Not allowed to signal it means that it is there.
    return error instanceof Error && 'code' in error && error.code === 'EPERM'
  }
}

/** The port in the arguments, or nothing after saying what is wrong with them. */
function portWanted(args: string[]): number | undefined {
  try {
    const { values } = parseArgs({ args, options: { port: { type: 'string' } } })
    return portOf(values.port ?? process.env.RESETTLE_PORT)
  } catch (error) {
    process.stderr.write(`resettle demo: ${error instanceof Error ? error.message : error}\n`)
    return undefined
  }
}

const isTaken = (error: unknown): boolean =>
  error instanceof Error && 'code' in error && error.code === 'EADDRINUSE'
