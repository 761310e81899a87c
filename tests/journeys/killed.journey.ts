/** A server that is killed while a phone sends to it, and how large the controls of the round are. */
import { type ChildProcess, spawn } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { openServices } from '../../src/node/services.ts'
import { launch, PHONE, watchedPage } from '../support/browser.ts'
import { intakes, startField, stateOf } from '../support/field.ts'
import { CHEAP, signInAs } from '../support/people.ts'
import { press, tap } from '../support/person.ts'
import { keepSignedIn } from '../support/signed-in.ts'
import { controlsOn, missableControls } from '../support/targets.ts'
import { wireTo } from '../support/wire.ts'

const DAY = '2026-06-10'

let browser: Browser
beforeAll(async () => {
  browser = await launch()
})
afterAll(() => browser.close())

it('every control of Today, Record and Intake can be hit in gloves, from the server and without signal', async () => {
  const field = await startField(browser, { day: DAY, demo: true, as: { name: 'Bram', role: 'beekeeper' } })
  const { page, wire, yard } = field
  const tag = yard.store.today(DAY)[0]?.tag ?? ''
  for (const fate of ['pass', 'cut'] as const) {
    wire.fate(() => fate)
    for (const path of ['/', `/colony/${tag}/visit`, '/intake', '/outbox']) {
      await page.goto(path)
      expect(await controlsOn(page), path).toBeGreaterThan(5)
      expect(await missableControls(page, 48), `${path}, ${fate}`).toEqual([])
    }
  }
  await field.stop()
})

const ROOT = fileURLToPath(new URL('../..', import.meta.url))

/** The server as it is started in earnest, in a process of its own and from another folder than its own. Resolves when it listens. */
function serve(data: string, port: number): Promise<{ process: ChildProcess; url: string }> {
  const started = spawn(process.execPath, [join(ROOT, 'src/bin.mjs'), 'serve', '--port', String(port)], {
    cwd: data,
    env: { ...process.env, RESETTLE_DATA: data, RESETTLE_LOG: 'silent', TZ: 'UTC' },
    stdio: ['ignore', 'pipe', 'inherit'],
  })
  return new Promise((done, fail) => {
    started.once('error', fail)
    started.once('exit', (code) => fail(new Error(`the server ended with ${code}`)))
    started.stdout?.on('data', (text: Buffer) => {
      const url = /http:\S+/.exec(text.toString())?.[0]
      if (url !== undefined) done({ process: started, url })
    })
  })
}

it('a server killed in the middle of the sending loses nothing and doubles nothing', async () => {
  const today = new Date().toISOString().slice(0, 10)
  const data = mkdtempSync(join(tmpdir(), 'resettle-killed-'))
  const tags = Array.from({ length: 10 }, (_, i) => `K-${i + 1}`)
  const before = openServices(join(data, 'resettle.db'), { cost: CHEAP })
  before.store.settings.set('timeZone', 'UTC')
  const made = before.store.append(intakes(tags, today), { today, recordedAt: new Date().toISOString() })
  expect(made.ok).toBe(true)
  const session = await signInAs(before.people, { name: 'Teuila', role: 'helper' })
  before.close()

  let server = await serve(data, 0)
  const wire = await wireTo(server.url)
  try {
    keepSignedIn(wire.url, session)
    const { page, context } = await watchedPage(browser, wire.url, PHONE, { worker: true })
    await page.goto('/')
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null)
    while ((await stateOf(page)).fetchedAt === null) await page.waitForTimeout(50)

    wire.fate(() => 'cut')
    const ids: string[] = []
    for (const tag of tags) {
      await page.goto(`/colony/${tag}/visit`)
      ids.push(await page.locator('input[name="id."]').inputValue())
      await tap(page, 'Stores', 'Enough')
      await press(page, 'Save the visit')
    }
    expect((await stateOf(page)).waiting).toBe(10)

    // Killed without warning while the fifth is on its way.
    let arrived = 0
    wire.fate(({ path }) => {
      if (path !== '/entries' || ++arrived !== 5) return 'pass'
      server.process.removeAllListeners('exit')
      server.process.kill('SIGKILL')
      return 'pass'
    })
    await page.goto('/outbox')
    await press(page, 'Send now')
    expect(arrived).toBeGreaterThanOrEqual(5)
    const left = (await stateOf(page)).waiting
    expect(left).toBeGreaterThanOrEqual(5)

    server = await serve(data, Number(new URL(server.url).port))
    wire.fate(() => 'pass')
    await page.goto('/outbox')
    while ((await stateOf(page)).waiting > 0) await page.waitForTimeout(100)
    await context.close()
    const after = openServices(join(data, 'resettle.db'), { cost: CHEAP })
    const journal = [...after.store.journal()].filter((r) => r.entry.kind !== 'intake').map((r) => r.entry.id)
    const { ok, problems } = after.store.verify()
    after.close()
    expect(journal).toEqual(ids)
    expect(problems).toEqual([])
    expect(ok).toBe(true)
  } finally {
    server.process.removeAllListeners('exit')
    server.process.kill('SIGKILL')
    await wire.stop()
    rmSync(data, { recursive: true, force: true })
  }
})
