/** The browser of the journeys: a phone and a laptop, each page watched for what must not happen on any page. */
import { type Browser, type BrowserContext, type BrowserServer, chromium, type Page } from 'playwright-core'
import { ensureChromium, thisMachine } from './chromium.ts'
import { sessionAt } from './signed-in.ts'

export interface Device {
  name: 'phone' | 'laptop'
  viewport: { width: number; height: number }
  touch: boolean
}

export const PHONE: Device = { name: 'phone', viewport: { width: 390, height: 844 }, touch: true }
export const LAPTOP: Device = { name: 'laptop', viewport: { width: 1280, height: 800 }, touch: false }
export const DEVICES = [PHONE, LAPTOP]

const ARGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
]

/**
 * The browser of this run, or one of its own. `keepsPages`: the page one came from is kept whole, as people's browsers do; Playwright switches
 * that off, because a page that comes back so is not loaded again.
 */
export function launch(options: { keepsPages?: boolean } = {}): Promise<Browser> {
  const shared = process.env.BROWSER_AT
  if (shared !== undefined && !options.keepsPages) return chromium.connect(shared)
  return chromium.launch({
    ...HOW(options.keepsPages),
    ...(options.keepsPages ? { ignoreDefaultArgs: ['--disable-back-forward-cache'] } : {}),
  })
}

const HOW = (whole = false) => ({ executablePath: ensureChromium(thisMachine(), whole), args: ARGS })

/** One browser for all journeys of a run; each opens contexts of its own in it. */
export const serveBrowser = (): Promise<BrowserServer> => chromium.launchServer(HOW())

/** A page and what was noticed on it: failed scripts, answers of 500, requests to anywhere but the yard. */
export interface Watched {
  page: Page
  context: BrowserContext
  device: Device
  noticed: string[]
}

/** Opens a page of the yard at `url` on that device, signed in unless as a stranger. Page errors, server errors and foreign requests are noticed. */
export async function watchedPage(
  browser: Browser,
  url: string,
  device: Device,
  options: { scripts?: boolean; dark?: boolean; stranger?: boolean; worker?: boolean } = {},
): Promise<Watched> {
  const context = await browser.newContext({
    baseURL: url,
    viewport: device.viewport,
    hasTouch: device.touch,
    isMobile: device.touch,
    deviceScaleFactor: device.touch ? 2 : 1,
    javaScriptEnabled: options.scripts ?? true,
    // Most journeys are about the server's pages; what the worker does between has journeys of its own.
    serviceWorkers: options.worker ? 'allow' : 'block',
    colorScheme: options.dark ? 'dark' : 'light',
  })
  const session = options.stranger ? undefined : sessionAt(url)
  if (session !== undefined)
    await context.addCookies([{ name: 'resettle', value: session, url, httpOnly: true, sameSite: 'Lax' }])
  const page = await context.newPage()
  // Long enough for a busy machine; it ends before the time of the test does, and so says which page it was.
  page.setDefaultTimeout(120_000)
  const noticed: string[] = []
  page.on('pageerror', (error) => noticed.push(`script error: ${error.message}`))
  page.on('console', (message) => {
    // What failed to load is told below, with its address.
    if (message.type() === 'error' && !message.text().startsWith('Failed to load resource'))
      noticed.push(`console: ${message.text()}`)
  })
  page.on('response', (response) => {
    // A page may say that a form was refused or a colony is unknown; nothing a page is made of may be missing.
    const worst = response.request().isNavigationRequest() ? 500 : 400
    if (response.status() >= worst) noticed.push(`${response.status()} ${response.url()}`)
  })
  page.on('request', (request) => {
    if (![url, 'data:', `blob:${url}`].some((own) => request.url().startsWith(own)))
      noticed.push(`foreign request: ${request.url()}`)
  })
  return { page, context, device, noticed }
}
