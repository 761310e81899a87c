/** Where the yard's data lies: the folder RESETTLE_DATA names, else ./data. */
import { mkdirSync } from 'node:fs'
import { join, resolve } from 'node:path'

export const dataFolder = (env: NodeJS.ProcessEnv = process.env): string =>
  resolve(env.RESETTLE_DATA || 'data')

/** The database file in it. With `make`, the folder is made first, for its owner's eyes only. */
export function dataFile(options: { make?: boolean; env?: NodeJS.ProcessEnv } = {}): string {
  const folder = dataFolder(options.env)
  if (options.make) mkdirSync(folder, { recursive: true, mode: 0o700 })
  return join(folder, 'resettle.db')
}
