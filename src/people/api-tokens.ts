/**
 * Personal tokens for the HTTP API. A token can do what its owner's role may, within its scopes, until it runs out, is
 * taken back, or the account is closed. Shown once; the database keeps the digest.
 */

import { and, desc, eq, isNull, sql } from 'drizzle-orm'
import { v7 } from 'uuid'
import type { Connection } from '../store/index.ts'
import { done, type Outcome, wrong } from './accounts.ts'
import { apiToken } from './api-token-schema.ts'
import { guardFor } from './guard.ts'
import type { Action, Role } from './permissions.ts'
import { person } from './schema.ts'
import { digestOf, newToken } from './tokens.ts'

export const SCOPES = ['read', 'write', 'review'] as const
export type Scope = (typeof SCOPES)[number]

/** What a role must be allowed to do for a scope to be of use to it. */
const ACTION_OF_SCOPE: Record<Scope, Action> = {
  read: 'see-colonies',
  write: 'record-visit',
  review: 'review-survival',
}

/** Scopes a role can give to its tokens. */
export const scopesFor = (role: Role): Scope[] => SCOPES.filter((s) => guardFor(role).may(ACTION_OF_SCOPE[s]))

/** Days a token may be good for. */
export const TOKEN_DAYS = [30, 90, 365] as const

/** Tokens in use at once. */
const MOST_TOKENS = 20

export const TOKEN_NAME_LIMIT = 60

/** Says what leaked when one is found in a log or a script. */
const PREFIX = 'rst_'

const HOUR = 3_600_000
const DAY = 24 * HOUR

export interface ApiToken {
  id: string
  name: string
  scopes: Scope[]
  createdAt: string
  /** To the hour; null: never. */
  usedAt: string | null
  expiresAt: string
  revokedAt: string | null
}

/** Who asks with a token, and what it may be used for. */
export interface TokenHolder {
  token: string
  person: { id: string; name: string; role: Role }
  scopes: Scope[]
}

export interface ApiTokens {
  /** Newest first, those taken back too. */
  of(personId: string): ApiToken[]
  make(asked: {
    person: { id: string; role: Role }
    name: string
    scopes: readonly string[]
    days: number
  }): Outcome<{ token: string; made: ApiToken }>
  /** Who holds it; null when it is unknown, ran out, was taken back, or the account was closed. */
  holder(token: string): TokenHolder | null
  /** Only the owner's own. False when there was nothing to take back. */
  revoke(personId: string, id: string): boolean
}

const isScope = (text: string): text is Scope => (SCOPES as readonly string[]).includes(text)

type Row = typeof apiToken.$inferSelect

const tokenOf = ({ id, name, scopes, createdAt, usedAt, expiresAt, revokedAt }: Row): ApiToken => ({
  id,
  name,
  scopes: scopes.split(' ').filter(isScope),
  createdAt,
  usedAt,
  expiresAt,
  revokedAt,
})

export function apiTokensOn({ db, write }: Connection, clock: () => Date): ApiTokens {
  const now = (): string => clock().toISOString()
  const of = (personId: string): ApiToken[] =>
    db
      .select()
      .from(apiToken)
      .where(eq(apiToken.person, personId))
      .orderBy(desc(apiToken.createdAt), desc(apiToken.id))
      .all()
      .map(tokenOf)
  const find = db
    .select({ apiToken, person })
    .from(apiToken)
    .innerJoin(person, eq(person.id, apiToken.person))
    .where(and(eq(apiToken.digest, sql.placeholder('digest')), isNull(apiToken.revokedAt)))
    .prepare()
  const inUse = (t: ApiToken): boolean => t.revokedAt === null && t.expiresAt > now()

  return {
    of,
    make: ({ person: owner, name, scopes, days }) =>
      write(() => {
        const label = name.trim().slice(0, TOKEN_NAME_LIMIT)
        if (label === '') return wrong('name', 'must not be empty')
        const allowed = scopesFor(owner.role)
        const wanted = SCOPES.filter((s) => scopes.includes(s))
        if (wanted.length === 0) return wrong('scopes', 'must be ticked: one at least')
        if (wanted.some((s) => !allowed.includes(s))) return wrong('scopes', 'are more than your role allows')
        if (!(TOKEN_DAYS as readonly number[]).includes(days)) return wrong('days', 'must be chosen')
        if (of(owner.id).filter(inUse).length >= MOST_TOKENS)
          return wrong('name', `is one too many: take back one of your ${MOST_TOKENS} tokens first`)
        const token = PREFIX + newToken()
        const made: ApiToken = {
          id: v7(),
          name: label,
          scopes: wanted,
          createdAt: now(),
          usedAt: null,
          expiresAt: new Date(clock().getTime() + days * DAY).toISOString(),
          revokedAt: null,
        }
        db.insert(apiToken)
          .values({ ...made, scopes: wanted.join(' '), digest: digestOf(token), person: owner.id })
          .run()
        return done({ token, made })
      }),
    holder(token) {
      const found = find.get({ digest: digestOf(token) })
      if (found === undefined || found.apiToken.expiresAt <= now()) return null
      if (found.person.closedAt !== null || found.person.passphrase === null) return null
      const { id, usedAt } = found.apiToken
      if (usedAt === null || clock().getTime() - Date.parse(usedAt) >= HOUR)
        db.update(apiToken).set({ usedAt: now() }).where(eq(apiToken.id, id)).run()
      const { name, role } = found.person
      return {
        token: id,
        person: { id: found.person.id, name, role },
        scopes: tokenOf(found.apiToken).scopes,
      }
    },
    revoke: (personId, id) =>
      db
        .update(apiToken)
        .set({ revokedAt: now() })
        .where(and(eq(apiToken.id, id), eq(apiToken.person, personId), isNull(apiToken.revokedAt)))
        .run().changes > 0,
  }
}
