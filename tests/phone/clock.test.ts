/** What a phone can tell of its own clock by what the server said when the round last came. */
import { describe, expect, it } from 'vitest'
import { clockOff, yardDay } from '../../src/phone/clock.ts'

const heard = (at: string | undefined, fetchedAt: string, zone = 'UTC') => ({
  zone,
  fetchedAt,
  ...(at === undefined ? {} : { at }),
})
const NOON = '2026-06-10T12:00:00.000Z'

describe('the phone’s clock', () => {
  it.each([
    ['right', NOON, NOON, '2026-06-10T12:05:00Z', null],
    ['right, a day later without signal', NOON, NOON, '2026-06-11T12:05:00Z', null],
    ['a slow answer', NOON, '2026-06-10T12:04:00.000Z', '2026-06-10T12:05:00Z', null],
    [
      'three days behind when it fetched',
      NOON,
      '2026-06-07T12:00:00.000Z',
      '2026-06-07T12:05:00Z',
      ['2026-06-07', '2026-06-10'],
    ],
    [
      'and a day after that',
      NOON,
      '2026-06-07T12:00:00.000Z',
      '2026-06-08T12:05:00Z',
      ['2026-06-08', '2026-06-11'],
    ],
    ['a year ahead', NOON, '2027-06-10T12:00:00.000Z', '2027-06-10T12:05:00Z', ['2027-06-10', '2026-06-10']],
    ['set back since it fetched', NOON, NOON, '2026-06-05T12:00:00Z', ['2026-06-05', '2026-06-10']],
    ['an hour off within the day', NOON, '2026-06-10T13:00:00.000Z', '2026-06-10T13:05:00Z', null],
    ['a server that does not say', undefined, '2026-06-07T12:00:00.000Z', '2026-06-07T12:05:00Z', null],
  ])('%s', (_, at, fetchedAt, now, off) => {
    const found = clockOff(heard(at, fetchedAt), new Date(now))
    expect(found === null ? null : [found.phone, found.yard]).toEqual(off)
  })

  it('goes by the yard’s zone: a phone abroad is no clock that is off', () => {
    // 02:00 UTC is still the day before in Denver (UTC−6 in summer, IANA tz).
    const h = heard('2026-06-10T02:00:00.000Z', '2026-06-10T02:00:00.000Z', 'America/Denver')
    expect(clockOff(h, new Date('2026-06-10T02:01:00Z'))).toBeNull()
    expect(yardDay(h, new Date('2026-06-10T02:01:00Z'))).toBe('2026-06-09')
  })

  it('knows nothing before it has heard anything', () => {
    expect(clockOff(null, new Date(NOON))).toBeNull()
  })
})
