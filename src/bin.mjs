#!/usr/bin/env node
// `resettle` in a checkout: runs the one built file, built first where it is missing or older than what it is made of.
import { mkdirSync, readdirSync, rmSync, statSync } from 'node:fs'
import { setTimeout } from 'node:timers/promises'
import { fileURLToPath, pathToFileURL } from 'node:url'

const top = fileURLToPath(new URL('..', import.meta.url))
const built = `${top}dist/server/resettle.js`
const lock = `${top}dist/building`
/** Milliseconds after which a build that holds the lock has surely died. */
const DEAD = 120_000

const changedAt = (path) => statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? 0

/** Whether anything of which the file is made is newer. */
function stale() {
  const made = changedAt(built)
  if (made === 0) return true
  const newer = (path) => changedAt(path) > made
  const sources = ['src', 'demo'].flatMap((folder) =>
    readdirSync(`${top}${folder}`, { recursive: true, encoding: 'utf8' })
      .filter((name) => /\.(tsx?|json)$/.test(name))
      .map((name) => `${top}${folder}/${name}`),
  )
  return newer(`${top}package.json`) || sources.some(newer)
}

/** Builds, or waits for who builds already: several commands may start at once in a fresh checkout. */
async function build() {
  mkdirSync(`${top}dist`, { recursive: true })
  for (;;) {
    try {
      mkdirSync(lock)
      break
    } catch (error) {
      if (error.code !== 'EEXIST') throw error
      if (Date.now() - changedAt(lock) > DEAD) rmSync(lock, { recursive: true, force: true })
      await setTimeout(50)
    }
  }
  try {
    if (!stale()) return
    const vite = await import('vite')
    await vite.build({ configFile: `${top}src/node/vite.config.ts`, logLevel: 'error' })
  } finally {
    rmSync(lock, { recursive: true, force: true })
  }
}

if (stale()) await build()
await import(pathToFileURL(built).href)
