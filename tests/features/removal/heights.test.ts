/** How high and how deep: what is not the ground, and a slip of the unit. */
import { expect, test } from 'vitest'
import { but, READY } from './ready.ts'
import { holding } from './reckoned.ts'

test('five metres up is not the ground, whatever was tapped', () => {
  const s = but({
    site: { ...READY.site, access: 'ground', heightM: 5 },
    check: { ...READY.check, done: READY.check.done?.filter((t) => t !== 'ladder-person') },
  })
  expect(holding(s)).toEqual(['ladder-person'])
  expect(holding({ ...s, site: { ...s.site, heightM: 2 } })).toEqual([])
})

test.each(['roof', 'wall', 'tree'])(
  'a %s is not worked from the ground until somebody says how low it is',
  (type) => {
    const site = { ...READY.site, type, access: 'ground' as const }
    const { heightM: _, ...unsaid } = site
    const check = { ...READY.check, done: READY.check.done?.filter((t) => t !== 'ladder-person') }
    expect(holding(but({ site: unsaid, check }))).toEqual(['ladder-person'])
    expect(holding(but({ site: { ...unsaid, heightM: 2.2 }, check }))).toEqual([])
  },
)

test('twelve inches typed for twelve millimetres is a slip of the unit', () => {
  const s = but({ site: { ...READY.site, sheathingMm: 305 }, check: { ...READY.check, cutMm: 307 } })
  expect(holding(s)).toEqual(['cut-depth'])
})
