#!/usr/bin/env node
// The `resettle` command: lets Node read TypeScript (tsx), then hands over to the command line.
import { fileURLToPath } from 'node:url'
import { register } from 'tsx/esm/api'

// The project's own settings, from whichever folder the command is called: pages need its JSX.
register({ tsconfig: fileURLToPath(new URL('../tsconfig.json', import.meta.url)) })
await import('./cli.ts')
