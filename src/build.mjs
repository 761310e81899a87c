// Makes what is run: dist/server from what Node runs, dist/web from what browsers get. `npm run build` makes both;
// `resettle` in a checkout makes what it needs, where that is missing or older than what it is made of.
import { mkdirSync, readdirSync, rmSync, statSync, utimesSync } from 'node:fs'
import { join } from 'node:path'
import { setTimeout } from 'node:timers/promises'
import { fileURLToPath } from 'node:url'
import { writeWhatIsInside } from './what-is-inside.mjs'

const top = fileURLToPath(new URL('..', import.meta.url))
const LOCK = join(top, 'dist/building')
/** Milliseconds after which a build that holds the lock has surely died. */
const DEAD = 120_000

/** What can be made: the file written last, what it is made of, and how. */
const PARTS = {
  server: {
    made: 'dist/server/resettle.js',
    of: ['src', 'demo', 'package.json'],
    config: 'src/node/vite.config.ts',
  },
  web: {
    made: 'dist/web/service-worker.js',
    of: ['src', 'web', 'package.json'],
    config: 'web/vite.config.ts',
  },
}

const timeOf = (path) => statSync(join(top, path), { throwIfNoEntry: false })?.mtimeMs ?? 0

/** When the newest file in it was written. A folder counts too: its time tells of a file that was taken away. */
function newest(path) {
  const own = timeOf(path)
  if (!statSync(join(top, path)).isDirectory()) return own
  const inside = readdirSync(join(top, path), { withFileTypes: true })
  return inside.reduce((time, entry) => {
    if (/\.md$/.test(entry.name)) return time
    const child = `${path}/${entry.name}`
    return Math.max(time, entry.isDirectory() ? newest(child) : timeOf(child))
  }, own)
}

const stale = ({ made, of }) => {
  const time = timeOf(made)
  return time === 0 || of.some((path) => newest(path) > time)
}

/** Runs `work` while nobody else builds here: several commands may start at once in a fresh checkout. */
async function alone(work) {
  mkdirSync(join(top, 'dist'), { recursive: true })
  for (;;) {
    try {
      mkdirSync(LOCK)
      break
    } catch (error) {
      if (error.code !== 'EEXIST') throw error
      if (Date.now() - timeOf('dist/building') > DEAD) rmSync(LOCK, { recursive: true, force: true })
      await setTimeout(50)
    }
  }
  try {
    return await work()
  } finally {
    rmSync(LOCK, { recursive: true, force: true })
  }
}

async function make({ made, config }) {
  const { build } = await import('vite')
  const began = new Date()
  await build({ configFile: join(top, config), logLevel: 'warn' })
  // What was changed while it was being built is newer than it.
  utimesSync(join(top, made), began, began)
}

/** Makes each part that is missing or out of date; `all`: every part named, whatever its age. */
export async function build(names, { all = false } = {}) {
  const parts = names.map((name) => PARTS[name])
  if (!all && !parts.some(stale)) return
  await alone(async () => {
    for (const part of parts) if (all || stale(part)) await make(part)
  })
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  await build(['web', 'server'], { all: true })
  writeWhatIsInside()
}
