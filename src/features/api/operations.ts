/** The operations of the HTTP API: one table, from which the routes are made and the OpenAPI document is written. */

import { z } from 'zod'
import { day } from '../../journal/index.ts'
import type { Action, Scope } from '../../people/index.ts'
import type { ComponentName } from './schemas.ts'

export const API = '/api/v1'
const MOST_ITEMS = 200
export const USUAL_ITEMS = 50

/** Numbers in a query are text: only digits count. */
const items = z
  .string()
  .regex(/^\d{1,4}$/, 'must be a whole number')
  .transform(Number)
  .pipe(z.int().min(1).max(MOST_ITEMS))
  .optional()

const paging = {
  limit: items.meta({ description: `How many items at most; ${USUAL_ITEMS} when left out.` }),
  cursor: z
    .string()
    .max(200)
    .optional()
    .meta({ description: 'Where to go on: `next` of the page before, or follow its Link header.' }),
}

const yesNo = z.enum(['true', 'false'])

/** What each operation may be asked with. */
export const QUERIES = {
  none: z.strictObject({}),
  paging: z.strictObject(paging),
  colonies: z.strictObject({
    ...paging,
    state: z
      .enum(['open', 'left', 'all'])
      .optional()
      .meta({ description: 'In the yard (open, the default), left, or all.' }),
    yard: z.string().max(80).optional().meta({ description: 'Only of this yard.' }),
    text: z
      .string()
      .max(60)
      .optional()
      .meta({ description: 'Part of a tag, yard, stand or kind of removal.' }),
    toDo: yesNo.optional().meta({ description: 'Only those that ask for something today.' }),
  }),
  plan: z.strictObject({
    asOf: z
      .optional(day)
      .meta({ description: 'As of that day, with what is in the journal up to it; today when left out.' }),
  }),
  review: z.strictObject({
    asOf: z.optional(day).meta({ description: 'Today when left out.' }),
    unitedIsLoss: yesNo.optional().meta({ description: 'Counts a united colony as lost.' }),
  }),
} as const

export interface Operation {
  method: 'get' | 'post'
  /** Below API, with parameters in braces. */
  path: string
  summary: string
  description?: string
  scope: Scope | null
  /** What the role must be allowed to do besides. */
  action: Action | null
  query: keyof typeof QUERIES
  body?: ComponentName
  /** By status. */
  answers: Partial<Record<number, { schema: ComponentName; description: string }>>
  paged?: boolean
}

export const OPERATIONS = {
  whoAmI: {
    method: 'get',
    path: '/me',
    summary: 'Whose token this is, and what day it is in the yard',
    scope: null,
    action: null,
    query: 'none',
    answers: { 200: { schema: 'Me', description: 'The person and the token’s scopes.' } },
  },
  listColonies: {
    method: 'get',
    path: '/colonies',
    summary: 'Colonies with where they stand today, by id',
    scope: 'read',
    action: 'see-colonies',
    query: 'colonies',
    answers: { 200: { schema: 'Colonies', description: 'A page of colonies.' } },
    paged: true,
  },
  readColony: {
    method: 'get',
    path: '/colonies/{colony}',
    summary: 'One colony, by tag or id',
    description: 'A tag means the colony in the yard that has it, else the last one that had it.',
    scope: 'read',
    action: 'see-colonies',
    query: 'none',
    answers: { 200: { schema: 'Colony', description: 'The colony.' } },
  },
  readPlan: {
    method: 'get',
    path: '/colonies/{colony}/plan',
    summary: 'The plan of one colony',
    scope: 'read',
    action: 'see-colonies',
    query: 'plan',
    answers: { 200: { schema: 'Plan', description: 'The plan, as `resettle plan` prints it.' } },
  },
  listColonyEntries: {
    method: 'get',
    path: '/colonies/{colony}/entries',
    summary: 'The journal of one colony, oldest first',
    description: 'With corrected and withdrawn entries, in the order in which they came to be known.',
    scope: 'read',
    action: 'see-colonies',
    query: 'paging',
    answers: { 200: { schema: 'Journal', description: 'A page of entries.' } },
    paged: true,
  },
  listPlans: {
    method: 'get',
    path: '/plans',
    summary: 'Plans of all colonies in the yard, as of today',
    scope: 'read',
    action: 'see-colonies',
    query: 'paging',
    answers: { 200: { schema: 'Plans', description: 'A page of plans.' } },
    paged: true,
  },
  listEntries: {
    method: 'get',
    path: '/entries',
    summary: 'The journal of the whole yard, newest first',
    description: 'For operators, as the history of changes is.',
    scope: 'read',
    action: 'see-changes',
    query: 'paging',
    answers: { 200: { schema: 'Journal', description: 'A page of entries.' } },
    paged: true,
  },
  readEntry: {
    method: 'get',
    path: '/entries/{id}',
    summary: 'One entry, by its id',
    scope: 'read',
    action: 'see-colonies',
    query: 'none',
    answers: { 200: { schema: 'RecordedEntry', description: 'The entry.' } },
  },
  sendEntries: {
    method: 'post',
    path: '/entries',
    summary: 'Write entries, all or none',
    description:
      'One entry or a list. Ids are made by whoever sends (UUID, version 7 for choice): sending the same again is harmless and answers 200. A correction is an entry with `replaces`.',
    scope: 'write',
    action: 'record-visit',
    query: 'none',
    body: 'EntriesIn',
    answers: {
      201: { schema: 'Taken', description: 'At least one entry is new; all are in the journal now.' },
      200: { schema: 'Taken', description: 'All were in the journal already.' },
    },
  },
  readReview: {
    method: 'get',
    path: '/review',
    summary: 'Survival, overall and by kind of removal',
    scope: 'review',
    action: 'review-survival',
    query: 'review',
    answers: { 200: { schema: 'Review', description: 'The review, as `resettle review --json` prints it.' } },
  },
} as const satisfies Record<string, Operation>

export type OperationId = keyof typeof OPERATIONS
