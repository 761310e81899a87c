/** Files that draw pages in every language hold no words themselves: what people read is in the catalogue. */
import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { expect, it } from 'vitest'

const ROOT = fileURLToPath(new URL('../..', import.meta.url))

/** Pages and parts whose every word is in the catalogue (src/app/spoken.ts). */
const SPOKEN_FILES = [
  ...['sign-in-page', 'account-page', 'invite-page', 'language-links', 'passphrase'].map(
    (f) => `src/features/accounts/${f}.tsx`,
  ),
  ...['page', 'front', 'choose', 'labels-page', 'sheet-entry-page', 'ways'].map(
    (f) => `src/features/paper/${f}.tsx`,
  ),
  ...['page.tsx', 'events.ts', 'yard-days.ts'].map((f) => `src/features/calendar/${f}`),
  ...['page.tsx', 'route.tsx', 'digest-text.ts'].map((f) => `src/features/messages/${f}`),
  'src/features/api/tokens-page.tsx',
  'src/features/how/page.tsx',
  ...['no-signal-page', 'outbox-asks', 'outbox-lines', 'outbox-page', 'outbox-sheets'].map(
    (f) => `src/features/offline/${f}.tsx`,
  ),
  ...['page', 'line', 'hand-over'].map((f) => `src/features/today/${f}.tsx`),
  ...['page', 'colony-page', 'summary-page', 'missed-page', 'progress', 'load-list'].map(
    (f) => `src/features/round/${f}.tsx`,
  ),
  ...['advice', 'after-ways', 'checks', 'forecast', 'links', 'move-out', 'odds', 'page', 'photo-page'].map(
    (f) => `src/features/colony/${f}.tsx`,
  ),
  ...['readiness', 'saved', 'shared-days', 'spans', 'strength', 'telling'].map(
    (f) => `src/features/colony/${f}.tsx`,
  ),
  'src/features/find/page.tsx',
  'src/features/yard/page.tsx',
  ...['chart', 'colony-page', 'feed-section', 'guide', 'page', 'row'].map(
    (f) => `src/features/health/${f}.tsx`,
  ),
  ...[
    'visit-page',
    'note-page',
    'small-forms',
    'live-panel',
    'correct-page',
    'move-page',
    'other-box-page',
  ].map((f) => `src/features/entries/${f}.tsx`),
  ...['visit-fields', 'done', 'common', 'inspection', 'intake', 'along', 'leaving', 'yard'].map(
    (f) => `src/features/entries/fields/${f}.tsx`,
  ),
  ...['key', 'lanes', 'strip', 'windows'].map((f) => `src/parts/ribbon/${f}.tsx`),
  ...[
    'mark',
    'pressing-mark',
    'how-to',
    'sign',
    'lost-taps',
    'inspector',
    'date',
    'phone-line',
    'beside',
    'bonds',
    'days-plot',
    'fold',
    'held',
    'journal',
    'hand-out',
    'keys-tick',
    'refusal',
    'tabs',
    'yard-choice',
  ].map((f) => `src/parts/${f}.tsx`),
  ...['field', 'photo-field', 'draw'].map((f) => `src/forms/${f}.tsx`),
]

/** Two words or more, as people read them: between tags, in an attribute that is read out, or in quotes. */
const SPEAKS = [
  />[^<>{}=;()]*\b[A-Za-z]{2,} [a-z]{2,}[^<>{}=;()]*</g,
  /\b(?:aria-label|placeholder|alt|title|label|button|legend)="[^"]*[a-z]{2,}[^"]*"/g,
  /'[A-Z][a-z]+ [a-z]+[^']*'/g,
]

const withoutComments = (text: string): string =>
  text.replaceAll(/\/\*[\s\S]*?\*\//g, '').replaceAll(/^\s*\/\/.*$/gm, '')

const spokenIn = (text: string): string[] => SPEAKS.flatMap((say) => withoutComments(text).match(say) ?? [])

it.each(SPOKEN_FILES)('%s', (file) => {
  expect(spokenIn(readFileSync(`${ROOT}${file}`, 'utf8'))).toEqual([])
})

it('can fail', () => {
  expect(spokenIn('<p>Nothing to do</p>')).toHaveLength(1)
  expect(spokenIn('<nav aria-label="Pages" />')).toHaveLength(1)
  expect(spokenIn("const a = 'Walk the round'")).toHaveLength(1)
})
