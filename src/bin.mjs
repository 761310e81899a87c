#!/usr/bin/env node
// The `resettle` command: runs the one built file. In a checkout that is built first, where need be; never in a package.
import { existsSync } from 'node:fs'

// What goes wrong names the line in the sources, not in the built file. Said before that file is loaded, or it does not hold.
process.setSourceMapsEnabled(true)

if (existsSync(new URL('cli.ts', import.meta.url))) {
  const { build } = await import('./build.mjs')
  const served = ['serve', 'demo'].includes(process.argv[2])
  await build(served ? ['server', 'web'] : ['server'])
}
await import('../dist/server/resettle.js')
