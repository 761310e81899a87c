/**
 * The table of entry kinds in src/journal/README.md, printed from their schema. Run it after a change:
 * npx tsx tests/house/entry-table.ts
 */
import { z } from 'zod'
import { KIND_SCHEMAS } from '../../src/journal/index.ts'
import { writeInto, writtenIn } from './between.ts'

const FILE = 'src/journal/README.md'

/** The parts of JSON Schema that the journal's schema comes to. */
interface Shape {
  type?: string
  enum?: readonly unknown[]
  properties?: Record<string, Shape>
  required?: readonly string[]
  items?: Shape
  minimum?: number
  maximum?: number
}

/** What every entry carries, said once above the table; `replaces` is said of the withdrawal, which needs it. */
const EVERY = new Set(['id', 'colony', 'kind', 'on', 'at', 'by'])

/** One row a kind, in the order of the schema, padded as the formatter has it. A starred field must be there. */
export function entryTable(): string {
  const rows = [['kind', 'fields'], ...KIND_SCHEMAS.map(rowOf)]
  const widths = [0, 1].map((column) => Math.max(...rows.map((row) => row[column]?.length ?? 0)))
  const line = (cells: readonly string[], fill = ' '): string =>
    `| ${cells.map((cell, i) => cell.padEnd(widths[i] ?? 0, fill)).join(' | ')} |`
  const [heading = '', ...kinds] = rows.map((row) => line(row))
  return [heading, line(['', ''], '-'), ...kinds].join('\n')
}

function rowOf(option: (typeof KIND_SCHEMAS)[number]): string[] {
  const shape = z.toJSONSchema(option, { unrepresentable: 'any' }) as Shape
  return [`\`${option.shape.kind.def.values[0]}\``, fieldsOf(shape)]
}

function fieldsOf({ properties = {}, required = [] }: Shape): string {
  const shown = Object.entries(properties).filter(
    ([name]) => !EVERY.has(name) && (name !== 'replaces' || required.includes(name)),
  )
  return shown
    .map(([name, shape]) => `${name}${required.includes(name) ? '*' : ''}${valuesOf(shape)}`)
    .join(', ')
}

/** What may stand in a field, where its name does not say it. */
function valuesOf(shape: Shape): string {
  if (shape.properties !== undefined) return ` {${fieldsOf(shape)}}`
  if (shape.type === 'array') return `${valuesOf(shape.items ?? {})} [list]`
  if (shape.enum !== undefined) return `: ${shape.enum.join(' / ')}`
  if (shape.type === 'boolean') return ': true / false'
  if (shape.minimum !== undefined && shape.maximum !== undefined)
    return ` (${shape.minimum} to ${shape.maximum})`
  return ''
}

/** The table as it stands there. */
export const writtenTable = (): string => writtenIn(FILE, 'entry-kinds')

if (process.argv[1] === import.meta.filename) writeInto(FILE, 'entry-kinds', entryTable())
