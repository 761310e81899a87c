/** The command line: `resettle NAME …`. Each command is a file in src/node/commands. */
import { isMainThread } from 'node:worker_threads'
import { sparing } from './node/memory.ts'

const COMMANDS: Record<
  string,
  { summary: string; load: () => Promise<{ run(args: string[]): Promise<number> }> }
> = {
  serve: {
    summary: 'the yard’s book, for browsers on this machine',
    load: () => import('./node/commands/serve.ts'),
  },
  demo: {
    summary: 'serves an invented yard, thrown away when stopped',
    load: () => import('./node/commands/demo.ts'),
  },
  plan: {
    summary: 'the plan of one colony, from its entries as JSON',
    load: () => import('./node/commands/plan.ts'),
  },
  review: {
    summary: 'which removals survive, from the yard or a CSV file',
    load: () => import('./node/commands/review.ts'),
  },
  person: {
    summary: 'accounts from the terminal: list, add, invite, passphrase, …',
    load: () => import('./node/commands/person.ts'),
  },
  backup: {
    summary: 'a proven copy of the database, now',
    load: () => import('./node/commands/backup.ts'),
  },
  restore: {
    summary: 'goes back to a backup, keeping what was there',
    load: () => import('./node/commands/restore.ts'),
  },
  export: {
    summary: 'the whole yard as .jsonl, or its colonies as .csv',
    load: () => import('./node/commands/export.ts'),
  },
  import: {
    summary: 'a whole yard from .jsonl, or colonies from .csv',
    load: () => import('./node/commands/import.ts'),
  },
  verify: {
    summary: 'proves the database whole, changing nothing',
    load: () => import('./node/commands/verify.ts'),
  },
  doctor: {
    summary: 'is all in order around it: disk, clock, backups, address',
    load: () => import('./node/commands/doctor.ts'),
  },
  systemd: {
    summary: 'a unit that keeps the server running, to print',
    load: () => import('./node/commands/systemd.ts'),
  },
  rebuild: {
    summary: 'makes every plan and list again from the journal',
    load: () => import('./node/commands/rebuild.ts'),
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

if (isMainThread) {
  // Whatever is written holds names and addresses: it is for its owner's eyes only.
  process.umask(0o077)
  // Before a command is loaded: room that was taken once is not given back.
  sparing(process.env)
  process.exitCode = await main(process.argv.slice(2))
} else {
  // The thread that makes long pages (src/node/reader) runs this same file.
  await import('./node/reader/thread.ts')
}
