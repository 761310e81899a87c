/** The floor plan of rooms.ts, held against the code: who imports whom, by which door, and what the pure rooms must not do. */
import { dirname } from 'node:path'
import { describe, expect, test } from 'vitest'
import { filesIn, folderOf, importsIn, importsOf, ROOT, roomOf, targetOf, textOf } from './files.ts'
import { mapOf, writtenMap } from './map.ts'
import { ROOMS } from './rooms.ts'

/** Ways into the program, which start it and are imported by nobody. */
const ENTRIES = new Set(['src/cli.ts', 'src/node/vite.config.ts', 'web/vite.config.ts', 'web/icons/make.ts'])
/** Packages that run in a browser and read neither clock nor network. */
const BROWSER_SAFE = /^(zod\/mini|fastest-levenshtein|@stdlib\/.+)$/
const CLOCK = /Date\.now\(|new Date\(\)|performance\.now\(|Math\.random\(|crypto\.randomUUID\(|\bfetch\(/

const files = filesIn('src', 'web').filter((f) => !ENTRIES.has(f))
const order = Object.keys(ROOMS)

/** Whether a room may import another. 'features/*' stands for every feature. */
const mayImport = (from: string, to: string): boolean =>
  (ROOMS[from]?.may ?? []).some((m) => m === to || (m === 'features/*' && to.startsWith('features/')))

/** What is wrong with one import, or null. */
function fault(file: string, spec: string): string | null {
  if (!spec.startsWith('.')) return null
  const target = targetOf(file, spec)
  const [from, to] = [roomOf(file), roomOf(target)]
  if (from === to) return isDoor(target) ? `${file} imports its own door` : null
  if (!mayImport(from, to)) return `${file} imports ${target}: ${from} may not import ${to}`
  return hasDoor(to) && !isDoor(target) ? `${file} imports ${target}, past its door` : null
}

const hasDoor = (room: string): boolean => room !== 'src' && room !== 'features' && room !== 'demo'
const isDoor = (file: string): boolean =>
  /\/(index|node)\.ts$/.test(file) && dirname(file) === folderOf(roomOf(file))

describe('the floor plan', () => {
  test('knows every room, and every room is there', () => {
    const rooms = new Set(files.map(roomOf))
    expect([...rooms].filter((r) => ROOMS[r] === undefined)).toEqual([])
    expect(order.filter((r) => !rooms.has(r))).toEqual([])
  })

  test('is kept: every import goes to a room that may be imported, by its door', () => {
    expect(files.flatMap((f) => importsOf(f).flatMap((t) => fault(f, t) ?? []))).toEqual([])
  })

  test('has no line that nothing uses', () => {
    const used = new Set(
      files.flatMap((f) => importsOf(f).map((t) => `${roomOf(f)} → ${roomOf(targetOf(f, t))}`)),
    )
    const others = order.flatMap((from) =>
      (ROOMS[from]?.may ?? [])
        .filter((to) => from.startsWith('features/') && to.startsWith('features/'))
        .map((to) => `${from} → ${to}`),
    )
    expect(others.filter((line) => !used.has(line))).toEqual([])
  })

  test('has no circle and no stairs up: a room imports only rooms above it in the list', () => {
    const up = order.flatMap((from, i) =>
      (ROOMS[from]?.may ?? [])
        .filter((to) => to !== 'features/*' && to !== 'demo' && order.indexOf(to) >= i)
        .map((to) => `${from} → ${to}`),
    )
    expect(up).toEqual([])
  })

  test('is the map in DEVELOPERS.md (npx tsx tests/house/map.ts writes it)', () => {
    expect(writtenMap()).toBe(mapOf(ROOMS))
  })

  test('keeps at least half of all imports inside one folder', () => {
    const relative = files.flatMap((f) =>
      importsOf(f).flatMap((t) => (t.startsWith('.') ? [[f, t] as const] : [])),
    )
    const inside = relative.filter(([f, t]) => dirname(targetOf(f, t)) === dirname(f))
    expect(inside.length / relative.length).toBeGreaterThan(0.5)
  })
})

describe('the pure rooms', () => {
  const pure = files.filter((f) => ROOMS[roomOf(f)]?.runs === 'pure')

  test('import no package but those that are safe in a browser', () => {
    const packages = pure.flatMap((f) =>
      importsOf(f)
        .filter((t) => !t.startsWith('.') && !BROWSER_SAFE.test(t))
        .map((t) => `${f} imports ${t}`),
    )
    expect(packages).toEqual([])
  })

  test('read no clock, no chance and no network', () => {
    const lines = pure.flatMap((f) =>
      textOf(f)
        .split('\n')
        .filter((line) => CLOCK.test(line) && !/^\s*(\*|\/\/)/.test(line))
        .map((line) => `${f}: ${line.trim()}`),
    )
    expect(lines).toEqual([])
  })
})

test('the rules themselves can fail', () => {
  expect(ROOT).not.toBe('')
  expect(importsIn("import { a } from './a.ts'\nconst b = await import('./b.ts')")).toEqual([
    './a.ts',
    './b.ts',
  ])
  expect(fault('src/recovery/plan.ts', '../store/index.ts')).toContain('may not import')
  expect(fault('src/features/today/route.tsx', '../round/box.ts')).toContain('past its door')
  expect(fault('src/recovery/plan.ts', './index.ts')).toContain('its own door')
  expect(fault('src/features/today/route.tsx', '../round/index.ts')).toBeNull()
  expect(CLOCK.test('const now = new Date()')).toBe(true)
})
