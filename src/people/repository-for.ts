/**
 * The store as one role sees it: what it may not see is not in there, what it may not write is refused. The server hands
 * this to the pages instead of the store itself, so that no page can forget to ask.
 */
import type { Entry, EntryKind, Problem } from '../journal/index.ts'
import { refused } from '../result.ts'
import {
  type AppendContext,
  type AppendResult,
  type ColonyImports,
  type JournalRow,
  mentions,
  NO_AFTER,
  NO_REMOVALS,
  type Repository,
  type Store,
  type TaggedRow,
} from '../store/index.ts'
import { type Guard, guardFor, notFor, refusal } from './guard.ts'
import { ACTION_OF_KIND, ACTIONS, type Action, type Role } from './permissions.ts'
import {
  historyWithoutPrivate,
  keepingPrivate,
  rowWithoutPrivate,
  stayWithoutPrivate,
  withoutPrivate,
} from './privacy.ts'

const NO_IMPORTS: ColonyImports = {
  *rehearsing() {
    yield
    return refusal('safekeeping')
  },
  take: () => refusal('safekeeping'),
  list: () => [],
  everything: () => [],
  note: () => {},
  entries: () => [],
}

/** See the file's comment. `recordedBy` of an append is the name of the account that writes. */
export function storeFor(role: Role, store: Store): Store {
  const { only } = guardFor(role)
  const writing: Store = {
    ...store,
    ...repositoryFor(role, store),
    load: only('safekeeping', store.load, () => refusal('safekeeping')),
    refused: only('correct-any', store.refused, { ...store.refused, open: () => [], count: () => 0 }),
    imports: only('safekeeping', store.imports, NO_IMPORTS),
    after: only('see-private', store.after, NO_AFTER),
    removals: only('removal-sheets', store.removals, NO_REMOVALS),
    protocols: only('change-settings', store.protocols, {
      ...store.protocols,
      change: () => [notFor('change-settings', 'protocol')],
      choose: (key) => [notFor('change-settings', key)],
      take: () => {},
      remakeAll: () => {},
    }),
    settings: only('change-settings', store.settings, {
      get: store.settings.get,
      set: (key) => [notFor('change-settings', key)],
    }),
  }
  return only('see-private', writing, discreet(writing))
}

/** The same for what pages read and forms write, on the server or in a phone. */
export function repositoryFor(role: Role, book: Repository): Repository {
  const guard = guardFor(role)
  const writing: Repository = {
    ...book,
    append: (raw, context) => appendAs(guard, book, raw, context),
    removals: guard.only('removal-sheets', book.removals, NO_REMOVALS),
    ...(book.papers === undefined ? {} : { papers: guard.only('see-private', book.papers, () => []) }),
  }
  return guard.only('see-private', writing, discreetBook(writing))
}

/** Reading without what is private. */
function discreetBook(book: Repository): Repository {
  return {
    ...book,
    colony(name) {
      const found = book.colony(name)
      if (found === null) return null
      const { summary, history, journal } = found
      return { summary, history: historyWithoutPrivate(history), journal: journal.map(rowWithoutPrivate) }
    },
    entry(id) {
      const row = book.entry(id)
      return row === null ? null : rowWithoutPrivate(row)
    },
    changes: (page) => book.changes(page).map(rowWithoutPrivate),
    // Found by a word that only others may read: not found.
    mentions: (word) =>
      book
        .mentions(word)
        .map(rowWithoutPrivate)
        .filter((row) => mentions(row.entry, word)),
  }
}

/** The same of the whole store. */
function discreet(store: Store): Store {
  return {
    ...store,
    *journal() {
      for (const row of store.journal()) yield rowWithoutPrivate(row)
    },
    *histories() {
      for (const { id, history } of store.histories()) yield { id, history: historyWithoutPrivate(history) }
    },
    stays: {
      ...store.stays,
      *all() {
        for (const one of store.stays.all())
          yield { ...one, stayOn: (asOf) => stayWithoutPrivate(one.stayOn(asOf)) }
      },
    },
  }
}

type Raw = Record<string, unknown>

function appendAs(
  { may }: Guard,
  book: Repository,
  raw: readonly unknown[],
  context: AppendContext,
): AppendResult {
  const who = context.recordedBy ?? ''
  const problems: Problem[] = []
  const batch = new Map<string, Raw>()
  const signed = raw.map((entry, i) => {
    if (entry === null || typeof entry !== 'object' || Array.isArray(entry)) return entry
    const e = entry as Raw
    if (typeof e.id === 'string') batch.set(e.id, e)
    const corrected = typeof e.replaces === 'string' ? book.entry(e.replaces) : null
    const needed = actionFor(e, corrected, book, who, batch)
    if (!may(needed))
      problems.push({
        entry: i + 1,
        field: needed === 'correct-any' ? 'replaces' : 'kind',
        message: `${what(needed)} ${notFor(needed).message}`,
      })
    const kept = corrected === null || may('see-private') ? e : keepingPrivate(e, corrected.entry)
    // Others may type in what somebody else saw, from a sheet; a helper signs for nobody else.
    return may('sign-for-others') && typeof e.by === 'string' ? kept : { ...kept, by: who }
  })
  const seen = may('see-private') ? undefined : withoutPrivate
  return problems.length > 0 ? refused(problems) : book.append(signed, { ...context, seen })
}

const what = (action: Action): string =>
  action === 'log-intake'
    ? 'logging an intake'
    : action === 'record-outcome'
      ? 'recording how a colony left'
      : action === 'correct-any'
        ? 'correcting what somebody else entered'
        : `leave to ${ACTIONS[action].words}`

/** What somebody must be allowed to do to write this entry. */
function actionFor(
  e: Raw,
  corrected: TaggedRow | null,
  book: Repository,
  who: string,
  batch: ReadonlyMap<string, Raw>,
): Action {
  const kind =
    typeof e.kind === 'string' && Object.hasOwn(ACTION_OF_KIND, e.kind) ? (e.kind as EntryKind) : null
  const plain = kind === null ? 'record-visit' : ACTION_OF_KIND[kind]
  if (corrected === null) {
    // Of something else in the same batch: judged as that one is.
    const own = typeof e.replaces === 'string' ? batch.get(e.replaces) : undefined
    return own === undefined || kind !== 'withdrawal'
      ? plain
      : actionFor({ ...own, replaces: undefined }, null, book, who, batch)
  }
  if (!untouchedByOthers(corrected, book, who)) return 'correct-any'
  return kind === 'withdrawal' ? ACTION_OF_KIND[corrected.entry.kind] : plain
}

/** Whether the entry and everything that has corrected it since was written by this person alone. */
function untouchedByOthers(row: JournalRow, book: Repository, who: string): boolean {
  if (row.recordedBy !== who) return false
  const journal = book.colony(row.entry.colony)?.journal ?? []
  const line = new Set([row.entry.id])
  return journal.every((r: { entry: Entry; recordedBy: string }) => {
    if (r.entry.replaces === undefined || !line.has(r.entry.replaces)) return true
    line.add(r.entry.id)
    return r.recordedBy === who
  })
}
