/** Two sheets of one house: asked once too often costs a tap, and once too seldom a gas pipe. Invented addresses. */
import { expect, it } from 'vitest'
import { sameHouse, sharedWith } from '../../src/records/same-house.ts'

const same = (a: string, b: string): boolean => sameHouse({ address: a }, { address: b })

it.each([
  ['47 Old Street', '47 Old St'],
  ['Invented Row', '4 Invented Row'],
  ['Four Invented Row', '4 Invented Row'],
  ['4 Inv. Row', '4 Invented Row'],
  ['4 Inventd Row', '4 Invented Row'],
  ['No. 4 Invented Row', 'Invented Row 4'],
  ['Flat 2, 4 Invented Row', '4a Invented Row'],
  ['4 St Johns Rd', '4 Saint John’s Road'],
  ["12 St John's Rd", '12 Saint Johns Road'],
  ['Rose Cottage', 'Rose Cottage, Upper Lane'],
  ['Hill Farm', 'Hill Farm, Route 9'],
  ['Oak School', 'Oak School, gym'],
  ['123 5th Ave', '123 Fifth Avenue'],
  ['12 Elm St', '12 Elms Street'],
  ['Rose Cottage, Invented Lane', '5 Invented Lane, Heronsby'],
  ['1 Old St', 'Flat 2, 1 Old St, Heronsby'],
  // Of words that any address may have: one beside the number, two without, or all of them.
  ['5 Hill Road', '5 Hill Rd, Heronsby'],
  ['5 Hill Road', '5 Hill Lane'],
  ['5 Old Hill Road', '5 Hill Road'],
  ['5 Park View', 'Flat 1, 5 Park View'],
  ['4 The Green', '4 Green'],
  ['1 Ash Row', '1 Ash Row, Heronsby'],
  ['1 Ash Row', 'Ash Row'],
  ['The Mill', 'Mill, Heronsby'],
  ['School, Hill Road', 'the old school'],
  ['2 Quarry Road', 'Quarry Road, by the edge'],
  ['Hill Road playground', 'The playground, Hill Rd'],
  ['Orchard Farm', 'Orchard Farm, Upper Lane'],
  ['Rose Cottage, Hill Rd', '5 Hill Road'],
  ['Rose Cottage, 5 Invented Lane', '5 Invented Ln'],
  ['Bright Stars daycare, 6 Lark Road', '6 Lark Rd'],
  ['6 Lark Road daycare', 'Lark Road daycare'],
  ['St Mary primary', 'St Mary primary school, Heronsby'],
  ['61 Tern Way orchard', '61 Tern Way'],
])('%s is %s', (a, b) => {
  expect(same(a, b)).toBe(true)
  expect(same(b, a)).toBe(true)
})

it.each([
  ['4 Invented Row', '6 Invented Row'],
  ['4 Invented Row, Heronsby', '9 Elm Street, Heronsby'],
  ['Hill Farm, Heronsby', 'Rose Cottage, Heronsby'],
  ['Rose Cottage, Invented Lane', 'Hill Farm, Invented Lane'],
  ['Rose Cottage, Invented Lane, Heronsby', '5 Elm Street, Heronsby'],
  ['47 Old Street', '48 Old Street'],
  ['4 Invented Row', '4 Elm Street'],
  ['', '4 Invented Row'],
  ['5 Senna Walk', '5 Sorrel Walk'],
  ['Bright Stars daycare, 6 Lark Road', 'Little Acorns daycare'],
  ['6 Lark Road daycare', 'Little Acorns daycare'],
  ['Little Acorns daycare', 'Little Lambs daycare'],
  ['Holy Cross Primary School', 'St Mary primary'],
  ['8 Dove Road Primary School', 'St Mary primary'],
  ['61 Tern Way orchard', 'Orchard wall, Heronsby'],
  ['5 Shrike Hill', 'Hill Road playground'],
  ['5 Shrike Hill', '5 Hill Road'],
  ['2 Quarry Road', 'quarry edge, Hill Rd'],
  ['1 Ash Row', 'Storm-felled ash, Larkbarrow park'],
  ['Old Oak Road', 'Old Ash Road'],
  ['4 The Green', '4 The Mews'],
  ['4 Upper Lane', '4 Lower Lane'],
  ['Rose Cottage, Hill Lane', '5 Mill Lane'],
  ['Rose Cottage, 12345 Heronsby', 'Hill Farm, 12345 Heronsby'],
])('%s is not %s', (a, b) => {
  expect(same(a, b)).toBe(false)
  expect(same(b, a)).toBe(false)
})

it('a full name is one caller where the place stands on one sheet only', () => {
  const ottoline = { name: 'Ottoline Fairweather' }
  const there = { name: 'Fairweather, Ottoline', address: '4 Invented Row' }
  expect(sameHouse(ottoline, there)).toBe(true)
  expect(sameHouse(there, ottoline)).toBe(true)
  expect(sameHouse({ ...ottoline, address: '9 Elm Street' }, there)).toBe(false)
  expect(sameHouse({ name: 'Ottoline' }, { ...there, name: 'Ottoline' })).toBe(false)
  expect(sameHouse({}, {})).toBe(false)
})

it('streets that sound alike are perhaps one, where the number is', () => {
  const shares = (a: string, b: string) =>
    sharedWith({ job: { address: a }, site: {} }, { address: b })?.shares
  for (const [a, b] of [
    ['5 Kwarble Lane', '5 Quarble Lane'],
    ['5 Kwarble Lane, Vlixham', 'Flat 2, 5 Quarble Ln'],
    ['12 Heronsby Road', '12 Herronsby Rd'],
    ['14 Beech Road', '14 Beach Road'],
    ['14 Mayne Road', '14a Maine Rd'],
    ['5 Hill Road', '5 Mill Road'],
    ['Four Beech Road', '4 Beach Road'],
  ] as const)
    expect([a, b, shares(a, b), shares(b, a)]).toEqual([a, b, 'perhaps', 'perhaps'])
  for (const [a, b] of [
    ['5 Oak Lane', '5 Ash Lane'],
    ['5 Kwarble Lane', '6 Quarble Lane'],
    ['Kwarble Lane', 'Quarble Lane'],
    ['5 Eastfield Road', '5 Westfield Road'],
    ['5 Northgate', '5 Southgate'],
    ['5 Elm Street, Heronsby', '5 Oak Street, Heronsbie'],
    ['5 High Street', '5 Hill Street'],
    ['14 Beech Road', '41 Beach Road'],
    ['6 Lark Road daycare', '6 Dove Road daycare'],
    ['5 East Road', '5 West Road'],
  ] as const)
    expect([a, b, shares(a, b), shares(b, a)]).toEqual([a, b, undefined, undefined])
})

it('an address that a sheet had before sounds alike too', () => {
  const noted = [
    {
      what: 'house' as const,
      is: 'was' as const,
      words: '20 Quarblen Lane',
      by: 'Bram',
      on: '2026-06-12',
      at: '07:00',
      writtenAt: '2026-06-12T07:00:00.000Z',
    },
  ]
  const was = sharedWith(
    { job: { address: '9 Elm Street' }, site: { noted } },
    { address: '20 Kwarblen Lane' },
  )
  expect(was).toEqual({ shares: 'perhaps', was: '20 Quarblen Lane' })
})
