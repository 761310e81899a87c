/** Which version this is: package.json lies two folders above, in a checkout and in the package alike. */
import { readFileSync } from 'node:fs'

export const version = (): string => {
  const text = readFileSync(new URL('../../package.json', import.meta.url), 'utf8')
  return (JSON.parse(text) as { version: string }).version
}
