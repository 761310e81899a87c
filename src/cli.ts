#!/usr/bin/env -S npx tsx
/** The command line: `resettle NAME …`. Each command is a file in src/commands, loaded only when asked for. */

const COMMANDS: Record<
  string,
  { summary: string; load: () => Promise<{ run(args: string[]): Promise<number> }> }
> = {
  serve: {
    summary: 'the yard’s book, for browsers on this machine',
    load: () => import('./commands/serve.ts'),
  },
  demo: {
    summary: 'serves an invented yard, thrown away when stopped',
    load: () => import('./commands/demo.ts'),
  },
  plan: {
    summary: 'the plan of one colony, from its entries as JSON',
    load: () => import('./commands/plan.ts'),
  },
  review: {
    summary: 'which removals survive, from the yard or a CSV file',
    load: () => import('./commands/review.ts'),
  },
  verify: {
    summary: 'proves the database whole, changing nothing',
    load: () => import('./commands/verify.ts'),
  },
  rebuild: {
    summary: 'makes every plan and list again from the journal',
    load: () => import('./commands/rebuild.ts'),
  },
}

function usage(): string {
  const rows = Object.entries(COMMANDS).map(([name, c]) => `  ${name.padEnd(10)} ${c.summary}`)
  return ['usage: resettle COMMAND …', '', ...rows, ''].join('\n')
}

async function main([name, ...args]: string[]): Promise<number> {
  if (name === undefined || name === '--help' || name === 'help') {
    process.stdout.write(usage())
    return name === undefined ? 2 : 0
  }
  const command = Object.hasOwn(COMMANDS, name) ? COMMANDS[name] : undefined
  if (command === undefined) {
    process.stderr.write(`resettle: no command "${name}"\n${usage()}`)
    return 2
  }
  return (await command.load()).run(args)
}

process.exitCode = await main(process.argv.slice(2))
