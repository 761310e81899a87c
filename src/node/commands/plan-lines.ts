/**
 * `resettle plan --lines -`: one request a line in, one answer a line out, in order, flushed at once. For programs that ask
 * often. A bad line is answered with its problems and ends nothing; the end of input does.
 */

import { once } from 'node:events'
import { createInterface } from 'node:readline'
import type { Readable, Writable } from 'node:stream'
import { planOf } from '../../decision/index.ts'
import { readPlanRequest } from './plan-input.ts'

/** The answer to one line, without its line break. Never throws: what our own fault is, is answered too. */
export function answerLine(line: string): string {
  try {
    const request = readPlanRequest(line)
    if (!request.ok) return JSON.stringify({ problems: request.problems })
    const { history, protocol, supplies, costs } = request.input
    return JSON.stringify(planOf(history, request.asOf, protocol, { supplies, costs }))
  } catch (error) {
    return JSON.stringify({
      problems: [{ field: '', message: `no plan came of it: ${(error as Error).message}` }],
    })
  }
}

/** Answers every line of `input` on `output`; an empty line, but for the last, is a bad line like others. */
export async function planLines(input: Readable, output: Writable): Promise<void> {
  for await (const line of createInterface({ input, crlfDelay: Number.POSITIVE_INFINITY }))
    if (!output.write(`${answerLine(line)}\n`)) await once(output, 'drain')
}
