/**
 * Asks WebPPL anew and keeps its answers. WebPPL is not among the project's packages, because only this needs it:
 *
 *   npm install --no-save webppl@0.9.15 && npx tsx tests/forecast/make-other-program.ts
 */
import { writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { fileURLToPath } from 'node:url'
import { DEFAULT_RATES } from '../../src/forecast/rates.ts'
import { hashOf, MODELS, programOf, rates } from './other-program.ts'

interface WebPpl {
  run(code: string, k: (s: unknown, value: unknown) => void): void
}
const webppl = createRequire(import.meta.url)('webppl') as WebPpl

const answered = (program: string): Promise<Record<string, number>> =>
  new Promise((done) => {
    webppl.run(program, (_, value) => {
      const { getDist } = value as { getDist(): Record<string, { val: string; prob: number }> }
      done(Object.fromEntries(Object.values(getDist.call(value)).map((x) => [x.val, x.prob])))
    })
  })

const kept: Record<string, { hash: string; odds: Record<string, number> }> = {}
for (const { name, brood, looks, last } of MODELS) {
  const program = programOf(rates, DEFAULT_RATES.aliveUnseen, brood, looks, last)
  kept[name] = { hash: hashOf(program), odds: await answered(program) }
}
writeFileSync(
  fileURLToPath(new URL('./other-program.json', import.meta.url)),
  `${JSON.stringify(kept, null, 2)}\n`,
)
