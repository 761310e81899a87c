/**
 * A server to be killed: the real app on a database file, started with the file's name, saying its port on stdout. Built
 * into one file first, because it is started some hundred times.
 */

import { listen } from '../../../src/node/listen.ts'
import { openSoundHouse } from '../../../src/node/services.ts'

const house = openSoundHouse(process.argv[2] ?? '')
const { url } = await listen({ house, port: 0 })
process.stdout.write(`${url}\n`)
process.once('SIGTERM', () => process.exit(0))
