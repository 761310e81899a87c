import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { limitsOf, network } from '../../src/people/limits.ts'
import { Busy, queueOf } from '../../src/people/queue.ts'

beforeEach(() => {
  vi.useFakeTimers({ now: Date.UTC(2026, 5, 1) })
})
afterEach(() => {
  vi.useRealTimers()
})

test('a name is closed to guessing from a network after so many attempts, known or not, and open to its owner elsewhere', async () => {
  const limits = limitsOf({ points: 3, window: 900 }, { points: 100, window: 900 })
  for (const address of ['2001:db8:1:2::1', '2001:db8:1:2::2', '2001:db8:1:2::3'])
    expect(await limits.attempt('Bram', address)).toBe(0)
  expect(await limits.attempt('BRAM', '2001:db8:1:2::4')).toBeGreaterThan(800)
  expect(await limits.attempt('Bram', '192.0.2.1')).toBe(0)
  expect(await limits.attempt('Odalys', '2001:db8:1:2::4')).toBe(0)
  vi.advanceTimersByTime(901_000)
  expect(await limits.attempt('Bram', '2001:db8:1:2::1')).toBe(0)
})

test('a name is closed from everywhere only after many more attempts, which one network cannot use up', async () => {
  const one = { points: 3, window: 900 }
  const limits = limitsOf(one, { points: 100, window: 900 }, { points: 6, window: 900 })
  for (let i = 0; i < 50; i++) await limits.attempt('Bram', '192.0.2.1')
  for (let i = 0; i < 3; i++) expect(await limits.attempt('Bram', '192.0.2.2')).toBe(0)
  expect(await limits.attempt('Bram', '192.0.2.3')).toBeGreaterThan(800)
  expect(await limits.attempt('Odalys', '192.0.2.3')).toBe(0)
})

test('as they are: ten wrong passphrases keep nobody else out, a hundred from everywhere do', async () => {
  const limits = limitsOf()
  const tries = async (address: string): Promise<number> => {
    let taken = 0
    for (let i = 0; i < 20; i++) if ((await limits.attempt('Bram', address)) === 0) taken++
    return taken
  }
  for (let n = 0; n < 10; n++) {
    expect(await tries(`192.0.2.${n}`)).toBe(10)
    if (n < 9) expect(await limits.attempt('Bram', '198.51.100.7')).toBe(0)
    await limits.right('Bram', '198.51.100.7')
  }
  expect(await tries('192.0.2.99')).toBeLessThan(10)
})

test('an address is closed to guessing whoever it tries to be', async () => {
  const limits = limitsOf({ points: 100, window: 900 }, { points: 3, window: 900 })
  for (const name of ['a', 'b', 'c']) expect(await limits.attempt(name, '192.0.2.1')).toBe(0)
  expect(await limits.attempt('d', '192.0.2.1')).toBeGreaterThan(0)
  expect(await limits.attempt('d', '192.0.2.2')).toBe(0)
})

test('being right after all begins the count anew, and costs neither the address nor the name anything', async () => {
  const limits = limitsOf({ points: 2, window: 900 }, { points: 3, window: 900 }, { points: 3, window: 900 })
  for (let i = 0; i < 20; i++) {
    expect(await limits.attempt('Bram', '192.0.2.1')).toBe(0)
    await limits.right('Bram', '192.0.2.1')
  }
})

test('many at once are no way round', async () => {
  const limits = limitsOf({ points: 5, window: 900 }, { points: 100, window: 900 })
  const waits = await Promise.all(Array.from({ length: 40 }, () => limits.attempt('Bram', '192.0.2.1')))
  expect(waits.filter((w) => w === 0)).toHaveLength(5)
})

test.each([
  ['192.0.2.7', '192.0.2.7'],
  ['::ffff:192.0.2.7', '192.0.2.7'],
  ['2001:db8:1:2:aaaa::1', '2001:db8:1:2:0:0:0:0'],
  ['2001:db8:1:2:bbbb::9', '2001:db8:1:2:0:0:0:0'],
  ['not an address', 'not an address'],
])('%s counts as %s', (address, counted) => expect(network(address)).toBe(counted))

test('a queue runs few at a time, keeps few waiting, and goes on after a failure', async () => {
  vi.useRealTimers()
  const inTurn = queueOf(2, 3)
  let running = 0
  let most = 0
  const work = async (fail: boolean): Promise<void> => {
    running++
    most = Math.max(most, running)
    await new Promise((go) => setTimeout(go, 5))
    running--
    if (fail) throw new Error('no')
  }
  const results = await Promise.allSettled(Array.from({ length: 8 }, (_, i) => inTurn(() => work(i === 0))))
  expect(most).toBe(2)
  expect(results.filter((r) => r.status === 'fulfilled')).toHaveLength(4)
  expect(results.filter((r) => r.status === 'rejected' && r.reason instanceof Busy)).toHaveLength(3)
  await expect(inTurn(async () => 'again')).resolves.toBe('again')
})
