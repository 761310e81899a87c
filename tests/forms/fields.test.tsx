import { expect, it } from 'vitest'
import { CorrectPage } from '../../src/features/entries/correct-page.tsx'
import { PART_FIELDS } from '../../src/features/removal/fields.ts'
import { PartFields } from '../../src/features/removal/part-fields.tsx'
import type { Part } from '../../src/features/removal/stage.ts'
import { COMMON, FIELDS, fieldsOf } from '../../src/forms/fields.ts'
import type { EntryKind, StandingEntry } from '../../src/journal/index.ts'
import type { Frame } from '../../src/parts/index.ts'
import { EMPTY_SHEET } from '../../src/records/removal-sheet.ts'
import { wordsIn } from '../../src/words/index.ts'
import { written } from '../support/wall-colony.ts'

const FRAME: Frame = {
  today: '2026-05-10',
  zone: 'UTC',
  units: { temperature: 'C', weight: 'kg' },
  viewer: { name: 'Ada', role: 'operator' },
  may: () => true,
  mayOpen: () => true,
  words: wordsIn('en'),
  path: '/',
  built: () => null,
}

const FORM = { typed: { at: ['09:00'], photos: ['kept'] }, problems: [] }

const namesIn = (html: string): Set<string> =>
  new Set([...html.matchAll(/ name="([^"]+)"/g)].map((m) => m[1] ?? ''))

const kinds = (Object.keys(FIELDS) as EntryKind[]).filter((kind) => kind !== 'withdrawal')

/** What a form does not show is taken out of an entry that is corrected. */
it.each(kinds)('corrects every field that an entry of the kind %s can have', (kind) => {
  const [entry] = written([{ kind, on: '2026-05-01' }]) as StandingEntry[]
  if (entry === undefined) throw new Error('no entry')
  const html = String(
    <CorrectPage
      frame={FRAME}
      form={FORM}
      entry={entry}
      tag="A-1"
      path="/a"
      yards={[]}
      types={[]}
      tags={[]}
    />,
  )
  expect([...namesIn(html)]).toEqual(expect.arrayContaining(Object.keys({ ...COMMON, ...fieldsOf(kind) })))
})

it.each(Object.keys(PART_FIELDS) as Part[])('shows every field of the part %s of a removal sheet', (part) => {
  const html = String(
    <PartFields
      part={part}
      form={FORM}
      frame={FRAME}
      sheet={EMPTY_SHEET}
      others={[]}
      heard={null}
      types={[]}
      currency="$"
    />,
  )
  expect([...namesIn(html)]).toEqual(expect.arrayContaining(Object.keys(PART_FIELDS[part])))
})
