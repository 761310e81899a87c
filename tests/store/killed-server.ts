/**
 * A server to be killed: the real app on a database file, started with the file's name, saying its port on stdout. Built
 * into one file first, because it is started some hundred times.
 */

import { listen } from '../../src/node/listen.ts'
import { openCheckedServices } from '../../src/node/services.ts'

const services = openCheckedServices(process.argv[2] ?? '')
const { url } = await listen({ services, port: 0 })
process.stdout.write(`${url}\n`)
process.once('SIGTERM', () => process.exit(0))
