/** Where pictures taken on the way go: to be looked at by a person. */
import { mkdirSync } from 'node:fs'
import { fileURLToPath } from 'node:url'

const FOLDER = fileURLToPath(new URL('../output/shots', import.meta.url))

/** The file for a picture of that name. */
export function shot(name: string): string {
  mkdirSync(FOLDER, { recursive: true })
  return `${FOLDER}/field-${name}.png`
}
