/**
 * A third language is one file and four lines, as src/words/README.md says: a copy of the program is given one that is made
 * up. The compiler asks for what is missing, and nothing else; then the copy compiles and speaks it.
 */
import { spawnSync } from 'node:child_process'
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join, relative } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, expect, it } from 'vitest'
import { built } from '../support/build.ts'
import { PATIENCE } from '../support/long.ts'
import { provenLater } from '../support/proven.ts'
import type * as Support from '../support/yard-app.ts'

const ROOT = fileURLToPath(new URL('../..', import.meta.url))
let copy = ''

function makeCopy(): void {
  const output = join(ROOT, 'tests/output')
  mkdirSync(output, { recursive: true })
  // Within the project, so that the same packages are found.
  copy = mkdtempSync(join(output, 'third-'))
  for (const folder of ['src', 'migrations', 'tests/support', 'demo'])
    cpSync(join(ROOT, folder), join(copy, folder), { recursive: true })
  const { compilerOptions } = JSON.parse(readFileSync(join(ROOT, 'tsconfig.json'), 'utf8'))
  // What one run has found out, the next one knows.
  const options = { ...compilerOptions, incremental: true, tsBuildInfoFile: 'known.json' }
  writeFileSync(join(copy, 'tsconfig.json'), JSON.stringify({ compilerOptions: options, include: ['src'] }))
}
afterAll(() => {
  if (copy !== '') rmSync(copy, { recursive: true })
})

/** Files the compiler complains of, each with the first of what it says. */
function complaints(): string[] {
  const { stdout } = spawnSync(
    process.execPath,
    [join(ROOT, 'node_modules/typescript/bin/tsc'), '-p', copy, '--checkers', '1'],
    { encoding: 'utf8', cwd: copy },
  )
  return [...stdout.matchAll(/^(\S+?)\(\d+,\d+\): error TS\d+: (.*)/gm)].map((m) => `${m[1]}: ${m[2]}`)
}

function change(file: string, from: string, to: string): void {
  const text = readFileSync(join(copy, file), 'utf8')
  expect(text).toContain(from)
  writeFileSync(join(copy, file), text.replace(from, to))
}

/** The language in one file; `rest` is what it has beside what it says itself. */
const file = (rest: string): string => `/** A language that is made up. */
import type { Words } from './catalogue.ts'
import { english } from './en/index.ts'

const { outbox, ...others } = english

export const madeUp: Words = {
  ...others,
  ${rest}
  language: 'zz',
  ownName: 'Zzz',
  signIn: { ...english.signIn, title: 'Zzign zzin' },
}
`

/** What the compiler asks for, and what the copy speaks then. */
async function learnt(): Promise<{
  asked: string[]
  inPart: string[]
  offered: string
  chosen: string
  saved: number
  round: string
  review: string
}> {
  makeCopy()
  // Its tag alone: the three places that have all languages ask for it, and no other.
  change('src/languages.ts', "['en', 'es']", "['en', 'es', 'zz']")
  const asked = complaints().map((c) => c.split(':')[0] ?? '')

  for (const name of ['catalogue', 'page-words']) {
    change(`src/words/${name}.ts`, 'import type', "import { madeUp } from './made-up.ts'\nimport type")
    change(`src/words/${name}.ts`, 'Words> = {', 'Words> = { zz: madeUp,')
  }
  change(
    'src/words/live-catalogue.ts',
    'Promise<LiveWords>> = {',
    "Promise<LiveWords>> = { zz: async () => (await import('./made-up.ts')).madeUp,",
  )
  // One that lacks its outbox is told so, and of the whole one nothing is said.
  writeFileSync(join(copy, 'src/words/made-up.ts'), file('outbox,'))
  writeFileSync(
    join(copy, 'src/words/made-up-in-part.ts'),
    file('').replace('{ outbox, ...others }', '{ outbox: _, ...others }'),
  )
  const inPart = complaints()

  // As one file, in a folder that the tests' own loader leaves alone: file by file it takes several times as long.
  const program = await built(
    join(relative(ROOT, copy), 'tests/support/yard-app.ts'),
    join(copy, 'node_modules'),
  )
  const { testYard } = (await import(program)) as typeof Support
  const yard = testYard()
  await yard.session('operator')
  const at = async (role: 'operator' | null, path: string): Promise<string> =>
    (await yard.ask(role, path)).text()
  const offered = await at(null, '/sign-in')
  const chosen = await at(null, '/sign-in?lang=zz')
  const saved = (await yard.post('operator', '/account/language', { language: 'zz' })).status
  const [round, review] = [await at('operator', '/round'), await at('operator', '/review')]
  yard.services.close()
  return {
    asked,
    inPart,
    offered: links(offered),
    chosen: head(chosen),
    saved,
    round: head(round),
    review: head(review),
  }
}

/** What a page says of its language, and its title. */
const head = (page: string): string => (page.match(/<html [^>]*>|<h1>[^<]*<\/h1>/g) ?? []).join('')
const links = (page: string): string => (page.match(/<a [^>]*lang="[^>]*>\s*[^<]*/g) ?? []).join('')

it(
  'is asked for by the compiler where it is missing, and then is spoken',
  async () => {
    const found = await provenLater('third-language', import.meta.filename, learnt)
    expect(found.asked.sort()).toEqual([
      'src/words/catalogue.ts',
      'src/words/live-catalogue.ts',
      'src/words/page-words.ts',
    ])
    const [missing, ...more] = found.inPart
    expect(missing).toMatch(/^src\/words\/made-up-in-part\.ts: Property 'outbox' is missing/)
    expect(more).toEqual([])
    for (const [tag, name] of [
      ['es', 'Español'],
      ['zz', 'Zzz'],
    ])
      expect(found.offered).toMatch(new RegExp(`<a [^>]*lang="${tag}"[^>]*>\\s*${name}`))
    expect(found.chosen).toContain('<html lang="zz"')
    expect(found.chosen).toContain('<h1>Zzign zzin</h1>')
    expect(found.saved).toBe(303)
    expect(found.round).toContain('<html lang="zz"')
    expect(found.review).toContain('<html lang="en"')
  },
  PATIENCE * 240_000,
)
