/** `npm run bench`: prints how long the hot paths take. Not a test: figures depend on the machine. One name runs one. */
import { execFileSync } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import { bench as advice } from './advice/bench.ts'
import { bench as blocks } from './blocks.ts'
import { bench as faults } from './faults.ts'
import { bench as review } from './first-look.ts'
import { bench as forecast } from './forecast.ts'
import { bench as forecasts } from './foresight-pages.ts'
import { bench as load } from './load.ts'
import { bench as memory } from './memory.ts'
import { bench as phone } from './phone.ts'
import { bench as plan } from './plan.ts'
import { bench as today } from './today.ts'

const BENCHES: Record<string, () => void | Promise<void>> = {
  advice,
  plan,
  today,
  forecast,
  forecasts,
  phone,
  faults,
  blocks,
  load,
  memory,
  review,
}

const wanted = process.argv.slice(2)
const unknown = wanted.filter((name) => !Object.hasOwn(BENCHES, name))
if (unknown.length > 0) {
  process.stderr.write(`no bench ${unknown.join(', ')}; there are: ${Object.keys(BENCHES).join(', ')}\n`)
  process.exit(2)
}
execFileSync(process.execPath, [fileURLToPath(new URL('../../src/bin.mjs', import.meta.url)), 'help'], {
  stdio: 'ignore',
})
process.stdout.write(`Node ${process.version}, ${process.platform} ${process.arch}\n`)
for (const [name, bench] of Object.entries(BENCHES))
  if (wanted.length === 0 || wanted.includes(name)) await bench()
