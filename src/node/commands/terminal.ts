/** What commands share: words on stderr, exit codes, asking for a passphrase. */
import { createInterface } from 'node:readline'
import { Writable } from 'node:stream'

/** Problems, one line each, on stderr. Gives the exit code 2. */
export function complain(...lines: string[]): number {
  process.stderr.write(`${lines.join('\n')}\n`)
  return 2
}

/** Runs a command; what goes wrong is said in one line, with the command's name. */
export async function saying(name: string, work: () => Promise<number> | number): Promise<number> {
  try {
    return await work()
  } catch (error) {
    if (!(error instanceof Error)) throw error
    return complain(`resettle ${name}: ${error.message}`)
  }
}

/** One line from the terminal, not shown while it is typed; or the first line of what is piped in. */
export function secretLine(prompt: string): Promise<string> {
  const tty = process.stdin.isTTY === true
  const mute = new Writable({ write: (_chunk, _encoding, done) => done() })
  if (tty) process.stderr.write(prompt)
  const lines = createInterface({ input: process.stdin, output: mute, terminal: tty })
  return new Promise((resolve) => {
    lines.once('line', (line) => {
      resolve(line)
      lines.close()
      if (tty) process.stderr.write('\n')
    })
    lines.once('close', () => resolve(''))
  })
}
