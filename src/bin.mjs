#!/usr/bin/env node
// The installed `resettle` command: lets Node read TypeScript (tsx), then hands over to the command line.
import { register } from 'tsx/esm/api'

register()
await import('./cli.ts')
