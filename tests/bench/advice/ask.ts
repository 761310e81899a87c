/** Two ways to ask the program what to do: the plan in this process, or one line to `resettle plan --lines -`. */
import { spawn } from 'node:child_process'
import { createInterface } from 'node:readline'
import type { Day } from '../../../src/days.ts'
import type { Entry } from '../../../src/journal/entry.ts'
import { historyOf } from '../../../src/journal/history.ts'
import { planOf } from '../../../src/decision/plan.ts'
import { type ProtocolOverrides, protocolWith } from '../../../src/recovery/protocol.ts'
import type { Costs } from './keeper.ts'

export interface Request {
  asOf: Day
  tag: string
  protocol: ProtocolOverrides
  supplies: { queensInHand: number; daysUntilQueens: number; eggFrames: number }
  costs: Costs
  entries: readonly Entry[]
}

/** What the loop reads of a plan: nothing that only this program could say. */
export interface Answer {
  advice: { action: string; why: string }
  checks: readonly { rule: string; status: string }[]
  readiness: { unmet: readonly { what: string }[] }
}

export interface Asker {
  ask(request: Request): Answer | Promise<Answer>
  close(): void
}

/** The plan as a function: fast. */
export function inProcess(): Asker {
  return {
    ask({ asOf, tag, protocol, entries, supplies, costs }) {
      const history = historyOf(tag, entries)
      if (history === null) throw new Error('a colony without an intake was asked about')
      return planOf(history, asOf, protocolWith(protocol), { supplies, costs })
    },
    close() {},
  }
}

/** The plan as any other program gets it: a line out, a line back, in order. */
export function throughLines(): Asker {
  const child = spawn(
    process.execPath,
    [new URL('../../../src/bin.mjs', import.meta.url).pathname, 'plan', '--lines', '-'],
    {
      stdio: ['pipe', 'pipe', 'inherit'],
    },
  )
  const waiting: { resolve: (answer: Answer) => void; reject: (error: Error) => void }[] = []
  createInterface({ input: child.stdout }).on('line', (line) => {
    const next = waiting.shift()
    const answer = JSON.parse(line) as Answer | { problems: unknown }
    if ('problems' in answer) next?.reject(new Error(`plan --lines refuses a request: ${line}`))
    else next?.resolve(answer)
  })
  child.on('exit', (code) => {
    for (const { reject } of waiting.splice(0)) reject(new Error(`plan --lines ended with exit ${code}`))
  })
  return {
    ask: (request) =>
      new Promise((resolve, reject) => {
        waiting.push({ resolve, reject })
        child.stdin.write(`${JSON.stringify(request)}\n`)
      }),
    close: () => child.stdin.end(),
  }
}
