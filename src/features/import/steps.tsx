/** The steps of taking in a spreadsheet: from what was posted to the next page, or to the book. */

import { v7, validate } from 'uuid'
import { type AppContext, type Deps, page, viewerOf } from '../../app/index.ts'
import { inSlices } from '../../app/node.ts'
import type { AppendContext, Repository } from '../../store/index.ts'
import { ownTypes } from '../entries/index.ts'
import { columnProblems, isAnswered, needsNoWords, questionsOf } from './ask.ts'
import { ColumnsPage } from './columns-page.tsx'
import { type Converted, type ConvertedRow, converting, headingOf } from './convert.ts'
import type { LineProblem } from './csv-table.ts'
import { type Fields, fieldsOf, saidIn } from './form.ts'
import type { StepProps } from './kept.tsx'
import { isOwnFormat, type Mapping, mappingOf, type Said, type Usual } from './mapping.ts'
import { PreviewPage } from './preview-page.tsx'
import { rehearsing, type Signing, takingIn } from './take-in.ts'
import { WordsPage } from './words-page.tsx'

/** Everything a step goes by. */
interface Sheet {
  text: string
  source: string
  importId: string
  said: Said
  usual: Usual
  mapping: Mapping
}

type Answer = Response | Promise<Response>

/** `go` says where to; anything else leads to the columns. */
export function step(c: AppContext, deps: Deps, go: string, fields: Fields): Answer {
  const sheet = sheetIn(c, deps, go, fields)
  switch (go) {
    case 'read':
      return isOwnFormat(sheet.mapping.sheet) && needsNoWords(sheet.mapping)
        ? preview(c, deps, sheet)
        : columns(c, sheet)
    case 'words':
      return afterColumns(c, deps, sheet)
    case 'preview':
      return columnProblems(sheet.mapping).length > 0 ? columns(c, sheet, true) : afterWords(c, deps, sheet)
    case 'take-all':
    case 'take-good':
      return taken(c, deps, sheet, go === 'take-good')
    default:
      return columns(c, sheet)
  }
}

function sheetIn(c: AppContext, deps: Deps, go: string, fields: Fields): Sheet {
  const text = fields.get('text') ?? ''
  const all = saidIn(fields)
  // Read anew, columns stand elsewhere: what was said of them no longer holds.
  const said = go === 'reread' ? { ...all, targets: undefined, meanings: undefined } : all
  const usual = usualIn(c, deps)
  const asked = fields.get('importId') ?? ''
  return {
    text,
    source: fields.get('source') ?? 'a pasted table',
    importId: validate(asked) ? asked : v7(),
    said,
    usual,
    mapping: mappingOf(text, said, usual),
  }
}

function usualIn(c: AppContext, { store, people }: Deps): Usual {
  const { frame } = c.var
  return {
    yard: lastYard(store) ?? 'Yard',
    ownTypes: ownTypes(store),
    yards: store.yards().map((y) => y.yard),
    people: people.accounts.list().map((a) => a.name),
    heat: frame.units.temperature,
    today: frame.today,
  }
}

/** The yard used last. */
function lastYard(store: Repository): string | undefined {
  const last = store.changes({ limit: 100 }).find((r) => r.entry.kind === 'intake')?.entry
  return last?.kind === 'intake' ? last.yard : store.yards()[0]?.yard
}

/** A preview is for one taking-in: every one gets an id of its own, so that a page sent twice writes once. */
const propsOf = (c: AppContext, s: Sheet, importId?: string): StepProps => ({
  frame: c.var.frame,
  source: s.source,
  kept: [
    ['text', s.text],
    ['source', s.source],
    ...(importId === undefined ? [] : [['importId', importId] as [string, string]]),
    ...fieldsOf(s.mapping, s.said),
  ],
})

function columns(c: AppContext, s: Sheet, refused = false): Answer {
  const problems = refused ? columnProblems(s.mapping) : []
  return page(
    c,
    <ColumnsPage {...propsOf(c, s)} mapping={s.mapping} problems={problems} />,
    problems.length > 0 ? 422 : 200,
  )
}

function afterColumns(c: AppContext, deps: Deps, s: Sheet): Answer {
  if (columnProblems(s.mapping).length > 0) return columns(c, s, true)
  const asked = questionsOf(s.mapping)
  const nothing = needsNoWords(s.mapping) && !asked.yard
  return nothing ? preview(c, deps, s) : words(c, deps, s)
}

function words(c: AppContext, deps: Deps, s: Sheet, problems: string[] = []): Answer {
  return page(
    c,
    <WordsPage
      {...propsOf(c, s)}
      mapping={s.mapping}
      asked={questionsOf(s.mapping)}
      ownTypes={s.usual.ownTypes}
      yards={deps.store.yards().map((y) => y.yard)}
      problems={problems}
    />,
    problems.length > 0 ? 422 : 200,
  )
}

function afterWords(c: AppContext, deps: Deps, s: Sheet): Answer {
  if (isAnswered(s.mapping)) return preview(c, deps, s)
  const asked = questionsOf(s.mapping)
  const { order, heat, removalType } = s.mapping
  return words(c, deps, s, [
    ...(asked.order && order === null ? ['Say which comes first in the dates, the day or the month.'] : []),
    ...(asked.heat && heat === null ? ['Say whether temperatures are in °F or °C.'] : []),
    ...(asked.removalType && removalType === '' ? ['Say where these colonies were removed from.'] : []),
  ])
}

interface Tried {
  good: ConvertedRow[]
  problems: LineProblem[]
  retagged: Converted['retagged']
  twoWays: Converted['twoWays']
}

/** Converts and rehearses. */
async function tried(c: AppContext, deps: Deps, s: Sheet, importId: string): Promise<Tried> {
  const made = await inSlices(converting(s.mapping, s.usual.today))
  const signing = signingOf(c, s, importId)
  const { good, problems } = await inSlices(
    rehearsing(deps.store.imports, made.rows, signing, contextOf(c, deps)),
  )
  const told = problems.map((p) => ({ ...p, field: headingOf(p.field, s.mapping) }))
  const kept = new Set(good.map((r) => r.line))
  return {
    good: made.rows.filter((r) => kept.has(r.line)),
    problems: [...made.problems, ...told].sort((a, b) => a.line - b.line),
    retagged: made.retagged.filter((r) => kept.has(r.line)),
    twoWays: made.twoWays.filter((r) => kept.has(r.line)),
  }
}

const signingOf = (c: AppContext, s: Sheet, importId: string): Signing => ({
  importId,
  by: viewerOf(c).name,
  yard: s.mapping.yard,
})

const contextOf = (c: AppContext, deps: Deps): AppendContext => ({
  today: c.var.frame.today,
  recordedAt: deps.clock().toISOString(),
  recordedBy: viewerOf(c).name,
})

async function preview(c: AppContext, deps: Deps, s: Sheet, refused = false): Promise<Response> {
  const importId = v7()
  return page(
    c,
    <PreviewPage
      yards={deps.store.yards().map((y) => y.yard)}
      {...propsOf(c, s, importId)}
      {...(await tried(c, deps, s, importId))}
      mapping={s.mapping}
      ownTypes={s.usual.ownTypes}
      refused={refused}
    />,
    refused ? 422 : 200,
  )
}

/** Writes all lines, or the good ones. What the preview said is worked out again: the book may have changed since. */
async function taken(c: AppContext, deps: Deps, s: Sheet, onlyGood: boolean): Promise<Response> {
  const rows = onlyGood ? (await tried(c, deps, s, s.importId)).good : await allRows(s)
  if (rows === null || rows.length === 0) return preview(c, deps, s, true)
  const signing = signingOf(c, s, s.importId)
  const result = await inSlices(takingIn(deps.store, rows, s.source, signing, contextOf(c, deps)))
  return result.ok ? c.redirect(`/data/colonies?taken=${s.importId}`, 303) : preview(c, deps, s, true)
}

/** All lines, or null when one of them cannot be understood. */
async function allRows(s: Sheet): Promise<ConvertedRow[] | null> {
  const { rows, problems } = await inSlices(converting(s.mapping, s.usual.today))
  return problems.length > 0 ? null : rows
}
