/**
 * The looks of pages, kept as long studies are (proven.ts): what a browser makes of a page follows from what it is sent. So the page is
 * fetched first, by that person and in that language, and where exactly this was sent to the same checks before, what was found then is
 * taken and no page is opened. In the long run, and by `npm run prove`, every page is opened; the latter keeps what was found.
 *
 * What it rests on: address, status, headers that bear on it, body (ids by order of appearance), every style, script and picture it links,
 * and what these name in turn; the journey's file and what reads pages; packages; Chromium's version. Not the fonts of the machine.
 * Never kept: a page with a fault, or on which something was noticed; one whose scripts fetch others; one that names the yard's own
 * address, which is another each time.
 */
import { createHash } from 'node:crypto'
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Page, Request } from 'playwright-core'
import { afterAll } from 'vitest'
import type { Watched } from './browser.ts'
import { LONG } from './long.ts'
import { PROVE, restsOn } from './proven.ts'

const KEPT = join(import.meta.dirname, '../proven')
const READERS = ['page-checks.ts', 'browser.ts', 'thumb.ts'].map((file) => join(import.meta.dirname, file))
const SENT_ALONG = ['content-type', 'content-encoding', 'content-security-policy']
const LINKED = /<(?:link|script|img)\b[^>]*?\s(?:src|href)="(\/[^"]*)"/g
/** Answers a phone without signal; with one, as here, a page is what the server sends. It holds the whole program, and changes daily. */
const WORKER = '/service-worker.js'
/** Files that a script or a style names: './words-B8.js', url(/icon.svg). */
const NAMED = /["'`(](\.{0,2}\/[\w./-]+\.(?:css|js|svg|png|jpg|woff2))["'`)]/g
const ID = /[\da-f]{8}(?:-[\da-f]{4}){3}-[\da-f]{12}/g

function hashOf(parts: readonly (string | Buffer)[]): string {
  const hash = createHash('sha256')
  for (const part of parts) hash.update(part).update('\0')
  return hash.digest('hex').slice(0, 16)
}

/** Ids are others each time: they are told by the order in which they appear. */
function withoutIds(text: string): string {
  const ids = [...new Set(text.match(ID))]
  return text.replaceAll(ID, (id) => `id-${ids.indexOf(id)}`)
}

type Files = (page: Page, body: string, origin: string) => Promise<string[]>

/** Every file that a page links, and that these name: where it is, and a hash of what it says. Each is fetched once. */
function filesOnce(): Files {
  const known = new Map<string, { line: string; names: string[] }>()
  const fetched = async (page: Page, url: string): Promise<{ line: string; names: string[] }> => {
    const answer = await page.request.get(url)
    const bytes = await answer.body()
    const names = /\.(?:js|css)$/.test(url) ? [...bytes.toString('latin1').matchAll(NAMED)] : []
    return {
      line: `${new URL(url).pathname} ${answer.status()} ${hashOf([bytes])}`,
      names: names.filter(([, to]) => to !== WORKER).map(([, to = '']) => new URL(to, url).href),
    }
  }
  return async (page, body, origin) => {
    const links = [...body.matchAll(LINKED)].map(([, to = '']) => to.replaceAll('&amp;', '&'))
    // What is named is added while it is gone through.
    const urls = new Set(links.map((to) => new URL(to, origin).href))
    const lines: string[] = []
    for (const url of urls) {
      const file = known.get(url) ?? (await fetched(page, url))
      known.set(url, file)
      lines.push(file.line)
      for (const name of file.names) urls.add(name)
    }
    return lines
  }
}

/** What was found of a page, by the hash of what it rests on, and which page that was. */
export type Lines = Map<string, { found: unknown; of: string }>

/** One line a page, ordered by its address, so that what two branches found merges. */
const written = (lines: Lines): string =>
  [...lines]
    .map(([hash, { found, of }]) => `${[of, hash, JSON.stringify(found)].join('\t')}\n`)
    .sort()
    .join('')

function linesOf(file: string): Lines {
  const lines = existsSync(file) ? readFileSync(file, 'utf8').trim().split('\n') : []
  const parts = lines.map((line) => line.split('\t'))
  return new Map(parts.map(([of = '', hash = '', found = '']) => [hash, { found: JSON.parse(found), of }]))
}

export interface Looks {
  /**
   * What is found of the page at `path` by who is signed in there: what is kept, or what opening it finds, which must be JSON.
   * @param look how it is shown and what is looked for, as far as what is sent does not tell
   * @returns a list is one of faults: kept only when it is empty
   */
  found: <T>(
    by: Pick<Watched, 'page' | 'noticed'>,
    path: string,
    look: string,
    open: () => Promise<T>,
  ) => Promise<T>
  /** How many pages were asked for, and which of them were opened. */
  asked: () => number
  opened: readonly string[]
}

/**
 * Looks at pages and takes what is kept of them.
 * @param kept what was found before
 * @param keep where to put what is found now
 * @param code the file of the checks
 */
export function looksWith(kept: Lines, keep: Lines, code: string): Looks {
  const readers = new Set([code, import.meta.filename, ...READERS.flatMap(restsOn)])
  const checks = hashOf([...readers].map((file) => readFileSync(file)))
  const files = filesOnce()
  const opened: string[] = []
  let asked = 0

  /** The hash of all that the page rests on, or null where it would be another one each time. */
  const hash = async (page: Page, path: string, look: string): Promise<string | null> => {
    const answer = await page.request.get(path, { headers: { accept: 'text/html' } })
    const { origin, host, pathname, search } = new URL(answer.url())
    const body = await answer.text()
    if (body.includes(host)) return null
    const headers = SENT_ALONG.map((header) => answer.headers()[header] ?? '')
    const sent = withoutIds([path, pathname, search, answer.status(), ...headers, body].join('\n'))
    const chromium = page.context().browser()?.version().split('.')[0] ?? ''
    return hashOf([checks, chromium, look, sent, ...(await files(page, body, origin))])
  }

  const found: Looks['found'] = async ({ page, noticed }, path, look, open) => {
    asked++
    const at = await hash(page, path, look)
    const was = at === null ? undefined : kept.get(at)
    if (was !== undefined) return was.found as Awaited<ReturnType<typeof open>>
    const of = `${path.replaceAll(ID, '*')} (${look})`
    opened.push(of)
    let keeps = at !== null
    const notice = (request: Request): void => {
      if (['fetch', 'xhr'].includes(request.resourceType())) keeps = false
    }
    const before = noticed.length
    page.on('request', notice)
    const result = await open()
    page.off('request', notice)
    if (noticed.length > before || (Array.isArray(result) && result.length > 0)) keeps = false
    if (at !== null && keeps) keep.set(at, { found: result, of })
    return result
  }
  return { found, asked: () => asked, opened }
}

/**
 * The looks of the pages of one journey, kept in tests/proven/.
 * @param name of the file there
 * @param code the journey's file (`import.meta.filename`)
 */
export function looksOf(name: string, code: string): Looks {
  const file = join(KEPT, `pages-${name}.txt`)
  const now: Lines = new Map()
  const looks = looksWith(LONG || PROVE ? new Map() : linesOf(file), now, code)
  afterAll(() => {
    const { opened } = looks
    if (PROVE) writeFileSync(file, written(now))
    else if (opened.length > 0 && !LONG)
      console.log(
        `${name}: ${opened.length} of ${looks.asked()} pages are not kept as they are now, and were opened: ${opened.join(', ')}`,
      )
  })
  return looks
}
