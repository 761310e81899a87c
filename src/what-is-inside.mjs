// What of other people is in the built files: which packages, under which licences. Each build notes the packages whose code
// it took (dist/inside/NAME.json); from those and package.json come dist/licences.txt, with the licences' own words, and
// dist/sbom.json, a CycloneDX bill of materials: what `npm sbom` says of those packages alone, because what is bundled here
// is a development dependency to npm.
import { spawnSync } from 'node:child_process'
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

const top = fileURLToPath(new URL('..', import.meta.url))
const INSIDE = join(top, 'dist/inside')

/** The folder of the package a module is from; null for our own. */
function packageOf(id) {
  const found = /^\0?(.*[\\/]node_modules[\\/](?:@[^\\/]+[\\/])?[^\\/]+)[\\/]/.exec(id)
  return found === null ? null : found[1]
}

/** A build's plugin: notes the packages whose code is in what it wrote. */
export const noted = (name) => ({
  name: 'what-is-inside',
  apply: 'build',
  generateBundle(_options, bundle) {
    const modules = Object.values(bundle).flatMap((file) =>
      file.type === 'chunk' ? Object.keys(file.modules) : [],
    )
    const folders = [...new Set(modules.map(packageOf).filter((folder) => folder !== null))].sort()
    mkdirSync(INSIDE, { recursive: true })
    writeFileSync(join(INSIDE, `${name}.json`), JSON.stringify(folders.map(described)))
  },
})

/** Name, version, licence and its text. */
function described(folder) {
  const { name, version, license } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'))
  const file = readdirSync(folder).find((f) => /^(licen[cs]e|copying)/i.test(f))
  const text = file === undefined ? '' : readFileSync(join(folder, file), 'utf8').trim()
  return {
    name,
    version,
    license: typeof license === 'string' ? license : (license?.type ?? 'not stated'),
    text,
  }
}

/** What npm says of every package in the lock file. */
function bill() {
  const told = spawnSync('npm', ['sbom', '--sbom-format', 'cyclonedx', '--package-lock-only'], {
    cwd: top,
    // Building sets it to production, for which npm leaves out what is bundled.
    env: { ...process.env, NODE_ENV: '' },
    encoding: 'utf8',
    maxBuffer: 64 * 1024 * 1024,
  })
  if (told.status !== 0) throw new Error(`npm sbom: ${told.stderr}`)
  return JSON.parse(told.stdout)
}

const isDevelopment = (c) => (c.properties ?? []).some((p) => p.name === 'cdx:npm:package:development')
const withoutNote = (c) => ({
  ...c,
  scope: 'required',
  properties: (c.properties ?? []).filter((p) => p.name !== 'cdx:npm:package:development'),
})

/** Writes both files. */
export function writeWhatIsInside() {
  const lists = existsSync(INSIDE)
    ? readdirSync(INSIDE).map((f) => JSON.parse(readFileSync(join(INSIDE, f), 'utf8')))
    : []
  const bundled = new Map(lists.flat().map((p) => [`${p.name}@${p.version}`, p]))
  const all = bill()
  const components = all.components.filter((c) => bundled.has(`${c.name}@${c.version}`) || !isDevelopment(c))
  const refs = new Set([all.metadata.component['bom-ref'], ...components.map((c) => c['bom-ref'])])
  const dependencies = all.dependencies
    .filter((d) => refs.has(d.ref))
    .map((d) => ({ ...d, dependsOn: (d.dependsOn ?? []).filter((ref) => refs.has(ref)) }))
  all.metadata.component.name = 'resettle'
  writeFileSync(
    join(top, 'dist/sbom.json'),
    JSON.stringify({ ...all, components: components.map(withoutNote), dependencies }, null, 1),
  )
  const sorted = [...bundled.values()].sort((a, b) => a.name.localeCompare(b.name, 'en'))
  // Packages of one house share one text, word for word.
  const byWords = new Map()
  for (const p of sorted) {
    const words = `Licence: ${p.license}\n\n${p.text || 'No text of the licence comes with it.'}`
    byWords.set(words, [...(byWords.get(words) ?? []), `${p.name} ${p.version}`])
  }
  const parts = [...byWords].map(([words, names]) => `${names.join('\n')}\n${words}\n`)
  const head =
    'Resettle is under the MIT licence (LICENSE). In its built files is also the work of others, under these licences.\n'
  writeFileSync(join(top, 'dist/licences.txt'), [head, ...parts].join(`\n${'-'.repeat(80)}\n\n`))
}

if (process.argv[1] === fileURLToPath(import.meta.url)) writeWhatIsInside()
