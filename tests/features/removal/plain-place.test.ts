/** Short fields that say a plain place, an address or a name, and those that say more. Invented. */
import { expect, test } from 'vitest'
import { isPlainName, isPlainNumber, isPlainPlace } from '../../../src/features/removal/plain-place.ts'

test.each([
  [
    'left of the porch',
    'Left of the porch.',
    'the north wall',
    'in the porch wall, two bays, from the sill up',
  ],
  ['cedar siding', 'tongue and groove boards', 'Brick', 'boards. cedar'],
  ['on a branch', 'in the pear tree', 'in the eaves over the garden', 'over the back door'],
])('plain places: %s, %s, %s', (...texts) => {
  for (const text of texts) expect([text, isPlainPlace(text)]).toEqual([text, true])
})

test.each([
  ['a hole', 'above the open well', 'Left of the porch. Over the covered well', 'over the old mine shaft'],
  ['a lid', 'under the cesspit lid', 'Where old septic tank lid', 'over the stairwell'],
  ['wires', 'under the weatherhead', 'the EV charger', 'right under the porch light', 'behind the AC unit'],
  ['a fire', 'round the stove pipe', 'back of the baker’s oven', 'behind the bread oven'],
  ['children', 'in the nursery wall, cot beside it', 'over the sand pit, infants wing'],
  ['animals', 'by the goat pen', 'beside the chicken run'],
  ['an age', '1920s lean-to, flaking paint', 'wall (1926)'],
  ['a height', '18 ft up the wall', 'twenty feet up the gable', "wall, 12'"],
  ['asbestos', 'grey corrugated sheet, old', 'grey board'],
  ['another language', 'en la pared', 'über dem Brunnen', '井戸の上', 'над колодцем'],
  ['a sign', '☠ wall'],
])('places that say more, %s', (_, ...texts) => {
  for (const text of texts) expect([text, isPlainPlace(text)]).toEqual([text, false])
})

test.each([
  [
    '4 Invented Row',
    '4 Invented Row, Springfield',
    '12b Larch St., Flat 3',
    '5 School Lane',
    '9 Calle de la Reina',
  ],
  ['Ottoline Fairweather', 'Mrs. Umber', 'O. von der Aue', 'Ada O’Neil', 'Ottoline F.', 'X'],
  ['Porch wall, 9 Quillpen Row, Ostermoor', '20 Quarblen Rd, AB1 2CD', '61 Tern Way orchard', '2120 Owl Way'],
])('plain names: %s, %s, %s', (...texts) => {
  for (const text of texts) expect([text, isPlainName(text)]).toEqual([text, true])
})

test.each([
  ['a year', '5 Tor Road, built 1926', '5 Birch Road (1926)', 'N13 Hale (built 1910)', '10 Owl Park, 1898'],
  ['an animal', '6 Tor Road, beware of the dog', '9 Tern Road, dog in the yard', '9 Tern Road. Dog. Deaf.'],
  ['a height', '7 Tor Road, hive is 30 ft up', '7 Tor Road, 30 Feet Up', "7 Tor Road, 30'"],
  [
    'children',
    'Tiny Toes Creche, 12 Mint Street',
    '3 Tansy Walk, Ladybird Preschool',
    'Crèche Soleil',
    '8 Dove Road Primary School',
  ],
  ['people in care', 'Elm Care Home', 'St Mary Hospice', 'Oak Nursing Home, 4 Hill Road'],
  ['somebody ill', 'Ott Pray (deaf, on oxygen)', 'Mr Hart, has an oxygen bottle', 'Hart - DEAF'],
  ['small letters', '4 invented row', 'mr hart'],
])('names that say more, %s', (_, ...texts) => {
  for (const text of texts) expect([text, isPlainName(text)]).toEqual([text, false])
})

test.each(['20 Tor Road, Mineshaft', '21 Tor Road, Septic Pit', '5 Hill St, Third Floor', 'Ann Oxygen'])(
  'a name in capitals that says more: %s',
  (text) => expect(isPlainName(text)).toBe(false),
)

test.each(['5 Well Lane', 'Dog Lane', 'Ann Wells'])('a name that is one: %s', (text) =>
  expect(isPlainName(text)).toBe(true),
)

test.each(['+1 (555) 019-2234', '555 0199 ext 4', 'a.quill@example.org', '2026-114', 'INV 2026/7', 'R-17'])(
  'a plain number: %s',
  (text) => expect(isPlainNumber(text)).toBe(true),
)

test.each(['gas meter is behind it', '555 0199, deaf', 'ask for Jim, he has the epipen', 'gas 5', 'ガス'])(
  'a number that says more: %s',
  (text) => expect(isPlainNumber(text)).toBe(false),
)
