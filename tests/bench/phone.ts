/**
 * Forecasts in the browser, its processor slowed down four and six times as web performance tools do for a middling and a
 * slow phone. Goal: 100 ms a colony on a slow phone. Needs Chromium.
 */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'vite'
import { addDays } from '../../src/days.ts'
import { DEFAULT_RATES } from '../../src/forecast/rates.ts'
import { seeded } from '../forecast/random.ts'
import { Colony, playOut, START, someIntake } from '../forecast/simulator.ts'
import { launch } from '../support/browser.ts'
import { quantile } from './clock.ts'
import type { PhoneColony } from './phone-forecasts.ts'

const COLONIES = 60

function colonies(): PhoneColony[] {
  const random = seeded(3)
  return Array.from({ length: COLONIES }, (_, i) => {
    const c = playOut(
      new Colony(random, DEFAULT_RATES, someIntake(random), `P-${i}`),
      3 + Math.floor(random() * 35),
    )
    return { tag: c.tag, entries: c.entries, today: addDays(START, c.t) }
  })
}

async function script(folder: string): Promise<string> {
  await build({
    configFile: false,
    logLevel: 'error',
    publicDir: false,
    build: {
      outDir: folder,
      lib: {
        entry: fileURLToPath(new URL('phone-forecasts.ts', import.meta.url)),
        formats: ['iife'],
        name: 'phoneForecasts',
        fileName: () => 'phone.js',
      },
    },
  })
  return readFileSync(join(folder, 'phone.js'), 'utf8')
}

export async function bench(): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'resettle-phone-'))
  const browser = await launch()
  try {
    const content = await script(folder)
    for (const rate of [1, 4, 6]) {
      const page = await browser.newPage()
      const wire = await page.context().newCDPSession(page)
      await wire.send('Emulation.setCPUThrottlingRate', { rate })
      await page.addScriptTag({ content })
      const times = await page.evaluate((all) => {
        const { forecastAll } = globalThis as unknown as { forecastAll: (all: PhoneColony[]) => number[] }
        return forecastAll(all as PhoneColony[])
      }, colonies())
      const [first = Number.NaN, ...rest] = times
      const sorted = rest.sort((a, b) => a - b)
      process.stdout.write(
        `forecasts of a colony in the browser, ${rate} times slower: first ${first.toFixed(0)} ms, then median ${quantile(sorted, 0.5).toFixed(0)} ms, p95 ${quantile(sorted, 0.95).toFixed(0)} ms${rate === 4 ? '   (goal: 100 ms)' : ''}\n`,
      )
      await page.close()
    }
  } finally {
    await browser.close()
    rmSync(folder, { recursive: true })
  }
}
