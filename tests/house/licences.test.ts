/** Every package in the lock file, for running and for developing alike, says under which licence it is, and it is one we know. */
import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'

interface Locked {
  version?: string
  license?: string
  dev?: boolean
}

const { packages } = JSON.parse(
  readFileSync(new URL('../../package-lock.json', import.meta.url), 'utf8'),
) as { packages: Record<string, Locked> }
const others = Object.entries(packages).filter(([path]) => path !== '')

/** Names by SPDX, all on its list and approved by the Open Source Initiative, or as free as that (WTFPL, Unlicense, 0BSD). */
const FREE = /^(MIT|MIT-0|ISC|Apache-2\.0|BSD-2-Clause|BSD-3-Clause|0BSD|BSL-1\.0|Zlib|Unlicense|WTFPL)$/
/** What changed files of it are to be given on under; none of it is in what we hand out. */
const FOR_DEVELOPING = /^MPL-2\.0$/

/** All names that a licence's words put together, whether with AND or OR. */
const namesIn = (license: string): string[] => license.replaceAll(/[()]/g, '').split(/ (?:AND|OR) /)

test('no package is without a licence', () => {
  expect(others.length).toBeGreaterThan(100)
  expect(others.filter(([, p]) => !p.license).map(([path]) => path)).toEqual([])
})

test('every licence is one that may be used here', () => {
  const strange = others.filter(
    ([, { license = '', dev = false }]) =>
      !namesIn(license).every((name) => FREE.test(name) || (dev && FOR_DEVELOPING.test(name))),
  )
  expect(strange.map(([path, p]) => `${path}: ${p.license}`)).toEqual([])
})
