/** `resettle serve`: the yard's book on this machine. */
import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import { BUILT } from '../server/assets.ts'
import { type Listening, listen } from '../server/listen.ts'
import { dataFile, openStore, type Store, StoreError } from '../store/index.ts'

const DEFAULT_PORT = 8420

export async function run(args: string[]): Promise<number> {
  try {
    const { values } = parseArgs({ args, options: { port: { type: 'string' } } })
    const store = openStore(dataFile({ make: true }))
    return await serveUntilStopped(store, portOf(values.port ?? process.env.RESETTLE_PORT))
  } catch (error) {
    process.stderr.write(`${inWords(error)}\n`)
    return 1
  }
}

/** Serves a store, says where, and waits for the signal to stop. Closes the store. The demo uses this too. */
export async function serveUntilStopped(
  store: Store,
  port: number,
  greeting = 'Resettle is at',
): Promise<number> {
  if (!existsSync(join(BUILT, 'manifest.json')))
    process.stderr.write('The pages have no styles yet: run "npm run build" once.\n')
  const server = await listen({ store, port })
  process.stdout.write(`${greeting} ${server.url}\n`)
  await stopSignal()
  await close(server, store)
  return 0
}

const stopSignal = (): Promise<void> =>
  new Promise((resolve) => {
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => resolve())
  })

async function close(server: Listening, store: Store): Promise<void> {
  await server.stop()
  store.close()
}

/** The port wanted, DEFAULT_PORT when none was named. Throws RangeError on what is no port. */
export function portOf(text: string | undefined): number {
  if (text === undefined || text === '') return DEFAULT_PORT
  const port = Number(text)
  if (!Number.isInteger(port) || port < 0 || port > 65_535)
    throw new RangeError(`"${text}" is no port: give a whole number from 1 to 65535`)
  return port
}

function inWords(error: unknown): string {
  if (error instanceof StoreError || error instanceof RangeError) return error.message
  if (error instanceof Error && 'code' in error && error.code === 'EADDRINUSE')
    return `The port is taken: another program, perhaps another Resettle, listens there. Set RESETTLE_PORT to another one.`
  return error instanceof Error ? error.message : String(error)
}
