/** `resettle plan --as-of DAY FILE|-`: one colony's plan from its entries. Input and output are public formats (README). */

import { readFileSync } from 'node:fs'
import { parseArgs } from 'node:util'
import { isDay } from '../../days.ts'
import { planOf } from '../../decision/index.ts'
import { problemLine } from '../../journal/index.ts'
import { readPlanInput } from './plan-input.ts'
import { planLines } from './plan-lines.ts'

const USAGE = 'usage: resettle plan --as-of YYYY-MM-DD FILE|-, or resettle plan --lines -'

function complain(...lines: string[]): number {
  process.stderr.write(`${lines.join('\n')}\n`)
  return 2
}

export async function run(args: string[]): Promise<number> {
  let asOf: string | undefined
  let lines: string | undefined
  let files: string[]
  try {
    const parsed = parseArgs({
      args,
      options: { 'as-of': { type: 'string' }, lines: { type: 'string' } },
      allowPositionals: true,
    })
    asOf = parsed.values['as-of']
    lines = parsed.values.lines
    files = parsed.positionals
  } catch (error) {
    return complain(`plan: ${(error as Error).message}`, USAGE)
  }
  if (lines !== undefined) {
    if (lines !== '-' || asOf !== undefined || files.length > 0)
      return complain('plan: --lines reads standard input, and the day stands in each line', USAGE)
    await planLines(process.stdin, process.stdout)
    return 0
  }
  const [file, ...more] = files
  if (asOf === undefined) return complain('plan: --as-of is missing', USAGE)
  if (!isDay(asOf)) return complain(`plan: --as-of: must be a real date written YYYY-MM-DD, not "${asOf}"`)
  if (file === undefined || more.length > 0)
    return complain('plan: name one file, or - for standard input', USAGE)
  let text: string
  try {
    text = readFileSync(file === '-' ? 0 : file, 'utf8')
  } catch (error) {
    return complain(`plan: cannot read ${file}: ${(error as NodeJS.ErrnoException).code ?? 'unknown error'}`)
  }
  const input = readPlanInput(text, asOf)
  if (!input.ok) return complain(...input.problems.map(problemLine))
  process.stdout.write(
    `${JSON.stringify(planOf(input.history, asOf, input.protocol, { supplies: input.supplies, costs: input.costs }), null, 2)}\n`,
  )
  return 0
}
