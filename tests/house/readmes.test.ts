/** The documentation, held against the tree: every room has its README, what is named there exists, and nothing outgrows its place. */
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { entryTable, writtenTable } from './entry-table.ts'
import { folderOf, ROOT } from './files.ts'
import { ROOMS } from './rooms.ts'

/** Folders that are no rooms of the floor plan, and have a README all the same. */
const BESIDE = ['web', 'demo', 'migrations', 'tests', 'tests/bench']
/** Dated decisions on record. A reversed one is struck through and kept, so there are never fewer: raise it with each new one. */
const DECISIONS = 73

const TOP = 'src|web|demo|migrations|tests'
const FILE = /^[\w.@/-]+\.(?:tsx?|mjs|css|sql|md|json|png)$/
const FOLDER = new RegExp(`^(?:(?:${TOP})(?:/[\\w.@-]+)*|[\\w.@-]+)/$|^(?:${TOP})/[\\w.@/-]+$`)
/** Made by a build or a run, or the name that every room's way in has: not to be looked for. */
const PASSED_OVER = /^(?:\/|dist\/|tests\/output|(?:index|node)\.ts$)/
const FENCED = /^```[\s\S]*?^```/gm

const textOf = (file: string): string => readFileSync(join(ROOT, file), 'utf8')
const readmes = ['src', 'web', 'demo', 'migrations', 'tests'].flatMap((top) =>
  readdirSync(join(ROOT, top), { recursive: true, encoding: 'utf8' })
    // What a run makes is not of the house: the third language's test lays a copy of it there.
    .filter((file) => /(?:^|\/)README\.md$/.test(file) && !(top === 'tests' && file.startsWith('output/')))
    .map((file) => join(top, file)),
)
const documents = ['README.md', 'DEVELOPERS.md', ...readmes]

/** Words that name a file or a folder: in backticks, as a link, or by their ending anywhere in the text. */
function pathsIn(text: string): string[] {
  const prose = text.replace(FENCED, '')
  const quoted = [...prose.matchAll(/`([^`\n]+)`/g)].flatMap(([, code = '']) => code.split(/\s+/))
  const linked = [...prose.matchAll(/\]\(([^)\s]+)\)/g)].map(([, to = '']) => to)
  const bare = prose.replace(/`[^`\n]+`/g, ' ').match(/[\w./@-]+\.(?:tsx?|mjs|css|sql)\b/g) ?? []
  return [...quoted, ...linked, ...bare].filter(
    (word) => !PASSED_OVER.test(word) && (FILE.test(word) || FOLDER.test(word)),
  )
}

/** Which of them are not there, neither from the document's own folder nor from the top. */
const missingIn = (text: string, folder: string): string[] =>
  pathsIn(text).filter((path) => !existsSync(join(ROOT, folder, path)) && !existsSync(join(ROOT, path)))

const wordsIn = (text: string): number => text.split(/\s+/).filter((word) => word !== '').length

describe('every room', () => {
  test('has a README, and so have the folders beside them', () => {
    const folders = [...Object.keys(ROOMS).map(folderOf), ...BESIDE]
    expect(folders.filter((f) => !existsSync(join(ROOT, f, 'README.md')))).toEqual([])
  })

  test('leaves who may import whom to rooms.ts', () => {
    expect(readmes.filter((f) => /\bmay (?:be )?import/i.test(textOf(f)))).toEqual([])
  })
})

test.each(documents)('%s names only what is there', (file) => {
  expect(missingIn(textOf(file), dirname(file))).toEqual([])
})

describe('README.md', () => {
  const text = textOf('README.md')
  const [title = '', job = ''] = text.split(/\n\s*\n/)

  test('is under 1,400 words', () => expect(wordsIn(text)).toBeLessThan(1400))

  test('opens with the job in one paragraph', () => {
    expect(title).toMatch(/^# \w+$/)
    expect(job).toMatch(/^[A-Z]/)
    expect(job).toContain('colon')
    expect(wordsIn(job)).toBeGreaterThan(50)
    expect(wordsIn(job)).toBeLessThan(200)
  })

  test('leads to every public format', () => {
    const formats = readmes.filter((f) => /^## Format\b/m.test(textOf(f)))
    expect(formats.length).toBeGreaterThan(8)
    expect(formats.filter((f) => !text.includes(`](${f})`))).toEqual([])
  })
})

test('the table of entry kinds is that of the schema (npx tsx tests/house/entry-table.ts writes it)', () => {
  expect(writtenTable()).toBe(entryTable())
})

test('DEVELOPERS.md is under 10 KB', () => {
  expect(Buffer.byteLength(textOf('DEVELOPERS.md'))).toBeLessThan(10_000)
})

test('no decision is lost, and each stands once, in the room it concerns', () => {
  const titles = readmes.flatMap((f) => textOf(f).match(/^(?:~~)?\*\*20\d\d-\d\d [^*]+\*\*/gm) ?? [])
  expect(new Set(titles).size).toBe(titles.length)
  expect(titles.length).toBeGreaterThanOrEqual(DECISIONS)
  expect(textOf('DEVELOPERS.md')).not.toMatch(/\*\*20\d\d-\d\d /)
})

test('the rules themselves can fail', () => {
  expect(pathsIn('see `src/days.ts`, [x](../a.md) and `POST /entries`; plain b.ts; `fields/`')).toEqual([
    'src/days.ts',
    'fields/',
    '../a.md',
    'b.ts',
  ])
  expect(missingIn('`src/server/app.ts`, `days.ts`, `src/recovery`, `src/exchange`', 'src')).toEqual([
    'src/server/app.ts',
    'src/exchange',
  ])
  expect(pathsIn('```sh\nrm old/x.ts\n```\n')).toEqual([])
})
