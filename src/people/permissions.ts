/**
 * Who may do what: the one table. Pages, the repository of a role and the tests all read it here.
 *
 * Everything is forbidden that no line allows: an action without a role, a path without a line (operators only).
 */
import { type EntryKind, eachKind } from '../journal/index.ts'

export const ROLES = ['operator', 'beekeeper', 'helper'] as const
export type Role = (typeof ROLES)[number]

const ALL: readonly Role[] = ROLES
const BEEKEEPERS: readonly Role[] = ['operator', 'beekeeper']
const OPERATORS: readonly Role[] = ['operator']

/** The table: each action, who may, and what it is in words ("only an operator may …"). */
export const ACTIONS = {
  'see-colonies': { roles: ALL, words: 'see colonies and their plans' },
  'record-visit': { roles: ALL, words: 'record visits' },
  'correct-own': { roles: ALL, words: 'correct their own entries' },
  'own-account': { roles: ALL, words: 'change their own passphrase' },
  'log-intake': { roles: BEEKEEPERS, words: 'log intakes' },
  'record-outcome': { roles: BEEKEEPERS, words: 'record how a colony left' },
  'clear-disease': { roles: BEEKEEPERS, words: 'say that a suspected disease is cleared' },
  'correct-any': { roles: BEEKEEPERS, words: 'correct what others entered' },
  'sign-for-others': { roles: BEEKEEPERS, words: 'type in what others saw' },
  'see-private': { roles: BEEKEEPERS, words: 'see customers and costs' },
  'removal-sheets': { roles: BEEKEEPERS, words: 'use removal sheets' },
  'review-survival': { roles: OPERATORS, words: 'review survival' },
  'see-supplies': { roles: OPERATORS, words: 'plan supplies' },
  'see-colony-changes': { roles: BEEKEEPERS, words: 'see the history of changes of one colony' },
  'see-changes': { roles: OPERATORS, words: 'see the history of changes of the whole yard' },
  'change-settings': { roles: OPERATORS, words: 'change how the yard works' },
  'manage-people': { roles: OPERATORS, words: 'manage accounts' },
  safekeeping: { roles: OPERATORS, words: 'back up, export and import' },
} as const satisfies Record<string, { roles: readonly Role[]; words: string }>

export type Action = keyof typeof ACTIONS

/** Whether the role may. Example: may('helper', 'log-intake') = false. */
export const may = (role: Role, action: Action): boolean =>
  (ACTIONS[action].roles as readonly Role[]).includes(role)

/** What somebody must be allowed to do to write an entry of a kind. A withdrawal is judged by what it takes back. */
export const ACTION_OF_KIND: Record<EntryKind, Action> = eachKind((f) => f.right)

/**
 * What a path asks for, the first line that fits; a star at the end stands for everything below. What is written there
 * is judged again, entry by entry, where it is appended.
 */
export const PLACES: readonly { path: string; action: Action }[] = [
  { path: '/', action: 'see-colonies' },
  { path: '/round/*', action: 'see-colonies' },
  { path: '/paper', action: 'see-colonies' },
  { path: '/labels', action: 'see-colonies' },
  { path: '/sheet-entry', action: 'record-visit' },
  { path: '/calendar', action: 'see-colonies' },
  { path: '/yard', action: 'see-colonies' },
  { path: '/weeks', action: 'see-colonies' },
  { path: '/find', action: 'see-colonies' },
  { path: '/how/*', action: 'see-colonies' },
  { path: '/intake', action: 'log-intake' },
  { path: '/removals/terms', action: 'change-settings' },
  { path: '/removals/:id/erase', action: 'safekeeping' },
  { path: '/removals/*', action: 'removal-sheets' },
  { path: '/health/*', action: 'see-colonies' },
  { path: '/protocol/*', action: 'change-settings' },
  { path: '/colony/:tag/cleared', action: 'clear-disease' },
  { path: '/colony/:tag/letter', action: 'see-private' },
  { path: '/letters/*', action: 'see-private' },
  { path: '/colony/:tag/move-record', action: 'see-private' },
  { path: '/colony/:tag/move-record/erase', action: 'safekeeping' },
  { path: '/colony/:tag/follow-up/*', action: 'see-private' },
  { path: '/colony/:tag/keeper-sheet', action: 'see-private' },
  { path: '/handing-on', action: 'see-private' },
  { path: '/yard-book/*', action: 'see-private' },
  { path: '/colony/:tag/changes', action: 'see-colony-changes' },
  { path: '/colony/:tag/outcome', action: 'record-outcome' },
  { path: '/colony/:tag/*', action: 'see-colonies' },
  { path: '/entry/*', action: 'see-colonies' },
  { path: '/entries/*', action: 'record-visit' },
  { path: '/refused/*', action: 'correct-any' },
  { path: '/photos/*', action: 'see-colonies' },
  { path: '/phone/*', action: 'see-colonies' },
  { path: '/outbox/*', action: 'see-colonies' },
  { path: '/account/*', action: 'own-account' },
  { path: '/sign-out', action: 'own-account' },
  { path: '/settings', action: 'change-settings' },
  { path: '/people/*', action: 'manage-people' },
  { path: '/data/*', action: 'safekeeping' },
  { path: '/changes/*', action: 'see-changes' },
  { path: '/review/*', action: 'review-survival' },
  { path: '/supplies/*', action: 'see-supplies' },
  { path: '/stands', action: 'see-supplies' },
  { path: '/rates', action: 'see-colonies' },
  { path: '/rates/use', action: 'change-settings' },
]

const patterns = PLACES.map(({ path, action }) => ({ pattern: patternOf(path), action }))

function patternOf(path: string): RegExp {
  const source = path.replace(/:[a-z]+/g, '[^/]+').replace(/\/\*$/, '(/.*)?')
  return new RegExp(`^${source}$`)
}

/** The action a path asks for; null when no line fits, which only operators may open. */
export const actionAt = (path: string): Action | null =>
  patterns.find((p) => p.pattern.test(path))?.action ?? null

/** Whether the role may open the path. */
export function mayOpen(role: Role, path: string): boolean {
  const action = actionAt(path)
  return action === null ? role === 'operator' : may(role, action)
}

/** 'for beekeepers and operators' */
export function forWhom(action: Action): string {
  const roles: readonly Role[] = ACTIONS[action].roles
  return `for ${[...roles]
    .reverse()
    .map((r) => `${r}s`)
    .join(' and ')}`
}
