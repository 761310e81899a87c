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
  ] as const)
    expect([a, b, shares(a, b), shares(b, a)]).toEqual([a, b, undefined, undefined])
})
