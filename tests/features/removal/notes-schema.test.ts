/** Every free text that the schema of a sheet takes is a note that is read before “go”, or is none for a reason. */
import { expect, test } from 'vitest'
import * as z from 'zod/mini'
import { notesOf } from '../../../src/features/removal/notes-read.ts'
import { type Sheet, sheet } from '../../../src/records/removal-sheet.ts'

/** Free texts that are no notes, each with why. */
const NO_NOTES: Record<string, string> = {
  'site.type': 'a kind of job of this yard, tapped',
  'site.noted.by': 'a name',
  'site.noted.words': 'asked by itself: “is it here?”',
  'site.noted.writtenAt': 'a moment',
  'agreement.signature.terms': 'the template, and what is agreed, which is read',
  'check.done': 'what was tapped',
  'check.clearances.who': 'a name',
  'check.clearances.licence': 'a number: with a sentence beside it no clearance is taken',
  'check.clearances.writtenAt': 'a moment',
  'check.seconds.item': 'what is signed for',
  'check.seconds.by': 'a name',
  'check.seconds.phone': 'how somebody is reached',
  'check.seconds.of': 'words of this program',
  'decision.by': 'a name',
  'decision.unmet': 'words of this program',
  'decision.fell.by': 'a name',
  'decision.over.by': 'a name',
  'decision.heard.of': 'a moment',
  'decision.heard.by': 'a name',
  'work.withoutGo.by': 'a name',
  'work.withoutGo.unmet': 'words of this program',
  'work.underGo.by': 'a name',
  'work.earlier.underGo.by': 'a name',
  'work.knew': 'fingerprints',
  'ended.why': 'no “go” is had on a sheet that has ended',
  'callBacks.by': 'a name',
  boxes: 'ids of colonies',
}

type Shape = z.core.$ZodTypes

/** A value of that type with a text of its own, its path, wherever one is free; and those paths. */
function filled(type: z.core.$ZodType, path: string, free: string[]): unknown {
  const { def } = type._zod as Shape['_zod']
  switch (def.type) {
    case 'optional':
      return filled(def.innerType, path, free)
    case 'object':
      return Object.fromEntries(
        Object.entries(def.shape).map(([key, t]) => [
          key,
          filled(t, path === '' ? key : `${path}.${key}`, free),
        ]),
      )
    case 'array':
      return [filled(def.element, path, free)]
    case 'string': {
      const isFree = isFreeText(type)
      if (isFree) free.push(path)
      return isFree ? path : undefined
    }
    case 'union':
      return def.options.map((t) => filled(t, path, free))[0]
    case 'enum':
    case 'literal':
    case 'number':
    case 'boolean':
      return undefined
    default:
      throw new Error(`${path}: a ${def.type} is not walked yet`)
  }
}

/** It takes words, whatever they are. */
const isFreeText = (type: z.core.$ZodType): boolean => z.safeParse(type, 'no').success

/** Parts of a place, wherever it was written down beside something. */
const OF_PLACE = /^(decision|check\.\w+|site\.lookedAt\.\w+)\.(address|where|surface|type)$/

test('a text that is neither read nor left out for a reason does not get onto a sheet', () => {
  const free: string[] = []
  const all = filled(sheet, '', free) as Sheet
  const read = notesOf({ ...all, decision: { ...all.decision, is: 'wait' } as Sheet['decision'] } as Sheet)
  const left = free.filter((path) => !read.includes(path) && !OF_PLACE.test(path))
  expect(read.length).toBeGreaterThan(14)
  expect([...new Set(left)].sort()).toEqual(Object.keys(NO_NOTES).sort())
})
