/** What the store's tests share. */

import type { Store } from '../../src/store/index.ts'
import { type openConnection, openStore } from '../../src/store/node.ts'

type Connection = ReturnType<typeof openConnection>

export const TODAY = '2026-06-01'
export const CONTEXT = { today: TODAY, recordedAt: '2026-06-01T17:00:00.000Z' }

let made = 0
/** A fresh version 7 UUID, later ones sorting later. */
export const newId = (): string => {
  made++
  return `${made.toString(16).padStart(8, '0')}-0000-7000-8000-000000000000`
}

const base = { on: '2026-05-10', by: 'Odalys' }

export const intake = (colony: string, more: Record<string, unknown> = {}) => ({
  id: newId(),
  colony,
  kind: 'intake' as const,
  removal: { type: 'wall', site: '12 Invented Way' },
  yard: 'Quarry yard',
  stand: '3',
  queen: 'unseen' as const,
  ...base,
  ...more,
})

export const inspection = (colony: string, on: string, more: Record<string, unknown> = {}) => ({
  id: newId(),
  colony,
  kind: 'inspection' as const,
  opened: true,
  ...base,
  on,
  ...more,
})

export const given = (colony: string, on: string, more: Record<string, unknown> = {}) => ({
  id: newId(),
  colony,
  kind: 'given' as const,
  what: 'egg-frame' as const,
  ...base,
  on,
  ...more,
})

export const outcome = (colony: string, on: string, more: Record<string, unknown> = {}) => ({
  id: newId(),
  colony,
  kind: 'outcome' as const,
  what: 'moved-out' as const,
  ...base,
  on,
  ...more,
})

export const withdrawal = (colony: string, replaces: string, on = TODAY) => ({
  id: newId(),
  colony,
  kind: 'withdrawal' as const,
  replaces,
  reason: 'Wrong box.',
  ...base,
  on,
})

export const memoryStore = (): Store => openStore(':memory:')

/** Appends and insists that it was accepted. Returns the first id. */
export function add(store: Store, ...entries: (Record<string, unknown> & { id: string })[]): string {
  const result = store.append(entries, CONTEXT)
  if (!result.ok) throw new Error(JSON.stringify(result.problems))
  return entries[0]?.id ?? ''
}

/** Appends and gives the problems, '' when there are none. */
export function refusal(store: Store, ...entries: unknown[]): string {
  const result = store.append(entries, CONTEXT)
  return result.ok ? '' : result.problems.map((p) => `${p.entry} ${p.field}: ${p.message}`).join('\n')
}

/** Every byte of the projections, in key order. */
export function projectionBytes({ raw }: Connection): string {
  const colonies = raw.prepare('SELECT * FROM colony ORDER BY id').raw().all()
  const checks = raw.prepare('SELECT * FROM planned_check ORDER BY colony, place').raw().all()
  const stays = raw.prepare('SELECT * FROM stay ORDER BY colony').raw().all()
  return JSON.stringify([colonies, checks, stays])
}
