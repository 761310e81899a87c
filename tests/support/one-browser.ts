/** Before the journeys: one Chromium that all of them share (vitest globalSetup). */
import { serveBrowser } from './browser.ts'

export async function setup(): Promise<() => Promise<void>> {
  const server = await serveBrowser()
  process.env.BROWSER_AT = server.wsEndpoint()
  return () => server.close()
}
