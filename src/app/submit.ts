/** From a filled form to entries in the journal, all or none, or to a sentence beside each field that is wrong. */

import { validate } from 'uuid'
import { type Day, isDay } from '../days.ts'
import { type Draft, type FieldProblem, fieldsOf } from '../forms/index.ts'
import type { ColonyId, EntryId, Tag } from '../ids.ts'
import { entry, type Problem, problemsOf, tag } from '../journal/index.ts'
import { type Result, refused } from '../result.ts'
import type { Repository } from '../store/index.ts'
import { problemWords } from '../words/index.ts'
import type { PageDeps } from './context.ts'
import { grouped } from './group.ts'
import { settleYard } from './new-yard.ts'

/** A draft with what the form knows of it beside its fields. */
export interface Sent {
  draft: Draft
  /** Made when the form was shown, so that saving twice is one entry. */
  id: EntryId
  /** Tag or id of its colony; of an intake, the tag typed. */
  colony: ColonyId | Tag
  /** The entry it corrects or withdraws. */
  replaces?: EntryId
}

export type Saved = Result<{ ids: EntryId[] }>

/**
 * Writes the drafts, signed by `by`. Nothing is written when anything is wrong; every problem is reported at once.
 *
 * @param typedBy who typed them in, where that was somebody else
 */
export async function submit(
  deps: { store: Pick<Repository, 'append' | 'yards' | 'entry'> } & Pick<PageDeps, 'clock' | 'grouped'>,
  today: Day,
  by: string,
  sent: readonly Sent[],
  typedBy = by,
): Promise<Saved> {
  settleYards(deps.store, sent)
  const raw = sent.map(({ draft, id, colony, replaces }) => ({
    ...draft.raw,
    id,
    colony,
    by,
    ...(replaces === undefined ? {} : { replaces }),
  }))
  const problems = inFormOrder(
    unique([
      ...sent.flatMap((s) => s.draft.problems),
      ...raw.flatMap((r, i) => schemaProblems(r, sent[i])),
      ...sent.flatMap((s) => futureProblem(s.draft.raw.on, today)),
    ]),
    sent,
  )
  if (problems.length > 0) return refused(forPages(problems, today))
  const stamp = { today, recordedAt: deps.clock().toISOString(), recordedBy: typedBy }
  const result = await grouped(deps)(() => deps.store.append(raw, stamp))
  if (result.ok) return { ok: true, ids: sent.map((s) => s.id) }
  const found = unique(result.problems.map((p) => beside(p, sent[(p.entry ?? 1) - 1])))
  return refused(forPages(found, today))
}

const forPages = (problems: FieldProblem[], today: Day): FieldProblem[] =>
  problems.map((p) => ({ ...p, message: problemWords(p.message, today) }))

function settleYards(store: Pick<Repository, 'yards' | 'entry'>, sent: readonly Sent[]): void {
  for (const { draft, replaces } of sent) {
    if (draft.raw.yard === undefined) continue
    const was = replaces === undefined ? undefined : store.entry(replaces)?.entry
    settleYard(
      draft,
      store.yards().map((y) => y.yard),
      was !== undefined && 'yard' in was ? was.yard : undefined,
    )
  }
}

/** What the journal's schema says, less what reading the form has said of the same field. */
function schemaProblems(raw: Record<string, unknown>, sent: Sent | undefined): FieldProblem[] {
  const parsed = entry.safeParse(raw)
  const found = parsed.success ? [] : problemsOf(parsed.error, raw).map((p) => beside(p, sent))
  const said = new Set(sent?.draft.problems.map((p) => p.field))
  const left = found.filter((p) => !said.has(p.field))
  if (sent?.draft.kind !== 'intake' || left.some((p) => p.field === 'colony')) return left
  const name = sent.replaces !== undefined && validate(sent.colony) ? null : tag.safeParse(sent.colony)
  return name === null || name.success
    ? left
    : [...left, ...problemsOf(name.error, sent.colony).map((p) => ({ ...p, field: 'colony' }))]
}

/** The journal refuses the future too, but only once all else is right; on a form everything is reported at once. */
const futureProblem = (on: unknown, today: Day): FieldProblem[] =>
  typeof on === 'string' && isDay(on) && on > today
    ? [{ field: 'on', message: `${on} is in the future (today is ${today})` }]
    : []

/** As the fields stand in the form, so that the summary can be walked down. */
function inFormOrder(problems: FieldProblem[], sent: readonly Sent[]): FieldProblem[] {
  const names = sent.flatMap(({ draft }) =>
    Object.keys(fieldsOf(draft.kind)).map((path) => draft.prefix + path),
  )
  const order = ['', 'colony', 'on', 'at', ...names, 'by']
  return problems.sort((a, b) => order.indexOf(a.field) - order.indexOf(b.field))
}

const FIRST_OF: Record<string, string> = {
  removal: 'removal.type',
  brood: 'brood.eggs',
  bees: 'bees.frames',
}

/** The form's field for a problem of an entry's field; '' when the form has none. */
function beside(p: Problem, sent: Sent | undefined): FieldProblem {
  if (p.field === 'id')
    return {
      field: '',
      message: `This form was saved before and has changed since: it ${p.message}. Correct the saved entry in the colony’s journal instead.`,
    }
  if (p.field === 'on' || p.field === 'at' || p.field === 'by') return { field: p.field, message: p.message }
  if (sent === undefined) return { field: '', message: asSentence(p) }
  if (p.field === 'colony' && sent.draft.kind === 'intake') return { field: 'colony', message: p.message }
  const path = FIRST_OF[p.field] ?? p.field.replace(/\.\d+$/, '')
  const field = fieldsOf(sent.draft.kind)[path]
  if (field === undefined) return { field: '', message: asSentence(p) }
  // The schema lists the words it takes; on a form they are there to be tapped.
  const untapped =
    field.choices !== undefined && field.other === undefined && p.message.startsWith('is missing')
  return {
    field: sent.draft.prefix + path,
    message: untapped ? 'is missing: tap one of the answers' : p.message,
  }
}

const asSentence = (p: Problem): string =>
  p.field === 'kind' || p.field === '' || p.field === 'replaces'
    ? `This ${p.message}`
    : `${p.field}: ${p.message}`

function unique(problems: FieldProblem[]): FieldProblem[] {
  const seen = new Set<string>()
  return problems.filter((p) => {
    const key = `${p.field}\n${p.message}`
    return !seen.has(key) && seen.add(key)
  })
}
