/** Two ways to ask the program what to do: the plan in this process, or one line to `resettle plan --lines -`. */
import { spawn } from 'node:child_process'
import { createInterface } from 'node:readline'
import type { Day } from '../../../src/days.ts'
import { planOf } from '../../../src/decision/plan.ts'
import type { Entry } from '../../../src/journal/entry.ts'
import { historyOf } from '../../../src/journal/history.ts'
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

/** `resettle plan --lines -`, as arguments of node. */
const PLAN_LINES = [new URL('../../../src/bin.mjs', import.meta.url).pathname, 'plan', '--lines', '-']

/** The plan as any other program gets it: a line out, a line back, in order. A refusal, and an early end, throw where they were asked. */
export function throughLines(program: readonly string[] = PLAN_LINES): Asker {
  const child = spawn(process.execPath, program, { stdio: ['pipe', 'pipe', 'inherit'] })
  const waiting: { resolve: (answer: Answer) => void; reject: (error: Error) => void }[] = []
  let ended: Error | null = null
  createInterface({ input: child.stdout }).on('line', (line) => {
    const next = waiting.shift()
    const answer = JSON.parse(line) as Answer | { problems: unknown }
    if ('problems' in answer) next?.reject(new Error(`plan --lines refuses a request: ${line}`))
    else next?.resolve(answer)
  })
  // Writing to a program that has ended: its end is told below.
  child.stdin.on('error', () => {})
  child.on('close', (code) => {
    ended = new Error(`plan --lines ended with exit ${code}`)
    for (const { reject } of waiting.splice(0)) reject(ended)
  })
  return {
    ask: (request) =>
      new Promise((resolve, reject) => {
        if (ended !== null) return reject(ended)
        waiting.push({ resolve, reject })
        child.stdin.write(`${JSON.stringify(request)}\n`)
      }),
    close: () => child.stdin.end(),
  }
}
