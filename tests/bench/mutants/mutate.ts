/** Small faults put into a program, one at a time: each place of its text where one could slip in, and the text with it. */
import { parseAst } from 'vite'

export interface Mutant {
  /** From 1. */
  line: number
  was: string
  becomes: string
  /** The whole file with the fault in it. */
  text: string
}

const OTHER: Record<string, string> = {
  '&&': '||',
  '||': '&&',
  '<': '<=',
  '<=': '<',
  '>': '>=',
  '>=': '>',
  '===': '!==',
  '!==': '===',
  '-': '+',
  '*': '/',
}

/** What is looked at of a node of the parsed program (ESTree). */
interface Node {
  type: string
  start: number
  end: number
  operator?: string
  left?: Node
  right?: Node
  argument?: Node
  test?: Node | null
  value?: unknown
}

const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && 'type' in value

/** Every mutant of a file: and/or, limits, equal/unequal, signs, numbers, true/false, conditions turned round. */
export function mutantsOf(text: string, lang: 'ts' | 'tsx' = 'ts'): Mutant[] {
  const found: Mutant[] = []
  const swap = (from: number, to: number, becomes: string): void => {
    const line = text.slice(0, from).split('\n').length
    found.push({
      line,
      was: text.slice(from, to),
      becomes,
      text: text.slice(0, from) + becomes + text.slice(to),
    })
  }
  const visit = (node: Node): void => {
    // Types are no program.
    if (
      node.type.startsWith('TS') &&
      !/^TS(AsExpression|SatisfiesExpression|NonNullExpression)$/.test(node.type)
    )
      return
    mutate(node)
    for (const [key, child] of Object.entries(node))
      if (key !== 'typeAnnotation')
        for (const c of Array.isArray(child) ? child : [child]) if (isNode(c)) visit(c)
  }
  const mutate = (node: Node): void => {
    const { type, operator, left, right, argument, test, start, end } = node
    const other = OTHER[operator ?? '']
    if (/^(Binary|Logical)Expression$/.test(type) && other !== undefined && left && right) {
      const at = text.indexOf(operator ?? '', left.end)
      if (at < right.start) swap(at, at + (operator ?? '').length, other)
    }
    if (type === 'UnaryExpression' && /^[-!]$/.test(operator ?? '') && argument)
      swap(start, end, text.slice(argument.start, argument.end))
    if (type === 'Literal' && typeof node.value === 'number')
      swap(start, end, `(${text.slice(start, end)} + 1)`)
    if (type === 'Literal' && typeof node.value === 'boolean') swap(start, end, String(!node.value))
    if (/^(IfStatement|ConditionalExpression)$/.test(type) && test)
      swap(test.start, test.end, `!(${text.slice(test.start, test.end)})`)
  }
  visit(parseAst(text, { lang }) as unknown as Node)
  return found
}
