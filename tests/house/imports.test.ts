/** The pure rooms run in the browser unchanged: they import nothing from the floors above, no node module, and read no clock. */
import { readdirSync, readFileSync } from 'node:fs'
import { dirname, join, normalize } from 'node:path'
import { describe, expect, test } from 'vitest'

const ROOT = join(import.meta.dirname, '../..')
const PURE = ['biology', 'journal', 'recovery', 'round', 'forecast', 'review', 'removal', 'health', 'after']
/** Packages that run in a browser and read neither clock nor network. */
const BROWSER_SAFE = /^(zod|date-fns|@date-fns\/tz|@stdlib\/.+)$/
const CLOCK = /Date\.now\(|new Date\(\)|performance\.now\(|Math\.random\(|crypto\.randomUUID\(|\bfetch\(/

/** Every file of src, as 'recovery/plan.ts'. */
const files = readdirSync(join(ROOT, 'src'), { recursive: true, encoding: 'utf8' }).filter((f) =>
  /\.tsx?$/.test(f),
)

const STATIC = /^(?:import|export)\b[^'";]*?\bfrom '([^']+)'/gm
const BARE = /^import '([^']+)'/gm
const DYNAMIC = /\bimport\('([^']+)'\)/g

function importsOf(file: string): string[] {
  const text = readFileSync(join(ROOT, 'src', file), 'utf8')
  return [STATIC, BARE, DYNAMIC].flatMap((shape) => [...text.matchAll(shape)].map((m) => m[1] ?? ''))
}

const room = (file: string): string => file.split('/')[0] ?? ''
const isPure = (file: string): boolean =>
  PURE.includes(room(file)) || file === 'days.ts' || file === 'units.ts'

/** What is wrong with an import of a pure file, or null. */
function fault(file: string, target: string): string | null {
  if (!target.startsWith('.')) return BROWSER_SAFE.test(target) ? null : `${file} imports ${target}`
  const to = normalize(join(dirname(file), target))
  return isPure(to) ? null : `${file} imports ${to}`
}

describe('the pure rooms', () => {
  const pure = files.filter(isPure)

  test('are all there', () => {
    for (const name of PURE) expect(pure.filter((f) => room(f) === name).length, name).toBeGreaterThan(0)
  })

  test('import only each other and packages that are safe in a browser', () => {
    expect(pure.flatMap((f) => importsOf(f).flatMap((t) => fault(f, t) ?? []))).toEqual([])
  })

  test('read no clock, no chance and no network', () => {
    const lines = pure.flatMap((f) =>
      readFileSync(join(ROOT, 'src', f), 'utf8')
        .split('\n')
        .filter(
          (line) =>
            CLOCK.test(line) && !line.trimStart().startsWith('*') && !line.trimStart().startsWith('//'),
        )
        .map((line) => `${f}: ${line.trim()}`),
    )
    expect(lines).toEqual([])
  })

  test('have lower floors that do not look up: biology and the journal know no plan', () => {
    const low = pure.filter((f) => room(f) === 'biology' || room(f) === 'journal')
    const up = low.flatMap((f) =>
      importsOf(f)
        .filter((t) => /\/(recovery|forecast|review)\//.test(t))
        .map((t) => `${f}: ${t}`),
    )
    expect(up).toEqual([])
  })

  test('the rule itself can fail', () => {
    expect(importsOf('commands/plan.ts')).toContain('node:fs')
    expect(importsOf('recovery/plan.ts')).toContain('../days.ts')
    expect(fault('recovery/plan.ts', '../store/index.ts')).not.toBeNull()
    expect(fault('recovery/plan.ts', 'node:fs')).not.toBeNull()
    expect(fault('days.ts', './server/app.ts')).not.toBeNull()
    expect(fault('recovery/plan.ts', '../days.ts')).toBeNull()
    expect(CLOCK.test('const now = new Date()')).toBe(true)
  })
})
