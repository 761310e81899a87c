/**
 * Finds the Chromium the journeys drive, or says exactly how to get one.
 *
 * Looked for in this order: `CHROMIUM_PATH`, the usual names on PATH, the copy Playwright downloads. What the machine
 * offers is handed in, so that the search can be tested without touching the machine.
 */
import { execFileSync } from 'node:child_process'
import { accessSync, constants, statSync } from 'node:fs'
import { delimiter, join } from 'node:path'
import { chromium } from 'playwright-core'

/** Names under which distributions install a Chromium or a browser of its family. */
const USUAL_NAMES = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome', 'chrome']

/**
 * The same browser without its windows (Debian's package of that name): a page costs a third of the processor there, and what it
 * draws is the same. It does not keep the page one came from, as people's browsers do.
 */
const WINDOWLESS = 'chromium-headless-shell'

export interface Machine {
  env: Readonly<Record<string, string | undefined>>
  /** True for a file that may be run. */
  runnable: (file: string) => boolean
  /** Where Playwright would keep its own copy. */
  playwrightCopy: string
  root: boolean
  /** Runs a command to its end; throws when it fails. */
  run: (command: string, args: string[]) => void
}

/** Why there is no Chromium, with the command that gets one. */
export class NoChromium extends Error {
  override name = 'NoChromium'
}

const onPath = (machine: Machine, name: string): string | undefined =>
  (machine.env.PATH ?? '')
    .split(delimiter)
    .filter(Boolean)
    .map((folder) => join(folder, name))
    .find(machine.runnable)

/**
 * The path of a Chromium, or null; `whole`: one that can do all that people's browsers do. Throws {@link NoChromium} when
 * CHROMIUM_PATH names something that cannot be run.
 */
export function findChromium(machine: Machine, whole = false): string | null {
  const named = machine.env.CHROMIUM_PATH
  if (named !== undefined && named !== '' && !(whole && named.endsWith(WINDOWLESS))) {
    if (machine.runnable(named)) return named
    throw new NoChromium(
      `CHROMIUM_PATH is ${named}, which is not a program that can be run. Correct or unset it.`,
    )
  }
  for (const name of whole ? USUAL_NAMES : [WINDOWLESS, ...USUAL_NAMES]) {
    const file = onPath(machine, name)
    if (file !== undefined) return file
  }
  return machine.runnable(machine.playwrightCopy) ? machine.playwrightCopy : null
}

/**
 * The path of a Chromium, installing Debian's own where we may (root, with apt). Throws {@link NoChromium} with the
 * exact command otherwise.
 */
export function ensureChromium(machine: Machine, whole = false): string {
  const found = findChromium(machine, whole)
  if (found !== null) return found
  const apt = onPath(machine, 'apt-get') !== undefined
  if (apt && machine.root) {
    installWithApt(machine)
    const installed = findChromium(machine, whole)
    if (installed !== null) return installed
  }
  const command = apt
    ? 'sudo apt-get update && sudo apt-get install -y chromium'
    : 'npx playwright-core install chromium'
  throw new NoChromium(
    `The browser journeys need Chromium and none was found. Run:\n\n    ${command}\n\nor set CHROMIUM_PATH to one that is installed.`,
  )
}

function installWithApt(machine: Machine): void {
  try {
    machine.run('apt-get', ['update'])
    machine.run('apt-get', ['install', '-y', 'chromium'])
  } catch (error) {
    throw new NoChromium(
      `Installing Chromium failed (${error instanceof Error ? error.message : error}). Run:\n\n    apt-get update && apt-get install -y chromium\n`,
    )
  }
  try {
    machine.run('apt-get', ['install', '-y', WINDOWLESS])
  } catch {
    // Older releases have no such package: the journeys are slower with the whole browser alone, and prove the same.
  }
}

function runnable(file: string): boolean {
  try {
    accessSync(file, constants.X_OK)
    return statSync(file).isFile()
  } catch {
    return false
  }
}

/** The machine we are on. */
export const thisMachine = (): Machine => ({
  env: process.env,
  runnable,
  playwrightCopy: chromium.executablePath(),
  root: process.getuid?.() === 0,
  run: (command, args) => {
    execFileSync(command, args, {
      stdio: ['ignore', 'inherit', 'inherit'],
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    })
  },
})
