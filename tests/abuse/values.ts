/** The words of the fuzz: plausible values, hostile ones, and everything between. */
import fc from 'fast-check'
import { ENTRY_KINDS, GIFTS, SIGNS } from '../../src/journal/entry.ts'
import { ROLES } from '../../src/people/index.ts'

/** Must never come back as it is in a page: it would open a tag or leave an attribute. */
export const TAG = '<fuzz7 onload=x>'
export const BREAK = `fuzz7"'onfocus=x`

export const HOSTILE = [
  TAG,
  BREAK,
  `"><script>alert(1)</script>${TAG}`,
  `</script>${TAG}`,
  `</textarea>${TAG}`,
  `'-alert(1)-'${BREAK}`,
  'javascript:alert(1)',
  '../../../../etc/passwd',
  '..%2f..%2fetc%2fpasswd',
  '%00',
  '\u0000',
  '\r\nSet-Cookie: a=b',
  "' OR 1=1 --",
  '"; DROP TABLE entry; --',
  '=HYPERLINK("http://x")',
  '__proto__',
  'constructor',
  'toString',
  '\u202eevil',
  '\ud800',
  '💥'.repeat(50),
  'a'.repeat(5000),
  'NaN',
  'Infinity',
  '-1',
  '1e309',
  '9'.repeat(400),
  '0x10',
  '',
  ' ',
  'null',
  '[]',
  '{}',
] as const

export const DAYS = [
  '2026-06-01',
  '2026-05-20',
  '2026-05-31',
  '2026-04-01',
  '2026-06-02',
  '2026-13-45',
  '0000-00-00',
  '1066-10-14',
]

export interface Names {
  tags: readonly string[]
  /** Ids differ from yard to yard: '#3#' stands for the fourth one. */
  ids: readonly string[]
}

/** Words that mean something to some field. */
const KNOWN = [
  ...ENTRY_KINDS,
  ...GIFTS,
  ...SIGNS,
  ...ROLES,
  'yes',
  'no',
  'none',
  'single',
  '1',
  '2.5',
  '½',
  '12:30',
  'wall',
]

/** Any characters, halves of one too. fast-check's own makes a map of all 1.1 million first, for shrinking. */
export const anyCharacters = (maxLength: number): fc.Arbitrary<string> =>
  fc.array(fc.integer({ min: 0, max: 0x10ffff }), { maxLength }).map((all) => String.fromCodePoint(...all))

export const text = (names: Names): fc.Arbitrary<string> =>
  fc.oneof(
    { weight: 4, arbitrary: fc.constantFrom(...HOSTILE) },
    { weight: 2, arbitrary: fc.constantFrom(...DAYS) },
    { weight: 2, arbitrary: fc.constantFrom(...KNOWN) },
    { weight: 2, arbitrary: fc.constantFrom(...names.tags, ...names.ids) },
    { weight: 1, arbitrary: anyCharacters(60) },
    { weight: 1, arbitrary: fc.uuid() },
  )
