/** The one guard: pages, routes, programs and the store all ask it what a role may do. The tables are in permissions.ts. */
import { type FieldProblem, type Problems, refused } from '../result.ts'
import { type Action, forWhom, may, mayOpen, type Role } from './permissions.ts'

export interface Guard {
  may(action: Action): boolean
  mayOpen(path: string): boolean
  /** The thing itself for who may, else what stands in for it. */
  only<T>(action: Action, real: T, instead: T): T
}

/** `null`: somebody who is not signed in, and may nothing. */
export function guardFor(role: Role | null): Guard {
  const allows = (action: Action): boolean => role !== null && may(role, action)
  return {
    may: allows,
    mayOpen: (path) => role !== null && mayOpen(role, path),
    only: (action, real, instead) => (allows(action) ? real : instead),
  }
}

/** 'is for beekeepers and operators', beside a field. */
export const notFor = (action: Action, field = ''): FieldProblem => ({
  field,
  message: `is ${forWhom(action)}`,
})

export const refusal = (action: Action): { ok: false } & Problems => refused([notFor(action)])
