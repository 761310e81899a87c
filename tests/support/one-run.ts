/** Before all tests: a folder that the workers of this run share (vitest globalSetup). */
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

export function setup(): () => void {
  const folder = mkdtempSync(join(tmpdir(), 'resettle-run-'))
  process.env.FILLED_AT = folder
  return () => rmSync(folder, { recursive: true, force: true })
}
