/** The timer of `resettle serve`: asks every half minute, never twice at a time, and is waited for when it stops. */
import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { EVERY_MS, type Messenger, startMessenger } from '../../../src/features/messages/messenger.ts'

beforeEach(() => {
  vi.useFakeTimers()
})
afterEach(() => {
  vi.useRealTimers()
})

const messenger = (tick: () => Promise<void>): Messenger => ({
  tick,
  tryOut: () => Promise.resolve({ ok: true }),
  firstDay: () => '2026-06-01',
  sendsMail: true,
  rules: { mayReach: () => false },
})

test('asks at once and every half minute after', async () => {
  const tick = vi.fn(() => Promise.resolve())
  const stop = startMessenger(messenger(tick), () => undefined)
  expect(tick).toHaveBeenCalledTimes(1)
  await vi.advanceTimersByTimeAsync(3 * EVERY_MS)
  expect(tick).toHaveBeenCalledTimes(4)
  await stop()
  await vi.advanceTimersByTimeAsync(3 * EVERY_MS)
  expect(tick).toHaveBeenCalledTimes(4)
})

test('does not ask again while one is under way, and stopping waits for it', async () => {
  let finish = (): void => undefined
  const tick = vi.fn(
    () =>
      new Promise<void>((resolve) => {
        finish = resolve
      }),
  )
  const stop = startMessenger(messenger(tick), () => undefined)
  await vi.advanceTimersByTimeAsync(3 * EVERY_MS)
  expect(tick).toHaveBeenCalledTimes(1)
  let stopped = false
  const stopping = stop().then(() => {
    stopped = true
  })
  await vi.advanceTimersByTimeAsync(EVERY_MS)
  expect(stopped).toBe(false)
  finish()
  await stopping
  expect(stopped).toBe(true)
})

test('a failure is reported and the next one is asked all the same', async () => {
  const failures: unknown[] = []
  const tick = vi.fn(() => Promise.reject(new Error('disk full')))
  const stop = startMessenger(messenger(tick), (error) => failures.push(error))
  await vi.advanceTimersByTimeAsync(EVERY_MS)
  expect(tick).toHaveBeenCalledTimes(2)
  expect(failures).toHaveLength(2)
  await stop()
})
