/** `npm run quick`: types, and the fast tests that import what changed since the last commit. */
import { spawnSync } from 'node:child_process'
import { fileURLToPath } from 'node:url'

const top = fileURLToPath(new URL('..', import.meta.url))
const ran = (command: string, ...args: string[]): number =>
  spawnSync('npx', ['--no-install', command, ...args], { cwd: top, stdio: 'inherit' }).status ?? 1

const types = ran('tsc', '--incremental', '--tsBuildInfoFile', 'node_modules/.cache/types.json')
const fast = ['--project', 'quiet', '--exclude', '**/*.http.test.*']
const tests = ran(
  'vitest',
  'run',
  '--config',
  'tests/vitest.config.ts',
  '--changed',
  '--passWithNoTests',
  ...fast,
)
process.exitCode = types + tests === 0 ? 0 : 1
