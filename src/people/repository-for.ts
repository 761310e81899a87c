/**
 * The store as one role sees it: what it may not see is not in there, what it may not write is refused. The server hands
 * this to the pages instead of the store itself, so that no page can forget to ask.
 */
import type { Entry, EntryKind, Problem } from '../journal/index.ts'
import {
  type AppendContext,
  type AppendResult,
  type JournalRow,
  NO_AFTER,
  NO_REMOVALS,
  type Repository,
  type Store,
} from '../store/index.ts'
import { ACTION_OF_KIND, ACTIONS, type Action, forWhom, may, type Role } from './permissions.ts'
import { historyWithoutPrivate, keepingPrivate, rowWithoutPrivate } from './privacy.ts'

/** See the file's comment. `recordedBy` of an append is the name of the account that writes. */
export function storeFor(role: Role, store: Store): Store {
  const may_ = (action: Action): boolean => may(role, action)
  const writing: Store = {
    ...store,
    ...repositoryFor(role, store),
    load: (lines, today) => (may_('safekeeping') ? store.load(lines, today) : refusal('safekeeping')),
    imports: may_('safekeeping')
      ? store.imports
      : {
          rehearse: () => refusal('safekeeping'),
          take: () => refusal('safekeeping'),
          list: () => [],
          everything: () => [],
          note: () => {},
          entries: () => [],
        },
    after: may_('see-private') ? store.after : NO_AFTER,
    removals: may_('removal-sheets') ? store.removals : NO_REMOVALS,
    protocols: may_('change-settings')
      ? store.protocols
      : {
          ...store.protocols,
          change: () => [{ field: 'protocol', message: `is ${forWhom('change-settings')}` }],
          take: () => {},
          remakeAll: () => {},
        },
    settings: {
      get: store.settings.get,
      set: (key, value) =>
        may_('change-settings')
          ? store.settings.set(key, value)
          : [{ field: key, message: `is ${forWhom('change-settings')}` }],
    },
  }
  return may_('see-private') ? writing : discreet(writing)
}

/** The same for what pages read and forms write, on the server or in a phone. */
export function repositoryFor(role: Role, book: Repository): Repository {
  const may_ = (action: Action): boolean => may(role, action)
  const writing: Repository = { ...book, append: (raw, context) => appendAs(may_, book, raw, context) }
  return may_('see-private') ? writing : discreetBook(writing)
}

const refusal = (action: Action): AppendResult => ({
  ok: false,
  problems: [{ field: '', message: `is ${forWhom(action)}` }],
})

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
  }
}

type Raw = Record<string, unknown>

function appendAs(
  allowed: (action: Action) => boolean,
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
    if (!allowed(needed))
      problems.push({
        entry: i + 1,
        field: needed === 'correct-any' ? 'replaces' : 'kind',
        message: `${what(needed)} is ${forWhom(needed)}`,
      })
    const kept = corrected === null || allowed('see-private') ? e : keepingPrivate(e, corrected.entry)
    // Others may type in what somebody else saw, from a sheet; a helper signs for nobody else.
    return allowed('sign-for-others') && typeof e.by === 'string' ? kept : { ...kept, by: who }
  })
  return problems.length > 0 ? { ok: false, problems } : book.append(signed, context)
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
  corrected: (JournalRow & { tag: string }) | null,
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
