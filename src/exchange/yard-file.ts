/**
 * A whole yard as one JSON Lines file. Public format (README): one JSON object a line, each with `line` saying what it is.
 *
 *     {"line":"yard","version":1,"private":true}                                  first
 *     {"line":"setting","key":"timeZone","value":"America/Phoenix"}               each choice the yard has made
 *     {"line":"entry","recordedAt":"…Z","recordedBy":"…","entry":{…}}             the journal, in order
 *     {"line":"protocol","changedAt":"…Z","changedBy":"…","before":{…},"after":{…}}  the history of the protocol
 *     {"line":"sheet","id":"…","version":1,"savedAt":"…Z","savedBy":"…","sheet":{…}}  removal sheets, every version (private)
 *     {"line":"box","colony":"…","sheet":"…","linkedAt":"…Z","linkedBy":"…"}         a further colony of a sheet (private)
 *     {"line":"photo","id":"…","jpeg":"…"}                                         a photo that an entry names, in base64 (private)
 *     {"line":"end","settings":1,"entries":2,"others":0}                          last: a file without it was cut short
 *
 * Entries name their colony as it was written (a tag, or the id of its first intake). Accounts are not in the file:
 * passphrases don't travel. With `private` false, sites, costs, destinations,
 * photos and removal sheets were left out.
 */
import { z } from 'zod'
import { photoId } from '../journal/entry.ts'
import { protocolOverrides } from '../recovery/protocol.ts'
import { sheet } from '../removal/sheet.ts'
import { SETTINGS } from '../store/index.ts'

export const VERSION = 1

const keys = Object.keys(SETTINGS) as [keyof typeof SETTINGS, ...(keyof typeof SETTINGS)[]]

export const yardLine = z.discriminatedUnion('line', [
  z.strictObject({ line: z.literal('yard'), version: z.literal(VERSION), private: z.boolean() }),
  z.strictObject({ line: z.literal('setting'), key: z.enum(keys), value: z.unknown() }),
  z.strictObject({
    line: z.literal('entry'),
    recordedAt: z.iso.datetime(),
    recordedBy: z.string().min(1).max(60),
    entry: z.record(z.string(), z.unknown()),
  }),
  z.strictObject({
    line: z.literal('protocol'),
    changedAt: z.iso.datetime(),
    changedBy: z.string().min(1).max(60),
    before: protocolOverrides,
    after: protocolOverrides,
    reason: z.string().max(500).nullable(),
  }),
  z.strictObject({
    line: z.literal('sheet'),
    id: z.uuid(),
    version: z.int().min(1),
    savedAt: z.iso.datetime(),
    savedBy: z.string().min(1).max(60),
    sheet,
  }),
  z.strictObject({
    line: z.literal('box'),
    colony: z.uuid(),
    sheet: z.uuid(),
    linkedAt: z.iso.datetime(),
    linkedBy: z.string().min(1).max(60),
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
