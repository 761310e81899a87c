/** Addresses that a phone opens, held against their RFCs: tel (3966), sms (5724), mailto (6068), geo (5870). */
import { expect, it } from 'vitest'
import { Reach } from '../../src/parts/reach.tsx'
import { mailHref, placeHref, smsHref, telHref, telIn } from '../../src/words/reach.ts'

it.each([
  ['555 0142', 'tel:5550142'],
  ['+44 (0)20 7946-0018, evenings', 'tel:+4402079460018'],
  ['Inspector Ida Novak: 01632 960 001', 'tel:01632960001'],
])('the number in “%s” is dialled as %s', (text, href) => {
  const tel = telIn(text)
  expect(tel === null ? null : telHref(tel)).toBe(href)
  expect(tel === null ? null : `${tel.before}${tel.shown}${tel.after}`).toBe(text)
  expect(tel === null ? null : smsHref(tel)).toBe(href.replace('tel:', 'sms:'))
})

it('no number, no link', () => {
  expect(telIn('ask at the farm, house 12')).toBeNull()
  expect(String(Reach({ phone: 'ask at the farm' }))).not.toContain('tel:')
  expect(Reach({})).toBeNull()
})

it('a mail address keeps its @, and a text its lines (RFC 6068, 5: line breaks as %0D%0A or %0A)', () => {
  expect(mailHref('zoe@example.org')).toBe('mailto:zoe@example.org')
  expect(mailHref('', 'Your bees', 'a & b\nc?')).toBe('mailto:?subject=Your%20bees&body=a%20%26%20b%0Ac%3F')
  expect(mailHref('a?cc=b@example.org')).toBe('mailto:a%3Fcc%3Db@example.org')
})

it.each([
  ['51.2194, 4.4025', 'geo:51.2194,4.4025?q=51.2194,4.4025'],
  ['-33.9,18.4', 'geo:-33.9,18.4?q=-33.9,18.4'],
  ['4 Rue de l’Église', `geo:0,0?q=${encodeURIComponent('4 Rue de l’Église')}`],
  ['12 190', 'geo:0,0?q=12%20190'],
])('“%s” on the map is %s', (address, href) => {
  expect(placeHref(address)).toBe(href)
})
