/**
 * A whole yard as one JSON Lines file. Public format (README): one JSON object a line, each with `line` saying what it is.
 *
 *     {"line":"yard","version":1,"private":true}                                  first
 *     {"line":"setting","key":"timeZone","value":"America/Phoenix"}               each choice the yard has made
 *     {"line":"entry","recordedAt":"…Z","recordedBy":"…","entry":{…}}             the journal, in order
 *     {"line":"protocol","changedAt":"…Z","changedBy":"…","before":{…},"after":{…}}  the history of the protocol
 *     {"line":"sheet","id":"…","version":1,"savedAt":"…Z","savedBy":"…","sheet":{…}}  removal sheets, every version (private)
 *     {"line":"box","colony":"…","sheet":"…","linkedAt":"…Z","linkedBy":"…"}         a further colony of a sheet (private)
 *     {"line":"letter","id":"…","colony":"…","digest":"…","asOf":"…",…}              a letter to a customer, or with "what":"keeper" a sheet for a new keeper (private)
 *     {"line":"move-record","colony":"…","version":1,"savedAt":"…Z","savedBy":"…","record":{…}}  move-out records, every version (private)
 *     {"line":"import","id":"…","takenAt":"…Z","takenBy":"…","source":"…","colonies":2,"entries":["…"]}  which entries came with a spreadsheet (private)
 *     {"line":"refused","id":"…","person":"…","receivedAt":"…Z","tag":"…","entry":{…},"problems":[…],…}  an entry the journal would not have, settled or not (private)
 *     {"line":"photo","id":"…","jpeg":"…"}                                         a photo that an entry or a sheet names, in base64 (private)
 *     {"line":"end","settings":1,"entries":2,"others":0}                          last: a file without it was cut short
 *
 * Entries name their colony as it was written (a tag, or the id of its first intake). Accounts are not in the file:
 * passphrases don't travel. A letter that could be opened when the file was made can be opened where it is taken in.
 * With `private` false, sites, costs, destinations and all that is marked private were left out.
 */

import { z } from 'zod'
import { isDay } from '../../days.ts'
import type { EntryId } from '../../ids.ts'
import { photoId } from '../../journal/index.ts'
import { moveRecord, sheet } from '../../records/index.ts'
import { protocolOverrides } from '../../recovery/index.ts'
import { SETTINGS } from '../../store/node.ts'

export const VERSION = 1

const instant = z.iso.datetime()
const person = z.string().min(1).max(60)
const keys = Object.keys(SETTINGS) as [keyof typeof SETTINGS, ...(keyof typeof SETTINGS)[]]

export const yardLine = z.discriminatedUnion('line', [
  z.strictObject({ line: z.literal('yard'), version: z.literal(VERSION), private: z.boolean() }),
  z.strictObject({ line: z.literal('setting'), key: z.enum(keys), value: z.unknown() }),
  z.strictObject({
    line: z.literal('entry'),
    recordedAt: instant,
    recordedBy: person,
    entry: z.record(z.string(), z.unknown()),
  }),
  z.strictObject({
    line: z.literal('protocol'),
    changedAt: instant,
    changedBy: person,
    before: protocolOverrides,
    after: protocolOverrides,
    reason: z.string().max(500).nullable(),
  }),
  z.strictObject({
    line: z.literal('sheet'),
    id: z.uuid(),
    version: z.int().min(1),
    savedAt: instant,
    savedBy: person,
    sheet,
  }),
  z.strictObject({
    line: z.literal('box'),
    colony: z.uuid(),
    sheet: z.uuid(),
    linkedAt: instant,
    linkedBy: person,
  }),
  z.strictObject({
    line: z.literal('letter'),
    id: z.uuid(),
    colony: z.uuid(),
    what: z.enum(['letter', 'keeper']).default('letter'),
    digest: z.string().min(1).max(200),
    asOf: z.string().refine(isDay, 'must be a real date written YYYY-MM-DD'),
    words: z.string().max(2000).nullable(),
    createdAt: instant,
    createdBy: person,
    expiresAt: instant,
    revokedAt: instant.nullable(),
  }),
  z.strictObject({
    line: z.literal('move-record'),
    colony: z.uuid(),
    version: z.int().min(1),
    savedAt: instant,
    savedBy: person,
    record: moveRecord,
  }),
  z.strictObject({
    line: z.literal('import'),
    id: z.uuid(),
    takenAt: instant,
    takenBy: person,
    source: z.string().max(500),
    colonies: z.int().min(0),
    entries: z.array(z.uuid()),
  }),
  z.strictObject({
    line: z.literal('refused'),
    id: z
      .string()
      .min(1)
      .max(200)
      .transform((id) => id as EntryId),
    person,
    sentBy: person,
    receivedAt: instant,
    tag: z.string(),
    /** As it came: it may fit no schema. */
    entry: z.unknown(),
    problems: z.array(z.object({ entry: z.int().optional(), field: z.string(), message: z.string() })),
    settledAt: instant.nullable(),
    settledBy: person.nullable(),
  }),
  z.strictObject({ line: z.literal('photo'), id: photoId, jpeg: z.base64() }),
  z.strictObject({
    line: z.literal('end'),
    settings: z.int().min(0),
    entries: z.int().min(0),
    /** Lines that are neither; left out by files from before there were such. */
    others: z.int().min(0).optional(),
  }),
])
export type YardLine = z.infer<typeof yardLine>
