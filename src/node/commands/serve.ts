/** `resettle serve`: the yard's book, for browsers. */

import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import type { Outside } from '../../app/index.ts'
import { DIRECT, errorForLog, loggerFrom, outsideFrom } from '../../app/node.ts'
import { hookRulesFrom, mailerFrom, startMessenger } from '../../features/messages/node.ts'
import { dataFile, StoreError } from '../../store/node.ts'
import { BUILT } from '../assets.ts'
import { isLoopback, type ListenOptions, listen } from '../listen.ts'
import { openCheckedServices, type Services } from '../services.ts'

const DEFAULT_PORT = 8420

/** Exit code 0 when stopped by a signal, 1 when it cannot be served; the reason is on stderr. */
export async function run(args: string[]): Promise<number> {
  try {
    const { values } = parseArgs({ args, options: { port: { type: 'string' }, host: { type: 'string' } } })
    const port = portOf(values.port ?? process.env.RESETTLE_PORT)
    const host = values.host ?? process.env.RESETTLE_HOST ?? '127.0.0.1'
    const outside = outsideFrom(process.env)
    const log = loggerFrom(process.env)
    const services = openCheckedServices(dataFile({ make: true }), {
      report: (error) => log.error({ error: errorForLog(error) }, 'backup or message failed'),
      mailer: mailerFrom(process.env),
      hookRules: hookRulesFrom(process.env),
      home: outside.url,
      ...BUILT_PROGRAM,
    })
    for (const warning of warningsFor(host, outside)) process.stderr.write(`${warning}\n`)
    return await serveUntilStopped({ services, port, host, outside, log })
  } catch (error) {
    process.stderr.write(`${inWords(error)}\n`)
    return 1
  }
}

/** What is better said before anybody relies on it, a sentence each. */
export function warningsFor(host: string, outside: Outside): string[] {
  const tls = outside.url?.startsWith('https:') === true
  return [
    ...(!isLoopback(host) && !tls
      ? [
          `${host} is served without TLS as far as this program knows: put a TLS proxy before it and set RESETTLE_URL, or passphrases cross the network in the clear.`,
        ]
      : []),
    ...(tls && outside.trust === DIRECT.trust
      ? [
          'RESETTLE_URL is https, so a proxy stands before this server, but RESETTLE_TRUST_PROXY does not name it: all the world then counts as one address, and one guesser’s limit shuts everybody out. Set it to "loopback" when the proxy runs on this machine.',
        ]
      : []),
  ]
}

/** The one built file is the thread's program too (src/cli.ts); uncompiled there is none. */
export const BUILT_PROGRAM = import.meta.url.endsWith('.js')
  ? { readerProgram: new URL(import.meta.url) }
  : {}

/** Serves the services, says where, keeps their backups, waits for the signal to stop, and closes them. */
export async function serveUntilStopped(
  options: ListenOptions & { services: Services },
  greeting = 'Resettle is at',
): Promise<number> {
  const { services } = options
  if (!existsSync(join(BUILT, 'manifest.json')))
    process.stderr.write('The pages have no styles yet: run "npm run build" once.\n')
  try {
    const server = await listen(options)
    const stopBackups = services.safekeeping?.start()
    const stopMessages = startMessenger(services.messages.messenger, (error) =>
      options.log?.error({ error: errorForLog(error) }, 'messages failed'),
    )
    const home = options.outside?.url ?? server.url
    const behind = home === server.url ? '' : ` (its proxy finds it at ${server.url})`
    process.stdout.write(`${greeting} ${home}${behind}\n`)
    if (server.setUpUrl !== null)
      process.stdout.write(`There is no account yet. Make the first one here, once: ${server.setUpUrl}\n`)
    await stopSignal()
    await server.stop()
    await stopMessages()
    await stopBackups?.()
    return 0
  } finally {
    services.close()
  }
}

const stopSignal = (): Promise<void> =>
  new Promise((resolve) => {
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => resolve())
  })

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
  const code = error instanceof Error && 'code' in error ? error.code : ''
  if (code === 'EADDRINUSE')
    return `The port is taken: another program, perhaps another Resettle, listens there. Set RESETTLE_PORT to another one.`
  if (code === 'EADDRNOTAVAIL' || code === 'ENOTFOUND') return 'RESETTLE_HOST is no address of this machine.'
  return error instanceof Error ? error.message : String(error)
}
